import { signById } from "../belief/signs/all.ts";
import { stretchCentre } from "../belief/state.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import type { CoreWords } from "../words/core-words.ts";
import { type Step, surenessOf } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import type { Check, Test } from "./catalogue.ts";
import { bandOfStretch, feltAsNow, noticedNow, since } from "./complaint.ts";
import { fits, SCREW_PEAK, SCREW_STRETCH, stretchFor } from "./evidence.ts";
import { reasonsAt } from "./reasons.ts";
import { type Candidate, flatShift } from "./search.ts";
import { situationKey } from "./situation-key.ts";
import { seenSigns, warnedOfKnock } from "./stop-step.ts";
import {
  byFault,
  measuredOutcomes,
  type PossibleOutcome,
  type TestValue,
  valueOfTest,
  type WeighedSetup,
} from "./test-value.ts";
import { TESTS } from "./tests-on-engine.ts";
import { topThrottle, topThrottleText } from "./top-throttle.ts";
import type { Weighing } from "./weighing.ts";

/** Tests shown as other ways. */
const MOST = 4;
/** Setups that a test's outcome may choose between: the best now, and the best of each kind of change. */
const SHORTLIST = 24;
const OF_EACH_KIND = 3;
/** What a test of a stretch that nobody complained of still counts for, while another one has trouble. Rule A9. */
const UNASKED = 0.25;
/** A wide-open test of this many minutes or more holds the throttle for long, as a plug chop does. */
const LONG_TEST = 15;
/** A test is only worth its minutes when this many are saved. */
const LEAST_GAIN = 1;

/**
 * The tests worth most per minute, as steps; none that was answered on these parts in this air.
 * @param tests the tests to choose from
 * @param least a test is left out that saves fewer minutes
 */
export function testSteps(
  weighing: Weighing,
  checks: readonly Check[],
  tests: readonly Test[] = TESTS,
  least = LEAST_GAIN,
): readonly Step[] {
  const { story, belief, present } = weighing;
  const shortlist = shortlistOf(weighing.candidates);
  const { trouble: troubled } = noticedNow(weighing);
  const warned = warnedOfKnock(story);
  const hangs = hungLately(story);
  const faults = byFault(belief);
  const top = topThrottle(belief, present.shift);
  // A sweep measures the bottom besides what its outcome says: worth its minutes while the bottom is the complaint, or nothing is.
  const bottomAsked = troubled.size === 0 || troubled.has("bottom");
  const measuring = ({ id, screw }: Test): number =>
    screw === null || !bottomAsked
      ? 0
      : valueOfTest(
          faults,
          present.shift,
          measuredOutcomes(id, SCREW_STRETCH, SCREW_PEAK.sd),
          shortlist,
          checks,
        ).gain;
  const valued: { test: Test; opening: Opening | null; value: TestValue }[] = [];
  for (const test of tests) {
    if (!fits(test.strokes, story.engine.strokes)) continue;
    if (test.screw !== null && test.screw !== story.now.setup.screw.part?.kind) continue;
    if (warned && isRidden(test)) continue;
    if (test.id === AGAINST_THE_HANG && !hangs) continue;
    if (test.wideOpen && !(top === "free" || (top === "seconds only" && test.minutes < LONG_TEST))) continue;
    const openings = test.openings.length > 0 ? test.openings : [null];
    for (const opening of openings) {
      if (alreadyAnswered(weighing, test, opening)) continue;
      const outcomes = outcomesOf(test, opening);
      const told = valueOfTest(faults, present.shift, outcomes, shortlist, checks);
      const value = { ...told, gain: Math.max(told.gain, measuring(test)) };
      const asked =
        troubled.size === 0 ||
        outcomes.some(({ sign, stretch }) => sign !== null && troubled.has(bandOfStretch(stretch)));
      const gain = asked ? value.gain : UNASKED * value.gain;
      if (gain >= least) valued.push({ test, opening, value: { ...value, gain } });
    }
  }
  const best = new Map<string, (typeof valued)[number]>();
  for (const each of valued) {
    const rival = best.get(each.test.id);
    if (rival === undefined || each.value.gain > rival.value.gain) best.set(each.test.id, each);
  }
  const worth = ({ test, value }: (typeof valued)[number]): number => value.gain / test.minutes;
  return [...best.values()]
    .sort((a, b) => worth(b) - worth(a) || (a.test.id < b.test.id ? -1 : 1))
    .slice(0, MOST)
    .map(({ test, opening, value }) => testStep(weighing, test, opening, value));
}

