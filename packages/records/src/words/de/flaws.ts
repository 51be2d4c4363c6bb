import { refusals } from "@jetwright/core/words/de/refusals";
import type { FlawWords, Limit, Seen, Way } from "../flaw-told.ts";

const ID_FORM = "Nimm dafür 1 bis 64 Buchstaben, Ziffern und . _ : -";
const NEWER = "Kommt es aus einer neueren Version, ist nichts zu tun.";
const TIME_FORM = "Schreib es wie 2026-05-02T10:15:00+02:00, oder mit Z am Ende für UTC.";
const TYPES: Readonly<Record<string, string>> = {
  number: "eine Zahl",
  int: "eine ganze Zahl",
  string: "Text in Anführungszeichen",
  boolean: "true oder false",
  array: "eine Liste in [ ]",
  object: "ein Objekt in { }",
  record: "ein Objekt in { }",
};
const TIMES: Readonly<Record<string, string>> = {
  "not-a-time": `Das ist kein Datum mit Uhrzeit. ${TIME_FORM}`,
  "no-such-date": `Diesen Tag gibt es im Kalender nicht. ${TIME_FORM}`,
  "no-zone": `Die Zeitzone fehlt. ${TIME_FORM}`,
  "no-such-time": `Diese Uhrzeit zeigt keine Uhr. ${TIME_FORM}`,
};
const SEEN = { nothing: "nichts", list: "eine Liste", object: "ein Objekt" } as const;
const UNITS = { value: "", letters: " Zeichen", entries: " Einträge" } as const;
const EDGES = {
  "at least": "mindestens",
  "more than": "mehr als",
  "at most": "höchstens",
  "less than": "weniger als",
} as const;

const typed = (type: string): string => TYPES[type] ?? type;
const shown = (seen: Seen): string => (typeof seen === "string" ? SEEN[seen] : seen.text);
const limited = ({ of, edge, limit }: Limit): string => `${EDGES[edge]} ${limit}${UNITS[of]}`;
const must = (limit: Limit): string => `muss ${limited(limit)} ${limit.of === "value" ? "sein" : "haben"}`;
const meant = (near: readonly string[], otherwise: string): string =>
  near.length === 0 ? otherwise : `Meinst du ${near.map((word) => `„${word}“`).join(" oder ")}?`;
const whole = (way: Way): string => {
  if ("type" in way) return typed(way.type);
  if ("words" in way) return way.words.join(", ");
  return `${way.limit.of === "value" ? "einen Wert: " : ""}${limited(way.limit)}`;
};
const mended = ({ of, edge }: Limit): string => {
  if (of === "value") return "Prüf den Wert und seine Einheit: Der Name des Feldes sagt, welche gilt.";
  const long = edge === "at most" || edge === "less than";
  if (of === "letters") return long ? "Kürz den Text." : "Schreib es aus.";
  return long ? "Verteil es auf mehrere Einträge." : "Füg einen hinzu.";
};

