import { blankRecord, isErased } from "./blank-record.ts";
import { canonicalJson, digest } from "./canonical-json.ts";
import type { Entry } from "./entry.ts";
import { Erasures, isErasure } from "./erasures.ts";
import { compareEntries } from "./log-order.ts";
import { digestOf } from "./record-digest.ts";

/**
 * Two logs as one: every record of both, once, in the order of the story. It does not matter which comes
 * first, and merging again adds nothing. Of two different records under one id the same one wins as when
 * reading a log, and what one log says is erased is erased in the other.
 */
export function mergeEntries(...logs: readonly (readonly Entry[])[]): Entry[] {
  const byId = new Map<string, Entry>();
  for (const entry of logs.flat()) {
    const met = byId.get(entry.id);
    if (met === undefined || (entry !== met && wins(entry, met))) byId.set(entry.id, entry);
  }
  const erasures = new Erasures([...byId.values()].filter(isErasure));
  return [...byId.values()].map((entry) => erasures.apply(entry)).sort(compareEntries);
}

/** 53 bits of a record without its words, the same before and after they are erased. */
const technicalDigest = ({ source }: Entry): number => digest(canonicalJson(blankRecord(source)));

/**
 * Whether the first of two different records under one id counts: the one that happened first; then by what they say
 * without their words, so that an erasure never changes which; then the one whose words are erased.
 */
export function wins(a: Entry, b: Entry): boolean {
  if (a.at !== b.at) return a.at < b.at;
  const technical = technicalDigest(a) - technicalDigest(b);
  if (technical !== 0) return technical < 0;
  const [first, second] = [isErased(a.source), isErased(b.source)];
  return first === second ? digestOf(a) < digestOf(b) : first;
}

/** Whether two are one record, with its words in the one and erased in the other. */
export const isErasedTwin = (a: Entry, b: Entry): boolean =>
  (isErased(a.source) || isErased(b.source)) && technicalDigest(a) === technicalDigest(b);
