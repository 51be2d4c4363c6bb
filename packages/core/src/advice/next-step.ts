import { type Belief, believe } from "../belief/believe.ts";
import { FAULTS, type FaultId } from "../belief/catalogue.ts";
import { FAULT_CATALOGUE } from "../belief/faults.ts";
import type { Gaussian } from "../belief/prior.ts";
import { reaches } from "../belief/reach.ts";
import { mixtureAt } from "../belief/reading.ts";
import { twoSidedOpenings } from "../belief/two-sided.ts";
import { shiftBetween } from "../metering/shift.ts";
import { SPOKEN_OPENINGS } from "../units/opening.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { CoreWords } from "../words/core-words.ts";
import { refusalText } from "../words/refusal.ts";
import type { Advice, Step, Suspect } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import type { Check } from "./catalogue.ts";
import { changeSteps } from "./change-steps.ts";
import { checkSteps, mendSteps } from "./check-steps.ts";
import { CHECKS, checkById, looksFor } from "./checks.ts";
import { noticedNow } from "./complaint.ts";
import { evidenceFrom, fits } from "./evidence.ts";
import type { FaultChances } from "./fault-cost.ts";
import { knockCheck, looksForOtherReasons } from "./freeing.ts";
import { holding } from "./held-by.ts";
import { lookedOver, lookOver } from "./look-over.ts";
import { optionsFor, withoutLeanerMain } from "./options.ts";
import { priorFor } from "./prior-for.ts";
import { readPartsStep } from "./read-parts-step.ts";
import { mainEffect } from "./reasons.ts";
import { mayBeRichForOtherReasons } from "./rich-for-other-reasons.ts";
import { rideStep } from "./ride-step.ts";
import { searchSetups } from "./search.ts";
import { mainMayGoLeaner } from "./sound-evidence.ts";
import { stopStep, warnedOfKnock } from "./stop-step.ts";
import { testSteps } from "./test-steps.ts";
import { type Freeing, withWhatFrees } from "./waiting.ts";
import { waysOf } from "./ways.ts";
import type { Weighing } from "./weighing.ts";

/** Suspects below this are not worth a word. */
const NAMED_SUSPECT = 0.05;
/** At this chance a fault is looked for before anything else; a quick look goes before a change from the second on. Rule A5. */
const FAULT_FIRST = 0.4;
const SUSPECT_FIRST = 0.08;
/** The same before a turn of the screw or a clip moved: it is undone in minutes, and what it does is a look in itself. */
const SUSPECT_BEFORE_TRIAL = 0.125;
/** Once the bike was looked over, a suspect must be so many times likelier to be looked at by itself. */
const AFTER_LOOKING = 1.5;
/** Minutes saved per minute that make a test worth asking for when nothing else pays. */
const TELLING = 0.3;
/** The same, and for a look, while something is complained of. */
const WHILE_COMPLAINED = 0.1;
/** A look of so many minutes is short beside any change, a turn of the screw too. */
const SHORT_LOOK = 10;

/**
 * What to do next for one bike, and the other ways: stop, mend, check, test, change parts, read the parts, or
 * ride. The kinds compete by the minutes they save for each minute they take (rule A1), within the limits of
 * docs/rules/advice.md. Refuses a setup that cannot be worked out at all, with what to mend.
 * @param words the language of every sentence; it changes nothing else
 * @param prior belief before any evidence; the usual one when left out
 */
