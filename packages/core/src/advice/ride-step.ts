import { chanceBelow, mixtureAt } from "../belief/reading.ts";
import type { Setup } from "../parts/setup.ts";
import { SPOKEN_OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import { type Step, surenessOf } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import { noticedNow, since } from "./complaint.ts";
import { RIDE_MINUTES, STAND_MINUTES } from "./labour.ts";
import { reasonsAt } from "./reasons.ts";
import { partsButTheScrew, partsKey } from "./situation-key.ts";
import { knockNotes } from "./stop-step.ts";
import { bandOf } from "./stretch-words.ts";
import { topThrottle, topThrottleText } from "./top-throttle.ts";
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
  const { story, belief, present, words } = weighing;
  const say = words.steps.ride;
  const heard = heardOf(story, partsKey);
  // A turned screw is proved on the stand: it is felt at idle and on a quick opening, and nowhere else. Rule A10.
  const stand = !heard && heardOf(story, partsButTheScrew);
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
  const confirms = open.length === 0 && heard;
  const asked = open.slice(0, 3).map(({ opening }) => opening);
  const title = !heard
    ? stand
      ? say.onStand
      : say.unheard
    : !confirms
      ? say.again([...asked].sort((a, b) => a - b))
      : trouble.size === 0
        ? say.confirm
        : say.rideOn;
  const minutes = stand ? STAND_MINUTES : RIDE_MINUTES;
  return {
    kind: "ride",
    id: confirms ? "confirm" : stand ? "stand" : "ride",
    title,
    how: stand ? say.howOnStand : say.how(top),
    tools: stand ? [] : say.tools,
    why: open.length === 0 ? [] : reasonsAt(weighing, open[0]!.opening),
    expect: !confirms ? say.expectMore : trouble.size === 0 ? say.expectConfirmed : say.expectSame,
    wrongIf: say.wrongIf,
    undo: say.undo,
    sure: surenessOf(open.length === 0 ? allRight : 0.5),
    minutes,
    worth: heard ? 0 : UNHEARD_WORTH / minutes,
    cautions: stand
      ? ["fumes", "hot-parts", "free-revving", "runaway", "noise"]
      : [
          "test-riding",
          "runaway",
          "noise",
          ...(top === "free" ? [] : (["seizure-at-full-throttle"] as const)),
        ],
    changes: [],
    situation: null,
    opening: null,
    topThrottle: top,
    notes: [...topThrottleText(top, words), ...knockNotes(story, words)],
  };
}

/** True when a ride or test was reported on the parts as fitted now, in whatever air, since the last mend. */
function heardOf(story: BikeCase, keyOf: (setup: Setup) => string): boolean {
  const parts = keyOf(story.now.setup);
  const from = since(story);
  return [...story.rides, ...story.tests, ...(story.sounds ?? [])].some(
    ({ at: when, situation }) => when > from && keyOf(situation.setup) === parts,
  );
}
