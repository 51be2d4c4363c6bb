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
      { record: "d11", what: "a main jet 170 was taken that the drawer did not hold" },
    ]);
  });

  const fitted = (id: string, hour: number, bike: string, body: object): string =>
    JSON.stringify({ id, kind: "setup-fitted", at: `2026-05-03T${hour}:00:00Z`, bike, body });
  const strike = (record: string): string =>
    JSON.stringify({
      id: `s-${record}`,
      kind: "record-struck",
      at: "2026-05-04T10:00:00Z",
      body: { record },
    });
  const count = (state: ReturnType<typeof replay>, number: number): number | undefined =>
    shopDrawer(state).mains.find(({ part }) => part.number === number)?.count;
  const change = fitted("f1", 11, "fern", {
    main: { number: 170 },
    drawer: { took: [main(170, 1)], kept: [main(175, 1)] },
  });
  const before = fitted("f0", 10, "fern", { main: { number: 175 } });

  test("a part fitted from it goes out, the one that came off goes in; a strike takes both back", () => {
    const counted = line("parts-counted", [main(170, 2)]);
    const state = drawer([counted, before, change]);
    expect([count(state, 170), count(state, 175)]).toEqual([1, 1]);
    expect(state.problems).toEqual([]);
    const undone = drawer([counted, before, change, strike("f1")]);
    expect([count(undone, 170), count(undone, 175)]).toEqual([2, undefined]);
  });

  test("a part fitted that nobody says came from it leaves it alone", () => {
    const state = drawer([
      line("parts-counted", [main(170, 2)]),
      fitted("f1", 11, "fern", { main: { number: 170 } }),
    ]);
    expect(count(state, 170)).toBe(2);
  });

  test("the last jet fitted on two bikes by two phones that did not hear of each other: none is left, and it is said", () => {
    const counted = line("parts-counted", [main(170, 1)]);
    const other = fitted("f2", 13, "moss", { main: { number: 170 }, drawer: { took: [main(170, 1)] } });
    for (const lines of [
      [counted, before, change, other],
      [other, change, before, counted],
    ]) {
      const state = drawer(lines);
      expect(count(state, 170)).toBe(0);
      expect(state.shortages).toMatchObject([{ taken: { id: "f2" }, lastTaken: { id: "f1", bike: "fern" } }]);
      expect(state.problems).toMatchObject([
        {
          record: "f2",
          path: "body.drawer.took",
          what: 'a main jet 170 was taken that the drawer did not hold: "f1" had taken the last one, for "fern"',
        },
      ]);
    }
    // Struck, or counted anew: nothing is left to say. What is bought later does not explain the past.
    expect(drawer([counted, before, change, other, strike("f2")]).shortages).toEqual([]);
    const after = (kind: string): string =>
      JSON.stringify({ id: "x", kind, at: "2026-05-03T14:00:00Z", body: { parts: [main(170, 3)] } });
    expect(drawer([counted, change, other, after("parts-counted")]).shortages).toEqual([]);
    const bought = drawer([counted, change, other, after("parts-bought")]);
    expect([bought.shortages.length, count(bought, 170)]).toEqual([1, 3]);
  });

  test("what came off is not what was fitted by the records: counted as told, and said", () => {
    const wrong = fitted("f1", 11, "fern", { main: { number: 170 }, drawer: { kept: [main(180, 1)] } });
    const state = drawer([before, wrong]);
    expect(count(state, 180)).toBe(1);
    expect(state.problems).toMatchObject([{ record: "f1", path: "body.drawer.kept" }]);
    // Nobody knew what was in: nothing to hold it against.
    expect(drawer([wrong]).problems).toEqual([]);
  });

  test("parts found fitted move nothing in or out", () => {
    const log = readLog([
      fitted("f1", 11, "fern", { main: { number: 170 }, asFound: true, drawer: { took: [main(170, 1)] } }),
    ]);
    expect(log.problems).toMatchObject([{ record: "f1", path: "body.drawer" }]);
    const state = replay(log.entries);
    expect(state.drawer).toEqual([]);
    expect(state.bikes.get("fern")!.now.setup.parts.main).toEqual({ number: 170 });
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
