import type { Words } from "../en.ts";

const figure = (words: string, unit: (value: string) => string) => ({ words, unit });

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
    knocking: "Lo que se oye golpea más despacio que un motor, como martillazos o palmadas.",
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
  figures: {
    idleRpm: figure("Ralentí", (value) => `${value} r/min`),
    hangSeconds: figure("Se queda alto al cerrar", (value) => `${value} s`),
    undershootPercent: figure("Cae bajo el ralentí", (value) => `${value} %`),
    settleSeconds: figure("Vuelve al ralentí en", (value) => `${value} s`),
    riseSeconds: figure("Subida", (value) => `${value} s`),
    bogPercent: figure("Se hunde antes de subir", (value) => `${value} %`),
    huntingPercent: figure("El ralentí oscila solo", (value) => `± ${value} %`),
    closings: figure("Cierres medidos", (value) => value),
  },
  hung: "Las vueltas se quedaron altas antes de caer: pobre abajo, o una fuga. Busca la fuga antes de tocar un chiclé.",
  stalled: "Se caló al cerrar el gas.",
  dived: "Las vueltas cayeron bajo el ralentí: rico abajo, o el ralentí demasiado bajo.",
  doubled:
    "Al ralentí parece fallar una de cada dos explosiones, así que se leyó el doble de lo que suena. Puede ser la mitad.",
  sure: (tenths) =>
    `La más floja de estas cifras acierta unas ${tenths} veces de diez, con sonidos fabricados.`,
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
  notKept: "La grabación se pierde al salir de esta página, si no la guardas.",
};
