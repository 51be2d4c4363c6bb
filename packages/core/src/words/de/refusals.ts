import type { CoreWords } from "../core-words.ts";

/** Why the core took something not, by its reason, in German. */
export const refusals: CoreWords["refusals"] = {
  "temperature-not-a-number": "Das ist keine Temperatur: Gib sie in °C oder °F an.",
  "temperature-unit": "Das kann °C oder °F[ (dann {celsius} °C)] sein: Schreib die Einheit dazu.",
  "temperature-out-of-range": "Bei -40 bis 60 °C wird gefahren: Prüf die Temperatur und ihre Einheit.",
  "pressure-not-a-number": "Das ist kein Luftdruck: Gib die Zahl und ihre Einheit an.",
  "pressure-unit":
    "Dieser Luftdruck kann mehrere Einheiten haben[ ({units})]: Schreib sie dazu, etwa hPa, mmHg oder inHg.",
  "pressure-out-of-range": "Das ist kein Luftdruck, bei dem gefahren wird: Prüf die Zahl und die Einheit.",
  "pressure-height-mismatch":
    "Luftdruck und Höhe passen nicht zusammen[: {hPa} hPa gehören zu etwa {fitsMetres} m, nicht zu {metres} m]. Prüf beide und ihre Einheiten.",
  "height-not-a-number": "Das ist keine Höhe: Gib sie in m oder ft an.",
  "height-unit": "Das können Meter oder Fuß[ (dann {metres} m)] sein: Schreib die Einheit dazu.",
  "height-out-of-range":
    "Höhen von -500 bis 6000 m gehen[, nicht {metres} m]: Prüf die Zahl und die Einheit.",
  "height-missing": "Gib die Höhe über dem Meer an; ohne sie sagt dieser Luftdruck nichts.",
  "humidity-not-a-number": "Das ist keine Luftfeuchte: Gib eine Zahl an oder lass sie leer.",
  "humidity-unit": "1 kann 1 % oder gesättigte Luft sein: Gib die Luftfeuchte in Prozent an.",
  "humidity-out-of-range": "Diese Luftfeuchte gibt es nicht: 0 bis 100 %, oder lass sie leer.",
  "dew-point-above-temperature":
    "Der Taupunkt[ {dewPoint} °C] kann nicht über der Temperatur[ {celsius} °C] liegen: Prüf beide und ihre Einheiten.",
  "wet-bulb-above-temperature":
    "Die Feuchtkugeltemperatur[ {wetBulb} °C] kann nicht über der Temperatur[ {celsius} °C] liegen: Prüf beide und ihre Einheiten.",
  "wet-bulb-too-low":
    "So tief fällt eine Feuchtkugeltemperatur nicht[, bei {celsius} °C nur bis {driest} °C]: Vielleicht ist es ein Taupunkt.",
  "temperature-missing": "Die Meldung nennt keine Temperatur: Gib eine am Ort gemessene an.",
  "report-age":
    "So alt[ ({minutes} Minuten)] kann die Meldung nicht sein: Prüf Uhr, Datum und die Zeit der Meldung (UTC).",
  empty: "Keine Meldung da: Füg eine ein oder gib die Messwerte an.",
  "not-a-report": "Im Text ist keine Wettermeldung: Füg METAR oder SPECI ein oder gib die Messwerte an.",
  forecast: "Das ist eine Vorhersage (TAF): Füg die Beobachtung ein, METAR oder SPECI.",
  nil: "Die Meldung sagt NIL, die Station hat nichts beobachtet: Nimm eine andere oder gib die Messwerte an.",
  "no-reading": "In der Meldung ist weder Temperatur noch Luftdruck lesbar: Gib die Messwerte an.",

  "not a number": "Das ist keine Düsenzahl. Tipp nur die eingeschlagenen Ziffern, etwa 175 oder 17,5.",
  "not a jet size":
    "So eine Düsengröße gibt es nicht[, nur {least} bis {most}]. Lies mit der Lupe nach; oft fehlt ein Komma (17,5).",
  groove:
    "Diese Kerbe hat die Düsennadel nicht[: Sie hat {grooves}]. Kerbe 1 ist die oberste, am stumpfen Ende.",
  "not a groove":
    "Das ist keine Kerbe[ dieser Düsennadel mit {grooves}]. Tipp ihre Nummer; Kerbe 1 ist die oberste, am stumpfen Ende.",
  "other needle":
    "Die notierte Düsennadel hat eine andere Zahl Kerben[: {grooves}, nicht {counted}]. Zähl noch einmal oder notier die andere Düsennadel.",
  cutaway: "Das ist kein Ausschnitt. Tipp seine Höhe in mm (meist 1,5 bis 4) oder die Zahl auf dem Schieber.",
  "not turns": "Das ist keine Zahl von Umdrehungen. Tipp etwa 1,5 oder 1 1/2, gezählt von leicht aufsitzend.",
  turns:
    "So weit hinaus[ ({turns} Umdrehungen)] hält keine Schraube mehr. Dreh sie leicht hinein und zähl noch einmal.",
  "not an oil ratio": "Das ist kein Ölverhältnis. Schreib etwa 50:1, 20 ml/l oder 2 % vom Kraftstoff.",
  oil: "So viel oder so wenig Öl gibt es nicht: üblich sind 10:1 bis 100:1. Prüf das Verhältnis und die Einheit.",
  ambiguous: "Das kann mehreres heißen. Schreib es genauer, etwa 50:1 oder 20 ml/l.",
  reading:
    "Diese Zahlen kann eine Düsennadel nicht haben[: {diameter} mm dick, {down} mm unter der obersten Kerbe]. Prüf beide und ihre Einheit.",
  "too few":
    "Zu wenige Messungen[ ({count}, mindestens {least})]: zwei am geraden Teil und drei an jedem Kegel. Miss alle 2 mm von den Kerben bis zur Spitze.",
  "too many":
    "Das sind zu viele Messungen[: {count}, höchstens {most}]. Lass die weg, die am engsten beieinander liegen.",
  "gets thicker":
    "Die Düsennadel würde zur Spitze hin dicker[, von {from} bis {to} mm unter der obersten Kerbe]; das tut keine. Sind die Abstände von den Kerben gezählt? Miss dort noch einmal.",
  "no straight part": "Der gerade Teil ist nicht gemessen. Miss noch dreimal näher an den Kerben.",
  "does not fit":
    "Die Messungen passen zu keiner Düsennadel. Miss noch einmal, jedes Mal um eine Vierteldrehung weiter: Sie kann krumm, verschlissen oder schmutzig sein.",

  "nothing to go by":
    "Weder Hubraum noch Durchlass sind bekannt. Miss den Durchlass auf der Motorseite; oft ist er auch eingegossen.",
  displacement:
    "Ein Vergaser versorgt 20 bis 1000 cm³[, nicht {cc}]. Prüf die Einheit und gib an, was dieser eine versorgt.",
  bore: "Der Durchlass muss 8 bis 60 mm haben[, nicht {mm}]. Prüf die Einheit.",
  "bore does not fit":
    "Dieser Durchlass passt nicht zum Hubraum[: Für {cc} cm³ sind etwa {usual} mm üblich, {least} bis {most} mm denkbar]. Miss ihn auf der Motorseite oder prüf den Hubraum.",
  "other body": "Das sind zwei verschiedene Vergaser: Vergleichen lassen sich nur Teile im selben.",
  "known on one side only":
    "Ein Teil ist nur in einer der beiden Abstimmungen bekannt: Sieh nach, was drin ist, oder lass es in beiden offen.",
  "jets not comparable":
    "Die Düsen sind verschieden beziffert oder von zwei Herstellern und lassen sich nicht vergleichen. Miss beide oder bleib bei einem.",
  "needles not comparable":
    "Die Düsennadeln lassen sich nicht vergleichen, solange ihre Maße fehlen: Miss sie mit der Messschraube.",
  "impossible part": "Eines der Teile kann so nicht sein: Prüf die Zahlen unter „Verbaut“.",
  "impossible air or fuel": "Diese Luft oder dieser Kraftstoff kann so nicht sein: Prüf die Angaben.",
  "main jet not known": "Die verbaute Hauptdüse ist nicht bekannt: Nimm sie heraus und lies ihre Zahl.",
  "needle limits":
    "Keine Hauptdüse gibt hier[ ({place})] genug Kraftstoff: Die Düsennadel hält ihn bei Vollgas zurück. Häng sie höher oder nimm eine größere Nadeldüse.",
  "no places": "Gib mindestens einen Ort der Fahrt mit seiner Höhe an.",
  "outside the tables": "Für diese Höhe oder Temperatur gibt es keine Luft in der Tabelle: Prüf beide.",

  "no-engine":
    "In den ersten zwei Sekunden ist kein Motor klar zu hören. Geh näher heran, schirm den Wind ab und fang mit drei Sekunden Leerlauf an.",
  clipped: "Die Aufnahme ist übersteuert. Halt das Telefon weiter weg und nimm noch einmal auf.",
  knocking: "Was zu hören ist, schlägt langsamer, als ein Motor läuft. Nimm ohne das noch einmal auf.",
  hum: "Der Ton ändert sich nie, wie Netzbrummen. Geh weg von dem, was brummt, und nimm noch einmal auf.",
  "two-sounds":
    "Etwas fast ebenso Lautes läuft mit: ein zweiter Motor, ein Pfeifen oder der Wind. Nimm mit diesem Motor allein auf.",
  "not-an-engine": "Die Drehzahl springt wie bei Sprache oder Musik. Nimm ohne das noch einmal auf.",
  moving: "Es fährt vorbei. Nur ein stehendes Motorrad gibt seine wahre Drehzahl.",
  "no-idle": "Es ist kein Leerlauf dabei. Fang mit drei Sekunden Leerlauf an, dann Gas und abfallen lassen.",
  "coarse-sound":
    "Die Aufnahme ist zu grob[: {rate} Werte je Sekunde, mindestens {least}]. Nimm sie als gewöhnlichen Ton auf.",
  "too-short": "Die Aufnahme ist zu kurz[ ({seconds} s)]: mindestens fünf Sekunden, drei davon im Leerlauf.",
  "hint-disagrees":
    "Der Leerlauf klingt halb so schnell wie notiert. Prüf die Zahl oder lies ihn mit einem Drehzahlmesser ab.",
  "not-wave": "Das ist keine WAV-Datei. Gib eine oder eine, die der Browser abspielt.",
  "unknown-coding": "So geschriebene WAV-Dateien sind nicht lesbar. Speicher sie als 16-Bit-PCM.",
  "odd-header": "Der Kopf dieser WAV-Datei ist nicht lesbar. Speicher sie noch einmal.",
  "no-sound": "In dieser WAV-Datei ist kein Ton. Nimm noch einmal auf.",
  temperature: "Kraftstoff hat hier -40 bis 60 °C: Prüf die Temperatur und ihre Einheit.",
  ethanol: "Ethanol gibt es nur von 0 bis 100 %: Lies noch einmal an der Zapfsäule.",
  alkylate: "Alkylat und Ethanol zusammen machen 0 bis 100 % aus: Prüf beide.",
  density: "Benzin wiegt bei 15 °C 600 bis 900 kg/m³: Gib kg/m³ an (0,745 kg/l sind 745) oder lass es leer.",
  "outside the tool": "Mit so viel Ethanol rechnet die App nicht: Nimm Benzin, E5, E10 oder Alkylat.",
  "sd-not-usable": "Diese Unsicherheit kann nicht sein: Gib eine kleinere Zahl ab 0 an oder lass sie leer.",
  "too-long":
    "Das ist zu lang[ ({seconds} s, höchstens {most})]: Gib nur die eine Wettermeldung oder höchstens drei Minuten Ton.",
  "shop displacement":
    "Ein Motorrad der Werkstatt hat einen Hubraum, den ein Vergaser nicht versorgt: Berichtige seinen Eintrag.",
};
