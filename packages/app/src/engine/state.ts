import { type Entry, type Log, LogReader, replay, type ShopState } from "@jetwright/records";

/** Everything the worker holds: the records as read, and the shop they replay into. */
export class EngineState {
  readonly #reader = new LogReader();
  #log: Log = this.#reader.end();
  #shop: ShopState | null = null;

  /** Adds records as written, one line each. */
  add(lines: readonly string[]): void {
    for (const line of lines) this.#reader.line(line);
    this.#log = this.#reader.end();
    this.#shop = null;
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
}
