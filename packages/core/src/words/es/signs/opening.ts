import type { SignTexts } from "../../core-words.ts";

/** What the engine does when the throttle is opened. */
export const openingTheThrottle: SignTexts<"opening"> = {
  "answers-crisply": {
    words: "Responde al instante",
    description: "Abres, y las vueltas saltan con la mano: un ladrido limpio, sin pausa ni tos.",
    when: "Caliente, de cerrado a 1/4 de golpe",
  },
  "bogs-hollow-no-smoke": {
    words: "Se ahoga: una bocanada hueca y nada",
    description:
      "Al abrir de golpe se hunde: una bocanada hueca, el motor calla, sin humo, como sin gasolina; puede volver con un salto.",
    notToBeTakenFor: "El trompicón, que sigue encendiendo, gorgotea y echa humo. Es la confusión más común.",
    when: "Caliente, abierto rápido de cerrado a entre 1/4 y 1/2",
  },
  "stumbles-with-smoke": {
    words: "Da trompicones: gorgotea y echa humo, sube lento",
    description:
      "Al abrir falla pero sigue encendiendo: gorgoteo húmedo, borboteo, tarda en subir, humo en el silencioso; se despeja al subir de vueltas.",
    notToBeTakenFor: "El ahogo, que calla y no deja humo.",
    when: "Caliente, de golpe o poco a poco desde bajas vueltas",
  },
  "fast-opening-bogs-slow-is-fine": {
    words: "Se ahoga al abrir rápido, bien al abrir despacio",
    description: "De golpe se hunde y boquea; abierto en un segundo sale limpio.",
    notToBeTakenFor:
      "Una marcha demasiado larga: a ningún motor le gusta ir a fondo muy por debajo de su fuerza.",
    when: "Caliente, de cerrado a fondo desde bajas vueltas, luego lo mismo despacio",
  },
  "fast-opening-bogs-slow-is-clean-four-stroke": {
    words: "Se ahoga al abrir rápido, limpio al abrir despacio",
    description:
      "Un giro rápido lo hace boquear, hundirse o dar un hipo; la misma apertura despacio es del todo limpia.",
    notToBeTakenFor: "Una marcha demasiado larga.",
    when: "Caliente, de cerrado a 1/2 rápido, luego lo mismo despacio",
  },
  "delay-then-sudden-hit": {
    words: "Nada, y de pronto un golpe",
    description:
      "Como un interruptor: una pausa al abrir y luego llega todo de golpe con un sonido fino y metálico.",
    notToBeTakenFor: "El tirón de una válvula de escape al abrir.",
    when: "A la salida de las curvas",
  },
  "cuts-out-on-landing": {
    words: "Se corta al caer de un salto o al frenar fuerte",
    description:
      "Va bien en liso; una caída, una fila de baches o una frenada fuerte lo corta o lo hace toser un momento.",
    notToBeTakenFor: "Un cable que toca metal en los baches.",
    when: "Saltos, baches, frenadas fuertes",
  },
  "revs-rise-over-bumps": {
    words: "Suben las vueltas en los baches con la mano quieta",
    description: "En una fila de baches el motor acelera solo aunque la mano no se mueva.",
    notToBeTakenFor: "La muñeca del piloto.",
    when: "Baches, gas quieto",
  },
  "changes-on-slopes": {
    words: "Va distinto cuesta arriba y cuesta abajo",
    description:
      "Limpio en llano con ese gas; con el morro un rato arriba o abajo se carga o le falta gasolina.",
    when: "Subida o bajada larga y empinada, gas quieto",
  },
  "no-step-where-the-power-valve-opens": {
    words: "Falta el golpe a medias vueltas",
    description: "Tira parejo y flojo donde antes había un escalón de fuerza claro, con cualquier chiclé.",
    when: "3.ª, abriendo poco a poco por las medias vueltas",
  },
};
