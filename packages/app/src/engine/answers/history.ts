import { AS_FOUND, type Entry, mergeEntries } from "@jetwright/records";
import type { EngineState } from "../state.ts";
import { personOf } from "./story/person-of.ts";
import { sentenceOf } from "./story/sentence.ts";
import { setupWords } from "./story/setup-words.ts";
import { storyWords } from "./story/story-words.ts";

export interface HistoryLine {
  readonly id: string;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly kind: string;
  readonly words: string;
  readonly by: string | null;
  /** The record is about the whole shop. */
  readonly shop: boolean;
  /** False: it is kept and not used, since it is of a newer version, unknown or unreadable. */
  readonly used: boolean;
  /** The strike that took it out; null while it counts. */
  readonly struck: { readonly id: string; readonly why: string | null } | null;
}

export interface HistorySetup {
  /** Id to compare by. */
  readonly record: string;
  /** Null for what was there before anything was written. */
  readonly at: number | null;
  readonly words: string;
  readonly now: boolean;
}

export interface History {
  readonly name: string;
  /** Newest first. */
  readonly lines: readonly HistoryLine[];
  /** Oldest first. */
  readonly setups: readonly HistorySetup[];
}

/** Everything written about a bike, struck records and kept ones included; null when nothing is about it. */
export function historyOf(
  { entries, shop, words: core }: EngineState,
  { bike, language }: { readonly bike: string; readonly language: string },
): History | null {
  const words = storyWords(language, core);
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const strikes = new Map(shop.struck.map(({ entry, by }) => [entry.id, by]));
  /** A strike taken back says so itself, by being struck: the strike that did it needs no line of its own. */
  const countsAgain = (entry: Entry): boolean =>
    entry.reading === "used" &&
    entry.kind === "record-struck" &&
    byId.get(entry.body.record)?.kind === "record-struck";
  const about = (entry: Entry): boolean => {
    if (bikeOf(entry) === bike) return true;
    if (entry.reading !== "used" || entry.kind !== "record-struck") return false;
    const struck = byId.get(entry.body.record);
    return struck !== undefined && bikeOf(struck) === bike;
  };
  const told = mergeEntries(entries).filter(
    (entry) => !countsAgain(entry) && (about(entry) || (bikeOf(entry) === null && SHOP_WIDE.has(entry.kind))),
  );
  if (!told.some(about)) return null;
  const story = shop.bikes.get(bike);
  return {
    name: story?.description?.name ?? bike,
    lines: told
      .map((entry): HistoryLine => {
        const strike = strikes.get(entry.id);
        return {
          id: entry.id,
          at: entry.at,
          kind: entry.kind,
          words: sentenceOf(entry, words, (id) => byId.get(id)),
          by: personOf(entry),
          shop: !about(entry),
          used: entry.reading === "used",
          struck: strike === undefined ? null : { id: strike.id, why: strike.body.why ?? null },
        };
      })
      .reverse(),
    setups: (story?.setups ?? [])
      .filter(({ parts }) => Object.keys(parts).length > 0)
      .map((setup) => ({
        record: setup.record ?? AS_FOUND,
        at: setup.record === null ? null : setup.at,
        words: setupWords(setup.parts, words),
        now: setup === story?.now.setup,
      })),
  };
}

/** Records of the whole shop that change what a bike runs in. */
const SHOP_WIDE: ReadonlySet<string> = new Set(["air-measured", "fuel-used"]);

/** The bike a record names, also where the record itself could not be read. */
const bikeOf = (entry: Entry): string | null =>
  entry.bike ?? (typeof entry.source.bike === "string" ? entry.source.bike : null);
