import type { Words } from "../en.ts";

export const lookOver: Words["lookOver"] = {
  title: "Repasa la moto entera",
  about: (minutes) => `unos ${Math.round(minutes)}\u00a0min`,
  intro:
    "Una cosa tras otra, en este orden, empezando con el motor frío. Cada toque queda guardado; lo que dejes queda pendiente.",
  how: "Cómo",
  fine: "Bien",
  notFine: "Mal",
  skip: "Dejarlo",
  of: (choice, look) => `${choice}: ${look}`,
  which: "¿Qué está mal?",
  back: "Atrás",
  mend: "Si está mal:",
  mended: "Arreglado.",
  left: (count) => (count === 1 ? "Queda 1 cosa por mirar." : `Quedan ${count} cosas por mirar.`),
  allFine: "No se encontró nada mal.",
  found: (faults) => `Encontrado: ${faults.join("; ")}. Eso se arregla primero.`,
  enough: "Basta por ahora: siguiente paso",
  next: "Siguiente paso",
};
