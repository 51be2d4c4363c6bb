import {
  accept,
  type EngineSound,
  type Outcome,
  type TakeDifference,
  takeDifferences,
} from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

/** A take that is on record. */
export interface KeptTake {
  readonly record: string;
  /** When, milliseconds since 1970. */
  readonly at: number;
  readonly figures: Readonly<Record<string, number>>;
  /** Hash of its sound, where that was kept. */
  readonly clip: string | null;
  readonly good: boolean;
  readonly drawn: boolean;
}

/** What listening to a bike needs to know of it. */
export interface SoundOfBike {
  readonly engine: EngineSound;
  /** Takes on record, the newest first. */
  readonly takes: readonly KeptTake[];
  /** The take this one is held against: the newest that was marked good, else the newest; null: the first. */
  readonly against: KeptTake | null;
  /** In what the figures given differ from it. */
  readonly differs: readonly TakeDifference[];
}

/** The engine to listen for; its strokes and cylinders come from the bike, never from the sound; one cylinder where none is told. */
export function soundEngine(
  { shop }: EngineState,
  { bike, figures }: { readonly bike: string; readonly figures?: Readonly<Record<string, number>> },
): Outcome<SoundOfBike> {
  const story = bikeCase(shop, bike);
  if (!story.ok) return story;
  const takes: KeptTake[] = [];
  for (const entry of shop.bikes.get(bike)?.entries ?? []) {
    if (entry.kind !== "sound-heard") continue;
    const { clip, good, speed } = entry.body;
    takes.unshift({
      record: entry.id,
      at: entry.at,
      figures: entry.body.figures,
      clip: clip ?? null,
      good: good === true,
      drawn: (speed?.rpm.length ?? 0) > 1,
    });
  }
  const against = takes.find(({ good }) => good) ?? takes[0] ?? null;
  return accept({
    engine: {
      strokes: story.value.engine.strokes,
      cylinders: story.value.engine.cylinders ?? 1,
      idleHint: takes[0]?.figures.idleRpm ?? null,
    },
    takes,
    against,
    differs: figures === undefined || against === null ? [] : takeDifferences(figures, against.figures),
  });
}
