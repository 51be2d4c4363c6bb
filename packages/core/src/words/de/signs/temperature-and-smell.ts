import type { SignTexts } from "../../core-words.ts";

/** Heat, smell and fuel. */
export const temperatureAndSmell: SignTexts<"temperature-and-smell"> = {
  "very-hot-or-boils": {
    words: "Kühlmittel kocht, oder der Motor ist sehr heiß",
    description:
      "Dampf oder Kühlmittel aus dem Überlauf, oder ein Zylinder, der nach normaler Fahrt knistert und heiß riecht.",
    notToBeTakenFor: "Langsames technisches Fahren ohne Fahrtwind.",
    when: "Nach normaler Fahrt",
  },
  "coolant-goes-missing": {
    words: "Kühlmittel wird weniger",
    description:
      "Der Stand fällt von Fahrt zu Fahrt, ohne Tropfen darunter; vielleicht Blasen im Kühler oder süßer weißer Rauch.",
    when: "Motor kalt, Stand vor jeder Fahrt angesehen",
  },
  "hiss-or-wet-at-head-joint": {
    words: "Zischen, Öl oder Ruß an der Kopfdichtung",
    description:
      "Ein nasser oder schwarzer Strich, wo Kopf und Zylinder aufeinanderliegen, oder ein Zischen beim Durchtreten.",
    when: "Motor sauber, nach einer Fahrt",
  },
  "petrol-smell-eyes-sting": {
    words: "Starker Benzingeruch, Augen brennen",
    description: "Das Abgas riecht roh und brennt dem, der dahinter steht, in den Augen.",
    notToBeTakenFor: "Rennkraftstoff, der ohnehin stark riecht.",
    when: "Warm, im Freien stehend",
  },
  "better-cold-morning-worse-hot-noon": {
    words: "Am kalten Morgen besser, am heißen Mittag schlechter",
    description: "Früh scharf; mit derselben Einstellung mittags fett und träge.",
    notToBeTakenFor: "Ein müder Fahrer.",
    when: "Ein Tag, eine Einstellung; zur Mittagsfahrt eintragen",
  },
  "better-at-noon-than-dawn": {
    words: "Mittags besser als früh",
    description:
      "Früh dünn, ruckelnd oder schnappend, obwohl warmgefahren; mit derselben Einstellung mittags gut.",
    notToBeTakenFor: "Ein Motor, der noch nicht warm ist.",
    when: "Ein Tag, eine Einstellung; zur Morgenfahrt eintragen",
  },
  "cured-by-fresh-fuel": {
    words: "Mit frischem Kraftstoff behoben",
    description: "Tank und Kammer entleert, frische Mischung eingefüllt, und der Fehler ist weg.",
    when: "Derselbe Test vorher und nachher",
  },
};
