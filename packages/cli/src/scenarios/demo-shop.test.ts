import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Advice, nextStep, OPENINGS, shiftBetween, totalAt } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { bikeCase, KINDS, readLogText, replay } from "@jetwright/records";
import { describe, expect, test } from "vitest";

// The demo log: it reads clean, every bike gets an answer, and each history teaches what it was written for.
// What a technician would do at each place: common practice, no source.

const log = readLogText(readFileSync(join(import.meta.dirname, "../../../../demo/shop.jsonl"), "utf8"));
const state = replay(log.entries);
const bikes = [...state.bikes.keys()];

/** The advice for a bike as it stood once that record was written. */
function adviceAfter(record: string): Advice {
  const end = log.entries.findIndex(({ id }) => id === record);
  const entry = log.entries[end];
  if (entry === undefined || !("bike" in entry) || entry.bike === null) throw new Error(`no ${record}`);
  return adviceOf(entry.bike as string, log.entries.slice(0, end + 1));
}

const given = new Map<string, Advice>();

/** The advice for a bike at the end of those records; worked out once. */
function adviceOf(bike: string, entries = log.entries): Advice {
  const key = `${bike} ${entries.length}`;
  const before = given.get(key);
  if (before !== undefined) return before;
  const replayed = bikeCase(replay(entries), bike);
  if (!replayed.ok) throw new Error(replayed.detail);
  const advice = nextStep(replayed.value, english);
  if (!advice.ok) throw new Error(advice.detail);
  given.set(key, advice.value);
  return advice.value;
}

const chanceOf = (advice: Advice, fault: string): number =>
  advice.suspects.find((suspect) => suspect.fault === fault)?.chance ?? 0;

describe("the demo log", () => {
  test("reads with no problem and nothing to remark", () => {
    expect(log.problems).toEqual([]);
    expect(log.notes).toEqual([]);
    expect(log.counts.used).toBe(log.counts.lines);
  });

  test("is a shop of at least six bikes, two-strokes of 65 to 300 and a four-stroke among them", () => {
    expect(bikes.length).toBeGreaterThanOrEqual(6);
    const engines = bikes.map((bike) => state.bikes.get(bike)!.description!.engine!);
    const twos = engines.filter(({ strokes }) => strokes === 2).map(({ displacementCc }) => displacementCc!);
    expect(Math.min(...twos)).toBeLessThan(66);
    expect(twos.some((cc) => cc > 280 && cc < 300)).toBe(true);
    expect(engines.some(({ strokes, acceleratorPump }) => strokes === 4 && acceleratorPump)).toBe(true);
  });

  test("shows every kind of record but two", () => {
    // No engine was held against its ignition so far, and what was erased leaves nothing to show.
    const shown = new Set([...log.entries.map(({ kind }) => kind), "sound-proved", "person-erased"]);
    expect(KINDS.map(({ kind }) => kind).filter((kind) => !shown.has(kind))).toEqual([]);
  });

  test("is in the order things happened", () => {
    const times = log.entries.map(({ at }) => at);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });

  test.each(bikes)("%s gets advice", (bike) => {
    const { step, picture } = adviceOf(bike);
    expect(step.title.length).toBeGreaterThan(10);
    expect(picture).toHaveLength(6);
  });
});

describe("what riders felt agrees with what the parts did", () => {
  // The Kestrel's needle jet was worn, then replaced: there the clip did nothing, which is its lesson.
  const worn = new Set(["ke-06", "ke-08", "ke-17"]);
  // Which way the parts had moved when it felt better: 1 richer, -1 leaner.
  const RICHER_WAS_BETTER: Record<string, number> = {
    "wr-14": 1,
    "he-15": -1,
    "br-13": -1,
    "br-16": -1,
    "ju-09": -1,
  };
  const felt = bikes.flatMap((bike) => {
    const replayed = bikeCase(state, bike);
    if (!replayed.ok) throw new Error(replayed.detail);
    return replayed.value.rides.flatMap((ride) =>
      ride.against === null || worn.has(ride.record)
        ? []
        : ride.against.verdicts.map((verdict) => ({ ride, verdict, before: ride.against!.situation })),
    );
  });

  test.each(
    felt.map(
      (each) => [`${each.ride.record} at ${each.verdict.opening}: ${each.verdict.felt}`, each] as const,
    ),
  )("%s", (_, { ride, verdict, before }) => {
    const shift = shiftBetween(before, ride.situation);
    if (!shift.ok) throw new Error(shift.detail);
    const moved = totalAt(shift.value, OPENINGS.indexOf(verdict.opening));
    if (verdict.felt === "same") expect(Math.abs(moved)).toBeLessThan(0.03);
    else expect(RICHER_WAS_BETTER[ride.record]! * moved).toBeGreaterThan(0.02);
  });

  test("there are verdicts to judge", () => {
    expect(felt.length).toBeGreaterThan(12);
    expect(OPENINGS).toContain(felt[0]!.verdict.opening);
  });
});

describe("Bramble 250: plain rich", () => {
  test("as it came it reads rich from bottom to top", () => {
    const { picture } = adviceAfter("br-05");
    for (const { mean } of picture) expect(mean).toBeGreaterThan(0.03);
  });

  test("two changes cured the middle and the top", () => {
    const { picture } = adviceOf("bramble");
    expect(Math.abs(picture[3]!.mean)).toBeLessThan(0.04);
    expect(Math.abs(picture[5]!.mean)).toBeLessThan(0.04);
    expect(picture[0]!.mean).toBeGreaterThan(0.08);
  });

  test("the log ends with one clear step: leaner at the pilot circuit, with its reasons", () => {
    const { step, pictureAfter, picture } = adviceOf("bramble");
    expect(step.kind).toBe("change");
    expect(step.changes.every(({ part }) => part === "pilot" || part === "screw")).toBe(true);
    expect(pictureAfter![0]!.mean).toBeLessThan(picture[0]!.mean - 0.05);
    expect(step.why.length).toBeGreaterThanOrEqual(2);
    expect(step.sure.chance).toBeGreaterThan(0.75);
    expect(step.topThrottle).toBe("free");
  });
});

