import type { Words } from "../en.ts";

export const right: Words["right"] = {
  mark: "So läuft es richtig",
  hint: "Nach einer guten Fahrt in der jetzt notierten Luft antippen. Von hier aus rechnen das Blatt, die Tabelle und der Startpunkt für das nächste Motorrad.",
  airFirst:
    "Wenn es so richtig läuft, notiere zuerst die Luft von heute: Richtig in der einen Luft ist nicht richtig in einer anderen.",
  noteAir: "Luft notieren",
  marked: "Aufgeschrieben: richtig in dieser Luft.",
  undo: "Rückgängig",
  undone: "Zurückgenommen.",
};
