import type { Report } from "../world/report-of.ts";
import { type Feel, STRETCHES, type StretchName } from "../world/stretches.ts";

/** A complaint as a paper chart has it: which stretch, which way, how loud (the place of the phrase on its list). */
export interface Complaint {
  readonly stretch: StretchName;
  readonly feel: Exclude<Feel, "right">;
  readonly loud: number;
}

/** Reads a report by a chart: the first stretch whose list holds the phrase. */
export function complaints(report: Report, strokes: 2 | 4): readonly Complaint[] {
  return report.said.flatMap(({ sign, at, seen }): Complaint[] => {
    if (!seen) return [];
    for (const stretch of STRETCHES) {
      if (at !== null && stretch.at !== at) continue;
      const says = stretch.says(strokes);
      for (const feel of ["lean", "rich"] as const) {
        const loud = says[feel].lastIndexOf(sign);
        if (loud >= 0) return [{ stretch: stretch.name, feel, loud }];
      }
    }
    return [];
  });
}

/** What a chart's "check first" column says beside a sign. Common practice, no source. */
export const CHECK_FIRST: Readonly<Record<string, readonly string[]>> = {
  "hangs-only-when-hot": ["look-at-boots-and-clamps", "pressure-test"],
  "idle-creeps-up-when-hot": ["look-at-boots-and-clamps", "spray-joints"],
  "idle-suddenly-high": ["slide-snap-and-cable", "look-at-boots-and-clamps"],
  "worse-at-low-revs-same-grip": ["spray-joints"],
  "runs-only-on-choke": ["clean-pilot"],
  "will-not-idle": ["clean-pilot"],
  "hot-start-needs-choke": ["clean-pilot"],
  "cuts-out-on-landing": ["float-height"],
  "changes-on-slopes": ["float-height"],
  "petrol-drips-from-overflow": ["overflow-drip", "float-height"],
  "petrol-smell-eyes-sting": ["overflow-drip"],
  "fades-after-ten-seconds": ["tap-and-vents", "fuel-flow"],
  "cuts-as-if-tap-off": ["tap-and-vents", "fuel-flow"],
  "fades-then-recovers": ["fuel-flow"],
  "comes-and-goes": ["fresh-fuel-and-oil", "spark-and-plug"],
  "cold-start-without-choke": ["choke-plunger"],
  "fouls-plugs": ["spark-and-plug", "choke-plunger"],
  "clears-with-filter-off": ["air-filter"],
  "revs-rise-over-bumps": ["slide-snap-and-cable"],
  "heavy-in-the-middle-clean-on-top": ["measure-needle-and-jet"],
  "uses-more-fuel": ["measure-needle-and-jet"],
  "spits-back-at-the-mouth": ["reeds", "valve-clearance"],
  "misses-more-the-harder-it-pulls": ["spark-and-plug", "ignition-timing"],
  "kicks-over-easily": ["compression"],
  "smokes-when-warm": ["gearbox-oil-and-smoke"],
  "gearbox-oil-goes-missing": ["gearbox-oil-and-smoke"],
  "follows-revs-not-grip": ["exhaust-and-silencer", "power-valve"],
  "no-step-where-the-power-valve-opens": ["power-valve"],
  "weaker-lap-by-lap": ["cooling"],
  "very-hot-or-boils": ["cooling", "head-and-plug-tight"],
  "hiss-or-wet-at-head-joint": ["head-and-plug-tight"],
  "coolant-goes-missing": ["head-and-plug-tight", "cooling"],
  "plug-same-whatever-the-jets": ["spark-and-plug"],
  "fast-opening-bogs-slow-is-clean-four-stroke": ["pump-timing"],
};

/** Minutes each look takes; the same for every policy. */
export const fitsStrokes = (check: string, strokes: 2 | 4): boolean =>
  strokes === 2
    ? !["pump-timing", "valve-clearance"].includes(check)
    : !["gearbox-oil-and-smoke", "reeds", "power-valve", "pressure-test"].includes(check);
