import type { Words } from "../en.ts";

export const right: Words["right"] = {
  mark: "Así va bien",
  hint: "Tócalo después de una buena salida con el aire anotado ahora. La hoja, la tabla y el punto de partida de la próxima moto cuentan desde aquí.",
  airFirst: "Si así va bien, anota antes el aire de hoy: lo que está bien con un aire no lo está con otro.",
  noteAir: "Anotar el aire",
  marked: "Anotado: va bien con este aire.",
  undo: "Deshacer",
  undone: "Deshecho.",
};
