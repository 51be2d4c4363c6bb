import type { Words } from "../en.ts";
import { plainFigure } from "../figures.ts";

const plain = (x: number): string => plainFigure(x, "de");

export const start: Words["start"] = {
  title: "Grundabstimmung",
  back: "Motorräder",
  lead: "Für ein Motorrad, das hier noch niemand abgestimmt hat: Was der Anrufer sagen kann, reicht.",
  strokes: "Der Motor",
  two: "Zweitakter",
  four: "Viertakter",
  displacement: "Hubraum",
  displacementHint: "Was dieser eine Vergaser versorgt",
  cc: "cm³",
  bore: "Vergaserdurchlass",
  boreHint: "Auf der Motorseite gemessen; leer lassen, wenn nicht bekannt",
  mm: "mm",
  use: "Wofür",
  uses: { trail: "Wandern", enduro: "Enduro", race: "Rennen" },
  notKnown: "nicht bekannt",
  screw: "Die kleine Schraube",
  airScrew: "Filterseite",
  fuelScrew: "Motorseite",
  numbering: "Düsenzahlen bedeuten",
  boreNumber: "Bohrung",
  flowNumber: "Durchfluss",
  height: "Höhe des Ortes",
  temperature: "Temperatur",
  wrongNumber: "Tipp eine Zahl ein oder lass es leer.",
  wrongHeight: "Tipp eine Höhe ein, etwa 450 m oder 1500 ft.",
  wrongTemperature: "Tipp eine Temperatur ein, etwa 18 C oder 65 F.",
  go: "Ausrechnen",
  result: "Fang an mit",
  parts: {
    main: "Hauptdüse",
    pilot: "Leerlaufdüse",
    clip: "Clip",
    screw: "Schraube",
    cutaway: "Ausschnitt",
  },
  numbered: (part, numbering) => `${part}, Zahl ist ${numbering}`,
  clip: (groove) => `Kerbe ${plain(groove)} von 5, von oben`,
  turns: (turns) => `${plain(turns)} Umdrehungen offen`,
  cutaway: (mm) => `${plain(mm)} mm`,
  spread: (low, high) => `neun von zehn landen zwischen ${low} und ${high}`,
  needle: "Düsennadel",
  know: "Zuerst zu wissen",
  rests: "Worauf es ruht",
  restsOn: (part, words) => `${part}: ${words}`,
  shop: (count) =>
    count === 0
      ? "Diese Werkstatt hat noch keine Abstimmung als richtig vermerkt: Es ruht allein auf der Theorie."
      : count === 1
        ? "Eine Abstimmung, die diese Werkstatt als richtig vermerkt hat, lag vor."
        : `${count} Abstimmungen, die diese Werkstatt als richtig vermerkt hat, lagen vor.`,
  notUsed: "Nicht genutzt",
  firstRide: "Erste Fahrt",
  text: "Zum Senden",
};
