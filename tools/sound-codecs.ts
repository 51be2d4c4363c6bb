import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A codec phones record with, in its usual container. */
export interface Codec {
  readonly name: string;
  readonly encoder: readonly string[];
  readonly file: string;
}

export const CODECS: readonly Codec[] = [
  { name: "Opus, 24 kbit/s", encoder: ["-c:a", "libopus", "-b:a", "24k"], file: "take.ogg" },
  { name: "Opus, 64 kbit/s", encoder: ["-c:a", "libopus", "-b:a", "64k"], file: "take.ogg" },
  { name: "AAC, 64 kbit/s", encoder: ["-c:a", "aac", "-b:a", "64k"], file: "take.m4a" },
  { name: "AAC, 128 kbit/s", encoder: ["-c:a", "aac", "-b:a", "128k"], file: "take.m4a" },
];

/** Whether ffmpeg is there: it is used in development only and never shipped. */
export const codecsThere = (): boolean => spawnSync("ffmpeg", ["-version"]).status === 0;

/** The samples after being coded and decoded again by ffmpeg. */
export function throughCodec(samples: Float32Array, rate: number, { encoder, file }: Codec): Float32Array {
  const folder = mkdtempSync(join(tmpdir(), "codec-"));
  const path = join(folder, file);
  const plain = ["-f", "f32le", "-ar", `${rate}`, "-ac", "1"];
  const run = (args: readonly string[], input?: Uint8Array) => {
    const { status, stdout, stderr } = spawnSync("ffmpeg", ["-v", "error", ...args], {
      ...(input && { input }),
      maxBuffer: 1 << 28,
    });
    if (status !== 0) throw new Error(`ffmpeg: ${stderr}`);
    return stdout;
  };
  run(
    [...plain, "-i", "-", ...encoder, path],
    new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength),
  );
  if (readFileSync(path).length === 0) throw new Error("ffmpeg wrote nothing");
  const bytes = run(["-i", path, ...plain, "-"]);
  rmSync(folder, { recursive: true });
  return new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
}
