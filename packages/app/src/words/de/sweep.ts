import type { Words } from "../en.ts";

export const sweep: Words["sweep"] = {
  title: "Bester Leerlauf nach Gehör",
  back: "Zuhören",
  open: "Besten Leerlauf mit der kleinen Schraube finden",
  caution:
    "Nur im Freien: Abgas tötet. Motorrad auf dem Ständer, Leerlauf eingelegt, eine Hand am Notaus, Ärmel und Schraubendreher weg von Kette und heißem Rohr. Sofort abstellen, wenn er hochdreht.",
  heat: "Ein Motor, den der Fahrtwind kühlt, hat im Stand keinen: Stell ein Gebläse davor und lass ihn nach fünf Minuten abkühlen.",
  made: "Nur mit künstlichen Geräuschen erprobt. Noch wurde damit kein wirklicher Motor gemessen: Vertraue zuerst einem Drehzahlmesser und deinen Ohren.",
  sides: {
    air: "Luftschraube, auf der Filterseite: heraus ist magerer, hinein ist fetter.",
    fuel: "Gemischschraube, auf der Motorseite: heraus ist fetter, hinein ist magerer.",
  },
  noSide:
    "Niemand hat gesagt, auf welcher Seite des Schiebers die kleine Schraube sitzt. Sieh nach und gib es zuerst an.",
  describe: "Angeben, welche Schraube er hat",
  guide:
    "Motor warm, Choke aus, Leerlauf etwas höher gestellt und dann in Ruhe gelassen. Telefon neben dem Schalldämpfer. Einen Schritt drehen, Richtung antippen, Hände weg: Das Telefon merkt sich den Leerlauf, sobald er steht.",
  now: "Die Schraube steht jetzt auf",
  count: "Zähle zuerst: hinein, bis sie leicht anliegt, dann wieder heraus.",
  out: (turns) => `${turns} heraus`,
  step: "Jeder Schritt",
  quarter: "Eine Vierteldrehung",
  eighth: "Eine Achteldrehung",
  in: (turns) => `Hinein, auf ${turns}`,
  outTo: (turns) => `Heraus, auf ${turns}`,
  turned: "Gedreht:",
  start: "Anfangen",
  stop: "Anhalten",
  rpm: "1/min",
  settling: "Hände weg. Warten, bis der Leerlauf steht …",
  holding: (seconds, of) => `Steht: ${seconds} von ${of} s`,
  marked: (turns, rpm) => `Gemerkt: ${turns} heraus, ${rpm} 1/min. Weiterdrehen.`,
  octave:
    "Das klingt nach der halben oder doppelten Drehzahl von vorhin und wird nicht gemerkt. Warte, oder versetze das Telefon.",
  back1: "Letzten Wert zurücknehmen",
  again: "Von vorn",
  marks: "Gemerkt",
  turns: "Umdrehungen heraus",
  idle: "Leerlauf, 1/min",
  picture: "Leerlauf über den Umdrehungen der Schraube",
  why: {
    "too-few-marks": "Mindestens drei Stellungen. Weiterdrehen.",
    "unclear-peak": "Noch kein klarer Bestwert. Weiterdrehen, auf beiden Seiten über ihn hinaus.",
  },
  atEnd: {
    in: "An der innersten Stellung noch am besten: weiter hinein.",
    out: "An der äußersten Stellung noch am besten: weiter heraus.",
  },
  best: (turns, spread, rpm) =>
    `Bester Leerlauf bei ${turns} Umdrehungen heraus (± ${spread}), ${rpm} 1/min.`,
  band: (inner, outer, width) =>
    `50 1/min weniger bei ${inner} und bei ${outer}: ${width} Umdrehungen breit.`,
  oneEdge: (turns) => `50 1/min weniger bei ${turns}; auf der anderen Seite wurde nicht so weit gedreht.`,
  noEdge: "Auf keiner Seite wurde gedreht, bis der Leerlauf um 50 gefallen war.",
  flat: (rpm, turns) => `Nur ${rpm} 1/min Unterschied über ${turns} Umdrehungen.`,
  keepAt: (turns) => `Behalten; die Schraube steht jetzt auf ${turns}`,
  keepBack: (turns) => `Behalten; ich habe sie zurück auf ${turns} gestellt`,
  keep: "Das behalten",
  kept: "Behalten",
  undo: "Rückgängig",
  undone: "Zurückgenommen.",
};
