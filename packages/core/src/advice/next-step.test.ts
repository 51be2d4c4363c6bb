import { describe, expect, test } from "vitest";
import { boreJet, fitted, mm } from "../metering/test-situations.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import { english } from "../words/en.ts";
import type { BikeCase, CheckResult } from "./case.ts";
import { cautionById } from "./cautions.ts";
import { checkById } from "./checks.ts";
import { faultPriorsFor, nextStep } from "./next-step.ts";
import { DRAWER, FOUND, LOOKED_OVER, ride, saw, sound, story, tested } from "./test-stories.ts";
import { adviceOf, stepsOf } from "./test-weighing.ts";

describe("[A5] look first", () => {
  test("a fault with a 40 % chance is looked for before anything else, though a test would save more", () => {
    const advice = adviceOf(
      story({ drawer: DRAWER, rides: [ride([saw("hangs-after-closing"), saw("hang-grows-with-heat")])] }),
    );
    const leak = advice.suspects[0]!;
    expect(leak.fault).toBe("air-leak");
    expect(leak.chance).toBeGreaterThan(0.4);
    expect(advice.step.kind).toBe("check");
    expect(checkById(advice.step.id)!.finds["air-leak"]).toBeGreaterThanOrEqual(0.4);
    expect(advice.others[0]!.worth).toBeGreaterThan(advice.step.worth);
  });

  const HANGS_AND_BOGS = [
    ride([saw("hangs-after-closing"), saw("bogs-hollow-no-smoke"), saw("pulls-clean-to-peak")]),
  ];

  test("a suspect that would hide the change is looked for before it, when the look is short", () => {
    // The sweep says that the screw is no cure: the pilot jet is next, which takes the bowl off.
    const tests = [tested("screw-sweep-air", "nearly-closed", { at: 2 })];
    const advice = adviceOf(story({ drawer: DRAWER, rides: HANGS_AND_BOGS, tests, checks: LOOKED_OVER }));
    const leak = advice.suspects.find(({ fault }) => fault === "air-leak")!;
    expect(leak.chance).toBeGreaterThan(1.5 * 0.08);
    expect(leak.chance).toBeLessThan(0.4);
    expect(advice.step).toMatchObject({ kind: "check", id: "look-at-boots-and-clamps" });
    expect(advice.others.find(({ kind }) => kind === "change")!.worth).toBeGreaterThan(advice.step.worth);
  });

  test("a turn of the screw is undone in a minute: before it only from a larger chance on", () => {
    const slight = adviceOf(story({ drawer: DRAWER, rides: HANGS_AND_BOGS, checks: LOOKED_OVER }));
    const chanceOf = ({ suspects }: typeof slight) =>
      suspects.find(({ fault }) => fault === "air-leak")!.chance;
    expect(chanceOf(slight)).toBeGreaterThan(0.08);
    expect(chanceOf(slight)).toBeLessThan(1.5 * 0.125);
    expect(slight.step).toMatchObject({ kind: "change", id: "screw" });
    const [heard] = HANGS_AND_BOGS;
    const more = { ...heard!, reports: [...heard!.reports, saw("idle-creeps-up-when-hot")] };
    const strong = adviceOf(story({ drawer: DRAWER, rides: [more], checks: LOOKED_OVER }));
    expect(chanceOf(strong)).toBeGreaterThan(1.5 * 0.125);
    expect(chanceOf(strong)).toBeLessThan(0.4);
    expect(strong.step).toMatchObject({ kind: "check", id: "look-at-boots-and-clamps" });
  });

  test("after that look came out sound the change comes", () => {
    const checks = [
      ...LOOKED_OVER,
      ...["look-at-boots-and-clamps", "spray-joints", "pressure-test"].map((id) => sound(id)),
    ];
    const { step } = adviceOf(
      story({
        drawer: DRAWER,
        rides: [ride([saw("hangs-after-closing"), saw("bogs-hollow-no-smoke"), saw("pulls-clean-to-peak")])],
        checks,
      }),
    );
    expect(step).toMatchObject({ kind: "change", id: "screw" });
  });

  test("a suspect out of the change's reach does not stand in its way", () => {
    const bigger = fitted({ main: known(boreJet(180)) }, FOUND);
    const advice = adviceOf(
      story({
        drawer: DRAWER,
        rides: [
          ride([saw("fades-after-ten-seconds")], { situation: bigger }),
          ride([saw("dives-below-idle"), saw("idle-loads-up"), saw("stumbles-with-smoke")], { at: 2 }),
        ],
        checks: [...LOOKED_OVER, ...["overflow-drip", "float-height"].map((id) => sound(id))],
      }),
    );
    const supply = advice.suspects.find(({ fault }) => fault === "fuel-supply")!;
    expect(supply.chance).toBeGreaterThan(0.08);
    const look = stepsOf(advice).find(
      ({ id, kind }) => kind === "check" && checkById(id)!.finds["fuel-supply"],
    )!;
    expect(look.minutes).toBeLessThanOrEqual(10);
    expect(advice.step).toMatchObject({ kind: "change", id: "screw" });
  });
});

