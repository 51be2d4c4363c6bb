import type { Words } from "../en.ts";

export const photos: Words["photos"] = {
  label: "Foto davon",
  labelNow: "Foto davon, wie es jetzt ist",
  plug: "Bild der Zündkerze",
  take: "Foto machen",
  choose: "Foto wählen",
  working: "Einen Augenblick …",
  hint: "Wenn du magst. Es wird verkleinert, und der Ort der Aufnahme wird weggelassen.",
  kept: "Das Foto ist auf diesem Telefon gespeichert.",
  unprotected:
    "Kein Foto gespeichert: Diese Seite wurde über eine ungeschützte Verbindung geöffnet, und dort gibt der Browser Fotos keinen Fingerabdruck. Alles andere geht.",
  full: "Kein Foto gespeichert: Der Speicher des Telefons nahm es nicht an. Alles andere ist gespeichert.",
  unreadable: (name) =>
    `Kein Foto gespeichert: Dieser Browser kann „${name}“ nicht als Foto öffnen. Vielleicht ist es beschädigt, zu groß für dieses Telefon oder von anderer Art. Mach es neu oder speicher es zuerst als JPEG. Alles andere ist gespeichert.`,
  tooLarge: (name) =>
    `Kein Foto gespeichert: „${name}“ ist größer als 100 MB. Verkleiner es zuerst. Alles andere ist gespeichert.`,
  picture: "Foto",
  open: (what, day, count) =>
    count === 1 ? `Foto: ${what}, ${day}` : `${count} Fotos: ${what}, das neueste vom ${day}`,
  notHere: "nicht hier",
  coming: "kommt",
  lack: {
    missing:
      "Dieses Foto ist nicht auf diesem Telefon: Es wurde auf einem anderen gemacht oder hier gelöscht. Was dazu geschrieben steht, bleibt.",
    coming: "Dieses Foto ist auf dem Weg aus der Werkstatt …",
    "not-there":
      "Dieses Foto ist nicht auf diesem Telefon, und die Werkstatt hat es noch nicht: Es kommt, wenn das Telefon, das es gemacht hat, die Werkstatt erreicht hat.",
    away: "Dieses Foto ist nicht auf diesem Telefon, und die Werkstatt ist gerade nicht zu erreichen. Sieh wieder nach, wenn sie es ist.",
  },
  by: (person) => `von ${person}`,
  newer: "Neuer",
  older: "Älter",
  place: (at, all) => `${at} von ${all}`,
  larger: "Größer",
  whole: "Das ganze Foto",
  save: "Als Datei speichern",
  fileName: (day) => `jetwright-foto-${day}.jpg`,
  remove: "Dieses Foto entfernen",
  removed: "Entfernt. Nach einem Tag wird es auf diesem Telefon gelöscht.",
  undo: "Rückgängig",
  undone: "Das Foto ist wieder da.",
  close: "Schließen",
  stored: (count, size) => `${count === 1 ? "1 Foto" : `${count} Fotos`} auf diesem Telefon: ${size}.`,
  notInCopy:
    "Die Kopie nennt die Fotos und enthält sie nicht. Jedes lässt sich dort, wo es gezeigt wird, als eigene Datei speichern.",
};
