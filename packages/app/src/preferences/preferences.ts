import type { Database } from "../store/database.ts";
import { type Watched, watched } from "../store/value.ts";
import type { Language } from "../words/figures.ts";
import { languageWanted } from "../words/languages.ts";

/** What a person chose once on this device. */
export interface Preferences {
  readonly theme: "auto" | "paper" | "night";
  readonly temperature: "C" | "F";
  readonly height: "m" | "ft";
  readonly pressure: "hPa" | "inHg";
  /** Larger targets, 15 mm. */
  readonly gloves: boolean;
  readonly hand: "right" | "left";
  readonly language: Language;
  /** Who works here. */
  readonly person: string;
  /** When the log was last copied to a file, milliseconds since 1970. */
  readonly lastCopyAt: number | null;
}

export const USUAL: Preferences = {
  theme: "auto",
  temperature: "C",
  height: "m",
  pressure: "hPa",
  gloves: false,
  hand: "right",
  language: "en",
  person: "",
  lastCopyAt: null,
};

/** Preferences kept in this device's database; writing one writes it through. */
export class PreferenceStore {
  readonly now: Watched<Preferences>;
  readonly #database: Database;

  private constructor(database: Database, first: Preferences) {
    this.#database = database;
    this.now = watched(first);
  }

  /** What was chosen before; until somebody chose, the first language of the browser that there are words in. */
  static async open(database: Database, asked = navigator.languages): Promise<PreferenceStore> {
    const kept = await database.settings.get("preferences").catch(() => undefined);
    return new PreferenceStore(database, {
      ...USUAL,
      language: languageWanted(asked),
      ...(kept?.value as Partial<Preferences> | undefined),
    });
  }

  set(change: Partial<Preferences>): void {
    const value = { ...this.now.get(), ...change };
    this.now.set(value);
    void this.#database.settings.put({ key: "preferences", value }).catch(() => undefined);
  }
}
