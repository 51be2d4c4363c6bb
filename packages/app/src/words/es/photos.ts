import type { Words } from "../en.ts";

export const photos: Words["photos"] = {
  label: "Foto de ello",
  labelNow: "Foto de cómo está ahora",
  plug: "Foto de la bujía",
  take: "Hacer una foto",
  choose: "Elegir una foto",
  working: "Un momento …",
  hint: "Si quieres. Se hace más pequeña y se quita el lugar donde se tomó.",
  kept: "La foto está guardada en este teléfono.",
  unprotected:
    "No se guardó la foto: esta página se abrió con una conexión sin protección, y ahí el navegador no da huella a las fotos. Lo demás funciona.",
  full: "No se guardó la foto: la memoria del teléfono no la aceptó. Lo demás está guardado.",
  unreadable: (name) =>
    `No se guardó la foto: este navegador no puede abrir «${name}» como foto. Puede estar dañada, ser demasiado grande para este teléfono o de otro tipo. Hazla de nuevo o guárdala antes como JPEG. Lo demás está guardado.`,
  tooLarge: (name) =>
    `No se guardó la foto: «${name}» pasa de 100 MB. Hazla antes más pequeña. Lo demás está guardado.`,
  picture: "Foto",
  open: (what, day, count) =>
    count === 1 ? `Foto: ${what}, ${day}` : `${count} fotos: ${what}, la más reciente del ${day}`,
  notHere: "no está",
  coming: "en camino",
  lack: {
    missing:
      "Esta foto no está en este teléfono: se hizo en otro o se ha borrado aquí. Lo escrito sobre ella sigue en pie.",
    coming: "Esta foto viene en camino desde el taller …",
    "not-there":
      "Esta foto no está en este teléfono, y el taller aún no la tiene: llega cuando el teléfono que la hizo haya podido llegar al taller.",
    away: "Esta foto no está en este teléfono, y ahora no se puede llegar al taller. Mira otra vez cuando se pueda.",
  },
  by: (person) => `por ${person}`,
  newer: "Más nueva",
  older: "Más antigua",
  place: (at, all) => `${at} de ${all}`,
  larger: "Más grande",
  whole: "La foto entera",
  save: "Guardar como archivo",
  fileName: (day) => `jetwright-foto-${day}.jpg`,
  remove: "Quitar esta foto",
  removed: "Quitada. Pasado un día se borra de este teléfono.",
  undo: "Deshacer",
  undone: "La foto ha vuelto.",
  close: "Cerrar",
  stored: (count, size) => `${count === 1 ? "1 foto" : `${count} fotos`} en este teléfono: ${size}.`,
  notInCopy:
    "La copia nombra las fotos y no las contiene. Cada una se puede guardar como archivo propio donde se muestra.",
};
