import type { Opening } from "./quantity.ts";

/**
 * The throttle openings the mixture is held at, as fractions of full slide lift. "Closed" is 0: the slide on
 * its stop at idle, a few per cent open in truth (metering knows how far).
 */
export const OPENINGS = [
  0,
  1 / 16,
  1 / 8,
  3 / 16,
  1 / 4,
  3 / 8,
  1 / 2,
  5 / 8,
  3 / 4,
  7 / 8,
  1,
] as readonly number[] as readonly Opening[];

/** The six openings people see and speak of. */
export const SPOKEN_OPENINGS = [0, 1 / 8, 1 / 4, 1 / 2, 3 / 4, 1] as readonly number[] as readonly Opening[];

const names = new Map<number, string>([
  [0, "closed"],
  [1 / 16, "1/16"],
  [1 / 8, "1/8"],
  [3 / 16, "3/16"],
  [1 / 4, "1/4"],
  [3 / 8, "3/8"],
  [1 / 2, "1/2"],
  [5 / 8, "5/8"],
  [3 / 4, "3/4"],
  [7 / 8, "7/8"],
  [1, "full"],
]);

/** The opening in a technician's words, such as "1/4" or "full". */
export function openingName(opening: Opening): string {
  return names.get(opening) ?? `${Math.round(opening * 100)} %`;
}
