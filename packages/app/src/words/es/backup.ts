import type { Words } from "../en.ts";

const records = (count: number): string => (count === 1 ? "1 anotación" : `${count} anotaciones`);
const lines = (count: number): string => (count === 1 ? "1 línea" : `${count} líneas`);

export const backup: Words["backup"] = {
  title: "Copia de seguridad",
  back: "Motos",
  lead: "El cuaderno está solo en este aparato. Una copia en otro sitio lo salva si el teléfono se pierde o se rompe.",
  count: (count) => `${records(count)} en este aparato.`,
  never: "Aún no se ha hecho ninguna copia.",
  last: (day, since) =>
    since === 0
      ? `Última copia: ${day}; desde entonces no se ha escrito nada.`
      : `Última copia: ${day}; desde entonces, ${records(since)}.`,
  due: "La última copia es vieja",
  dueNever: "Aún sin copia",
  dueWords: (since) =>
    since === 1
      ? "Hay 1 anotación que está solo en este aparato."
      : `Hay ${since} anotaciones que están solo en este aparato.`,
  dueDo: "Hacer una copia",
  save: "Guardar una copia en un archivo",
  share: "Enviar una copia a otra aplicación",
  fileName: (day) => `jetwright-${day}.jsonl`,
  saved: (count) => `Copiado: ${records(count)}.`,
  take: "Traer una copia",
  takeHint: "Un archivo .jsonl de una copia o de otro teléfono. Aquí no se sobrescribe nada.",
  choose: "Elegir un archivo",
  fromLink: "Una carburación que llegó como enlace",
  reading: (percent) => `Leyendo: ${percent} %`,
  keeping: (done, all) => `Guardando: ${done} de ${all}`,
  stop: "Parar",
  stopped: "Parado. No se ha traído nada.",
  stoppedHalf: (count) =>
    `Parado: ${records(count)} ya en el cuaderno. Elige otra vez el archivo para traer el resto.`,
  notOurs: (name) =>
    `En «${name}» no hay ninguna anotación legible. Una copia es un archivo en el que cada línea empieza con { y acaba con }.`,
  unopened: (name) => `«${name}» no se puede abrir. Guárdalo primero en este aparato y elígelo otra vez.`,
  found: (name, count) => `«${name}»: ${lines(count)}`,
  fresh: (count) => (count === 0 ? "No trae nada nuevo" : `${records(count)} por traer`),
  repeated: (count) => `${records(count)} ya aquí, se quedan como están`,
  newerVersion: (count) =>
    `${records(count)} de una versión más nueva: se guardan tal cual y se usarán cuando se actualice esta aplicación`,
  unknownKind: (count) => `${records(count)} de tipos que esta versión no conoce: se guardan, no se usan`,
  faulty: (count) => `${records(count)} con un fallo: se guardan tal como están escritas, no se usan`,
  leftOut: (count) => (count === 1 ? "1 línea no se puede traer" : `${count} líneas no se pueden traer`),
  leftOutDo: "Guardar esas líneas en un archivo, para corregirlas",
  leftOutName: "jetwright-lineas-por-corregir.jsonl",
  problems: (count) => `Qué está mal (${count})`,
  problemAt: (line) => `Línea ${line}`,
  more: (count) => `y ${count} más`,
  takeIn: (count) => `Traer ${records(count)}`,
  takenIn: (count) => `En el cuaderno: ${records(count)}.`,
  cancel: "Dejarlo",
  storage: "Dónde se guarda",
  lasting: "El navegador ha prometido conservarlo: no se borra cuando al aparato le falta espacio.",
  notLasting:
    "El navegador no ha prometido conservarlo: si al aparato le falta mucho espacio, puede borrarlo. Pídele que lo conserve y haz copias.",
  lastingUnknown: "Este navegador no dice si lo conserva para siempre: haz copias.",
  askLasting: "Pedir al navegador que lo conserve",
  askedYes: "El navegador lo conservará.",
  askedNo:
    "El navegador no ha aceptado. Suele hacerlo cuando la aplicación está en la pantalla de inicio o se ha usado varias veces.",
  room: (used, free) => `Ocupa ${used}; quedan unos ${free} libres para esto.`,
  low: "Queda poco espacio. Libera algo en este aparato antes de que se llene.",
  sevenDays:
    "Este navegador borra lo que guarda una página tras siete días sin visitarla. Pon la aplicación en la pantalla de inicio: ahí se queda.",
  privateWindow: "En una ventana privada todo desaparece al cerrarla: usa una ventana normal.",
  notKept: {
    "storage-full":
      "Sin guardar: no queda sitio en este teléfono. Haz sitio y guárdalo otra vez; no se ha perdido nada.",
    "storage-closed":
      "Sin guardar: el navegador no ha abierto su almacén. Puede ser por una ventana privada o un sitio bloqueado. Copia el cuaderno a un archivo y abre la página en una ventana normal.",
    "storage-lost":
      "Sin guardar: esta página ha perdido su almacén, como pasa cuando hay una versión más nueva abierta en otra pestaña. Carga la página otra vez y anótalo entonces; lo guardado antes sigue ahí.",
  },
  notUsed: "Guardado y sin usar",
  keptNewer: (count) => `${records(count)} de una versión más nueva. Actualiza la aplicación para usarlas.`,
  keptUnknown: (kinds) => `Anotaciones de tipos que esta versión no conoce: ${kinds}.`,
  keptFaulty: "Anotaciones que no se pueden leer. Se guardan tal como se escribieron y van en cada copia.",
};

export const take: Words["take"] = {
  title: "Una carburación de otro teléfono",
  back: "Motos",
  reading: "Leyendo el enlace…",
  paste: "Pega aquí el enlace",
  pasteHint: "La dirección entera, tal como llegó",
  open: "Abrirlo",
  wouldCome: "Esto es lo que entraría:",
  about: (bikes) => `Para ${bikes}`,
  here: "ya está aquí",
  other: "otra anotación tiene su identificador: se deja fuera",
  kept: "se guarda, esta versión no lo usa",
  already: "Todo está ya en este aparato.",
  known: "Esta moto está en este aparato: se añade a su historia.",
  takeIn: "Traerlo",
  leave: "Dejarlo",
  taken: "Guardado.",
  toBike: "Ir a la moto",
  unreadable: "Una parte no se puede leer y quedaría fuera.",
};

export const update: Words["update"] = {
  there: "Hay una versión nueva.",
  hint: "No se toca nada de lo escrito.",
  load: "Cargarla",
  later: "Más tarde",
};
