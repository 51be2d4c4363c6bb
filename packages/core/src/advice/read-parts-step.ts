import { mixtureAt } from "../belief/reading.ts";
import { OPENINGS } from "../units/opening.ts";
import { type Step, surenessOf } from "./advice.ts";
import { expectedLinex, MINUTES as MINUTES_OF_TROUBLE, STEEPNESS } from "./loss.ts";
import { reasonsAt } from "./reasons.ts";
import { topThrottle } from "./top-throttle.ts";
import type { Weighing } from "./weighing.ts";

const MINUTES = 25;
/** Share of the trouble in a stretch that knowing its parts lets you cure. Estimate. */
const CURABLE = 0.6;

/** Reading what is fitted, where a part that governs a troubled stretch is not known. Rule A8. */
export function readPartsStep({ story, belief, present }: Weighing): readonly Step[] {
  const { setup } = story.now;
  const unknown: { readonly name: string; readonly from: number; readonly to: number }[] = [];
  if (setup.pilot.part === null) unknown.push({ name: "pilot jet", from: 0, to: 0.1875 });
  if (setup.screw.part === null) unknown.push({ name: "screw setting", from: 0, to: 0.0625 });
  if (setup.needle.part === null) unknown.push({ name: "needle", from: 0.25, to: 0.7 });
  if (setup.clip.part === null) unknown.push({ name: "clip groove", from: 0.25, to: 0.7 });
  if (setup.main.part === null) unknown.push({ name: "main jet", from: 0.7, to: 1 });
  if (unknown.length === 0) return [];
  let trouble = 0;
  let worst = { opening: OPENINGS[0]!, trouble: 0 };
  OPENINGS.forEach((opening, i) => {
    if (!unknown.some(({ from, to }) => opening >= from && opening <= to)) return;
    const { mean, sd } = mixtureAt(belief, present.shift, opening);
    const here = MINUTES_OF_TROUBLE[i]! * expectedLinex(STEEPNESS[i]!, mean, sd * sd);
    trouble += here;
    if (here > worst.trouble) worst = { opening, trouble: here };
  });
  const gain = CURABLE * trouble;
  const names = unknown.map(({ name }) => name);
  return [
    {
      kind: "read-parts",
      id: "read-parts",
      title: `Find out what is fitted: ${listed(names)}`,
      how: [
        "Count the screw's turns from where it is to lightly seated, write them down, and turn it back.",
        "Bowl plug or bowl off: read the numbers on main and pilot jet with a magnifier, maker's mark and all.",
        "Cap off, slide out: which groove from the top holds the clip, and what is stamped on needle and slide.",
        "A needle without marks: measure its diameter with a micrometer every 5 mm from the top groove down.",
      ],
      tools: [
        "no. 2 cross-head screwdriver",
        "flat screwdriver",
        "3 mm hex key",
        "14 or 17 mm open spanner for the bowl plug",
        "magnifier",
      ],
      why: reasonsAt(story, belief, present, worst.opening),
      expect: "Numbers to change from. Note for each part whether you read it, measured it or were told.",
      wrongIf: "A number does not fit the way it runs: it may have been drilled or swapped. Measure it.",
      undo: "Put every part back as it was.",
      sure: surenessOf(0.95),
      minutes: MINUTES,
      worth: gain / MINUTES,
      cautions: ["fuel-off-first", "petrol-vapour", "slide-snap-before-start", "makers-manual"],
      changes: [],
      situation: null,
      opening: null,
      topThrottle: topThrottle(belief, present.shift),
      notes: ["Until then those parts stay as they are."],
    },
  ];
}

export const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1]}`;
