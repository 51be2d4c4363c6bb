import type { Words } from "../en.ts";

export const lookOver: Words["lookOver"] = {
  title: "Einmal durchsehen",
  about: (minutes) => `etwa ${Math.round(minutes)}\u00a0min`,
  intro:
    "Ein Blick nach dem anderen, in dieser Reihenfolge, vom kalten Motor an. Jedes Tippen ist gespeichert; was du auslässt, bleibt offen.",
  how: "Wie",
  fine: "Gut",
  notFine: "Nicht gut",
  skip: "Auslassen",
  of: (choice, look) => `${choice}: ${look}`,
  which: "Was ist nicht gut?",
  back: "Zurück",
  mend: "Wenn es nicht gut ist:",
  mended: "In Ordnung gebracht.",
  left: (count) => (count === 1 ? "Noch 1 Blick." : `Noch ${count} Blicke.`),
  allFine: "Es wurde nichts gefunden.",
  found: (faults) => `Gefunden: ${faults.join("; ")}. Das wird zuerst behoben.`,
  enough: "Genug für jetzt: nächster Schritt",
  next: "Nächster Schritt",
};
