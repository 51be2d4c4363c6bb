import type { Take } from "@jetwright/sound-lab";

/**
 * A yardstick: the error, as a share of the speed, of an estimator that is told the instant of every firing, to the
 * spread the made engine fires with, in no noise: a straight line through the log of speed between one firing and the
 * next, through the window the reading uses (0.38, 0.19 or 0.09 s); and through that or half of it, whichever happens to
 * come nearer the truth. One value each 16 ms.
 */
export function toldFirings(
  { truth, strokes, rate }: Take,
  seed: number,
): { readonly window: readonly number[]; readonly nearer: readonly number[] } {
  const normal = normals(seed);
  const instants: number[] = [];
  let turned = 0;
  for (let ms = 0; ms < truth.rpm.length; ms++) {
    const before = turned;
    turned += truth.rpm[ms]! / 60_000 / (strokes === 2 ? 1 : 2);
    if (Math.floor(turned) === Math.floor(before)) continue;
    const exact = (ms + (Math.floor(turned) - before) / (turned - before)) / 1000;
    const spread = JITTER * (truth.load[ms]! > 0.3 ? 0.5 : 1) * (60 / truth.rpm[ms]!);
    instants.push(Math.round((exact + spread * normal()) * rate) / rate);
  }
  const window: number[] = [];
  const nearer: number[] = [];
  for (let at = 0.2; at < truth.seconds - 0.2; at += 0.016) {
    const rpm = truth.rpm[Math.round(at * 1000)] ?? 0;
    if (rpm < 650) continue;
    const firings = rpm / 60 / (strokes === 2 ? 1 : 2);
    const off = [1, 0.5].flatMap((part) => {
      const told = lineAt(instants, at, (part * windowFor(firings)) / 2);
      return told === null ? [] : [Math.abs(told / firings - 1)];
    });
    if (off.length < 2) continue;
    window.push(off[0]!);
    nearer.push(Math.min(...off));
  }
  return { window, nearer };
}

/** Spread of a firing's moment, part of a turn: the middle of what the sound lab draws. */
const JITTER = 0.011;

const windowFor = (firings: number): number => (firings < 26.5 ? 0.38 : firings < 59 ? 0.19 : 0.09);

/** Firings a second at that moment, or null when fewer than two intervals lie within reach. */
function lineAt(instants: readonly number[], at: number, reach: number): number | null {
  let [w, wx, wy, wxx, wxy, count] = [0, 0, 0, 0, 0, 0];
  for (let i = 1; i < instants.length; i++) {
    const x = (instants[i]! + instants[i - 1]!) / 2 - at;
    if (Math.abs(x) > reach) continue;
    const weight = 0.5 + 0.5 * Math.cos((Math.PI * x) / (reach + 0.02));
    const y = -Math.log(instants[i]! - instants[i - 1]!);
    w += weight;
    wx += weight * x;
    wy += weight * y;
    wxx += weight * x * x;
    wxy += weight * x * y;
    count += 1;
  }
  const spread = w * wxx - wx * wx;
  if (count < 2 || !(spread > 1e-12)) return null;
  return Math.exp((wy * wxx - wx * wxy) / spread);
}

/** Normal numbers from a plain congruential row: their fineness does not matter here. */
function normals(seed: number): () => number {
  let state = (seed * 48271 + 11) % 2147483647;
  const uniform = (): number => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
