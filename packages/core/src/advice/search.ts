import type { Gaussian } from "../belief/prior.ts";
import { FIRST_CIRCUIT, STATE_SIZE } from "../belief/state.ts";
import { shiftsFrom } from "../metering/shift.ts";
import type { Situation } from "../metering/situation.ts";
import type { Setup } from "../parts/setup.ts";
import { CIRCUITS, type Circuit, type Shift } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import type { BikeCase, LabourPart } from "./case.ts";
import { BUY_MINUTES, labourMinutes, provingMinutes } from "./labour.ts";
import { expectedLinex, LEAN_LIMIT, MINUTES, STEEPNESS, TOP } from "./loss.ts";
import type { Option, Options } from "./options.ts";

/** One setup that could be fitted next, with what it promises. */
export interface Candidate {
  readonly situation: Situation;
  readonly shift: Shift;
  readonly changes: readonly LabourPart[];
  readonly toBuy: readonly LabourPart[];
  /** Minutes of trouble expected with it, from the loss. */
  readonly trouble: number;
  /** Minutes to fit it, fetch what is missing, and prove it. */
  readonly minutes: number;
  /** trouble + minutes: the smaller the better. */
  readonly total: number;
  /** How many standard deviations the leanest of 3/4 to full stands above the lean limit, the belief as one Gaussian. */
  readonly topSpread: number;
}

/** One branch's share of a candidate, summed over its places. */
interface Branch {
  readonly setup: Setup;
  readonly changes: readonly LabourPart[];
  readonly toBuy: readonly LabourPart[];
  /** The set of parts changed and of parts to buy, as one text; empty for none. */
  readonly set: string;
  readonly shift: Shift;
}

function setOf(combination: readonly Option[]): Pick<Branch, "changes" | "toBuy" | "set"> {
  const changes = combination.flatMap((option) => option.changes);
  const toBuy = combination.flatMap((option) => option.toBuy);
  return {
    changes,
    toBuy,
    set: changes.map((part) => `${part}${toBuy.includes(part) ? "!" : ""} `).join(""),
  };
}

const PILOT_BRANCH: readonly Circuit[] = ["pilot", "screw"];
const TOP_FROM = OPENINGS.indexOf(TOP[0]!);

/**
 * Every combination of the options that beats the setup as it is, best first by trouble and minutes together,
 * with the setup as it is and the best few of each set of parts besides. Exact: metering adds the two branches of the carburetor, so each branch is worked out once for its own
 * combinations and every pair is weighed. Combinations that metering refuses are left out.
 */
export function searchSetups(
  belief: Gaussian,
  reference: Situation,
  now: Situation,
  options: Options,
  minutes: BikeCase["minutes"],
): readonly Candidate[] {
  const shifts = shiftsFrom(reference);
  if (!shifts.ok) return [];
  const branches = (places: readonly (readonly Option[])[]): Branch[] => {
    const all: Branch[] = [];
    for (const combination of combinations(places)) {
      const setup = combination.reduce((fitted, option) => option.fit(fitted), now.setup);
      const shift = shifts.value({ ...now, setup });
      if (!shift.ok) continue;
      all.push({
        setup,
        ...setOf(combination),
        shift: shift.value,
      });
    }
    return all;
  };
  const mains = branches(options.mainBranch);
  const pilots = branches(options.pilotBranch);
  if (mains.length === 0 || pilots.length === 0) return [];
  const pairs = weighPairs(belief, mains, pilots, minutes);
  return pairs
    .map(({ main, pilot, trouble, minutes: spent, topSpread }): Candidate => {
      const changes = [...main.changes, ...pilot.changes];
      return {
        situation: {
          ...now,
          setup: { ...main.setup, pilot: pilot.setup.pilot, screw: pilot.setup.screw },
        },
        shift: { ...main.shift, pilot: pilot.shift.pilot, screw: pilot.shift.screw },
        changes,
        toBuy: [...main.toBuy, ...pilot.toBuy],
        trouble,
        minutes: spent,
        total: trouble + spent,
        topSpread,
      };
    })
    .sort(byTotal);
}

interface Pair {
  readonly main: Branch;
  readonly pilot: Branch;
  readonly trouble: number;
  readonly minutes: number;
  readonly topSpread: number;
}

/** Of each set of parts the best few are kept even where they are no better than leaving all as it is. */
const KEPT_OF_EACH_SET = 3;

/** Every pair of branches that beats the setup as it is, and the best few of each set of parts. */
function weighPairs(
  belief: Gaussian,
  mains: readonly Branch[],
  pilots: readonly Branch[],
  own: BikeCase["minutes"],
): readonly Pair[] {
  const kept: Pair[] = [];
  const rest = new Map<string, Pair[]>();
  const minutesOf = minutesBySet(own);
  let present = Infinity;
  for (const main of mains) {
    const weighed = weigh(belief, main.shift);
    for (const pilot of pilots) {
      const { trouble, topSpread } = weighed(pilot.shift);
      const { key, minutes } = minutesOf(main, pilot);
      const pair = { main, pilot, trouble, minutes, topSpread };
      if (key === "") present = trouble;
      if (key === "" || trouble + minutes < present) {
        kept.push(pair);
        continue;
      }
      const best = rest.get(key) ?? [];
      if (best.length === 0) rest.set(key, best);
      const place = best.findIndex((other) => other.trouble + other.minutes > trouble + minutes);
      best.splice(place < 0 ? best.length : place, 0, pair);
      best.length = Math.min(best.length, KEPT_OF_EACH_SET);
    }
  }
  return [...kept, ...[...rest.values()].flat()];
}

