import type { JetNumbering } from "../parts/jet.ts";
import { type JetPlace, typicalSteps } from "../parts/jet-steps.ts";

/** Sizes between whole steps of 2.5 lose the half by some makers' habit: 37.5 is sold as 38, 42.5 as 42. */
const evenHalf = (size: number): number => {
  const whole = Math.floor(size);
  return size === whole ? size : whole % 2 === 0 ? whole : whole + 1;
};

/**
 * Jet sizes as usually sold, in order, from 10 up to 600. Common practice, no source; makers' lists differ, so a
 * size named by this list may be sold as its neighbour.
 */
export function sizesSold(place: JetPlace, numbering: JetNumbering): readonly number[] {
  const sizes: number[] = [];
  let size = 10;
  while (size <= 600) {
    const step = Math.max(2.5, typicalSteps({ number: size, numbering }, place)[0]);
    const halved = numbering === "bore" && (place === "pilot" || size < 110);
    sizes.push(halved ? evenHalf(size) : size);
    size = Math.round((size + step) / step) * step;
  }
  return sizes;
}

/** The smallest size sold that is not below a number: the rich side. */
export function sizeAbove(number: number, place: JetPlace, numbering: JetNumbering): number {
  const sizes = sizesSold(place, numbering);
  return sizes.find((size) => size >= number - 1e-9) ?? sizes[sizes.length - 1]!;
}

/** The size sold closest to a number; the larger of two equally close. */
export function sizeNearest(number: number, place: JetPlace, numbering: JetNumbering): number {
  let best = Number.NaN;
  for (const size of sizesSold(place, numbering)) {
    if (!(Math.abs(size - number) > Math.abs(best - number))) best = size;
  }
  return best;
}
