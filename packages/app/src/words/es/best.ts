import type { Words } from "../en.ts";

export const best: Words["best"] = {
  title: "¿Qué reglaje es el mejor allí?",
  lead: "Lleva la altura y la temperatura adonde se va a rodar. La lista pesa todo lo que se contó de esta moto, con averías y dudas.",
  height: "Altura",
  temperature: "Temperatura",
  from: "Piezas para elegir",
  order: "Orden",
  runs: "Funciona mejor",
  quick: "El trabajo cuenta",
  throttle: "A fondo",
  safe: "Permitido",
  any: "Limitado",
  top: {
    free: "A fondo: no parece pobre.",
    "seconds only": "A fondo: solo unos segundos, hasta que esté probado.",
    "stay below 3/4": "Quizá pobre arriba: por debajo de 3/4.",
  },
  asFitted: "Como está montado",
  nothingToDo: "Nada que cambiar.",
  keptAs: (place) => (place === 1 ? "Es el mejor de todos." : `Es el número ${place} de la lista.`),
  minutes: (minutes) => `${minutes} minutos, con la prueba.`,
  toBuy: "Hay que comprarlo.",
  mixture: (opening, percent) => {
    const side = percent > 0 ? "rico" : "pobre";
    const where = opening === "closed" ? "cerrado" : opening === "full" ? "a fondo" : opening;
    return Math.abs(percent) < 1 ? `${where}: bien` : `${where}: ${Math.abs(percent)} % ${side}`;
  },
  searched: (count) => `${count} reglajes pesados. Los porcentajes son el centro de lo probable.`,
  none: "Nada de lo que hay hace improbable ir pobre a fondo en este aire. Admite medidas a la venta, o elige «Limitado» y quédate por debajo de 3/4 hasta probarlo.",
  list: "El mejor primero",
  show: (rest) => `${rest} más`,
};
