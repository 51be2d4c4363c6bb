import { chanceBelow, mixtureAt } from "../belief/reading.ts";
import { openingName, SPOKEN_OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import { type Step, surenessOf } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import { noticedNow, since } from "./complaint.ts";
import { RIDE_MINUTES } from "./labour.ts";
import { listed } from "./read-parts-step.ts";
import { reasonsAt } from "./reasons.ts";
import { partsKey } from "./situation-key.ts";
import { knockNotes } from "./stop-step.ts";
import { bandOf } from "./stretch-words.ts";
import { type TopThrottle, topThrottle, topThrottleText } from "./top-throttle.ts";
import type { Weighing } from "./weighing.ts";

/** Right means no leaner and no richer than this. */
const RIGHT = { lean: -0.04, rich: 0.06 };
/** Minutes a first report is worth when nothing has been heard of the parts as fitted. Rule A7. */
const UNHEARD_WORTH = 50;

/**
 * Riding and reporting: the step when parts were changed and not ridden, when nothing was ever reported, and
 * the confirming ride when nothing needs changing.
 */
export function rideStep(weighing: Weighing): Step {
  const { story, belief, present } = weighing;
  const heard = heardOf(story);
  const top = topThrottle(belief, present.shift);
  const chanceRight = SPOKEN_OPENINGS.map((opening) => ({
    opening,
    right:
      chanceBelow(belief, present.shift, opening, RIGHT.rich) -
      chanceBelow(belief, present.shift, opening, RIGHT.lean),
    sd: mixtureAt(belief, present.shift, opening).sd,
  }));
  const { trouble, reported } = noticedNow(weighing);
  // A stretch reported on these parts in this air is not asked for again: it would be the same evidence.
  const answered = (opening: Opening): boolean => reported.has(bandOf(opening));
  const open = chanceRight
    .filter(
      ({ opening, right }) =>
        !answered(opening) && right < 0.6 && (top !== "stay below 3/4" || opening < 0.75),
    )
    .sort((a, b) => a.right - b.right);
  const allRight = chanceRight.reduce((least, { right }) => Math.min(least, right), 1);
  const title = !heard
    ? "Ride it as it is, and report what it does"
    : open.length === 0
      ? trouble.size === 0
        ? "Nothing needs changing: confirm it with this ride"
        : "No change is worth its minutes now: ride on, and report what changes"
      : `Ride it again and report ${atEach(open.slice(0, 3).map(({ opening }) => opening))}`;
  return {
    kind: "ride",
    id: open.length === 0 && heard ? "confirm" : "ride",
    title,
    how: [
      "Mark the grip: closed, 1/8, 1/4, 1/2, 3/4, full, by slide lift.",
      "Engine fully warm. The same stretch, the same gear, three times each.",
      "Closed: 20 seconds at idle, then a quick opening to 1/4 and back. 1/8 to 1/4: slow and steady, close, reopen.",
      `1/4 to 1/2: roll on from low revs in a higher gear. ${TOP_RIDE[top]}`,
      "Report what you heard, saw and felt at each, and what you looked for and did not find.",
    ],
    tools: ["tape and pen for the grip"],
    why: open.length === 0 ? [] : reasonsAt(story, belief, present, open[0]!.opening),
    expect:
      open.length === 0 && heard
        ? trouble.size === 0
          ? "It runs as well as it did, at every opening."
          : "It runs as it did. Should one stretch get worse, a change there will pay."
        : "Each report narrows the picture, and the next step follows from it.",
    wrongIf: "Something shows that was not there before. Report that too.",
    undo: "Nothing is changed.",
    sure: surenessOf(open.length === 0 ? allRight : 0.5),
    minutes: RIDE_MINUTES,
    worth: heard ? 0 : UNHEARD_WORTH / RIDE_MINUTES,
    cautions: ["test-riding", "runaway", "noise", ...(top === "free" ? [] : ["seizure-at-full-throttle"])],
    changes: [],
    situation: null,
    opening: null,
    topThrottle: top,
    notes: [...topThrottleText(top), ...knockNotes(story)],
  };
}

/** What the ride does from 3/4 up. */
const TOP_RIDE: Readonly<Record<TopThrottle, string>> = {
  free: "3/4 to full: hold a few seconds, then roll back a little.",
  "seconds only": "3/4 to full: hold two or three seconds, no longer, then roll back a little.",
  "stay below 3/4": "Leave 3/4 and more alone.",
};

/** "at closed throttle and at 1/8, 1/4 and full throttle": in the order of the grip. */
function atEach(openings: readonly Opening[]): string {
  const sorted = [...openings].sort((a, b) => a - b);
  const closed = sorted[0] === 0 ? ["at closed throttle"] : [];
  const opened = sorted.filter((opening) => opening > 0).map((opening) => openingName(opening));
  return [...closed, ...(opened.length > 0 ? [`at ${listed(opened)} throttle`] : [])].join(" and ");
}

/** True when a ride or test was reported on the parts as fitted now, in whatever air, since the last mend. */
function heardOf(story: BikeCase): boolean {
  const parts = partsKey(story.now.setup);
  const from = since(story);
  return [...story.rides, ...story.tests].some(
    ({ at: when, situation }) => when > from && partsKey(situation.setup) === parts,
  );
}
