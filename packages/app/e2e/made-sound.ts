import { execFileSync } from "node:child_process";
import { existsSync, renameSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import config from "../playwright.config.ts";

/** Where a made recording lies, written once a run by a script of the sound lab: its arguments, then the file. */
export function madeSound(name: string, script: "write-take" | "write-proof", ...given: string[]): string {
  const file = join(tmpdir(), `jetwright-${name}-${process.ppid}.wav`);
  if (existsSync(file)) return file;
  const path = fileURLToPath(new URL(`../../sound-lab/src/${script}.ts`, import.meta.url));
  // Whole or not there: the other runner may look for it meanwhile.
  const half = `${file}.${process.pid}`;
  execFileSync("npx", ["tsx", path, ...given, half]);
  renameSync(half, file);
  return file;
}

/** The usual browser with that file for a microphone, over and over or once. */
export function hearing(file: string, how: "over and over" | "once") {
  const usual = config.use?.launchOptions ?? {};
  return {
    launchOptions: {
      ...usual,
      args: [
        ...(usual.args ?? []),
        "--use-fake-ui-for-media-stream",
        "--use-fake-device-for-media-stream",
        `--use-file-for-fake-audio-capture=${file}${how === "once" ? "%noloop" : ""}`,
      ],
    },
  };
}
