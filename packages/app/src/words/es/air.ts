import type { Words } from "../en.ts";
import { figure, plainFigure } from "../figures.ts";

const jet = (number: number): string => plainFigure(number, "es");
const whole = (percent: number): string => Math.abs(percent).toFixed(0);
const side = (percent: number): string => (percent >= 0 ? "más rica" : "más pobre");

export const air: Words["air"] = {
  title: "¿Qué aire hay?",
  here: {
    question: "¿Qué llevábamos aquí la última vez?",
    title: "La última vez aquí",
    titleAt: (place) => `La última vez en ${place}`,
    near: (temperature, height) =>
      `Marcado como correcto a menos de 10 °C y 300 m de ${temperature}, ${height}.`,
    none: "Aún no se marcó nada como correcto en un aire así.",
    noAir: "Nadie ha anotado el aire de ahora.",
    own: "Esta moto",
    now: (denser, richer) =>
      `${Math.abs(denser) < 0.5 ? "El aire de ahora es igual de denso" : `El aire de ahora es un ${whole(denser)} % ${denser > 0 ? "más denso" : "menos denso"}`}${richer === null ? "" : Math.abs(richer) < 0.5 ? ": iría igual a fondo" : `: iría un ${whole(richer)} % ${side(richer)} a fondo`}.`,
  },
  way: "Cómo lo sabes",
  byHand: "Aparatos",
  byReport: "Parte",
  byHeight: "Solo altura",
  temperature: "Temperatura a la sombra",
  temperatureHere: "Temperatura donde estás, si la tienes",
  height: "Altura a la que ruedas",
  pressure: "Presión",
  pressureKind: "Qué presión es",
  station: "Leída en un barómetro en el lugar",
  stationHint: "Vale el barómetro del teléfono. Solo junto al mar ronda los 1013 hPa.",
  seaLevel: "De un pronóstico o de un aeródromo",
  seaLevelHint: "Reducida al nivel del mar: ronda los 1013 hPa en todas partes. Necesita la altura.",
  noPressure: "No se sabe",
  noPressureHint: "Tendrá que bastar la altura; la banda se ensancha.",
  humidityKind: "Humedad",
  noHumidity: "No se sabe",
  percent: "Por ciento",
  dewPoint: "Punto de rocío",
  humidity: "Humedad",
  report: "El parte, tal como lo copiaste",
  reportHint: "Una línea METAR o SPECI. Se guarda tal como la pegas.",
  reportExample: "METAR ... 24004KT 9999 17/09 Q1018",
  reportHeights: "Cuenta la altura de tu lugar, no la de la estación: la presión se lleva hasta allí.",
  stationHeight: "Altura de la estación",
  stationHeightHint: "Déjala vacía si no la sabes; la banda se ensancha.",
  heightOnly:
    "El tiempo mueve la presión de una misma altura un 1 % o más, así que por este camino la banda es más ancha.",
  notANumber: "Eso no es un número legible. Puede llevar una unidad detrás: 24C, 640 m, 938 hPa.",
  readTitle: "Leído del parte",
  readStation: "Estación",
  readTime: "Emitido",
  readTemperature: "Temperatura",
  readDewPoint: "Punto de rocío",
  readAltimeter: "Presión, nivel del mar",
  readStationPressure: "Presión en la estación",
  notSaid: "no figura",
  time: (day, hour, minute) =>
    `día ${day}, ${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")} UTC`,
  age: (minutes) =>
    minutes < 90
      ? `hace ${Math.max(0, minutes)} minutos`
      : minutes < 48 * 60
        ? `hace ${Math.round(minutes / 60)} horas`
        : `hace ${Math.round(minutes / 1440)} días`,
  densityTitle: "Este aire",
  denser: (percent) =>
    Math.abs(percent) < 0.5
      ? "Para el motor, tan denso como el aire normal al nivel del mar."
      : `Para el motor, un ${whole(percent)} % ${percent < 0 ? "menos denso" : "más denso"} que el aire normal al nivel del mar.`,
  doubt: (percent) => `Con un margen de ±${figure(percent, percent < 1 ? 1 : 0, "es")} %.`,
  like: (height) => `Como a ${height} en aire normal.`,
  read: (temperature, pressure, humidity) =>
    `Se cuenta con ${temperature}, ${pressure} en el lugar y humedad del ${humidity.toFixed(0)} %.`,
  effectTitle: "Lo que le hace a la carburación",
  fromMarked: (day, temperature, height) =>
    `Frente al ${day}, ${temperature} a ${height}, cuando esta carburación se marcó como buena. Sin cambiar nada:`,
  fromNoted: (temperature, height) =>
    `Frente al último aire anotado, ${temperature} a ${height}. Sin cambiar nada:`,
  effect: (percent) => (Math.abs(percent) < 0.5 ? "igual" : `${whole(percent)} % ${side(percent)}`),
  opening: "Gas",
  mixture: "Mezcla",
  mendSeaLevel: "Es una presión al nivel del mar",
  mendStation: "Se leyó en el lugar",
  keep: "Guardar este aire",
  kept: "Guardado. El consejo ya cuenta con este aire.",
  undo: "Deshacer",
  mistaken: "anotado por error",
  bike: "Moto",
  source: "Chiclés principales para elegir",
  sold: "Medidas a la venta",
  drawer: "Solo lo que tengo",
  trip: {
    title: "Una salida, varias alturas",
    lead: "El lugar más bajo y más frío decide el chiclé principal. Pon en cada uno el mayor frío que esperas.",
    from: (temperature, height) =>
      `Se cuenta desde ${temperature} a ${height}, donde se da por buena la carburación.`,
    place: "Lugar",
    add: "Otro lugar",
    remove: (name) => `Quitar ${name}`,
    removed: (name) => `${name}: quitado.`,
    unnamed: (n) => `Lugar ${n}`,
    temperature: "Mayor frío allí",
    height: "Altura",
    safe: (main) => `Con el chiclé principal ${jet(main)} no va pobre a todo gas en ningún lugar`,
    stays: "Es el que está montado: no hay nada que cambiar.",
    change: (from, to) =>
      to > from
        ? `Está montado el ${jet(from)}: cámbialo por el ${jet(to)} antes de salir. Con el ${jet(from)} va pobre.`
        : `Está montado el ${jet(from)}: también es seguro, solo que más rico en todas partes.`,
    notOwned: (main) => `No hay un ${jet(main)} en el cajón.`,
    decides: (name, height, temperature) =>
      `Decide ${name}: ${height} a ${temperature} es el aire más denso de la salida.`,
    none: "Ningún chiclé principal es lo bastante grande",
    feels: "Cómo irá en cada lugar",
    feel: (percent) =>
      Math.abs(percent) < 0.5 ? "bien" : `${whole(percent)} % ${percent > 0 ? "rica" : "pobre"}`,
    stop: (half, full) => `${half} a 1/2, ${full} a todo gas.`,
    would: (main) => `Para este lugar solo, iría bien un ${jet(main)}.`,
    back: (safe, below) =>
      below === null
        ? `Vuelve a montar el ${jet(safe)} antes de bajar o de ir adonde haga más frío.`
        : `Vuelve a montar el ${jet(safe)} antes de bajar de ${below}; antes aún si refresca.`,
    keep: "Guardar para la vuelta",
    kept: "Guardado como nota de esta moto.",
    note: (safe, decides) => `Plan de la salida: chiclé principal ${jet(safe)}. ${decides}`,
    tooFew: "Pon altura y temperatura al menos en un lugar.",
    unread: "Aún no cuenta: la altura o la temperatura no se puede leer.",
  },
  chart: {
    title: "Por altura y temperatura",
    lead: "Chiclé principal y clip que mantienen buena esta carburación.",
    fromMarked: (day, temperature, height) =>
      `Contado desde el ${day}, ${temperature} a ${height}, cuando se marcó como buena.`,
    fromNoted: (temperature, height) =>
      `Contado desde el último aire anotado, ${temperature} a ${height}: allí se da por buena.`,
    mendFirst: "¿Aún no va bien? Corrígela primero",
    cell: (main, clip) =>
      `${main === null ? "–" : plainFigure(main, "es")}${clip === null ? "" : ` / ${plainFigure(clip, "es")}`}`,
    legend:
      "Chiclé principal / muesca del clip, contada desde arriba, del lado rico. La casilla con marco es la más cercana al aire desde el que se cuenta.",
    noneRich: "Una raya: ningún chiclé principal de los elegidos es lo bastante rico allí.",
    unknownMain:
      "No se sabe qué chiclé principal está montado, así que no se puede decir ninguno. Lee el número que lleva.",
    corner: "Altura",
    here: ", se cuenta desde aquí",
  },
};
