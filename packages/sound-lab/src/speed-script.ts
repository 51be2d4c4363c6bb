import type { Chance } from "./chance.ts";

/** A piece of the story the crankshaft follows. */
export interface Piece {
  readonly seconds: number;
  /** Speed at its end, revolutions a minute. */
  readonly rpm: number;
  /** How it gets there: an S, first fast then slow (as a flywheel losing speed), or evenly. */
  readonly way: "s" | "decay" | "even";
  /** 0 throttle shut to 1 fully open. */
  readonly load: number;
  /** Chance that a firing is skipped after one that was not; two-strokes. */
  readonly skip?: number;
  /** The engine has stopped. */
  readonly dead?: boolean;
}

/** What the crankshaft really did, a value each millisecond. */
export interface Truth {
  readonly rpm: Float64Array;
  readonly load: Float64Array;
  readonly skip: Float64Array;
  readonly seconds: number;
}

/** Follows the pieces, with a slow wander that eases under load. */
export function crankshaft(
  startRpm: number,
  pieces: readonly Piece[],
  wander: number,
  chance: Chance,
): Truth {
  const seconds = pieces.reduce((sum, piece) => sum + piece.seconds, 0);
  const n = Math.ceil(seconds * 1000);
  const rpm = new Float64Array(n);
  const load = new Float64Array(n);
  const skip = new Float64Array(n);
  let slow = 0;
  let from = startRpm;
  let i = 0;
  let began = 0;
  for (const piece of pieces) {
    for (; i < n && i < (began + piece.seconds) * 1000; i++) {
      const u = Math.min(1, (i / 1000 - began) / piece.seconds);
      const part =
        piece.way === "s"
          ? u * u * (3 - 2 * u)
          : piece.way === "even"
            ? u
            : (1 - Math.exp(-1.5 * u)) / (1 - Math.exp(-1.5));
      // Wander of a third of a second, as gas exchange and governor-like feedback give it.
      slow += (-slow / 0.35) * 0.001 + wander * Math.sqrt((2 * 0.001) / 0.35) * chance.normal();
      const eased = piece.load > 0.3 ? 0.35 : 1;
      rpm[i] = piece.dead ? 0 : from * (piece.rpm / from) ** part * (1 + slow * eased);
      load[i] = piece.load;
      skip[i] = piece.skip ?? 0;
    }
    began += piece.seconds;
    if (!piece.dead) from = piece.rpm;
  }
  return { rpm, load, skip, seconds };
}
