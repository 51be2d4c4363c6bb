import type { Words } from "../en.ts";
import { soundFigures } from "./sound-figures.ts";

export const listen: Words["listen"] = {
  title: "Dem Motor zuhören",
  back: "Motorrad",
  caution:
    "Nur im Freien: Abgas tötet. Motorrad auf dem Ständer, Leerlauf eingelegt, niemand davor oder dahinter. Gehörschutz tragen, eine Hand am Notaus, und nie lange Vollgas ohne Last.",
  made: "Die Werte stammen aus Versuchen mit künstlichen Geräuschen. Noch wurde damit kein wirklicher Motor gemessen: Vertraue zuerst dem Bild und deinen Ohren.",
  guide:
    "Motor warm, Telefon eine Armlänge neben dem Schalldämpfer, im Windschatten. Drei Sekunden Leerlauf, Gas aufreißen, fallen lassen; dreimal.",
  start: "Zuhören",
  stop: (seconds) => `Anhalten (${seconds} s)`,
  load: "Aufnahme laden",
  rpm: "1/min",
  reckoning: "Die Aufnahme wird gelesen …",
  stillOn: (names) =>
    `Dieser Browser lässt seine eigene Tonbearbeitung an (${names}). Sie kann den Leerlauf als Rauschen entfernen; sicherer ist eine Aufnahme mit anderem Programm und „Aufnahme laden“.`,
  troubles: {
    insecure:
      "Diese Seite wurde nicht über eine sichere Adresse geöffnet, darum gibt der Browser kein Mikrofon. Eine Aufnahme laden geht.",
    denied:
      "Das Mikrofon ist nicht erlaubt. Erlaube es in den Einstellungen des Browsers für diese Seite, oder lade eine Aufnahme.",
    none: "Kein Mikrofon gefunden. Lade stattdessen eine Aufnahme.",
    busy: "Das Mikrofon ist nicht angesprungen; vielleicht hält es ein anderes Programm. Schließe es, oder lade eine Aufnahme.",
  },
  cannotDecode:
    "Der Browser kann diese Datei nicht lesen. Speichere sie als WAV, MP3 oder M4A und lade sie noch einmal.",
  notUsed: "Nicht gut genug, um zu zählen",
  doubts: {
    "no-engine":
      "In den ersten zwei Sekunden ist kein Motor klar zu hören. Geh näher, schirme das Mikrofon vom Wind ab und beginne mit drei Sekunden Leerlauf.",
    clipped: "Die Aufnahme ist übersteuert: Die Spitzen sind abgeschnitten. Halte das Telefon weiter weg.",
    hum: "Der Ton ändert sich gar nicht, wie Netzbrummen und wie kein Motor. Geh weg von dem, was brummt.",
    knocking: "Es schlägt wie Hämmern oder Klatschen, nicht wie ein Motor zündet.",
    "two-sounds":
      "Etwas fast ebenso Lautes läuft mit: ein anderer Motor, ein Heulen oder der Wind. Nimm diesen Motor allein auf.",
    "not-an-engine": "Die Drehzahl springt wie bei Reden oder Musik; das kann keine Kurbelwelle.",
    "no-idle": "Es ist kein Leerlauf darin, an dem sich messen lässt. Beginne mit drei Sekunden Leerlauf.",
    moving: "Es fährt vorbei: Nur ein stehendes Motorrad gibt die wahre Drehzahl.",
    "hint-disagrees":
      "Der Leerlauf klingt halb so schnell wie beim letzten Mal. Lies ihn mit einem Drehzahlmesser ab und nimm neu auf.",
  },
  heard: "Was zu hören war",
  what: "Gemessen",
  now: "Jetzt",
  before: "Letztes Mal",
  good: "Gute Aufnahme",
  figures: soundFigures,
  hung: "Die Drehzahl blieb hängen, ehe sie fiel: unten mager, oder ein Leck. Suche das Leck, bevor du eine Düse anrührst.",
  stalled: "Nach dem Schließen ging er aus.",
  dived: "Die Drehzahl tauchte unter den Leerlauf: unten fett, oder der Leerlauf zu niedrig eingestellt.",
  sure: (tenths) =>
    `Der schwächste dieser Werte stimmt etwa ${tenths} von zehn Malen, bei künstlichen Geräuschen.`,
  againstGood: (day) => `Gegen die gute Aufnahme vom ${day}`,
  againstLast: (day) => `Gegen die letzte Aufnahme, ${day}`,
  noDifference: "Nichts weicht mehr ab als ein Versuch vom nächsten.",
  differs: {
    idleRpm: {
      more: (by) => `Leerlauf um ${by} höher.`,
      less: (by) => `Leerlauf um ${by} niedriger.`,
    },
    hangSeconds: {
      more: (by) => `Hängt nach dem Schließen ${by} länger.`,
      less: (by) => `Hängt nach dem Schließen ${by} kürzer.`,
    },
    undershootPercent: {
      more: (by) => `Taucht ${by} tiefer unter den Leerlauf.`,
      less: (by) => `Taucht ${by} weniger unter den Leerlauf.`,
    },
    settleSeconds: {
      more: (by) => `Braucht ${by} länger bis zum ruhigen Leerlauf.`,
      less: (by) => `Ist ${by} früher ruhig im Leerlauf.`,
    },
    halvingSeconds: {
      more: (by) => `Fällt langsamer: ${by} länger bis zur halben Drehzahl.`,
      less: (by) => `Fällt schneller: ${by} früher bei der halben Drehzahl.`,
    },
    delaySeconds: {
      more: (by) => `Antwortet beim Aufreißen etwa ${by} später.`,
      less: (by) => `Antwortet beim Aufreißen etwa ${by} früher.`,
    },
    riseSeconds: {
      more: (by) => `Braucht ${by} länger zum Hochdrehen.`,
      less: (by) => `Dreht ${by} schneller hoch.`,
    },
    bogPercent: {
      more: (by) => `Sackt vor dem Anstieg ${by} tiefer ab.`,
      less: (by) => `Sackt vor dem Anstieg ${by} weniger ab.`,
    },
    huntingPercent: {
      more: (by) => `Der Leerlauf schwankt stärker von selbst, um ${by}.`,
      less: (by) => `Der Leerlauf schwankt weniger von selbst, um ${by}.`,
    },
  },
  keepGood: "Behalten; es läuft richtig: spätere damit vergleichen",
  keepSound: (megabytes) => `Auch den Ton behalten (${megabytes} MB, auf diesem Gerät)`,
  soundLost:
    "Nicht behalten: Auf diesem Gerät ist kein Platz für den Ton, oder die Adresse ist nicht sicher. Ohne ihn lassen sich die Werte behalten.",
  takes: "Frühere Aufnahmen",
  goodMark: "gut",
  see: "Drehzahl über der Zeit",
  play: "Ton abspielen",
  stopSound: "Ton anhalten",
  notHere: "Der Ton ist nicht auf diesem Gerät.",
  drop: "Ton löschen",
  dropped: "Ton gelöscht. Die Werte bleiben.",
  undo: "Rückgängig",
  undone: "Zurückgenommen.",
  noTake: "Was zu hören war",
  noSpeed: "Die Drehzahl wurde nicht mitgeschrieben.",
  heardOn: (day) => `Gehört am ${day}`,
  lineOf: "Drehzahl über der Zeit",
  idleLine: "Leerlauf",
  hangWords: (seconds, percent) =>
    `Nach dem Schließen hing er ${seconds} s über dem Leerlauf; schraffiert, wo er mehr als ${percent} % darüber bleibt.`,
  hear: (second) => `Sekunde ${second} hören`,
  pictureOf: "Drehzahl über der Zeit, gezeichnet über dem Geräusch, aus dem sie gelesen wurde",
  pictureHelp:
    "Die Bänder sind, was aus dem Geräusch hervorsteht: Vielfache der Zündungen. Die Linie ist die daraus gelesene Drehzahl. Glaube ihr, wo sie sich bewegt wie die Bänder. Antippen, um diese Sekunde zu hören.",
  kinds: {
    idle: "Leerlauf",
    hunting: "schwankt",
    snap: "auf",
    chop: "zu",
    stall: "aus",
    skipping: "setzt aus",
  },
  keep: "Diese Werte behalten",
  kept: "Behalten",
  save: "Aufnahme als Datei speichern",
  notKept:
    "Die Aufnahme selbst ist weg, wenn du diese Seite verlässt, außer du behältst oder speicherst sie.",
};
