import type { StartingWords } from "../en/starting.ts";
import { withComma } from "../figures.ts";
import type { TheoryBasis } from "../rests-on.ts";

const SCREW_RULE = {
  air: "Un tornillo del aire está en el lado del filtro de la campana: hacia afuera empobrece, hacia adentro enriquece.",
  fuel: "Un tornillo de riqueza está en el lado del motor de la campana: hacia afuera enriquece, hacia adentro empobrece.",
};

function theory(basis: TheoryBasis): string {
  switch (basis.of) {
    case "clip":
      return "práctica común: la mayoría acaba en la muesca 2 o 3 de 5";
    case "screw":
      return "práctica común: de 1 a 2 vueltas; lo publicado va de 1/2 a 2 1/4";
    case "cutaway":
      return "la campana usual para el diámetro";
    default: {
      const { of, lowPercent, highPercent, flow } = basis;
      const range = `${withComma(lowPercent.toFixed(1))} al ${withComma(highPercent.toFixed(1))} %`;
      const what = `un chiclé ${of === "main" ? "principal" : "de baja"} del ${range} del diámetro del carburador`;
      const roughly = flow ? ", aunque un número de caudal solo da el paso a grandes rasgos" : "";
      return `teoría y carburaciones publicadas: ${what}${roughly}`;
    }
  }
}

/** A starting point in words. */
export const starting: StartingWords = {
  restsOn: ({ theory: basis, shop }) => {
    if (shop === null) return [theory(basis)];
    const { bikes, lowCc, highCc, most } = shop;
    const span = lowCc === highCc ? `de ${lowCc} cm³` : `entre ${lowCc} y ${highCc} cm³`;
    const words = `${bikes === 1 ? "una moto" : `${bikes} motos`} de este taller ${span}, llevadas a aire normal`;
    return most
      ? [`sobre todo ${words}`, `el resto, ${theory(basis)}`]
      : [`sobre todo ${theory(basis)}`, `en parte ${words}`];
  },
  needle: (alike) => {
    const keep = "Deja la aguja y el pulverizador que lleva; apunta sus marcas y mide lo que esté gastado.";
    return alike.length === 0
      ? keep
      : `${keep} Motos casi iguales de este taller llevan ${alike.length === 1 ? "la aguja" : "las agujas"} ${alike.join(", ")}.`;
  },
  firstRide: (strokes) => [
    strokes === 2
      ? "Arriba va rica a propósito: espera humo y que a todo gas haga algo de cuatro tiempos."
      : "Arriba va rica a propósito: espera que a todo gas vaya pesada.",
    "Caliéntala del todo. A 3/4 de gas o más, solo unos segundos, hasta hacer la prueba de aflojar el gas.",
    "Picado, fuerza que se apaga a todo gas, calor de golpe: cierra el gas, embrague y para. Monta un chiclé principal mayor antes de que vuelva a andar.",
    "Un ralentí que se queda alto al cerrar el gas es pobre, ante todo en el circuito de baja, o una toma de aire: no sigas hasta saber cuál.",
  ],
  afterwards: (screw) => {
    const sweep =
      "Tornillo: en caliente, al ralentí, busca las vueltas con el ralentí redondo más alto; luego cuartos de vuelta al tacto.";
    const [few, many] = screw === "air" ? ["mayor", "menor"] : ["menor", "mayor"];
    return [
      "Antes de cualquier chiclé, la mecánica: tomas de aire en las toberas, láminas y retenes; nivel de la cuba; flujo de gasolina; filtro limpio; bujía nueva; estárter que cierra; campana que cae de golpe.",
      screw === null
        ? `${sweep} Aclara primero qué tornillo es. ${SCREW_RULE.air} ${SCREW_RULE.fuel}`
        : `${sweep} Si lo mejor queda por debajo de 3/4 de vuelta: un chiclé de baja ${few}; por encima de 2 1/2: uno ${many}. ${SCREW_RULE[screw]}`,
      "Aflojar el gas: en caliente, marcha larga, de 3 a 5 s a todo gas y luego a 7/8. Si tira más, va pobre: una medida más. Si solo afloja, baja medida a medida y quédate en la primera que va limpia.",
      "Después el medio: el clip, muesca a muesca, juzgado de 1/4 a 3/4. Cambia una pieza, rueda, apúntalo.",
    ];
  },
  text: {
    heading: (engine) => `Punto de partida: ${engine}`,
    strokes: (strokes) => (strokes === 2 ? "dos tiempos" : "cuatro tiempos"),
    uses: { trail: "trail", enduro: "enduro", race: "carreras" },
    bore: (mm, guessed) => `carburador de ${mm} mm${guessed ? " (estimado)" : ""}`,
    air: (celsius, hPa) => `Para aire de ${celsius} °C, ${hPa} hPa en el lugar.`,
    part: {
      main: "Chiclé principal",
      pilot: "Chiclé de baja",
      clip: "Clip",
      screw: "Tornillo",
      cutaway: "Rebaje",
    },
    numbered: (part, numbering) => `${part} (número de ${numbering === "bore" ? "paso" : "caudal"})`,
    clip: (groove) => `muesca ${groove} de 5 desde arriba`,
    turns: (turns) => `${turns} vueltas afuera`,
    cutaway: (mm) => `${mm} mm si hay que comprarla`,
    range: (low, high) => `de ${low} a ${high}`,
    needle: (words) => `Aguja: ${words}`,
    noSetting:
      "Esto es un punto de partida y no una carburación. Nueve de cada diez motos así acaban en los márgenes de la derecha.",
    know: "Antes de nada",
    rests: "En qué se apoya",
    notUsed: "Sin usar",
    firstRide: "Primera salida",
    next: "Después",
  },
};
