import type { SignTexts } from "../../core-words.ts";

const PIPE_OFF = "Pasada caliente, motor cortado limpio, escape quitado en frío";

/** Smoke, oil and fuel used. */
export const smokeAndConsumption: SignTexts<"smoke-and-consumption"> = {
  "smokes-when-warm": {
    words: "Humo azulado constante bien caliente",
    description:
      "Una neblina constante tras la moto mucho después de calentar, no solo los primeros minutos.",
    notToBeTakenFor: "Un escape aún frío, o un aceite que humea de por sí.",
    when: "Tras diez minutos rodando",
  },
  "black-oil-at-silencer": {
    words: "Aceite negro mojado en el silencioso",
    description: "Aceite negro sin quemar cae del silencioso o de su unión, a menudo con mucho humo.",
    notToBeTakenFor: "Lo mojado de rodar despacio, o demasiado aceite en la mezcla.",
    when: "Tras una salida",
  },
  "fouls-plugs": {
    words: "Engrasa bujías una y otra vez",
    description: "Bujía nueva, bien un rato, luego mojada o negra y muerta; una y otra vez.",
    notToBeTakenFor: "Una bujía de grado térmico equivocado.",
    when: "A lo largo de varias salidas",
  },
  "uses-more-fuel": {
    words: "Gasta claramente más que antes",
    description: "El mismo recorrido se lleva cerca de un 15 % más de gasolina que antes.",
    notToBeTakenFor: "Arena o barro, que también gastan.",
    when: "La misma salida medida",
  },
  "blue-header": {
    words: "Codo de escape azul o dorado",
    description: "El primer palmo del escape se ha vuelto azul o dorado.",
    notToBeTakenFor: "Un escape fino cromado, que toma color enseguida.",
    when: "Escape frío y limpio",
  },
  "header-inside-dark": {
    words: "Codo negro u oscuro por dentro",
    description:
      "Escape quitado tras un corte limpio de una pasada caliente: por dentro, en la brida, oscuro.",
    when: PIPE_OFF,
  },
  "header-inside-khaki": {
    words: "Codo caqui por dentro",
    description:
      "Escape quitado tras un corte limpio de una pasada caliente: por dentro, en la brida, caqui parejo.",
    when: PIPE_OFF,
  },
  "header-inside-white": {
    words: "Codo blanco por dentro",
    description:
      "Escape quitado tras un corte limpio de una pasada caliente: por dentro, en la brida, pálido o blanco.",
    when: PIPE_OFF,
  },
  "gearbox-oil-goes-missing": {
    words: "El aceite del cambio baja",
    description:
      "El cambio pide aceite de salida en salida sin gota por fuera; el humo huele a él, con cualquier mezcla.",
    when: "Aceite medido al cambiarlo, o nivel mirado antes de cada salida",
  },
  "black-dry-smoke-four-stroke": {
    words: "Humo negro seco al abrir",
    description: "Una bocanada o un rastro de humo negro seco al abrir, ni azul ni aceite.",
    notToBeTakenFor: "Humo azul, que es aceite y desgaste.",
    when: "Caliente, abierto desde bajas vueltas",
  },
  "oil-at-silencer-four-stroke": {
    words: "Aceite en el silencioso o humo azul",
    description:
      "Una punta de escape negra y aceitosa, o humo azul al abrir o tras mucho rato con el gas cerrado.",
    when: "Caliente",
  },
};
