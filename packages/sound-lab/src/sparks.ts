import type { Take } from "./take.ts";

/** What an inductive pick-up round the plug lead of a take's engine would give: a ringing pulse at every turn's spark. */
export function sparkChannel({
  truth,
  samples,
  rate,
}: Pick<Take, "truth" | "samples" | "rate">): Float32Array {
  const channel = new Float32Array(samples.length);
  let turned = 0.3;
  for (let ms = 0; ms < truth.rpm.length; ms++) {
    const before = turned;
    turned += truth.rpm[ms]! / 60_000;
    if (Math.floor(turned) === Math.floor(before)) continue;
    const at = Math.round((ms / 1000 + ((Math.floor(turned) - before) / (turned - before)) * 0.001) * rate);
    for (let k = 0; k < 90 && at + k < channel.length; k++)
      channel[at + k]! += 0.6 * Math.exp(-k / 14) * Math.cos(1.1 * k);
  }
  return channel;
}
