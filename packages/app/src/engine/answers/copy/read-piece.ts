import {
  blankRecord,
  type Entry,
  Erasures,
  isErased,
  isErasure,
  type JsonObject,
  LogReader,
  type RecordProblem,
  writeRecord,
} from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { sentenceOf } from "../story/sentence.ts";
import { storyWords } from "../story/story-words.ts";

/** One record of a file, as it would be kept. */
export interface PieceRecord {
  readonly id: string;
  /** As written, one line of JSON. */
  readonly line: string;
  /** Against the log here: not there yet, there already, or another record has its id. */
  readonly against: "new" | "here" | "other";
  readonly reading: Entry["reading"];
  readonly bike: string | null;
  readonly at: number;
  /** What it says; null unless asked for. */
  readonly words: string | null;
}

export interface Piece {
  readonly records: readonly PieceRecord[];
  /** What was wrong, with the line in the whole file. */
  readonly problems: readonly RecordProblem[];
  /** Lines, from 1 in the whole file, that are no record and cannot be kept. */
  readonly unreadable: readonly number[];
}

export interface PieceAsked {
  readonly lines: readonly string[];
  /** Line of the whole file that the first of these is, from 1. */
  readonly firstLine: number;
  /** Language of the sentences; null: none wanted. */
  readonly language: string | null;
}

/** The same record, or the same without the words that it has here. */
const isHere = (source: JsonObject, there: JsonObject): boolean =>
  writeRecord(source) === writeRecord(isErased(source) ? blankRecord(there) : there);

/**
 * Reads some lines of a file of records without keeping any. Records of newer versions, of unknown kinds and with
 * faults come back as they were written, so that nothing is lost; lines that are no record are named.
 */
export function readPiece(state: EngineState, { lines, firstLine, language }: PieceAsked): Piece {
  const erasures = new Erasures(state.entries.filter(isErasure));
  const here = new Map(state.entries.map((entry) => [entry.id, entry]));
  const words = language === null ? null : storyWords(language, state.words);
  const records: PieceRecord[] = [];
  const problems: RecordProblem[] = [];
  const unreadable: number[] = [];
  lines.forEach((text, i) => {
    const number = firstLine + i;
    const reader = new LogReader();
    reader.line(text);
    const { entries, problems: found } = reader.end();
    for (const problem of found) problems.push({ ...problem, line: number });
    const [read] = entries;
    if (read === undefined) {
      if (found.length > 0) unreadable.push(number);
      return;
    }
    const entry = erasures.apply(read);
    const line = writeRecord(entry.source);
    const there = here.get(entry.id);
    records.push({
      id: entry.id,
      line,
      against: there === undefined ? "new" : isHere(entry.source, there.source) ? "here" : "other",
      reading: entry.reading,
      bike: entry.bike,
      at: entry.at,
      words: words === null ? null : sentenceOf(entry, words),
    });
  });
  return { records, problems, unreadable };
}
