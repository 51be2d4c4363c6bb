import type { SignTexts } from "../../core-words.ts";

const CHOKE_WHEN = "Caliente, donde sale el fallo, por debajo de medio gas";
const TAP_WHEN = "Caliente, grifo cerrado, mantenido donde sale el fallo";
const AIR_WHEN = "Caliente, ralentí algo subido, tornillo del aire del lado del filtro";
const FUEL_WHEN = "Caliente, ralentí algo subido, tornillo de riqueza del lado del motor";
const STEP_WHEN = "La misma pasada antes y después de un paso";
const WISHING =
  "Las ganas de que mejore: que lo monte otro sin que lo veas, y repite. Anótalo para el ajuste de antes del paso.";
const BACK_WHEN = "Anótalo para el ajuste con el que vino el fallo";
const FLICK_WHEN = "Recta larga, a todo gas, estárter un instante; pide mano";

/** What a test shows. */
export const engineTests: SignTexts<"engine-tests"> = {
  "touch-of-choke-better": {
    words: "Un toque de estárter lo mejora",
    description:
      "Con el estárter apenas abierto el fallo mengua o se va: tira o aguanta el ralentí mejor al instante.",
    when: CHOKE_WHEN,
  },
  "touch-of-choke-worse": {
    words: "Un toque de estárter lo empeora o lo mata",
    description: "Con el estárter apenas abierto se carga, borbotea o muere.",
    when: CHOKE_WHEN,
  },
  "touch-of-choke-no-change": {
    words: "Un toque de estárter no cambia nada",
    description: "Con el estárter apenas abierto va exactamente igual.",
    when: CHOKE_WHEN,
  },
  "tap-off-clears-before-it-dies": {
    words: "Grifo cerrado: se despeja justo antes de pararse",
    description: "Solo con la cuba, se afila en los últimos segundos antes de quedarse sin gasolina.",
    when: TAP_WHEN,
  },
  "tap-off-no-clearing": {
    words: "Grifo cerrado: no mejora antes de pararse",
    description: "Solo con la cuba, empeora o muere sin más, nunca más vivo.",
    when: TAP_WHEN,
  },
  "screw-peak-in-the-middle": {
    words: "Mejor ralentí entre 1 y 2½ vueltas, más o menos",
    description:
      "Al girar el tornillo pequeño, el ralentí sube a un máximo claro entre una y dos vueltas y media y cae a los dos lados.",
    when: "Caliente, ralentí algo subido, cuarto de vuelta cada vez",
  },
  "air-screw-best-nearly-closed": {
    words: "Tornillo del aire: mejor ralentí casi cerrado",
    description: "El ralentí mejora cuanto más adentro, lo mejor por debajo de una vuelta.",
    when: AIR_WHEN,
  },
  "air-screw-best-far-out": {
    words: "Tornillo del aire: mejor ralentí muy afuera",
    description: "El ralentí mejora cuanto más afuera, lo mejor más allá de dos y media a tres vueltas.",
    when: AIR_WHEN,
  },
  "fuel-screw-best-nearly-closed": {
    words: "Tornillo de riqueza: mejor ralentí casi cerrado",
    description: "El ralentí mejora cuanto más adentro, lo mejor por debajo de una vuelta.",
    when: FUEL_WHEN,
  },
  "fuel-screw-best-far-out": {
    words: "Tornillo de riqueza: mejor ralentí muy afuera",
    description: "El ralentí mejora cuanto más afuera, lo mejor más allá de dos y media a tres vueltas.",
    when: FUEL_WHEN,
  },
  "screw-makes-no-difference": {
    words: "El tornillo pequeño no hace nada",
    description: "De asentado suave a tres vueltas afuera, el ralentí no responde.",
    when: "Caliente, ralentí tan bajo como aguante",
  },
  "one-step-more-fuel-better": {
    words: "Un paso más de gasolina: mejor",
    description:
      "Un número de chiclé más, el clip una muesca más abajo o un cuarto de vuelta, y el fallo es claramente menor.",
    notToBeTakenFor: WISHING,
    when: STEP_WHEN,
  },
  "one-step-more-fuel-worse": {
    words: "Un paso más de gasolina: peor",
    description:
      "Un número de chiclé más, el clip una muesca más abajo o un cuarto de vuelta, y el fallo es claramente mayor.",
    notToBeTakenFor: WISHING,
    when: STEP_WHEN,
  },
  "one-step-more-fuel-same": {
    words: "Un paso más de gasolina: sin diferencia",
    description:
      "Un número de chiclé más, el clip una muesca más abajo o un cuarto de vuelta, y nada cambia.",
    when: STEP_WHEN,
  },
  "stays-on-known-good-setting": {
    words: "El fallo sigue con el mejor ajuste conocido",
    description: "Cada pieza como en el ajuste con el que iba bien, con aire parecido, y el fallo sigue.",
    when: BACK_WHEN,
  },
  "gone-on-known-good-setting": {
    words: "El fallo se va con el mejor ajuste conocido",
    description: "Cada pieza como en el ajuste con el que iba bien, con aire parecido, y el fallo se fue.",
    when: BACK_WHEN,
  },
  "roll-off-picks-up": {
    words: "Del tope a 7/8: tira más",
    description: "Cortar un poco desde el tope lo hace tirar más o subir más de vueltas.",
    notToBeTakenFor: "Una hondonada del suelo.",
    when: "Marcha larga, llano, a fondo constante",
  },
  "four-strokes-after-tiny-cut": {
    words: "Un pelo menos: hace el cuatro tiempos enseguida",
    description:
      "El menor corte desde el tope y enciende una vuelta sí y otra no: medio compás, blando y desigual.",
    when: "Marcha larga, a fondo constante, un pelo menos",
  },
  "four-strokes-at-about-80-percent": {
    words: "Cortado a un 80 %: cuatro tiempos ligero",
    description:
      "Cortado desde el tope sigue tirando, y hacia cuatro quintos empieza a encender una vuelta sí y otra no, ligero.",
    when: "Marcha larga, a fondo constante, cortado a un 80 %",
  },
  "roll-off-never-four-strokes": {
    words: "Cortado bien por debajo del 80 %: nunca hace el cuatro tiempos",
    description: "Cortado desde el tope a bien por debajo de cuatro quintos sigue suave y seco y solo frena.",
    when: "Marcha larga, a fondo constante, cortado por debajo del 80 %",
  },
  "roll-off-no-pick-up": {
    words: "Del tope a 7/8: afloja parejo",
    description: "Cortar un poco desde el tope solo lo hace tirar un poco menos.",
    when: "Marcha larga, llano, a fondo constante",
  },
  "choke-flick-revs-higher": {
    words: "Toque de estárter a todo gas: suben las vueltas",
    description: "En el instante del estárter las vueltas dan un paso arriba antes de asentarse.",
    when: FLICK_WHEN,
  },
  "choke-flick-revs-lower": {
    words: "Toque de estárter a todo gas: las vueltas vuelven más bajas",
    description: "En el instante del estárter el motor se hunde y las vueltas vuelven más bajas.",
    when: FLICK_WHEN,
  },
  "choke-flick-no-change": {
    words: "Toque de estárter a todo gas: sin cambio",
    description: "En el instante del estárter las vueltas no se mueven.",
    when: FLICK_WHEN,
  },
  "bogs-fast-and-slow-four-stroke": {
    words: "Se ahoga al abrir rápido y al abrir despacio",
    description: "De golpe o poco a poco, boquea y se hunde igual, sin humo.",
    when: "Caliente, de cerrado a 1/2 rápido, luego lo mismo despacio",
  },
};
