import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { take } from "@jetwright/sound-lab";
import { listen } from "../packages/core/src/sound/listen.ts";
import { speedFollower } from "../packages/core/src/sound/speed-follower.ts";

/**
 * Prints as JSON how many MB listening holds: `stream` over ten minutes of live sound, after each minute (heap in use
 * and array buffers of all, program and fed sound included, garbage taken out first), and how far a process grows that reads a clip of 30 s. The sound is
 * made by another process, so that making it leaves nothing behind. `node --expose-gc --import tsx tools/sound-memory.ts`
 */
const RATE = 48000;
const ENGINE = { strokes: 2, cylinders: 1, idleHint: null } as const;
const MADE = "made";

if (process.argv[2] === MADE) {
  const { samples } = take("snaps", 5760, { snr: 15, rate: RATE });
  writeFileSync(process.argv[3]!, new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength));
} else {
  await measure(madeElsewhere());
}

function madeElsewhere(): Float32Array {
  const folder = mkdtempSync(join(tmpdir(), "sound-"));
  const file = join(folder, "take");
  execFileSync(process.execPath, ["--import", "tsx", process.argv[1]!, MADE, file]);
  const bytes = readFileSync(file);
  rmSync(folder, { recursive: true });
  return new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
}

async function held(): Promise<number> {
  // Array buffers are let go of a moment after the heap is.
  for (let again = 0; again < 3; again++) {
    globalThis.gc!();
    await new Promise((done) => setTimeout(done, 30));
  }
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 1e6;
}

async function measure(samples: Float32Array): Promise<void> {
  const clip = new Float32Array(30 * RATE);
  for (let i = 0; i < clip.length; i++) clip[i] = samples[i % samples.length]!;
  await held();
  const before = process.memoryUsage().rss;
  const heard = listen(clip, RATE, ENGINE, { pictures: true });
  const after = process.memoryUsage().rss;

  const follower = speedFollower(ENGINE, RATE, { penalty: null, pictures: false });
  const piece = RATE / 10;
  const stream: number[] = [];
  for (let tenth = 1; tenth <= 6000; tenth++) {
    const from = (tenth * piece) % (samples.length - piece);
    follower.push(samples.subarray(from, from + piece));
    if (tenth % 600 === 0) stream.push(await held());
  }
  console.log(
    JSON.stringify({
      stream,
      grew: (after - before) / 1e6,
      resident: after / 1e6,
      events: heard.ok ? heard.value.events.length : 0,
    }),
  );
}
