import { CORE_VOCABULARY } from "./core-vocabulary.ts";
import type { Entry, UsedEntryOf } from "./entry.ts";
import { Erasures, isErasure } from "./erasures.ts";
import { KINDS_BY_NAME } from "./known-kinds.ts";
import { isErasedTwin, wins } from "./merge.ts";
import { type Flaw, flaw, type RecordProblem } from "./problem.ts";
import { LINE_LIMIT, readLine, tooLong } from "./read-line.ts";
import { type Knowledge, type Read, readRecord } from "./read-record.ts";
import { digestOf } from "./record-digest.ts";

/** A log as read: the records, each once, and everything that was wrong on the way. */
export interface Log {
  /** In the order they were first met. */
  readonly entries: readonly Entry[];
  /** Something was left out. */
  readonly problems: readonly RecordProblem[];
  /** Nothing was left out, but a person may want to know. */
  readonly notes: readonly RecordProblem[];
  readonly counts: LogCounts;
  /** Records that were read with words which an erasure of this log has erased; `entries` has them without. */
  readonly erased: readonly Entry[];
}

export interface LogCounts {
  readonly lines: number;
  readonly used: number;
  readonly faulty: number;
  /** The same record met again. */
  readonly repeated: number;
  readonly newerVersion: number;
  /** Records of kinds we do not know, by kind. */
  readonly unknownKinds: Readonly<Record<string, number>>;
}

export interface LogReaderOptions {
  /** Which records to hold; all when left out. Records not held are still checked and counted. */
  readonly hold?: (entry: Entry) => boolean;
  /** Most problems and most notes held; the rest are only counted in one last entry. 1000 when left out. */
  readonly mostProblems?: number;
  readonly knowledge?: Knowledge;
}

/** What is remembered of every id, so that a second record under it is noticed. */
interface Met {
  /** Of the record's text; null while the record itself is held and can still be asked. */
  digest: number | null;
  at: number;
  line: number | null;
  reading: Entry["reading"];
  kind: string;
  entry: Entry | null;
}

/**
 * Reads a log piece by piece: whole lines, text cut anywhere, or records already parsed. It holds the records
 * and about 100 bytes an id, and never more than one line of text.
 *
 * Two different records under one id cannot both be true: the one that happened first is kept (then the one
 * whose text has the smaller digest), whichever arrived first, and the other is a problem.
 */
export class LogReader {
  readonly #hold: (entry: Entry) => boolean;
  readonly #most: number;
  readonly #knowledge: Knowledge;
  readonly #met = new Map<string, Met>();
  readonly #erasures = new Map<string, UsedEntryOf<"person-erased">>();
  readonly #problems: RecordProblem[] = [];
  readonly #notes: RecordProblem[] = [];
  #problemsLeftOut = 0;
  #notesLeftOut = 0;
  #lines = 0;
  #repeated = 0;
  #partial = "";
  #skipping = false;

  constructor(options: LogReaderOptions = {}) {
    this.#hold = options.hold ?? (() => true);
    this.#most = options.mostProblems ?? 1000;
    this.#knowledge = options.knowledge ?? KNOWLEDGE;
  }

  /** One whole line, with or without its line break. */
  line(text: string): void {
    this.#lines++;
    this.#take(readLine(text, this.#lines, this.#knowledge), this.#lines);
  }

  /** Text cut anywhere; lines end at a line feed. */
  text(piece: string): void {
    let start = 0;
    for (let end = piece.indexOf("\n"); end >= 0; end = piece.indexOf("\n", start)) {
      this.#extend(piece.slice(start, end));
      this.#endLine();
      start = end + 1;
    }
    this.#extend(piece.slice(start));
  }

  /** A record that is already a value, such as one just made. */
  record(value: unknown): void {
    this.#take(readRecord(value, null, this.#knowledge), null);
  }

