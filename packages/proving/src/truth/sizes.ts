/** Steps in which jets are sold, by the number they start at; common practice, no source. */
const STEPS: Readonly<
  Record<"main" | "pilot", Readonly<Record<"bore" | "flow", readonly (readonly [number, number])[]>>>
> = {
  main: {
    bore: [
      [0, 2],
      [100, 2.5],
      [180, 5],
    ],
    flow: [
      [0, 2.5],
      [160, 5],
      [300, 10],
    ],
  },
  pilot: { bore: [[0, 2]], flow: [[0, 2.5]] },
};

export function stepAt(place: "main" | "pilot", numbering: "bore" | "flow", number: number): number {
  let step = 2;
  for (const [from, size] of STEPS[place][numbering]) if (number >= from) step = size;
  return step;
}

/** The size so many steps from another; negative: smaller. */
export function stepped(
  place: "main" | "pilot",
  numbering: "bore" | "flow",
  number: number,
  steps: number,
): number {
  let size = number;
  for (let i = 0; i < Math.abs(steps); i++) {
    const step = stepAt(place, numbering, steps > 0 ? size : size - 0.01);
    size += Math.sign(steps) * step;
  }
  return Math.max(5, Math.round(size * 10) / 10);
}

/** The size sold nearest to a number. */
export function nearestSize(place: "main" | "pilot", numbering: "bore" | "flow", number: number): number {
  const step = stepAt(place, numbering, number);
  return Math.round(number / step) * step;
}
