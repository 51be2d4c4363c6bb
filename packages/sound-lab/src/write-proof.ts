import { writeFileSync } from "node:fs";
import { sparkChannel } from "./sparks.ts";
import { take } from "./take.ts";

/** Writes a made take with its sparks on the second channel as a 16-bit WAV file: `tsx write-proof.ts SEED FILE`. */
const [seed, file] = process.argv.slice(2) as [string, string];
const made = take("snaps", Number(seed), {
  snr: 18,
  noise: ["pink"],
  path: { place: "open", clip: 1, telephone: false, from: 80, gain: false },
});
const channels = [made.samples, sparkChannel(made)];
const data = Buffer.alloc(44 + 4 * made.samples.length);
data.write("RIFF", 0);
data.writeUInt32LE(data.length - 8, 4);
data.write("WAVEfmt ", 8);
data.writeUInt32LE(16, 16);
data.writeUInt16LE(1, 20);
data.writeUInt16LE(2, 22);
data.writeUInt32LE(made.rate, 24);
data.writeUInt32LE(4 * made.rate, 28);
data.writeUInt16LE(4, 32);
data.writeUInt16LE(16, 34);
data.write("data", 36);
data.writeUInt32LE(4 * made.samples.length, 40);
channels.forEach((samples, c) => {
  samples.forEach((value, i) => {
    data.writeInt16LE(Math.round(Math.max(-1, Math.min(1, value)) * 32767), 44 + 4 * i + 2 * c);
  });
});
writeFileSync(file, data);
