import type { SignTexts } from "../../core-words.ts";

const CLEAN_CUT = "Bujía nueva, mantenida a un gas, motor cortado ahí";
const DEEP = "Bujía cortada o lupa, unas 10 veces";
const CROWN = "Cabeza vista por el agujero de la bujía, por el escape, o sin culata";

/** What plug and piston show. */
export const partsSeen: SignTexts<"parts-seen"> = {
  "plug-nose-white": {
    words: "Porcelana de la bujía blanca o vidriada",
    description: "La porcelana alrededor del electrodo es blanca como hueso o brilla, sin rastro de color.",
    notToBeTakenFor: "Una bujía recién puesta que rodó poco.",
    when: CLEAN_CUT,
  },
  "plug-nose-dry-black": {
    words: "Porcelana de la bujía seca y negra de hollín",
    description: "Hollín negro mate en la porcelana que se va con el dedo.",
    notToBeTakenFor: "Hollín del ralentí tras la pasada.",
    when: CLEAN_CUT,
  },
  "plug-nose-tan": {
    words: "Porcelana de la bujía tostada o marrón claro",
    description:
      "Un color galleta parejo en la porcelana. La gasolina y el aceite de ahora pueden dejarla más pálida.",
    when: CLEAN_CUT,
  },
  "mixture-ring-wide": {
    words: "Anillo oscuro ancho al fondo de la porcelana",
    description: "Mirado al fondo con lupa, una banda oscura ancha sube desde la base de la porcelana.",
    when: DEEP,
  },
  "mixture-ring-thin": {
    words: "Anillo oscuro fino en la misma base de la porcelana",
    description:
      "Mirado al fondo con lupa, una línea oscura estrecha justo donde la porcelana entra en el cuerpo.",
    when: DEEP,
  },
  "mixture-ring-none": {
    words: "Ningún anillo oscuro en la porcelana",
    description: "Mirado al fondo con lupa, la porcelana es pálida hasta su base.",
    notToBeTakenFor: "Una bujía nueva que rodó poco, que tampoco muestra nada.",
    when: DEEP,
  },
  "plug-wet-and-oily": {
    words: "Bujía mojada y aceitosa",
    description: "Negra y brillante de mojada, deja aceite en los dedos.",
    notToBeTakenFor: "Mojada de gasolina tras muchas patadas: eso se seca.",
    when: "Tras rodar",
  },
  "specks-on-plug": {
    words: "Motas grises o bolitas de metal en la bujía",
    description:
      "Pimienta gris ceniza o bolitas brillantes en la porcelana. Para: puede estar dándolas el pistón.",
    notToBeTakenFor:
      "Las bolitas de un aditivo de aceite también brillan; tómalas por metal hasta probar lo contrario.",
    when: "Siempre que la bujía esté fuera: para",
  },
  "everyday-plug-dark": {
    words: "Bujía de diario oscura, sin corte limpio",
    description:
      "La bujía que ha estado siempre puesta está oscura. Mezcla cada gas rodado y el ralentí del final.",
    when: "Bujía sacada tras una salida corriente",
  },
  "plug-same-whatever-the-jets": {
    words: "La bujía se ve igual con cualquier chiclé",
    description:
      "Dos o más números de diferencia, cada uno con bujía limpia y la misma pasada, y el color no se mueve.",
    when: "Al menos dos chiclés comparados",
  },
  "piston-wash-wide": {
    words: "Zonas limpias anchas en la cabeza del pistón",
    description: "Grandes manchas de metal limpio y brillante donde entra la mezcla fresca.",
    notToBeTakenFor: "Un pistón nuevo o recién limpiado.",
    when: CROWN,
  },
  "piston-wash-narrow": {
    words: "Bandas limpias estrechas en la cabeza del pistón",
    description: "Una banda limpia fina de metal en cada transfer, el resto de color parejo.",
    notToBeTakenFor: "Bandas desiguales: un conducto puede perder o estar atascado.",
    when: CROWN,
  },
  "piston-wash-none": {
    words: "Nada de metal limpio en la cabeza del pistón",
    description: "La cabeza tiene color en todas partes, hasta los transfers.",
    when: CROWN,
  },
  "black-spot-under-crown": {
    words: "Mancha negra dura bajo la cabeza del pistón",
    description: "Pistón fuera: por debajo la cabeza lleva una mancha de aceite negra, dura y quemada.",
    when: "Pistón fuera",
  },
  "crown-grey-edge-sand-blasted": {
    words: "Cabeza gris ceniza, borde como arenado",
    description: "La cabeza es gris pálida y seca, el borde frente a la bujía picado y áspero.",
    when: "Pistón a la vista",
  },
  "piston-scuffed": {
    words: "Pistón rozado en cuatro puntos o del lado del escape",
    description:
      "Pistón fuera: rayas grises arrastradas en cuatro sitios o del lado del escape. Se ha agarrado, aunque fuera un momento.",
    notToBeTakenFor: "Arañazos de suciedad, que van todo alrededor.",
    when: "Pistón fuera: para",
  },
  "sooty-plug-four-stroke": {
    words: "Bujía seca y con hollín",
    description: "Hollín mate y seco en porcelana y cuerpo tras rodar normal, no mojada.",
    when: "Tras diez minutos o más rodando con el gas que se pregunta",
  },
};
