import {
  accept,
  airFrom,
  fromCubicCentimetre,
  fromMillimetre,
  type JetNumbering,
  type Outcome,
  readUse,
  refusalText,
  type ScrewKind,
  type StartingFigure,
  standardFuel,
  startingPoint,
  startingPointText,
  type Use,
  warningText,
} from "@jetwright/core";
import { knownGoodSetups } from "@jetwright/records";
import { startingWords } from "../catalogues.ts";
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
  /** Each with what it rests on in words, what weighed most first. */
  readonly figures: readonly (Omit<StartingFigure, "restsOn"> & { readonly restsOn: readonly string[] })[];
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
export async function starting(
  { shop, words }: EngineState,
  caller: CallersBike,
): Promise<Outcome<StartingView>> {
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
  const { figures, needlesAlike, warnings, leftOut } = point.value;
  const say = await startingWords(words.language);
  return accept({
    figures: figures.map((figure) => ({ ...figure, restsOn: say.restsOn(figure.restsOn) })),
    needle: say.needle(needlesAlike),
    warnings: warnings.map((warning) => warningText(warning, words)),
    leftOut: leftOut.map((why) => refusalText(why, words)),
    cautions: say.firstRide(caller.strokes),
    shopSetups: good.length,
    text: startingPointText(point.value, words, say),
  });
}
