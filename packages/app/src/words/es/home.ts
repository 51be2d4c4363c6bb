import type { Words } from "../en.ts";

export const home: Words["home"] = {
  title: "Motos",
  first: "Jetwright ayuda a carburar un carburador de campana: junto a la moto y sin red.",
  firstNext: "Di qué lleva la moto, rueda y cuenta lo que hace. Jetwright dice qué hacer ahora, y por qué.",
  setUp: "Carburar mi moto",
  another: "Carburar otra moto",
  example: "Ver un taller de ejemplo",
  exampleComes: "Trayendo el taller de ejemplo…",
  exampleIn: "El taller de ejemplo está aquí: motos inventadas, para probar con ellas.",
  exampleUndo: "Quitarlo",
  exampleNotHere: "El taller de ejemplo aún no está en este aparato: abre la página una vez con red.",
  away: "apartada",
  drawer: "Cajón",
  start: "Punto de partida",
  orders: (open) =>
    open === 0 ? "Órdenes de trabajo" : `Órdenes de trabajo: ${open} ${open === 1 ? "abierta" : "abiertas"}`,
  more: "Más",
  cc: (cc) => `${Math.round(cc)} cc`,
  strokes: (strokes) => (strokes === 2 ? "dos tiempos" : "cuatro tiempos"),
  state: {
    stopped: "parada: busca primero la causa",
    "not-ridden": "cambiada, sin rodar todavía",
    right: "bien",
    "in-work": "en ello",
    "nothing-told": "sin rodar todavía",
  },
};
