import type { CoreWords } from "../core-words.ts";
import { withComma } from "../figures.ts";
import { lowerFirst, upperFirst } from "../letters.ts";
import { listed } from "./listed.ts";
import { openings } from "./openings.ts";
import { partName, partNamed, parts, partValue } from "./parts.ts";

type Steps = CoreWords["steps"];

const NOTHING_CHANGED = "No se cambia nada.";
const CHANGE_TOOLS = ["destornillador de estrella n.º 2", "destornillador plano", "llave hexagonal de 3 mm"];
const PLUG_SPANNER = "llave fija de 14 o 17 mm para el tapón de la cuba";

const TO_READ = {
  pilot: "chiclé de baja",
  screw: "posición del tornillo",
  needle: "aguja",
  clip: "muesca del clip",
  main: "chiclé principal",
} as const;

const TOP_RIDE = {
  free: "De 3/4 a fondo: mantén unos segundos y corta un poco.",
  "seconds only": "De 3/4 a fondo: mantén dos o tres segundos, no más, y corta un poco.",
  "stay below 3/4": "De 3/4 en adelante, no lo toques.",
} as const;

const mend: Steps["mend"] = {
  title: (fault) => `Antes que ningún chiclé, arregla esto: ${fault}`,
  expect:
    "La queja de antes cambia o desaparece. Lo que se notó antes del arreglo cuenta poco a partir de ahora.",
  wrongIf: "Va exactamente igual que antes: la avería no era la causa, o sigue ahí.",
  undo: "Guarda lo que quites hasta que la próxima salida muestre que el arreglo es bueno.",
  note: "Anota el arreglo cuando esté hecho.",
};

const check: Steps["check"] = {
  expect: (fault, timesInTen, remedy) =>
    `Si la causa es esta (${fault}), esta comprobación la encuentra unas ${timesInTen} de cada 10 veces. Entonces: ${lowerFirst(remedy)}`,
  wrongIf: (fault) => `Todo está bien. Entonces es menos probable: ${fault}. Anota la comprobación y sigue.`,
  undo: NOTHING_CHANGED,
};

const lookOver: Steps["lookOver"] = {
  title: "Repasa la moto entera antes de tocar un chiclé",
  look: (words) => (words.endsWith("?") ? words : `${words}.`),
  expect: (timesInTen) =>
    `En una moto que va así, aparece algo mal en ${timesInTen} de cada 10 casos, más o menos. Eso se arregla primero; ningún chiclé lo cura.`,
  wrongIf:
    "Todo está bien: entonces es menos probable que la causa sea algo de lo mirado, y ahora tocan los chiclés.",
  undo: "No se cambia nada. Vuelve a montar lo que quitaste.",
  note: "De una vez se tarda menos que mirando cosa por cosa: la herramienta se saca una vez y la bujía se quita una vez.",
};

const test: Steps["test"] = {
  titleAt: (words, opening) => `${words}, ${openings.at(opening)}`,
  expect: (outcome, timesInTen) =>
    `Lo más probable: «${lowerFirst(outcome)}», unas ${timesInTen} de cada 10 veces. Cada respuesta lleva a otro paso.`,
  wrongIf: "Responde distinto cada vez. Entonces no dice nada: no la anotes.",
  undo: "Vuelve a poner lo que moviste para la prueba.",
};

