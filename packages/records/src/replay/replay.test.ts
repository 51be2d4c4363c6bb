import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLog, readLogText } from "../log-reader.ts";
import { bikeCase } from "./bike-case.ts";
import { knownGoodSetups } from "./known-good.ts";
import { replay } from "./replay.ts";

const fixture = (name: string): string =>
  readFileSync(new URL(`../../fixtures/version-1/${name}.jsonl`, import.meta.url), "utf8");
const lines = `${fixture("every-kind")}${fixture("ways-to-say-it")}`.trim().split("\n");

/** Everything replay says, as plain values. */
function everything(log: readonly string[]): unknown {
  const state = replay(readLog(log).entries);
  const withoutLines = JSON.parse(
    JSON.stringify(
      { ...state, bikes: [...state.bikes].sort(([a], [b]) => (a < b ? -1 : 1)), needles: [...state.needles] },
      (key, value) => (key === "line" ? undefined : value),
    ),
  );
  const cases = [...state.bikes.keys()].sort().map((bike) => bikeCase(state, bike));
  return { withoutLines, cases, good: knownGoodSetups(state) };
}

describe("[R17] the order of arrival does not matter", () => {
  const whole = everything(lines);

  test("any shuffle with any duplicates gives the same state and the same cases", () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(lines, { minLength: lines.length }),
        fc.subarray(lines),
        (shuffled, again) => {
          expect(everything([...shuffled, ...again])).toEqual(whole);
        },
      ),
      { seed: 20261125, numRuns: 25 },
    );
  });

  test("also for half a log: what is there, not how it came", () => {
    fc.assert(
      fc.property(fc.subarray(lines), (some) => {
        expect(everything([...some].reverse())).toEqual(everything(some));
      }),
      { seed: 20261125, numRuns: 25 },
    );
  });

  test("at one instant, ids typed by hand keep their order", () => {
    const fitted = (id: string, groove: number): string =>
      JSON.stringify({
        id,
        kind: "setup-fitted",
        at: "2026-05-02T10:00:00Z",
        bike: "b",
        body: { clip: { groove } },
      });
    const state = replay(readLog([fitted("r10", 4), fitted("r9", 3)]).entries);
    expect(state.bikes.get("b")!.now.setup.record).toBe("r10");
  });
});

describe("[R16] the lines of version 1 say what they said", () => {
  test("every kind", () => {
    const state = replay(readLogText(fixture("every-kind")).entries);
    const bike = state.bikes.get("bramble")!;
    expect(state.problems).toEqual([]);
    expect(state.struck.map(({ entry }) => entry.id)).toEqual(["k22"]);
    expect(bike.description).toMatchObject({ name: "Bramble 250", place: { heightM: 420 } });
    expect(bike.setups.map(({ record }) => record)).toEqual([null, "k06"]);
    expect(bike.setups.map(({ parts }) => parts.clip)).toMatchObject([{ groove: 3 }, { groove: 2 }]);
    expect(
      [bike.rides, bike.tests, bike.measurements, bike.knownGood, bike.checks].map((all) => all.length),
    ).toEqual([2, 1, 1, 1, 1]);
    expect(bike.freshStart!.id).toBe("k24");
    expect(bike.awayAt).toBe(Date.UTC(2026, 9, 30, 16));
    expect(bike.minutes).toMatchObject({ main: 6, needleJet: 35 });
    expect(state.oneChangeAtATime).toBe(true);
    expect([...state.needles.values()].map(({ id }) => id)).toEqual(["k15"]);
    expect(state.drawer).toHaveLength(7);
    expect(bike.entries.map(({ id }) => id)).not.toContain("k22");
  });

  test("the other ways to say it", () => {
    const state = replay(readLogText(fixture("ways-to-say-it")).entries);
    const bike = state.bikes.get("old-iron")!;
    expect(bike.awayAt).toBeNull();
    expect(bike.now.air!.id).toBe("w06");
    expect(bike.now.fuel!.id).toBe("w10");
    expect(bike.description).toMatchObject({
      engine: { strokes: 4 },
      carburetor: { bore: { shape: "D" }, screw: "fuel", nozzle: "unknown" },
    });
  });
});

