import type { SignTexts } from "../../core-words.ts";

const CHOP = "Gas cerrado desde medias vueltas, embrague o punto muerto";
const TIMED = "El mismo cierre cronometrado templado y otra vez muy caliente";
const HALF_TURN = "Caliente, gas cerrado desde medias vueltas, antes y después de media vuelta";

/** What the engine does when the throttle is closed. */
export const closingTheThrottle: SignTexts<"closing"> = {
  "drops-straight-to-idle": {
    words: "Cae directo al ralentí y se queda",
    description: "Sueltas, y las vueltas caen al ralentí y ahí se quedan; ni se cuelga ni se hunde.",
    notToBeTakenFor: "Un volante pesado cae más despacio, y es normal.",
    when: CHOP,
  },
  "hangs-after-closing": {
    words: "Las vueltas se cuelgan antes de caer",
    description:
      "Sueltas, y se queda bien por encima del ralentí de uno a cinco segundos, limpio y fino, y cae tarde.",
    notToBeTakenFor: "Algunos motores siempre caen despacio: compara con cómo era este.",
    when: CHOP,
  },
  "dives-below-idle": {
    words: "Se hunde por debajo del ralentí y vuelve",
    description: "Sueltas, y las vueltas atraviesan el ralentí, casi muere y vuelve con un borboteo húmedo.",
    notToBeTakenFor: "Un motor aún frío.",
    when: CHOP,
  },
  "stalls-on-closing": {
    words: "Se para al cerrar el gas",
    description:
      "Al frenar o entrar en curva con el gas cerrado se muere y hay que darle a la patada o empujarla.",
    notToBeTakenFor: "Calarlo con el freno trasero.",
    when: "Frenadas, entrada de curva",
  },
  "hangs-only-when-hot": {
    words: "Se cuelga solo muy caliente",
    description: "Fresco cae limpio al ralentí; tras una vuelta dura se queda arriba unos segundos.",
    notToBeTakenFor: "Gasolina que hierve en la cuba.",
    when: "Tras una vuelta dura, comparado con antes",
  },
  "hang-grows-with-heat": {
    words: "El cuelgue crece con el calor",
    description:
      "El cuelgue al cerrar dura claramente más muy caliente que templado: medio segundo más, o creciendo vuelta a vuelta.",
    when: TIMED,
  },
  "hang-no-longer-when-hot": {
    words: "El cuelgue no es más largo muy caliente que templado",
    description: "Cronometrado templado y otra vez muy caliente, el cuelgue dura lo mismo.",
    when: TIMED,
  },
  "hang-gone-with-half-a-turn": {
    words: "Media vuelta del tornillo pequeño cura el cuelgue",
    description:
      "Con el tornillo pequeño media vuelta hacia más gasolina las vueltas caen directas; devuelto, se cuelgan otra vez.",
    when: HALF_TURN,
  },
  "hang-stays-after-half-a-turn": {
    words: "El cuelgue sigue igual tras media vuelta",
    description: "Media vuelta del tornillo pequeño hacia más gasolina, y se cuelga lo mismo.",
    when: HALF_TURN,
  },
  "hang-stays-two-pilots-up": {
    words: "El cuelgue sigue con una baja dos números mayor",
    description: "Dos números más de chiclé de baja, tornillo ajustado, y se cuelga como antes.",
    when: "Caliente, tras el cambio",
  },
  "runs-on-by-itself": {
    words: "Sigue o sube de vueltas solo",
    description:
      "El motor sigue tirando o sube con el gas cerrado, quizá hasta con el botón de parada apretado.",
    when: "En cualquier momento: deja de rodar",
  },
  "pops-on-closed-throttle-two-stroke": {
    words: "Petardea en el escape con el gas cerrado",
    description: "Petardazos secos del silencioso mientras la moto frena al motor.",
    notToBeTakenFor: "Una poscombustión suave y con humo.",
    when: "Rodando con el gas cerrado, con marcha",
  },
  "pops-on-closed-throttle-four-stroke": {
    words: "Petardea en el escape con el gas cerrado",
    description: "Una ristra de petardazos secos del silencioso mientras la moto frena al motor.",
    notToBeTakenFor:
      "Una unión de escape que toma aire, o la válvula de aire que algunos motores llevan para la retención.",
    when: "Rodando con el gas cerrado, con marcha",
  },
  "gargles-after-long-descent": {
    words: "Gorgotea al abrir tras una bajada larga",
    description:
      "Tras minutos con el gas cerrado la primera apertura es húmeda: un gorgoteo y una bocanada de humo, luego limpio.",
    notToBeTakenFor: "Un poco es normal: el aceite se junta en el cárter.",
    when: "Primera apertura tras una bajada larga",
  },
};