const change: Steps["change"] = {
  how: {
    main: (jet) =>
      `Quita el tapón de la cuba (o la cuba), saca el chiclé principal y monta el ${jet}. Lee el número del que sale.`,
    pilot: (jet) =>
      `Quita la cuba, saca el chiclé de baja con un destornillador que llene la ranura y monta el ${jet}.`,
    clip: (from, to) =>
      `Quita la tapa, saca la campana y pasa el clip de ${partValue(from)} a ${partValue(to)}. La muesca 1 es la de arriba, en el extremo romo; una muesca más abajo sube la aguja y enriquece el medio.`,
    needle: (to) => `Quita la tapa, saca la campana y monta la aguja ${partValue(to)}.`,
    slide: (to) => `Quita la tapa y monta la campana con ${partValue(to)}; el rebaje mira al filtro.`,
    screw: (kind, to) =>
      `${kind === "air" ? "Tornillo del aire, del lado del filtro: afuera es más pobre" : "Tornillo de riqueza, del lado del motor: afuera es más rico"}. Cuenta las vueltas hasta que asiente suave y luego déjalo en ${partValue(to)}.`,
    needleJet: (to) => `Quita la cuba, saca el pulverizador y monta el de ${partValue(to)}.`,
  },
  jet: (jet) => (jet === null ? "no se sabe" : parts.jet(jet)),
  tools: {
    screw: ["destornillador plano"],
    cap: CHANGE_TOOLS,
    bowl: [...CHANGE_TOOLS, PLUG_SPANNER],
  },
  expect: (way, percent, opening, right) =>
    `Más ${way === "leaner" ? "pobre" : "rica"}, ${percent < 1 ? "menos de un 1 %" : `cerca de un ${withComma(percent)} %`}, ${openings.at(opening)}, donde más actúa. Si es lo correcto, ${right}.`,
  wrongIf: (clause) => `${upperFirst(clause)}. Entonces deshazlo.`,
  undo: (before) => `Vuelve a: ${before.map(partNamed).join("; ")}.`,
  notInDrawer: (missing) => `No están en el cajón: ${missing.map(partNamed).join(", ")}.`,
  fitsThisBody: "El cajón no dice para qué carburador son estas piezas: comprueba antes que sirven en este.",
  togetherSaves: (changed, minutes) =>
    `Cambiar a la vez ${listed(changed.map(partName))} ahorraría unos ${minutes} minutos en total; de una en una se sabe mejor qué hizo cada cosa.`,
  oneAtATimeCosts: (minutes) =>
    `Cambiar de una en una costaría unos ${minutes} minutos más en total; así se sabe mejor qué hizo cada cosa.`,
};

const waiting: Steps["waiting"] = {
  ride: "Un cambio que ayudaría tiene que esperar: sigue rodando y cuenta lo que cambie",
  why: {
    top: (percent) =>
      `Empobrecería de 3/4 a fondo cerca de un ${percent} %, y el gas a fondo todavía no está comprobado.`,
    "other reasons": () =>
      "Empobrecería el gas a fondo, donde puede parecer rica por algo que no son los chiclés.",
    pinging: () => "La empobrecería, y así picó.",
  },
  frees: {
    top: "Primero comprueba el gas a fondo.",
    "bigger main": "Un chiclé principal mayor mantiene seguro el gas a fondo.",
    "other reasons": "Mira primero chispa, filtro, escape y compresión.",
    pinging: "Busca por qué pica y arréglalo, o ve a más rica.",
  },
  by: (title) => `Para eso, lo siguiente: ${lowerFirst(title)}.`,
  comesFirst: {
    test: (change, opening) =>
      `${change}: eso ayudaría ${openings.at(opening)}. Primero comprueba el gas a fondo.`,
    other: (change, opening) => `${change}: eso ayudaría ${openings.at(opening)}. Esto va antes.`,
  },
};

const readParts: Steps["readParts"] = {
  title: (unknown) => `Averigua qué lleva montado: ${listed(unknown.map((part) => TO_READ[part]))}`,
  how: [
    "Cuenta las vueltas del tornillo desde donde está hasta que asiente suave, apúntalas y devuélvelo a su sitio.",
    "Fuera el tapón de la cuba o la cuba: lee con lupa los números de los dos chiclés, con la marca del fabricante.",
    "Fuera la tapa y la campana: en qué muesca desde arriba está el clip, y qué llevan grabado la aguja y la campana.",
    "Una aguja sin marcas: mide su diámetro con micrómetro cada 5 mm, de la muesca de arriba hacia abajo.",
  ],
  tools: [...CHANGE_TOOLS, PLUG_SPANNER, "lupa"],
  expect: "Números de los que partir. Anota de cada pieza si la leíste, la mediste o te lo dijeron.",
  wrongIf: "Un número no cuadra con cómo va: puede estar taladrado o cambiado. Mídelo.",
  undo: "Vuelve a poner cada pieza como estaba.",
  note: "Hasta entonces esas piezas se quedan como están.",
};

