import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "@playwright/test";

// What a page says, and whether English is left in it.

/** Common English words that German and Spanish lack. */
const ENGLISH =
  /(?<![\p{L}-])(the|and|with|of|is|are|not|for|to|at|by|or|were|have|been|which|when|where|there|they|from|you|your|it|this|that|needle|jet|slide|screw|throttle|rich|lean|turns|revs|idle|plug)(?![\p{L}-])/iu;

/** Fields of records that hold what a person typed. */
const TYPED = [
  "name",
  "text",
  "words",
  "why",
  "what",
  "place",
  "person",
  "use",
  "maker",
  "marks",
  "of",
  "notes",
  "complaint",
  "handedOver",
];

function typedIn(value: unknown, field = ""): readonly string[] {
  if (typeof value === "string") return TYPED.includes(field) ? [value] : [];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => typedIn(each, Array.isArray(value) ? field : key));
}

/** What the people of the example shop wrote, the longest first: it stands as they wrote it in every language. */
const PEOPLE = readFileSync(join(import.meta.dirname, "../../../demo/shop.jsonl"), "utf8")
  .trimEnd()
  .split("\n")
  .flatMap((line) => typedIn(JSON.parse(line)))
  .filter((text) => text.length > 1)
  .sort((a, b) => b.length - a.length);

/** What the page says: its texts and what it says to a screen reader. The note for pages without scripts is no part of it. */
export const spoken = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const said: string[] = [];
    const walker = document.createTreeWalker(document.getElementById("app")!, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) said.push(walker.currentNode.textContent?.trim() ?? "");
    for (const name of ["aria-label", "title", "placeholder", "alt"])
      for (const each of document.querySelectorAll(`#app [${name}]`)) said.push(each.getAttribute(name)!);
    for (const each of document.querySelectorAll<HTMLTextAreaElement>("#app textarea"))
      said.push(...each.value.split("\n"));
    return said.filter((text) => text !== "");
  });

/** True for a text with English in it, what the people of the example shop wrote left out. */
export const hasEnglish = (text: string): boolean =>
  ENGLISH.test(PEOPLE.reduce((rest, own) => rest.replaceAll(own, " "), text));

/** A page that has not moved for this long is taken to have said what it will say, ms. */
const STILL = 150;

/** Resolves once nothing on the page has moved for a moment, so that what the worker answers has come. */
export const settled = (page: Page): Promise<void> =>
  page.evaluate(
    (still) =>
      new Promise<void>((resolve) => {
        const done = () => {
          watch.disconnect();
          resolve();
        };
        let timer = setTimeout(done, still);
        const watch = new MutationObserver(() => {
          clearTimeout(timer);
          timer = setTimeout(done, still);
        });
        watch.observe(document.body, { childList: true, subtree: true, characterData: true });
      }),
    STILL,
  );
