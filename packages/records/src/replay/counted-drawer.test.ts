import { describe, expect, test } from "vitest";
import { readLog } from "../log-reader.ts";
import { replay } from "./replay.ts";
import { shopDrawer } from "./si-drawer.ts";

let hour = 10;
const line = (kind: string, parts: object[]): string => {
  hour++;
  return JSON.stringify({ id: `d${hour}`, kind, at: `2026-05-02T${hour}:00:00Z`, body: { parts } });
};
const main = (number: number, count: number, more: object = {}): object => ({
  part: "main",
  number,
  numbering: "bore",
  count,
  ...more,
});
const drawer = (lines: string[]): ReturnType<typeof replay> => {
  hour = 10;
  return replay(readLog(lines).entries);
};

describe("[R22] the drawer", () => {
  test("counted, plus bought, less used; a later count replaces", () => {
    const state = drawer([
      line("parts-counted", [main(170, 2), main(175, 1)]),
      line("parts-bought", [main(170, 3), main(180, 1)]),
      line("parts-used", [main(170, 1), main(175, 1)]),
    ]);
    expect(shopDrawer(state).mains.map(({ part, count }) => `${part.number} x${count}`)).toEqual([
      "170 x4",
      "175 x0",
      "180 x1",
    ]);
    const recounted = drawer([line("parts-counted", [main(170, 2)]), line("parts-counted", [main(170, 7)])]);
    expect(shopDrawer(recounted).mains[0]!.count).toBe(7);
  });

  test("never below none, and it is said", () => {
    const state = drawer([line("parts-used", [main(170, 2)]), line("parts-bought", [main(170, 5)])]);
    expect(shopDrawer(state).mains[0]!.count).toBe(5);
    expect(state.problems).toMatchObject([
      { record: "d11", what: "more of a main were used than the drawer held" },
    ]);
  });

  test("another numbering or maker is another jet; another spelling of the maker is not", () => {
    const state = drawer([
      line("parts-counted", [
        main(170, 1, { maker: "Foundry" }),
        main(170, 2, { maker: " FOUNDRY " }),
        main(170, 4, { numbering: "flow", maker: "Foundry" }),
        main(170, 8),
      ]),
    ]);
    expect(state.drawer.map(({ count }) => count).sort()).toEqual([2, 4, 8]);
  });

  test("a main and a pilot of one number are two parts; sizes come out in SI, small to large", () => {
    const state = drawer([
      line("parts-counted", [
        { part: "pilot", number: 42, numbering: "bore", count: 1 },
        main(42, 1),
        { part: "slide", cutawayMm: 4, count: 1 },
        { part: "slide", cutawayMm: 3.5, count: 2 },
        { part: "needleJet", boreMm: 2.7, count: 1 },
        { part: "needle", marks: "B", grooves: 5, groovePitchMm: 1, count: 1 },
        { part: "needle", marks: "A", grooves: 4, groovePitchMm: 0.9, straightDiameterMm: 2.5, count: 1 },
        { part: "needle", marks: " a", count: 3 },
      ]),
    ]);
    const si = shopDrawer(state);
    expect(si.pilots).toHaveLength(1);
    expect(si.mains).toHaveLength(1);
    expect(si.slides.map(({ part }) => part)).toEqual([0.0035, 0.004]);
    expect(si.needleJets[0]!.part).toBeCloseTo(0.0027, 12);
    expect(si.needles.map(({ part, count }) => [part.marks, part.grooves, count])).toEqual([
      ["A", 4, 3],
      ["B", 5, 1],
    ]);
    expect(si.needles.find(({ part }) => part.grooves === 4)!.part.profile!.straightDiameter).toBeCloseTo(
      0.0025,
      12,
    );
  });
});
