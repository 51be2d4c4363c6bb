import { invertSymmetric } from "../numerics/invert-symmetric.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";

/** The idle with the small screw at one place. */
export interface SweepMark {
  /** Turns out from lightly seated. */
  readonly turns: number;
  /** Settled idle there, revolutions a minute, and one standard error of it. */
  readonly rpm: number;
  readonly error: number;
}

/** Where the idle peaked against the screw. */
export interface SweepPeak {
  readonly kind: "peak";
  /** Turns out at the best idle, and one standard deviation of that. */
  readonly turns: number;
  readonly turnsSd: number;
  readonly rpm: number;
  /** Turns at which the idle had fallen by SWEEP_DROP, to either side; null: it was not turned so far. */
  readonly inner: number | null;
  readonly outer: number | null;
}

/** What a sweep tells so far. */
export type SweepReading =
  | SweepPeak
  /** The idle hardly changed over a whole turn and more. */
  | { readonly kind: "flat"; readonly spanTurns: number; readonly changeRpm: number }
  /** Still best at the last place on one side: the peak lies there or beyond. */
  | { readonly kind: "at-end"; readonly end: "in" | "out"; readonly turns: number };

export type SweepRefusal = "too-few-marks" | "unclear-peak";

/** The idle is held to have left its best when it has fallen by so much, revolutions a minute. Common practice, no source. */
export const SWEEP_DROP = 50;
/** Marks this far below the best are no longer on the round top of the curve. Estimate. */
const ROUND_TOP = 120;
/** A warm engine's idle comes back to the same place within this, revolutions a minute. Estimate. */
const OWN_SCATTER = 5;
/** How far the top of a parabola may lie from the engine's own best, turns: the curve is steeper on the lean side. Estimate. */
const LOPSIDED = 0.06;
/** A change of the idle smaller than this over FLAT_TURNS is none. Estimate. */
const FLAT_RPM = 25;
const FLAT_TURNS = 1;
/** A peak known no better than this tells nothing, turns. */
const UNCLEAR = 0.6;

/**
 * Reads the best idle from marks made while the small screw was turned step by step, in the order they were made: a
 * place measured twice shows how the idle drifted meanwhile, and that is taken out. A parabola through the round top
 * gives the best place and its spread; the edges lie where the idle has fallen by SWEEP_DROP.
 * Throws RangeError for a speed that is not above 0.
 */
export function readSweep(made: readonly SweepMark[]): Outcome<SweepReading, SweepRefusal> {
  for (const { rpm } of made)
    if (!(rpm > 0)) throw new RangeError(`An idle is above 0 revolutions a minute, got ${rpm}`);
  const marks = averaged(withoutDrift(made));
  if (marks.length < 3) {
    return refuse(
      "too-few-marks",
      "Three places at least are needed. Turn on, a quarter turn or less at a time.",
    );
  }
  const [first, last] = [marks[0]!, marks.at(-1)!];
  const best = marks.reduce((a, b) => (b.rpm > a.rpm ? b : a));
  const change = best.rpm - marks.reduce((a, b) => (b.rpm < a.rpm ? b : a)).rpm;
  const span = last.turns - first.turns;
  const noise = Math.max(...marks.map(scatterOf));
  if (change < Math.max(FLAT_RPM, 3 * noise)) {
    return span >= FLAT_TURNS
      ? accept({ kind: "flat", spanTurns: span, changeRpm: change })
      : refuse("unclear-peak", "The idle has hardly changed yet. Turn on, to either side.");
  }
  const top = topOf(marks, marks.indexOf(best));
  if (top === null || top.turns <= first.turns || top.turns >= last.turns) {
    const end = best.turns - first.turns < last.turns - best.turns ? "in" : "out";
    return accept({ kind: "at-end", end, turns: end === "in" ? first.turns : last.turns });
  }
  if (top.turnsSd > UNCLEAR) {
    return refuse("unclear-peak", "The best place is not clear yet. Turn on, to either side of the best.");
  }
  const edge = top.rpm - SWEEP_DROP;
  const below = marks.filter(({ turns }) => turns < top.turns).reverse();
  const above = marks.filter(({ turns }) => turns > top.turns);
  return accept({
    kind: "peak",
    ...top,
    inner: fallsTo(edge, top, below),
    outer: fallsTo(edge, top, above),
  });
}

