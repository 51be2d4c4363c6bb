import type { Words } from "../en.ts";
import { plainFigure } from "../figures.ts";

const PARTS: Words["pictures"]["parts"] = {
  pilot: "baja",
  slide: "campana",
  needle: "aguja",
  main: "principal",
};

/** Which part has the say, with its article. */
const THE: Words["pictures"]["parts"] = {
  pilot: "el chiclé de baja",
  slide: "la campana",
  needle: "la aguja",
  main: "el chiclé principal",
};

const amount = (percent: number): string => {
  const whole = Math.round(percent);
  if (whole === 0) return "bien";
  return whole > 0 ? `${whole} % rica` : `${-whole} % pobre`;
};

const kindOf = (kind: "air" | "fuel"): string =>
  kind === "air" ? "tornillo del aire" : "tornillo de riqueza";
const turnsOf = (turns: string, one: boolean): string => `${turns} ${one ? "vuelta" : "vueltas"} afuera`;

export const pictures: Words["pictures"] = {
  rich: "rica",
  lean: "pobre",
  right: "bien",
  amount,
  opening: {
    closed: "cerrado",
    "1/8": "⅛",
    "1/4": "¼",
    "1/2": "½",
    "3/4": "¾",
    full: "todo",
  },
  spokenOpening: (name) =>
    name === "closed" ? "Gas cerrado" : name === "full" ? "A todo gas" : `A ${name} de gas`,
  parts: PARTS,
  mixture: {
    label: "Mezcla según la apertura del gas",
    hint: "Toca el dibujo, o usa las flechas, para leerlo.",
    now: "ahora",
    after: "después",
    read: (opening, now, low, high) =>
      `${opening}: ${amount(now)}, seguramente entre ${amount(low)} y ${amount(high)}.`,
    readAfter: (after) => `Después del cambio: ${amount(after)}.`,
    governs: (part) => `Aquí manda sobre todo ${THE[part]}.`,
    column: {
      opening: "Gas",
      now: "Mezcla ahora",
      between: "Seguramente entre",
      after: "Después del cambio",
    },
    between: (low, high) => `${amount(low)} y ${amount(high)}`,
    throttle: "gas",
  },
  section: {
    filter: "filtro",
    engine: "motor",
    usualMark: "(usual)",
    clip: (groove) => `clip en la muesca ${plainFigure(groove, "es")}`,
    needle: (marks) => (marks === null || marks === "" ? "aguja" : `aguja ${marks}`),
    cutaway: (millimetres) => `rebaje ${millimetres}`,
    needleJet: (millimetres) => `pulverizador ${millimetres}`,
    main: (number) => (number === null ? "chiclé principal" : `principal ${plainFigure(number, "es")}`),
    pilot: (number) => (number === null ? "chiclé de baja" : `baja ${plainFigure(number, "es")}`),
    screw: (kind, turns) => `${kindOf(kind)} ${turns}`,
    open: "Abrir el gas",
    leads: (part) =>
      ({
        pilot: "el circuito de baja pone la mayor parte de la gasolina.",
        slide: "el rebaje de la campana dice con cuánta fuerza se aspira la gasolina.",
        needle: "el hueco junto a la aguja decide la mayor parte de la gasolina.",
        main: "el chiclé principal decide la mayor parte de la gasolina.",
      })[part],
    gap: (millimetres) => `El hueco junto a la aguja es de ${millimetres} mm a cada lado.`,
    widened: "Aquí se dibuja mucho más ancho de lo que es, para que se vea.",
    millimetres: (figure) => `${figure} mm`,
    sharesTitle: "Partes y pasos, en números",
    pilotShare: "Circuito de baja",
    needleShare: "Aguja y pulverizador",
    mainShare: "Chiclé principal",
    clipStep: "Clip una muesca más abajo",
    slideStep: "Medio milímetro menos de rebaje",
    screwStep: (kind) =>
      kind === "air" ? "Tornillo del aire media vuelta adentro" : "Tornillo de riqueza media vuelta afuera",
    richer: (percent) => `${percent} % más rica`,
    usual: (names) => `No se sabe, así que se dibuja lo usual: ${names}.`,
    usualNames: {
      pilot: "chiclé de baja",
      main: "chiclé principal",
      needle: "aguja",
      profile: "forma de la aguja",
      clip: "muesca del clip",
      needleJet: "pulverizador",
      cutaway: "rebaje",
      screw: "posición del tornillo",
      fuelLift: "nivel de gasolina",
      seatToJet: "distancia del clip al pulverizador",
      idleLift: "altura de la campana al ralentí",
    },
  },
  clip: {
    blunt: "romo",
    now: (clip) => `Ahora: ${clip}.`,
    goesTo: (clip, richer) => `Pasa a: ${clip}, ${richer ? "más rica" : "más pobre"}.`,
    richer: "más rica",
    lower: "clip una muesca más abajo: la aguja queda más alta.",
    leaner: "más pobre",
    higher: "clip una muesca más arriba: la aguja queda más baja.",
    count: "La muesca 1 es la de arriba, en el extremo romo.",
    rule: "La muesca 1 es la de arriba, en el extremo romo; una muesca más baja (número más alto) sube la aguja y es más rica.",
    in: (groove, of, shim) =>
      `clip en la muesca ${groove} de ${of} desde arriba${shim ? ", con una arandela de medio paso debajo" : ""}`,
  },
  screw: {
    filter: "filtro",
    engine: "motor",
    out: "afuera",
    in: "adentro",
    now: (turns, one) => `Ahora: ${turnsOf(turns, one)}.`,
    goesTo: (turns, one, by, out, richer) =>
      `Pasa a ${turnsOf(turns, one)}: ${by} ${out ? "afuera" : "adentro"}, ${richer ? "más rica" : "más pobre"}.`,
    richer: "más rica",
    leaner: "más pobre",
    turnOut: "aflójalo, contra el reloj.",
    turnIn: "apriétalo, como el reloj.",
    rule: {
      air: "El tornillo del aire está del lado del filtro: hacia fuera, más pobre; hacia dentro, más rica.",
      fuel: "El tornillo de riqueza está del lado del motor: hacia fuera, más rica; hacia dentro, más pobre.",
    },
  },
  trend: {
    title: "De salida en salida",
    label: "Mezcla a todo gas, a medio gas y a un octavo, salida por salida",
    note: "Tal como deja ver todo lo contado hasta ahora. Una raya de puntos: antes de esa salida se cambiaron piezas.",
    few: "Para ver un curso hacen falta al menos dos salidas.",
    top: "todo",
    middle: "1/2",
    bottom: "1/8",
    ride: (number) => `salida ${number}`,
    changed: "piezas cambiadas",
    column: { ride: "Salida", top: "A todo gas", middle: "A medio gas", bottom: "A un octavo" },
  },
  carburetor: {
    title: "Carburador",
    now: "Como está montado",
    needle: "Clip",
    screw: "Tornillo",
    leads: "Qué pieza manda dónde",
    back: "Montado",
  },
};
