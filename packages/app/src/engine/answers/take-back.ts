import { accept, type Outcome, refuse } from "@jetwright/core";
import { FITTED_PARTS, type JsonObject } from "@jetwright/records";
import type { EngineState } from "../state.ts";
import { partWords } from "./story/part-words.ts";
import { storyWords } from "./story/story-words.ts";

/** The way back from the last change of parts. */
export interface TakeBack {
  /** Body of the setup-fitted record that says the parts before are in again. */
  readonly body: JsonObject;
  readonly changes: readonly { readonly from: string; readonly to: string }[];
  /** When the change to take back was made. */
  readonly at: number;
}

/**
 * The parts as they were before the last change, and the drawer with them: what it gave goes back, what it got comes
 * out again. Refuses where there was no change.
 */
export function takeBack(
  { shop, entries, words: core }: EngineState,
  { bike, language }: { readonly bike: string; readonly language: string },
): Outcome<TakeBack, "nothing-changed"> {
  const words = storyWords(language, core);
  const setups = shop.bikes.get(bike)?.setups ?? [];
  const [before, now] = setups.slice(-2);
  const none = refuse(
    "nothing-changed",
    "No change of parts is written down for this bike, so there is none to take back.",
  );
  if (before === undefined || now === undefined) return none;
  const moved = FITTED_PARTS.filter(
    (name) => JSON.stringify(before.parts[name]) !== JSON.stringify(now.parts[name]),
  );
  const told = moved.filter((name) => before.parts[name] !== undefined && before.parts[name] !== "unknown");
  if (told.length === 0) return none;
  const made = entries.find(({ id }) => id === now.record);
  const drawer = made?.reading === "used" && made.kind === "setup-fitted" ? made.body.drawer : undefined;
  const { took, kept } = (drawer ?? {}) as unknown as JsonObject;
  return accept({
    body: {
      ...(drawer !== undefined && { drawer: { ...(kept && { took: kept }), ...(took && { kept: took }) } }),
      ...Object.fromEntries(told.map((name) => [name, before.parts[name] as JsonObject])),
      why: "the last change taken back",
      ...(now.record !== null && { replaces: now.record }),
    },
    changes: told.map((name) => ({
      from: partWords(name, now.parts[name], words),
      to: partWords(name, before.parts[name], words),
    })),
    at: now.at,
  });
}
