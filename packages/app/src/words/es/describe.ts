import type { Words } from "../en.ts";

export const describe: Words["describe"] = {
  title: "La moto en sí",
  intro: "Lo que se dice aquí vale para toda la historia de la moto.",
  keep: "Guardar",
  kept: "Guardado.",
  nothing: "No se cambió nada.",
  putAway: "Apartar la moto",
  putAwayHint: "Pasa al final de la lista. Su historia se queda.",
  backAgain: "Devolverla a la lista",
  away: "Apartada.",
  back: "De vuelta en la lista.",
  undo: "Deshacer",
  undone: "Retirado.",
};
