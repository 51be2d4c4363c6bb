import type { AskWords } from "../en/ask.ts";

/** The block of text for a friend, and its screen, in German. */
export const ask: AskWords = {
  title: "Einen Freund fragen",
  lead: "Alles, was dir jemand, der hilft, zurückfragen wird, in einem Block.",
  copy: "Text kopieren",
  copied: "Kopiert. Füg ihn in eine Nachricht ein.",
  notCopied: "Dieser Browser wollte nicht kopieren. Markier den Text und kopier ihn von Hand.",
  share: "Teilen",
  extra: "Deine Frage",
  extraHint: "Kommt obenan, in deinen Worten",
  text: "Der Text",
  back: "Motorrad",
  heading: (name) => `Frage zur Abstimmung: ${name}`,
  notKnown: "nicht bekannt",
  numbered: (n, title, answer) => `${n}. ${title}: ${answer}`,
  items: {
    fitted: "Was jetzt verbaut ist",
    air: "Höhe und Luft, in der gefahren wird",
    opening: "Was es tut, bei welcher Gasstellung",
    fuel: "Kraftstoff, Öl und Mischungsverhältnis",
    before: "Was kurz davor geändert wurde",
    mechanics: "Ist es wirklich der Vergaser: Prüfungen bisher",
    plug: "Zündkerze: Foto, Typ, wie das Kerzenbild entstand",
    choke: "Was etwas Choke bewirkt",
    carburetor: "Welcher Vergaser",
    float: "Schwimmerstand, Schläuche, Tankbelüftung",
    age: "Alter von Kolbenringen, Wellendichtringen und Membranen",
    history: "Wer ihn abgestimmt hat und was vorher verbaut war",
    riding: "Wie gefahren wird, Gewicht des Fahrers",
  },
  engine: "Motor",
  tests: "Tests bisher",
  nothingChanged: "nichts aufgeschrieben",
  noneDone: "keine aufgeschrieben",
  wasBefore: (words) => `vor der letzten Änderung: ${words}`,
  setUpBy: (person) => `zuletzt eingebaut von ${person}`,
  vent: (vent) =>
    vent === "airbox"
      ? "Schwimmerkammer in den Luftfilterkasten belüftet"
      : "Schwimmerkammer ins Freie belüftet",
  genuine: "Original oder Nachbau nicht bekannt",
  weight: "Gewicht des Fahrers nicht bekannt",
  photos: (count) => (count === 1 ? "1 Foto auf diesem Telefon" : `${count} Fotos auf diesem Telefon`),
  onDay: (day, words) => `${day}: ${words}`,
};
