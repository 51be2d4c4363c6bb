import type { SignTexts } from "../../core-words.ts";

/** Full throttle, and revving past the peak. */
export const wideOpen: SignTexts<"wide-open"> = {
  "pulls-clean-to-peak": {
    words: "Tira limpio hasta arriba y acaba limpio",
    description: "A fondo tira fuerte todo el rato, un sonido claro, y arriba simplemente deja de tirar.",
    when: "A todo gas, en 3.ª o más",
  },
  "will-not-rev-out": {
    words: "No estira: plano y áspero arriba",
    description:
      "Tira y luego se aplana, áspero y borboteando antes de arriba, como si una mano lo sujetara; a menudo con humo.",
    notToBeTakenFor: "Un limitador de vueltas, que también lo hace borbotear.",
    when: "A todo gas bajo carga",
  },
  "fades-then-recovers": {
    words: "Fuerte y luego se desinfla; vuelve al cerrar",
    description:
      "A fondo tira bien al principio, a los segundos se vuelve flojo y fino, y vuelve en cuanto se cierra una vez.",
    notToBeTakenFor: "Una toma de aire, que no necesita esos segundos.",
    when: "Todo gas largo",
  },
  "fades-after-ten-seconds": {
    words: "Se desinfla a los diez segundos, y enseguida bien",
    description:
      "Cuenta hasta diez a fondo antes de que se desinfle; cierra unos segundos y los diez siguientes son tan fuertes como los primeros.",
    when: "Todo gas contado en segundos, dos veces",
  },
  "cuts-as-if-tap-off": {
    words: "Se corta como con el grifo cerrado, y vuelve",
    description:
      "En un todo gas largo se muere del todo, rueda sin motor y vuelve solo a los pocos segundos.",
    notToBeTakenFor: "Un cable roto, que corta seco y sin avisar.",
    when: "Todo gas largo",
  },
  "over-revs-thin-and-sharp": {
    words: "Sigue subiendo, fino y agudo",
    description: "Pasado su punto sigue subiendo con un sonido fino, duro y metálico, y poca fuerza detrás.",
    when: "Pasadas las vueltas de mayor fuerza",
  },
  "tearing-note-at-full-throttle": {
    words: "Sonido metálico que desgarra a todo gas",
    description:
      "Un golpeteo metálico duro o un sonido como de chapa al rasgarse a plena carga. Cierra con suavidad y no lo repitas.",
    notToBeTakenFor: "Una fuga en la unión del escape.",
    when: "Plena carga: para",
  },
  "knocks-from-inside": {
    words: "Golpea o muele por dentro",
    description:
      "Un golpe sordo, un molido o un retumbo al compás del motor que antes no estaba. Para el motor.",
    when: "En cualquier momento: para",
  },
  "seized-or-nipped": {
    words: "Gripado, o se agarró y se soltó",
    description:
      "La rueda trasera se bloqueó o el motor se frenó solo con un chirrido, y luego giró duro o libre otra vez.",
    when: "En cualquier momento: para",
  },
  "clears-with-filter-off": {
    words: "Va limpio en una pasada corta sin filtro",
    description: "Cargado y plano con filtro; sin él, en una pasada corta y sin polvo, tira limpio arriba.",
    when: "Una pasada corta en suelo limpio, nunca mucho rato a fondo",
  },
  "better-with-cap-or-vent-free": {
    words: "Se cura con el tapón flojo o un respiradero suelto",
    description:
      "La misma pasada larga ya no se desinfla ni se corta al aflojar el tapón del depósito o soltar el respiradero de la cuba.",
    when: "Repetida la pasada que se desinflaba",
  },
};
