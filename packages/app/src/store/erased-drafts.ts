import { isErased, isJsonObject, type JsonObject } from "@jetwright/records";
import type { Database } from "./database.ts";
import type { LogStore } from "./log-store.ts";
import type { StoredRecord } from "./tables.ts";

/** What has a person's own words before it is kept: a half-told ride under its bike, and a half-described bike. */
const DRAFT = "draft:";

/** The device on which it lies, and who works on it. */
interface Device {
  readonly database: Database;
  readonly store: LogStore;
  readonly person: string;
}

/** What an erasure takes from the records of this device. */
interface Taken {
  /** Records that still lie here with their words. */
  readonly ids: readonly string[];
  /** Records that others have taken the place of, perhaps the same without their words, as they were. */
  readonly replaced: readonly StoredRecord[];
  /** Bikes about which an erasure takes all words. */
  readonly bikes: readonly string[];
}

const read = (lines: readonly string[]): readonly JsonObject[] =>
  lines.map((line): unknown => JSON.parse(line)).filter(isJsonObject);

/** Whose names stand in a record: who wrote it, and the customer it describes. */
function namesIn({ kind, by, body }: JsonObject): readonly string[] {
  const person = isJsonObject(by) ? by.person : undefined;
  const customer = kind === "customer-described" && isJsonObject(body) ? body.name : undefined;
  return [person, customer].filter((name) => typeof name === "string");
}

const plain = (name: string): string => name.trim().toLowerCase();

/** The name as a word of its own, however it is written: Jo is not in "jolts". */
const naming = (name: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])${name.replaceAll(/[\\^$.*+?()[\]{}|]/g, "\\$&")}(?![\\p{L}\\p{N}])`, "iu");

/**
 * Takes what is half told on this device away with the rest of a person's data: about their bikes, with their name in
 * it, and all of it where they are the one who works here.
 */
export async function forgetDrafts(
  { database: { settings }, store, person }: Device,
  { ids, replaced, bikes }: Taken,
): Promise<void> {
  const now = read(await store.some(replaced.map(({ id }) => id)));
  const emptied = new Set(now.filter(isErased).map(({ id }) => id));
  const records = [
    ...read(await store.some(ids)),
    ...read(replaced.filter(({ id }) => emptied.has(id)).map(({ line }) => line)),
  ];
  const about = new Set(records.map(({ bike }) => bike));
  const gone = new Set(bikes.filter((bike) => about.has(bike)).map((bike) => `${DRAFT}${bike}`));
  const names = records
    .flatMap(namesIn)
    .map(plain)
    .filter((name) => name !== "");
  const mine = names.includes(plain(person));
  const named = [...new Set(names)].map(naming);
  for (const { key, value } of await settings.startingWith(DRAFT)) {
    const text = JSON.stringify(value);
    if (mine || gone.has(key) || named.some((name) => name.test(text))) await settings.delete(key);
  }
}
