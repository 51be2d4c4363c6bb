import type { CoreWords } from "../core-words.ts";

/** Headings of the sign catalogue. */
export const signSections: CoreWords["signSections"] = {
  "starting-and-idle": "Starten und Leerlauf",
  closing: "Gas schließen",
  opening: "Gas öffnen",
  "part-throttle": "Teilgas",
  "wide-open": "Vollgas",
  "temperature-and-smell": "Hitze, Geruch und Kraftstoff",
  "parts-seen": "Kerze und Kolben",
  "smoke-and-consumption": "Rauch, Öl und Verbrauch",
  "engine-tests": "Was ein Test zeigt",
};
