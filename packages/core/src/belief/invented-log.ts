import type { Random } from "../numerics/random.ts";
import { seededRandom } from "../numerics/random.ts";
import type { Circuit, Shift } from "../units/circuit.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS, SPOKEN_OPENINGS } from "../units/opening.ts";
import type { FaultId, Sign } from "./catalogue.ts";
import { factorValue } from "./factor.ts";
import type { Checked, Observation } from "./observation.ts";
import type { Gaussian } from "./prior.ts";
import { responseLikelihood } from "./response-likelihood.ts";
import { signLikelihood } from "./sign-likelihood.ts";
import { direction, NO_SHIFT, nominalShift, stretchAt, stretchCentre, stretchOf } from "./state.ts";

/** How long an invented log is and what stands in it. For tests and the benchmark. */
export interface LogSize {
  readonly situations: number;
  readonly rides: number;
  /** Signs reported for each ride, at most. */
  readonly signsEach: number;
  readonly checks: number;
  readonly measurements: number;
  /** True: signs and verdicts are drawn without regard to the truth and contradict one another. */
  readonly random: boolean;
}

export interface InventedLog {
  readonly state: Float64Array;
  readonly fault: FaultId | null;
  readonly observations: readonly Observation[];
}

/** Share of reports that are drawn blind: riders mishear and misremember. */
const LAPSES = 0.07;

/** Where each circuit acts, as a share of what it does at its best opening; invented, but of the usual shape. */
const ACTS: Readonly<Record<Circuit, (u: number) => number>> = {
  pilot: (u) => Math.max(0, 1 - u / 0.45),
  screw: (u) => 0.7 * Math.max(0, 1 - u / 0.3),
  slide: (u) => Math.max(0, 1 - Math.abs(u - 0.18) / 0.3),
  needle: (u) => Math.max(0, 1 - Math.abs(u - 0.45) / 0.45),
  main: (u) => Math.max(0, (u - 0.3) / 0.7),
  air: () => 1,
};

/** The next situation: one or two parts changed, and other air. */
function nextShift(shift: Shift, random: Random): Shift {
  const moved = new Set<Circuit>();
  for (let k = random.uniform() < 0.3 ? 2 : 1; k > 0; k--)
    moved.add(CIRCUITS[Math.floor(random.uniform() * 5)]!);
  const next = { ...shift };
  for (const circuit of CIRCUITS) {
    const by =
      circuit === "air"
        ? 0.02 * random.normal() - 0.5 * (shift.air[0] ?? 0)
        : moved.has(circuit)
          ? (0.03 + 0.06 * random.uniform()) * (random.uniform() < 0.5 ? -1 : 1) - 0.3 * peak(shift[circuit])
          : 0;
    if (by !== 0) next[circuit] = OPENINGS.map((u, i) => shift[circuit][i]! + by * ACTS[circuit](u));
  }
  return next;
}

const peak = (values: readonly number[]): number =>
  values.reduce((best, value) => (Math.abs(value) > Math.abs(best) ? value : best), 0);

/**
 * A log as people write them, from a truth drawn from the prior: rides with signs noticed or looked for and
 * missed with the catalogue's own chances, verdicts between situations, checks and measurements.
 */
