import { english } from "@jetwright/core/words/en";
import { writeRecord } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import { EngineState } from "../state.ts";
import { adviceFor } from "./advice.ts";
import { bikeList } from "./bikes.ts";
import { fittedOn } from "./fitted.ts";
import { type MixtureThere, standingOf, stretchesOf } from "./standing.ts";

const HOUR = 3_600_000;
const FROM = Date.parse("2026-05-01T08:00:00Z");

type Told = readonly [kind: string, body: object, bike?: string | null];

/** A log in which one thing is told every hour. */
function stateOf(...told: readonly Told[]): EngineState {
  const state = new EngineState();
  state.speak(english);
  state.add(
    told.map(([kind, body, bike = "b"], i) =>
      writeRecord({
        id: `r${i}`,
        kind,
        v: 1,
        at: new Date(FROM + i * HOUR).toISOString(),
        ...(bike === null ? {} : { bike }),
        body: body as never,
      }),
    ),
  );
  return state;
}

const DESCRIBED: Told = [
  "bike-described",
  {
    name: "Bramble",
    engine: { strokes: 2, displacementCc: 249 },
    carburetor: { bore: { shape: "round", diameterMm: 38 }, screw: "air", jetNumbering: "bore" },
    place: { heightM: 420 },
  },
];
const FITTED: Told = [
  "setup-fitted",
  {
    pilot: { number: 45, how: "read by eye" },
    main: { number: 170, how: "measured" },
    screw: { turnsOut: 1.5 },
    needle: { marks: "N", grooves: 5 },
    mainAirJet: { number: 60 },
    asFound: true,
  },
];
const RICH_BELOW: Told = [
  "ride-reported",
  {
    reports: [
      { sign: "idle-loads-up", opening: "closed" },
      { sign: "dives-below-idle", opening: "closed" },
      { sign: "stumbles-with-smoke", opening: "1/8" },
    ],
  },
];
const ask = (state: EngineState) => {
  const standing = standingOf(state, { bike: "b" });
  if (!standing.ok) throw new RangeError(standing.detail);
  return standing.value;
};

describe("how a bike stands", () => {
  test("is not told by a bike nobody has ridden", () => {
    const standing = ask(stateOf(DESCRIBED, FITTED));
    expect(standing.told).toBe(0);
    expect(standing.at).toHaveLength(6);
    expect(standing.air).toMatchObject({ heightM: 420, noted: false });
    expect(standing.rightAt).toBeNull();
    expect(standing.lastAdvice).toBeNull();
  });

  test("is rich where the ride said so, and agrees with the picture of the advice", () => {
    const state = stateOf(DESCRIBED, FITTED, RICH_BELOW);
    const { at, told, dates } = ask(state);
    expect(told).toBe(1);
    expect(at[0]!.leaning).toBe("rich");
    expect(at[0]!.percent).toBeGreaterThan(6);
    const advice = adviceFor(state, { bike: "b" });
    if (!advice.ok) throw new RangeError(advice.detail);
    advice.value.picture.forEach(({ mean, sd }, i) => {
      expect(at[i]!.percent).toBeCloseTo(100 * (Math.exp(mean) - 1), 9);
      expect(at[i]!.sdPercent).toBeCloseTo(100 * sd, 9);
    });
    for (const { record } of advice.value.step.why) expect(dates[record]).toBe(FROM + 2 * HOUR);
  });

  test("remembers what was marked right, until the parts change", () => {
    const marked = [
      DESCRIBED,
      FITTED,
      ["air-measured", { temperatureC: 14, heightM: 640 }] as const,
    ] as const;
    const good: Told = ["known-good-marked", {}];
    expect(ask(stateOf(...marked, good)).rightAt).toEqual({ at: FROM + 3 * HOUR, celsius: 14, heightM: 640 });
    const changed: Told = ["setup-fitted", { main: { number: 175 } }];
    expect(ask(stateOf(...marked, good, changed)).rightAt).toBeNull();
  });

  test("knows the last thing written only where that is advice", () => {
    const advice: Told = ["advice-given", { words: "Ride it.", followed: true }];
    expect(ask(stateOf(DESCRIBED, advice)).lastAdvice).toEqual({ words: "Ride it.", followed: true });
    expect(ask(stateOf(DESCRIBED, advice, RICH_BELOW)).lastAdvice).toBeNull();
  });

  test("offers the looks that answer a stop sign, and only then", () => {
    expect(ask(stateOf(DESCRIBED, FITTED, RICH_BELOW)).looks).toEqual([]);
    const stop: Told = ["ride-reported", { reports: [{ sign: "specks-on-plug" }] }];
    const { looks } = ask(stateOf(DESCRIBED, FITTED, stop));
    expect(looks.find(({ id }) => id === "pressure-test")?.first).toBe(true);
    expect(looks.find(({ id }) => id === "float-height")?.first).toBe(false);
    // Valves are a four-stroke's.
    expect(looks.map(({ id }) => id)).not.toContain("valve-clearance");
  });

  test("names the check that found what is to be put right", () => {
    const found: Told = ["check-done", { check: "air-filter", found: "faulty" }];
    expect(Object.values(ask(stateOf(DESCRIBED, FITTED, RICH_BELOW, found)).checkOf)).toEqual(["air-filter"]);
  });

  test("is refused for a bike nobody described", () => {
    expect(standingOf(stateOf(RICH_BELOW), { bike: "b" }).ok).toBe(false);
    expect(standingOf(stateOf(DESCRIBED), { bike: "other" }).ok).toBe(false);
  });
});