const ride: Steps["ride"] = {
  unheard: "Sal con ella como está y cuenta lo que hace",
  onStand: "Déjala al ralentí, abre de golpe y cuenta qué ha hecho el tornillo girado",
  howOnStand: [
    "Motor bien caliente, en el caballete, al aire libre o con el escape conducido fuera.",
    "20 segundos al ralentí. Luego tres aperturas rápidas hasta 1/4 y vuelta, dejando que se asiente entre ellas.",
    "Cuenta, comparado con antes del giro, cómo va el ralentí, cómo responde y cómo vuelve al ralentí.",
  ],
  confirm: "No hay nada que cambiar: confírmalo con esta salida",
  rideOn: "Ningún cambio vale ahora sus minutos: sigue rodando y cuenta lo que cambie",
  again: (sorted) => `Vuelve a salir y cuenta cómo va ${openings.atEach(sorted)}`,
  how: (top) => [
    "Marca el puño: cerrado, 1/8, 1/4, 1/2, 3/4 y a fondo, por la altura de la campana.",
    "Motor bien caliente. El mismo tramo, la misma marcha, tres veces cada cosa.",
    "Cerrado: 20 segundos al ralentí, luego un golpe a 1/4 y vuelta. De 1/8 a 1/4: despacio y constante, cierra, vuelve a abrir.",
    `De 1/4 a 1/2: abre poco a poco desde bajas vueltas en una marcha más larga. ${TOP_RIDE[top]}`,
    "Cuenta qué oíste, viste y sentiste en cada apertura, y qué buscaste y no encontraste.",
  ],
  tools: ["cinta y rotulador para el puño"],
  expectConfirmed: "Va tan bien como antes, en todas las aperturas.",
  expectSame: "Va como antes. Si un tramo empeora, ahí valdrá la pena un cambio.",
  expectMore: "Cada salida contada aclara el cuadro, y de ahí sale el paso siguiente.",
  wrongIf: "Aparece algo que antes no estaba. Cuéntalo también.",
  undo: NOTHING_CHANGED,
};

const stop: Steps["stop"] = {
  title: "Para: ni rodar ni cambiar chiclés hasta encontrar la causa",
  how: [
    "Apágalo y deja que se enfríe. No lo arranques otra vez para probar.",
    "Saca la bujía: busca motas, metal y un borde fundido, con luz y lupa.",
    "Mira por el escape y por el agujero de la bujía si hay arañazos en el pistón, si llegas.",
    "Comprueba que campana, cable y toberas estén sanos y que nada sujete el gas abierto.",
    "Llévalo a un técnico autorizado: prueba de presión, encendido y una mirada por dentro antes de que vuelva a andar.",
  ],
  tools: ["llave de bujías", "linterna", "lupa"],
  expect:
    "Una causa que se vea o se mida. Anota la comprobación y lo que encontró; solo entonces sigue la puesta a punto.",
  wrongIf:
    "Una mirada a fondo no encuentra nada. Anota esa comprobación como sana: la puesta a punto sigue, con suavidad.",
  undo: NOTHING_CHANGED,
  note: "Si tiene que andar antes de eso: primero un chiclé principal más rico, nunca uno más pobre.",
};

/** Every sentence of a step: what to do, what to expect, what would prove it wrong, how to undo it. */
export const steps: Steps = {
  mend,
  check,
  lookOver,
  test,
  change,
  waiting,
  readParts,
  ride,
  stop,
  topThrottle: {
    "seconds only":
      "Arriba aún no está probado: unos segundos a 3/4 o más, no más, y suelta el gas al primer picado.",
    "stay below 3/4": "Arriba puede ir pobre: quédate por debajo de 3/4 de gas.",
  },
  afterKnock: "Así picó: abre poco a poco, y suelta el gas al primer cascabeleo.",
};
