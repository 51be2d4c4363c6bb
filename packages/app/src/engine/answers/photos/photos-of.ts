import type { FittedPart, FittedSetup } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { personOf } from "../story/person-of.ts";

/** A picture of a bike, as its record tells it. */
export interface BikePhoto {
  readonly record: string;
  readonly hash: string;
  readonly part: FittedPart | null;
  /** What is in it, in somebody's own words; empty when nobody said. */
  readonly of: string;
  readonly by: string | null;
  /** Milliseconds since 1970. */
  readonly at: number;
  /** It shows a part that has not been changed since. */
  readonly fitted: boolean;
}

/** The pictures of a bike, newest first. */
export function photosOf({ shop }: EngineState, { bike }: { readonly bike: string }): readonly BikePhoto[] {
  const story = shop.bikes.get(bike);
  if (story === undefined) return [];
  return story.entries
    .flatMap((entry): readonly BikePhoto[] => {
      if (entry.kind !== "photo") return [];
      const { id, at, body } = entry;
      const { hash, part = null, of = "" } = body;
      const fitted = part !== null && at >= fittedSince(story.setups, part);
      return [{ record: id, hash, part, of, by: personOf(entry), at, fitted }];
    })
    .reverse();
}

/** When the part that is in now was put in, milliseconds since 1970; minus infinity when it was always there. */
function fittedSince(setups: readonly FittedSetup[], part: FittedPart): number {
  const told = (setup: FittedSetup | undefined) => JSON.stringify(setup?.parts[part]);
  const last = setups.length - 1;
  const other = setups.findLastIndex((setup) => told(setup) !== told(setups[last]));
  return setups[other + 1]!.at;
}
