import { exp, log } from "../numerics/elementary.ts";
import type { JetNumbering } from "../parts/jet.ts";
import type { RestsOn } from "../words/rests-on.ts";
import type { SizedBike } from "./bike-check.ts";
import { borrow } from "./borrowed.ts";
import type { BroughtJet } from "./brought-to.ts";
import type { StandardSetup } from "./known-good.ts";
import type { Features } from "./likeness.ts";
import { restsOn } from "./rests-on.ts";
import { sizeAbove, sizeNearest } from "./sizes-sold.ts";
import { NINE_OF_TEN, type StartingFigure } from "./starting-figure.ts";
import { mainByTheory, pilotByTheory, type Theory } from "./theory.ts";

/** What is left between two bikes that are alike: makers, scatter of jets, taste. Log of a bore number; estimate. */
const TWIN_SD = { main: 0.025, pilot: 0.05 } as const;
/** A main jet may leave the mixture this much leaner than wanted, as a log, at most this often (2 %). */
export const START_LEAN_LIMIT = -0.06;
const TWO_PERCENT = 2.054;

const theoryOf = (place: "main" | "pilot", input: Features, numbering: JetNumbering): Theory =>
  place === "main" ? mainByTheory(input, numbering) : pilotByTheory(input, numbering);

/** Log of a jet's number in standard air with its spread, from theory and the shop's bikes of the same numbering. */
export function jetInStandardAir(
  place: "main" | "pilot",
  numbering: JetNumbering,
  target: SizedBike,
  setups: readonly StandardSetup[],
): Theory & { readonly restsOn: RestsOn; readonly makers: readonly string[] } {
  const theory = theoryOf(place, target, numbering);
  const like = setups.filter((setup) => setup[place]?.numbering === numbering);
  const examples = like.map(({ features, ...setup }) => ({
    features,
    offset: log(setup[place]!.number) - theoryOf(place, features, numbering).mean,
    sd: setup[place]!.sd,
  }));
  const twin = TWIN_SD[place] * (numbering === "flow" ? 2 : 1);
  const borrowed = borrow(target, examples, theory.sd, twin);
  const makers = like.filter((_, i) => borrowed.weights[i]! >= 0.05).map((setup) => setup[place]!.maker);
  const boreSd = target.boreSd * (numbering === "flow" ? 2 : 1);
  return {
    ...theory,
    mean: theory.mean + borrowed.offset,
    sd: Math.sqrt(borrowed.sd * borrowed.sd + boreSd * boreSd),
    restsOn: restsOn(theory, like, borrowed.weights),
    makers: [...new Set(makers.filter((maker) => maker !== ""))].sort(),
  };
}

/**
 * The figure for a jet carried to its place. The main jet starts rich enough that it is leaner than the limit with
 * a chance of 2 % at most, and goes to the next size up; the pilot jet to the nearest, since the screw is beside it.
 */
export function jetFigure(
  place: "main" | "pilot",
  numbering: JetNumbering,
  standard: { readonly sd: number; readonly restsOn: RestsOn },
  atPlace: BroughtJet,
): StartingFigure {
  const sd = Math.sqrt(standard.sd * standard.sd + atPlace.sd * atPlace.sd);
  const mean = log(atPlace.number);
  const number = (sds: number): number => exp(mean + sds * sd);
  const richer = Math.max(0, TWO_PERCENT * sd + START_LEAN_LIMIT / atPlace.slope);
  const start =
    place === "main"
      ? sizeAbove(exp(mean + richer), place, numbering)
      : sizeNearest(number(0), place, numbering);
  return {
    part: place,
    numbering,
    start,
    low: Math.min(start, sizeAbove(number(-NINE_OF_TEN), place, numbering)),
    high: Math.max(start, sizeAbove(number(NINE_OF_TEN), place, numbering)),
    middle: number(0),
    restsOn: standard.restsOn,
  };
}
