import type { CoreWords } from "@jetwright/core";
import { type Entry, type Log, LogReader, readLog, replay, type ShopState } from "@jetwright/records";

/** The shop as it would be with one more record. */
interface Ahead {
  readonly line: string;
  /** The log it was worked out on. */
  readonly log: Log;
  readonly shop: ShopState;
}

/** What most answers are made of: the shop as it is or would be, and the words to say it in. */
export type ShopInWords = Pick<EngineState, "shop" | "words">;

/** Everything the worker holds: the records as read, and the shop they replay into. */
export class EngineState {
  readonly #reader = new LogReader();
  #log: Log = this.#reader.end();
  #shop: ShopState | null = null;
  #ahead: Ahead | null = null;
  #words: CoreWords | null = null;

  /** Adds records as written, one line each. */
  add(lines: readonly string[]): void {
    const foreseen = lines.length === 1 && this.#isAhead(lines[0]!) ? this.#ahead!.shop : null;
    for (const line of lines) this.#reader.line(line);
    this.#log = this.#reader.end();
    this.#shop = foreseen;
    this.#ahead = null;
  }

  /** From now on answers are said in these words. */
  speak(words: CoreWords): void {
    this.#words = words;
  }

  /** What the core says, in the language that was asked in. */
  get words(): CoreWords {
    if (this.#words === null) throw new RangeError("Nobody said in which language to answer");
    return this.#words;
  }

  get log(): Log {
    return this.#log;
  }

  get entries(): readonly Entry[] {
    return this.#log.entries;
  }

  /** The shop now: a pure replay of the records. */
  get shop(): ShopState {
    this.#shop ??= replay(this.#log.entries);
    return this.#shop;
  }

  /** The shop as it would be with this line; the same object becomes `shop` when the line is what is added next. */
  ahead(line: string): ShopState {
    if (!this.#isAhead(line)) {
      const shop = replay([...this.#log.entries, ...readLog([line]).entries]);
      this.#ahead = { line, log: this.#log, shop };
    }
    return this.#ahead!.shop;
  }

  #isAhead(line: string): boolean {
    return this.#ahead?.line === line && this.#ahead.log === this.#log;
  }
}
