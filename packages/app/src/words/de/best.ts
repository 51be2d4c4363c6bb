import type { Words } from "../en.ts";

export const best: Words["best"] = {
  title: "Welche Abstimmung ist dort die beste?",
  lead: "Höhe und Temperatur dorthin ziehen, wo gefahren wird. Die Liste wiegt alles, was von diesem Motorrad erzählt wurde, mit Fehlern und Zweifeln.",
  height: "Höhe",
  temperature: "Temperatur",
  from: "Teile zur Auswahl",
  order: "Reihenfolge",
  runs: "Läuft am besten",
  quick: "Arbeit zählt mit",
  throttle: "Vollgas",
  safe: "Erlaubt",
  any: "Zurückgehalten",
  top: {
    free: "Vollgas: wohl nicht mager.",
    "seconds only": "Vollgas: nur wenige Sekunden, bis es bewiesen ist.",
    "stay below 3/4": "Oben vielleicht mager: unter 3/4 bleiben.",
  },
  asFitted: "Wie eingebaut",
  nothingToDo: "Nichts zu ändern.",
  keptAs: (place) => (place === 1 ? "Sie ist die beste von allen." : `Sie ist Nummer ${place} der Liste.`),
  minutes: (minutes) => `${minutes} Minuten, Probefahrt eingeschlossen.`,
  toBuy: "Zu kaufen.",
  mixture: (opening, percent) => {
    const side = percent > 0 ? "fett" : "mager";
    const where = opening === "closed" ? "zu" : opening === "full" ? "voll" : opening;
    return Math.abs(percent) < 1 ? `${where}: richtig` : `${where}: ${Math.abs(percent)} % ${side}`;
  },
  searched: (count) =>
    `${count} Abstimmungen gewogen. Die Prozente sind die Mitte dessen, was wahrscheinlich ist.`,
  none: "Nichts aus der Auswahl macht mageres Vollgas in dieser Luft unwahrscheinlich. Größen aus dem Handel zulassen oder „Zurückgehalten“ wählen und unter 3/4 bleiben, bis es oben bewiesen ist.",
  list: "Die beste zuerst",
  show: (rest) => `${rest} weitere`,
};
