import type { CoreWords } from "../core-words.ts";

/** Headings of the sign catalogue. */
export const signSections: CoreWords["signSections"] = {
  "starting-and-idle": "Arranque y ralentí",
  closing: "Al cerrar el gas",
  opening: "Al abrir el gas",
  "part-throttle": "A medio gas",
  "wide-open": "A todo gas",
  "temperature-and-smell": "Calor, olor y gasolina",
  "parts-seen": "Bujía y pistón",
  "smoke-and-consumption": "Humo, aceite y consumo",
  "engine-tests": "Lo que muestra una prueba",
};