function outcomesOf(test: Test, opening: Opening | null): readonly PossibleOutcome[] {
  return test.outcomes.map(({ id, sign: name }) => {
    const sign = name === null ? null : (signById(name) ?? null);
    return { id, sign, stretch: sign === null ? [] : stretchFor(sign, opening) };
  });
}

/** True when this setup and air already gave an answer of the same group there: asking again is the same evidence. */
function alreadyAnswered({ story, belief }: Weighing, test: Test, opening: Opening | null): boolean {
  const here = feltAsNow(story);
  const outcomes = outcomesOf(test, opening).filter(({ sign }) => sign !== null);
  return belief.sites.some(({ observation }) => {
    if (observation.kind === "measured") {
      const done = story.tests.find(({ record }) => record === observation.record);
      return done?.test === test.id && here.has(situationKey(done.situation));
    }
    if (observation.kind !== "sign" || !here.has(observation.situation)) return false;
    return outcomes.some(
      ({ sign, stretch }) =>
        sign!.group === observation.sign.group &&
        Math.abs(stretchCentre(stretch) - stretchCentre(observation.stretch)) < 0.1,
    );
  });
}

function shortlistOf(candidates: readonly Candidate[]): readonly WeighedSetup[] {
  const taken = new Map<string, number>();
  const list = candidates.filter(({ changes }) => {
    const kind = changes.join("+");
    const before = taken.get(kind) ?? 0;
    taken.set(kind, before + 1);
    return before < OF_EACH_KIND;
  });
  return list.slice(0, SHORTLIST).map(({ shift, minutes }) => ({ flat: flatShift(shift), minutes }));
}

function testStep(weighing: Weighing, test: Test, opening: Opening | null, value: TestValue): Step {
  const { belief, present, words } = weighing;
  const { steps: how, tools, outcomes } = words.tests[test.id];
  const say = words.steps.test;
  const likeliest = [...value.outcomes].sort((a, b) => b.probability - a.probability)[0];
  const top = topThrottle(belief, present.shift);
  const outcome = Object.entries(outcomes).find(([id]) => id === likeliest?.id)?.[1] ?? "";
  return {
    kind: "test",
    id: test.id,
    title: titleOf(words, test, opening),
    how,
    tools,
    why: opening === null ? [] : reasonsAt(weighing, opening),
    expect: say.expect(outcome, Math.round((likeliest?.probability ?? 0) * 10)),
    wrongIf: say.wrongIf,
    undo: say.undo,
    sure: surenessOf(likeliest?.probability ?? 0),
    minutes: test.minutes,
    worth: value.gain / test.minutes,
    cautions: test.cautions,
    changes: [],
    situation: null,
    opening,
    topThrottle: top,
    notes: isRidden(test) ? topThrottleText(top, words) : [],
  };
}

/** The test that times a hang: nothing to time where none was noticed. */
const AGAINST_THE_HANG = "half-turn-for-the-hang";
const HANGS: readonly string[] = ["hangs-after-closing", "hangs-only-when-hot", "hang-grows-with-heat"];

const hungLately = (story: BikeCase): boolean =>
  seenSigns(story).some(({ at: when, sign }) => when > since(story) && HANGS.includes(sign.id));

const isRidden = (test: Test): boolean => test.cautions.includes("test-riding");

/** The words, and where to make it when there is a choice of places that can be told apart. */
function titleOf(words: CoreWords, test: Test, opening: Opening | null): string {
  const name = words.tests[test.id].words;
  const closedOnly = test.openings.every((each) => each < OPENINGS[2]!);
  if (opening === null || test.openings.length < 2 || closedOnly) return name;
  return words.steps.test.titleAt(name, opening);
}
