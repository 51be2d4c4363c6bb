import fc from "fast-check";
import { expect, test } from "vitest";
import { NEW_WORK, readWork } from "./work.ts";

test("work half done comes back as it was", () => {
  const work = {
    ticked: [0, 2],
    opening: "1/4",
    turns: 1.75,
    tries: { hangSeconds: [900, 1100] },
    can: ["250", ""],
  };
  expect(readWork(JSON.parse(JSON.stringify(work)))).toEqual(work);
  expect(readWork(undefined)).toEqual(NEW_WORK);
});

test("of another version keeps what is understood, and never breaks", () => {
  expect(readWork({ ticked: [1, "two"], turns: "many", tries: { a: [5, null] }, can: [7, "300"] })).toEqual({
    ...NEW_WORK,
    ticked: [1],
    tries: { a: [5] },
    can: ["", "300"],
  });
  fc.assert(
    fc.property(fc.anything(), (stored) => {
      expect(readWork(stored).can).toHaveLength(2);
    }),
    { seed: 20261125, numRuns: 200 },
  );
});
