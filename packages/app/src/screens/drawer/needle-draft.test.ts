import { expect, test } from "vitest";
import { NEW_NEEDLE, readNeedleDraft, readRows } from "./needle-draft.ts";

test("comma or point, a unit behind; a row without a diameter is not taken yet", () => {
  expect(
    readRows([
      { below: "10", diameter: "2,52" },
      { below: "14,5 mm", diameter: "2.515mm" },
      { below: "18", diameter: " " },
    ]),
  ).toEqual({
    points: [
      { belowTopGrooveMm: 10, diameterMm: 2.52 },
      { belowTopGrooveMm: 14.5, diameterMm: 2.515 },
    ],
    unread: [],
  });
});

test("rows that cannot be read are named by their number and not counted", () => {
  expect(
    readRows([
      { below: "ten", diameter: "2.52" },
      { below: "14", diameter: "2.52" },
      { below: "", diameter: "2.5" },
      { below: "18", diameter: "thin" },
    ]),
  ).toEqual({ points: [{ belowTopGrooveMm: 14, diameterMm: 2.52 }], unread: [1, 3, 4] });
});

test("a stored draft comes back; anything else starts a new one", () => {
  const draft = { ...NEW_NEEDLE, marks: "K1", bike: "kestrel", rows: [{ below: "10", diameter: "2,52" }] };
  expect(readNeedleDraft(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
  for (const stored of [undefined, null, 3, "x", [], {}, { rows: [] }, { rows: [null, 4] }]) {
    expect(readNeedleDraft(stored)).toEqual(NEW_NEEDLE);
  }
});
