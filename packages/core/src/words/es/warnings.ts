import type { CoreWords } from "../core-words.ts";
import { withComma } from "../figures.ts";
import { refusalText } from "../refusal.ts";
import { refusals } from "./refusals.ts";

const place = (heightM: number | null): string =>
  heightM === null ? "al nivel del mar" : `a ${withComma(heightM)} m`;
const fuel = (ratio: number | null): string =>
  ratio === null ? "gasolina de surtidor" : `gasolina de surtidor con aceite ${ratio}:1`;
const fixed = (x: number, digits: number): string => withComma(x.toFixed(digits));

const said = (opening: string): string =>
  opening === "closed" ? "gas cerrado" : opening === "full" ? "a fondo" : opening;

const COMPARED = {
  main: "chiclé principal",
  pilot: "chiclé de baja",
  needle: "aguja",
  clip: "muesca del clip",
  needleJet: "pulverizador",
  cutaway: "rebaje",
  screw: "tornillo",
  fuelLift: "nivel de la cuba",
} as const;

/** What was assumed, or should be looked at twice; with what to do. */
export const warnings: CoreWords["warnings"] = {
  "read-as-fahrenheit": ({ typed, celsius }) =>
    `${withComma(typed)} no puede ser una temperatura del aire en °C y se leyó en °F: ${withComma(celsius)} °C.`,
  "unusual-temperature": ({ celsius }) =>
    `${withComma(celsius)} °C se ve pocas veces: revisa la lectura, la sombra y la unidad.`,
  "pressure-unit-guessed": ({ typed, unit, hPa }) =>
    `La presión ${withComma(typed)} no lleva unidad: se leyó en ${unit === "hundredths of inHg" ? "centésimas de inHg" : unit}, ${hPa} hPa.`,
  "pressure-from-height": ({ m }) =>
    `No hay presión: se tomó la usual para ${m} m y la banda se ensancha un 1 % o más.`,
  "unusual-sea-level-pressure":
    "Una presión al nivel del mar por debajo de 950 o por encima de 1050 hPa es rara: revisa la cifra.",
  "reduction-uncertain": ({ m, percent }) =>
    `A ${m} m y con esta temperatura, un QNH y la presión de un pronóstico difieren un ${withComma(percent)} %: un barómetro en el lugar es más seguro.`,
  "sea-level-pressure-as-station": ({ hPa, m, percent }) =>
    `${hPa} hPa a ${m} m es sin duda una presión al nivel del mar: el aire saldría un ${withComma(percent)} % demasiado denso. Se leyó así; ponla como presión al nivel del mar o revisa la altura.`,
  "station-pressure-high": ({ hPa, m, percent }) =>
    `${hPa} hPa es mucho para ${m} m. Mira que no sea una presión al nivel del mar${percent === null ? "" : `: si lo es, el aire sale un ${withComma(percent)} % demasiado denso`}.`,
  "station-pressure-low": ({ hPa, m }) => `${hPa} hPa es poco para ${m} m: revisa el barómetro y la altura.`,
  "station-pressure-unchecked": ({ hPa, percent }) =>
    `Sin altura no se puede ver si ${hPa} hPa se leyó en el lugar o es una presión al nivel del mar; a 1000 m ese error hace el aire un ${withComma(percent)} % demasiado denso. Pon la altura.`,
  "humidity-assumed":
    "No hay humedad: se supuso un 50 % y la banda se ensancha. Importa en días de calor; un punto de rocío o una humedad relativa la estrecha.",
  "humidity-fraction": ({ typed, percent }) =>
    `Una humedad relativa de ${withComma(typed)} se leyó como fracción: ${withComma(percent)} %.`,
  "unusual-humidity": ({ percent }) =>
    `Una humedad relativa del ${withComma(percent)} % casi no se da al aire libre: mira que el sensor funcione.`,
  "humidity-clamped": (given) => {
    if (given.of === "relative")
      return `Una humedad relativa del ${withComma(given.percent)} % se tomó como aire saturado, 100 %.`;
    const celsius = `${withComma(given.celsius)} °C`;
    const limit = `${withComma(given.limitCelsius)} °C`;
    switch (given.of) {
      case "dry wet-bulb":
        return `Un bulbo húmedo de ${celsius} queda algo por debajo del que da el aire seco (${limit}): el aire se tomó como seco.`;
      case "carried dew-point":
        return `El punto de rocío llevado a tu lugar, ${celsius}, queda por encima de su temperatura, ${limit}: el aire se tomó como saturado.`;
      default:
        return `El ${given.of === "dew-point" ? "punto de rocío" : "bulbo húmedo"} ${celsius} queda algo por encima de la temperatura ${limit}, como pasa al redondear: el aire se tomó como saturado.`;
    }
  },
  "wet-bulb-freezing":
    "Bajo cero, un bulbo húmedo marca distinto con hielo en la mecha; el efecto en los chiclés es demasiado pequeño para verse.",
  "outside-formula-range": ({ celsius, hPa }) =>
    `${withComma(celsius)} °C y ${hPa} hPa quedan fuera de lo que se probó para la fórmula de la densidad (15 a 27 °C, 600 a 1100 hPa); aun así debería valer con un 0,1 %, mucho menos que una medida de chiclé.`,

  "tenths-disagree": ({ remarks, report }) =>
    `Las notas del parte dan ${withComma(remarks)} °C y el parte ${withComma(report)} °C: se usó la del parte. Revísala.`,
  "altimeters-disagree": ({ q, a }) =>
    `El grupo Q (${q} hPa) y el grupo A (${a} hPa) no cuadran; se usó Q: revisa el parte.`,
  "temperature-missing": "El parte no da temperatura: mídela en el lugar.",
  "dew-point-missing": "El parte no da punto de rocío: la temperatura vale; sin humedad se supone un 50 %.",
  "pressure-missing": ({ seaLevelRemark }) =>
    seaLevelRemark
      ? "La única presión del parte es la nota SLP; no es un QNH y no se usó."
      : "El parte no da presión: tendrá que bastar un barómetro en el lugar o la altura sola.",
  "several-reports": ({ count, used, stations }) =>
    `Se pegaron ${count} partes juntos; se usó el más nuevo por día y hora: ${used}.${stations.length > 1 ? ` Vienen de ${stations.map((one) => one ?? "una estación sin nombre").join(", ")}.` : ""}`,
  "nil-passed-over": "Uno de los partes dice NIL y se pasó por alto.",
  "forecast-passed-over": "El pronóstico (TAF) del texto se pasó por alto.",
  "report-time-impossible": ({ time }) => `La hora ${time} del parte no puede ser: revisa cuánto tiene.`,
  "pressure-group-twice": ({ letter }) => `El parte tiene más de un grupo ${letter}; se usó el primero.`,
  "pressure-group-impossible": ({ group }) => `El grupo de presión ${group} no puede ser y se dejó fuera.`,
  "pressure-group-unit": ({ group, inches, hPa }) =>
    `El grupo de presión ${group} se leyó en ${inches ? "centésimas de pulgada de mercurio" : "hPa"}: ${hPa} hPa.`,
  "station-pressure-impossible": ({ group }) =>
    `La presión de la estación ${group} no puede ser y se dejó fuera.`,
  "station-pressures-disagree": ({ group, hPa }) =>
    `Las dos cifras de ${group} no cuadran; se usó ${hPa} hPa: revisa el parte.`,
  "station-pressure-mismatch": ({ qfe, setting, m }) =>
    m === null
      ? `QFE ${qfe} hPa y QNH ${setting} hPa no son de ninguna estación en tierra; QFE no se usó: revisa el parte.`
      : `QFE dice ${qfe} hPa y el QNH a ${m} m ${setting} hPa; se usó QFE: revisa la altura de la estación.`,
  "report-age-unknown": "No se sabe cuánto tiene el parte: se supusieron dos horas.",
  "report-old": ({ hours }) =>
    `El parte tiene ${fixed(hours, 1)} horas y el aire ha cambiado desde entonces: toma uno más nuevo o lee un termómetro en el lugar.`,
  "station-height-unknown":
    "No se sabe la altura de la estación: se supuso cerca de la de tu lugar y la banda se ensancha. Ponla.",
  "station-height-differs": ({ m, below, celsius }) => {
    const where = `La estación está ${m} m por ${below ? "debajo" : "encima"} de tu lugar`;
    return celsius === null
      ? `${where}: su presión se llevó hasta allí.`
      : `${where}: su presión y su temperatura se llevaron hasta allí (${withComma(celsius)} °C). Un termómetro en el lugar es más seguro.`;
  },

  "air-assumed": ({ placeM }) =>
    `No hay aire anotado: se tomó aire normal ${place(placeM)}, con banda ancha. Anota el aire con temperatura y altura o presión.`,
  "air-unusable": ({ why, placeM }) =>
    `${refusalText(why, { refusals })} Hasta entonces vale aire normal ${place(placeM)}.`,
  "temperature-assumed": "No hay temperatura anotada con el aire: se tomó la del aire normal.",
  "height-assumed": "No hay altura anotada con el aire: se tomó el nivel del mar, con banda ancha.",
  "air-old":
    "El aire se anotó a más de medio día de la salida: se usó con una banda más ancha. Anota el aire el mismo día.",

  "fuel-assumed": ({ ratio }) =>
    `No hay combustible anotado: se tomó ${fuel(ratio)}. Anota el combustible en los datos de la moto.`,
  "fuel-unusable": ({ why, ratio }) =>
    `${refusalText(why, { refusals })} Hasta entonces vale ${fuel(ratio)}.`,
  "oil-assumed": ({ ratio }) => `No se dijo cuánto aceite lleva el combustible: se tomó ${ratio}:1.`,
  "fuel-density": ({ kgPerM3 }) =>
    `${kgPerM3} kg/m³ a 15 °C queda fuera de la tabla de la gasolina (653 a 770): su densidad en caliente o en frío es una conjetura.`,
  "petrol-density":
    "La gasolina de surtidor en Europa pesa de 720 a 775 kg/m³ a 15 °C: ¿es gasolina y se pesó fría?",
  "little-oil":
    "Menos aceite que 100:1 queda por debajo de lo que piden los aceites de dos tiempos: revisa la proporción antes de salir.",
  "much-oil": "Más aceite que 15:1 es raro: revisa la proporción.",

  "engine-assumed": "No se dijo qué motor es: se supuso un dos tiempos.",
  "bore-assumed": ({ mm }) =>
    `No se dijo el diámetro del carburador: se tomó ${withComma(mm)} mm, lo usual en un motor así. Mídelo en el lado del motor.`,
  "nothing-fitted": "No hay ninguna pieza anotada como montada: mira qué lleva y anótalo en «Montado».",
  "numbering-assumed":
    "No se dijo qué significan los números de los chiclés: se tomaron como paso en 1/100 mm. Di en el carburador si son paso o caudal.",
  "clip-beyond-grooves": ({ groove, marks, grooves }) =>
    `El clip estaría en la muesca ${withComma(groove)}, pero la aguja «${marks}» tiene ${grooves}. Cuenta desde el extremo romo.`,
  "screw-side-unknown":
    "No se dijo en qué lado está el tornillo, así que sus vueltas no cuentan. Di en el carburador si es un tornillo del aire (lado del filtro) o de riqueza (lado del motor).",
  "needle-grooves-assumed": ({ marks, grooves, pitchMm }) =>
    `No están todas las muescas de la aguja «${marks}»: donde faltan se tomaron ${grooves} muescas, a ${withComma(pitchMm)} mm. Cuéntalas y mídelas.`,

  "displacement-unknown": "No se sabe la cilindrada, así que el chiclé principal sale solo del diámetro.",
  "bore-unknown": ({ usualMm, cc }) =>
    `No se sabe el diámetro; se toman ${withComma(usualMm)} mm, lo usual con ${cc} cm³. Mídelo primero: cada milímetro vale dos medidas de chiclé principal.`,
  "bore-unusual": ({ mm, small, cc, usualMm }) =>
    `Un diámetro de ${withComma(mm)} mm es ${small ? "pequeño" : "grande"} para ${cc} cm³; lo usual son unos ${withComma(usualMm)} mm. Mira que se haya medido y no estimado.`,
  "no-jet-answers": ({ part }) =>
    `Ningún chiclé ${part === "main" ? "principal" : "de baja"} sirve para este aire y este combustible; revisa los dos.`,
  "shop-makers": ({ makers }) =>
    `Los números del taller son de chiclés de ${makers.join(", ")}; el mismo número de otro fabricante puede diferir un 5 %.`,

  "needle-measurement-unusable": ({ why }) => refusalText(why, { refusals }),
  "needle-reading-left-out": ({ mm, atMm, expectedMm, atEnd }) =>
    `${fixed(mm, 3)} mm a ${fixed(atMm, 1)} mm se dejó fuera: las otras medidas dicen ${fixed(expectedMm, 3)} mm allí. Mide otra vez${atEnd ? ", y dos veces más al lado: allí puede empezar otro cono" : ""}.`,
  "needle-scatter":
    "Las medidas bailan más de lo que debería el micrómetro: la aguja puede estar doblada o gastada. Gírala un cuarto y mide otra vez.",
  "needle-no-taper": ({ toMm }) =>
    `No se halló ningún cono hasta ${fixed(toMm, 1)} mm por debajo de la muesca superior. Sigue midiendo hacia la punta.`,
  "needle-taper-start": ({ taper, startMm, withinMm }) =>
    `Dónde empieza el cono ${taper} (${fixed(startMm, 1)} mm) solo se sabe con ${fixed(withinMm, 1)} mm de margen. Mide dos veces más a cada lado.`,
  "needle-taper-thin": ({ taper, startMm }) =>
    `El cono ${taper} (desde ${fixed(startMm, 1)} mm) se apoya en tres medidas y puede fallar más de lo dicho. Mídelo cada 2 mm.`,

  "stand-in parts": ({ parts }) =>
    `No se sabe: ${parts.map((part) => COMPARED[part]).join(", ")}. Se toma lo usual en los dos lados, así que la banda es más ancha.`,
  "needle not measured":
    "Nadie ha medido esta aguja: lo que hace el clip es una conjetura según agujas usuales. Mide sus diámetros para afinarlo.",
  "seat not measured":
    "No se sabe la distancia del asiento del clip al pulverizador: dónde empieza a mandar el cono es una conjetura.",
  "maker not known":
    "Uno de los chiclés no tiene fabricante anotado; números iguales de dos fabricantes pueden diferir un 5 %, así que la banda es más ancha.",
  "bled nozzle":
    "El aire que entra en el pozo se lleva una parte desconocida de la depresión: chiclé principal y aguja tienen una banda más ancha.",
  "air jets": "Los chiclés de aire son distintos. Uno mayor empobrece; cuánto, no se calcula.",
  "same marks":
    "Las dos agujas llevan la misma marca y sin embargo difieren: una puede estar gastada o mal medida.",
  "main system starting": ({ openings }) =>
    `En ${openings.map(said).join(", ")} la depresión apenas sube el combustible hasta la salida: allí las cifras son aproximadas.`,
  "no-main-big-enough": ({ wanted, place: name }) =>
    `Ningún chiclé principal de la lista es tan grande como ${fixed(wanted, 1)}: en ${name} iría pobre con el mayor. Consigue uno más grande antes de salir.`,

  "nothing-to-compare":
    "La salida se compara con la carburación anterior, pero no hay ninguna anotada: esa parte no cuenta.",
  "unknown-comparison": ({ record }) =>
    `La salida se compara con la anotación «${record}», que no es ni carburación, ni salida, ni prueba de esta moto: esa parte no cuenta.`,
};
