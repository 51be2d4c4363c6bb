import fc from "fast-check";
import { expect, test } from "vitest";
import { closestWords, didYouMean, editDistance } from "./closest-words.ts";

test("distance: textbook pairs", () => {
  // kitten -> sitting is the usual example of Levenshtein's distance (3); a swap of neighbours counts once
  // in Damerau's. Both from memory of their textbooks.
  expect(editDistance("kitten", "sitting")).toBe(3);
  expect(editDistance("saturday", "sunday")).toBe(3);
  expect(editDistance("form", "from")).toBe(1);
  expect(editDistance("", "abc")).toBe(3);
});

test("distance is a count: zero only for the same word, the same both ways, never above the longer word", () => {
  const word = fc.stringMatching(/^[a-c]{0,7}$/);
  fc.assert(
    fc.property(word, word, (a, b) => {
      const distance = editDistance(a, b);
      expect(distance === 0).toBe(a === b);
      expect(editDistance(b, a)).toBe(distance);
      expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
      expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
    }),
    { seed: 20261125 },
  );
});

test("the nearest word comes first, at most three, and none when nothing is near", () => {
  const known = [
    "hangs-after-closing",
    "stalls-on-closing",
    "idles-steadily",
    "answers-crisply",
    "smokes-when-warm",
  ];
  expect(closestWords("hang-after-closing", known)[0]).toBe("hangs-after-closing");
  expect(closestWords("Hangs after closing", known)[0]).toBe("hangs-after-closing");
  expect(closestWords("crisp", known)).toEqual(["answers-crisply"]);
  expect(closestWords("zebra", known)).toEqual([]);
  expect(closestWords("a", ["b", "c", "d", "e"])).toHaveLength(3);
  expect(didYouMean("hang-after-closing", known.slice(0, 2), "-")).toBe(
    'Did you mean "hangs-after-closing" or "stalls-on-closing"?',
  );
  expect(didYouMean("zebra", known, "List them.")).toBe("List them.");
});
