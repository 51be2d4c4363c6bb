import type { SignTexts } from "../../core-words.ts";

/** Heat, smell and fuel. */
export const temperatureAndSmell: SignTexts<"temperature-and-smell"> = {
  "very-hot-or-boils": {
    words: "Hierve el líquido, o el motor está muy caliente",
    description:
      "Vapor o líquido por el rebose, o un cilindro que chasquea y huele a caliente tras una salida normal.",
    notToBeTakenFor: "Rodar lento y técnico sin aire.",
    when: "Tras rodar normal",
  },
  "coolant-goes-missing": {
    words: "El refrigerante baja",
    description:
      "El nivel cae de salida en salida sin gota debajo; quizá burbujas en el radiador o humo blanco dulzón.",
    when: "Motor frío, nivel mirado antes de cada salida",
  },
  "hiss-or-wet-at-head-joint": {
    words: "Silbido, aceite u hollín en la junta de culata",
    description: "Una línea mojada o negra entre culata y cilindro, o un silbido al darle a la patada.",
    when: "Motor limpio, tras una salida",
  },
  "petrol-smell-eyes-sting": {
    words: "Fuerte olor a gasolina, pican los ojos",
    description: "El escape huele crudo y pica en los ojos de quien está detrás.",
    notToBeTakenFor: "Gasolina de carreras, que huele fuerte de por sí.",
    when: "Caliente, parada al aire libre",
  },
  "better-cold-morning-worse-hot-noon": {
    words: "Mejor en la mañana fría, peor al mediodía",
    description: "Vivo al amanecer; con el mismo ajuste, cargado y apagado a mediodía.",
    notToBeTakenFor: "Un piloto cansado.",
    when: "Un día, un ajuste; anótalo en la salida del mediodía",
  },
  "better-at-noon-than-dawn": {
    words: "Mejor al mediodía que al amanecer",
    description:
      "Fino, a tirones o boqueando al amanecer aunque caliente; con el mismo ajuste va bien a mediodía.",
    notToBeTakenFor: "Un motor aún frío.",
    when: "Un día, un ajuste; anótalo en la salida del amanecer",
  },
  "cured-by-fresh-fuel": {
    words: "Se cura con gasolina fresca",
    description: "Depósito y cuba vacíos, mezcla fresca, y el fallo se fue.",
    when: "La misma prueba antes y después",
  },
};
