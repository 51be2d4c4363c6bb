import { writeFileSync } from "node:fs";
import { type Story, take } from "./take.ts";

/** Writes a made recording as a 16-bit WAV file: `tsx write-take.ts STORY SEED IDLE-RPM HANG-SECONDS FILE`. */
const [story, seed, idleRpm, hangSeconds, file] = process.argv.slice(2) as [
  Story,
  string,
  string,
  string,
  string,
];
const { samples, rate } = take(story, Number(seed), {
  snr: 18,
  noise: ["pink"],
  idleRpm: Number(idleRpm),
  hangSeconds: Number(hangSeconds),
  path: { place: "open", clip: 1, telephone: false, from: 80, gain: false },
});
const data = Buffer.alloc(44 + 2 * samples.length);
data.write("RIFF", 0);
data.writeUInt32LE(36 + 2 * samples.length, 4);
data.write("WAVEfmt ", 8);
data.writeUInt32LE(16, 16);
data.writeUInt16LE(1, 20);
data.writeUInt16LE(1, 22);
data.writeUInt32LE(rate, 24);
data.writeUInt32LE(2 * rate, 28);
data.writeUInt16LE(2, 32);
data.writeUInt16LE(16, 34);
data.write("data", 36);
data.writeUInt32LE(2 * samples.length, 40);
samples.forEach((value, i) => {
  data.writeInt16LE(Math.round(value * 32767), 44 + 2 * i);
});
writeFileSync(file, data);