/** Minutes for a pair's parts, worked out once for each set of parts; the empty key is the setup as it is. */
function minutesBySet(own: BikeCase["minutes"]): (a: Branch, b: Branch) => { key: string; minutes: number } {
  const known = new Map<string, { key: string; minutes: number }>();
  return (a, b) => {
    const key = `${a.set}${b.set}`;
    const remembered = known.get(key);
    if (remembered !== undefined) return remembered;
    const changes = [...a.changes, ...b.changes];
    const buy = a.toBuy.length + b.toBuy.length > 0 ? BUY_MINUTES : 0;
    const minutes = changes.length === 0 ? 0 : labourMinutes(changes, own) + provingMinutes(changes) + buy;
    const made = { key, minutes };
    known.set(key, made);
    return made;
  };
}

/** Best first; equal ones by fewer changes, then as they were made. */
export const byTotal = (a: Candidate, b: Candidate): number =>
  a.total - b.total || a.changes.length - b.changes.length;

function* combinations(places: readonly (readonly Option[])[]): Generator<readonly Option[]> {
  const [first, ...rest] = places;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const option of first) for (const others of combinations(rest)) yield [option, ...others];
}

/** Expected trouble of a main-branch shift together with any pilot-branch shift. */
function weigh(belief: Gaussian, main: Shift): (pilot: Shift) => { trouble: number; topSpread: number } {
  const { mean, covariance } = belief;
  const n = OPENINGS.length;
  const at = (circuit: Circuit): number => FIRST_CIRCUIT + CIRCUITS.indexOf(circuit);
  const own = CIRCUITS.filter((circuit) => !PILOT_BRANCH.includes(circuit));
  const [p, s] = [at("pilot"), at("screw")];
  const cov = (i: number, j: number): number => covariance[i * STATE_SIZE + j]!;
  const means = new Float64Array(n);
  const variances = new Float64Array(n);
  const withPilot = new Float64Array(n);
  const withScrew = new Float64Array(n);
  for (let u = 0; u < n; u++) {
    let m = mean[u]!;
    let v = cov(u, u);
    let cp = cov(u, p);
    let cs = cov(u, s);
    for (const circuit of own) {
      const d = main[circuit][u]!;
      const c = at(circuit);
      m += d * mean[c]!;
      v += 2 * d * cov(u, c);
      for (const other of own) v += d * main[other][u]! * cov(c, at(other));
      cp += d * cov(c, p);
      cs += d * cov(c, s);
    }
    means[u] = m;
    variances[u] = v;
    withPilot[u] = cp;
    withScrew[u] = cs;
  }
  const [pp, ss, ps] = [cov(p, p), cov(s, s), cov(p, s)];
  return (pilot) => {
    let trouble = 0;
    let topSpread = Infinity;
    for (let u = 0; u < n; u++) {
      const dp = pilot.pilot[u]!;
      const ds = pilot.screw[u]!;
      const m = means[u]! + dp * mean[p]! + ds * mean[s]!;
      const cross = 2 * (dp * withPilot[u]! + ds * withScrew[u]!);
      const v = Math.max(0, variances[u]! + cross + dp * dp * pp + 2 * dp * ds * ps + ds * ds * ss);
      trouble += MINUTES[u]! * expectedLinex(STEEPNESS[u]!, m, v);
      if (u >= TOP_FROM) topSpread = Math.min(topSpread, (m - LEAN_LIMIT) / Math.sqrt(v));
    }
    return { trouble, topSpread };
  };
}

/** A shift as one flat row of numbers, opening by opening, for weighing it often. */
export function flatShift(shift: Shift): Float64Array {
  const flat = new Float64Array(OPENINGS.length * CIRCUITS.length);
  OPENINGS.forEach((_, u) => {
    CIRCUITS.forEach((circuit, c) => {
      flat[u * CIRCUITS.length + c] = shift[circuit][u]!;
    });
  });
  return flat;
}

/** Expected trouble, in minutes, of one flat shift under a belief: the same figure the search gives. */
export function expectedTrouble({ mean, covariance }: Gaussian, flat: Float64Array): number {
  const n = CIRCUITS.length;
  let trouble = 0;
  for (let u = 0; u < OPENINGS.length; u++) {
    const row = u * STATE_SIZE + FIRST_CIRCUIT;
    let m = mean[u]!;
    let v = covariance[u * STATE_SIZE + u]!;
    for (let c = 0; c < n; c++) {
      const d = flat[u * n + c]!;
      if (d === 0) continue;
      m += d * mean[FIRST_CIRCUIT + c]!;
      let inner = 2 * covariance[row + c]!;
      const circuit = (FIRST_CIRCUIT + c) * STATE_SIZE + FIRST_CIRCUIT;
      for (let other = 0; other < n; other++) inner += flat[u * n + other]! * covariance[circuit + other]!;
      v += d * inner;
    }
    trouble += MINUTES[u]! * expectedLinex(STEEPNESS[u]!, m, Math.max(0, v));
  }
  return trouble;
}
