import type { SignTexts } from "../../core-words.ts";

/** What the engine does when the throttle is opened. */
export const openingTheThrottle: SignTexts<"opening"> = {
  "answers-crisply": {
    words: "Hängt sofort sauber am Gas",
    description:
      "Gas auf, und die Drehzahl springt mit der Hand: ein klares Bellen, keine Pause, kein Husten.",
    when: "Warm, von zu auf 1/4 gerissen",
  },
  "bogs-hollow-no-smoke": {
    words: "Verschluckt sich: hohles Schnappen, dann nichts",
    description:
      "Bei einer großen Handvoll Gas sackt er ein: ein hohles Schnappen, der Motor wird still, kein Rauch, als wäre das Benzin aus; mit einem Ruck kann er wieder kommen.",
    notToBeTakenFor:
      "Das Stottern, das weiter zündet, gurgelt und raucht. Das ist die häufigste Verwechslung.",
    when: "Warm, schnell von zu auf 1/4 bis 1/2 geöffnet",
  },
  "stumbles-with-smoke": {
    words: "Stottert: gurgelt und raucht, dreht träge hoch",
    description:
      "Beim Öffnen setzt er aus, zündet aber weiter: nasses Gurgeln, Blubbern, kommt langsam, Rauch am Schalldämpfer; mit steigender Drehzahl wird er frei.",
    notToBeTakenFor: "Das Verschlucken, das still wird und keinen Rauch lässt.",
    when: "Warm, aus niedriger Drehzahl aufgerissen oder aufgezogen",
  },
  "fast-opening-bogs-slow-is-fine": {
    words: "Verschluckt sich bei schnellem Öffnen, langsam ist gut",
    description: "Aufgerissen sackt er ein und schnappt; über eine Sekunde aufgezogen geht er sauber los.",
    notToBeTakenFor: "Ein zu hoher Gang: Kein Motor mag Vollgas weit unter seiner Leistung.",
    when: "Warm, von zu auf voll aus niedriger Drehzahl, dann dasselbe langsam",
  },
  "fast-opening-bogs-slow-is-clean-four-stroke": {
    words: "Verschluckt sich bei schnellem Öffnen, langsam ist sauber",
    description:
      "Ein schneller Dreh, und er schnappt, sackt ein oder hickst einmal; langsam aufgezogen ist dieselbe Öffnung völlig sauber.",
    notToBeTakenFor: "Ein zu hoher Gang.",
    when: "Warm, von zu auf 1/2 schnell, dann dasselbe langsam",
  },
  "delay-then-sudden-hit": {
    words: "Nichts, dann ein plötzlicher Schlag",
    description:
      "Wie ein Schalter: nach dem Öffnen eine Pause, dann setzt er auf einen Schlag mit dünnem metallischem Ton ein.",
    notToBeTakenFor: "Der Ruck, wenn die Auslasssteuerung öffnet.",
    when: "Aus Kurven heraus",
  },
  "cuts-out-on-landing": {
    words: "Setzt bei Landungen oder hartem Bremsen aus",
    description:
      "Auf glattem Boden läuft er gut; eine Landung, eine Wellenreihe oder hartes Bremsen lässt ihn kurz aussetzen oder husten.",
    notToBeTakenFor: "Ein Kabel, das auf Wellen an blankes Metall kommt.",
    when: "Sprünge, Wellen, hartes Bremsen",
  },
  "revs-rise-over-bumps": {
    words: "Drehzahl steigt auf Wellen bei ruhiger Hand",
    description: "Über eine Wellenreihe wird der Motor von selbst schneller, obwohl die Hand still hält.",
    notToBeTakenFor: "Das Handgelenk des Fahrers.",
    when: "Wellen, Gas still gehalten",
  },
  "changes-on-slopes": {
    words: "Läuft bergauf und bergab verschieden",
    description:
      "In der Ebene bei diesem Gas sauber; Nase eine Weile oben oder unten, und er wird fetter oder verhungert.",
    when: "Langer steiler Anstieg oder Abstieg, Gas still gehalten",
  },
  "no-step-where-the-power-valve-opens": {
    words: "Der Schub in der Mitte der Drehzahl fehlt",
    description:
      "Er zieht gleichmäßig und schwach, wo früher ein klarer Leistungssprung war, egal welche Düsen drin sind.",
    when: "3. Gang, durch die mittlere Drehzahl aufgezogen",
  },
};