/** What is wrong with a record and how to mend it, in German. */
export const flaws: FlawWords = {
  "line-too-long": ({ limit }) => [
    `die Zeile ist länger als ${limit} Zeichen und wurde nicht gelesen`,
    "Ein Eintrag hat einige hundert: Bilder und Ton gehören nicht ins Logbuch, nur ihr Hash.",
  ],
  "too-deep": ({ limit }) => [
    `ist tiefer als ${limit} Ebenen verschachtelt`,
    "Das braucht kein Eintrag: Schreib ihn flacher.",
  ],
  "number-too-large": () => [
    "ist eine Zahl, die für jeden Rechner zu groß ist",
    "Prüf die Ziffern und den Exponenten.",
  ],
  "half-character": () => [
    "enthält ein halbes Zeichen aus einem abgeschnittenen Text",
    "Tipp den Text noch einmal.",
  ],
  "no-record": ({ shown: line }) =>
    line === null
      ? [
          "ist kein Eintrag",
          'Schreib ihn wie {"id": "r1", "kind": "note", "at": "2026-05-02T10:15:00Z", "body": {"text": "..."}}.',
        ]
      : [`ist kein Eintrag: ${line}`, "Eine Zeile ist ein Eintrag: Sie beginnt mit { und endet mit }."],
  "half-written": ({ end }) => [
    `ist nur halb geschrieben: ...${end}`,
    "Die Zeile endet vor ihrem } am Schluss: Das Schreiben riss ab. Schreib den Eintrag noch einmal.",
  ],
  "not-json": ({ shown: line }) => [
    `ist kein gültiges JSON: ${line}`,
    "Such ein fehlendes Komma, einen fehlenden Doppelpunkt oder ein fehlendes Anführungszeichen, ein Komma zu viel oder typografische Anführungszeichen statt gerader.",
  ],

  id: ({ missing }) => [missing ? "fehlt" : "taugt nicht als Name eines Eintrags", ID_FORM],
  kind: ({ missing }) => [
    missing ? "fehlt" : "ist kein Wort",
    'Schreib die Art des Eintrags, etwa "ride-reported".',
  ],
  version: () => ["ist keine Version", "Schreib eine ganze Zahl ab 1 oder lass sie für Version 1 weg."],
  time: ({ missing, reason }) => [
    missing ? "fehlt" : "ist kein Zeitpunkt mit Zeitzone",
    TIMES[reason] ?? `Schreib Datum, Uhrzeit und Zeitzone. ${TIME_FORM}`,
  ],
  "written-by": () => [
    "sagt nicht, wer es schrieb",
    'Schreib es wie "by": {"person": "Jo"} oder lass es weg.',
  ],
  "extra-field": ({ near, outside }) => [
    "ist ein unbekanntes Feld; es bleibt, zählt aber nicht",
    outside ? 'Was zu einer Art gehört, steht unter "body".' : meant(near, NEWER),
  ],
  "unknown-kind": ({ word, near }) => [
    `„${word}“ ist eine unbekannte Art; der Eintrag bleibt, zählt aber nicht`,
    meant(near, NEWER),
  ],
  "newer-version": ({ version, kind, known }) => [
    `ist Version ${version} von ${kind}, und diese App liest bis Version ${known}; der Eintrag bleibt, zählt aber nicht`,
    "Aktualisier die App, damit er zählt.",
  ],
  bike: ({ missing }) =>
    missing
      ? ["fehlt", 'Schreib, um welches Motorrad es geht, etwa "bike": "bramble".']
      : ["taugt nicht als Name eines Motorrads", ID_FORM],
  "bike-needless": ({ kind }) => [
    `ein Eintrag der Art ${kind} gilt der ganzen Werkstatt`,
    "Lass das Motorrad weg.",
  ],
  body: ({ missing }) => [missing ? "fehlt" : "muss ein Objekt in { } sein", "Schreib hinein, was geschah."],
  "old-body": ({ version, kind }) => [
    `ist als Version ${version} von ${kind} nicht lesbar`,
    "Streich diesen Eintrag und schreib ihn noch einmal.",
  ],
  "same-id": ({ id, keptLine }) => [
    `zwei verschiedene Einträge haben die Kennung „${id}“${keptLine === null ? "" : `; der in Zeile ${keptLine} bleibt`}`,
    "Gib dem anderen eine eigene; um einen Eintrag zu berichtigen, streich ihn und schreib einen neuen.",
  ],
  "id-here-already": ({ id }) => [
    `ein anderer Eintrag hat die Kennung „${id}“; der zuerst da war, bleibt`,
    "Gib diesem eine eigene und lies die Datei noch einmal ein.",
  ],
  more: ({ count, of }) => [
    `und noch ${count} ${of === "notes" ? "Hinweise" : "Mängel"}`,
    "Behebe zuerst diese.",
  ],

  missing: ({ type }) => ["fehlt", `Ergänz es: ${typed(type)}.`],
  "missing-word": ({ words }) => ["fehlt", `Ergänz eines von ${words.join(", ")}.`],
  "wrong-type": ({ type, seen, meant: value }) => {
    const what = `muss ${typed(type)} sein, da steht aber ${shown(seen)}`;
    if (value === null) return [what, `Schreib ${typed(type)} hin oder lass das Feld weg.`];
    if (type === "string") return [what, `Setz es in Anführungszeichen: "${value}".`];
    const point = type === "boolean" ? "" : ", mit Punkt statt Komma";
    return [what, `Schreib ${value} ohne Anführungszeichen${point}.`];
  },
  "wrong-word": ({ words, seen, near }) => [
    `muss eines von ${words.join(", ")} sein, da steht aber ${shown(seen)}`,
    meant(near, "Schreib eines dieser Wörter."),
  ],
  "out-of-limit": ({ limit, seen }) => [`${must(limit)}, da steht aber ${shown(seen)}`, mended(limit)],
  "wrong-form": ({ seen, hash }) => [
    `da steht ${shown(seen)}, das hat nicht die richtige Form`,
    hash ? "Schreib die 64 Hex-Ziffern des SHA-256 der Datei, in Kleinbuchstaben." : ID_FORM,
  ],
  "not-to-be-used": ({ message }) => [
    `ist nicht zu gebrauchen: ${message}`,
    "Sieh dir das Feld im Handbuch an.",
  ],
  "none-of-these": ({ seen, ways }) => [
    seen === null ? "fehlt" : `${shown(seen)} ist hier nicht lesbar`,
    `Schreib ${[...new Set(ways.map(whole))].join(", oder ")}.`,
  ],

  "no-air": () => [
    "über die Luft steht nichts darin",
    "Gib temperatureC mit stationPressureHpa oder mit heightM an, oder eine Wettermeldung mit heightM.",
  ],
  "weather-report": ({ reason, detail }) => [
    "ist als Wettermeldung nicht lesbar",
    refusals[reason] ?? detail,
  ],
  oil: ({ reason, detail }) => ["die Angabe zum Öl ist nicht zu verstehen", refusals[reason] ?? detail],
  "no-mixture": () => [
    "die Messung hat kein errorPercent und kein Paar aus lambda und wantedLambda; sie zählt nicht",
    'Gib "errorPercent": 4 für 4 % fett an, oder "lambda": 0.84, "wantedLambda": 0.88.',
  ],
  sign: ({ word, near }) => [
    `„${word}“ ist kein bekanntes Zeichen; diese eine Angabe zählt nicht`,
    meant(near, "Die Namen der Zeichen stehen in ihrer Liste."),
  ],
  test: ({ word, near }) => [
    `„${word}“ ist kein bekannter Test`,
    meant(near, "Die Namen der Tests stehen in ihrer Liste."),
  ],
  outcome: ({ word, test, outcomes }) => [
    `„${word}“ ist kein Ergebnis von ${test}`,
    `Seine Ergebnisse sind ${outcomes.join(", ")}.`,
  ],
  check: ({ word, near }) => [
    `„${word}“ ist keine bekannte Prüfung`,
    meant(near, "Die Namen der Prüfungen stehen in ihrer Liste."),
  ],
  fault: ({ word, near, faults }) => [
    `„${word}“ ist kein bekannter Fehler`,
    meant(near, `Die Fehler sind ${faults.join(", ")}.`),
  ],
  "no-part": ({ parts }) => [
    "kein Teil ist genannt",
    `Nenn mindestens eines von ${parts.join(", ")} oder schreib einen Eintrag der Art "note".`,
  ],
  "found-and-taken": () => [
    "sagt, was aus der Schublade kam; mit asFound wurde aber nichts gewechselt, also zählt es nicht",
    "Wurde doch gewechselt, streich den Eintrag und schreib ihn ohne asFound noch einmal.",
  ],
  "no-work": () => ["darin steht nichts", "Gib Minuten, Teile oder Worte an."],
};
