import { expect, test } from "vitest";
import { known, UNKNOWN } from "../parts/known.ts";
import { english } from "../words/en.ts";
import { marked } from "../words/test-catalogue.ts";
import type { Advice, Step } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import { nextStep } from "./next-step.ts";
import { DRAWER, FOUND, ride, saw, story, tested } from "./test-stories.ts";
import { stepsOf } from "./test-weighing.ts";

const NO_LANGUAGE = marked(english);

function advise(given: BikeCase, words: typeof english): Advice {
  const outcome = nextStep(given, words);
  if (!outcome.ok) throw new RangeError(outcome.detail);
  return outcome.value;
}

/** What is left of a step without its words. */
const bare = (step: Step) => ({
  ...step,
  title: null,
  how: step.how.length,
  tools: step.tools.length,
  why: step.why.map(({ record }) => record),
  expect: null,
  wrongIf: null,
  undo: null,
  notes: step.notes.length,
  changes: step.changes.map(({ part, inDrawer }) => ({ part, inDrawer })),
});

const textsOf = ({ title, how, tools, why, expect: what, wrongIf, undo, notes, changes }: Step) => [
  title,
  ...how,
  ...tools,
  ...why.map(({ text }) => text),
  what,
  wrongIf,
  undo,
  ...notes,
  ...changes.flatMap(({ from, to }) => [from, to]),
];

const lean = [saw("hangs-after-closing"), saw("bogs-hollow-no-smoke")];
const rich = [saw("will-not-rev-out"), saw("four-strokes-under-load")];
const STORIES: readonly (readonly [string, BikeCase])[] = [
  ["nothing told", story()],
  ["lean at the bottom", story({ drawer: DRAWER, rides: [ride(lean)] })],
  [
    "rich higher up, one change at a time",
    story({ drawer: DRAWER, oneChangeAtATime: true, rides: [ride(rich)] }),
  ],
  ["rich, no drawer", story({ rides: [ride([...rich, saw("dives-below-idle")])] })],
  ["pinged", story({ drawer: DRAWER, rides: [ride([saw("pings-on-roll-on")])] })],
  [
    "swept",
    story({ drawer: DRAWER, rides: [ride(lean)], tests: [tested("screw-sweep-air", "far-out", { at: 2 })] }),
  ],
  ["stopped", story({ rides: [ride([saw("seized-or-nipped")])] })],
  [
    "a fault found",
    story({
      rides: [ride(lean)],
      checks: [{ record: "c", at: 5, check: "spray-joints", found: "faulty", fault: "air-leak" }],
    }),
  ],
  [
    "parts not known",
    story({
      now: { ...FOUND, setup: { ...FOUND.setup, pilot: UNKNOWN, clip: known(3) } },
      reference: { ...FOUND, setup: { ...FOUND.setup, pilot: UNKNOWN, clip: known(3) } },
      rides: [ride(lean, { situation: { ...FOUND, setup: { ...FOUND.setup, pilot: UNKNOWN } } })],
    }),
  ],
];

test.each(STORIES)("%s: another language changes no figure, no order and no id", (_, given) => {
  const here = advise(given, english);
  const there = advise(given, NO_LANGUAGE);
  expect(stepsOf(there).map(bare)).toEqual(stepsOf(here).map(bare));
  expect(there.picture).toEqual(here.picture);
  expect(there.pictureAfter).toEqual(here.pictureAfter);
  expect(there.suspects.map(({ fault, chance }) => [fault, chance])).toEqual(
    here.suspects.map(({ fault, chance }) => [fault, chance]),
  );
  expect([there.soundChance, there.twoSided, there.settled]).toEqual([
    here.soundChance,
    here.twoSided,
    here.settled,
  ]);
});

test.each(STORIES)("%s: every text of a step comes from the language asked for", (_, given) => {
  const { suspects, ...advice } = advise(given, NO_LANGUAGE);
  for (const step of stepsOf({ suspects, ...advice }))
    for (const text of textsOf(step)) expect(text, step.id).toMatch(/^¿.*\?$/s);
  for (const { words } of suspects) expect(words).toMatch(/^¿.*\?$/);
});
