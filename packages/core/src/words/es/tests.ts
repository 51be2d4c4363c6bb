import type { CoreWords } from "../core-words.ts";

const WARM = "Motor bien caliente: rodado con suavidad hasta que el refrigerante esté a su temperatura.";
const MARKS =
  "Marca el puño: cinta en la carcasa fija y rayas a 1/8, 1/4, 1/2, 3/4 y a fondo, por la altura de la campana, no por el giro.";
const THREE_TIMES = "Hazlo tres veces, mismo sitio, misma marcha, y anota lo que hizo la mayoría.";

const ROLL_ON_STEPS = [
  WARM,
  MARKS,
  "2.ª o 3.ª, bajas vueltas, cuesta arriba si la hay: abre poco a poco hasta la marca y mantén de 3 a 5 s.",
  THREE_TIMES,
  "Al primer picado, cierra y acaba la prueba.",
];
const PLUG_OUTCOMES = {
  white: "Blanca o vidriada",
  tan: "Tostada o marrón claro",
  black: "Seca y negra de hollín",
  specks: "Motas grises o bolitas de metal",
};
const PLUG_STEPS = [
  "Calienta con una bujía vieja y luego pon una nueva de grado térmico correcto.",
  "Rueda constante con el gas elegido y bajo carga, lo bastante para que tome color; las fuentes dicen de menos de un kilómetro a varios minutos.",
  "Sin cerrar el gas, tira del embrague y para el motor en el mismo momento. No lo dejes al ralentí. Déjala rodar hasta parar.",
  "Fuera la bujía, mira la porcelana con luz y lupa, y vuelve a poner la vieja.",
];
const PLUG_TOOLS = ["bujía nueva", "llave de bujías", "lupa y linterna", "guantes"];
const ONE_STEP_OUTCOMES = { better: "Mejor", same: "Igual", worse: "Peor" };
const ONE_STEP_STEPS = [
  WARM,
  MARKS,
  "Haz la pasada que muestra el fallo. Cambia una cosa un paso hacia más gasolina: cerca de cerrado, el tornillo pequeño un cuarto de vuelta (tornillo del aire adentro, de riqueza afuera); en el medio, el clip una muesca más abajo; arriba, el principal un número más grande.",
  "La misma pasada otra vez: ¿mejor, igual o peor? Lo mejor es que lo monte un ayudante sin que lo veas.",
  "Vuelve a dejarlo como estaba, si no es mejor. Anota la respuesta para el ajuste de antes del paso.",
];
const ONE_STEP_TOOLS = [
  "destornillador de estrella n.º 2 y plano",
  "llave hexagonal de 3 mm",
  "llave fija de 14 o 17 mm para el tapón de la cuba",
  "el chiclé siguiente",
];
const SWEEP_OUTCOMES = {
  middle: "Lo mejor entre 1 y 2½ vueltas, más o menos",
  "nearly-closed": "Lo mejor casi cerrado, menos de 1 vuelta",
  "far-out": "Lo mejor muy afuera, más de 2½ a 3 vueltas",
  "no-difference": "Sin diferencia en ningún sitio",
};
const SWEEP_STEPS = [
  WARM,
  "Cerca de 1 mm de juego en el cable. Sube un poco el ralentí con el tope (un fabricante de carburadores: unas 1400 por minuto en un dos tiempos, 1200 en un cuatro tiempos).",
  "Cuenta las vueltas desde ahora hasta que asiente suave y apúntalas. Nunca fuerces el tornillo en su asiento.",
  "Empieza con 1½ vueltas afuera. Mueve un cuarto de vuelta y espera de 10 a 20 s cada vez.",
  "Busca dónde las vueltas son más altas y regulares, baja el ralentí con el tope y busca otra vez. Apunta las vueltas.",
];
const SWEEP_TOOLS = ["destornillador plano", "cuentavueltas si lo hay"];
const GRIP_TOOLS = ["cinta y rotulador de pintura"];

