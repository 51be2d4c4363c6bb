import { accept, type EngineSound, type Outcome } from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

/** What listening to a bike needs to know of it. */
export interface SoundOfBike {
  readonly engine: EngineSound;
  /** Figures of the last time it was listened to, or null. */
  readonly before: Readonly<Record<string, number>> | null;
}

/** The engine to listen for; its strokes come from the bike, never from the sound. One cylinder is taken. */
export function soundEngine(
  { shop }: EngineState,
  { bike }: { readonly bike: string },
): Outcome<SoundOfBike> {
  const story = bikeCase(shop, bike);
  if (!story.ok) return story;
  let before: SoundOfBike["before"] = null;
  for (const entry of shop.bikes.get(bike)?.entries ?? []) {
    if (entry.kind === "sound-heard") before = entry.body.figures;
  }
  return accept({
    engine: { strokes: story.value.engine.strokes, cylinders: 1, idleHint: before?.idleRpm ?? null },
    before,
  });
}
