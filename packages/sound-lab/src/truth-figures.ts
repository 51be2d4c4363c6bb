import type { Take } from "./take.ts";

/** What a take truly holds, worked out from its crankshaft alone, by the definitions docs/sound.md states. */
export interface TruthFigures {
  /** Middle speed of the first two seconds. */
  readonly idleRpm: number;
  /** For each closing of the throttle, in order. */
  readonly chops: readonly {
    readonly at: number;
    readonly hangSeconds: number;
    readonly undershootPercent: number | null;
  }[];
  readonly snaps: readonly { readonly at: number; readonly bogPercent: number }[];
  readonly stallAt: number | null;
  readonly hunts: boolean;
}

export function truthFigures({ truth, planted }: Take): TruthFigures {
  const rpm = truth.rpm;
  const idleRpm = median([...rpm.slice(0, 2000)]);
  const snapTimes = planted.flatMap((each) => (each.kind === "snap" ? [each.at] : []));
  const chopTimes = planted.flatMap((each) => (each.kind === "chop" ? [each.at] : []));
  const stall = planted.find((each) => each.kind === "stall");
  return {
    idleRpm,
    chops: chopTimes.map((at, i) => chopFigures(rpm, idleRpm, at, snapTimes[i + 1] ?? rpm.length / 1000)),
    snaps: snapTimes.map((at) => {
      let least = Infinity;
      for (let ms = Math.max(0, at * 1000 - 500); ms < at * 1000 + 100; ms++)
        least = Math.min(least, rpm[Math.floor(ms)]!);
      return { at, bogPercent: 100 * (1 - Math.min(least, idleRpm) / idleRpm) };
    }),
    stallAt: stall?.at ?? null,
    hunts: planted.some((each) => each.kind === "hunting"),
  };
}

function chopFigures(rpm: Float64Array, idle: number, at: number, until: number) {
  const from = Math.floor(at * 1000);
  const to = Math.min(rpm.length, Math.floor(until * 1000));
  const high = rpm[from]!;
  const rate = (ms: number): number => {
    const [a, b] = [rpm[Math.max(0, ms - 200)]!, rpm[Math.min(rpm.length - 1, ms + 200)]!];
    return Math.log2(b / a) / 0.4;
  };
  const tail = [...rpm.slice(Math.max(from, to - 1000), to)];
  const cameBack = median(tail);
  const rest = Math.abs(Math.log2(cameBack / idle)) < 0.2 ? cameBack : idle;
  let held = 0;
  let reached = -1;
  let falling = false;
  for (let ms = from; ms < to; ms++) {
    const value = rpm[ms]!;
    if (rate(ms) < -0.45) falling = true;
    if (falling && value > 1.15 * rest && value < rest + 0.6 * (high - idle) && Math.abs(rate(ms)) < 0.45)
      held += 1;
    if (reached < 0 && value > 0 && value < 1.1 * rest) reached = ms;
  }
  let least = rest;
  if (reached >= 0) {
    for (let ms = reached; ms < Math.min(to, reached + 1500); ms++)
      if (rpm[ms]! > 0) least = Math.min(least, rpm[ms]!);
  }
  return {
    at,
    hangSeconds: held < 400 ? 0 : held / 1000,
    undershootPercent: reached < 0 ? null : 100 * (1 - least / rest),
  };
}

const median = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
