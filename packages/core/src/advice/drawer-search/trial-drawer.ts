import { priorGaussian } from "../../belief/prior.ts";
import { FIRST_CIRCUIT, STATE_SIZE } from "../../belief/state.ts";
import { boreJet, mm, NEEDLE } from "../../metering/test-situations.ts";
import { power } from "../../numerics/elementary.ts";
import { seededRandom } from "../../numerics/random.ts";
import { known } from "../../parts/known.ts";
import type { Needle } from "../../parts/needle.ts";
import type { Setup } from "../../parts/setup.ts";
import { fromDegree } from "../../units/convert.ts";
import { OPENINGS } from "../../units/opening.ts";
import type { Option } from "../options.ts";
import type { DrawerPlaces } from "./drawer-space.ts";
import type { Mixture } from "./loss-table.ts";

// Drawers and beliefs of any size, drawn from a number: for tests and the bench.

export interface DrawerSize {
  readonly needles: number;
  readonly clips: number;
  readonly mains: number;
  readonly pilots: number;
  readonly screws: number;
  readonly slides: number;
}

export const combinationsOf = (size: DrawerSize): number =>
  Object.values(size).reduce((product: number, count: number) => product * count, 1);

const option = (changes: Option["changes"], change: Partial<Setup>): Option => ({
  changes,
  toBuy: [],
  fit: (setup) => ({ ...setup, ...change }),
});

/** Between two values, the first for index 0. */
const along = (from: number, to: number, i: number, count: number): number =>
  count === 1 ? from : from + ((to - from) * i) / (count - 1);

/** How the needles of a drawer differ. */
export type Needles = "spread" | "near twins" | "twins" | "never matter";

/** A full drawer around a setup with a 175 main and a 42 pilot. */
export function trialPlaces(size: DrawerSize, needles: Needles = "spread", seed = 1): DrawerPlaces {
  const random = seededRandom(seed);
  const needleOptions: Option[] = [];
  for (let i = 0; i < size.needles; i++) {
    const needle = trialNeedle(i, needles, random.uniform);
    for (let groove = 1; groove <= size.clips; groove++) {
      needleOptions.push(option(["needle"], { needle: known(needle), clip: known(groove) }));
    }
  }
  const list = (count: number, make: (i: number) => Option): Option[] =>
    Array.from({ length: count }, (_, i) => make(i));
  return {
    needles: needleOptions,
    mains: list(size.mains, (i) =>
      option(["main"], { main: known(boreJet(along(130, 230, i, size.mains))) }),
    ),
    slides: list(size.slides, (i) =>
      option(["slide"], { cutaway: known(mm(along(2.5, 5, i, size.slides))) }),
    ),
    pilots: list(size.pilots, (i) =>
      option(["pilot"], { pilot: known(boreJet(along(28, 64, i, size.pilots))) }),
    ),
    screws: list(size.screws, (i) =>
      option(["screw"], { screw: known({ kind: "air", turnsOut: along(0.5, 3.25, i, size.screws) }) }),
    ),
  };
}

function trialNeedle(i: number, kind: Needles, uniform: () => number): Needle {
  const { profile } = NEEDLE;
  if (profile === null) throw new RangeError("The needle of the trials has sizes");
  const marks = `T${i}`;
  const drawn = [uniform(), uniform(), uniform(), uniform()] as const;
  if (kind === "twins") return { ...NEEDLE, marks };
  const scale = kind === "spread" ? 1 : 1e-5;
  const [straight, start, angle, second] = drawn.map((x) => scale * (2 * x - 1)) as [
    number,
    number,
    number,
    number,
  ];
  const sizes = {
    ...profile,
    straightDiameter: mm(2.52 + 0.05 * straight),
    tapers: profile.tapers.map((taper, t) => ({
      start: mm(1000 * taper.start + (t === 0 ? 2 : 4) * start),
      includedAngle: fromDegree((t === 0 ? 1.5 : 3) + (t === 0 ? 0.5 * angle : second)),
    })),
  };
  // So thin that the main jet alone meters.
  if (kind === "never matter")
    return {
      ...NEEDLE,
      marks,
      profile: { ...sizes, straightDiameter: mm(0.5 + 0.01 * straight), tapers: [] },
    };
  return { ...NEEDLE, marks, profile: sizes };
}

/**
 * A belief of so many parts, everything correlated, the parts apart in mixture and in effectiveness.
 * @param width how wide: 1 is a bike nobody knows, below it one that was measured
 */
export function trialBelief(parts: number, width: number, seed = 1, offset = 0): Mixture {
  const random = seededRandom(seed);
  const weights = Array.from({ length: parts }, () => power(random.uniform(), 3) + 1e-3);
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => {
    const { mean, covariance } = priorGaussian();
    const shift = 0.04 * width * random.normal() + offset;
    for (let i = 0; i < STATE_SIZE; i++) {
      const own = i < FIRST_CIRCUIT ? 0.03 * width : 0.3 * Math.sqrt(covariance[i * STATE_SIZE + i]!);
      mean[i] = mean[i]! + own * random.normal() + (i < OPENINGS.length ? shift : 0);
    }
    for (let i = 0; i < covariance.length; i++) covariance[i] = covariance[i]! * width * width;
    for (let k = 0; k < 4; k++) {
      const direction = Float64Array.from({ length: STATE_SIZE }, () => 0.02 * width * random.normal());
      for (let i = 0; i < STATE_SIZE; i++) {
        for (let j = 0; j < STATE_SIZE; j++) {
          covariance[i * STATE_SIZE + j] = covariance[i * STATE_SIZE + j]! + direction[i]! * direction[j]!;
        }
      }
    }
    return { probability: weight / sum, gaussian: { mean, covariance } };
  });
}