describe("[A6] pinging", () => {
  test("first a look for another cause: fuel, spark, cooling or plug; then the rest", () => {
    const rides = [ride([saw("pings-on-roll-on")])];
    const { step } = adviceOf(story({ drawer: DRAWER, rides }));
    expect(step.kind).toBe("check");
    const { finds } = checkById(step.id)!;
    expect(
      ["fuel-or-oil-wrong", "ignition", "cooling", "plug-heat-range"].some((fault) => fault in finds),
    ).toBe(true);
    const after = adviceOf(story({ drawer: DRAWER, rides, checks: [sound(step.id)] }));
    expect(after.step.id).not.toBe(step.id);
    // One made before it pinged is no answer.
    const late = rides.map((each) => ({ ...each, at: 9 }));
    expect(adviceOf(story({ drawer: DRAWER, rides: late, checks: [sound("cooling")] })).step.kind).toBe(
      "check",
    );
  });
});

describe("[A1] minutes for minutes", () => {
  test("rich on top, all else well: a test of the top comes first", () => {
    const well = ["drops-straight-to-idle", "idles-steadily", "answers-crisply", "pulls-smoothly"];
    const { step } = adviceOf(
      story({
        drawer: DRAWER,
        rides: [ride([saw("will-not-rev-out"), ...well.map((sign) => saw(sign))])],
        checks: LOOKED_OVER,
      }),
    );
    expect(step.kind).toBe("test");
    expect(["roll-off", "full-pull", "choke-flick-at-full", "plug-look-full"]).toContain(step.id);
  });

  test("[A10] all well: confirm, and no change on offer", () => {
    const healthy = [
      "drops-straight-to-idle",
      "answers-crisply",
      "pulls-smoothly",
      "pulls-clean-to-peak",
      "four-strokes-at-about-80-percent",
    ];
    const advice = adviceOf(story({ drawer: DRAWER, rides: [ride(healthy.map((sign) => saw(sign)))] }));
    expect(advice.step.id).toBe("confirm");
    expect(advice.pictureAfter).toBeNull();
    expect(advice.others.filter(({ kind }) => kind === "change")).toEqual([]);
  });

  test("an answer that a healthy engine gives is no complaint", () => {
    const healthy = ["drops-straight-to-idle", "answers-crisply", "pulls-smoothly", "pulls-clean-to-peak"];
    const tests = [tested("tap-off-run-down", "no-clearing", { opening: null })];
    expect(
      adviceOf(story({ drawer: DRAWER, rides: [ride(healthy.map((sign) => saw(sign)))], tests })).step.id,
    ).toBe("confirm");
  });
});

describe("[A14] silence is allowed", () => {
  test("after a part that cannot be compared, what came before is left out and said, and the advice goes on", () => {
    const now = fitted({ main: known({ ...boreJet(170), maker: "Theirs" }) }, FOUND);
    const advice = adviceOf(story({ now, rides: [ride([saw("dives-below-idle")])] }));
    expect(advice.leftOut).toEqual([{ record: "ride-1", why: expect.stringMatching(/maker/) }]);
    expect(advice.step).toMatchObject({ kind: "ride", id: "ride" });
    expect(advice.picture[0]!.mean).toBeCloseTo(0, 2);
  });

  test("a ride on such parts is left out, the others count", () => {
    const foreign = fitted({ main: UNKNOWN }, FOUND);
    const advice = adviceOf(
      story({
        rides: [
          ride([saw("dives-below-idle")]),
          ride([saw("hangs-after-closing")], { at: 2, situation: foreign }),
        ],
      }),
    );
    expect(advice.leftOut.map(({ record }) => record)).toEqual(["ride-2"]);
    expect(advice.picture[0]!.mean).toBeGreaterThan(0.02);
  });

  test("each such record is said once, in whatever order they came", () => {
    const foreign = fitted({ main: UNKNOWN }, FOUND);
    const against = { situation: foreign, verdicts: [] };
    const rides = ["ride-9", "ride-2", "ride-5"].map((record, i) =>
      ride([saw("dives-below-idle")], { record, at: i, situation: foreign, against }),
    );
    for (const told of [rides, [...rides].reverse()]) {
      const records = adviceOf(story({ rides: told })).leftOut.map(({ record }) => record);
      expect(records).toEqual(["ride-2", "ride-5", "ride-9"]);
    }
  });

  test("a setup that cannot be worked out is refused with what to mend", () => {
    const now = fitted({ needleJet: known(mm(2)) }, FOUND);
    const outcome = nextStep(story({ now, reference: now }), english);
    expect(outcome.ok).toBe(false);
    expect(!outcome.ok && outcome.reason).toBe("not comparable");
    expect(!outcome.ok && outcome.detail).toMatch(/needle/);
  });
});

