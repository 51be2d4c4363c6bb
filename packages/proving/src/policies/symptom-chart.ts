import type { Parts } from "../truth/bike.ts";
import { ride } from "../world/report-of.ts";
import type { World } from "../world/world.ts";
import { mayGoOn, type Policy } from "./policy.ts";
import { chartStep, lookAndMend, tryOut } from "./steps.ts";
import { CHECK_FIRST, type Complaint, complaints, fitsStrokes } from "./symptoms.ts";

/** The symptom table of a manual, followed to the letter: the worst stretch, one step of the part it names. */
export const symptomChart: Policy = {
  name: "symptom chart",
  words: "a paper symptom chart: the worst stretch, one step",
  work(world) {
    const { strokes } = world.drawn.bike.engine;
    if (Object.values(world.written).some((part) => part === null)) world.readParts();
    const looked = new Set<string>();
    let report = ride(world, "free");
    while (mayGoOn(world)) {
      for (const { sign, seen } of report.said) {
        if (!seen) continue;
        for (const check of CHECK_FIRST[sign] ?? []) {
          if (looked.has(check) || !fitsStrokes(check, strokes)) continue;
          looked.add(check);
          if (lookAndMend(world, check)) break;
        }
      }
      const worst = worstOf(complaints(report, strokes));
      if (worst === null) return;
      const before = { parts: world.parts, seems: world.seems("free") };
      const change = chartStep(world, worst.stretch, worst.feel === "lean" ? 1 : -1);
      world.fit(change);
      report = tryOut(world, change, before.seems, report);
      if (!mayGoOn(world)) return;
      const judged = report.felt.find(({ at }) => at === AT[worst.stretch]);
      if (judged?.felt === "worse") undo(world, before.parts);
    }
  },
};

const AT: Readonly<Record<Complaint["stretch"], number>> = {
  idle: 0,
  closing: 0,
  snap: 1 / 8,
  light: 1 / 4,
  middle: 1 / 2,
  top: 1,
};

/** The loudest; of equal ones a lean top first, then from the bottom up, as charts are read. */
function worstOf(list: readonly Complaint[]): Complaint | null {
  const rank = ({ stretch, feel, loud }: Complaint): number =>
    loud * 10 + (stretch === "top" && feel === "lean" ? 5 : 0);
  return list.reduce<Complaint | null>(
    (best, each) => (best === null || rank(each) > rank(best) ? each : best),
    null,
  );
}

function undo(world: World, parts: Parts): void {
  const { main, pilot, groove, turns } = parts;
  world.fit({ main, pilot, groove, turns: Math.round(turns * 4) / 4 });
}
