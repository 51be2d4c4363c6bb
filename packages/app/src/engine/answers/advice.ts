import { type Advice, type CoreWords, nextStep, type Outcome } from "@jetwright/core";
import { bikeCase, type ShopState } from "@jetwright/records";
import type { ShopInWords } from "../state.ts";

// Advice is a pure function of the shop, and a shop never changes: what was worked out once is not worked out again.
const workedOut = new WeakMap<ShopState, Map<CoreWords, Map<string, Outcome<Advice>>>>();

/** What to do next for a bike, or why that cannot be said. */
export function adviceFor(
  { shop, words }: ShopInWords,
  { bike }: { readonly bike: string },
): Outcome<Advice> {
  return adviceIn(shop, bike, words);
}

/** The same for any shop, such as one with a record more. */
export function adviceIn(shop: ShopState, bike: string, words: CoreWords): Outcome<Advice> {
  let inLanguages = workedOut.get(shop);
  if (inLanguages === undefined) {
    inLanguages = new Map();
    workedOut.set(shop, inLanguages);
  }
  let known = inLanguages.get(words);
  if (known === undefined) {
    known = new Map();
    inLanguages.set(words, known);
  }
  let advice = known.get(bike);
  if (advice === undefined) {
    const story = bikeCase(shop, bike);
    advice = story.ok ? nextStep(story.value, words) : story;
    known.set(bike, advice);
  }
  return advice;
}
