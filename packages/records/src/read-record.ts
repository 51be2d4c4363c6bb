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
const ID_FORM = "Use 1 to 64 letters, digits and . _ : - for it.";

function readEnvelope(
  source: JsonObject,
  flaws: Flaw[],
): { id: string; kind: string; v: number; at: number } | null {
  const { id, kind, v = 1, at } = source;
  const idOk = typeof id === "string" && SAFE_ID.test(id);
  if (!idOk) {
    flaws.push(flaw("id", id === undefined ? "is missing" : "is not a usable name for a record", ID_FORM));
  }
  const kindOk = typeof kind === "string" && kind.length > 0 && kind.length <= 64;
  if (!kindOk) {
    flaws.push(
      flaw(
        "kind",
        kind === undefined ? "is missing" : "is not a word",
        'Write the kind of record, such as "ride-reported".',
      ),
    );
  }
  const vOk = typeof v === "number" && Number.isInteger(v) && v >= 1 && v <= 1_000_000;
  if (!vOk)
    flaws.push(flaw("v", "is not a version", "Write a whole number from 1, or leave it out for version 1."));
  const instant =
    typeof at === "string"
      ? parseInstant(at)
      : ({ ok: false, detail: "Write the date, time and zone, such as 2026-05-02T10:15:00+02:00." } as const);
  if (!instant.ok)
    flaws.push(
      flaw("at", at === undefined ? "is missing" : "is not a date and time with zone", instant.detail),
    );
  return idOk && kindOk && vOk && instant.ok ? { id, kind, v, at: instant.value } : null;
}

function checkBy(by: unknown, notes: Flaw[]): void {
  if (by === undefined) return;
  const ok =
    isJsonObject(by) &&
    [by.device, by.person].every((name) => name === undefined || typeof name === "string");
  if (!ok)
    notes.push(flaw("by", "is not who wrote it", 'Write it like "by": {"person": "Jo"}, or leave it out.'));
}

/**
 * One record, from a value as JSON gives it. It never throws for what is in the value: unknown kinds, newer
 * versions and faulty bodies come back as entries that are kept as written, with the reasons.
 */
export function readRecord(value: unknown, line: number | null, knowing: Knowledge): Read {
  const flaws: Flaw[] = [];
  const notes: Flaw[] = [];
  if (!isJsonObject(value)) {
    const mend =
      'Write it like {"id": "r1", "kind": "note", "at": "2026-05-02T10:15:00Z", "body": {"text": "..."}}.';
    return { entry: null, id: null, flaws: [flaw("", "is not a record", mend)], notes };
  }
  // What says that its words were erased has none, whoever wrote it.
  const source = isErased(value as JsonObject) ? blankRecord(value as JsonObject) : (value as JsonObject);
  const head = readEnvelope(source, flaws);
  if (head === null)
    return { entry: null, id: typeof source.id === "string" ? source.id : null, flaws, notes };
  const { id, v, at } = head;
  checkBy(source.by, notes);
  for (const name of Object.keys(source)) {
    if (!ENVELOPE.has(name)) {
      notes.push(
        flaw(name, "is not a field we know; it is kept but not used", "Fields of a kind belong in its body."),
      );
    }
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
    const mend =
      near.length > 0
        ? `Did you mean ${near.map((word) => `"${word}"`).join(" or ")}?`
        : "Nothing needs doing if it comes from a newer version of the tool.";
    notes.push(flaw("kind", `"${head.kind}" is not a kind we know; the record is kept but not used`, mend));
    return keep("unknown-kind");
  }
  if (v > kind.v) {
    const what = `is version ${v} of ${kind.kind}, and this tool reads up to version ${kind.v}; it is kept but not used`;
    notes.push(flaw("v", what, "Update the tool to use it."));
    return keep("newer-version");
  }
  if (source.bike !== undefined && source.bike !== null && !bikeOk) {
    flaws.push(flaw("bike", "is not a usable name for a bike", ID_FORM));
  } else if (kind.bike === "needed" && !bikeOk) {
    flaws.push(flaw("bike", "is missing", 'Say which bike it is about, such as "bike": "bramble".'));
  } else if (kind.bike === "never" && bikeOk) {
    notes.push(flaw("bike", `a ${kind.kind} record is about the whole shop`, "Leave the bike out."));
  }
  if (!isJsonObject(source.body)) {
    flaws.push(
      flaw(
        "body",
        source.body === undefined ? "is missing" : "must be an object in { }",
        "Write what happened in it.",
      ),
    );
  }
  if (flaws.length > 0) return keep("faulty");

  const body = upcast(kind, v, source.body as JsonObject);
  if (body === null) {
    flaws.push(
      flaw(
        "body",
        `cannot be read as version ${v} of ${kind.kind}`,
        "Strike this record and write it again.",
      ),
    );
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
