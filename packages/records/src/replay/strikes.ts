import type { Entry, UsedEntryOf } from "../entry.ts";
import { compareEntries } from "../log-order.ts";

/** A record that no longer counts, and the strike that took it out. */
export interface Struck {
  readonly entry: Entry;
  readonly by: UsedEntryOf<"record-struck">;
}

export interface Standing {
  /** What counts, in the order of the story. */
  readonly standing: readonly Entry[];
  readonly struck: readonly Struck[];
  /** Strikes that name a record which is not in this log (yet). */
  readonly dangling: readonly UsedEntryOf<"record-struck">[];
}

/**
 * Sorts a log into the order of its story and takes out what was struck. A strike counts whatever its time,
 * as clocks differ. A strike can itself be struck, but only by one that comes later in the story: so two
 * strikes can never take each other out.
 */
export function withoutStruck(entries: Iterable<Entry>): Standing {
  const story = [...entries].sort(compareEntries);
  const strikeOf = new Map<string, UsedEntryOf<"record-struck">>();
  const byId = new Map<string, number>();
  const strikes: { entry: UsedEntryOf<"record-struck">; place: number }[] = [];
  story.forEach((entry, place) => {
    if (entry.reading !== "used" || entry.kind !== "record-struck") return;
    strikes.push({ entry, place });
    byId.set(entry.id, place);
  });
  for (let i = strikes.length - 1; i >= 0; i--) {
    const { entry, place } = strikes[i]!;
    if (strikeOf.has(entry.id)) continue;
    const target = byId.get(entry.body.record);
    if (target === undefined || target < place) strikeOf.set(entry.body.record, entry);
  }
  if (strikes.length === 0) return { standing: story, struck: [], dangling: [] };
  const struck: Struck[] = [];
  const standing = story.filter((entry) => {
    const by = strikeOf.get(entry.id);
    if (by !== undefined) struck.push({ entry, by });
    return by === undefined;
  });
  const gone = new Set(struck.map(({ entry }) => entry.id));
  const dangling = [...strikeOf.values()].filter((by) => !gone.has(by.body.record)).sort(compareEntries);
  return { standing, struck, dangling };
}
