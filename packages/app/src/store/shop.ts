import type { Outcome } from "@jetwright/core";
import { type JsonObject, type KindName, makeRecordId, writeRecord } from "@jetwright/records";
import { createContext } from "preact";
import { useContext, useEffect, useState } from "preact/hooks";
import { type Engine, startEngine } from "../engine/client.ts";
import type { AnswerOf, ArgumentsOf, Question } from "../engine/protocol.ts";
import { usePreferences } from "../preferences/use-preferences.ts";
import { type Arrived, type Database, openDatabase, type StoredRecord } from "./database.ts";
import { LogStore, type NotKept } from "./log-store.ts";
import { joinTabs, type Tabs } from "./tabs.ts";
import { useWatched, type Watched, watched } from "./value.ts";

/** What a screen hands over to be written; id and time are added here. */
export interface Draft {
  readonly kind: KindName;
  readonly bike?: string;
  readonly body: JsonObject;
  /** When it happened, milliseconds since 1970; now when left out. */
  readonly at?: number;
}

/** Told to the other tabs when records are gone: no record is news, the log as a whole is. */
const READ_ANEW: readonly string[] = [];

/** The shop on this device: the database, the worker that reckons, and the other tabs. */
export class Shop {
  readonly database: Database;
  readonly store: LogStore;
  readonly engine: Engine;
  /** Goes up with every record that arrives, here or in another tab. */
  readonly version: Watched<number> = watched(0);
  /** True when nothing was on the disk as it opened: known before the worker has said anything. */
  readonly startedEmpty: boolean;
  /** Who works here, written into the records; empty when nobody said. */
  person = "";
  readonly #tabs: Tabs;

  private constructor(database: Database, store: LogStore, engine: Engine, startedEmpty: boolean) {
    this.database = database;
    this.store = store;
    this.engine = engine;
    this.startedEmpty = startedEmpty;
    this.#tabs = joinTabs((ids) => void this.#hear(ids));
  }

  /** Opens without waiting for the worker, which may still be on its way: it takes the records before any question. */
  static async open(opening = openDatabase(), engine = startEngine()): Promise<Shop> {
    const database = await opening;
    const store = new LogStore(database);
    const lines = await store.all();
    const shop = new Shop(database, store, engine, lines.length === 0);
    void engine.add(lines);
    return shop;
  }

  /** Writes records together; resolves once they are on the disk, the worker has them and the tabs know. */
  async keep(...drafts: readonly Draft[]): Promise<Outcome<readonly string[], NotKept>> {
    const records = drafts.map((draft) => this.#record(draft));
    const kept = await this.store.keep(records);
    if (kept.ok)
      await this.#spread(
        records.map(({ id }) => String(id)),
        kept.value,
      );
    return kept.ok ? { ok: true, value: records.map(({ id }) => String(id)) } : kept;
  }

  /** Adds records written elsewhere, such as from a copy or another phone. */
  async take(records: readonly StoredRecord[]): Promise<Outcome<readonly string[], NotKept>> {
    const kept = await this.store.keepLines(records);
    if (kept.ok)
      await this.#spread(
        records.map(({ id }) => id),
        kept.value,
      );
    return kept;
  }

  /** Takes records off this device as if they had never come: only for those that nobody wrote. */
  async takeOff(ids: readonly string[]): Promise<void> {
    await this.store.remove(ids);
    await this.#readAnew();
    this.#tabs.tell(READ_ANEW);
  }

  /** Records came from the shop's server and are on the disk. A replaced one makes the worker read the log anew. */
  async heardFromShop({ added, replaced }: Arrived): Promise<void> {
    if (replaced.length > 0) await this.#readAnew();
    if (added.length > 0)
      await this.#spread(
        added.map(({ id }) => id),
        replaced.length > 0 ? [] : added.map(({ line }) => line),
      );
  }

  /** A record as it would be written now, to be handed to `take` when it is to be kept. */
  prepare(draft: Draft): StoredRecord {
    const record = this.#record(draft);
    return { id: String(record.id), line: writeRecord(record) };
  }

  async #spread(ids: readonly string[], lines: readonly string[]): Promise<void> {
    await this.engine.add(lines);
    this.#tabs.tell(ids);
    this.version.set(this.version.get() + 1);
  }

  async #readAnew(): Promise<void> {
    this.engine.forget();
    await this.engine.add(await this.store.all());
    this.version.set(this.version.get() + 1);
  }

  async #hear(ids: readonly string[]): Promise<void> {
    if (ids.length === 0) return this.#readAnew();
    await this.engine.add(await this.store.some(ids));
    this.version.set(this.version.get() + 1);
  }

  #record({ kind, bike, body, at = Date.now() }: Draft): JsonObject {
    const random = crypto.getRandomValues(new Uint8Array(10));
    return {
      id: makeRecordId(Date.now(), random),
      kind,
      v: 1,
      at: new Date(at).toISOString(),
      ...(this.person === "" ? {} : { by: { person: this.person } }),
      ...(bike === undefined ? {} : { bike }),
      body,
    };
  }
}

export const ShopContext = createContext<Shop | null>(null);

export function useShop(): Shop {
  const shop = useContext(ShopContext);
  if (shop === null) throw new RangeError("No shop above this screen");
  return shop;
}

/** The worker's answer, asked again whenever a record arrives or another language is chosen; null until the first answer. */
export function useAnswer<Q extends Question>(question: Q, given: ArgumentsOf<Q>): AnswerOf<Q> | null {
  const shop = useShop();
  const version = useWatched(shop.version);
  const [{ language }] = usePreferences();
  const [answer, setAnswer] = useState<AnswerOf<Q> | null>(null);
  const [broken, setBroken] = useState<Error | null>(null);
  const asked = JSON.stringify(given);
  useEffect(() => {
    let current = true;
    shop.engine.ask(question, JSON.parse(asked) as ArgumentsOf<Q>).then(
      (next) => current && setAnswer(next),
      (bug: Error) => current && setBroken(bug),
    );
    return () => {
      current = false;
    };
  }, [shop, question, asked, version, language]);
  if (broken !== null) throw broken;
  return answer;
}
