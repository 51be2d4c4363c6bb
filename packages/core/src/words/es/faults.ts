import type { CoreWords } from "../core-words.ts";

/** Mechanical faults, named so that the name can stand after a colon or in brackets. */
export const faults: CoreWords["faults"] = {
  "air-leak": { words: "una toma de aire" },
  "blocked-pilot": { words: "un chiclé de baja o su conducto atascado" },
  "float-level": { words: "una altura de boya equivocada" },
  "float-valve": { words: "una válvula de la boya que pierde" },
  "fuel-supply": { words: "poca gasolina desde el depósito" },
  "choke-not-seating": { words: "un estárter que no cierra del todo" },
  "air-filter": { words: "un filtro de aire sucio, mojado o roto" },
  "slide-or-cable": { words: "una campana o un cable que se traba" },
  "worn-needle-and-jet": { words: "aguja y pulverizador gastados" },
  reed: { words: "láminas astilladas o cansadas" },
  ignition: { words: "una chispa débil o un encendido fuera de punto" },
  "plug-heat-range": { words: "una bujía de grado térmico equivocado" },
  compression: { words: "poca compresión" },
  "gearbox-side-seal": { words: "un retén del cigüeñal que deja pasar aceite del cambio" },
  "exhaust-blocked": { words: "un escape o silencioso atascado" },
  "power-valve": { words: "una válvula de escape trabada" },
  "fuel-or-oil-wrong": { words: "gasolina vieja, con agua o equivocada, o mala proporción de aceite" },
  cooling: { words: "un fallo de refrigeración" },
  "loose-head": { words: "una culata o una bujía floja" },
  "idle-stop": { words: "un tope de ralentí mal puesto" },
  "accelerator-pump": { words: "una bomba de aceleración a destiempo" },
  "valve-clearance": { words: "válvulas con poco juego" },
};