export function nextStep(
  told: BikeCase,
  words: CoreWords,
  prior?: Gaussian,
): Outcome<Advice, "not comparable"> {
  const usable = shiftBetween(told.now, told.now);
  if (!usable.ok) return refuse("not comparable", refusalText(usable, words));
  const story = heldForNow(told);
  const { observations, leftOut } = evidenceFrom(story);
  const belief = believe({
    prior: prior ?? priorFor(story.reference),
    faultPriors: faultPriorsFor(story.engine.strokes),
    observations,
  });
  const all = optionsFor(story.now, story.drawer);
  const options = mainMayGoLeaner(observations, story.sounds ?? []) ? all : withoutLeanerMain(all, story.now);
  const candidates = searchSetups(belief.overall, story.reference, story.now, options, story.minutes);
  const present = candidates.find((candidate) => candidate.changes.length === 0);
  if (present === undefined) throw new RangeError("The setup as it is must be among the candidates");
  const weighing: Weighing = { story, words, belief, chances: chancesOf(belief), present, candidates };
  const { steps, waiting } = waysOn(weighing);
  const [step, ...others] = steps as [Step, ...Step[]];
  const changed = candidates.find((candidate) => candidate.situation === step.situation);
  return accept({
    step,
    others,
    waiting,
    picture: SPOKEN_OPENINGS.map((opening) => mixtureAt(belief, present.shift, opening)),
    pictureAfter: changed
      ? SPOKEN_OPENINGS.map((opening) => mixtureAt(belief, changed.shift, opening))
      : null,
    suspects: suspectsOf(weighing),
    soundChance: belief.hypotheses[0]!.probability,
    // Asked for by a page that shows it; costs as much as a sixth of the rest.
    get twoSided() {
      return twoSidedOpenings(belief);
    },
    leftOut: leftOut.map(({ record, why }) => ({ record, why: refusalText(why, words) })),
    settled: belief.converged,
  });
}

/**
 * The story with its reference where now can be compared with it. After a change to a part that cannot, such as
 * from a needle nobody measured, the state is held for the setup of now, and what came before is left out. Rule A14.
 */
export function heldForNow(story: BikeCase): BikeCase {
  return shiftBetween(story.reference, story.now).ok ? story : { ...story, reference: story.now };
}

export function faultPriorsFor(strokes: 2 | 4): Partial<Record<FaultId, number>> {
  return Object.fromEntries(
    FAULT_CATALOGUE.map(({ id, prior }) => [id, strokes === 2 ? prior.two : prior.four]),
  );
}

function chancesOf(belief: Belief): FaultChances {
  return Object.fromEntries(
    belief.hypotheses.flatMap(({ fault, probability }) => (fault === null ? [] : [[fault, probability]])),
  );
}

function suspectsOf({ chances, words }: Weighing): readonly Suspect[] {
  return FAULT_CATALOGUE.map(({ id }) => ({
    fault: id,
    words: words.faults[id].words,
    chance: chances[id] ?? 0,
  }))
    .filter(({ chance }) => chance >= NAMED_SUSPECT)
    .sort((a, b) => b.chance - a.chance);
}

/** All steps, the one to take first, and the changes that wait. */
function waysOn(weighing: Weighing): { readonly steps: readonly Step[] } & Pick<Advice, "waiting"> {
  const { story, words } = weighing;
  const stop = stopStep(weighing);
  if (stop !== null) return { steps: [stop], waiting: [] };
  const checks = CHECKS.filter((check) => fits(check.strokes, story.engine.strokes));
  const ways = waysOf(weighing);
  const { steps, freeing, waiting } = withWhatFrees(weighing, checks, ways.held, [
    ...checkSteps(weighing, checks),
    ...testSteps(weighing, checks),
    ...changeSteps(weighing, ways),
    ...readPartsStep(weighing),
  ]);
  const competing = [...steps].sort((a, b) => b.worth - a.worth || (a.id < b.id ? -1 : 1));
  const ridden = rideStep(weighing);
  const onlyWaits = ridden.id === "confirm" && waiting.length > 0 && noticedNow(weighing).trouble.size > 0;
  const ride = onlyWaits ? { ...ridden, title: words.steps.waiting.ride } : ridden;
  return { steps: rank(weighing, checks, competing, ride, freeing), waiting };
}

