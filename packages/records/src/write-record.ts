import { canonicalJson } from "./canonical-json.ts";
import type { Json, JsonObject } from "./json.ts";

const FIRST = ["id", "kind", "v", "at", "by", "bike", "erased"] as const;

/**
 * One line of a log, without its line break: the envelope first, in the order people read it, then any field
 * we do not know, then the body; keys inside sorted. The same record always gives the same text. Throws
 * RangeError for what JSON cannot say.
 */
export function writeRecord(record: JsonObject): string {
  const known = new Set<string>([...FIRST, "body"]);
  const others = Object.keys(record)
    .filter((key) => !known.has(key))
    .sort();
  const fields = [...FIRST, ...others, "body"]
    .filter((key) => Object.hasOwn(record, key) && record[key] !== undefined)
    .map((key) => `${JSON.stringify(key)}:${canonicalJson(record[key] as Json)}`);
  return `{${fields.join(",")}}`;
}

/** The records as JSON Lines, each line ended. */
export function writeLog(records: Iterable<JsonObject>): string {
  let text = "";
  for (const record of records) text += `${writeRecord(record)}\n`;
  return text;
}