export function inventedLog(
  seed: number,
  prior: { readonly gaussian: Gaussian; readonly lower: Float64Array },
  signs: readonly Sign[],
  fault: FaultId | null,
  size: LogSize,
): InventedLog {
  const random = seededRandom(seed);
  const n = prior.gaussian.mean.length;
  const z = Float64Array.from({ length: n }, random.normal);
  const state = prior.gaussian.mean.map((mean, i) => {
    let value = mean;
    for (let j = 0; j <= i; j++) value += prior.lower[i * n + j]! * z[j]!;
    return value;
  });
  const along = (direction: Float64Array): number => direction.reduce((sum, d, i) => sum + d * state[i]!, 0);
  const shifts: Shift[] = [NO_SHIFT];
  while (shifts.length < size.situations) shifts.push(nextShift(shifts.at(-1)!, random));
  const observations: Observation[] = [];
  for (let ride = 0; ride < size.rides; ride++) {
    const s = Math.floor((ride * size.situations) / size.rides);
    const shift = shifts[s]!;
    const where = { record: `r${ride}`, at: 10 * ride, situation: `s${s}` };
    let left = size.signsEach;
    for (let tries = 0; left > 0 && tries < 60; tries++) {
      const sign = signs[Math.floor(random.uniform() * signs.length)]!;
      const stretch =
        random.uniform() < 0.3
          ? stretchAt(SPOKEN_OPENINGS[Math.floor(random.uniform() * 6)]!)
          : stretchOf(sign.speaksOf);
      const { sound, faults } = signLikelihood(sign, true, stretchCentre(stretch));
      const factor = (fault === null ? undefined : faults.get(fault)) ?? sound;
      const blind = size.random || random.uniform() < LAPSES;
      const chance = blind ? 0.5 : factorValue(factor, along(direction(stretch, shift)));
      const seen = random.uniform() < chance;
      // What is there gets told; what is not there, now and then.
      if (!seen && random.uniform() > 0.2) continue;
      observations.push({ kind: "sign", ...where, sign, stretch, seen, shift });
      left--;
    }
    const before = shifts[s - 1];
    if (before !== undefined && random.uniform() < 0.5) {
      const opening = SPOKEN_OPENINGS[Math.floor(random.uniform() * 6)]!;
      const felt = answer(opening, before, shift, fault, along, random, size.random);
      observations.push({ kind: "compared", ...where, opening, felt, before, after: shift });
    }
  }
  for (let k = 0; k < size.measurements; k++) {
    const s = Math.floor(random.uniform() * shifts.length);
    const shift = shifts[s]!;
    const stretch = stretchAt(SPOKEN_OPENINGS[Math.floor(random.uniform() * 6)]!);
    const sd = 0.02 + 0.03 * random.uniform();
    const wrong = random.uniform() < 0.05 ? 0.15 * random.normal() : 0;
    const error = along(direction(stretch, shift)) + sd * random.normal() + wrong;
    observations.push({ kind: "measured", record: `m${k}`, at: 5 + 30 * k, stretch, error, sd, shift });
  }
  for (let k = 0; k < size.checks; k++)
    observations.push(check(CHECKS[Math.floor(random.uniform() * CHECKS.length)]!, k, fault, random));
  return { state, fault, observations };
}

function answer(
  opening: (typeof SPOKEN_OPENINGS)[number],
  before: Shift,
  after: Shift,
  fault: FaultId | null,
  along: (direction: Float64Array) => number,
  random: Random,
  blind: boolean,
): "better" | "same" | "worse" {
  const answers = ["better", "same", "worse"] as const;
  if (blind || random.uniform() < LAPSES) return answers[Math.floor(random.uniform() * 3)]!;
  const stretch = stretchAt(opening);
  const change = nominalShift(stretch, after) - nominalShift(stretch, before);
  const middle = (along(direction(stretch, before)) + along(direction(stretch, after))) / 2;
  const chances = answers.map((felt) => {
    const { sound, faults } = responseLikelihood(felt, change, opening);
    return factorValue((fault === null ? undefined : faults.get(fault)) ?? sound, middle);
  });
  const drawn = random.uniform() * (chances[0]! + chances[1]! + chances[2]!);
  return drawn < chances[0]! ? "better" : drawn < chances[0]! + chances[1]! ? "same" : "worse";
}

const CHECKS: readonly Pick<Checked, "check" | "finds" | "falseAlarm">[] = [
  { check: "spray", finds: { "air-leak": 0.65, "gearbox-side-seal": 0.1 }, falseAlarm: 0.08 },
  { check: "pressure", finds: { "air-leak": 0.95, "gearbox-side-seal": 0.9, reed: 0.1 }, falseAlarm: 0.03 },
  { check: "flow", finds: { "fuel-supply": 0.9, "float-valve": 0.4 }, falseAlarm: 0.05 },
  { check: "spark", finds: { ignition: 0.6, "plug-heat-range": 0.1 }, falseAlarm: 0.1 },
  { check: "pilot-clean", finds: { "blocked-pilot": 0.9 }, falseAlarm: 0.05 },
];

function check(kind: (typeof CHECKS)[number], k: number, fault: FaultId | null, random: Random): Checked {
  const finds = (fault === null ? undefined : kind.finds[fault]) ?? kind.falseAlarm;
  const found = random.uniform() < finds ? "faulty" : "sound";
  return { kind: "checked", record: `c${k}`, at: 8 + 20 * k, ...kind, found, fault: null };
}
