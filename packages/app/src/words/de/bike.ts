import type { Words } from "../en.ts";

/** "bei geschlossenem Gas", "von zu bis 1/8", "ab 3/4". */
function stretch(from: string, to: string): string {
  if (from === to) {
    if (from === "closed") return "bei geschlossenem Gas";
    return from === "full" ? "bei Vollgas" : `bei ${from}`;
  }
  if (from === "closed" && to === "full") return "von zu bis Vollgas";
  if (to === "full") return `ab ${from}`;
  return from === "closed" ? `von zu bis ${to}` : `von ${from} bis ${to}`;
}

export const bike: Words["bike"] = {
  bikes: "Motorräder",
  bar: { label: "Dieses Motorrad", ridden: "Gefahren", next: "Nächster Schritt", fitted: "Verbaut" },
  aside: (ride, temperature, height) =>
    [ride === 0 ? "noch nicht gefahren" : `Fahrt ${ride}`, temperature, height].filter(Boolean).join(" · "),
  noBike: "Dieses Motorrad gibt es nicht",
  noSuch:
    "Kein Eintrag auf diesem Gerät handelt davon. Vielleicht steht es auf einem anderen Telefon: Hol dessen Kopie unter Mehr, Sicherung herein.",
  notDescribed:
    "Niemand hat gesagt, was für einen Motor dieses Motorrad hat. Sag es unter Das Motorrad selbst, dann beginnt der Rat.",
  openOrder: (complaint) => (complaint === "" ? "Auftrag offen" : `Auftrag: „${complaint}“`),
  picture: "Gemisch jetzt",
  pictureRow: (opening) =>
    opening === "closed" ? "Gas zu" : opening === "full" ? "Vollgas" : `${opening} Gas`,
  opening: "Gas",
  mixture: "Gemisch",
  doubt: "plus/minus",
  percent: (x) => `${Math.abs(Math.round(x))} %`,
  stretch,
  both: (stretches) =>
    stretches.length < 2
      ? stretches.join("")
      : `${stretches.slice(0, -1).join(", ")} und ${stretches.at(-1)}`,
  leans: (leaning, sure) =>
    leaning === "rich" ? (sure ? "Fett" : "Wohl fett") : sure ? "Mager" : "Wohl mager",
  rightIs: "Richtig",
  allRight: "Es läuft von zu bis Vollgas richtig.",
  openIs: "Noch nicht bekannt",
  nothingTold: "Niemand hat bisher gesagt, wie es läuft.",
  usual:
    "Das Bild zeigt, was ein solches Motorrad üblicherweise tut und wie weit das danebenliegen kann. Der erste Fahrbericht macht es zu deinem.",
  nothingSettled:
    "Was bisher gesagt wurde, klärt nicht, ob es fett oder mager ist. Der nächste Schritt klärt es.",
  rightAt: (day, air) => `Als richtig vermerkt am ${day}${air === "" ? "" : `, bei ${air}`}.`,
  twoSided: (where) => `${where} kann es beides sein: fett oder mager. Das klärt ein Test, kein Raten.`,
  suspect: (what, chance) =>
    chance >= 0.6
      ? `Am wahrscheinlichsten: ${what}, keine Düse.`
      : chance >= 0.3
        ? `Gut möglich: ${what}. Such danach, bevor du eine Düse anfasst.`
        : `Auch denkbar: ${what}.`,
  suspectsMore: "Weitere Verdachtsfälle",
  next: "Als Nächstes",
  minutes: (minutes) => `${Math.round(minutes)} Minuten`,
  nextIn: (minutes) => `Als Nächstes, ${Math.round(minutes)} Minuten`,
  showMe: "Zeig mir, wie",
  assumed: (count) => (count === 1 ? "Eine Sache ist angenommen" : `${count} Dinge sind angenommen`),
  leftOut: (count) => (count === 1 ? "Ein Eintrag ist weggelassen" : `${count} Einträge sind weggelassen`),
  rough: "Die Rechnung hörte früh auf: Nimm das Bild für gröber als gezeichnet.",
  fitted: "Was verbaut ist",
  edit: "Ändern oder berichtigen",
  notKnown: "nicht bekannt",
  links: "Mehr zu diesem Motorrad",
  describe: "Das Motorrad selbst",
  assumption: {
    "nothing-fitted": "Niemand hat gesagt, was verbaut ist. Sieh nach und schreib es unter Verbaut auf.",
    "numbering-assumed":
      "Was die Düsenzahlen bedeuten, ist nicht gesagt: Sie gelten als Bohrung in 1/100 mm. Sag es unter Das Motorrad selbst.",
    "screw-side-unknown":
      "Niemand hat gesagt, auf welcher Seite des Schiebers die Schraube sitzt, darum zählen ihre Umdrehungen nicht. Sag es unter Das Motorrad selbst.",
    "air-assumed":
      "Keine Luft ist notiert: Gerechnet wird mit einem Normaltag und breitem Band. Notier Temperatur und Höhe unter Luft.",
    "fuel-assumed": "Kein Kraftstoff ist notiert: Gerechnet wird mit üblichem Tankstellenbenzin.",
  },
  air: "Luft",
  trip: "Fahrt über mehrere Höhen",
  chart: "Tabelle nach Höhe und Temperatur",
  best: "Beste Abstimmungen für eine Luft",
  sheet: "Blatt für den Fahrer",
  listen: "Dem Motor zuhören",
  history: "Geschichte",
  order: "Auftrag",
  here: "Was lief hier beim letzten Mal?",
  ask: "Einen Freund fragen",
  lately: "Zuletzt",
  allHistory: "Alles davon",
};
