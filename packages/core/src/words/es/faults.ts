import type { CoreWords } from "../core-words.ts";

/** Mechanical faults, named so that the name can stand after a colon or in brackets. */
export const faults: CoreWords["faults"] = {
  "air-leak": {
    words: "una toma de aire",
    does: "Entra aire por fuera del carburador: va pobre al ralentí y con poco gas, se queda colgado al cerrar, y más en caliente.",
    touches: "de cerrado a 1/4, menos cuanto más se abre",
  },
  "blocked-pilot": {
    words: "un chiclé de baja o su conducto atascado",
    does: "La suciedad no deja pasar gasolina al circuito de baja: ralentí malo o ninguno, y pide el estárter.",
    touches: "de cerrado a 1/8",
  },
  "float-level": {
    words: "una altura de boya equivocada",
    does: "La gasolina está demasiado alta o baja en la cuba: rico o pobre en bajas, y cambia con los baches y las cuestas.",
    touches: "todas las aperturas, más en bajas vueltas y en cuesta",
  },
  "float-valve": {
    words: "una válvula de la boya que pierde",
    does: "La válvula no cierra: la cuba rebosa, se ahoga, gotea y va rico en todas partes.",
    touches: "todas las aperturas, más al ralentí y al arrancar en caliente",
  },
  "fuel-supply": {
    words: "poca gasolina desde el depósito",
    does: "Grifo, respiradero del tapón, filtro o manguera dejan pasar poca: bien unos segundos a todo gas, luego se desinfla o se para.",
    touches: "todo gas largo",
  },
  "choke-not-seating": {
    words: "un estárter que no cierra del todo",
    does: "El émbolo pierde o su cable está tirante: gasolina de más por debajo de 1/4, se carga y engrasa bujías.",
    touches: "de cerrado a 1/4",
  },
  "air-filter": {
    words: "un filtro de aire sucio, mojado o roto",
    does: "Atascado, ahoga el motor, sobre todo a todo gas y muchas vueltas; roto, deja vagar el ralentí y entrar suciedad.",
    touches: "todo gas a muchas vueltas",
  },
  "slide-or-cable": {
    words: "una campana o un cable que se traba",
    does: "La campana no baja del todo, o va torcida o gastada: ralentí alto o que vaga, se queda colgado, vueltas que suben solas.",
    touches: "cerrado, y siempre que se cierra el gas",
  },
  "worn-needle-and-jet": {
    words: "aguja y pulverizador gastados",
    does: "El hueco entre ellos ha crecido: rico de 1/8 a 3/4, bien a todo gas, gasta más, y ningún clip lo cura.",
    touches: "de 1/8 a 3/4",
  },
  reed: {
    words: "láminas astilladas o cansadas",
    does: "Las láminas no cierran: arranca mal, niebla de gasolina en la boca del carburador, flojo en bajas, ralentí alto.",
    touches: "de cerrado a 1/2",
  },
  ignition: {
    words: "una chispa débil o un encendido fuera de punto",
    does: "Falla y moja o ennegrece bujías como si tuviera gasolina de más, peor cuanto más tira; fuera de punto pica.",
    touches: "bajo carga, en todas partes",
  },
  "plug-heat-range": {
    words: "una bujía de grado térmico equivocado",
    does: "La bujía se ve negra o blanca con cualquier chiclé, mientras la fuerza y el sonido no cambian.",
    touches: "lo que muestra la bujía, no cómo va",
  },
  compression: {
    words: "poca compresión",
    does: "Segmentos gastados o un cilindro cansado: flojo, perezoso, difícil de arrancar en caliente, y parece gasolina de más.",
    touches: "todas las aperturas",
  },
  "gearbox-side-seal": {
    words: "un retén del cigüeñal que deja pasar aceite del cambio",
    does: "El aceite del cambio entra y se quema: humo constante, bujías aceitosas, silencioso mojado, y el aceite del cambio baja.",
    touches: "todas las aperturas, más tras mucho rato con el gas cerrado",
  },
  "exhaust-blocked": {
    words: "un escape o silencioso atascado",
    does: "La carbonilla o la fibra hundida frena los gases: plano arriba, caliente, y ningún chiclé lo cura.",
    touches: "de 3/4 a fondo",
  },
  "power-valve": {
    words: "una válvula de escape trabada",
    does: "Trabada abierta faltan los bajos, trabada cerrada faltan los altos; no hay escalón de fuerza y los chiclés no lo mueven.",
    touches: "según las vueltas, no según el gas",
  },
  "fuel-or-oil-wrong": {
    words: "gasolina vieja, con agua o equivocada, o mala proporción de aceite",
    does: "Agua, gasolina pasada, poco octanaje o mala mezcla: arranca mal, tose, pica, con cualquier chiclé.",
    touches: "todas las aperturas",
  },
  cooling: {
    words: "un fallo de refrigeración",
    does: "Líquido, bomba, radiador o aletas no se llevan el calor: fuerte en frío, más flojo y picando al calentarse.",
    touches: "todas las aperturas, más con el tiempo",
  },
  "loose-head": {
    words: "una culata o una bujía floja",
    does: "Se escapa gas por la junta de culata o la rosca de la bujía: flojo, caliente, pierde líquido y no responde a ningún chiclé.",
    touches: "todas las aperturas",
  },
  "idle-stop": {
    words: "un tope de ralentí mal puesto",
    does: "La campana queda demasiado alta o baja en reposo: se queda colgado y no responde al tornillo pequeño, o se hunde y se para.",
    touches: "cerrado",
  },
  "accelerator-pump": {
    words: "una bomba de aceleración a destiempo",
    does: "El chorro llega tarde, corto o no llega: se ahoga al abrir rápido y va limpio al abrir despacio.",
    touches: "aperturas rápidas desde cerrado",
  },
  "valve-clearance": {
    words: "válvulas con poco juego",
    does: "Válvulas que no cierran del todo: arranca mal, escupe hacia atrás, ralentí colgado o inestable, petardea con el gas cerrado.",
    touches: "de cerrado a 1/8, y al arrancar",
  },
};
