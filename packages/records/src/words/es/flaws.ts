import { refusals } from "@jetwright/core/words/es/refusals";
import type { FlawWords, Limit, Seen, Way } from "../flaw-told.ts";

const ID_FORM = "Usa de 1 a 64 letras, cifras y . _ : -";
const NEWER = "Si viene de una versión más nueva, no hay que hacer nada.";
const TIME_FORM = "Escríbelo como 2026-05-02T10:15:00+02:00, o con Z al final para UTC.";
const TYPES: Readonly<Record<string, string>> = {
  number: "un número",
  int: "un número entero",
  string: "un texto entre comillas",
  boolean: "true o false",
  array: "una lista entre [ ]",
  object: "un objeto entre { }",
  record: "un objeto entre { }",
};
const TIMES: Readonly<Record<string, string>> = {
  "not-a-time": `No es una fecha con hora. ${TIME_FORM}`,
  "no-such-date": `Ese día no existe en el calendario. ${TIME_FORM}`,
  "no-zone": `Falta la zona horaria. ${TIME_FORM}`,
  "no-such-time": `Ningún reloj marca esa hora. ${TIME_FORM}`,
};
const SEEN = { nothing: "nada", list: "una lista", object: "un objeto" } as const;
const UNITS = { value: "", letters: " caracteres", entries: " elementos" } as const;
const EDGES = {
  "at least": "como mínimo",
  "more than": "más de",
  "at most": "como máximo",
  "less than": "menos de",
} as const;

const typed = (type: string): string => TYPES[type] ?? type;
const shown = (seen: Seen): string => (typeof seen === "string" ? SEEN[seen] : seen.text);
const limited = ({ of, edge, limit }: Limit): string => `${EDGES[edge]} ${limit}${UNITS[of]}`;
const must = (limit: Limit): string => `debe ${limit.of === "value" ? "ser" : "tener"} ${limited(limit)}`;
const meant = (near: readonly string[], otherwise: string): string =>
  near.length === 0 ? otherwise : `¿Querías decir ${near.map((word) => `«${word}»`).join(" o ")}?`;
const whole = (way: Way): string => {
  if ("type" in way) return typed(way.type);
  if ("words" in way) return way.words.join(", ");
  return `${way.limit.of === "value" ? "un valor: " : ""}${limited(way.limit)}`;
};
const mended = ({ of, edge }: Limit): string => {
  if (of === "value") return "Revisa el valor y su unidad: el nombre del campo dice cuál es.";
  const long = edge === "at most" || edge === "less than";
  if (of === "letters") return long ? "Acorta el texto." : "Escríbelo entero.";
  return long ? "Repártelo en varias anotaciones." : "Añade uno.";
};

