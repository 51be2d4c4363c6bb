import fc from "fast-check";
import { expect, test } from "vitest";
import { NOT_BEGUN, readBegun } from "./begun.ts";

const DAY = 86_400_000;
const begun = { looks: ["air-filter", "compression"], from: 50 * DAY, skipped: ["compression"] };

test("a looking over half done comes back as it was, for a week", () => {
  const stored: unknown = JSON.parse(JSON.stringify(begun));
  expect(readBegun(stored, 57 * DAY - 1)).toEqual(begun);
  expect(readBegun(stored, 57 * DAY)).toEqual(NOT_BEGUN);
});

test("of another version keeps what is understood, and never breaks", () => {
  expect(readBegun({ looks: ["air-filter", 3], from: DAY }, DAY)).toEqual({
    looks: ["air-filter"],
    from: DAY,
    skipped: [],
  });
  expect(readBegun({ looks: ["air-filter"], from: "today" }, DAY)).toEqual(NOT_BEGUN);
  fc.assert(
    fc.property(fc.anything(), (stored) => {
      const { looks, skipped } = readBegun(stored, DAY);
      expect([...looks, ...skipped].every((each) => typeof each === "string")).toBe(true);
    }),
    { seed: 20261125, numRuns: 200 },
  );
});