describe("suspects", () => {
  test("from 5 %, the likeliest first, in words; with no fault the rest of the chance", () => {
    const { suspects, soundChance } = adviceOf(
      story({ rides: [ride([saw("hang-grows-with-heat"), saw("misses-more-the-harder-it-pulls")])] }),
    );
    expect(suspects.length).toBeGreaterThan(1);
    for (const { fault, words, chance } of suspects) {
      expect(chance).toBeGreaterThanOrEqual(0.05);
      expect(words).toBe(english.faults[fault].words);
    }
    expect(suspects.map(({ chance }) => chance)).toEqual(
      suspects.map(({ chance }) => chance).sort((a, b) => b - a),
    );
    expect(soundChance).toBeLessThan(1 - suspects[0]!.chance);
  });

  test("a four-stroke has no reeds to suspect, a two-stroke no valves", () => {
    expect(faultPriorsFor(4).reed).toBe(0);
    expect(faultPriorsFor(2)["valve-clearance"]).toBe(0);
    expect(faultPriorsFor(2).reed).toBeGreaterThan(0);
    expect(faultPriorsFor(4)["valve-clearance"]).toBeGreaterThan(0);
  });
});

test("the step's setup and the picture after it are the same", () => {
  const advice = adviceOf(
    story({
      drawer: DRAWER,
      rides: [ride([saw("dives-below-idle"), saw("idle-loads-up"), saw("stumbles-with-smoke")])],
      checks: LOOKED_OVER,
    }),
  );
  expect(advice.step.kind).toBe("change");
  expect(advice.pictureAfter![0]!.mean).toBeLessThan(advice.picture[0]!.mean - 0.01);
  expect(advice.settled).toBe(true);
  expect(stepsOf(advice).filter(({ kind }) => kind === "ride")).toHaveLength(1);
});

describe("[A11] every kind of step is said in full", () => {
  const unread = fitted({ pilot: UNKNOWN, screw: UNKNOWN }, FOUND);
  const found: CheckResult = {
    record: "c",
    at: 5,
    check: "spray-joints",
    found: "faulty",
    fault: "air-leak",
  };
  const bottom = [saw("dives-below-idle"), saw("idle-loads-up"), saw("stumbles-with-smoke")];
  const kinds = new Map(
    [
      story({ rides: [ride([saw("runs-on-by-itself")])] }),
      story({ rides: [ride(bottom)], checks: [found] }),
      story({ rides: [ride(bottom, { situation: unread })], now: unread, reference: unread }),
      story({ drawer: DRAWER, rides: [ride(bottom)] }),
    ].flatMap((given) => stepsOf(adviceOf(given)).map((step) => [step.kind, step] as const)),
  );

  test.each(["stop", "mend", "look-over", "check", "test", "change", "read-parts", "ride"] as const)(
    "%s",
    (kind) => {
      const step = kinds.get(kind)!;
      for (const sentence of [step.expect, step.wrongIf, step.undo, ...step.how, ...step.notes])
        expect(sentence).toMatch(/^[A-Z0-9].*[.?]$/s);
      expect(step.how.length).toBeGreaterThan(0);
      expect(step.cautions.length).toBeGreaterThan(0);
      for (const id of step.cautions) expect(english.cautions[cautionById(id).id].length).toBeGreaterThan(0);
      expect(["free", "seconds only", "stay below 3/4"]).toContain(step.topThrottle);
      expect(step.changes.length > 0).toBe(kind === "change");
      expect(step.situation !== null).toBe(kind === "change");
      expect(step.opening === null).toBe(kind !== "test");
    },
  );

  test("a mend and a reading of parts end with what to note and to leave", () => {
    expect(kinds.get("mend")!.notes.join(" ")).toMatch(/Note the mend/);
    expect(kinds.get("mend")!.topThrottle).toBe("stay below 3/4");
    expect(kinds.get("read-parts")!.notes).toHaveLength(1);
    expect(kinds.get("read-parts")!.cautions).toEqual(
      expect.arrayContaining(["fuel-off-first", "petrol-vapour", "slide-snap-before-start", "makers-manual"]),
    );
  });

  test("a check of the other kind of engine is never asked", () => {
    const four = { strokes: 4 as const, displacement: null, acceleratorPump: true };
    const rides = [ride([saw("hangs-after-closing"), saw("hang-grows-with-heat")])];
    const asked = (given: Partial<BikeCase>) =>
      stepsOf(adviceOf(story({ rides, ...given }))).filter(({ kind }) => kind === "check");
    expect(asked({ engine: four }).length).toBeGreaterThan(0);
    for (const { id } of asked({ engine: four })) expect(checkById(id)!.strokes).not.toBe("two");
    for (const { id } of asked({})) expect(checkById(id)!.strokes).not.toBe("four");
    expect(asked({}).map(({ id }) => id)).toContain("pressure-test");
  });
});
