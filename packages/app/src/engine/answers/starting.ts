import {
  accept,
  airFrom,
  firstRideCautions,
  fromCubicCentimetre,
  fromMillimetre,
  type JetNumbering,
  type Outcome,
  readUse,
  type ScrewKind,
  type StartingFigure,
  standardFuel,
  startingPoint,
  startingPointText,
  type Use,
  warningText,
} from "@jetwright/core";
import { knownGoodSetups } from "@jetwright/records";
import type { EngineState } from "../state.ts";

/** A bike as a caller tells of it; null for what they do not know. */
export interface CallersBike {
  readonly strokes: 2 | 4;
  readonly displacementCc: number | null;
  readonly boreMm: number | null;
  readonly use: Use | null;
  readonly screw: ScrewKind | null;
  readonly numbering: JetNumbering | null;
  readonly heightM: number;
  readonly temperatureC: number;
}

export interface StartingView {
  readonly figures: readonly StartingFigure[];
  readonly needle: string;
  readonly warnings: readonly string[];
  readonly leftOut: readonly string[];
  readonly cautions: readonly string[];
  /** How many setups of this shop were at hand. */
  readonly shopSetups: number;
  /** The whole of it as a block of text to send. */
  readonly text: string;
}

/** A starting setup for a bike never seen, from theory and this shop's known-good setups. */
export function starting({ shop, words }: EngineState, caller: CallersBike): Outcome<StartingView> {
  const air = airFrom({
    temperature: { value: caller.temperatureC, unit: "C" },
    pressure: { kind: "none" },
    humidity: { kind: "unknown" },
    height: { value: caller.heightM, unit: "m" },
  });
  if (!air.ok) return air;
  const good = knownGoodSetups(shop).map(({ engine, situation, description }) => ({
    engine,
    situation,
    use: readUse(description.use ?? ""),
  }));
  const point = startingPoint(
    {
      strokes: caller.strokes,
      displacement: caller.displacementCc === null ? null : fromCubicCentimetre(caller.displacementCc),
      bore: caller.boreMm === null ? null : fromMillimetre(caller.boreMm),
      use: caller.use,
      screwKind: caller.screw,
      mainNumbering: caller.numbering,
      pilotNumbering: caller.numbering,
    },
    good,
    { air: air.value, fuel: standardFuel(caller.strokes) },
  );
  if (!point.ok) return point;
  const { figures, needle, warnings, leftOut } = point.value;
  return accept({
    figures,
    needle,
    warnings: warnings.map((warning) => warningText(warning, words)),
    leftOut,
    cautions: firstRideCautions(point.value),
    shopSetups: good.length,
    text: startingPointText(point.value, words),
  });
}
