import { type Advice, nextStep, type Outcome } from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../state.ts";

/** What to do next for a bike, or why that cannot be said. */
export function adviceFor({ shop }: EngineState, { bike }: { readonly bike: string }): Outcome<Advice> {
  const story = bikeCase(shop, bike);
  return story.ok ? nextStep(story.value) : story;
}
