import { FAULTS } from "../belief/catalogue.ts";
import { reaches } from "../belief/reach.ts";
import { normalCumulative } from "../numerics/normal.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import type { CautionId } from "../words/core-words.ts";
import { type Step, surenessOf } from "./advice.ts";
import { chanceItHelps, isCalledFor, onDoubtAlone } from "./called-for.ts";
import type { LabourPart } from "./case.ts";
import { noticedNow } from "./complaint.ts";
import { LEAN_CHANCE, LEAN_CHANCE_FOR_SECONDS, TOP } from "./loss.ts";
import { partChanges, partMoves, partStand } from "./part-stands.ts";
import { mainEffect, reasonsForChange } from "./reasons.ts";
import { mayBeRichForOtherReasons } from "./rich-for-other-reasons.ts";
import type { Candidate } from "./search.ts";
import { knockNotes, warnedOfKnock } from "./stop-step.ts";
import { type Band, bandOf, bandWords } from "./stretch-words.ts";
import { leanChanceAtTop, topThrottle, topThrottleText } from "./top-throttle.ts";
import type { Weighing } from "./weighing.ts";

/** Changes shown as ways on. */
const MOST = 4;
/** A change that leans an opening by less than this, ln ratio, leaves it as it was. */
const SAME = -0.002;
/** The same from 3/4 up, where every pilot jet acts a little: a quarter of a main jet step. The throttle is held back all the same. */
const SAME_AT_TOP = -0.01;

/**
 * Ways of changing parts, the best one first; with one change at a time, single parts only. Rules A2, A3, A7, A20.
 * @param richForOtherReasons false: as if nothing but the jets could make the top feel rich
 */
export function changeSteps(
  weighing: Weighing,
  richForOtherReasons = mayBeRichForOtherReasons(weighing.story, weighing.chances),
): readonly Step[] {
  const { story, candidates, present } = weighing;
  const better = candidates.filter(
    (candidate) => candidate.total < present.total && candidate.changes.length > 0,
  );
  const warned = warnedOfKnock(story);
  const ways = bestOfEachKind(
    better,
    (candidate) =>
      !(warned && leans(present, candidate, OPENINGS)) &&
      isCalledFor(weighing, candidate) &&
      // A change that does not lean the top may be made before the top is proved: the throttle is held back instead.
      (!leans(present, candidate, TOP, SAME_AT_TOP) ||
        (!richForOtherReasons && topIsSafe(weighing, candidate))),
  );
  const chosen = ways.filter(({ changes }) => !story.oneChangeAtATime || changes.length === 1);
  const bandsReached = new Set(chosen.map((candidate) => bandOf(mainEffect(present, candidate).opening)));
  const worth = new Map(
    chosen.map((candidate) => {
      const waits = waitsForAbove(weighing, candidate, bandsReached) ? WAITING : 1;
      return [candidate, waits * gainRate(weighing, candidate)];
    }),
  );
  return [...chosen]
    .sort((a, b) => worth.get(b)! - worth.get(a)!)
    .slice(0, MOST)
    .map((candidate) => changeStep(weighing, candidate, worth.get(candidate)!, ways));
}

/** A change below a stretch that has trouble too, and that another change reaches, counts a quarter. Rule A15. */
const WAITING = 0.25;
const UPWARDS: readonly Band[] = ["bottom", "middle", "top"];

/** From the top down: the main jet moves everything below it, the needle the bottom's upper end, the pilot little above. */
function waitsForAbove(weighing: Weighing, candidate: Candidate, reached: ReadonlySet<Band>): boolean {
  const { trouble } = noticedNow(weighing);
  const own = UPWARDS.indexOf(bandOf(mainEffect(weighing.present, candidate).opening));
  return UPWARDS.some((band, i) => i > own && trouble.has(band) && reached.has(band));
}

/** The best candidate of each set of parts that passes. */
function bestOfEachKind(
  sorted: readonly Candidate[],
  passes: (candidate: Candidate) => boolean,
): readonly Candidate[] {
  const chosen = new Map<string, Candidate>();
  for (const candidate of sorted) {
    const kind = candidate.changes.join("+");
    if (!chosen.has(kind) && passes(candidate)) chosen.set(kind, candidate);
  }
  return [...chosen.values()];
}

/** No more than a 2 % chance of being leaner than the limit from 3/4 up, over the whole belief. Rule A2. */
function topIsSafe({ belief }: Weighing, candidate: Candidate): boolean {
  // The single Gaussian rules most out cheaply; the whole belief decides.
  if (normalCumulative(-candidate.topSpread) > LEAN_CHANCE_FOR_SECONDS) return false;
  return leanChanceAtTop(belief, candidate.shift, "seconds") <= LEAN_CHANCE;
}

/** True when the candidate is leaner than the setup as it is at one of these openings. */
function leans(present: Candidate, candidate: Candidate, openings: readonly Opening[], same = SAME): boolean {
  return openings.some((opening) => {
    const i = OPENINGS.indexOf(opening);
    let change = 0;
    for (const circuit of CIRCUITS) change += candidate.shift[circuit][i]! - present.shift[circuit][i]!;
    return change < same;
  });
}

