import { mixtureAt } from "../belief/reading.ts";
import { OPENINGS } from "../units/opening.ts";
import { type Step, surenessOf } from "./advice.ts";
import { expectedLinex, MINUTES as MINUTES_OF_TROUBLE, STEEPNESS } from "./loss.ts";
import { reasonsAt } from "./reasons.ts";
import { topThrottle } from "./top-throttle.ts";
import type { Weighing } from "./weighing.ts";

/** The parts that a person can read or count. */
type PartToRead = "pilot" | "screw" | "needle" | "clip" | "main";

const MINUTES = 25;
/** Share of the trouble in a stretch that knowing its parts lets you cure. Estimate. */
const CURABLE = 0.6;

/** Reading what is fitted, where a part that governs a troubled stretch is not known. Rule A8. */
export function readPartsStep(weighing: Weighing): readonly Step[] {
  const { story, belief, present, words } = weighing;
  const say = words.steps.readParts;
  const { setup } = story.now;
  const unknown: { readonly part: PartToRead; readonly from: number; readonly to: number }[] = [];
  if (setup.pilot.part === null) unknown.push({ part: "pilot", from: 0, to: 0.1875 });
  if (setup.screw.part === null) unknown.push({ part: "screw", from: 0, to: 0.0625 });
  if (setup.needle.part === null) unknown.push({ part: "needle", from: 0.25, to: 0.7 });
  if (setup.clip.part === null) unknown.push({ part: "clip", from: 0.25, to: 0.7 });
  if (setup.main.part === null) unknown.push({ part: "main", from: 0.7, to: 1 });
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
  return [
    {
      kind: "read-parts",
      id: "read-parts",
      title: say.title(unknown.map(({ part }) => part)),
      how: say.how,
      tools: say.tools,
      why: reasonsAt(weighing, worst.opening),
      expect: say.expect,
      wrongIf: say.wrongIf,
      undo: say.undo,
      sure: surenessOf(0.95),
      minutes: MINUTES,
      worth: gain / MINUTES,
      cautions: ["fuel-off-first", "petrol-vapour", "slide-snap-before-start", "makers-manual"],
      changes: [],
      situation: null,
      opening: null,
      topThrottle: topThrottle(belief, present.shift),
      notes: [say.note],
    },
  ];
}
