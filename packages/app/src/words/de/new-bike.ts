import type { Words } from "../en.ts";
import { plainFigure } from "../figures.ts";

export const newBike: Words["newBike"] = {
  title: "Mein Motorrad abstimmen",
  intro: "Tipp ein, was du weißt, und lass den Rest leer: Nicht bekannt ist auch eine Antwort.",
  name: "Name des Motorrads",
  nameHint: "Frei zu wählen: ein Name, ein Kennzeichen, der Besitzer.",
  strokes: "Motor",
  cylinders: "Zylinder",
  oneCylinder: "Ein Zylinder",
  twoCylinders: "Zwei, die abwechselnd zünden",
  two: "Zweitakter",
  four: "Viertakter",
  displacement: "Hubraum",
  displacementHint:
    "Wenn du ihn nicht weißt, genügt der Vergaserdurchlass darunter. Ohne beides wird mit 34 mm gerechnet.",
  bore: "Vergaserdurchlass",
  boreHint:
    "Auf der Motorseite, innen. Wenn du ihn nicht weißt, gilt der übliche für einen solchen Motor, 15 % nach beiden Seiten.",
  pilot: "Leerlaufdüse",
  main: "Hauptdüse",
  jetHint: "Die eingeschlagene Zahl.",
  unknownJet:
    "Nicht bekannt: In ihrem Bereich des Gases fehlt die Zahl, von der aus geändert wird, bis du sie abliest.",
  numbering: "Was die Düsenzahlen bedeuten",
  numberings: {
    bore: "Die Zahl ist die Bohrung in 1/100 mm",
    flow: "Die Zahl ist der Durchfluss",
    unsure: "Nicht sicher",
  },
  numberingHints: {
    bore: "Eine 175 hat ein Loch von 1,75 mm.",
    flow: "Düsen, die nach der Menge Kraftstoff benannt sind, die in einem Test durchläuft.",
    unsure:
      "Vorerst als Bohrung gerechnet. Wären es Durchflusswerte, würde ein Größenwechsel nur die Hälfte von dem bewirken, was hier steht.",
  },
  known: "Woher weißt du, was verbaut ist?",
  knownOptions: { "read by eye": "Selbst abgelesen", measured: "Gemessen", told: "Nur gehört" },
  needleFold: "Düsennadel und Clip",
  needleCost:
    "Nicht bekannt: Was ein Umsetzen des Clips bewirkt, lässt sich nicht sagen, darum behält die Mitte, 1/4 bis 3/4, ein breites Band.",
  marks: "Kennung auf der Düsennadel",
  grooves: "Kerben darauf",
  clip: "Kerbe, in der der Clip sitzt",
  clipHint: "Kerbe 1 ist die oberste, am stumpfen Ende.",
  needleJet: "Bohrung der Nadeldüse",
  slideFold: "Schieber und Schraube",
  slideCost:
    "Nicht bekannt: Von zu bis 1/4 bleiben Schieber und Schraube aus dem Rat heraus, bis du nachsiehst.",
  cutaway: "Ausschnitt des Schiebers",
  cutawayHint: "Höhe der Aussparung auf der Filterseite in mm oder die Zahl auf dem Schieber.",
  screw: "Auf welcher Seite des Schiebers sitzt die kleine Schraube?",
  screws: { air: "Filterseite", fuel: "Motorseite", unsure: "Nicht sicher" },
  screwHints: {
    air: "Eine Luftschraube: heraus ist magerer.",
    fuel: "Eine Gemischschraube: heraus ist fetter.",
    unsure: "Ihre Umdrehungen zählen nicht, bis du nachsiehst.",
  },
  turns: "Umdrehungen offen, ab leicht aufsitzend",
  placeFold: "Wo und in welcher Luft gefahren wird",
  placeCost:
    "Nicht bekannt: Gerechnet wird mit einem Normaltag und breitem Band. Schon Höhe und Temperatur machen es viel schmaler.",
  place: "Name des Ortes",
  height: "Höhe über dem Meer",
  temperature: "Lufttemperatur dort",
  temperatureHint: "Wie sie war, als es zuletzt so lief.",
  fuelFold: "Kraftstoff",
  fuelCost: "Nicht bekannt: Gerechnet wird mit üblichem Tankstellenbenzin.",
  ethanol: "Alkohol im Benzin",
  ethanols: { "0": "Keiner", "5": "E5", "10": "E10", unsure: "Nicht sicher" },
  oil: "Öl im Benzin",
  oilHint: "Wie du es sagen würdest: 1:40, 20 ml/l, 2 % des Kraftstoffs, keins.",
  useFold: "Wofür es gebraucht wird",
  use: "Einsatz",
  useHint: "Wandern, Enduro, Motocross, Arbeit … in deinen Worten.",
  keep: "Speichern und weiter",
  kept: "Gespeichert. Hier steht, was ein solches Motorrad üblicherweise tut.",
  missing: "Sag, welchen Motor es hat: Zweitakter oder Viertakter.",
  look: "Sieh dir die roten Felder an: Dort kann etwas nicht stimmen.",
  number: "Das ist keine Zahl.",
  range: (least, most, unit) =>
    `Es sollten ${plainFigure(least, "de")} bis ${plainFigure(most, "de")} ${unit} sein.`,
  heightWrong:
    "Das ist keine Höhe. Tipp Meter oder Fuß ein: 640 m, 2100 ft. Es sollten −500 bis 6000 m sein.",
  temperatureWrong:
    "Das ist keine Temperatur. Tipp sie ein wie 14 °C oder 57F. Es sollten −60 bis 60 °C sein.",
  grooves12: "Zähl die Kerben: 1 bis 12.",
  grooveBeyond: (grooves) => `Die Düsennadel hat ${grooves} Kerben. Zähl vom stumpfen Ende an.`,
  bikeOf: (strokes, cc) =>
    `${cc === null ? "Mein" : Math.round(cc)}${cc === null ? " " : "er "}${strokes === 2 ? "Zweitakter" : "Viertakter"}`,
};
