import { describe, expect, test } from "vitest";
import { adviceFor, caseFrom } from "./advice-for.ts";
import { ALL_RIGHT, FERN, lookedOver } from "./invented-bikes.ts";
import { changesOffered, waysOf } from "./which-way.ts";

// Scenarios of the middle, of unknown parts and of how many changes at once. Expected steps: common practice, no source,
// unless a line says more.

describe("rich from 1/8 to 3/4 only, and no clip cures it", () => {
  const before = `${FERN}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[{"sign":"four-strokes-under-load","opening":"1/4"},{"sign":"heavy-in-the-middle-clean-on-top"},{"sign":"drops-straight-to-idle"},{"sign":"pulls-clean-to-peak"},{"sign":"will-not-rev-out","seen":false}]}}
{"id":"r2","kind":"setup-fitted","at":"2026-05-02T09:30:00Z","bike":"fern","body":{"clip":{"groove":2},"why":"rich in the middle","replaces":"a4"}}
{"id":"r3","kind":"ride-reported","at":"2026-05-02T10:00:00Z","bike":"fern","body":{"reports":[{"sign":"four-strokes-under-load","opening":"1/4"},{"sign":"heavy-in-the-middle-clean-on-top"}],"against":{"felt":[{"opening":"1/4","felt":"same"},{"opening":"1/2","felt":"same"}]}}}`;
  const log = `${before}
{"id":"r4","kind":"ride-reported","at":"2026-05-02T10:05:00Z","bike":"fern","body":{"reports":[{"sign":"clip-moves-make-no-difference"}]}}`;

  // A worn needle jet goes rich in the middle: read in a stored copy (a workshop's page on carburetor wear, German).
  test("leads to measuring needle and needle jet", () => {
    const { step, suspects } = adviceFor(log, "fern");
    expect(step).toMatchObject({ kind: "check", id: "measure-needle-and-jet" });
    expect(suspects[0]?.fault).toBe("worn-needle-and-jet");
  });

  test("it is the clip without effect that says so: before it the suspect is small", () => {
    const first = before.slice(0, before.indexOf('\n{"id":"r2"'));
    const chance = (text: string) =>
      adviceFor(text, "fern").suspects.find(({ fault }) => fault === "worn-needle-and-jet")?.chance ?? 0;
    expect(chance(first)).toBeLessThan(0.35);
    expect(chance(log)).toBeGreaterThan(0.5);
  });

  test("measured and found worn, it is replaced before any jet", () => {
    const { step } = adviceFor(
      `${log}
{"id":"r5","kind":"check-done","at":"2026-05-02T11:00:00Z","bike":"fern","body":{"check":"measure-needle-and-jet","found":"faulty","words":"jet 2.76 at its mouth, oval"}}`,
      "fern",
    );
    expect(step).toMatchObject({ kind: "mend", id: "worn-needle-and-jet" });
    expect(step.how.join(" ")).toMatch(/new together/);
  });
});

describe("a weak spark that looks rich: misses more the harder it pulls, plug the same whatever the jets", () => {
  const log = `${FERN}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[{"sign":"misses-more-the-harder-it-pulls"},{"sign":"four-strokes-under-load","opening":"1/2"},{"sign":"plug-same-whatever-the-jets"},{"sign":"drops-straight-to-idle"}]}}`;

  test("leads to plug, cap, lead and spark before any jet", () => {
    const { step, suspects } = adviceFor(log, "fern");
    expect(step).toMatchObject({ kind: "check", id: "spark-and-plug" });
    expect(suspects[0]?.fault).toBe("ignition");
  });

  test("without those two signs the same burble is taken for rich", () => {
    const plain = `${FERN}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[{"sign":"four-strokes-under-load","opening":"1/2"},{"sign":"drops-straight-to-idle"}]}}`;
    const chance = (text: string) =>
      adviceFor(text, "fern").suspects.find(({ fault }) => fault === "ignition")?.chance ?? 0;
    expect(chance(log)).toBeGreaterThan(3 * chance(plain));
    expect(adviceFor(plain, "fern").picture[3]!.mean).toBeGreaterThan(
      adviceFor(log, "fern").picture[3]!.mean,
    );
  });
});

