import type { Words } from "../en.ts";
import { figure, plainFigure } from "../figures.ts";

const jet = (number: number): string => plainFigure(number, "de");
const whole = (percent: number): string => Math.abs(percent).toFixed(0);
const side = (percent: number): string => (percent >= 0 ? "fetter" : "magerer");

export const air: Words["air"] = {
  title: "Welche Luft ist es?",
  here: {
    question: "Was lief hier beim letzten Mal?",
    title: "Beim letzten Mal hier",
    titleAt: (place) => `Beim letzten Mal: ${place}`,
    near: (temperature, height) =>
      `Als richtig vermerkt im Umkreis von 10 °C und 300 m um ${temperature}, ${height}.`,
    none: "In solcher Luft wurde noch nichts als richtig vermerkt.",
    noAir: "Die Luft von jetzt hat noch niemand notiert.",
    own: "Dieses Motorrad",
    now: (denser, richer) =>
      `${Math.abs(denser) < 0.5 ? "Die Luft ist jetzt so dicht wie damals" : `Die Luft ist jetzt ${whole(denser)} % ${denser > 0 ? "dichter" : "dünner"}`}${richer === null ? "" : Math.abs(richer) < 0.5 ? ": Bei Vollgas liefe es gleich" : `: Bei Vollgas liefe es ${whole(richer)} % ${side(richer)}`}.`,
  },
  way: "Woher du es weißt",
  byHand: "Messgeräte",
  byReport: "Wettermeldung",
  byHeight: "Nur Höhe",
  temperature: "Temperatur im Schatten",
  temperatureHere: "Temperatur bei dir, wenn du sie hast",
  height: "Höhe, auf der du fährst",
  pressure: "Luftdruck",
  pressureKind: "Was für ein Luftdruck es ist",
  station: "Am Ort auf einem Barometer abgelesen",
  stationHint: "Das Barometer im Telefon zählt auch. Nahe 1013 hPa nur am Meer.",
  seaLevel: "Aus einer Vorhersage oder von einem Flugplatz",
  seaLevelHint: "Auf Meereshöhe umgerechnet: überall nahe 1013 hPa. Dazu braucht es die Höhe.",
  noPressure: "Nicht bekannt",
  noPressureHint: "Dann muss die Höhe reichen; das Band wird breiter.",
  humidityKind: "Luftfeuchte",
  noHumidity: "Nicht bekannt",
  percent: "Prozent",
  dewPoint: "Taupunkt",
  humidity: "Luftfeuchte",
  report: "Die Meldung, wie du sie kopiert hast",
  reportHint: "Eine METAR- oder SPECI-Zeile. Sie wird so gespeichert, wie du sie einfügst.",
  reportExample: "METAR ... 24004KT 9999 17/09 Q1018",
  reportHeights: "Es zählt die Höhe deines Ortes, nicht die der Station: Der Druck wird dorthin umgerechnet.",
  stationHeight: "Höhe der Station",
  stationHeightHint: "Leer lassen, wenn du sie nicht weißt; das Band wird breiter.",
  heightOnly:
    "Das Wetter verschiebt den Druck auf einer Höhe um 1 % und mehr, darum ist das Band auf diesem Weg breiter.",
  notANumber: "Das ist keine lesbare Zahl. Eine Einheit darf dahinter stehen: 24C, 640 m, 938 hPa.",
  readTitle: "Aus der Meldung gelesen",
  readStation: "Station",
  readTime: "Ausgestellt",
  readTemperature: "Temperatur",
  readDewPoint: "Taupunkt",
  readAltimeter: "Luftdruck, Meereshöhe",
  readStationPressure: "Luftdruck an der Station",
  notSaid: "steht nicht drin",
  time: (day, hour, minute) =>
    `Tag ${day}, ${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")} UTC`,
  age: (minutes) =>
    minutes < 90
      ? `vor ${Math.max(0, minutes)} Minuten`
      : minutes < 48 * 60
        ? `vor ${Math.round(minutes / 60)} Stunden`
        : `vor ${Math.round(minutes / 1440)} Tagen`,
  densityTitle: "Diese Luft",
  denser: (percent) =>
    Math.abs(percent) < 0.5
      ? "Für den Motor so dicht wie Normalluft auf Meereshöhe."
      : `Für den Motor ${whole(percent)} % ${percent < 0 ? "dünner" : "dichter"} als Normalluft auf Meereshöhe.`,
  doubt: (percent) => `Auf ${figure(percent, percent < 1 ? 1 : 0, "de")} % genau.`,
  like: (height) => `Wie ${height} in Normalluft.`,
  read: (temperature, pressure, humidity) =>
    `Gerechnet mit ${temperature}, ${pressure} am Ort, Luftfeuchte ${humidity.toFixed(0)} %.`,
  effectTitle: "Was sie mit der Abstimmung macht",
  fromMarked: (day, temperature, height) =>
    `Gegenüber dem ${day}, ${temperature} auf ${height}, als diese Abstimmung als richtig vermerkt wurde. Ohne Änderung:`,
  fromNoted: (temperature, height) =>
    `Gegenüber der zuletzt notierten Luft, ${temperature} auf ${height}. Ohne Änderung:`,
  effect: (percent) => (Math.abs(percent) < 0.5 ? "gleich" : `${whole(percent)} % ${side(percent)}`),
  opening: "Gas",
  mixture: "Gemisch",
  mendSeaLevel: "Es ist ein Druck auf Meereshöhe",
  mendStation: "Er wurde am Ort abgelesen",
  keep: "Diese Luft speichern",
  kept: "Gespeichert. Der Rat rechnet jetzt mit dieser Luft.",
  undo: "Rückgängig",
  mistaken: "irrtümlich notiert",
  bike: "Motorrad",
  source: "Hauptdüsen zur Auswahl",
  sold: "Käufliche Größen",
  drawer: "Nur was ich habe",
  trip: {
    title: "Eine Fahrt, mehrere Höhen",
    lead: "Der tiefste, kälteste Ort bestimmt die Hauptdüse. Trag für jeden Ort die tiefste Temperatur ein, mit der du rechnest.",
    from: (temperature, height) =>
      `Gerechnet ab ${temperature} auf ${height}, wo die Abstimmung als richtig angenommen wird.`,
    place: "Ort",
    add: "Noch ein Ort",
    remove: (name) => `${name} herausnehmen`,
    removed: (name) => `${name} herausgenommen.`,
    unnamed: (n) => `Ort ${n}`,
    temperature: "Kälteste dort",
    height: "Höhe",
    safe: (main) => `Mit Hauptdüse ${jet(main)} ist Vollgas nirgends mager`,
    stays: "Die ist verbaut: nichts zu ändern.",
    change: (from, to) =>
      to > from
        ? `Verbaut ist ${jet(from)}: vor der Fahrt auf ${jet(to)} wechseln. Mit der ${jet(from)} läuft es mager.`
        : `Verbaut ist ${jet(from)}: auch sicher, nur überall fetter.`,
    notOwned: (main) => `Eine ${jet(main)} liegt nicht in der Schublade.`,
    decides: (name, height, temperature) =>
      `${name} entscheidet: ${height} bei ${temperature} ist die dichteste Luft der Fahrt.`,
    none: "Keine Hauptdüse ist groß genug",
    feels: "Wie es sich an jedem Ort anfühlt",
    feel: (percent) =>
      Math.abs(percent) < 0.5 ? "richtig" : `${whole(percent)} % ${percent > 0 ? "fett" : "mager"}`,
    stop: (half, full) => `${half} bei 1/2, ${full} bei Vollgas.`,
    would: (main) => `Für diesen Ort allein würde eine ${jet(main)} passen.`,
    back: (safe, below) =>
      below === null
        ? `Die ${jet(safe)} wieder einbauen, bevor du tiefer fährst oder dorthin, wo es kälter ist.`
        : `Die ${jet(safe)} wieder einbauen, bevor du unter ${below} fährst, früher, wenn es kälter wird.`,
    keep: "Für den Rückweg speichern",
    kept: "Als Notiz bei diesem Motorrad gespeichert.",
    note: (safe, decides) => `Plan für die Fahrt: Hauptdüse ${jet(safe)}. ${decides}`,
    tooFew: "Gib für mindestens einen Ort Höhe und Temperatur an.",
    unread: "Noch nicht mitgerechnet: Höhe oder Temperatur ist nicht lesbar.",
  },
  chart: {
    title: "Nach Höhe und Temperatur",
    lead: "Hauptdüse und Clip, mit denen diese Abstimmung richtig bleibt.",
    fromMarked: (day, temperature, height) =>
      `Gerechnet ab dem ${day}, ${temperature} auf ${height}, als sie als richtig vermerkt wurde.`,
    fromNoted: (temperature, height) =>
      `Gerechnet ab der zuletzt notierten Luft, ${temperature} auf ${height}: Dort wird sie als richtig angenommen.`,
    mendFirst: "Noch nicht richtig? Bring sie zuerst in Ordnung",
    cell: (main, clip) =>
      `${main === null ? "–" : plainFigure(main, "de")}${clip === null ? "" : ` / ${plainFigure(clip, "de")}`}`,
    legend:
      "Hauptdüse / Clipkerbe, von oben gezählt, auf der fetten Seite. Das umrahmte Feld liegt der Luft, ab der gerechnet wird, am nächsten.",
    noneRich: "Ein Strich: Keine Hauptdüse der Auswahl ist dort fett genug.",
    unknownMain:
      "Die verbaute Hauptdüse ist nicht bekannt, darum lässt sich keine nennen. Lies die Zahl darauf ab.",
    corner: "Höhe",
    here: ", ab hier gerechnet",
  },
};
