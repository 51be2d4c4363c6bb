import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Entry } from "./entry.ts";
import { readLog } from "./log-reader.ts";
import { mergeEntries } from "./merge.ts";

const entry = fc
  .record({
    id: fc.constantFrom("a", "b", "c", "d"),
    hour: fc.integer({ min: 0, max: 9 }),
    text: fc.constantFrom("x", "y"),
  })
  .map(({ id, hour, text }) => {
    const line = JSON.stringify({ id, kind: "note", at: `2026-05-02T0${hour}:00:00Z`, body: { text } });
    return readLog([line]).entries[0]!;
  });
const log = fc.array(entry, { maxLength: 6 });
const says = (entries: readonly Entry[]): unknown[] => entries.map(({ source }) => source);

describe("[R14] merging", () => {
  test("the order of the logs does not matter, nor how they are grouped, nor doing it twice", () => {
    fc.assert(
      fc.property(log, log, log, (a, b, c) => {
        const all = says(mergeEntries(a, b, c));
        expect(says(mergeEntries(c, b, a))).toEqual(all);
        expect(says(mergeEntries(mergeEntries(a, b), c))).toEqual(all);
        expect(says(mergeEntries(a, mergeEntries(b, c)))).toEqual(all);
        expect(says(mergeEntries(a, b, c, a, mergeEntries(a, b)))).toEqual(all);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  test("every id of either log is there, once, in the order of the story", () => {
    fc.assert(
      fc.property(log, log, (a, b) => {
        const merged = mergeEntries(a, b);
        expect(new Set(merged.map(({ id }) => id))).toEqual(new Set([...a, ...b].map(({ id }) => id)));
        expect(new Set(merged.map(({ id }) => id)).size).toBe(merged.length);
        for (let i = 1; i < merged.length; i++)
          expect(merged[i]!.at).toBeGreaterThanOrEqual(merged[i - 1]!.at);
      }),
      { seed: 20261125 },
    );
  });

  test("of two records under one id the same one wins as when reading", () => {
    fc.assert(
      fc.property(log, (entries) => {
        const read = readLog(entries.map(({ source }) => JSON.stringify(source))).entries;
        expect(says(mergeEntries(entries))).toEqual(says(mergeEntries(read)));
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test("records that are kept but not used are merged too", () => {
    const kept = readLog(['{"id":"k","kind":"tyre-changed","at":"2026-05-02T10:15:00Z"}']).entries;
    expect(mergeEntries(kept, kept)).toMatchObject([{ id: "k", reading: "unknown-kind" }]);
  });
});
