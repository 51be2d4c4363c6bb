import { STORIES, take } from "@jetwright/sound-lab";
import { PitchDetector } from "pitchy";

/**
 * Prints as JSON how a general pitch tracker (McLeod's method, package pitchy, MIT, for development only) reads the
 * speed of two-strokes at 10 dB: what a method without any knowledge of engines gives. Errors in percent.
 */
const FROM = Number(process.argv[2] ?? 5000);
const COUNT = Number(process.argv[3] ?? 1);
const THIN = 6;
const WINDOW = 2048;

/** One sample out of six, each the mean of its six. */
const thinned = (samples: Float32Array): Float32Array =>
  Float32Array.from({ length: Math.floor(samples.length / THIN) }, (_, i) => {
    let sum = 0;
    for (let k = 0; k < THIN; k++) sum += samples[i * THIN + k]!;
    return sum / THIN;
  });

const detector = PitchDetector.forFloat32Array(WINDOW);
const errors: number[] = [];
let other = 0;
for (let seed = FROM; seed < FROM + COUNT; seed++) {
  for (const story of STORIES) {
    const { samples, rate, truth } = take(story, seed, { snr: 10 });
    const low = thinned(samples);
    for (let from = 0; from + WINDOW <= low.length; from += 512) {
      const rpm = truth.rpm[Math.round(((from + WINDOW / 2) * THIN * 1000) / rate)] ?? 0;
      if (rpm < 650) continue;
      const [pitch] = detector.findPitch(low.subarray(from, from + WINDOW), rate / THIN);
      const leap = Math.log2((pitch * 60) / rpm);
      if (!(Math.abs(leap - Math.round(leap)) < 0.2)) other += 1;
      errors.push(100 * Math.abs((pitch * 60) / rpm - 1));
    }
  }
}
errors.sort((a, b) => a - b);
console.log(
  JSON.stringify({
    takes: COUNT * STORIES.length,
    middle: errors[Math.floor(0.5 * errors.length)],
    /** Not even when an octave more or less is forgiven. */
    other: (100 * other) / errors.length,
    gross: (100 * errors.filter((error) => error > 15).length) / errors.length,
  }),
);
