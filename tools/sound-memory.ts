import { listen, speedFollower } from "@jetwright/core";
import { take } from "@jetwright/sound-lab";

/**
 * Prints as JSON how many MB listening holds, in a process of its own: `stream` over ten minutes of live sound after
 * each minute, `whole` for a clip of 30 s. Heap in use and array buffers, garbage taken out first (node --expose-gc).
 */
const ENGINE = { strokes: 2, cylinders: 1, idleHint: null } as const;
const { samples, rate } = take("snaps", 3760, { snr: 15 });

const held = (): number => {
  globalThis.gc?.();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 1e6;
};

const before = held();
const follower = speedFollower(ENGINE, rate, { penalty: null, pictures: false });
const piece = Math.round(rate / 10);
const stream: number[] = [];
for (let tenth = 1; tenth <= 6000; tenth++) {
  const from = (tenth * piece) % (samples.length - piece);
  follower.push(samples.subarray(from, from + piece));
  if (tenth % 600 === 0) stream.push(held() - before);
}
const clip = new Float32Array(30 * rate);
for (let i = 0; i < clip.length; i++) clip[i] = samples[i % samples.length]!;
const most = process.resourceUsage().maxRSS;
const heard = listen(clip, rate, ENGINE, { pictures: true });
console.log(
  JSON.stringify({
    stream,
    // Also what lay about uncollected while it listened, by how far the whole process grew.
    grew: (process.resourceUsage().maxRSS - most) / 1000,
    whole: held() - before,
    resident: process.resourceUsage().maxRSS / 1000,
    ok: heard.ok,
  }),
);