describe("[R21] air and fuel", () => {
  const at = (hour: number): string => `2026-05-02T${String(hour).padStart(2, "0")}:00:00Z`;
  const air = (id: string, hour: number, bike?: string): string =>
    JSON.stringify({
      id,
      kind: "air-measured",
      at: at(hour),
      bike,
      body: { temperatureC: hour, heightM: 100 },
    });
  const ride = (id: string, hour: number, bike: string): string =>
    JSON.stringify({ id, kind: "ride-reported", at: at(hour), bike, body: {} });
  const airOf = (log: string[], bike: string): (string | undefined)[] =>
    replay(readLog(log).entries)
      .bikes.get(bike)!
      .rides.map(({ moment }) => moment.air?.id);

  test("hold until the next, for the bike named or for all", () => {
    const log = [
      air("shop1", 1),
      ride("r1", 2, "a"),
      air("a1", 3, "a"),
      ride("r2", 4, "a"),
      ride("r3", 4, "b"),
      air("shop2", 5),
      ride("r4", 6, "a"),
    ];
    expect(airOf(log, "a")).toEqual(["shop1", "a1", "shop2"]);
    expect(airOf(log, "b")).toEqual(["shop1"]);
  });

  test("a bike first met later has the shop's air, and its first", () => {
    const log = [air("shop1", 1), air("shop2", 2), ride("r1", 3, "late")];
    expect(airOf(log, "late")).toEqual(["shop2"]);
    expect(replay(readLog(log).entries).bikes.get("late")!.firstAir!.id).toBe("shop1");
  });
});

describe("between records", () => {
  test("[R18] a strike that finds nothing is told, and makes no bike", () => {
    const log = readLog([
      '{"id":"s","kind":"record-struck","at":"2026-05-02T10:00:00Z","bike":"ghost","body":{"record":"gone"}}',
    ]);
    const state = replay(log.entries);
    expect(state.problems).toMatchObject([{ line: 1, record: "s", path: "body.record" }]);
    expect([...state.bikes.keys()]).toEqual([]);
  });

  test("[R20] a part found that is not what the records say is told", () => {
    const fitted = (id: string, hour: number, body: object): string =>
      JSON.stringify({ id, kind: "setup-fitted", at: `2026-05-02T1${hour}:00:00Z`, bike: "b", body });
    const state = replay(
      readLog([
        fitted("a", 0, { main: { number: 175 } }),
        fitted("b", 1, { main: { number: 178 }, asFound: true }),
      ]).entries,
    );
    expect(state.problems).toMatchObject([{ record: "b", path: "body.main" }]);
  });

  test("the shop's minutes and way of working, and a bike's own over them", () => {
    const set = (id: string, kind: string, bike: string | undefined, body: object): string =>
      JSON.stringify({ id, kind, at: `2026-05-02T10:0${id}:00Z`, bike, body });
    const state = replay(
      readLog([
        set("1", "bike-described", "b", { engine: { strokes: 2 } }),
        set("2", "labour-noted", undefined, { minutes: { main: 5, pilot: 20 } }),
        set("3", "labour-noted", "b", { minutes: { pilot: 30 } }),
        set("4", "preference-set", undefined, { oneChangeAtATime: true }),
        set("5", "preference-set", "b", { oneChangeAtATime: false }),
        set("6", "preference-set", "b", {}),
        set("7", "bike-described", "c", { engine: { strokes: 4 } }),
      ]).entries,
    );
    expect(bikeCase(state, "b")).toMatchObject({
      value: { minutes: { main: 5, pilot: 30 }, oneChangeAtATime: false },
    });
    expect(bikeCase(state, "c")).toMatchObject({
      value: { minutes: { main: 5, pilot: 20 }, oneChangeAtATime: true },
    });
  });
});
