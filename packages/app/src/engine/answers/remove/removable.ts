import { type Entry, isErased, type JsonObject } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { personOf } from "../story/person-of.ts";

/** Somebody whose data can be removed, and what records would do it. */
export interface Removable {
  readonly is: "customer" | "writer";
  /** A customer's id; a writer's name. */
  readonly who: string;
  /** Empty where it is not known any more. */
  readonly name: string;
  /** Names of the bikes about which all words go. */
  readonly bikes: readonly string[];
  /** How many records lose words. */
  readonly records: number;
  /** Bodies of the person-erased records. */
  readonly bodies: readonly JsonObject[];
}

const MOST_RECORDS = 5000;
const plain = (text: string): string => text.trim().toLowerCase();

/** Everybody whose data is in the log: customers, and whoever wrote records. What is erased already is left out. */
export function removable({ shop, entries }: EngineState, _given: null): readonly Removable[] {
  const left = entries.filter(({ source, kind }) => !isErased(source) && kind !== "person-erased");
  const customers = [...shop.customers.values()].map(({ customer, name = "" }): Removable => {
    const about = left.filter((entry) => isAbout(entry, customer));
    const bikes = [...new Set(about.flatMap(({ bike }) => bike ?? []))];
    const signed = name === "" ? [] : left.filter((entry) => plain(personOf(entry) ?? "") === plain(name));
    const covered = left.filter((entry) => about.includes(entry) || bikes.includes(entry.bike ?? ""));
    return {
      is: "customer",
      who: customer,
      name,
      bikes: bikes.map((id) => shop.bikes.get(id)?.description?.name ?? id),
      records: new Set([...covered, ...signed]).size,
      bodies: inPieces(signed).map((records, i) => ({ ...(i === 0 && { customer, bikes }), records })),
    };
  });
  const writers = new Map<string, Entry[]>();
  for (const entry of left) {
    const name = personOf(entry);
    if (name !== null) writers.set(name, [...(writers.get(name) ?? []), entry]);
  }
  return [
    ...customers.filter(({ records }) => records > 0),
    ...[...writers].map(
      ([name, signed]): Removable => ({
        is: "writer",
        who: name,
        name,
        bikes: [],
        records: signed.length,
        bodies: inPieces(signed).map((records) => ({ records })),
      }),
    ),
  ];
}

/** A record that names the customer: what describes them, their orders, and whose bike one is. */
function isAbout({ source }: Entry, customer: string): boolean {
  const { body } = source;
  return typeof body === "object" && body !== null && (body as JsonObject).customer === customer;
}

/** The ids of the records, so many to a piece; one empty piece where there are none. */
function inPieces(entries: readonly Entry[]): readonly (readonly string[])[] {
  const ids = entries.map(({ id }) => id);
  return Array.from({ length: Math.max(1, Math.ceil(ids.length / MOST_RECORDS)) }, (_, i) =>
    ids.slice(i * MOST_RECORDS, (i + 1) * MOST_RECORDS),
  );
}
