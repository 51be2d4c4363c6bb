import type { Database } from "../database/database.ts";
import type { Arriving } from "./arriving.ts";
import { type Arrival, addRecords } from "./log.ts";

interface Waiting {
  readonly records: readonly Arriving[];
  readonly done: (arrivals: readonly Arrival[]) => void;
  readonly failed: (error: unknown) => void;
}

/** Most records written in one transaction. */
const MOST_TOGETHER = 5000;

/**
 * Writes what many devices of a shop send at once in one transaction: while one commit is on its way to the
 * disk, those that arrive wait for the next and share it. Each hears of its own records after the commit.
 */
export class PushQueue {
  readonly #database: Database;
  readonly #waiting = new Map<string, Waiting[]>();
  readonly #busy = new Set<string>();

  constructor(database: Database) {
    this.#database = database;
  }

  add(shop: string, records: readonly Arriving[]): Promise<readonly Arrival[]> {
    return new Promise((done, failed) => {
      const line = this.#waiting.get(shop) ?? [];
      line.push({ records, done, failed });
      this.#waiting.set(shop, line);
      if (!this.#busy.has(shop)) void this.#work(shop);
    });
  }

  async #work(shop: string): Promise<void> {
    this.#busy.add(shop);
    for (let batch = this.#next(shop); batch.length > 0; batch = this.#next(shop)) {
      try {
        const arrivals = await addRecords(
          this.#database,
          shop,
          batch.flatMap(({ records }) => records),
        );
        let start = 0;
        for (const { records, done } of batch) {
          done(arrivals.slice(start, start + records.length));
          start += records.length;
        }
      } catch (error) {
        for (const { failed } of batch) failed(error);
      }
    }
    this.#busy.delete(shop);
  }

  /** The first ones in line, as many as go together. */
  #next(shop: string): Waiting[] {
    const line = this.#waiting.get(shop) ?? [];
    let count = 0;
    let records = 0;
    while (count < line.length && (count === 0 || records + line[count]!.records.length <= MOST_TOGETHER)) {
      records += line[count++]!.records.length;
    }
    const batch = line.splice(0, count);
    if (line.length === 0) this.#waiting.delete(shop);
    return batch;
  }
}