test("openings that lean one way are one stretch, sure only where each is", () => {
  const there = (opening: number, leaning: MixtureThere["leaning"], sure: boolean) =>
    ({ opening, leaning, sure, percent: 0, sdPercent: 0 }) as unknown as MixtureThere;
  expect(
    stretchesOf([
      there(0, "rich", true),
      there(0.125, "rich", false),
      there(0.25, "right", true),
      there(0.5, "right", true),
      there(0.75, "lean", true),
      there(1, "rich", true),
    ]),
  ).toEqual([
    { from: "closed", to: "1/8", leaning: "rich", sure: false },
    { from: "1/4", to: "1/2", leaning: "right", sure: true },
    { from: "3/4", to: "3/4", leaning: "lean", sure: true },
    { from: "full", to: "full", leaning: "rich", sure: true },
  ]);
});

describe("what is fitted", () => {
  const rowsOf = (state: EngineState) => {
    const fitted = fittedOn(state, { bike: "b" });
    if (!fitted.ok) throw new RangeError(fitted.detail);
    return { ...fitted.value, by: new Map(fitted.value.rows.map((row) => [row.part, row])) };
  };

  test("is every part in words, with how it is known", () => {
    const { by, screw, numbering, grooves, rows } = rowsOf(stateOf(DESCRIBED, FITTED));
    expect(rows).toHaveLength(10);
    expect(by.get("pilot")).toMatchObject({ value: "45 (bore, 1/100 mm)", how: "read by eye" });
    expect(by.get("main")).toMatchObject({ how: "measured", told: { number: 170 } });
    expect(by.get("screw")).toMatchObject({ value: "1½ turns out", how: "told" });
    expect(by.get("clip")).toMatchObject({ value: null, how: "unknown" });
    expect([screw, numbering, grooves]).toEqual(["air", "bore", 5]);
  });

  test("shows the turns of a screw whose side nobody looked at", () => {
    const { by, screw } = rowsOf(stateOf(["bike-described", { engine: { strokes: 2 } }], FITTED));
    expect(screw).toBeNull();
    expect(by.get("screw")).toMatchObject({ value: "1½ turns out", how: "told" });
  });
});

describe("the state of a bike in the list", () => {
  const of = (...told: readonly Told[]) => bikeList(stateOf(...told), null)[0]!.state;
  const stop: Told = ["ride-reported", { reports: [{ sign: "specks-on-plug" }] }];

  test("is what it waits for", () => {
    expect(of(DESCRIBED, FITTED)).toBe("nothing-told");
    expect(of(DESCRIBED, FITTED, RICH_BELOW)).toBe("in-work");
    expect(of(DESCRIBED, FITTED, RICH_BELOW, ["setup-fitted", { pilot: { number: 42 } }])).toBe("not-ridden");
    expect(of(DESCRIBED, FITTED, RICH_BELOW, ["known-good-marked", {}])).toBe("right");
    expect(of(DESCRIBED, FITTED, ["known-good-marked", {}], RICH_BELOW)).toBe("in-work");
  });

  test("is stopped from a stop sign until a look answers it", () => {
    expect(of(DESCRIBED, FITTED, stop)).toBe("stopped");
    expect(of(DESCRIBED, FITTED, ["test-done", { test: "plug-look-full", outcome: "specks" }])).toBe(
      "stopped",
    );
    expect(of(DESCRIBED, FITTED, stop, ["check-done", { check: "compression", found: "sound" }])).toBe(
      "in-work",
    );
    expect(of(DESCRIBED, ["ride-reported", { reports: [{ sign: "specks-on-plug", seen: false }] }])).toBe(
      "in-work",
    );
  });

  test("those put away come last", () => {
    const list = bikeList(
      stateOf(
        ["bike-described", { engine: { strokes: 2 } }, "a"],
        ["bike-described", { engine: { strokes: 4 } }, "c"],
        ["bike-put-away", {}, "c"],
      ),
      null,
    );
    expect(list.map(({ id, away }) => [id, away])).toEqual([
      ["a", false],
      ["c", true],
    ]);
  });
});
