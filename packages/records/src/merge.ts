import type { Entry } from "./entry.ts";
import { compareEntries } from "./log-order.ts";
import { digestOf } from "./record-digest.ts";

/**
 * Two logs as one: every record of both, once, in the order of the story. It does not matter which comes
 * first, and merging again adds nothing. Of two different records under one id the same one wins as when
 * reading a log.
 */
export function mergeEntries(...logs: readonly (readonly Entry[])[]): Entry[] {
  const byId = new Map<string, Entry>();
  for (const entry of logs.flat()) {
    const met = byId.get(entry.id);
    if (met === undefined || (entry !== met && wins(entry, met))) byId.set(entry.id, entry);
  }
  return [...byId.values()].sort(compareEntries);
}

const wins = (a: Entry, b: Entry): boolean => a.at < b.at || (a.at === b.at && digestOf(a) < digestOf(b));
