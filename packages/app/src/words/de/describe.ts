import type { Words } from "../en.ts";

export const describe: Words["describe"] = {
  title: "Das Motorrad selbst",
  intro: "Was hier gesagt ist, gilt für die ganze Geschichte des Motorrads.",
  keep: "Speichern",
  kept: "Gespeichert.",
  nothing: "Nichts wurde geändert.",
  putAway: "Motorrad weglegen",
  putAwayHint: "Es rückt ans Ende der Liste. Seine Geschichte bleibt.",
  backAgain: "Zurück in die Liste holen",
  away: "Weggelegt.",
  back: "Wieder in der Liste.",
  undo: "Rückgängig",
  undone: "Zurückgenommen.",
};
