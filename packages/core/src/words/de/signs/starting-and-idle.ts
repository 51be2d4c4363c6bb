import type { SignTexts } from "../../core-words.ts";

/** Starting and idle. */
export const startingAndIdle: SignTexts<"starting-and-idle"> = {
  "starts-on-choke-runs-clean-soon": {
    words: "Kalt: startet mit Choke, läuft bald sauber",
    description:
      "Ein paar Tritte mit Choke, eine halbe Minute fettes Laufen, dann nimmt er ohne Choke Gas an.",
    when: "Erster Start des Tages, unter etwa 20 °C",
  },
  "cold-start-without-choke": {
    words: "Kalt: startet ganz ohne Choke",
    description: "Springt eiskalt an, ohne den Choke anzufassen, und läuft gleich weiter.",
    notToBeTakenFor: "Ein Start mit noch warmem Motor, oder nach dem Tippen des Schwimmers.",
    when: "Erster Start des Tages, unter etwa 15 °C",
  },
  "runs-only-on-choke": {
    words: "Läuft nur mit Choke",
    description:
      "Heiß, und er geht trotzdem aus, sobald der Choke zu ist; mit Choke hält er Leerlauf und nimmt etwas Gas an.",
    notToBeTakenFor:
      "Ein verkehrt herum bedienter Choke: Manche zieht man zum Einschalten, andere drückt man.",
    when: "Motor heiß, zu bis 1/4",
  },
  "hot-start-needs-open-throttle": {
    words: "Heiß: startet nur mit ganz offenem Gas",
    description:
      "Nach einem Halt kommt er erst, wenn das Gas offen gehalten wird; dann räuspert er sich mit Blubbern und Rauch.",
    notToBeTakenFor: "Gasstöße vor dem Treten, die auch einen guten Motor absaufen lassen.",
    when: "Ein paar Minuten nach einem heißen Halt",
  },
  "hot-start-needs-choke": {
    words: "Heiß: startet nur mit Choke",
    description: "Warm vom Fahren, und ohne Choke kommt er nicht; kein Benzingeruch, kein Rauch.",
    notToBeTakenFor: "Hahn noch zu, oder Kraftstoff aus der Kammer verkocht.",
    when: "Ein paar Minuten nach einem heißen Halt",
  },
  "petrol-drips-from-overflow": {
    words: "Benzin tropft aus dem Überlaufschlauch",
    description:
      "Aufrecht mit offenem Hahn tropft oder läuft Benzin aus dem Schlauch unter der Schwimmerkammer.",
    notToBeTakenFor: "Ein paar Tropfen, nachdem es auf der Seite lag.",
    when: "Aufrecht abgestellt, Hahn auf",
  },
  "floods-after-a-fall": {
    words: "Säuft nach einem Sturz ab",
    description:
      "Nach dem Liegen auf der Seite braucht er viele Tritte, die Kerze kommt nass heraus, dann läuft er wie zuvor.",
    when: "Gleich nach einem Sturz; sagt fast nichts über die Düsen",
  },
  "idles-steadily": {
    words: "Ruhiger Leerlauf",
    description:
      "Ein gleichmäßiger Takt, der eine halbe Minute oder länger weder steigt noch sackt, Hände weg.",
    notToBeTakenFor: "Ein sehr hoher Leerlauf, der einen schlechten verdeckt.",
    when: "Warm, stehend, über 30 s Hände weg",
  },
  "idle-loads-up": {
    words: "Leerlauf überfettet und stirbt",
    description:
      "Fängt gut an, wird dann langsamer und fetter, stolpert oder geht nach 20 bis 60 s aus; ein Gasstoß macht ihn mit Blubbern und Rauch frei.",
    notToBeTakenFor: "Ein zu niedrig eingestellter Leerlauf: Der geht ohne Blubbern aus.",
    when: "Warm, eine Minute stehend",
  },
  "idle-hunts": {
    words: "Leerlauf wandert auf und ab",
    description:
      "Der Leerlauf steigt und fällt alle paar Sekunden von selbst, leicht und unruhig, kein Rauch.",
    notToBeTakenFor: "Ein loser Schieber oder ein verschlissener Zug.",
    when: "Warm, stehend, Hände weg",
  },
  "idle-creeps-up-when-hot": {
    words: "Leerlauf steigt, wenn er heiß wird",
    description:
      "Warm richtig eingestellt; nach hartem Fahren dreht er deutlich schneller, ohne dass etwas angefasst wurde.",
    notToBeTakenFor: "Ein Zug, der beim Einlenken spannt.",
    when: "Gleich nach einer harten Fahrt",
  },
  "will-not-idle": {
    words: "Hält keinen Leerlauf, egal wie die Schraube steht",
    description: "Geht aus, sobald die Hand weg ist, wo auch immer die kleine Schraube steht.",
    notToBeTakenFor: "Eine zu weit herausgedrehte Anschlagschraube.",
    when: "Warm",
  },
  "idle-needs-stop-screw-far-in": {
    words: "Leerlauf nur mit weit hineingedrehter Anschlagschraube",
    description: "Der Schieber muss weit angehoben sein, damit er läuft; etwas weniger, und er geht aus.",
    notToBeTakenFor: "Ein müder Motor.",
    when: "Warm",
  },
  "idle-suddenly-high": {
    words: "Leerlauf plötzlich hoch, letzte Fahrt war er gut",
    description:
      "Heult oder liegt von einer Fahrt zur nächsten weit über dem alten Leerlauf, ohne dass etwas verstellt wurde.",
    notToBeTakenFor: "Eine verdrehte Anschlagschraube: zuerst danach sehen.",
    when: "Jederzeit",
  },
  "idle-better-with-tap-shut": {
    words: "Leerlauf wird mit geschlossenem Hahn kurz besser",
    description:
      "Fetter, rauchiger Leerlauf, der ruhiger wird und etwas steigt, sobald der Hahn zu ist, bis die Kammer leer wird.",
    when: "Warm, stehend, Hahn eine Minute zu",
  },
  "spits-back-at-the-mouth": {
    words: "Spuckt Kraftstoff aus der Vergaseröffnung zurück",
    description:
      "Ein Kraftstoffnebel steht vor der Öffnung oder macht die Filterseite nass; startet schlecht und zieht schwach.",
    when: "Filter ab, Leerlauf und Gasstöße, mit den Augen weit weg",
  },
  "kicks-over-easily": {
    words: "Lässt sich leicht durchtreten",
    description: "Kickstarter oder Anlasser dreht ihn mit wenig Widerstand durch, und er springt träge an.",
    notToBeTakenFor: "Eine Dekompression, die ihre Arbeit tut.",
    when: "Motor aus, Gas ganz offen",
  },
};
