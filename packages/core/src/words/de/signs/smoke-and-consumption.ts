import type { SignTexts } from "../../core-words.ts";

const PIPE_OFF = "Heiße Fahrt, Motor sauber abgestellt, Krümmer kalt abgenommen";

/** Smoke, oil and fuel used. */
export const smokeAndConsumption: SignTexts<"smoke-and-consumption"> = {
  "smokes-when-warm": {
    words: "Ständig blauweißer Rauch, wenn er ganz warm ist",
    description:
      "Ein ständiger Schleier hinter dem Motorrad lange nach dem Warmfahren, nicht nur die ersten Minuten.",
    notToBeTakenFor: "Ein noch kalter Auspuff, oder ein Öl, das von sich aus raucht.",
    when: "Nach zehn Minuten Fahrt",
  },
  "black-oil-at-silencer": {
    words: "Nasses schwarzes Öl am Schalldämpfer",
    description:
      "Unverbranntes schwarzes Öl läuft aus dem Schalldämpfer oder seiner Verbindung, oft mit starkem Rauch.",
    notToBeTakenFor: "Die Nässe vom langsamen Fahren, oder zu viel Öl im Kraftstoff.",
    when: "Nach einer Fahrt",
  },
  "fouls-plugs": {
    words: "Verrußt immer wieder Kerzen",
    description: "Neue Kerze, eine Weile gut, dann nass oder schwarz und tot; immer wieder.",
    notToBeTakenFor: "Eine Kerze mit falschem Wärmewert.",
    when: "Über mehrere Fahrten",
  },
  "uses-more-fuel": {
    words: "Braucht deutlich mehr Kraftstoff als früher",
    description: "Dieselbe Runde nimmt etwa 15 % mehr Benzin als früher.",
    notToBeTakenFor: "Sand oder Schlamm, die auch Kraftstoff kosten.",
    when: "Dieselbe Fahrt gemessen",
  },
  "blue-header": {
    words: "Krümmer blau oder golden",
    description: "Die erste Handbreit des Auspuffs ist blau oder golden angelaufen.",
    notToBeTakenFor: "Ein dünner beschichteter Auspuff, der leicht anläuft.",
    when: "Auspuff kalt und sauber",
  },
  "header-inside-dark": {
    words: "Krümmer innen schwarz oder dunkel",
    description: "Auspuff ab nach sauberem Abstellen aus heißer Fahrt: Innen am Flansch ist er dunkel.",
    when: PIPE_OFF,
  },
  "header-inside-khaki": {
    words: "Krümmer innen khakifarben",
    description:
      "Auspuff ab nach sauberem Abstellen aus heißer Fahrt: Innen am Flansch ist er gleichmäßig khakibraun.",
    when: PIPE_OFF,
  },
  "header-inside-white": {
    words: "Krümmer innen weiß",
    description:
      "Auspuff ab nach sauberem Abstellen aus heißer Fahrt: Innen am Flansch ist er hell oder weiß.",
    when: PIPE_OFF,
  },
  "gearbox-oil-goes-missing": {
    words: "Getriebeöl wird weniger",
    description:
      "Das Getriebe braucht von Fahrt zu Fahrt Öl, ohne Tropfen außen; der Rauch riecht danach, egal welche Mischung.",
    when: "Öl beim Wechsel gemessen, oder Stand vor jeder Fahrt angesehen",
  },
  "black-dry-smoke-four-stroke": {
    words: "Schwarzer trockener Rauch beim Gasgeben",
    description: "Ein Stoß oder eine Fahne trockenen schwarzen Rauchs beim Öffnen, kein Blau, kein Öl.",
    notToBeTakenFor: "Blauer Rauch: Das ist Öl und Verschleiß.",
    when: "Warm, aus niedriger Drehzahl geöffnet",
  },
  "oil-at-silencer-four-stroke": {
    words: "Öl am Schalldämpfer oder blauer Rauch",
    description:
      "Ein ölig schwarzes Endrohr, oder blauer Rauch beim Öffnen oder nach langem geschlossenem Gas.",
    when: "Warm",
  },
};
