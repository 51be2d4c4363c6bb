import { describe, expect, test } from "vitest";
import { added, type Row, signs, table } from "./row.ts";
import { idle } from "./stretch.ts";

const row: Row = {
  id: "will-not-idle",
  speaksOf: idle,
  chance: { rich: 0.1, right: 0.2, lean: 0.3 },
  reliability: "B",
  group: "coughs",
  source: added("an example"),
};

describe("a row of the signs table", () => {
  test("left short is a sign of trouble on a warm engine of either kind that stops nothing", () => {
    expect(signs([row])).toEqual([
      {
        ...row,
        faults: {},
        healthy: false,
        strokes: "both",
        warmOnly: true,
        stop: false,
      },
    ]);
  });

  test("keeps what it says of itself", () => {
    const said = {
      healthy: true,
      strokes: "four",
      warmOnly: false,
      stop: true,
      faults: { reed: 0.5 },
    } as const;
    expect(signs([{ ...row, ...said }])[0]).toMatchObject(said);
  });

  test("names its source and that the chances are estimates", () => {
    expect(table("S21", "memory")).toBe("signs table row S21; memory; chances [estimate]");
    expect(added("memory")).toBe("added to the signs table; memory; chances [estimate]");
  });
});
