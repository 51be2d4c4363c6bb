import { accept, type Outcome, refuse } from "@jetwright/core";
import type { JsonObject } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { type KeptTake, soundEngine } from "./sound-engine.ts";

/** A take on record, with its speed against time. */
export interface HeardTake extends KeptTake {
  /** The whole record, for writing it again. */
  readonly body: JsonObject;
  readonly speed: { readonly everySeconds: number; readonly rpm: readonly number[] } | null;
  readonly events: readonly { readonly kind: string; readonly atSeconds: number }[];
}

export function takeHeard(
  state: EngineState,
  given: { readonly bike: string; readonly record: string },
): Outcome<HeardTake, string> {
  const sound = soundEngine(state, given);
  if (!sound.ok) return sound;
  const take = sound.value.takes.find(({ record }) => record === given.record);
  const entry = state.shop.bikes.get(given.bike)?.entries.find(({ id }) => id === given.record);
  if (take === undefined || entry?.kind !== "sound-heard")
    return refuse("no-such-take", "That take is not on record any more.");
  const { speed, events } = entry.body;
  return accept({
    ...take,
    body: entry.body as JsonObject,
    speed: speed === undefined ? null : { everySeconds: speed.everySeconds, rpm: speed.rpm },
    events: (events ?? []).map(({ kind, atSeconds }) => ({ kind, atSeconds })),
  });
}