/** What can be done to the running engine: the heading, the steps in order, and what may happen, as on a button. */
export const tests: CoreWords["tests"] = {
  "idle-hold": {
    words: "Déjalo al ralentí un minuto",
    outcomes: {
      steady: "Regular todo el minuto",
      "loads-up": "Baja, se carga, se para o casi",
      hunts: "Sube y baja solo",
      "will-not": "No aguanta el ralentí",
    },
    steps: [
      WARM,
      "Parada al aire libre, en punto muerto, manos fuera 60 s.",
      "Luego un golpe corto de gas: ¿se despeja con un borboteo y humo?",
    ],
    tools: ["cronómetro"],
  },
  "chop-warm": {
    words: "Cierra el gas desde medias vueltas, caliente",
    outcomes: {
      straight: "Cae directo al ralentí",
      hangs: "Se queda colgado, cae tarde",
      dives: "Se hunde por debajo y vuelve",
      stalls: "Se para",
    },
    steps: [
      WARM,
      "Punto muerto. Sube las vueltas con suavidad hasta la mitad y suelta de golpe.",
      "Cuenta el tiempo hasta el ralentí: de 0,8 a 1,5 s está bien, con volante pesado 2 s; un segundo más es quedarse colgado.",
      THREE_TIMES,
    ],
    tools: ["cronómetro"],
  },
  "chop-hot": {
    words: "Cierra el gas otra vez muy caliente, tras una vuelta dura",
    outcomes: {
      "no-hang": "No se cuelga, ni templado ni muy caliente",
      same: "Se cuelga lo mismo que templado",
      grows: "Se cuelga medio segundo más o mucho más",
      "only-hot": "Se cuelga solo ahora que está muy caliente",
    },
    steps: [
      "Cronometra el cierre templado, tres veces, y apúntalo.",
      "Da una vuelta dura, entra directo y cronométralo otra vez antes de un minuto.",
      "Medio segundo más o mayor es que crece.",
    ],
    tools: ["cronómetro"],
  },
  "quick-opening": {
    words: "Ábrelo de golpe desde cerrado",
    outcomes: {
      crisp: "Responde al instante",
      bog: "Bocanada hueca, silencio, sin humo",
      stumble: "Gorgotea y echa humo, se despeja al subir",
      switch: "Nada, y de pronto un golpe",
    },
    steps: [
      WARM,
      "Ralentí 20 s, golpe hasta la apertura de arriba (1/4 si no hay) y vuelta.",
      "Mira el silencioso: ¿humo o nada?",
      THREE_TIMES,
    ],
    tools: [],
  },
  "slow-versus-fast-opening": {
    words: "Abre rápido, y luego lo mismo despacio",
    outcomes: {
      "both-clean": "Limpio de las dos formas",
      "fast-only": "Se ahoga rápido, limpio despacio",
      "both-bog": "Se ahoga de las dos formas",
    },
    steps: [
      WARM,
      "De cerrado a 1/2 tan rápido como va la mano, tres veces.",
      "Luego lo mismo abriendo en dos segundos, tres veces.",
    ],
    tools: [],
  },
  "touch-of-choke": {
    words: "Dale un toque de estárter",
    outcomes: { better: "Mejor", worse: "Peor, o se para", "no-change": "Sin cambio" },
    steps: [
      WARM,
      "Haz que salga el fallo, en el caballete o rodando despacio, a medio gas o menos.",
      "Abre apenas el estárter; si solo tiene sí y no, dale un toque.",
      "Después, estárter quitado del todo.",
    ],
    tools: [],
  },
  "half-turn-for-the-hang": {
    words: "Media vuelta del tornillo pequeño contra el cuelgue",
    outcomes: { gone: "Ya no se cuelga, o claramente menos", same: "Se cuelga lo mismo" },
    steps: [
      "Caliente, con el cuelgue cronometrado tres veces. Apunta las vueltas del tornillo.",
      "Media vuelta hacia más gasolina: tornillo del aire (lado del filtro) adentro, de riqueza (lado del motor) afuera.",
      "Ajusta otra vez el ralentí y cronometra tres veces más.",
      "Deja el tornillo donde estaba.",
    ],
    tools: ["destornillador plano", "cronómetro"],
  },
  "screw-sweep-air": {
    words: "Busca el mejor ralentí con el tornillo del aire",
    outcomes: SWEEP_OUTCOMES,
    steps: [
      "Tornillo del aire: del lado del filtro de la campana. Afuera es más aire, o sea menos gasolina.",
      ...SWEEP_STEPS,
    ],
    tools: SWEEP_TOOLS,
  },
  "screw-sweep-fuel": {
    words: "Busca el mejor ralentí con el tornillo de riqueza",
    outcomes: SWEEP_OUTCOMES,
    steps: ["Tornillo de riqueza: del lado del motor de la campana. Afuera es más gasolina.", ...SWEEP_STEPS],
    tools: SWEEP_TOOLS,
  },
  "tap-off-run-down": {
    words: "Cierra el grifo y deja que se agote",
    outcomes: { clears: "Se despeja justo antes de pararse", "no-clearing": "No mejora antes de pararse" },
    steps: [
      WARM,
      "Haz que salga el fallo a medio gas o menos, cierra el grifo y mantén ahí.",
      "Escucha los últimos segundos: ¿se afila o solo se muere de hambre?",
      "Cierra el gas en cuanto le falte, y abre el grifo. Nunca a tres cuartos o más: ahí se queda sin gasolina a plena carga.",
    ],
    tools: [],
  },
  "roll-on": {
    words: "Abre poco a poco y mantén",
    outcomes: {
      smooth: "Tira limpio",
      burbles: "Hace el cuatro tiempos: medio compás, blando",
      jerks: "Da tirones o vaivenes",
      hollow: "Sube de vueltas pero no tira, hueco",
      pings: "Pica",
    },
    steps: ROLL_ON_STEPS,
    tools: GRIP_TOOLS,
  },
  "roll-on-four-stroke": {
    words: "Abre poco a poco y mantén",
    outcomes: {
      smooth: "Tira limpio",
      lazy: "Perezoso, apagado, huele a gasolina",
      jerks: "Da tirones o vaivenes",
      hollow: "Sube de vueltas pero no tira, hueco",
      pings: "Pica",
    },
    steps: ROLL_ON_STEPS,
    tools: GRIP_TOOLS,
  },
  "full-pull": {
    words: "Mantenlo a fondo unos segundos",
    outcomes: {
      clean: "Tira limpio hasta arriba",
      rough: "Plano, áspero, no estira",
      fades: "Fuerte y luego se desinfla; vuelve al cerrar",
      cuts: "Se corta como con el grifo cerrado",
      thin: "Sigue subiendo, fino y agudo",
      tearing: "Sonido metálico que desgarra",
    },
    steps: [
      WARM,
      "3.ª o 4.ª, con carga: a fondo de 3 a 5 s, dos dedos en el embrague.",
      "Cierra con suavidad. Al menor picado o desgarro cierra enseguida y no lo repitas.",
      THREE_TIMES,
    ],
    tools: [],
  },
  "roll-off": {
    words: "Corta poco a poco desde el tope",
    outcomes: {
      "picks-up": "Tira más al bajar a 7/8",
      "tiny-cut": "Cuatro tiempos con un pelo menos",
      "at-80": "Cuatro tiempos ligero a un 80 %",
      never: "Nunca hace el cuatro tiempos",
    },
    steps: [
      WARM,
      MARKS,
      "Marcha larga, llano, a fondo y con carga de 3 a 5 s.",
      "Baja despacio a 7/8, luego a un 80 %, y escucha todo el rato.",
      THREE_TIMES,
    ],
    tools: GRIP_TOOLS,
  },
  "roll-off-four-stroke": {
    words: "Corta poco a poco desde el tope",
    outcomes: { "picks-up": "Tira más al bajar a 7/8", eases: "Solo tira un poco menos" },
    steps: [
      WARM,
      MARKS,
      "Marcha larga, llano, a fondo y con carga de 3 a 5 s.",
      "Baja despacio a 7/8 y nota si tira más.",
      THREE_TIMES,
    ],
    tools: GRIP_TOOLS,
  },
  "choke-flick-at-full": {
    words: "Un toque de estárter a todo gas",
    outcomes: {
      higher: "Las vueltas suben antes de asentarse",
      lower: "Las vueltas vuelven más bajas",
      "no-change": "Sin cambio",
    },
    steps: [
      "Solo para manos expertas, en una recta larga y cerrada, y solo si el estárter se alcanza sin perder el control del manillar.",
      WARM,
      "A fondo, marcha larga, estárter puesto un instante y quitado.",
      THREE_TIMES,
    ],
    tools: ["cuentavueltas"],
  },
  "plug-look-part": {
    words: "Mirar la bujía tras una pasada constante",
    outcomes: PLUG_OUTCOMES,
    steps: PLUG_STEPS,
    tools: PLUG_TOOLS,
  },
  "plug-look-full": {
    words: "Mirar la bujía tras una pasada a fondo",
    outcomes: PLUG_OUTCOMES,
    steps: [
      "No antes de saber que el chiclé principal está del lado de más gasolina. Solo en circuito cerrado.",
      ...PLUG_STEPS,
    ],
    tools: PLUG_TOOLS,
  },
  "one-step-more-fuel": {
    words: "Prueba un paso más de gasolina",
    outcomes: ONE_STEP_OUTCOMES,
    steps: ONE_STEP_STEPS,
    tools: ONE_STEP_TOOLS,
  },
  "one-step-more-fuel-top": {
    words: "Prueba un número más de chiclé principal",
    outcomes: ONE_STEP_OUTCOMES,
    steps: ONE_STEP_STEPS,
    tools: ONE_STEP_TOOLS,
  },
  "best-known-setting": {
    words: "Vuelve al mejor ajuste conocido",
    outcomes: { stays: "El fallo sigue", gone: "El fallo se fue" },
    steps: [
      "Monta cada pieza del ajuste con el que iba bien, con un aire parecido al de entonces.",
      WARM,
      "Haz la pasada que muestra el fallo. Anota la respuesta para el ajuste con el que vino el fallo.",
    ],
    tools: ONE_STEP_TOOLS,
  },
};
