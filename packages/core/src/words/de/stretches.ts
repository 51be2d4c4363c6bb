import type { CoreWords } from "../core-words.ts";

type Stretches = CoreWords["stretches"]["two"];

const TWO_STROKE: Stretches = {
  bottom: {
    right: "fällt er beim Schließen sofort auf Leerlauf und nimmt aus dem Leerlauf sofort Gas an",
    tooMuch:
      "er taucht beim Schließen unter den Leerlauf, oder er gurgelt und raucht beim schnellen Gasgeben",
    tooLittle:
      "die Drehzahl bleibt beim Schließen hängen, oder er schnappt beim schnellen Gasgeben hohl nach Luft, ohne Rauch",
  },
  middle: {
    right: "zieht er von 1/4 bis 1/2 sauber, auch bergauf",
    tooMuch: "er viertaktet unter Last bei Teilgas: halber Takt, weich und ungleichmäßig",
    tooLittle: "er ruckelt bei ruhiger Hand, wirkt hohl oder klingelt beim Aufziehen",
  },
  top: {
    right:
      "zieht er sauber bis oben und beginnt gerade eben zu viertakten, wenn du auf etwa 80 % zurückdrehst",
    tooMuch: "er wird oben zäh und rau und dreht nicht aus",
    tooLittle:
      "er zieht stärker, wenn du vom Vollgas etwas zurückdrehst, lässt nach oder klingt scharf: dann sanft Gas weg",
  },
};

const FOUR_STROKE: Stretches = {
  bottom: {
    right: TWO_STROKE.bottom.right,
    tooMuch: "er taucht beim Schließen unter den Leerlauf, oder er kommt träge und riecht nach Benzin",
    tooLittle: "die Drehzahl bleibt beim Schließen hängen, oder es knallt im Schiebebetrieb",
  },
  middle: {
    ...TWO_STROKE.middle,
    tooMuch: "er ist unter Last träge und stumpf und raucht schwarz",
  },
  top: {
    right: "zieht er sauber bis oben",
    tooMuch: TWO_STROKE.top.tooMuch,
    tooLittle: TWO_STROKE.top.tooLittle,
  },
};

/** By strokes and stretch. "right" goes on after "Stimmt das," and so starts with its verb. */
export const stretches: CoreWords["stretches"] = { two: TWO_STROKE, four: FOUR_STROKE };
