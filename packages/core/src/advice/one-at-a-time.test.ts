import { describe, expect, test } from "vitest";
import type { Step } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import { changeSteps } from "./change-steps.ts";
import { DRAWER, ride, saw, story } from "./test-stories.ts";
import { partsOf, stateOf, sureOf, weighingOf } from "./test-weighing.ts";
import type { Weighing } from "./weighing.ts";

const SOUND = { hypotheses: [{ fault: null, probability: 1 }] };
const weighed = (given: Partial<BikeCase>, belief = {}): Weighing =>
  weighingOf(story({ drawer: DRAWER, ...given }), { ...SOUND, ...belief });
const steps = (given: Partial<BikeCase>, belief = {}) => changeSteps(weighed(given, belief));

describe("[A12] one at a time", () => {
  const rides = [ride([saw("dives-below-idle"), saw("four-strokes-under-load"), saw("will-not-rev-out")])];
  const rich = sureOf(stateOf(() => 0.08, 0.01));

  test("only single parts, and the step says what the best set would save", () => {
    const weighing = weighed({ rides, oneChangeAtATime: true }, rich);
    const list = changeSteps(weighing);
    expect(list.length).toBeGreaterThan(2);
    for (const { changes, notes } of list) {
      expect(changes).toHaveLength(1);
      expect(notes.join(" ")).toMatch(
        /Changing .* and .* together would save about \d+ minutes on the whole/,
      );
    }
    const best = weighing.candidates.find(({ changes }) => changes.length > 1)!;
    const candidate = weighing.candidates.find(({ situation }) => situation === list[0]!.situation)!;
    const minutes = Math.round(candidate.total - best.total);
    expect(list[0]!.notes.join(" ")).toContain(`about ${minutes} minutes`);
  });

  test("a set says what one at a time would cost; a single part in free choice says nothing of it", () => {
    const list = steps({ rides }, rich);
    const sets = list.filter(({ changes }) => changes.length > 1);
    expect(sets.length).toBeGreaterThan(0);
    for (const { notes } of sets)
      expect(notes.join(" ")).toMatch(/One change at a time would cost about \d+ minutes more/);
    for (const { notes } of list.filter(({ changes }) => changes.length === 1))
      expect(notes.join(" ")).not.toMatch(/together would save|One change at a time/);
  });

  test("what it would save is told by name, from five minutes up, and only where it saves", () => {
    const said = (list: readonly Step[]) =>
      new Map(list.map(({ id, notes }) => [id, notes.filter((note) => /on the whole/.test(note))]));
    const weighing = weighed({ rides, oneChangeAtATime: true }, rich);
    for (const [, notes] of said(changeSteps(weighing))) {
      expect(notes).toHaveLength(1);
      expect(notes[0]).toMatch(
        /^Changing ((main jet|clip|pilot jet|air screw|needle)(, | and )?){2,} together would save about \d+ minutes/,
      );
    }
    // Totals moved by hand: the best set dearer than every single part, or cheaper by less than five minutes.
    const totals = (single: number, set: number): Weighing => ({
      ...weighing,
      candidates: weighing.candidates.map((candidate) => ({
        ...candidate,
        total: candidate.changes.length === 0 ? 1e6 : candidate.changes.length === 1 ? single : set,
      })),
      present: { ...weighing.present, total: 1e6 },
    });
    const counts = (single: number, set: number, oneChangeAtATime: boolean) => {
      const given = totals(single, set);
      const list = changeSteps({ ...given, story: { ...given.story, oneChangeAtATime } });
      return new Set(
        [...said(list)].map(([id, notes]) => `${id.includes("+") ? "set" : "part"} ${notes.length}`),
      );
    };
    expect(counts(100, 95, true)).toEqual(new Set(["part 1"]));
    expect(counts(100, 95.6, true)).toEqual(new Set(["part 0"]));
    expect(counts(95, 100, true)).toEqual(new Set(["part 0"]));
    expect(counts(100, 95, false)).toEqual(new Set(["part 0", "set 1"]));
    expect(counts(100, 95.6, false)).toEqual(new Set(["part 0", "set 0"]));
    expect(counts(95, 100, false)).toEqual(new Set(["part 0", "set 0"]));
  });

  test("no set is praised that may not be advised", () => {
    // The top is rich in the mean, but one part in thirty is lean there: no smaller main, in no set.
    const mixed = {
      overall: stateOf(() => 0.08, 0.02),
      parts: partsOf([
        [0.96, stateOf(() => 0.08, 0.01)],
        [0.04, stateOf((o) => (o >= 0.7 ? -0.058 : 0.08), 0.001)],
      ]),
    };
    for (const { notes } of steps({ rides, oneChangeAtATime: true }, mixed))
      expect(notes.join(" ")).not.toMatch(/Changing main jet/);
  });
});
