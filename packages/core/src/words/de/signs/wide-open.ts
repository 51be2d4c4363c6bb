import type { SignTexts } from "../../core-words.ts";

/** Full throttle, and revving past the peak. */
export const wideOpen: SignTexts<"wide-open"> = {
  "pulls-clean-to-peak": {
    words: "Zieht sauber bis oben und hört sauber auf",
    description:
      "Ganz offen zieht er durchgehend kräftig, ein klarer Ton, und hört oben einfach auf zu ziehen.",
    when: "Vollgas, 3. Gang oder höher",
  },
  "will-not-rev-out": {
    words: "Dreht nicht aus: oben zäh und rau",
    description:
      "Er zieht, wird dann vor dem Ende zäh, rau und blubbernd, als hielte ihn eine Hand; oft mit Rauch.",
    notToBeTakenFor: "Ein Drehzahlbegrenzer, der ihn auch blubbern lässt.",
    when: "Vollgas unter Last",
  },
  "fades-then-recovers": {
    words: "Stark, lässt dann nach; nach dem Schließen wieder da",
    description:
      "Vollgas zieht erst gut, wird nach einigen Sekunden schwach und dünn und ist wieder da, sobald das Gas einmal zu war.",
    notToBeTakenFor: "Falschluft, die diese Sekunden nicht braucht.",
    when: "Langes Vollgas",
  },
  "fades-after-ten-seconds": {
    words: "Lässt nach etwa zehn Sekunden nach, danach gleich wieder gut",
    description:
      "Bei Vollgas bis zehn zählen, dann lässt er nach; ein paar Sekunden zu, und die nächsten zehn sind so stark wie die ersten.",
    when: "Vollgas mit gezählten Sekunden, zweimal",
  },
  "cuts-as-if-tap-off": {
    words: "Geht aus, als wäre der Hahn zu, und kommt wieder",
    description:
      "Bei langem Vollgas stirbt er ganz ab, rollt aus und kommt nach einigen Sekunden von selbst wieder.",
    notToBeTakenFor: "Ein gebrochenes Kabel, das hart und ohne Vorwarnung abschaltet.",
    when: "Langes Vollgas",
  },
  "over-revs-thin-and-sharp": {
    words: "Dreht immer weiter, dünn und scharf",
    description:
      "Über seinem Höhepunkt dreht er mit dünnem, hartem, klingendem Ton weiter, mit wenig Zug dahinter.",
    when: "Über der Drehzahl der besten Leistung",
  },
  "tearing-note-at-full-throttle": {
    words: "Metallischer, reißender Ton bei Vollgas",
    description:
      "Ein hartes metallisches Klopfen oder ein Ton wie reißendes Blech unter Volllast. Sanft vom Gas und nicht wiederholen.",
    notToBeTakenFor: "Ein Leck an der Auspuffverbindung.",
    when: "Volllast: aufhören",
  },
  "knocks-from-inside": {
    words: "Klopft oder mahlt von innen",
    description:
      "Ein dumpfes Klopfen, Mahlen oder Rumpeln im Takt des Motors, das vorher nicht da war. Motor abstellen.",
    when: "Jederzeit: aufhören",
  },
  "seized-or-nipped": {
    words: "Gefressen, oder geklemmt und wieder frei",
    description:
      "Das Hinterrad blockierte, oder der Motor bremste von selbst mit einem Quietschen hart ab und drehte dann schwer oder wieder frei.",
    when: "Jederzeit: aufhören",
  },
  "clears-with-filter-off": {
    words: "Läuft ohne Filter für eine kurze Fahrt sauber",
    description:
      "Mit Filter fett und zäh; ohne ihn zieht er auf einer kurzen, staubfreien Fahrt oben sauber.",
    when: "Eine kurze Fahrt auf sauberem Boden, nie lange bei Vollgas",
  },
  "better-with-cap-or-vent-free": {
    words: "Behoben mit losem Tankdeckel oder abgezogenem Entlüftungsschlauch",
    description:
      "Dieselbe lange Fahrt lässt nicht mehr nach und geht nicht mehr aus, sobald der Tankdeckel gelöst oder der Schlauch der Kammerentlüftung abgezogen ist.",
    when: "Die Fahrt wiederholt, die nachließ",
  },
};
