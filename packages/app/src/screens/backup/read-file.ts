import { flaw, LINE_LIMIT, type RecordProblem } from "@jetwright/records";
import type { Piece, PieceAsked } from "../../engine/answers/copy/read-piece.ts";
import type { StoredRecord } from "../../store/tables.ts";

/** A file of records as read, before anything of it is kept. */
export interface FileRead {
  readonly lines: number;
  /** Lines that are records, whatever becomes of them. */
  readonly records: number;
  /** Records that are not here yet, as they would be kept. */
  readonly fresh: readonly StoredRecord[];
  /** Records that are here already, or stand twice in the file. */
  readonly repeated: number;
  /** Among the fresh ones: kept, and not used by this version. */
  readonly newerVersion: number;
  readonly unknownKind: number;
  readonly faulty: number;
  /** The first of what was wrong. */
  readonly problems: readonly RecordProblem[];
  readonly problemCount: number;
  /** Lines that are not taken in, as they stand in the file: no record, or another record has their id. */
  readonly leftOut: readonly string[];
  /** The person stopped it: the figures speak of what was read. */
  readonly stopped: boolean;
}

interface ReadFileOptions {
  readonly ask: (piece: PieceAsked) => Promise<Piece>;
  /** Told after every piece: bytes read and bytes in all. */
  readonly onProgress: (done: number, all: number) => void;
  readonly signal: AbortSignal;
}

/** Lines handed to the worker at a time: short enough that a stop is heard at once. */
const LINES_A_PIECE = 200;
/** Most problems shown; the rest are counted. */
const MOST_PROBLEMS = 100;

/** Reads a file of records piece by piece through the worker, never more of it at once than a few lines. */
export async function readFile(file: Blob, { ask, onProgress, signal }: ReadFileOptions): Promise<FileRead> {
  const fresh = new Map<string, string>();
  const problems: RecordProblem[] = [];
  const leftOut: string[] = [];
  const counts = {
    lines: 0,
    records: 0,
    repeated: 0,
    newerVersion: 0,
    unknownKind: 0,
    faulty: 0,
    problems: 0,
  };

  const problem = (one: RecordProblem) => {
    counts.problems++;
    if (problems.length < MOST_PROBLEMS) problems.push(one);
  };
  const take = async (lines: readonly string[]): Promise<void> => {
    const firstLine = counts.lines + 1;
    counts.lines += lines.length;
    const piece = await ask({ lines, firstLine, language: null });
    for (const one of piece.problems) problem(one);
    for (const line of piece.unreadable) leftOut.push(lines[line - firstLine]!);
    counts.records += piece.records.length;
    for (const { id, line, against, reading } of piece.records) {
      const before = fresh.get(id);
      if (against === "here" || before === line) {
        counts.repeated++;
      } else if (against === "other" || before !== undefined) {
        leftOut.push(line);
        problem({ line: null, record: id, ...flaw("id", "id-here-already", { id }) });
      } else {
        fresh.set(id, line);
        if (reading === "newer-version") counts.newerVersion++;
        else if (reading === "unknown-kind") counts.unknownKind++;
        else if (reading === "faulty") counts.faulty++;
      }
    }
  };

  let waiting: string[] = [];
  let done = 0;
  for await (const { line, bytes } of linesOf(file)) {
    if (signal.aborted) break;
    waiting.push(line);
    if (waiting.length < LINES_A_PIECE) continue;
    await take(waiting);
    waiting = [];
    done = bytes;
    onProgress(done, file.size);
  }
  if (!signal.aborted && waiting.length > 0) await take(waiting);
  if (!signal.aborted) onProgress(file.size, file.size);
  return {
    lines: counts.lines,
    records: counts.records,
    fresh: [...fresh].map(([id, line]) => ({ id, line })),
    repeated: counts.repeated,
    newerVersion: counts.newerVersion,
    unknownKind: counts.unknownKind,
    faulty: counts.faulty,
    problems,
    problemCount: counts.problems,
    leftOut,
    stopped: signal.aborted,
  };
}

/** The lines of a file with the bytes read so far. Of a line longer than any record only the beginning is held. */
async function* linesOf(file: Blob): AsyncGenerator<{ readonly line: string; readonly bytes: number }> {
  const reader = file.stream().getReader();
  const decoder = new TextDecoder();
  let rest = "";
  let bytes = 0;
  const held = (text: string): string => (text.length > LINE_LIMIT ? text.slice(0, LINE_LIMIT + 1) : text);
  try {
    for (;;) {
      const { done, value } = await reader.read();
      const text = done ? decoder.decode() : decoder.decode(value, { stream: true });
      bytes += value?.length ?? 0;
      let start = 0;
      for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", start)) {
        yield { line: held(rest + text.slice(start, end)), bytes };
        rest = "";
        start = end + 1;
      }
      rest = held(rest + text.slice(start));
      if (done) break;
    }
    if (rest !== "") yield { line: rest, bytes };
  } finally {
    await reader.cancel().catch(() => undefined);
  }
}
