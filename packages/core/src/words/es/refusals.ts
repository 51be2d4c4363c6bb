import type { CoreWords } from "../core-words.ts";

/** Why the core took something not, by its reason, in Spanish. */
export const refusals: CoreWords["refusals"] = {
  "temperature-not-a-number": "Eso no es una temperatura: ponla en °C o °F.",
  "temperature-unit": "Puede ser °C o °F[ (serían {celsius} °C)]: escribe la unidad.",
  "temperature-out-of-range": "Se rueda de -40 a 60 °C: revisa la temperatura y su unidad.",
  "pressure-not-a-number": "Eso no es una presión: pon el número y su unidad.",
  "pressure-unit":
    "Esa presión puede ser de varias unidades[ ({units})]: escríbela, por ejemplo hPa, mmHg o inHg.",
  "pressure-out-of-range": "Con esa presión no se rueda: revisa el número y la unidad.",
  "pressure-height-mismatch":
    "La presión y la altura no cuadran[: {hPa} hPa corresponden a unos {fitsMetres} m, no a {metres} m]. Revisa las dos y sus unidades.",
  "height-not-a-number": "Eso no es una altura: ponla en m o ft.",
  "height-unit": "Pueden ser metros o pies[ (serían {metres} m)]: escribe la unidad.",
  "height-out-of-range": "Valen alturas de -500 a 6000 m[, no {metres} m]: revisa el número y la unidad.",
  "height-missing": "Pon la altura sobre el mar; sin ella esta presión no dice nada.",
  "humidity-not-a-number": "Eso no es una humedad: pon un número o déjala vacía.",
  "humidity-unit": "1 puede ser 1 % o aire saturado: pon la humedad en por ciento.",
  "humidity-out-of-range": "Esa humedad no puede ser: de 0 a 100 %, o déjala vacía.",
  "dew-point-above-temperature":
    "El punto de rocío[ ({dewPoint} °C)] no puede quedar por encima de la temperatura[ ({celsius} °C)]: revisa los dos y sus unidades.",
  "wet-bulb-above-temperature":
    "El bulbo húmedo[ ({wetBulb} °C)] no puede quedar por encima de la temperatura[ ({celsius} °C)]: revisa los dos y sus unidades.",
  "wet-bulb-too-low":
    "Un bulbo húmedo no baja tanto[, a {celsius} °C solo hasta {driest} °C]: quizá sea un punto de rocío.",
  "temperature-missing": "El parte no da temperatura: pon una medida en el lugar.",
  "report-age":
    "El parte no puede tener ese tiempo[ ({minutes} minutos)]: revisa el reloj, la fecha y la hora del parte (UTC).",
  empty: "No hay parte: pega uno o pon las lecturas.",
  "not-a-report": "No hay ningún parte en el texto: pega un METAR o SPECI, o pon las lecturas.",
  forecast: "Esto es un pronóstico (TAF): pega la observación, METAR o SPECI.",
  nil: "El parte dice NIL, la estación no observó nada: toma otro o pon las lecturas.",
  "no-reading": "En el parte no se lee ni temperatura ni presión: pon las lecturas.",

  "not a number": "Eso no es el número de un chiclé. Pon solo las cifras grabadas, como 175 o 17,5.",
  "not a jet size":
    "No hay chiclés de esa medida[, solo de {least} a {most}]. Léelo con una lupa; a menudo falta una coma (17,5).",
  groove: "La aguja no tiene esa muesca[: tiene {grooves}]. La muesca 1 es la de arriba, en el extremo romo.",
  "not a groove":
    "Eso no es una muesca[ de esta aguja de {grooves}]. Pon su número; la muesca 1 es la de arriba, en el extremo romo.",
  "other needle":
    "La aguja anotada tiene otro número de muescas[: {grooves}, no {counted}]. Cuenta otra vez o anota la otra aguja.",
  cutaway: "Eso no es un rebaje. Pon su altura en mm (suele ser de 1,5 a 4) o el número de la campana.",
  "not turns": "Eso no es un número de vueltas. Pon algo como 1,5 o 1 1/2, contadas desde el tope suave.",
  turns: "Tan afuera[ ({turns} vueltas)] no aguanta ningún tornillo. Ciérralo suave y cuenta otra vez.",
  "not an oil ratio":
    "Eso no es una proporción de aceite. Escribe algo como 50:1, 20 ml/l o 2 % del combustible.",
  oil: "Tanto o tan poco aceite no puede ser: se usa de 10:1 a 100:1. Revisa la proporción y la unidad.",
  ambiguous: "Eso puede significar varias cosas. Escríbelo mejor, como 50:1 o 20 ml/l.",
  reading:
    "Una aguja no puede tener esas cifras[: {diameter} mm de grueso a {down} mm de la muesca de arriba]. Revisa las dos y su unidad.",
  "too few":
    "Faltan medidas[ (hay {count}, como mínimo {least})]: dos en la parte recta y tres en cada cono. Mide cada 2 mm desde las muescas hasta la punta.",
  "too many": "Son demasiadas medidas[: {count}, como máximo {most}]. Quita las que están más juntas.",
  "gets thicker":
    "La aguja engordaría hacia la punta[, de {from} a {to} mm de la muesca de arriba], y ninguna lo hace. ¿Se cuentan las distancias desde las muescas? Mide allí otra vez.",
  "no straight part": "No se midió la parte recta. Mide tres veces más, más cerca de las muescas.",
  "does not fit":
    "Las medidas no cuadran con ninguna aguja. Mide otra vez, girándola un cuarto cada vez: puede estar doblada, gastada o sucia.",

  "nothing to go by":
    "No se sabe ni la cilindrada ni el diámetro. Mide el diámetro en el lado del motor; a menudo viene fundido en el cuerpo.",
  displacement:
    "Un carburador alimenta de 20 a 1000 cm³[, no {cc}]. Revisa la unidad y pon lo que alimenta este solo.",
  bore: "El diámetro debe ser de 8 a 60 mm[, no {mm}]. Revisa la unidad.",
  "bore does not fit":
    "Ese diámetro no va con la cilindrada[: para {cc} cm³ lo usual son unos {usual} mm, y es creíble de {least} a {most} mm]. Mídelo en el lado del motor o revisa la cilindrada.",
  "other body": "Son dos carburadores distintos: solo se comparan piezas del mismo.",
  "known on one side only":
    "Una pieza solo se conoce en una de las dos carburaciones: mira qué lleva o déjala abierta en las dos.",
  "jets not comparable":
    "Los chiclés llevan numeración distinta o son de dos fabricantes y no se pueden comparar. Mide los dos o quédate con uno.",
  "needles not comparable": "Las agujas no se pueden comparar sin sus medidas: mídelas con un micrómetro.",
  "impossible part": "Una de las piezas no puede ser así: revisa los números en «Montado».",
  "impossible air or fuel": "Ese aire o ese combustible no puede ser: revisa los datos.",
  "main jet not known": "No se sabe qué chiclé principal lleva: sácalo y lee su número.",
  "needle limits":
    "Ningún chiclé principal da bastante combustible aquí[ ({place})]: la aguja lo retiene a todo gas. Súbela o monta un pulverizador mayor.",
  "no places": "Pon al menos un lugar de la salida con su altura.",
  "outside the tables": "No hay aire en la tabla para esa altura o temperatura: revisa las dos.",

  "no-engine":
    "En los dos primeros segundos no se oye claro ningún motor. Acércate, protege del viento y empieza con tres segundos de ralentí.",
  clipped: "La grabación está saturada. Aleja el teléfono y graba otra vez.",
  knocking: "Lo que se oye golpea más despacio que un motor. Graba otra vez sin eso.",
  hum: "El tono no cambia nunca, como un zumbido de red. Aléjate de lo que zumba y graba otra vez.",
  "two-sounds": "Suena algo casi igual de fuerte: otro motor, un silbido o el viento. Graba solo este motor.",
  "not-an-engine": "El régimen salta como voz o música. Graba otra vez sin eso.",
  moving: "Pasa de largo. Solo una moto parada da su régimen verdadero.",
  "no-idle": "No hay ralentí. Empieza con tres segundos de ralentí, luego gas y deja caer.",
  "coarse-sound":
    "La grabación es demasiado basta[: {rate} valores por segundo, como mínimo {least}]. Graba con sonido normal.",
  "too-short":
    "La grabación es demasiado corta[ ({seconds} s)]: al menos cinco segundos, tres de ellos al ralentí.",
  "hint-disagrees":
    "El ralentí suena a la mitad de lo anotado. Revisa esa cifra o léelo con un cuentavueltas.",
  "not-wave": "Esto no es un archivo WAV. Da uno, o uno que el navegador reproduzca.",
  "unknown-coding": "No se leen archivos WAV escritos así. Guárdalo como PCM de 16 bits.",
  "odd-header": "La cabecera de este WAV no se lee. Guárdalo otra vez.",
  "no-sound": "En este WAV no hay sonido. Graba otra vez.",
  temperature: "El combustible está aquí de -40 a 60 °C: revisa la temperatura y su unidad.",
  ethanol: "El etanol va de 0 a 100 %: léelo otra vez en el surtidor.",
  alkylate: "Alquilato y etanol suman de 0 a 100 %: revisa los dos.",
  density: "La gasolina pesa de 600 a 900 kg/m³ a 15 °C: pon kg/m³ (0,745 kg/l son 745) o déjalo vacío.",
  "outside the tool": "Con tanto etanol la app no calcula: usa gasolina, E5, E10 o alquilato.",
  "sd-not-usable": "Esa duda no puede ser: pon un número menor desde 0 o déjala vacía.",
  "too-long":
    "Es demasiado largo[ ({seconds} s, como máximo {most})]: da solo un parte del tiempo, o como mucho tres minutos de sonido.",
  "shop displacement":
    "Una moto del taller tiene una cilindrada que un carburador no alimenta: corrige su anotación.",
};
