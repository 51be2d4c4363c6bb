/** What a bike is used for, from the one that revs least to the one that revs most. */
export const USES = ["trail", "enduro", "race"] as const;
export type Use = (typeof USES)[number];

const WORDS: readonly (readonly [Use, RegExp])[] = [
  [
    "race",
    /\b(race|racing|moto-?cross|mx|track|kart|supermoto|flat ?track|speedway)\b|\bcross\b(?![- ]?country)/,
  ],
  ["enduro", /\b(enduro|cross[- ]?country|hare|woods|rally|desert|baja|quad|atv)\b/],
  [
    "trail",
    /\b(trail|trails|trials?|play|farm|work|road|street|commut\w*|pit|kids?|children|vintage|utility)\b/,
  ],
];

/** The use that free text speaks of, English words only; null when it names none. The first named one counts. */
export function readUse(text: string): Use | null {
  const said = text.toLowerCase();
  let found: Use | null = null;
  let at = Infinity;
  for (const [use, words] of WORDS) {
    const place = said.search(words);
    if (place >= 0 && place < at) [found, at] = [use, place];
  }
  return found;
}

/** Place of a use between the calmest, 0, and the wildest, 2; not said counts as the middle. */
export const useRank = (use: Use | null): number => (use === null ? 1 : USES.indexOf(use));
