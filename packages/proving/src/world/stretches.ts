import { LIFTS } from "../truth/bike.ts";

export type StretchName = "idle" | "closing" | "snap" | "light" | "middle" | "top";
export type Feel = "rich" | "right" | "lean";

/** A part of the throttle's way that a rider feels as one, and what the bike does there. */
export interface Stretch {
  readonly name: StretchName;
  /** Lift and how much it counts. */
  readonly over: readonly (readonly [number, number])[];
  /** Error that an average rider notices there, ln ratio. */
  readonly noticed: number;
  /** What is said: the first phrase for a little, the last for much. */
  readonly says: (strokes: 2 | 4) => Readonly<Record<Feel, readonly string[]>>;
  /** Where it is reported, when the phrase does not say it by itself. */
  readonly at: number | null;
}

const by =
  (two: Record<Feel, readonly string[]>, four: Partial<Record<Feel, readonly string[]>> = {}) =>
  (strokes: 2 | 4) =>
    strokes === 2 ? two : { ...two, ...four };

export const STRETCHES: readonly Stretch[] = [
  {
    name: "idle",
    over: [
      [0, 0.7],
      [1 / 16, 0.3],
    ],
    noticed: 0.05,
    at: null,
    says: by({
      rich: ["idle-loads-up", "idle-loads-up", "will-not-idle"],
      right: ["idles-steadily"],
      lean: ["idle-hunts", "idle-hunts", "runs-only-on-choke"],
    }),
  },
  {
    name: "closing",
    over: [
      [0, 0.4],
      [1 / 16, 0.4],
      [1 / 8, 0.2],
    ],
    noticed: 0.05,
    at: null,
    says: by({
      rich: ["dives-below-idle", "stalls-on-closing"],
      right: ["drops-straight-to-idle"],
      lean: ["hangs-after-closing", "hangs-after-closing"],
    }),
  },
  {
    name: "snap",
    over: [
      [1 / 16, 0.25],
      [1 / 8, 0.4],
      [3 / 16, 0.2],
      [1 / 4, 0.15],
    ],
    noticed: 0.045,
    at: null,
    says: by(
      {
        rich: ["stumbles-with-smoke"],
        right: ["answers-crisply"],
        lean: ["delay-then-sudden-hit", "bogs-hollow-no-smoke"],
      },
      { rich: ["lazy-revs-petrol-smell-four-stroke", "black-dry-smoke-four-stroke"] },
    ),
  },
  {
    name: "light",
    over: [
      [1 / 8, 0.3],
      [3 / 16, 0.4],
      [1 / 4, 0.3],
    ],
    noticed: 0.055,
    at: null,
    says: by(
      { rich: ["four-strokes-light-throttle"], right: ["pulls-smoothly"], lean: ["jerks-at-constant-grip"] },
      { rich: ["lazy-and-heavy"] },
    ),
  },
  {
    name: "middle",
    over: [
      [1 / 4, 0.15],
      [3 / 8, 0.3],
      [1 / 2, 0.35],
      [5 / 8, 0.2],
    ],
    noticed: 0.045,
    at: 1 / 2,
    says: by(
      {
        rich: ["lazy-and-heavy", "four-strokes-under-load", "four-strokes-under-load"],
        right: ["pulls-smoothly"],
        lean: ["jerks-at-constant-grip", "revs-without-pull", "pings-on-roll-on"],
      },
      { rich: ["lazy-and-heavy", "lazy-and-heavy", "sooty-plug-four-stroke"] },
    ),
  },
  {
    name: "top",
    over: [
      [3 / 4, 0.2],
      [7 / 8, 0.3],
      [1, 0.5],
    ],
    noticed: 0.042,
    at: null,
    says: by({
      rich: ["will-not-rev-out"],
      right: ["pulls-clean-to-peak"],
      lean: ["over-revs-thin-and-sharp", "fades-then-recovers", "tearing-note-at-full-throttle"],
    }),
  },
];

/** Average of what is known at each of LIFTS over a stretch. */
export function over({ over: weights }: Pick<Stretch, "over">, values: readonly number[]): number {
  return weights.reduce(
    (sum, [lift, weight]) => sum + weight * values[LIFTS.indexOf(lift as (typeof LIFTS)[number])]!,
    0,
  );
}