/** What a best idle there stands for, by the turns the trade takes as the screw's good range (docs/rules/belief.md). */
export const sweepOutcome = (turns: number): "nearly-closed" | "middle" | "far-out" =>
  turns < 1 ? "nearly-closed" : turns <= 2.5 ? "middle" : "far-out";

const square = (x: number): number => x * x;
const scatterOf = ({ error }: SweepMark): number => Math.sqrt(square(error) + square(OWN_SCATTER));
/** What a mark counts for. */
const weightOf = (mark: SweepMark): number => 1 / square(scatterOf(mark));

/** Takes out an even drift of the idle from mark to mark, where some place was measured again. */
function withoutDrift(made: readonly SweepMark[]): readonly SweepMark[] {
  let [steps, moved] = [0, 0];
  made.forEach((mark, i) => {
    const before = made.findIndex(({ turns }) => turns === mark.turns);
    if (before === i) return;
    // The longer the time between, the more a pair tells of the drift.
    steps += square(i - before);
    moved += (i - before) * (mark.rpm - made[before]!.rpm);
  });
  const drift = steps === 0 ? 0 : moved / steps;
  return made.map((mark, i) => ({ ...mark, rpm: mark.rpm - drift * i }));
}

/** One mark a place, from the seat outwards. */
function averaged(made: readonly SweepMark[]): readonly SweepMark[] {
  const places = [...new Set(made.map(({ turns }) => turns))].sort((a, b) => a - b);
  return places.map((turns) => {
    const own = made.filter((mark) => mark.turns === turns);
    const weight = own.reduce((sum, mark) => sum + weightOf(mark), 0);
    const rpm = own.reduce((sum, mark) => sum + mark.rpm * weightOf(mark), 0) / weight;
    return {
      turns,
      rpm,
      error: Math.sqrt(own.reduce((sum, { error }) => sum + square(error), 0)) / own.length,
    };
  });
}

/** Top of the weighted parabola through the marks around the best one; null when it has none. */
function topOf(
  marks: readonly SweepMark[],
  best: number,
): { turns: number; turnsSd: number; rpm: number } | null {
  const high = marks[best]!.rpm - ROUND_TOP;
  let [from, to] = [best, best];
  while (from > 0 && (marks[from - 1]!.rpm >= high || best - from < 1)) from -= 1;
  while (to < marks.length - 1 && (marks[to + 1]!.rpm >= high || to - best < 1)) to += 1;
  const own = marks.slice(from, to + 1);
  if (own.length < 3) return null;
  const middle = marks[best]!.turns;
  // Normal equations of rpm = a + b x + c x², x from the best mark.
  const moments = [0, 0, 0, 0, 0];
  const sums = [0, 0, 0];
  for (const mark of own) {
    let term = weightOf(mark);
    for (let i = 0; i < 5; i++) {
      moments[i]! += term;
      if (i < 3) sums[i]! += term * mark.rpm;
      term *= mark.turns - middle;
    }
  }
  const spread = invertSymmetric([0, 1, 2].map((row) => [0, 1, 2].map((column) => moments[row + column]!)));
  if (spread === null) return null;
  const [a = 0, b = 0, c = 0] = spread.map((row) => sums.reduce((all, value, i) => all + value * row[i]!, 0));
  if (c >= 0) return null;
  const x = -b / (2 * c);
  // How the top moves with b and with c.
  const [byB, byC] = [-1 / (2 * c), b / (2 * c * c)];
  const variance = byB * byB * spread[1]![1]! + 2 * byB * byC * spread[1]![2]! + byC * byC * spread[2]![2]!;
  const misfit = own.reduce((all, mark) => {
    const u = mark.turns - middle;
    return all + weightOf(mark) * square(mark.rpm - a - b * u - c * u * u);
  }, 0);
  const worse = own.length > 3 ? Math.max(1, misfit / (own.length - 3)) : 1;
  return {
    turns: middle + x,
    turnsSd: Math.sqrt(variance * worse + square(LOPSIDED)),
    rpm: a + b * x + c * x * x,
  };
}

/** Turns at which the idle crosses that speed on the way out from the top; null when it never does. */
function fallsTo(
  rpm: number,
  top: { readonly turns: number; readonly rpm: number },
  outwards: readonly SweepMark[],
): number | null {
  let before: { readonly turns: number; readonly rpm: number } = top;
  for (const mark of outwards) {
    if (mark.rpm <= rpm)
      return before.turns + ((before.rpm - rpm) / (before.rpm - mark.rpm)) * (mark.turns - before.turns);
    before = mark;
  }
  return null;
}
