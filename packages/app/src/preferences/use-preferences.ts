import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { useWatched } from "../store/value.ts";
import type { PreferenceStore, Preferences } from "./preferences.ts";

export const PreferencesContext = createContext<PreferenceStore | null>(null);

/** What was chosen, and how to choose otherwise. */
export function usePreferences(): readonly [Preferences, (change: Partial<Preferences>) => void] {
  const store = useContext(PreferencesContext);
  if (store === null) throw new RangeError("No preferences above this screen");
  return [useWatched(store.now), (change) => store.set(change)];
}
