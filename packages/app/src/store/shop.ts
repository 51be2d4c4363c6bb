import type { Outcome } from "@jetwright/core";
import { type JsonObject, type KindName, makeRecordId, writeRecord } from "@jetwright/records";
import { createContext } from "preact";
import { useContext, useEffect, useState } from "preact/hooks";
import { type Engine, startEngine } from "../engine/client.ts";
import type { AnswerOf, ArgumentsOf, Question } from "../engine/protocol.ts";
import { usePreferences } from "../preferences/use-preferences.ts";
import { type Database, openDatabase } from "./database.ts";
import { Foresight } from "./foresight.ts";
import { LogStore, type NotKept } from "./log-store.ts";
import type { Arrived } from "./shelves.ts";
import type { StoredRecord } from "./tables.ts";
import { joinTabs, type Tabs } from "./tabs.ts";
import { type Watched, watched } from "./value.ts";

/** What a screen hands over to be written; id and time are added here. */
export interface Draft {
  readonly kind: KindName;
  readonly bike?: string;
  readonly body: JsonObject;
  /** When it happened, milliseconds since 1970; now when left out. */
  readonly at?: number;
}

/** The kind of record that removes a person's data. */
const ERASURE = "person-erased" satisfies KindName;

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
  /** The log may hold an erasure: what arrives may have to be emptied. */
  #erases = false;
  readonly #foresight = new Foresight();

  private constructor(database: Database, store: LogStore, engine: Engine, startedEmpty: boolean) {
    this.database = database;
    this.store = store;
    this.engine = engine;
    this.startedEmpty = startedEmpty;
    this.#tabs = joinTabs((ids) => void this.#hear(ids).catch(() => undefined));
  }

  /** Opens without waiting for the worker, which may still be on its way: it takes the records before any question. */
  static async open(opening = openDatabase(), engine = startEngine()): Promise<Shop> {
    const database = await opening;
    const store = new LogStore(database, () => engine.language);
    const lines = await store.all();
    const shop = new Shop(database, store, engine, lines.length === 0);
    void engine.add(lines);
    shop.#noteErasures(lines);
    void shop.#emptyErased().catch(() => undefined);
    return shop;
  }

  /** Writes records together; resolves once they are on the disk: whatever is asked from then on knows them. */
  async keep(...drafts: readonly Draft[]): Promise<Outcome<readonly string[], NotKept>> {
    const records = drafts.map((draft) => this.#record(draft));
    const kept = await this.store.keep(records);
    if (kept.ok)
      this.#spread(
        records.map(({ id }) => String(id)),
        kept.value,
      );
    return kept.ok ? { ok: true, value: records.map(({ id }) => String(id)) } : kept;
  }

  /** Adds records written elsewhere, such as from a copy or another phone. */
  async take(records: readonly StoredRecord[]): Promise<Outcome<readonly string[], NotKept>> {
    const kept = await this.store.keepLines(records);
    if (kept.ok)
      this.#spread(
        records.map(({ id }) => id),
        kept.value,
      );
    if (kept.ok) await this.#emptyErased();
    return kept;
  }

  /** Takes records off this device as if they had never come: only for those that nobody wrote. */
  async takeOff(ids: readonly string[]): Promise<void> {
    await this.store.remove(ids);
    await this.#readAnewEverywhere();
  }

  /** Records came from the shop's server and are on the disk. A replaced one makes the worker read the log anew. */
  async heardFromShop({ added, replaced }: Arrived): Promise<void> {
    if (replaced.length > 0) await this.#readAnewEverywhere();
    if (added.length > 0)
      this.#spread(
        added.map(({ id }) => id),
        replaced.length > 0 ? [] : added.map(({ line }) => line),
      );
    await this.#emptyErased(replaced);
  }

  /** Removes a person's data for good: resolves once no record on this disk has the words any more. */
  async erase(...bodies: readonly JsonObject[]): Promise<Outcome<readonly string[], NotKept>> {
    const kept = await this.keep(...bodies.map((body) => ({ kind: "person-erased", body }) as const));
    if (kept.ok) await this.#emptyErased();
    return kept;
  }

  /** A record as it would be written now, to be handed to `take` when it is to be kept. */
  prepare(draft: Draft): StoredRecord {
    const record = this.#record(draft);
    return { id: String(record.id), line: writeRecord(record) };
  }

  /**
   * Has what a bike's page asks worked out as it will be when this record is kept, so that it is there at once. The
   * worker reckons while the record is still being told or on its way to the disk.
   */
  foresee(bike: string, { line }: StoredRecord): void {
    const { language } = this.engine;
    this.#foresight.expect({ bike, line, language }, this.engine.ask("foresee", { bike, line }));
  }

  /** The answer of now, where it was foreseen. */
  known<Q extends Question>(question: Q, given: string): AnswerOf<Q> | undefined {
    return this.#foresight.known(question, given, this.engine.language);
  }

  #spread(ids: readonly string[], lines: readonly string[]): void {
    this.#arrive(lines);
    this.#tabs.tell(ids);
  }

  /** The worker takes messages in their order: a question asked after this is answered with these lines. */
  #arrive(lines: readonly string[]): void {
    this.#noteErasures(lines);
    void this.engine.add(lines);
    this.#foresight.arrived(lines);
    this.version.set(this.version.get() + 1);
  }

  #noteErasures(lines: readonly string[]): void {
    this.#erases ||= lines.some((line) => line.includes(`"${ERASURE}"`));
  }

  /**
   * Writes over the records here that an erasure covers, where one has been seen; the worker knows which they are. What
   * is half told goes first: killed in between, the next opening finds the records and does it again.
   * @param replaced records that others have taken the place of, as they were here
   */
  async #emptyErased(replaced: readonly StoredRecord[] = []): Promise<void> {
    if (!this.#erases) return;
    const { lines, bikes } = await this.engine.ask("erased", null);
    if (lines.length + replaced.length > 0) {
      const { forgetDrafts } = await import("./erased-drafts.ts");
      await forgetDrafts(this, { ids: lines.map(({ id }) => id), replaced, bikes });
    }
    if (lines.length === 0) return;
    await this.store.empty(lines);
    await this.#readAnewEverywhere();
  }

  async #readAnewEverywhere(): Promise<void> {
    await this.#readAnew();
    this.#tabs.tell(READ_ANEW);
  }

  async #readAnew(): Promise<void> {
    this.engine.forget();
    this.#foresight.arrived([]);
    this.#arrive(await this.store.all());
  }

  async #hear(ids: readonly string[]): Promise<void> {
    if (ids.length === 0) return this.#readAnew();
    this.#arrive(await this.store.some(ids));
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

/** No asking has this number. */
const GONE = -1;

/** The worker's answer, asked again whenever a record arrives or another language is chosen; null until the first answer. */
export function useAnswer<Q extends Question>(question: Q, given: ArgumentsOf<Q>): AnswerOf<Q> | null {
  const shop = useShop();
  const [{ language }] = usePreferences();
  const asked = JSON.stringify(given);
  const [answer, setAnswer] = useState<AnswerOf<Q> | null>(() => shop.known(question, asked) ?? null);
  const [broken, setBroken] = useState<Error | null>(null);
  useEffect(() => {
    let newest = 0;
    const ask = () => {
      const mine = ++newest;
      const known = shop.known(question, asked);
      if (known !== undefined) return setAnswer(known);
      shop.engine.ask(question, JSON.parse(asked) as ArgumentsOf<Q>).then(
        (next) => mine === newest && setAnswer(next),
        (bug: Error) => mine === newest && setBroken(bug),
      );
    };
    ask();
    const unwatch = shop.version.watch(ask);
    return () => {
      newest = GONE;
      unwatch();
    };
  }, [shop, question, asked, language]);
  if (broken !== null) throw broken;
  return answer;
}
