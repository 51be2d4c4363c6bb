import { fourier } from "../packages/core/src/numerics/fourier.ts";
import { listen } from "../packages/core/src/sound/listen.ts";
import { take } from "../packages/sound-lab/src/index.ts";
import type { Bench } from "./bench-shape.ts";

const SECONDS = 30;
const WINDOW = 1024;
/** Samples from one transform to the next: 62 a second at 48 000 samples a second, as the reading takes. */
const HOP = 768;

/** A take of three snaps, again and again. */
function clip(): { readonly samples: Float32Array; readonly rate: number } {
  const made = take("snaps", 4760, { snr: 15 });
  const samples = new Float32Array(SECONDS * made.rate);
  for (let i = 0; i < samples.length; i++) samples[i] = made.samples[i % made.samples.length]!;
  return { samples, rate: made.rate };
}

const READ = `a clip of ${SECONDS} s read whole`;
const PICTURE = `the same with its picture`;
const PLAIN = `a plain transform of ${WINDOW} samples ${Math.round(48000 / HOP)} times a second`;

const reading = (name: string, pictures: boolean) => ({
  name,
  make: () => {
    const { samples, rate } = clip();
    return () => void listen(samples, rate, { strokes: 2, cylinders: 1, idleHint: null }, { pictures });
  },
});

export const soundBench: Bench = {
  topic: "sound: engine speed from a clip",
  runs: 9,
  rows: [
    reading(READ, false),
    reading(PICTURE, true),
    {
      name: PLAIN,
      make: () => {
        const { samples } = clip();
        const { transform } = fourier(WINDOW);
        const re = new Float64Array(WINDOW);
        const im = new Float64Array(WINDOW);
        return () => {
          for (let from = 0; from + WINDOW <= samples.length; from += HOP) {
            re.set(samples.subarray(from, from + WINDOW));
            im.fill(0);
            transform(re, im);
          }
        };
      },
    },
  ],
  ratios: [
    [READ, PLAIN],
    [PICTURE, READ],
  ],
};