describe("Wren 65: a lean pilot", () => {
  test("after the sound pressure test and the sweep it reads lean at the bottom only", () => {
    const { picture } = adviceAfter("wr-10");
    expect(picture[0]!.mean).toBeLessThan(-0.06);
    expect(Math.abs(picture[5]!.mean)).toBeLessThan(0.03);
  });

  test("no step on the way leaned the pilot, and the bigger jet ended it", () => {
    for (const record of ["wr-05", "wr-07", "wr-10"]) {
      const { step, picture, pictureAfter } = adviceAfter(record);
      if (step.kind === "change") expect(pictureAfter![0]!.mean).toBeGreaterThan(picture[0]!.mean);
    }
    expect(adviceOf("wren").step).toMatchObject({ kind: "ride", id: "confirm" });
  });
});

describe("Sorrel 125: an air leak that looks lean", () => {
  test("before the mend a leak check was advised, again and again, and no jet", () => {
    for (const record of ["so-05", "so-07"]) {
      const { step } = adviceAfter(record);
      expect(step.kind).toBe("check");
      expect(["look-at-boots-and-clamps", "spray-joints", "pressure-test"]).toContain(step.id);
    }
    expect(adviceAfter("so-08").step).toMatchObject({ kind: "mend", id: "air-leak" });
  });

  test("after it the same jets are right", () => {
    expect(adviceOf("sorrel").step).toMatchObject({ kind: "ride", id: "confirm" });
    expect(chanceOf(adviceAfter("so-08"), "air-leak")).toBeGreaterThan(0.9);
    expect(chanceOf(adviceOf("sorrel"), "air-leak")).toBeLessThan(0.05);
  });
});

describe("Kestrel 300: a worn needle jet", () => {
  test("the suspicion grows with every clip that changes nothing", () => {
    const grown = ["ke-04", "ke-06", "ke-08"].map((record) =>
      chanceOf(adviceAfter(record), "worn-needle-and-jet"),
    );
    expect(grown[2]).toBeGreaterThan(grown[0]!);
    expect(grown[2]).toBeGreaterThan(0.5);
  });

  test("then: measure; measured worn: replace; replaced and clean: confirm", () => {
    expect(adviceAfter("ke-08").step).toMatchObject({ kind: "check", id: "measure-needle-and-jet" });
    expect(adviceAfter("ke-10").step).toMatchObject({ kind: "mend", id: "worn-needle-and-jet" });
    expect(adviceOf("kestrel").step).toMatchObject({ kind: "ride", id: "confirm" });
  });
});

describe("Heron 250: up to Skelter Pass and back", () => {
  test("up there it reads rich before a wheel has turned", () => {
    for (const { mean } of adviceAfter("he-10").picture.slice(1)) expect(mean).toBeGreaterThan(0.05);
  });

  test("leaned, it is right in that air", () => {
    for (const { mean } of adviceAfter("he-15").picture) expect(Math.abs(mean)).toBeLessThan(0.05);
  });

  test("carried back down it reads lean, and the step is richer before it is ridden", () => {
    const { step, picture, pictureAfter } = adviceAfter("he-21");
    expect(picture[5]!.mean).toBeLessThan(-0.04);
    expect(step.kind).toBe("change");
    expect(pictureAfter![5]!.mean).toBeGreaterThan(picture[5]!.mean + 0.03);
  });

  test("changed back, it is as it was", () => {
    expect(adviceOf("heron").step).toMatchObject({ kind: "ride", id: "confirm" });
  });
});

describe("Thistle 200: fades along the beach", () => {
  test("flow and vents before a bigger main jet", () => {
    const { step } = adviceAfter("th-04");
    expect(step.kind).toBe("look-over");
    expect(step.looks).toEqual(expect.arrayContaining(["fuel-flow", "tap-and-vents"]));
    expect(adviceAfter("th-06").step).toMatchObject({ kind: "mend", id: "fuel-supply" });
    expect(adviceOf("thistle").step).toMatchObject({ kind: "ride", id: "confirm" });
  });
});

describe("Old Iron 350 and Juniper 250: nobody knows what is fitted", () => {
  test("they are looked over, and what is fitted is read before any change", () => {
    for (const { step, others } of [adviceOf("old-iron"), adviceAfter("ju-04")]) {
      expect(step.kind).toBe("look-over");
      expect(others.find(({ kind }) => kind === "read-parts" || kind === "change")?.kind).toBe("read-parts");
    }
  });

  test("a seizure written to the wrong machine and struck stops nothing", () => {
    expect(adviceAfter("oi-07").step.kind).toBe("stop");
    expect(adviceOf("old-iron").step.kind).not.toBe("stop");
  });

  test("read, the Juniper gets its filter looked at and is then leaned; after its new cylinder the story starts afresh", () => {
    const { step, others } = adviceAfter("ju-06");
    expect(step.kind).toBe("look-over");
    expect(step.looks).toContain("air-filter");
    const change = others.find(({ kind }) => kind === "change")!;
    expect(change.changes.map(({ part }) => part)).toEqual(["screw"]);
    expect(change.expect).toMatch(/^Leaner/);
    expect(adviceAfter("ju-13").step).toMatchObject({ kind: "ride", id: "ride" });
  });
});
