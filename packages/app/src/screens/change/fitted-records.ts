import { accept, type LabourPart, type Outcome } from "@jetwright/core";
import type { JsonObject } from "@jetwright/records";
import type { Draft } from "../../store/shop.ts";
import { type PartWords, readPart, typedFrom } from "../fitted/read-part.ts";
import { seenDrafts } from "../fitted/seen.ts";
import { type ChangeDraft, type DraftPhoto, groovesAfter, planned } from "./change-draft.ts";
import { fromDrawer, intoDrawer, isBackIn, movedParts } from "./from-drawer.ts";

type Refused = {
  readonly ok: false;
  readonly reason: string;
  readonly detail: string;
  readonly part: LabourPart;
};

/** What came out of a part, as a record says it; null when it says nothing new. */
export function cameOut(draft: ChangeDraft, part: LabourPart, words: PartWords): Outcome<JsonObject | null> {
  const came = draft.came[part];
  const { now } = planned(draft, part);
  if (came === undefined || came.is === "not-looked") return accept(null);
  const typed = came.is === "as-written" ? typedFrom(part, now) : came.typed;
  const read = readPart(part, typed, came.how, words, { before: now, grooves: draft.plan.grooves });
  if (!read.ok) return read;
  const seen = read.value;
  // Written again only where the log learns something: another part, or a surer way of knowing it.
  const before: JsonObject = now === null || now === "unknown" ? {} : (now as JsonObject);
  const news = Object.entries(seen).some(
    ([key, value]) => JSON.stringify(value) !== JSON.stringify(before[key]),
  );
  return accept(news ? seen : null);
}

/** What went in, as a record says it. */
export function wentIn(draft: ChangeDraft, part: LabourPart, words: PartWords): Outcome<JsonObject> {
  const { proposed, now } = planned(draft, part);
  const typed = draft.went[part] ?? typedFrom(part, proposed);
  return readPart(part, typed, part === "screw" ? "measured" : "read by eye", words, {
    before: proposed ?? kindOf(now),
    grooves: part === "clip" ? groovesAfter(draft) : draft.plan.grooves,
  });
}

/** Another jet of the same carburetor is numbered as the last one was; nothing else carries over. */
function kindOf(now: unknown): JsonObject {
  const numbering = typeof now === "object" && now !== null ? (now as JsonObject).numbering : undefined;
  return numbering === undefined ? {} : { numbering };
}

/** One part between bike and drawer, each null where the drawer has no part in it. */
export interface Moved {
  /** The drawer's own entry for what went in. */
  readonly took: JsonObject | null;
  /** What came off, as the drawer would tell it. */
  readonly kept: JsonObject | null;
}

/** What may have moved: what went in if it lies in the drawer, what came off if anybody knows what it was. */
export function mayMove(draft: ChangeDraft, part: LabourPart, words: PartWords): Moved {
  const { drawer, numbering } = draft.plan;
  const into = wentIn(draft, part, words);
  const seen = cameOut(draft, part, words);
  const { now } = planned(draft, part);
  const written = typeof now === "object" ? (now as JsonObject | null) : null;
  const out = draft.came[part]?.is === "not-looked" ? null : ((seen.ok ? seen.value : null) ?? written);
  if (out !== null && into.ok && isBackIn(out, into.value)) return { took: null, kept: null };
  const owned = into.ok ? fromDrawer(part, into.value, drawer, numbering) : null;
  return {
    took: owned === null ? null : { ...(owned as unknown as JsonObject), count: 1 },
    kept: out === null ? null : intoDrawer(part, out, drawer, numbering),
  };
}

/** What came out is written as of just before what went in. */
const JUST_BEFORE_MS = 1000;

/**
 * The records of a change carried out: what came out where it differs from the log, what was really fitted and how
 * the drawer took part in it, and the pictures. Refuses by the part whose figure cannot be read.
 */
export function fittedRecords(
  draft: ChangeDraft,
  bike: string,
  at: number,
  words: PartWords,
): { readonly ok: true; readonly value: readonly Draft[] } | Refused {
  const found: Record<string, JsonObject> = {};
  const fitted: Record<string, JsonObject> = {};
  const took: JsonObject[] = [];
  const kept: JsonObject[] = [];
  for (const part of draft.chosen) {
    const out = cameOut(draft, part, words);
    if (!out.ok) return { ...out, part };
    if (out.value !== null) found[part] = out.value;
    const into = wentIn(draft, part, words);
    if (!into.ok) return { ...into, part };
    fitted[part] = into.value;
    const moved = mayMove(draft, part, words);
    if (moved.took !== null && draft.taken[part] !== false) took.push(moved.took);
    if (moved.kept !== null && draft.kept[part] !== false) kept.push(moved.kept);
  }
  const { record } = draft.plan;
  return accept([
    ...(Object.keys(found).length === 0
      ? []
      : [
          {
            kind: "setup-fitted",
            bike,
            at: at - JUST_BEFORE_MS,
            body: { ...found, asFound: true, why: "read when the parts were changed" },
          } as const,
        ]),
    {
      kind: "setup-fitted",
      bike,
      at,
      body: {
        ...fitted,
        ...movedParts(took, kept),
        ...(record === null ? {} : { replaces: record }),
      },
    },
    ...seenDrafts(draft.seen).map((seen) => ({ ...seen, bike, at })),
    ...draft.photos.map((photo) => photoRecord(photo, bike, at)),
  ]);
}

/** A picture of what came out is older than the change, one of what went in is not: so each shows the part it is of. */
export function photoRecord(
  { hash, part, of, goesIn, at: taken }: DraftPhoto,
  bike: string,
  at: number,
): Draft {
  const before = at - JUST_BEFORE_MS;
  return {
    kind: "photo",
    bike,
    at: goesIn === true ? at : Math.min(taken ?? before, before),
    body: { hash, ...(part === undefined ? {} : { part }), ...(of === undefined ? {} : { of }) },
  };
}
