import type { SignTexts } from "../../core-words.ts";

const CHOP = "Gas aus mittlerer Drehzahl geschlossen, Kupplung gezogen oder Leerlauf";
const TIMED = "Dasselbe Schließen warm und noch einmal heiß gestoppt";
const HALF_TURN = "Warm, Gas aus mittlerer Drehzahl geschlossen, vor und nach einer halben Umdrehung";

/** What the engine does when the throttle is closed. */
export const closingTheThrottle: SignTexts<"closing"> = {
  "drops-straight-to-idle": {
    words: "Fällt sofort auf Leerlauf und bleibt dort",
    description:
      "Loslassen, und die Drehzahl fällt sofort auf Leerlauf und bleibt; kein Hängen, kein Eintauchen.",
    notToBeTakenFor: "Schwere Schwungmasse fällt langsamer, das ist normal.",
    when: CHOP,
  },
  "hangs-after-closing": {
    words: "Drehzahl bleibt hängen, bevor sie fällt",
    description:
      "Loslassen, und sie bleibt eine bis fünf Sekunden deutlich über dem Leerlauf, läuft sauber und dünn weiter und fällt spät.",
    notToBeTakenFor: "Manche Motoren fallen immer langsam: mit früher vergleichen.",
    when: CHOP,
  },
  "dives-below-idle": {
    words: "Taucht unter den Leerlauf und kommt zurück",
    description:
      "Loslassen, und die Drehzahl fällt durch den Leerlauf durch, stirbt fast und kriecht mit nassem Blubbern zurück.",
    notToBeTakenFor: "Ein Motor, der noch nicht warm ist.",
    when: CHOP,
  },
  "stalls-on-closing": {
    words: "Geht beim Gasschließen aus",
    description:
      "Beim Bremsen oder Einlenken mit geschlossenem Gas geht er aus und muss getreten oder angerollt werden.",
    notToBeTakenFor: "Mit der Hinterradbremse abgewürgt.",
    when: "Bremsen, Kurveneingang",
  },
  "hangs-only-when-hot": {
    words: "Bleibt nur heiß hängen",
    description:
      "Kühl fällt er sauber auf Leerlauf; nach einer harten Runde bleibt er Sekunden oben, bevor er fällt.",
    notToBeTakenFor: "Kraftstoff, der in der Kammer kocht.",
    when: "Nach einer harten Runde, verglichen mit davor",
  },
  "hang-grows-with-heat": {
    words: "Das Hängen wächst mit der Hitze",
    description:
      "Das Hängen beim Schließen dauert heiß deutlich länger als warm: eine halbe Sekunde mehr, oder von Runde zu Runde mehr.",
    when: TIMED,
  },
  "hang-no-longer-when-hot": {
    words: "Das Hängen ist heiß nicht länger als warm",
    description: "Warm und noch einmal heiß gestoppt, dauert das Hängen gleich lang.",
    when: TIMED,
  },
  "hang-gone-with-half-a-turn": {
    words: "Eine halbe Umdrehung der kleinen Schraube behebt das Hängen",
    description:
      "Mit der kleinen Schraube eine halbe Umdrehung zu mehr Kraftstoff fällt die Drehzahl sofort; zurückgestellt hängt sie wieder.",
    when: HALF_TURN,
  },
  "hang-stays-after-half-a-turn": {
    words: "Das Hängen bleibt nach einer halben Umdrehung gleich",
    description:
      "Eine halbe Umdrehung der kleinen Schraube zu mehr Kraftstoff, und die Drehzahl hängt genauso lange.",
    when: HALF_TURN,
  },
  "hang-stays-two-pilots-up": {
    words: "Das Hängen bleibt mit zwei Nummern größerer Leerlaufdüse",
    description: "Leerlaufdüse zwei Nummern größer, Schraube neu eingestellt, und es hängt wie zuvor.",
    when: "Warm, nach der Änderung",
  },
  "runs-on-by-itself": {
    words: "Läuft weiter oder dreht von selbst hoch",
    description:
      "Der Motor zieht weiter oder dreht mit geschlossenem Gas hoch, vielleicht sogar mit gedrücktem Notaus.",
    when: "Jederzeit: nicht weiterfahren",
  },
  "pops-on-closed-throttle-two-stroke": {
    words: "Knallt bei geschlossenem Gas im Auspuff",
    description: "Trockenes Knallen aus dem Schalldämpfer, während das Motorrad den Motor schiebt.",
    notToBeTakenFor: "Ein weiches, rauchiges Nachbrennen.",
    when: "Ausrollen mit geschlossenem Gas, Gang drin",
  },
  "pops-on-closed-throttle-four-stroke": {
    words: "Knallt bei geschlossenem Gas im Auspuff",
    description:
      "Eine Kette trockener Knaller aus dem Schalldämpfer, während das Motorrad den Motor schiebt.",
    notToBeTakenFor:
      "Eine Auspuffverbindung, die Luft zieht, oder das Luftventil, das manche Motoren für den Schiebebetrieb haben.",
    when: "Ausrollen mit geschlossenem Gas, Gang drin",
  },
  "gargles-after-long-descent": {
    words: "Gurgelt beim Gasgeben nach langer Abfahrt",
    description:
      "Nach Minuten mit geschlossenem Gas ist das erste Öffnen nass: ein Gurgeln und ein Rauchstoß, dann sauber.",
    notToBeTakenFor: "Ein wenig davon ist normal: Öl sammelt sich im Kurbelgehäuse.",
    when: "Erstes Öffnen nach langer Abfahrt",
  },
};
