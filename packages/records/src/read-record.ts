import { blankRecord, isErased } from "./blank-record.ts";
import { closestWords } from "./closest-words.ts";
import type { Entry, Envelope, KeptEntry, UsedEntry } from "./entry.ts";
import { extraFields } from "./extra-fields.ts";
import { parseInstant } from "./instant.ts";
import { isJsonObject, type JsonObject } from "./json.ts";
import type { AnyKind } from "./kind.ts";
import { SAFE_ID } from "./kinds/shapes.ts";
import { type Flaw, flaw } from "./problem.ts";
import { upcast } from "./upcast.ts";
import type { Vocabulary } from "./vocabulary.ts";
import { zodFlaws } from "./zod-flaws.ts";

/** What was made of one record: null when not even its id, kind and time could be read. */
export interface Read {
  readonly entry: Entry | null;
  readonly id: string | null;
  /** What is wrong and leaves something out. */
  readonly flaws: readonly Flaw[];
  /** What is worth knowing but leaves nothing out. */
  readonly notes: readonly Flaw[];
}

/** What a reader knows: the kinds and the words of the catalogues. */
export interface Knowledge {
  readonly kinds: ReadonlyMap<string, AnyKind>;
  readonly words: Vocabulary;
}

const ENVELOPE = new Set(["id", "kind", "v", "at", "by", "bike", "erased", "body"]);

const NO_TIME = {
  ok: false,
  reason: "no-time",
  detail: "Write the date, time and zone, such as 2026-05-02T10:15:00+02:00.",
} as const;

function readEnvelope(
  source: JsonObject,
  flaws: Flaw[],
): { id: string; kind: string; v: number; at: number } | null {
  const { id, kind, v = 1, at } = source;
  const idOk = typeof id === "string" && SAFE_ID.test(id);
  if (!idOk) flaws.push(flaw("id", "id", { missing: id === undefined }));
  const kindOk = typeof kind === "string" && kind.length > 0 && kind.length <= 64;
  if (!kindOk) flaws.push(flaw("kind", "kind", { missing: kind === undefined }));
  const vOk = typeof v === "number" && Number.isInteger(v) && v >= 1 && v <= 1_000_000;
  if (!vOk) flaws.push(flaw("v", "version", {}));
  const instant = typeof at === "string" ? parseInstant(at) : NO_TIME;
  if (!instant.ok) {
    const { reason, detail } = instant;
    flaws.push(flaw("at", "time", { missing: at === undefined, reason, detail }));
  }
  return idOk && kindOk && vOk && instant.ok ? { id, kind, v, at: instant.value } : null;
}

function checkBy(by: unknown, notes: Flaw[]): void {
  if (by === undefined) return;
  const ok =
    isJsonObject(by) &&
    [by.device, by.person].every((name) => name === undefined || typeof name === "string");
  if (!ok) notes.push(flaw("by", "written-by", {}));
}

/**
 * One record, from a value as JSON gives it. It never throws for what is in the value: unknown kinds, newer
 * versions and faulty bodies come back as entries that are kept as written, with the reasons.
 */
export function readRecord(value: unknown, line: number | null, knowing: Knowledge): Read {
  const flaws: Flaw[] = [];
  const notes: Flaw[] = [];
  if (!isJsonObject(value)) {
    return { entry: null, id: null, flaws: [flaw("", "no-record", { shown: null })], notes };
  }
  // What says that its words were erased has none, whoever wrote it.
  const source = isErased(value as JsonObject) ? blankRecord(value as JsonObject) : (value as JsonObject);
  const head = readEnvelope(source, flaws);
  if (head === null)
    return { entry: null, id: typeof source.id === "string" ? source.id : null, flaws, notes };
  const { id, v, at } = head;
  checkBy(source.by, notes);
  for (const name of Object.keys(source)) {
    if (!ENVELOPE.has(name)) notes.push(flaw(name, "extra-field", { near: [], outside: true }));
  }
  const bikeOk = typeof source.bike === "string" && SAFE_ID.test(source.bike);
  const about = knowing.kinds.get(head.kind)?.bike === "never" || !bikeOk ? null : (source.bike as string);
  const envelope: Envelope = { id, v, at, bike: about, line, source };
  const keep = (reading: KeptEntry["reading"]): Read => ({
    entry: { ...envelope, kind: head.kind, reading },
    id,
    flaws,
    notes,
  });

  // Nothing of it was known to be technical: nothing is left that could be mended.
  if (isErased(source) && source.body === null) return keep("faulty");
  const kind = knowing.kinds.get(head.kind);
  if (kind === undefined) {
    const near = closestWords(head.kind, knowing.kinds.keys());
    notes.push(flaw("kind", "unknown-kind", { word: head.kind, near }));
    return keep("unknown-kind");
  }
  if (v > kind.v) {
    notes.push(flaw("v", "newer-version", { version: v, kind: kind.kind, known: kind.v }));
    return keep("newer-version");
  }
  if (source.bike !== undefined && source.bike !== null && !bikeOk) {
    flaws.push(flaw("bike", "bike", { missing: false }));
  } else if (kind.bike === "needed" && !bikeOk) {
    flaws.push(flaw("bike", "bike", { missing: true }));
  } else if (kind.bike === "never" && bikeOk) {
    notes.push(flaw("bike", "bike-needless", { kind: kind.kind }));
  }
  if (!isJsonObject(source.body)) {
    flaws.push(flaw("body", "body", { missing: source.body === undefined }));
  }
  if (flaws.length > 0) return keep("faulty");

  const body = upcast(kind, v, source.body as JsonObject);
  if (body === null) {
    flaws.push(flaw("body", "old-body", { version: v, kind: kind.kind }));
    return keep("faulty");
  }
  const parsed = kind.body.safeParse(body);
  if (!parsed.success) {
    flaws.push(...zodFlaws(parsed.error.issues, body, "body"));
    return keep("faulty");
  }
  notes.push(...extraFields(kind.body, body, "body"));
  const settled = kind.settle?.(body, knowing.words) ?? { body, flaws: [] };
  flaws.push(...settled.flaws);
  if (settled.body === null) return keep("faulty");
  const entry = { ...envelope, kind: kind.kind, reading: "used", body: settled.body } as UsedEntry;
  return { entry, id, flaws, notes };
}
