import { log } from "../numerics/elementary.ts";
import { OPENINGS } from "../units/opening.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Pascal } from "../units/quantity.ts";
import { drivingDrop } from "./branches.ts";
import type { MeteringRefusal } from "./comparable.ts";
import { mainAreaFactor } from "./main-alone.ts";
import { baselineOf } from "./shift.ts";
import type { Situation } from "./situation.ts";
import { freeVentRichness } from "./venturi.ts";

/** What holding the intake air back does to the mixture. */
export interface IntakeRestriction {
  /** Log of the mixture with the restriction over without, at the eleven OPENINGS. */
  readonly logRatio: readonly number[];
  /** Factor on the main jet's area that puts full throttle right again; null where no jet can. */
  readonly mainAreaFactor: number | null;
}

/** Air flow at each opening over that at full throttle: a usual running line of a 250 two-stroke. Estimate. */
const AIR_FLOW = [0.04, 0.08, 0.14, 0.22, 0.31, 0.47, 0.63, 0.76, 0.88, 0.95, 1] as const;

/**
 * A filter, snorkel or silencer that holds back `atFull` Pa at full throttle, by the square of the air flow below.
 * With the bowl vented to free air it drives fuel and richens; with the bowl vented behind it, nothing changes.
 * Good to ±20 %. Left out: the air gets thinner by the same pressure (250 Pa: 0.1 % richer).
 */
export function intakeRestriction(
  situation: Situation,
  atFull: Pascal,
): Outcome<IntakeRestriction, MeteringRefusal | "impossible restriction"> {
  const baseline = baselineOf(situation);
  if (!baseline.ok) return baseline;
  if (!(atFull >= 0 && atFull <= 20_000)) {
    return refuse(
      "impossible restriction",
      `An intake that holds back ${atFull} Pa cannot be: give 0 to 20000 Pa; a silencer or dirty filter is some 250 Pa.`,
    );
  }
  const { frame, side } = baseline.value;
  const felt = frame.body.bowlVent === "free air" ? atFull : 0;
  const logRatio = OPENINGS.map((_, i) => {
    const held = felt * AIR_FLOW[i]! * AIR_FLOW[i]!;
    return (1 - frame.pilotShare[i]!) * log(freeVentRichness(drivingDrop(frame, side, i), held));
  });
  const full = OPENINGS.length - 1;
  return accept({ logRatio, mainAreaFactor: mainAreaFactor(frame, side, full, logRatio[full]!) });
}
