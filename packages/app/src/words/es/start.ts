import type { Words } from "../en.ts";
import { plainFigure } from "../figures.ts";

const plain = (x: number): string => plainFigure(x, "es");

export const start: Words["start"] = {
  title: "Punto de partida",
  back: "Motos",
  lead: "Para una moto que aquí nadie ha carburado: basta con lo que sepa quien llama.",
  strokes: "El motor",
  two: "dos tiempos",
  four: "cuatro tiempos",
  displacement: "Cilindrada",
  displacementHint: "La que alimenta este carburador",
  cc: "cc",
  bore: "Diámetro del carburador",
  boreHint: "Medido del lado del motor; vacío si no se sabe",
  mm: "mm",
  use: "Para qué",
  uses: { trail: "paseo", enduro: "enduro", race: "carreras" },
  notKnown: "no se sabe",
  screw: "El tornillo pequeño",
  airScrew: "lado del filtro",
  fuelScrew: "lado del motor",
  numbering: "Los números de los chiclés son",
  boreNumber: "paso",
  flowNumber: "caudal",
  height: "Altura del lugar",
  temperature: "Temperatura",
  wrongNumber: "Escribe un número, o déjalo vacío.",
  wrongHeight: "Escribe una altura, como 450 m o 1500 ft.",
  wrongTemperature: "Escribe una temperatura, como 18 C o 65 F.",
  go: "Calcular",
  result: "Empieza con",
  parts: {
    main: "Chiclé principal",
    pilot: "Chiclé de baja",
    clip: "Clip",
    screw: "Tornillo",
    cutaway: "Rebaje",
  },
  numbered: (part, numbering) => `${part}, número de ${numbering}`,
  clip: (groove) => `muesca ${plain(groove)} de 5 desde arriba`,
  turns: (turns) => `${plain(turns)} vueltas afuera`,
  cutaway: (mm) => `${plain(mm)} mm`,
  spread: (low, high) => `nueve de cada diez acaban entre ${low} y ${high}`,
  needle: "Aguja",
  know: "Antes conviene saber",
  rests: "En qué se apoya",
  restsOn: (part, words) => `${part}: ${words}`,
  shop: (count) =>
    count === 0
      ? "Este taller aún no ha marcado ninguna carburación como buena: se apoya solo en la teoría."
      : count === 1
        ? "Había una carburación que este taller marcó como buena."
        : `Había ${count} carburaciones que este taller marcó como buenas.`,
  notUsed: "Sin usar",
  firstRide: "Primera salida",
  text: "Para enviar",
};
