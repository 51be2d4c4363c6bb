import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Jet, JetNumbering } from "./jet.ts";

export type JetPlace = "main" | "pilot";

/** Sizes go up by the first of `steps` from this number on; a second one is sold by some makers. */
interface StepRow {
  readonly from: number;
  readonly steps: readonly number[];
}

/** Steps between sizes as sold. Common practice, no source. */
const STEPS: Readonly<Record<JetPlace, Readonly<Record<JetNumbering, readonly StepRow[]>>>> = {
  main: {
    bore: [
      { from: 0, steps: [2, 2.5] },
      { from: 110, steps: [2.5, 2] },
      { from: 160, steps: [2.5, 5] },
      { from: 195, steps: [5] },
    ],
    flow: [
      { from: 0, steps: [2.5] },
      { from: 175, steps: [5] },
      { from: 250, steps: [10] },
    ],
  },
  pilot: {
    bore: [{ from: 0, steps: [2, 3] }],
    flow: [
      { from: 0, steps: [2.5] },
      { from: 30, steps: [5] },
    ],
  },
};

/** Steps between neighbouring sizes around this number, the usual one first. */
export function typicalSteps(
  jet: Pick<Jet, "number" | "numbering">,
  place: JetPlace,
): readonly [number, ...number[]] {
  const rows = STEPS[place][jet.numbering].filter((row) => jet.number >= row.from);
  const last = rows[rows.length - 1];
  if (!last) throw new RangeError(`A jet number must be above 0, got ${jet.number}`);
  return last.steps as readonly [number, ...number[]];
}

/** How much a jet's area grows with `step` more in its number: 0.058 for 175 and 180 by bore. */
export function areaStep(jet: Pick<Jet, "number" | "numbering">, step: number): number {
  const ratio = (jet.number + step) / jet.number;
  return (jet.numbering === "bore" ? ratio * ratio : ratio) - 1;
}

/** The number whose area is `areaFactor` times this jet's: by bore the root counts, by flow the factor itself. */
export function numberForArea(jet: Pick<Jet, "number" | "numbering">, areaFactor: number): number {
  if (!(areaFactor > 0 && areaFactor < Infinity)) {
    throw new RangeError(`An area factor must be above 0 and finite, got ${areaFactor}`);
  }
  return jet.number * (jet.numbering === "bore" ? Math.sqrt(areaFactor) : areaFactor);
}

/** How many sizes up (above 0) or down a factor on the area is, with the usual step or the one given. */
export function stepsForArea(
  jet: Pick<Jet, "number" | "numbering">,
  areaFactor: number,
  step: number,
): number {
  if (!(step > 0)) throw new RangeError(`A step between sizes must be above 0, got ${step}`);
  return (numberForArea(jet, areaFactor) - jet.number) / step;
}

/** Steps in words: "under half a size", "about 1 1/2 sizes up". */
export function stepsText(steps: number): string {
  const size = Math.abs(steps);
  if (size < 0.05) return "no change of jet";
  const way = steps > 0 ? "up" : "down";
  if (size < 0.5) return `under half a size ${way}`;
  const halves = Math.round(size * 2);
  const whole = Math.floor(halves / 2);
  const count = halves % 2 === 0 ? `${whole}` : whole === 0 ? "1/2" : `${whole} 1/2`;
  return `about ${count} ${halves <= 2 ? "size" : "sizes"} ${way}`;
}

/**
 * The size to fit when `wanted` lies between sizes: the smallest that is not below it, since too rich costs a plug
 * and too lean a piston. Refuses when the largest is still leaner.
 */
export function richSideSize(wanted: number, sizes: readonly number[]): Outcome<number, "none rich enough"> {
  let best = Infinity;
  for (const size of sizes) if (size >= wanted - 1e-9 && size < best) best = size;
  if (best < Infinity) return accept(best);
  const largest = sizes.length === 0 ? "there is none" : `the largest is ${Math.max(...sizes)}`;
  return refuse(
    "none rich enough",
    `${Math.round(wanted * 10) / 10} or larger is needed and ${largest}. Get a larger jet; do not ride on the smaller one.`,
  );
}
