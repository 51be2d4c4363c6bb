import type { SignTexts } from "../../core-words.ts";

/** Riding at part throttle. */
export const partThrottle: SignTexts<"part-throttle"> = {
  "pulls-smoothly": {
    words: "Zieht bei diesem Gas sauber",
    description:
      "Hält bei ruhiger Hand einen gleichmäßigen Ton und zieht beim Aufziehen stärker; kein Ruckeln, kein Blubbern, kein Rasseln.",
    when: "Warm, gehalten und aufgezogen im 2. bis 4. Gang",
  },
  "four-strokes-light-throttle": {
    words: "Viertaktet bei wenig, gleichmäßigem Gas",
    description:
      "Er zündet jede zweite Umdrehung: halber Takt, ungleichmäßig und weich, wie langsames Blubbern, bei ruhiger Hand in der Ebene. Ein leichtes ist normal.",
    notToBeTakenFor: "Auspuff oder Wasser noch kalt.",
    when: "Warm, 1/8 bis 1/4, eben, ohne Last",
  },
  "four-strokes-under-load": {
    words: "Viertaktet unter Last",
    description:
      "Bergauf zündet er jede zweite Umdrehung: halber Takt, weich und ungleichmäßig, schwer zu fahren, oft mit Rauch.",
    notToBeTakenFor: "Ein Drehzahlbegrenzer oder eine sterbende Kerze.",
    when: "Warm, 1/4 bis 3/4, bergauf oder im hohen Gang",
  },
  "jerks-at-constant-grip": {
    words: "Ruckelt oder pendelt bei ruhiger Hand",
    description:
      "Das Motorrad zieht und lässt wieder nach, obwohl die Hand still hält: leichtes, trockenes Rucken, kein Rauch.",
    notToBeTakenFor: "Eine lose Kette.",
    when: "Warm, 1/8 bis 1/2, still gehalten",
  },
  "revs-without-pull": {
    words: "Dreht, aber zieht nicht, hohl und heiß",
    description:
      "Der Ton steigt, dünn und hohl, aber das Motorrad geht nicht mit, und der Motor fühlt sich heiß an.",
    notToBeTakenFor: "Zu wenig Kompression.",
    when: "1/4 bis 3/4 unter Last",
  },
  "weaker-lap-by-lap": {
    words: "Erste Runde gut, dann immer schwächer",
    description: "Am Anfang stark; mit jeder Runde zieht er weniger und wird heißer.",
    notToBeTakenFor: "Ein müder Fahrer.",
    when: "Ein ganzer Lauf oder langer Anstieg",
  },
  "pings-on-roll-on": {
    words: "Klingelt: leichtes Rasseln beim Aufziehen",
    description:
      "Ein leichtes metallisches Rasseln, wie Murmeln in einer Dose, wenn er heiß aus niedriger Drehzahl ziehen muss.",
    notToBeTakenFor:
      "Kolbenkippen, ein Kupplungsrasseln oder ein loses Blech. Bis zum Beweis als Warnung nehmen.",
    when: "Heiß, 1/4 bis 3/4, niedrige Drehzahl, unter Last",
  },
  "lazy-and-heavy": {
    words: "Sauber, aber träge und schwer",
    description:
      "Kein Aussetzer, kein Rasseln, nur träge und stumpf; eine saubere Kerze wird bei langem langsamem Fahren nass.",
    when: "1/8 bis 1/2, langes langsames Fahren",
  },
  "lazy-revs-petrol-smell-four-stroke": {
    words: "Dreht träge hoch und riecht nach Benzin",
    description:
      "Nimmt langsam mit stumpfem Ton Drehzahl auf und riecht nach unverbranntem Benzin; er viertaktet dabei nie hörbar, denn er zündet ohnehin jede zweite Umdrehung.",
    when: "Warm, aufgezogen oder mit Gasstoß",
  },
  "heavy-in-the-middle-clean-on-top": {
    words: "In der Mitte schwer, bei Vollgas sauber",
    description: "Von 1/8 bis 3/4 fett, blubbernd oder rauchig; ganz offen zieht er sauber.",
    when: "Warm, derselbe Hang mit Teilgas und mit Vollgas",
  },
  "clip-moves-make-no-difference": {
    words: "Den Clip umzusetzen ändert nichts",
    description: "Eine oder zwei Kerben nach oben oder unten, und die Mitte läuft so schlecht wie zuvor.",
    when: "Nach mindestens einem Umsetzen, gleicher Hang, gleicher Gang",
  },
  "follows-revs-not-grip": {
    words: "Kommt bei derselben Drehzahl, egal wie viel Gas",
    description:
      "Der Fehler kommt bei einer bestimmten Drehzahl, bei halbem wie bei vollem Gas, in jedem Gang.",
    when: "Dieselbe Drehzahl mit zwei Gasstellungen erreicht",
  },
  "worse-at-low-revs-same-grip": {
    words: "Gleiches Gas: je niedriger die Drehzahl, desto schlechter",
    description:
      "Bei einem kleinen Gas ist er bei niedriger Drehzahl dünn und ruckelig und wird mit steigender Drehzahl besser.",
    when: "Wenig Gas still gehalten, aus niedriger Drehzahl herauf",
  },
  "misses-more-the-harder-it-pulls": {
    words: "Setzt umso mehr aus, je härter er zieht",
    description:
      "Ohne Last sauber; unter Last fallen einzelne Zündungen mit scharfem Knall aus, umso mehr, je weiter auf.",
    when: "Dieselbe Drehzahl, ohne Last und mit Last",
  },
  "comes-and-goes": {
    words: "Kommt und geht ohne Grund",
    description: "Eine Weile tadellos, dann eine Weile falsch, bei gleichem Gas auf gleichem Boden.",
    when: "Über eine ganze Fahrt",
  },
};
