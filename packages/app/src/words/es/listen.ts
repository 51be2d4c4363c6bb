import type { Words } from "../en.ts";
import { soundFigures } from "./sound-figures.ts";

export const listen: Words["listen"] = {
  title: "Escuchar el motor",
  back: "Moto",
  caution:
    "Solo al aire libre: el gas de escape mata. Moto sobre el caballete, en punto muerto, nadie delante ni detrás. Protección de oídos, una mano en el botón de paro, y nunca gas a fondo mucho tiempo sin carga.",
  made: "Las cifras vienen de pruebas con sonidos fabricados. Todavía no se ha medido ningún motor real: fíate primero del dibujo y de tus oídos.",
  guide:
    "Motor caliente, teléfono a un brazo del silenciador, fuera del viento. Tres segundos al ralentí, abre de golpe, deja caer; tres veces.",
  start: "Escuchar",
  stop: (seconds) => `Parar (${seconds} s)`,
  load: "Cargar una grabación",
  rpm: "r/min",
  reckoning: "Leyendo el sonido …",
  stillOn: (names) =>
    `Este navegador deja puesto su propio tratamiento del sonido (${names}). Puede quitar el ralentí como si fuera ruido; es más seguro grabar con otro programa y «Cargar una grabación».`,
  troubles: {
    insecure:
      "Esta página no se abrió por una dirección segura, y el navegador no da micrófono. Cargar una grabación sí funciona.",
    denied:
      "El micrófono no está permitido. Permítelo en los ajustes del navegador para esta página, o carga una grabación.",
    none: "No se encontró micrófono. Carga una grabación.",
    busy: "El micrófono no arrancó; quizá lo tiene otro programa. Ciérralo, o carga una grabación.",
  },
  cannotDecode: "El navegador no puede leer este archivo. Guárdalo como WAV, MP3 o M4A y cárgalo otra vez.",
  notUsed: "No basta para que cuente",
  doubts: {
    "no-engine":
      "No se oye claro ningún motor en los dos primeros segundos. Acércate, tapa el viento y empieza con tres segundos al ralentí.",
    clipped: "La grabación está saturada: los picos salen cortados. Aleja el teléfono.",
    hum: "El tono no cambia nada, como el zumbido de la red y como ningún motor. Aléjate de lo que zumba.",
    knocking: "Lo que se oye golpea como martillazos o palmadas, no como los encendidos de un motor.",
    "two-sounds":
      "Otra cosa casi igual de fuerte suena a la vez: otro motor, un silbido o el viento. Graba solo este motor.",
    "not-an-engine": "Las vueltas saltan como en el habla o la música; ningún cigüeñal puede.",
    "no-idle": "No hay ralentí desde el que medir. Empieza con tres segundos al ralentí.",
    moving: "Pasa de largo: solo una moto parada da sus vueltas verdaderas.",
    "hint-disagrees":
      "El ralentí suena a la mitad del de la última vez. Míralo con un cuentavueltas y graba otra vez.",
  },
  heard: "Lo que se oyó",
  what: "Medido",
  now: "Ahora",
  before: "La última vez",
  good: "Toma buena",
  figures: soundFigures,
  hung: "Las vueltas se quedaron altas antes de caer: pobre abajo, o una fuga. Busca la fuga antes de tocar un chiclé.",
  stalled: "Se caló al cerrar el gas.",
  dived: "Las vueltas cayeron bajo el ralentí: rico abajo, o el ralentí demasiado bajo.",
  sure: (tenths) =>
    `La más floja de estas cifras acierta unas ${tenths} veces de diez, con sonidos fabricados.`,
  againstGood: (day) => `Frente a la toma buena del ${day}`,
  againstLast: (day) => `Frente a la última toma, ${day}`,
  noDifference: "Nada cambia más de lo que un intento cambia del siguiente.",
  differs: {
    idleRpm: {
      more: (by) => `El ralentí está ${by} más alto.`,
      less: (by) => `El ralentí está ${by} más bajo.`,
    },
    hangSeconds: {
      more: (by) => `Se queda alto ${by} más al cerrar.`,
      less: (by) => `Se queda alto ${by} menos al cerrar.`,
    },
    undershootPercent: {
      more: (by) => `Cae ${by} más bajo el ralentí.`,
      less: (by) => `Cae ${by} menos bajo el ralentí.`,
    },
    settleSeconds: {
      more: (by) => `Tarda ${by} más en asentarse al ralentí.`,
      less: (by) => `Se asienta al ralentí ${by} antes.`,
    },
    halvingSeconds: {
      more: (by) => `Cae más despacio: ${by} más hasta perder la mitad.`,
      less: (by) => `Cae más deprisa: ${by} menos hasta perder la mitad.`,
    },
    delaySeconds: {
      more: (by) => `Responde unos ${by} más tarde al abrir de golpe.`,
      less: (by) => `Responde unos ${by} antes al abrir de golpe.`,
    },
    riseSeconds: {
      more: (by) => `Tarda ${by} más en subir.`,
      less: (by) => `Sube ${by} más deprisa.`,
    },
    bogPercent: {
      more: (by) => `Se hunde ${by} más antes de subir.`,
      less: (by) => `Se hunde ${by} menos antes de subir.`,
    },
    huntingPercent: {
      more: (by) => `El ralentí oscila más por sí solo, en ${by}.`,
      less: (by) => `El ralentí oscila menos por sí solo, en ${by}.`,
    },
  },
  keepGood: "Guardar; va bien: comparar las siguientes con esta",
  keepSound: (megabytes) => `Guardar también el sonido (${megabytes} MB, en este aparato)`,
  soundLost:
    "No guardado: en este aparato no cabe el sonido, o la dirección no es segura. Sin él se pueden guardar las cifras.",
  takes: "Tomas apuntadas",
  goodMark: "buena",
  see: "Sus vueltas en el tiempo",
  play: "Oír el sonido",
  stopSound: "Parar el sonido",
  notHere: "Su sonido no está en este aparato.",
  drop: "Borrar el sonido",
  dropped: "Sonido borrado. Las cifras quedan.",
  undo: "Deshacer",
  undone: "Deshecho.",
  noTake: "Lo que se oyó",
  noSpeed: "Sus vueltas no se apuntaron.",
  heardOn: (day) => `Oído el ${day}`,
  lineOf: "Vueltas del motor en el tiempo",
  idleLine: "ralentí",
  hangWords: (seconds, percent) =>
    `Al cerrar se quedó ${seconds} s por encima del ralentí; rayado donde sigue más de un ${percent} % por encima.`,
  hear: (second) => `Oír el segundo ${second}`,
  pictureOf: "Vueltas del motor en el tiempo, sobre el sonido del que se leyeron",
  pictureHelp:
    "Las bandas son lo que destaca del sonido: múltiplos de las explosiones. La línea son las vueltas leídas de ellas. Créela donde se mueve como las bandas. Toca para oír ese segundo.",
  kinds: {
    idle: "ralentí",
    hunting: "oscila",
    snap: "abre",
    chop: "cierra",
    stall: "se cala",
    skipping: "falla",
  },
  keep: "Guardar estas cifras",
  kept: "Guardado",
  save: "Guardar la grabación en un archivo",
  notKept: "La grabación se pierde al salir de esta página, si no guardas el sonido.",
};
