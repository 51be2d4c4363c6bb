import { expect, test } from "vitest";
import { readSweepDraft } from "./sweep-draft.ts";

const EMPTY = { start: null, at: null, step: 0.25, marks: [] };

test("a stored sweep comes back, and whatever else is stored gives an empty one", () => {
  const kept = { start: 1.5, at: 1.75, step: 0.125, marks: [{ turns: 1.5, rpm: 1700, error: 4 }] };
  expect(readSweepDraft(kept)).toEqual(kept);
  for (const odd of [undefined, null, 3, "x", [], {}]) expect(readSweepDraft(odd)).toEqual(EMPTY);
  expect(readSweepDraft({ start: -1, at: 9, step: 7, marks: 4 })).toEqual(EMPTY);
  const bad = [
    null,
    {},
    { turns: 1, rpm: 0, error: 1 },
    { turns: 1, rpm: 1700, error: -1 },
    { turns: 6, rpm: 1, error: 1 },
  ];
  expect(readSweepDraft({ marks: bad })).toEqual(EMPTY);
});
