import { log } from "../numerics/elementary.ts";
import { OPENINGS } from "../units/opening.ts";
import {
  fuelAndDryAir,
  mainBranch,
  pilotBranch,
  type Side,
  seriesLog,
  seriesResistance,
  viscosityPower,
} from "./branches.ts";
import type { Baseline } from "./shift.ts";

/**
 * Situations that differ from one of now in one group of parts each, ready to compare. Between the groups nothing is
 * shared, so that the shift of any choice of one from each is the sum of theirs.
 */
export interface SidesByGroup {
  readonly now: Side;
  /** Needle, its clip, and the needle jet. */
  readonly needles: readonly Side[];
  readonly mains: readonly Side[];
  readonly slides: readonly Side[];
  /** Pilot jet with screw. */
  readonly pilots: readonly Side[];
}

/** Shifts against a baseline by group of parts, in flat tables: row by part, then opening by opening. */
export interface PartShifts {
  /** Share of the main branch in the fuel at each opening. */
  readonly mainShare: Float64Array;
  /** Resistance of the gap around the needle, and the log flow it alone changes. */
  readonly needleResistance: Float64Array;
  readonly needleAlone: Float64Array;
  readonly mainResistance: Float64Array;
  readonly mainAlone: Float64Array;
  /** Log flow of the baseline's main jet and needle. */
  readonly before: Float64Array;
  /** Of each slide, weighed by the main branch's share: what goes under "slide", "main" and "air". */
  readonly slide: Float64Array;
  readonly lift: Float64Array;
  readonly air: Float64Array;
  /** Of each pilot jet with screw, weighed by the pilot's share. */
  readonly pilot: Float64Array;
  readonly screw: Float64Array;
}

export function partShifts({ frame, side: from }: Baseline, sides: SidesByGroup): PartShifts {
  const n = OPENINGS.length;
  const rows = (parts: readonly Side[], value: (part: Side, u: number) => number): Float64Array => {
    const table = new Float64Array(parts.length * n);
    parts.forEach((part, p) => {
      for (let u = 0; u < n; u++) table[p * n + u] = value(part, u);
    });
    return table;
  };
  const before = Float64Array.from(from.fitted.annulus, (annulus) =>
    seriesLog(from.fitted.mainArea, annulus),
  );
  const mainShare = Float64Array.from(frame.pilotShare, (share) => 1 - share);
  const pilots = sides.pilots.map((part) => pilotBranch(frame, from, part));
  const air = pilotBranch(frame, from, sides.now).air;
  const { common, viscosity } = fuelAndDryAir(from.situation, sides.now.situation);
  const { slides, needles, mains } = sides;
  const slideParts = slides.map((part) => frame.lift.map((_, u) => mainBranch(frame, from, part, u)));
  const pilotRows = (which: "pilot" | "screw"): Float64Array => {
    const table = new Float64Array(pilots.length * n);
    pilots.forEach((part, p) => {
      for (let u = 0; u < n; u++) table[p * n + u] = frame.pilotShare[u]! * part[which];
    });
    return table;
  };
  return {
    mainShare,
    before,
    needleResistance: rows(needles, ({ fitted }, u) => seriesResistance(null, fitted.annulus[u]!)),
    needleAlone: rows(
      needles,
      ({ fitted }, u) => seriesLog(from.fitted.mainArea, fitted.annulus[u]!) - before[u]!,
    ),
    mainResistance: Float64Array.from(mains, ({ fitted }) => seriesResistance(fitted.mainArea, null)),
    mainAlone: rows(
      mains,
      ({ fitted }, u) => seriesLog(fitted.mainArea, from.fitted.annulus[u]!) - before[u]!,
    ),
    slide: rows(slides, (part, u) => mainShare[u]! * slideParts[slides.indexOf(part)]![u]!.slide),
    lift: rows(slides, (part, u) => mainShare[u]! * slideParts[slides.indexOf(part)]![u]!.lift),
    air: rows(slides, (part, u) => {
      const share = frame.pilotShare[u]!;
      const drawn = mainShare[u]! * slideParts[slides.indexOf(part)]![u]!.air + share * air;
      return drawn + (common - viscosityPower(share) * viscosity);
    }),
    pilot: pilotRows("pilot"),
    screw: pilotRows("screw"),
  };
}

/**
 * What needle number `needle` and main jet number `main` do together, written opening by opening: under "needle" and
 * under "main", each the mean of being switched first and last.
 */
export function writeSeriesShift(
  shifts: PartShifts,
  needle: number,
  main: number,
  intoNeedle: Float64Array,
  intoMain: Float64Array,
): void {
  const n = shifts.before.length;
  const jet = shifts.mainResistance[main]!;
  for (let u = 0; u < n; u++) {
    const together = -0.5 * log(jet + shifts.needleResistance[needle * n + u]!) - shifts.before[u]!;
    const apart = shifts.needleAlone[needle * n + u]! - shifts.mainAlone[main * n + u]!;
    const half = 0.5 * shifts.mainShare[u]!;
    intoNeedle[u] = half * (together + apart);
    intoMain[u] = half * (together - apart);
  }
}
