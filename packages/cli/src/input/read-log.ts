import { createReadStream } from "node:fs";
import { accept, type Outcome, refuse } from "@jetwright/core";
import { type Log, LogReader, type LogReaderOptions } from "@jetwright/records";
import type { Io } from "../io.ts";
import { fileTrouble } from "./file-trouble.ts";

const PIECE = 1 << 16;

/**
 * Reads a log piece by piece, from a file or, for "-" or none, from standard input. What does not count is told
 * in the log's problems; refuses only what is no log at all.
 */
export async function readLogFrom(
  path: string | undefined,
  io: Io,
  options: LogReaderOptions,
): Promise<Outcome<Log>> {
  const piped = path === undefined || path === "-";
  if (piped && io.stdinIsTerminal) {
    return refuse("no-log", "No log is named. Name a file, or pipe one in: jetwright next shop.jsonl");
  }
  const name = piped ? "what was piped in" : path;
  const reader = new LogReader(options);
  const decoder = new TextDecoder("utf-8");
  let first = true;
  try {
    const source = piped ? io.stdin : createReadStream(path, { highWaterMark: PIECE });
    for await (const piece of source) {
      const bytes = typeof piece === "string" ? Buffer.from(piece) : piece;
      if (first) {
        const garbage = notText(bytes);
        if (garbage !== null) return refuse("not-a-log", `${name} ${garbage}`);
        first = false;
      }
      reader.text(decoder.decode(bytes, { stream: true }));
    }
  } catch (error) {
    return fileTrouble(error, name, "read");
  }
  reader.text(decoder.decode());
  const log = reader.end();
  const { used, faulty, newerVersion, unknownKinds } = log.counts;
  const kept = used + faulty + newerVersion + Object.keys(unknownKinds).length;
  if (kept === 0 && log.problems.length === 0) {
    return refuse("empty-log", `${name} holds no record. See one to copy: jetwright next --help`);
  }
  return accept(log);
}

/** Why the first bytes of a file cannot be those of a log; null when they can. */
export function notText(bytes: Uint8Array): string | null {
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff)) {
    return "is text in UTF-16. Save it as UTF-8 in your editor and try again.";
  }
  if (a === 0x1f && b === 0x8b) return "is compressed. Unpack it first: gunzip -c FILE | jetwright next -";
  if (a === 0x50 && b === 0x4b) return "is a zip archive. Unpack it first.";
  if (bytes.includes(0)) return "is no text file: a log is JSON Lines, one record a line.";
  return null;
}
