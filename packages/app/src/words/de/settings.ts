import type { Words } from "../en.ts";

export const settings: Words["settings"] = {
  title: "Mehr",
  bikes: "Motorräder",
  person: "Wer hier arbeitet",
  personHint: "Steht ab jetzt neben jedem Eintrag, damit andere sehen, wer was eingebaut hat.",
  theme: "Seite",
  themes: { auto: "Wie das Telefon", paper: "Papier", night: "Nacht" },
  temperature: "Temperatur",
  height: "Höhe",
  pressure: "Luftdruck",
  otherUnit: "Jedes Feld nimmt auch die andere Einheit: Tipp 75F, 5000 ft oder 29,92 inHg.",
  gloves: "Handschuhe",
  glovesOn: "Mit Handschuhen: größere Knöpfe",
  glovesOff: "Bloße Hände",
  hand: "Die Hand, die das Telefon hält",
  right: "Rechts",
  left: "Links",
  language: "Sprache",
  shop: "Werkstatt und ihre anderen Telefone",
  backup: "Sicherung und Kopien",
  cautions: "Alle Warnhinweise",
  remove: "Daten einer Person entfernen",
  cautionsTitle: "Warnhinweise",
  cautionsIntro: "Jeder steht noch einmal bei dem Schritt, zu dem er gehört.",
  exampleLeave: "Beispielwerkstatt wegnehmen",
  exampleGone: "Die Beispielwerkstatt ist weg. Deine eigenen Motorräder sind, wie sie waren.",
  exampleGoneInPart:
    "Weg, bis auf die Beispielmotorräder, zu denen du etwas eingetragen hast: Sie sind vollständig, die Schublade auch.",
  exampleAtShop:
    "Der Server der Werkstatt hat das Beispiel schon, darum lässt es sich hier nicht wegnehmen. Stell seine Motorräder einzeln weg.",
  exampleUndo: "Rückgängig",
};