describe("a used bike of which nobody knows the parts", () => {
  const unknown = FERN.replace(
    /"asFound":true.*/,
    '"asFound":true,"main":"unknown","pilot":"unknown","needle":"unknown","clip":"unknown","needleJet":"unknown","slide":"unknown","screw":"unknown"}}',
  );
  const log = `${unknown}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[{"sign":"four-strokes-under-load","opening":"1/2"},{"sign":"stumbles-with-smoke"},{"sign":"will-not-rev-out"}]}}${lookedOver("fern")}`;

  test("has its parts read before any change", () => {
    const { step, others } = adviceFor(log, "fern");
    expect(step.kind).toBe("read-parts");
    for (const part of ["pilot jet", "main jet", "needle", "clip", "screw"])
      expect(step.title).toContain(part);
    expect(others.filter(({ kind }) => kind === "change")).toEqual([]);
  });

  test("once read, what was reported before counts, and the jets or a test of them come next", () => {
    const read = `${log}
{"id":"r2","kind":"setup-fitted","at":"2026-05-02T11:00:00Z","bike":"fern","body":{"asFound":true,"main":{"number":190,"how":"read by eye"},"pilot":{"number":50,"how":"read by eye"},"needle":{"marks":"none","grooves":5,"groovePitchMm":0.9},"clip":{"groove":4,"how":"read by eye"},"slide":{"cutawayMm":3.5},"screw":{"turnsOut":1,"how":"measured"}}}`;
    const advice = adviceFor(read, "fern");
    expect(advice.step.kind).not.toBe("read-parts");
    expect(advice.picture[3]!.mean).toBeGreaterThan(0.03);
    expect(["change", "test"]).toContain(advice.step.kind);
    for (const step of changesOffered(advice)) {
      const { pilot, clip, main } = waysOf(caseFrom(read, "fern").now.setup, step);
      expect(Math.max(pilot, clip, main), step.title).toBeLessThanOrEqual(0);
    }
  });
});

describe("rich all over", () => {
  const log = `${FERN}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[{"sign":"dives-below-idle"},{"sign":"stumbles-with-smoke","opening":"1/8"},{"sign":"four-strokes-under-load","opening":"1/2"},{"sign":"will-not-rev-out"},{"sign":"four-strokes-after-tiny-cut"}]}}`;
  const insists = `${log}
{"id":"r2","kind":"preference-set","at":"2026-05-02T09:10:00Z","bike":"fern","body":{"oneChangeAtATime":true}}`;

  test("with one change at a time insisted on, every change offered is of one part", () => {
    const changes = changesOffered(adviceFor(insists, "fern"));
    expect(changes.length).toBeGreaterThan(1);
    for (const { changes: parts } of changes) expect(parts).toHaveLength(1);
  });

  test("and what it costs is said in minutes", () => {
    const said = changesOffered(adviceFor(insists, "fern")).flatMap(({ notes }) => notes);
    expect(said.join(" ")).toMatch(/together would save about \d+ minutes.*one at a time tells more surely/);
  });

  test("left free, sets are offered too, and every change goes leaner", () => {
    const advice = adviceFor(log, "fern");
    const changes = changesOffered(advice);
    expect(changes.some(({ changes: parts }) => parts.length > 1)).toBe(true);
    for (const step of changes) {
      const ways = waysOf(caseFrom(log, "fern").now.setup, step);
      expect(Math.min(ways.pilot, ways.screw, ways.clip, ways.main), step.title).toBe(-1);
      expect(Math.max(ways.clip, ways.main), step.title).toBeLessThanOrEqual(0);
    }
  });
});

test("everything good: nothing needs changing, confirm with this ride", () => {
  const { step } = adviceFor(
    `${FERN}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[${ALL_RIGHT}]}}`,
    "fern",
  );
  expect(step).toMatchObject({ kind: "ride", id: "confirm" });
  expect(step.title).toMatch(/nothing needs changing/i);
  expect(step.changes).toEqual([]);
});
