import type { Words } from "../en.ts";

export const settings: Words["settings"] = {
  title: "Más",
  bikes: "Motos",
  person: "Quién trabaja aquí",
  personHint: "Desde ahora va junto a cada anotación, para que otros vean quién montó qué.",
  theme: "Página",
  themes: { auto: "Como el teléfono", paper: "Papel", night: "Noche" },
  temperature: "Temperatura",
  height: "Altura",
  pressure: "Presión",
  otherUnit: "Cada campo acepta también la otra unidad: escribe 75F, 5000 ft o 29,92 inHg.",
  gloves: "Guantes",
  glovesOn: "Con guantes: botones más grandes",
  glovesOff: "Manos desnudas",
  hand: "La mano que sostiene el teléfono",
  right: "Derecha",
  left: "Izquierda",
  language: "Idioma",
  shop: "El taller y sus otros teléfonos",
  backup: "Copias de seguridad",
  cautions: "Todas las advertencias",
  remove: "Borrar los datos de una persona",
  cautionsTitle: "Advertencias",
  cautionsIntro: "Cada una aparece otra vez en el paso al que pertenece.",
  exampleLeave: "Quitar el taller de ejemplo",
  exampleGone: "El taller de ejemplo se ha quitado. Tus motos están como estaban.",
  exampleGoneInPart:
    "Quitado, salvo las motos de ejemplo de las que anotaste algo: esas siguen enteras, y el cajón también.",
  exampleAtShop:
    "El servidor del taller ya tiene el ejemplo, así que aquí no se puede quitar. Guarda sus motos una a una.",
  exampleUndo: "Deshacer",
};