/** The one to take first, then the others. Rules A1, A4, A5, A6 and A22. */
function rank(
  weighing: Weighing,
  checks: readonly Check[],
  competing: readonly Step[],
  ride: Step,
  freeing: Freeing | null,
): readonly Step[] {
  const { story } = weighing;
  const mends = mendSteps(weighing);
  if (mends.length > 0) return [...mends, ...competing, ride];
  if (ride.worth >= 1) return [ride, ...competing];
  if (ride.id === "confirm" && noticedNow(weighing).trouble.size === 0) return [ride, ...competing];
  const over = lookOverFirst(weighing, checks);
  if (over !== null) return [over, ...competing, ride];
  const top = competing[0];
  const ruledOut = ruleOutFirst(weighing, checks, top?.worth ?? 0);
  if (ruledOut !== undefined) {
    const look = competing.find(({ id }) => id === ruledOut.id) ?? ruledOut;
    return [look, ...competing.filter((step) => step !== look), ride];
  }
  if (top === undefined || top.worth < 1) {
    // What waits would pay: what frees it comes first.
    const frees = freeing !== null && freeing.worth >= 1 ? freeing.step : undefined;
    if (frees !== undefined) return [frees, ...competing.filter((step) => step !== frees), ride];
    // Nothing pays for itself by reckoning: while something is complained of, a look, a test or a turn of the screw still beats one more ride.
    const complained = noticedNow(weighing).trouble.size > 0;
    const least = complained ? WHILE_COMPLAINED : TELLING;
    const telling = competing.find(
      (step) =>
        step.worth >= least &&
        (step.kind === "test" || (complained && (step.kind === "check" || isTrial(step)))),
    );
    if (telling === undefined) return [ride, ...competing];
    return [telling, ...competing.filter((step) => step !== telling), ride];
  }
  const cause = warnedOfKnock(story) ? knockCheck(weighing, competing) : undefined;
  if (cause !== undefined) return [cause, ...competing.filter((step) => step !== cause), ride];
  const gate = top.kind === "check" ? undefined : lookFirst(weighing, top, competing);
  if (gate !== undefined) return [gate, ...competing.filter((step) => step !== gate), ride];
  return [...competing, ride];
}

/**
 * Looking the bike over comes before any test and any change while something is complained of, but not before the look
 * for a fault that is likely by itself, nor for what made it ping. Rule A21.
 */
function lookOverFirst(weighing: Weighing, checks: readonly Check[]): Step | null {
  if (noticedNow(weighing).trouble.size === 0 || warnedOfKnock(weighing.story)) return null;
  if (FAULTS.some((fault) => (weighing.chances[fault] ?? 0) >= FAULT_FIRST)) return null;
  return lookOver(weighing, checks);
}

/**
 * The look that goes before a leaner top: where the top is complained of, and a change that pays more than all else
 * waits only for what else may feel rich up there. Rule A20.
 */
function ruleOutFirst(weighing: Weighing, checks: readonly Check[], worth: number): Step | undefined {
  if (!noticedNow(weighing).trouble.has("top")) return undefined;
  if (!mayBeRichForOtherReasons(weighing.story, weighing.chances)) return undefined;
  const waiting = changeSteps(weighing, waysOf(weighing, holding(weighing, false)))[0];
  if (waiting === undefined || waiting.worth < Math.max(1, worth)) return undefined;
  return looksForOtherReasons(weighing, checks).find((look) => look.worth >= WHILE_COMPLAINED);
}

/**
 * The check that goes before the best step: of a fault that is likely by itself, or, before a change, of a
 * suspect that would hide what the change does and is looked at no slower than it is made. Rule A5.
 */
function lookFirst(
  { story, chances, present, candidates }: Weighing,
  top: Step,
  steps: readonly Step[],
): Step | undefined {
  const suspect =
    (isTrial(top) ? SUSPECT_BEFORE_TRIAL : SUSPECT_FIRST) * (lookedOver(story) ? AFTER_LOOKING : 1);
  const candidate = candidates.find(({ situation }) => situation === top.situation);
  const opening = candidate === undefined ? null : mainEffect(present, candidate).opening;
  return steps.find((step) => {
    const check = step.kind === "check" ? checkById(step.id) : undefined;
    if (check === undefined) return false;
    return FAULTS.some((fault) => {
      const chance = looksFor(check, fault) ? (chances[fault] ?? 0) : 0;
      if (chance >= FAULT_FIRST) return true;
      if (opening === null || chance < suspect) return false;
      return reaches(fault, opening) && check.minutes <= Math.max(top.minutes, SHORT_LOOK);
    });
  });
}

/** A change that is undone in minutes and needs no part. */
const isTrial = ({ kind, changes }: Step): boolean =>
  kind === "change" && changes.every(({ part }) => part === "screw" || part === "clip");