  /** Everything read so far; a last line without its break counts as a line. */
  end(): Log {
    if (this.#partial !== "" || this.#skipping) this.#endLine();
    const met = [...this.#met.values()];
    const erasures = new Erasures(this.#erasures.values());
    const read = met.flatMap(({ entry }) => (entry === null ? [] : [entry]));
    const entries = erasures.none ? read : read.map((entry) => erasures.apply(entry));
    const unknownKinds: Record<string, number> = Object.create(null);
    for (const one of met) {
      if (one.reading === "unknown-kind") unknownKinds[one.kind] = (unknownKinds[one.kind] ?? 0) + 1;
    }
    const count = (reading: Entry["reading"]): number => met.filter((one) => one.reading === reading).length;
    return {
      entries,
      erased: entries.filter((entry, i) => entry !== read[i]),
      problems: withRest(this.#problems, this.#problemsLeftOut, "problems"),
      notes: withRest(this.#notes, this.#notesLeftOut, "notes"),
      counts: {
        lines: this.#lines,
        used: count("used"),
        faulty: count("faulty"),
        repeated: this.#repeated,
        newerVersion: count("newer-version"),
        unknownKinds: { ...unknownKinds },
      },
    };
  }

  #extend(piece: string): void {
    if (this.#skipping || this.#partial.length + piece.length > LINE_LIMIT) {
      this.#partial = "";
      this.#skipping = true;
    } else if (piece !== "") {
      this.#partial += piece;
    }
  }

  #endLine(): void {
    const text = this.#partial;
    this.#partial = "";
    if (this.#skipping) {
      this.#skipping = false;
      this.#lines++;
      this.#take(tooLong(), this.#lines);
    } else {
      this.line(text);
    }
  }

  #take(read: Read | null, line: number | null): void {
    if (read === null) return;
    for (const one of read.flaws) this.#problem(one, read.id, line);
    for (const one of read.notes) {
      if (this.#notes.length < this.#most) this.#notes.push({ ...one, record: read.id, line });
      else this.#notesLeftOut++;
    }
    if (read.entry !== null) this.#file(read.entry, line);
  }

  #problem(problem: Flaw, record: string | null, line: number | null): void {
    if (this.#problems.length < this.#most) this.#problems.push({ ...problem, record, line });
    else this.#problemsLeftOut++;
  }

  #file(entry: Entry, line: number | null): void {
    const met = this.#met.get(entry.id);
    if (met === undefined) {
      this.#remember(entry, line);
      return;
    }
    const said = digestOf(entry);
    const before = met.digest ?? digestOf(met.entry!);
    if (before === said) {
      this.#repeated++;
      return;
    }
    const first = entry.at < met.at || (entry.at === met.at && said < before);
    const newWins = met.entry === null ? first : wins(entry, met.entry);
    if (met.entry !== null && isErasedTwin(entry, met.entry)) {
      this.#repeated++;
      if (newWins) this.#remember(entry, line);
      return;
    }
    const keptLine = newWins ? line : met.line;
    this.#problem(flaw("id", "same-id", { id: entry.id, keptLine }), entry.id, newWins ? met.line : line);
    if (newWins) this.#remember(entry, line);
  }

  #remember(entry: Entry, line: number | null): void {
    const { at, reading, kind, id } = entry;
    const held = this.#hold(entry);
    if (isErasure(entry)) this.#erasures.set(id, entry);
    else this.#erasures.delete(id);
    this.#met.set(id, {
      digest: held ? null : digestOf(entry),
      at,
      line,
      reading,
      kind,
      entry: held ? entry : null,
    });
  }
}

const KNOWLEDGE: Knowledge = { kinds: KINDS_BY_NAME, words: CORE_VOCABULARY };

function withRest(
  shown: readonly RecordProblem[],
  count: number,
  of: "problems" | "notes",
): readonly RecordProblem[] {
  return count === 0 ? shown : [...shown, { line: null, record: null, ...flaw("", "more", { count, of }) }];
}

/** A whole log, line by line. */
export function readLog(lines: Iterable<string>, options: LogReaderOptions = {}): Log {
  const reader = new LogReader(options);
  for (const line of lines) reader.line(line);
  return reader.end();
}

/** A whole log held as one text. */
export function readLogText(text: string, options: LogReaderOptions = {}): Log {
  const reader = new LogReader(options);
  reader.text(text);
  return reader.end();
}