/** A bigger main jet that only doubt asks for, while another stretch has trouble, counts a quarter. Rule A9. */
const UNASKED = 0.25;

/** Minutes saved per minute spent. What a fault hides there is not saved by jets. Rule A5. */
function gainRate(weighing: Weighing, candidate: Candidate): number {
  const { chances, present } = weighing;
  const { opening } = mainEffect(present, candidate);
  let hidden = 0;
  for (const fault of FAULTS) if (reaches(fault, opening)) hidden += chances[fault] ?? 0;
  const asked = onDoubtAlone(weighing, candidate) ? UNASKED : 1;
  return ((present.trouble - candidate.trouble) * (1 - hidden) * asked) / candidate.minutes;
}

function changeStep(
  weighing: Weighing,
  candidate: Candidate,
  worth: number,
  ways: readonly Candidate[],
): Step {
  const { story, belief, present, words } = weighing;
  const { opening, change } = mainEffect(present, candidate);
  const stretch = bandWords(words, bandOf(opening), story.engine.strokes);
  const say = words.steps.change;
  const leaner = change < 0;
  const chance = chanceItHelps(weighing, candidate);
  const proved = topThrottle(belief, candidate.shift);
  // Leaner than before, it is tried in short pulls first, however sure the reckoning.
  const top = proved === "free" && leans(present, candidate, TOP, SAME_AT_TOP) ? "seconds only" : proved;
  return {
    kind: "change",
    id: candidate.changes.join("+"),
    title: words.parts.change(partMoves(story.now, candidate)),
    how: candidate.changes.map((part) => howTo(weighing, candidate, part)),
    tools: say.tools[accessOf(candidate.changes)],
    why: reasonsForChange(weighing, candidate),
    expect: say.expect(
      leaner ? "leaner" : "richer",
      Math.round(Math.abs(change) * 100),
      opening,
      stretch.right,
    ),
    wrongIf: say.wrongIf(leaner ? stretch.tooLittle : stretch.tooMuch),
    undo: say.undo(candidate.changes.map((part) => partStand(part, story.now.setup))),
    sure: surenessOf(chance),
    minutes: candidate.minutes,
    worth,
    cautions: cautionsFor(candidate.changes, top !== "free"),
    changes: partChanges(story.now, candidate, words),
    situation: candidate.situation,
    opening: null,
    topThrottle: top,
    notes: [
      ...topThrottleText(top, words),
      ...knockNotes(story, words),
      ...notesFor(weighing, candidate, ways),
    ],
  };
}

/** Parts that are made for one kind of body, unlike jets. */
const FITS_ONE_BODY: readonly LabourPart[] = ["needle", "needleJet", "slide"];

function howTo({ story, words }: Weighing, candidate: Candidate, part: LabourPart): string {
  const { how, jet } = words.steps.change;
  const { setup } = candidate.situation;
  const to = partStand(part, setup);
  switch (part) {
    case "main":
    case "pilot":
      return how[part](jet(setup[part].part));
    case "clip":
      return how.clip(partStand(part, story.now.setup), to);
    case "screw":
      return how.screw(setup.body.screwKind, to);
    default:
      return how[part](to);
  }
}

/** What must come off for a change: nothing but a screw turned, the cap, or the bowl. */
function accessOf(changes: readonly LabourPart[]): "screw" | "cap" | "bowl" {
  if (changes.every((part) => part === "screw")) return "screw";
  return changes.some((part) => part === "main" || part === "pilot" || part === "needleJet") ? "bowl" : "cap";
}

function cautionsFor(changes: readonly LabourPart[], lean: boolean): readonly CautionId[] {
  const screwOnly = changes.every((part) => part === "screw");
  const work: readonly CautionId[] = screwOnly
    ? ["fumes", "hot-parts"]
    : ["fuel-off-first", "petrol-vapour", "slide-snap-before-start", "runaway"];
  return [...work, "test-riding", ...(lean ? (["seizure-at-full-throttle"] as const) : []), "makers-manual"];
}

/** @param ways the best of each set of parts that may be advised, best first */
function notesFor(weighing: Weighing, candidate: Candidate, ways: readonly Candidate[]): readonly string[] {
  const notes: string[] = [];
  const say = weighing.words.steps.change;
  if (candidate.toBuy.length > 0) {
    notes.push(say.notInDrawer(candidate.toBuy.map((part) => partStand(part, candidate.situation.setup))));
  }
  if (candidate.changes.some((part) => FITS_ONE_BODY.includes(part))) notes.push(say.fitsThisBody);
  const { oneChangeAtATime, now } = weighing.story;
  const rival = ways.find(({ changes }) => (oneChangeAtATime ? changes.length > 1 : changes.length === 1));
  if (rival !== undefined) {
    const minutes = Math.round(Math.abs(candidate.total - rival.total));
    if (oneChangeAtATime && rival.total < candidate.total && minutes >= 5) {
      notes.push(
        say.togetherSaves(
          rival.changes.map((part) => partStand(part, now.setup)),
          minutes,
        ),
      );
    }
    if (!oneChangeAtATime && candidate.changes.length > 1 && rival.total > candidate.total && minutes >= 5) {
      notes.push(say.oneAtATimeCosts(minutes));
    }
  }
  return notes;
}
