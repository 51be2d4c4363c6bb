import type { CoreWords } from "../core-words.ts";

type Stretches = CoreWords["stretches"]["two"];

const TWO_STROKE: Stretches = {
  bottom: {
    right: "cae directo al ralentí al cerrar el gas y responde enseguida desde el ralentí",
    tooMuch: "se hunde por debajo del ralentí al cerrar el gas, o gorgotea y echa humo al abrir rápido",
    tooLittle:
      "las vueltas se quedan colgadas al cerrar el gas, o da una bocanada hueca sin humo al abrir rápido",
  },
  middle: {
    right: "tira limpio de 1/4 a 1/2, también cuesta arriba",
    tooMuch: "hace el cuatro tiempos bajo carga a medio gas: la mitad del compás, blando y desigual",
    tooLittle: "da tirones con la mano quieta, se siente hueco o pica al abrir poco a poco",
  },
  top: {
    right: "tira limpio hasta arriba y empieza apenas a hacer el cuatro tiempos al cortar a un 80 %",
    tooMuch: "arriba se aplana, va áspero y no estira",
    tooLittle:
      "tira más al cortar un poco desde el tope, se desinfla o suena agudo: entonces cierra con suavidad",
  },
};

const FOUR_STROKE: Stretches = {
  bottom: {
    right: TWO_STROKE.bottom.right,
    tooMuch: "se hunde por debajo del ralentí al cerrar el gas, o responde perezoso y huele a gasolina",
    tooLittle: "las vueltas se quedan colgadas al cerrar el gas, o petardea en retención",
  },
  middle: {
    ...TWO_STROKE.middle,
    tooMuch: "va perezoso y apagado bajo carga y echa humo negro",
  },
  top: {
    right: "tira limpio hasta arriba",
    tooMuch: TWO_STROKE.top.tooMuch,
    tooLittle: TWO_STROKE.top.tooLittle,
  },
};

/** By strokes and stretch, as clauses that a sentence of a change goes on with. */
export const stretches: CoreWords["stretches"] = { two: TWO_STROKE, four: FOUR_STROKE };
