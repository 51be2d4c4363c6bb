import { onlyKnown } from "./extra-fields.ts";
import { isJsonObject, type Json, type JsonObject } from "./json.ts";
import type { AnyKind } from "./kind.ts";
import { SAFE_ID } from "./kinds/shapes.ts";
import { KINDS_BY_NAME } from "./known-kinds.ts";
import { upcast } from "./upcast.ts";

/** Whether a record as written is one whose words were erased. */
export const isErased = ({ erased }: JsonObject): boolean => erased === true;

/**
 * A record without who wrote it and without anybody's name, contact or words: its id, kind, time, bike and the
 * technical rest of its body. What is not known to be technical goes: fields that no schema names, and the whole body
 * of a record that is of an unknown kind, of a newer version, or faulty, which stays one that does not count. Done
 * again it changes nothing.
 */
export function blankRecord(source: JsonObject): JsonObject {
  const { id, kind, v = 1, at, bike } = source;
  const known = typeof kind === "string" ? KINDS_BY_NAME.get(kind) : undefined;
  const body = known === undefined ? null : technicalBody(known, v, source.body);
  return {
    id: id!,
    kind: kind!,
    v: body === null ? v : known!.v,
    at: at!,
    ...(typeof bike === "string" && SAFE_ID.test(bike) && { bike }),
    erased: true,
    body,
  };
}

/** What of a body is technical; null where that cannot be told. */
function technicalBody(kind: AnyKind, v: Json, body: unknown): JsonObject | null {
  if (typeof v !== "number" || v > kind.v || !isJsonObject(body)) return null;
  const newest = upcast(kind, v, body as JsonObject);
  if (newest === null || !counts(kind, newest)) return null;
  const known = onlyKnown(kind.body, newest) as JsonObject;
  const without = changed(known, kind.personal, null);
  if (counts(kind, without)) return without;
  // A field that must be there stays there, empty.
  const empty = changed(known, kind.personal, "");
  return counts(kind, empty) ? empty : null;
}

const ANY_WORDS = { signs: null, tests: null, checks: null, faults: null };

function counts(kind: AnyKind, body: JsonObject): boolean {
  if (!kind.body.safeParse(body).success) return false;
  return (kind.settle?.(body, ANY_WORDS) ?? { body }).body !== null;
}

/** The body with the fields at these paths gone, or, where a text is given, holding that where they were there. */
function changed(body: JsonObject, paths: readonly string[], text: string | null): JsonObject {
  let now = body;
  for (const path of paths) now = changedAt(now, path.split("."), text);
  return now;
}

function changedAt(object: JsonObject, [name, ...rest]: readonly string[], text: string | null): JsonObject {
  const field = object[name!];
  if (field === undefined) return object;
  if (rest.length > 0) {
    return isJsonObject(field) ? { ...object, [name!]: changedAt(field as JsonObject, rest, text) } : object;
  }
  const { [name!]: _gone, ...others } = object;
  return text === null ? others : { ...others, [name!]: text };
}
