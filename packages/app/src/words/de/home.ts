import type { Words } from "../en.ts";

export const home: Words["home"] = {
  title: "Motorräder",
  first: "Jetwright hilft, einen Schiebervergaser abzustimmen: neben dem Motorrad und ohne Netz.",
  firstNext:
    "Sag, was verbaut ist, fahr, berichte, was es tut. Jetwright sagt, was als Nächstes zu tun ist und warum.",
  setUp: "Mein Motorrad abstimmen",
  another: "Noch ein Motorrad abstimmen",
  example: "Eine Beispielwerkstatt ansehen",
  exampleComes: "Die Beispielwerkstatt kommt…",
  exampleIn: "Die Beispielwerkstatt ist da: erfundene Motorräder, zum Ausprobieren.",
  exampleUndo: "Wieder wegnehmen",
  exampleNotHere: "Die Beispielwerkstatt ist noch nicht auf diesem Gerät: Öffne die Seite einmal mit Netz.",
  away: "weggelegt",
  drawer: "Schublade",
  start: "Grundabstimmung",
  orders: (open) => (open === 0 ? "Aufträge" : `Aufträge: ${open} offen`),
  more: "Mehr",
  cc: (cc) => `${Math.round(cc)} cm³`,
  strokes: (strokes) => (strokes === 2 ? "Zweitakter" : "Viertakter"),
  state: {
    stopped: "stillgelegt: zuerst die Ursache finden",
    "not-ridden": "geändert, noch nicht gefahren",
    right: "richtig",
    "in-work": "in Arbeit",
    "nothing-told": "noch nicht gefahren",
  },
};
