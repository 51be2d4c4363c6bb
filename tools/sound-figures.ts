import type { Heard } from "@jetwright/core";
import { type Take, truthFigures } from "@jetwright/sound-lab";

/** A take, what was heard in it and how long that took. */
export interface Row {
  readonly made: Take;
  readonly heard: Heard | null;
  readonly milliseconds: number;
}

export const share = (values: readonly number[], part: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
};
export const percent = (part: number, whole: number): string =>
  whole === 0 ? "–" : `${((100 * part) / whole).toFixed(1)} %`;
export const digits = (x: number, n: number): string => (Number.isFinite(x) ? x.toFixed(n) : "–");

interface Frames {
  readonly errors: readonly number[];
  readonly gross: number;
  readonly octave: number;
  readonly unanswered: number;
  readonly all: number;
  /** Confidence said, and whether it was within 3 %. */
  readonly said: readonly (readonly [number, boolean])[];
}

export function framesOf(rows: readonly Row[]): Frames {
  const errors: number[] = [];
  const said: (readonly [number, boolean])[] = [];
  let [gross, octave, unanswered, all] = [0, 0, 0, 0];
  for (const { made, heard } of rows) {
    heard?.track.rpm.forEach((rpm, i) => {
      const truth = made.truth.rpm[Math.round(i * heard.track.hop * 1000)] ?? 0;
      if (truth < 650) return;
      all += 1;
      if (rpm === 0) {
        unanswered += 1;
        return;
      }
      const error = Math.abs(rpm / truth - 1);
      errors.push(error);
      said.push([heard.track.confidence[i]!, error < 0.03]);
      if (error > 0.15) {
        gross += 1;
        const leap = Math.abs(Math.log2(rpm / truth));
        if (Math.abs(leap - Math.round(leap)) < 0.1) octave += 1;
      }
    });
  }
  return { errors, gross, octave, unanswered, all, said };
}

export const used = (rows: readonly Row[]): Row[] =>
  rows.filter(({ heard }) => heard !== null && heard.doubts.length === 0);

export function speedRow(name: string, rows: readonly Row[]): string {
  const kept = used(rows);
  const { errors, gross, octave, unanswered, all } = framesOf(kept);
  return `| ${name} | ${rows.length} | ${percent(rows.length - kept.length, rows.length)} | ${digits(100 * share(errors, 0.5), 2)} | ${digits(100 * share(errors, 0.95), 2)} | ${digits((100 * gross) / errors.length, 2)} (${digits((100 * octave) / errors.length, 2)}) | ${percent(unanswered, all)} |`;
}

/** What the events said against what was put in. */
export function eventsOf(rows: readonly Row[]) {
  const hang: number[] = [];
  const dive: number[] = [];
  const idle: number[] = [];
  const said: (readonly [number, boolean])[] = [];
  let [chops, missed, stalls, stallsFound, falseStalls, hunts, huntsFound, falseHunts, snaps, snapsMissed] =
    new Array<number>(10).fill(0) as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
  for (const { made, heard } of used(rows)) {
    const truth = truthFigures(made);
    const events = heard!.events;
    const stall = events.find((event) => event.kind === "stall");
    if (truth.stallAt === null) {
      if (stall) falseStalls += 1;
    } else {
      stalls += 1;
      if (stall) stallsFound += 1;
    }
    if (stall) said.push([stall.confidence, truth.stallAt !== null]);
    const hunting = events.find((event) => event.kind === "hunting");
    if (truth.hunts) {
      hunts += 1;
      if (hunting) huntsFound += 1;
    } else if (hunting) falseHunts += 1;
    if (hunting) said.push([hunting.confidence, truth.hunts]);
    for (const event of events) {
      if (event.kind === "idle") {
        const error = Math.abs(event.rpm / truth.idleRpm - 1);
        idle.push(error);
        said.push([event.confidence, error < 0.02]);
      }
      if (event.kind === "snap")
        said.push([event.confidence, truth.snaps.some(({ at }) => Math.abs(at - event.at) < 0.5)]);
    }
    for (const snap of truth.snaps) {
      snaps += 1;
      if (!events.some((event) => event.kind === "snap" && Math.abs(event.at - snap.at) < 0.5))
        snapsMissed += 1;
    }
    for (const chop of truth.chops) {
      chops += 1;
      const found = events.find((event) => event.kind === "chop" && Math.abs(event.at - chop.at) < 0.5);
      if (found?.kind !== "chop") {
        missed += 1;
        continue;
      }
      if (truth.stallAt !== null) continue;
      hang.push(Math.abs(found.hangSeconds - chop.hangSeconds));
      let fine = hang.at(-1)! < 0.1;
      if (found.undershootPercent !== null && chop.undershootPercent !== null) {
        dive.push(Math.abs(found.undershootPercent - chop.undershootPercent));
        fine &&= dive.at(-1)! < 3;
      }
      said.push([found.confidence, fine]);
    }
  }
  return {
    hang,
    dive,
    idle,
    said,
    chops,
    missed,
    stalls,
    stallsFound,
    falseStalls,
    hunts,
    huntsFound,
    falseHunts,
    snaps,
    snapsMissed,
  };
}

const BINS = [0, 0.5, 0.7, 0.8, 0.9, 0.95, 1.0001] as const;
export function diagram(said: readonly (readonly [number, boolean])[]): string {
  const lines = ["| said | how many | said, mean | true |", "| --- | --- | --- | --- |"];
  BINS.slice(0, -1).forEach((low, i) => {
    const high = BINS[i + 1]!;
    const own = said.filter(([confidence]) => confidence >= low && confidence < high);
    if (own.length === 0) return;
    const mean = own.reduce((sum, [confidence]) => sum + confidence, 0) / own.length;
    lines.push(
      `| ${low} to ${Math.min(1, high)} | ${own.length} | ${mean.toFixed(2)} | ${(own.filter(([, right]) => right).length / own.length).toFixed(2)} |`,
    );
  });
  return lines.join("\n");
}

export function sureRow(rows: readonly Row[], least: number): string {
  const { errors, said } = framesOf(used(rows));
  const own = errors.filter((_, i) => said[i]![0] >= least);
  return `${percent(own.length, errors.length)} | ${digits(100 * share(own, 0.95), 2)}`;
}