/** What is wrong with a record and how to mend it, in Spanish. */
export const flaws: FlawWords = {
  "line-too-long": ({ limit }) => [
    `la línea tiene más de ${limit} caracteres y no se ha leído`,
    "Una anotación tiene unos cientos: las fotos y el sonido no van en el cuaderno, solo su hash.",
  ],
  "too-deep": ({ limit }) => [
    `tiene más de ${limit} niveles anidados`,
    "Ninguna anotación lo necesita: escríbela más plana.",
  ],
  "number-too-large": () => [
    "es un número demasiado grande para cualquier ordenador",
    "Revisa las cifras y el exponente.",
  ],
  "half-character": () => ["contiene medio carácter, de un texto cortado", "Escribe el texto otra vez."],
  "no-record": ({ shown: line }) =>
    line === null
      ? [
          "no es una anotación",
          'Escríbela como {"id": "r1", "kind": "note", "at": "2026-05-02T10:15:00Z", "body": {"text": "..."}}.',
        ]
      : [`no es una anotación: ${line}`, "Una línea es una anotación: empieza con { y termina con }."],
  "half-written": ({ end }) => [
    `está a medio escribir: ...${end}`,
    "Termina antes de su } de cierre: la escritura se cortó. Escribe esa anotación otra vez.",
  ],
  "not-json": ({ shown: line }) => [
    `no es JSON válido: ${line}`,
    "Busca una coma, unos dos puntos o unas comillas que falten, una coma de más o comillas tipográficas en lugar de rectas.",
  ],

  id: ({ missing }) => [missing ? "falta" : "no sirve como nombre de una anotación", ID_FORM],
  kind: ({ missing }) => [
    missing ? "falta" : "no es una palabra",
    'Escribe el tipo de anotación, por ejemplo "ride-reported".',
  ],
  version: () => ["no es una versión", "Escribe un número entero desde 1, o quítalo para la versión 1."],
  time: ({ missing, reason }) => [
    missing ? "falta" : "no es una fecha y hora con zona",
    TIMES[reason] ?? `Escribe la fecha, la hora y la zona. ${TIME_FORM}`,
  ],
  "written-by": () => ["no dice quién lo escribió", 'Escríbelo como "by": {"person": "Jo"}, o quítalo.'],
  "extra-field": ({ near, outside }) => [
    "es un campo desconocido; se conserva, pero no cuenta",
    outside ? 'Los campos de un tipo van en "body".' : meant(near, NEWER),
  ],
  "unknown-kind": ({ word, near }) => [
    `«${word}» es un tipo desconocido; la anotación se conserva, pero no cuenta`,
    meant(near, NEWER),
  ],
  "newer-version": ({ version, kind, known }) => [
    `es la versión ${version} de ${kind}, y esta app lee hasta la versión ${known}; se conserva, pero no cuenta`,
    "Actualiza la app para que cuente.",
  ],
  bike: ({ missing }) =>
    missing
      ? ["falta", 'Escribe de qué moto se trata, por ejemplo "bike": "bramble".']
      : ["no sirve como nombre de una moto", ID_FORM],
  "bike-needless": ({ kind }) => [
    `una anotación del tipo ${kind} vale para todo el taller`,
    "Quita la moto.",
  ],
  body: ({ missing }) => [missing ? "falta" : "debe ser un objeto entre { }", "Escribe en él lo que pasó."],
  "old-body": ({ version, kind }) => [
    `no se puede leer como versión ${version} de ${kind}`,
    "Tacha esta anotación y escríbela otra vez.",
  ],
  "same-id": ({ id, keptLine }) => [
    `dos anotaciones distintas tienen el identificador «${id}»${keptLine === null ? "" : `; queda la de la línea ${keptLine}`}`,
    "Dale a la otra uno propio; para corregir una anotación, táchala y escribe una nueva.",
  ],
  "id-here-already": ({ id }) => [
    `otra anotación tiene el identificador «${id}»; queda la que estaba antes`,
    "Dale a esta uno propio y trae el archivo otra vez.",
  ],
  more: ({ count, of }) => [
    `y ${count} ${of === "notes" ? "avisos" : "errores"} más`,
    "Arregla primero estos.",
  ],

  missing: ({ type }) => ["falta", `Añádelo: ${typed(type)}.`],
  "missing-word": ({ words }) => ["falta", `Añade uno de ${words.join(", ")}.`],
  "wrong-type": ({ type, seen, meant: value }) => {
    const what = `debe ser ${typed(type)}, pero es ${shown(seen)}`;
    if (value === null) return [what, `Escribe ${typed(type)}, o quita el campo.`];
    if (type === "string") return [what, `Ponlo entre comillas: "${value}".`];
    const point = type === "boolean" ? "" : ", con punto en lugar de coma";
    return [what, `Escribe ${value} sin comillas${point}.`];
  },
  "wrong-word": ({ words, seen, near }) => [
    `debe ser uno de ${words.join(", ")}, pero es ${shown(seen)}`,
    meant(near, "Escribe una de estas palabras."),
  ],
  "out-of-limit": ({ limit, seen }) => [`${must(limit)}, pero es ${shown(seen)}`, mended(limit)],
  "wrong-form": ({ seen, hash }) => [
    `es ${shown(seen)}, que no tiene la forma correcta`,
    hash ? "Escribe las 64 cifras hexadecimales del SHA-256 del archivo, en minúsculas." : ID_FORM,
  ],
  "not-to-be-used": ({ message }) => [`no se puede usar: ${message}`, "Mira el campo en el manual."],
  "none-of-these": ({ seen, ways }) => [
    seen === null ? "falta" : `aquí no se puede leer ${shown(seen)}`,
    `Escribe ${[...new Set(ways.map(whole))].join(", o ")}.`,
  ],

  "no-air": () => [
    "no dice nada del aire",
    "Da temperatureC con stationPressureHpa o con heightM, o un parte meteorológico con heightM.",
  ],
  "weather-report": ({ reason, detail }) => [
    "no se puede leer como parte meteorológico",
    refusals[reason] ?? detail,
  ],
  oil: ({ reason, detail }) => ["no se entiende lo que dice del aceite", refusals[reason] ?? detail],
  "no-mixture": () => [
    "la medida no tiene errorPercent ni la pareja lambda y wantedLambda; no cuenta",
    'Da "errorPercent": 4 para un 4 % rico, o "lambda": 0.84, "wantedLambda": 0.88.',
  ],
  sign: ({ word, near }) => [
    `«${word}» no es una señal conocida; esta no cuenta`,
    meant(near, "Los nombres de las señales están en su lista."),
  ],
  test: ({ word, near }) => [
    `«${word}» no es una prueba conocida`,
    meant(near, "Los nombres de las pruebas están en su lista."),
  ],
  outcome: ({ word, test, outcomes }) => [
    `«${word}» no es un resultado de ${test}`,
    `Sus resultados son ${outcomes.join(", ")}.`,
  ],
  check: ({ word, near }) => [
    `«${word}» no es una revisión conocida`,
    meant(near, "Los nombres de las revisiones están en su lista."),
  ],
  fault: ({ word, near, faults }) => [
    `«${word}» no es una avería conocida`,
    meant(near, `Las averías son ${faults.join(", ")}.`),
  ],
  "no-part": ({ parts }) => [
    "no se nombra ninguna pieza",
    `Nombra al menos una de ${parts.join(", ")}, o escribe una anotación del tipo "note".`,
  ],
  "found-and-taken": () => [
    "dice qué salió del cajón, pero con asFound no se cambió nada, así que no cuenta",
    "Si se cambió, tacha la anotación y escríbela otra vez sin asFound.",
  ],
  "no-work": () => ["no dice nada", "Da minutos, piezas o palabras."],
};
