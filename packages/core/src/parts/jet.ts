import type { SquareMetre } from "../units/quantity.ts";

/**
 * What the number on a jet means: the bore in 1/100 mm, or the flow in cm³ a minute under its maker's own
 * test. The same number means another hole in each; the two are never converted silently.
 */
export const JET_NUMBERINGS = ["bore", "flow"] as const;
export type JetNumbering = (typeof JET_NUMBERINGS)[number];

export interface Jet {
  readonly number: number;
  readonly numbering: JetNumbering;
  /** Maker as written on the packet, free text; two makers' numbers are not the same hole. */
  readonly maker: string;
}

/** m² for one unit of a flow number: a 100 is taken as a 1.00 mm bore, within about 5 % of diameter. */
const AREA_PER_FLOW_UNIT = (Math.PI / 4) * 1e-8;

/**
 * Area of the hole that the number stands for, m². Bore numbers: π/4 d². Flow numbers: proportional to the
 * number, on the scale d[mm] = √(n/100), good to 5 % of diameter between makers; ratios within one maker are
 * far better. Source: reference/metering section 2.4 (shared figures).
 */
export function jetArea(jet: Pick<Jet, "number" | "numbering">): SquareMetre {
  if (!(jet.number > 0 && jet.number < 2000)) {
    throw new RangeError(`A jet number must be above 0 and below 2000, got ${jet.number}`);
  }
  if (jet.numbering === "flow") return (AREA_PER_FLOW_UNIT * jet.number) as SquareMetre;
  const bore = jet.number * 1e-5;
  return ((Math.PI / 4) * bore * bore) as SquareMetre;
}
