import type { CautionId } from "../words/core-words.ts";
import { type Step, surenessOf } from "./advice.ts";
import { chanceItHelps } from "./called-for.ts";
import type { LabourPart } from "./case.ts";
import { worthOf } from "./change-worth.ts";
import { leansTop } from "./held-by.ts";
import { partChanges, partMoves, partStand } from "./part-stands.ts";
import { mainEffect, reasonsForChange } from "./reasons.ts";
import type { Candidate } from "./search.ts";
import { knockNotes } from "./stop-step.ts";
import { bandOf, bandWords } from "./stretch-words.ts";
import { topThrottle, topThrottleText } from "./top-throttle.ts";
import { type Ways, waysOf } from "./ways.ts";
import type { Weighing } from "./weighing.ts";

/** Changes shown as ways on. */
const MOST = 4;

/** Ways of changing parts, the best one first; with one change at a time, single parts only. Rules A2, A3, A7, A20. */
export function changeSteps(
  weighing: Weighing,
  { open }: Pick<Ways, "open"> = waysOf(weighing),
): readonly Step[] {
  const { story } = weighing;
  const chosen = open.filter(({ changes }) => !story.oneChangeAtATime || changes.length === 1);
  const worth = worthOf(weighing, chosen);
  return [...chosen]
    .sort((a, b) => worth.get(b)! - worth.get(a)!)
    .slice(0, MOST)
    .map((candidate) => changeStep(weighing, candidate, worth.get(candidate)!, open));
}

/**
 * One change as a step.
 * @param worth minutes saved for each minute it takes
 * @param ways the best of each set of parts that may be advised, best first
 */
export function changeStep(
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
  const top = proved === "free" && leansTop(present, candidate) ? "seconds only" : proved;
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
