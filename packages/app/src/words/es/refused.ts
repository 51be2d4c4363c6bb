import { refusals } from "@jetwright/core/words/es/refusals";

/** Why something was not taken, by its reason, in Spanish. */
export const refused: Readonly<Record<string, string>> = {
  ...refusals,

  "not a count": "No se lee cuántos son. Pon 175x2 para dos.",
  "no-such-bike": "De esta moto no hay nada aquí. Elige una de la lista.",
  "bike-not-described": "Nadie ha dicho qué motor tiene. Anota si es dos o cuatro tiempos.",
  "no-such-record": "Esa anotación no existe en esta moto.",
  "nothing-noted": "Aún no hay aire anotado: pon las alturas y temperaturas a las que ruedas.",
  "upside-down": "Primero la altura más baja y el día más frío: cambia las dos cifras.",
  "unknown-check": "Esa revisión no existe.",
  "unknown-test": "Esa prueba no existe.",
  "nothing-changed": "No hay ningún cambio anotado en esta moto, así que no hay nada que deshacer.",
  "cut-short":
    "El enlace no se puede leer: le falta una parte. Escanea el código otra vez o pide el archivo.",
  "newer-link": "El enlace es de una versión más nueva: actualiza la app y ábrelo otra vez.",
  "browser-too-old": "Este navegador no puede desplegar el enlace: pide el archivo.",
  "pilot jet not known": "No se sabe qué chiclé de baja lleva: sácalo y lee su número.",
  "no-air": "Aún no hay aire de ahora anotado: anótalo en «Aire».",
  "no-such-order": "Esa orden de trabajo no está en este aparato; quizá en otro teléfono.",
  "no-such-take": "Esa grabación ya no está en el registro.",
  "not-usable": "Un valor no puede ser así: revisa temperatura, presión, altura, humedad y sus unidades.",

  "bad-code": "El código no se conoce, ya se usó o es viejo. Pide otro y escríbelo antes de diez minutos.",
  "too-many-tries": "Se probaron demasiados códigos. Espera unos minutos.",
  "too-many-requests": "Demasiadas peticiones a la vez. Espera un momento.",
  "not-paired": "Este aparato no está unido al taller o fue excluido. Únelo otra vez.",
  "not-allowed": "Eso es cosa de quienes llevan este taller.",
  "no-such-person": "En este taller no se conoce a nadie con ese nombre.",
  "no-such-device": "En este taller no se conoce ningún aparato con ese nombre.",
  "wrong-fields": "Un dato no tiene la forma necesaria: revisa el código y los nombres.",
  "known-otherwise": "El taller ya tiene otra anotación con ese número. Esta se queda aquí.",
  "not-a-record": "Esta línea no es una anotación. Se queda tal como está.",
  "body-cut-off": "La conexión se cortó. Envíalo otra vez.",
  "too-large": "Es demasiado grande para enviarlo de una vez. Envía menos.",
  "storage-full": "El disco del servidor está lleno. No se cambió nada: haz sitio allí y envíalo otra vez.",
  "database-away": "El servidor no llega ahora a su base de datos. No se cambió nada: envíalo otra vez.",
  "database-busy": "El servidor está ocupado. No se cambió nada: envíalo otra vez en un momento.",
  stopping: "El servidor se está parando. Envíalo otra vez en un momento.",
  bug: "Es un fallo del servidor; su bitácora dice más. No se cambió nada.",
  "no-server": "Contestó otra cosa en lugar del servidor del taller. Revisa la red.",
};
