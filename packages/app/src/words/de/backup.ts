import type { Words } from "../en.ts";

const records = (count: number): string => (count === 1 ? "1 Eintrag" : `${count} Einträge`);
const lines = (count: number): string => (count === 1 ? "1 Zeile" : `${count} Zeilen`);

export const backup: Words["backup"] = {
  title: "Sicherung",
  back: "Motorräder",
  lead: "Das Logbuch liegt nur auf diesem Gerät. Eine Kopie an einem anderen Ort übersteht ein verlorenes oder kaputtes Telefon.",
  count: (count) => `${records(count)} auf diesem Gerät.`,
  never: "Es gibt noch keine Kopie.",
  last: (day, since) =>
    since === 0
      ? `Letzte Kopie ${day}, seither nichts geschrieben.`
      : `Letzte Kopie ${day}; seither ${records(since)}.`,
  due: "Die letzte Kopie ist alt",
  dueNever: "Noch keine Kopie",
  dueWords: (since) =>
    since === 1 ? "1 Eintrag steht nur auf diesem Gerät." : `${since} Einträge stehen nur auf diesem Gerät.`,
  dueDo: "Kopie machen",
  save: "Kopie als Datei speichern",
  share: "Kopie an eine andere App senden",
  fileName: (day) => `jetwright-${day}.jsonl`,
  saved: (count) => `Kopiert: ${records(count)}.`,
  take: "Kopie einlesen",
  takeHint:
    "Eine .jsonl-Datei aus einer Kopie oder von einem anderen Telefon. Nichts hier wird überschrieben.",
  choose: "Datei wählen",
  fromLink: "Eine Abstimmung, die als Link kam",
  reading: (percent) => `Lese: ${percent} %`,
  keeping: (done, all) => `Speichere: ${done} von ${all}`,
  stop: "Anhalten",
  stopped: "Angehalten. Nichts wurde übernommen.",
  stoppedHalf: (count) =>
    `Angehalten: ${records(count)} gespeichert. Wähl die Datei noch einmal, um den Rest zu übernehmen.`,
  notOurs: (name) =>
    `In „${name}“ steht kein lesbarer Eintrag. Eine Kopie ist eine Datei, in der jede Zeile mit { beginnt und mit } endet.`,
  unopened: (name) =>
    `„${name}“ lässt sich nicht öffnen. Speicher sie zuerst auf diesem Gerät und wähl sie dann noch einmal.`,
  found: (name, count) => `„${name}“: ${lines(count)}`,
  fresh: (count) => (count === 0 ? "Nichts Neues darin" : `${records(count)} zu übernehmen`),
  repeated: (count) => `${records(count)} schon hier, bleiben wie sie sind`,
  newerVersion: (count) =>
    `${records(count)} aus einer neueren Version: unverändert gespeichert, genutzt, sobald diese App aktualisiert ist`,
  unknownKind: (count) =>
    `${records(count)} von einer Art, die diese Version nicht kennt: gespeichert, nicht genutzt`,
  faulty: (count) => `${records(count)} mit Fehler: gespeichert wie geschrieben, nicht genutzt`,
  leftOut: (count) =>
    count === 1 ? "1 Zeile lässt sich nicht übernehmen" : `${count} Zeilen lassen sich nicht übernehmen`,
  leftOutDo: "Diese Zeilen als Datei speichern, um sie zu berichtigen",
  leftOutName: "jetwright-zeilen-zum-berichtigen.jsonl",
  problems: (count) => `Was nicht stimmt (${count})`,
  problemAt: (line) => `Zeile ${line}`,
  more: (count) => `und ${count} weitere`,
  takeIn: (count) => `${records(count)} übernehmen`,
  takenIn: (count) => `Gespeichert: ${records(count)}.`,
  cancel: "Lassen",
  storage: "Wo es liegt",
  lasting:
    "Der Browser hat zugesagt, es zu behalten: Es wird nicht gelöscht, wenn auf dem Gerät der Platz knapp wird.",
  notLasting:
    "Der Browser hat nicht zugesagt, es zu behalten: Wird der Platz auf dem Gerät sehr knapp, kann er es löschen. Bitte ihn, es zu behalten, und mach Kopien.",
  lastingUnknown: "Dieser Browser sagt nicht, ob er es auf Dauer behält: Mach Kopien.",
  askLasting: "Den Browser bitten, es zu behalten",
  askedYes: "Der Browser behält es.",
  askedNo:
    "Der Browser hat nicht zugestimmt. Meist tut er es, wenn die App auf dem Startbildschirm liegt oder einige Male benutzt wurde.",
  room: (used, free) => `Belegt sind ${used}; etwa ${free} sind dafür noch frei.`,
  low: "Es ist nur noch wenig Platz. Schaff auf diesem Gerät Platz, bevor es voll ist.",
  sevenDays:
    "Dieser Browser löscht, was eine Seite speichert, nach sieben Tagen ohne Besuch. Leg die App auf den Startbildschirm: Dort bleibt es.",
  privateWindow:
    "In einem privaten Fenster ist alles weg, sobald es geschlossen wird: Nimm ein normales Fenster.",
  notKept: {
    "storage-full":
      "Nicht gespeichert: Der Speicher dieses Telefons ist voll. Mach etwas Platz und speichere es noch einmal; nichts ist verloren.",
    "storage-closed":
      "Nicht gespeichert: Der Browser öffnete seinen Speicher nicht. Ein privates Fenster oder eine gesperrte Seite kann das machen. Kopiere das Logbuch in eine Datei und öffne die Seite in einem gewöhnlichen Fenster.",
    "storage-lost":
      "Nicht gespeichert: Diese Seite hat ihren Speicher verloren, wie es geschieht, wenn eine neuere Version in einem anderen Tab offen ist. Lade die Seite neu und schreib es dann auf; was vorher gespeichert war, ist da.",
  },
  notUsed: "Gespeichert und nicht genutzt",
  keptNewer: (count) => `${records(count)} aus einer neueren Version. Aktualisier die App, um sie zu nutzen.`,
  keptUnknown: (kinds) => `Einträge von Arten, die diese Version nicht kennt: ${kinds}.`,
  keptFaulty:
    "Einträge, die sich nicht lesen lassen. Sie bleiben gespeichert, wie sie geschrieben wurden, und kommen in jede Kopie.",
};

export const take: Words["take"] = {
  title: "Eine Abstimmung von einem anderen Telefon",
  back: "Motorräder",
  reading: "Der Link wird gelesen…",
  paste: "Link hier einfügen",
  pasteHint: "Die ganze Adresse, wie sie kam",
  open: "Öffnen",
  wouldCome: "Das käme herein:",
  about: (bikes) => `Für ${bikes}`,
  here: "schon hier",
  other: "ein anderer Eintrag hat seine Kennung: weggelassen",
  kept: "gespeichert, von dieser Version nicht genutzt",
  already: "Alles davon ist schon auf diesem Gerät.",
  known: "Dieses Motorrad ist auf diesem Gerät: Es kommt zu seiner Geschichte dazu.",
  takeIn: "Übernehmen",
  leave: "Lassen",
  taken: "Gespeichert.",
  toBike: "Zum Motorrad",
  unreadable: "Ein Teil davon ist nicht lesbar und würde weggelassen.",
};

export const update: Words["update"] = {
  there: "Eine neue Version ist da.",
  hint: "Was geschrieben ist, bleibt unberührt.",
  load: "Laden",
  later: "Später",
};
