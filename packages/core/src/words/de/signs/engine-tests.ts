import type { SignTexts } from "../../core-words.ts";

const CHOKE_WHEN = "Warm, wo der Fehler sich zeigt, unter etwa halbem Gas";
const TAP_WHEN = "Warm, Hahn zu, dort gehalten, wo der Fehler sich zeigt";
const AIR_WHEN = "Warm, Leerlauf etwas angehoben, Luftschraube auf der Filterseite";
const FUEL_WHEN = "Warm, Leerlauf etwas angehoben, Gemischschraube auf der Motorseite";
const STEP_WHEN = "Dieselbe Fahrt vor und nach einem Schritt";
const WISHING =
  "Wunschdenken: jemand anderen ungesehen einbauen lassen und wiederholen. Zu der Einstellung vor dem Schritt eintragen.";
const BACK_WHEN = "Zu der Einstellung eintragen, mit der der Fehler kam";
const FLICK_WHEN = "Lange Gerade, Vollgas, Choke einen Augenblick auf; braucht Übung";

/** What a test shows. */
export const engineTests: SignTexts<"engine-tests"> = {
  "touch-of-choke-better": {
    words: "Etwas Choke macht es besser",
    description:
      "Mit einen Spalt offenem Choke wird der Fehler kleiner oder verschwindet: Er zieht oder hält Leerlauf sofort besser.",
    when: CHOKE_WHEN,
  },
  "touch-of-choke-worse": {
    words: "Etwas Choke macht es schlechter oder würgt ihn ab",
    description: "Mit einen Spalt offenem Choke wird er fetter, blubbert oder geht aus.",
    when: CHOKE_WHEN,
  },
  "touch-of-choke-no-change": {
    words: "Etwas Choke ändert nichts",
    description: "Mit einen Spalt offenem Choke läuft er genau gleich.",
    when: CHOKE_WHEN,
  },
  "tap-off-clears-before-it-dies": {
    words: "Hahn zu: wird frei, kurz bevor er ausgeht",
    description: "Nur aus der Kammer laufend wird er in den letzten Sekunden schärfer, bevor er verhungert.",
    when: TAP_WHEN,
  },
  "tap-off-no-clearing": {
    words: "Hahn zu: nicht besser, bevor er ausgeht",
    description: "Nur aus der Kammer laufend wird er schlechter oder geht einfach aus, nie schärfer.",
    when: TAP_WHEN,
  },
  "screw-peak-in-the-middle": {
    words: "Leerlauf am besten zwischen etwa 1 und 2½ Umdrehungen",
    description:
      "Beim Drehen der kleinen Schraube steigt der Leerlauf zwischen einer und zweieinhalb Umdrehungen zu einem klaren Besten und fällt zu beiden Seiten.",
    when: "Warm, Leerlauf etwas angehoben, je eine Viertelumdrehung",
  },
  "air-screw-best-nearly-closed": {
    words: "Luftschraube: Leerlauf am besten fast zu",
    description:
      "Der Leerlauf wird immer besser, je weiter die Luftschraube hineingeht, am besten unter einer Umdrehung.",
    when: AIR_WHEN,
  },
  "air-screw-best-far-out": {
    words: "Luftschraube: Leerlauf am besten weit draußen",
    description:
      "Der Leerlauf wird immer besser, je weiter die Luftschraube herauskommt, am besten über zweieinhalb bis drei Umdrehungen.",
    when: AIR_WHEN,
  },
  "fuel-screw-best-nearly-closed": {
    words: "Gemischschraube: Leerlauf am besten fast zu",
    description:
      "Der Leerlauf wird immer besser, je weiter die Gemischschraube hineingeht, am besten unter einer Umdrehung.",
    when: FUEL_WHEN,
  },
  "fuel-screw-best-far-out": {
    words: "Gemischschraube: Leerlauf am besten weit draußen",
    description:
      "Der Leerlauf wird immer besser, je weiter die Gemischschraube herauskommt, am besten über zweieinhalb bis drei Umdrehungen.",
    when: FUEL_WHEN,
  },
  "screw-makes-no-difference": {
    words: "Die kleine Schraube macht keinen Unterschied",
    description: "Von leicht aufsitzend bis drei Umdrehungen offen reagiert der Leerlauf nicht.",
    when: "Warm, Leerlauf so niedrig, wie er läuft",
  },
  "one-step-more-fuel-better": {
    words: "Ein Schritt mehr Kraftstoff: besser",
    description:
      "Eine Düsennummer größer, eine Clipkerbe tiefer oder eine Viertelumdrehung, und der Fehler ist deutlich kleiner.",
    notToBeTakenFor: WISHING,
    when: STEP_WHEN,
  },
  "one-step-more-fuel-worse": {
    words: "Ein Schritt mehr Kraftstoff: schlechter",
    description:
      "Eine Düsennummer größer, eine Clipkerbe tiefer oder eine Viertelumdrehung, und der Fehler ist deutlich größer.",
    notToBeTakenFor: WISHING,
    when: STEP_WHEN,
  },
  "one-step-more-fuel-same": {
    words: "Ein Schritt mehr Kraftstoff: kein Unterschied",
    description:
      "Eine Düsennummer größer, eine Clipkerbe tiefer oder eine Viertelumdrehung, und nichts ändert sich.",
    when: STEP_WHEN,
  },
  "stays-on-known-good-setting": {
    words: "Fehler bleibt mit der besten bekannten Einstellung",
    description:
      "Jedes Teil zurück auf die Einstellung, mit der er gut lief, in ähnlicher Luft, und der Fehler ist noch da.",
    when: BACK_WHEN,
  },
  "gone-on-known-good-setting": {
    words: "Fehler weg mit der besten bekannten Einstellung",
    description:
      "Jedes Teil zurück auf die Einstellung, mit der er gut lief, in ähnlicher Luft, und der Fehler ist weg.",
    when: BACK_WHEN,
  },
  "roll-off-picks-up": {
    words: "Von voll auf 7/8 zurück: zieht stärker",
    description: "Das Gas vom Anschlag etwas zurück, und er zieht stärker oder dreht höher.",
    notToBeTakenFor: "Eine Senke im Boden.",
    when: "Hoher Gang, eben, gleichmäßiges Vollgas",
  },
  "four-strokes-after-tiny-cut": {
    words: "Eine Haaresbreite zurück: viertaktet sofort",
    description:
      "Das kleinste Zurücknehmen vom Vollgas, und er zündet jede zweite Umdrehung: halber Takt, weich und ungleichmäßig.",
    when: "Hoher Gang, gleichmäßiges Vollgas, eine Haaresbreite zurück",
  },
  "four-strokes-at-about-80-percent": {
    words: "Auf etwa 80 % zurück: viertaktet ein wenig",
    description:
      "Vom Vollgas zurückgenommen zieht er weiter, dann zündet er bei etwa vier Fünfteln leicht nur jede zweite Umdrehung.",
    when: "Hoher Gang, gleichmäßiges Vollgas, auf 80 % zurück",
  },
  "roll-off-never-four-strokes": {
    words: "Deutlich unter 80 % zurück: viertaktet nie",
    description:
      "Vom Vollgas auf deutlich unter vier Fünftel zurück bleibt er glatt und trocken und wird nur langsamer.",
    when: "Hoher Gang, gleichmäßiges Vollgas, unter 80 % zurück",
  },
  "roll-off-no-pick-up": {
    words: "Von voll auf 7/8 zurück: lässt gleichmäßig nach",
    description: "Das Gas vom Anschlag etwas zurück, und er zieht nur etwas weniger.",
    when: "Hoher Gang, eben, gleichmäßiges Vollgas",
  },
  "choke-flick-revs-higher": {
    words: "Choke bei Vollgas angetippt: Drehzahl geht höher",
    description:
      "Solange der Choke offen ist, macht die Drehzahl einen Schritt nach oben, bevor sie sich setzt.",
    when: FLICK_WHEN,
  },
  "choke-flick-revs-lower": {
    words: "Choke bei Vollgas angetippt: Drehzahl kommt niedriger zurück",
    description: "Solange der Choke offen ist, sackt der Motor ein, und die Drehzahl kommt niedriger zurück.",
    when: FLICK_WHEN,
  },
  "choke-flick-no-change": {
    words: "Choke bei Vollgas angetippt: kein Unterschied",
    description: "Solange der Choke offen ist, bewegt sich die Drehzahl nicht.",
    when: FLICK_WHEN,
  },
  "bogs-fast-and-slow-four-stroke": {
    words: "Verschluckt sich schnell und langsam geöffnet",
    description:
      "Schnell aufgerissen oder langsam aufgezogen, er schnappt und sackt beide Male ein, kein Rauch.",
    when: "Warm, von zu auf 1/2 schnell, dann dasselbe langsam",
  },
};
