import { refusals } from "@jetwright/core/words/de/refusals";

/** Why something was not taken, by its reason, in German. */
export const refused: Readonly<Record<string, string>> = {
  ...refusals,

  "not a count": "Da ist keine lesbare Anzahl. Tipp 175x2 für zwei davon.",
  "no-such-bike": "Von diesem Motorrad steht hier nichts. Wähl eines aus der Liste.",
  "bike-not-described": "Niemand hat gesagt, welchen Motor es hat. Trag ein, ob Zwei- oder Viertakter.",
  "no-such-record": "Diesen Eintrag gibt es bei diesem Motorrad nicht.",
  "nothing-noted": "Noch ist keine Luft notiert: Gib die Höhen und Temperaturen an, bei denen du fährst.",
  "upside-down": "Zuerst die tiefste Höhe und der kälteste Tag: Tausch die beiden Zahlen.",
  "nothing-to-look-over": "Jetzt gibt es nichts durchzusehen: Der nächste Schritt sagt, was zu tun ist.",
  "unknown-check": "Diese Prüfung gibt es nicht.",
  "unknown-test": "Diesen Test gibt es nicht.",
  "nothing-changed": "Bei diesem Motorrad ist kein Wechsel notiert, also gibt es nichts zurückzunehmen.",
  "cut-short":
    "Der Link ist nicht lesbar: Ein Teil fehlt. Scann den Code noch einmal oder bitte um die Datei.",
  "newer-link": "Der Link kommt von einer neueren Version: Aktualisier die App und öffne ihn noch einmal.",
  "browser-too-old": "Dieser Browser kann den Link nicht entfalten: Bitte um die Datei.",
  "pilot jet not known": "Die verbaute Leerlaufdüse ist nicht bekannt: Nimm sie heraus und lies ihre Zahl.",
  "no-air": "Noch ist die Luft von jetzt nicht notiert: Notier sie unter „Luft“.",
  "no-such-order": "Dieser Auftrag steht nicht auf diesem Gerät; vielleicht auf einem anderen Telefon.",
  "no-such-take": "Diese Aufnahme steht nicht mehr im Buch.",
  "not-usable":
    "Ein Wert kann so nicht sein: Prüf Temperatur, Luftdruck, Höhe, Luftfeuchte und ihre Einheiten.",

  "bad-code":
    "Der Code ist unbekannt, verbraucht oder zu alt. Lass dir einen neuen geben und tipp ihn binnen zehn Minuten ein.",
  "too-many-tries": "Zu viele Codes wurden probiert. Warte ein paar Minuten.",
  "too-many-requests": "Zu viele Anfragen auf einmal. Warte einen Augenblick.",
  "not-paired": "Dieses Gerät ist nicht angemeldet oder wurde ausgeschlossen. Meld es noch einmal an.",
  "not-allowed": "Das dürfen nur die Leute, die diese Werkstatt führen.",
  "no-such-person": "Niemand mit diesem Namen ist in dieser Werkstatt bekannt.",
  "no-such-device": "Kein Gerät mit diesem Namen ist in dieser Werkstatt bekannt.",
  "wrong-fields": "Eine Angabe hat nicht die nötige Form: Prüf Code und Namen.",
  "known-otherwise": "Die Werkstatt hat unter dieser Nummer schon einen anderen Eintrag. Dieser bleibt hier.",
  "not-a-record": "Diese Zeile ist kein Eintrag. Sie bleibt, wie sie ist.",
  "body-cut-off": "Die Verbindung riss ab. Schick es noch einmal.",
  "too-large": "Das ist zu groß, um es auf einmal zu schicken. Schick weniger.",
  "storage-full":
    "Die Platte des Servers ist voll. Nichts wurde geändert: Schaff dort Platz und schick es noch einmal.",
  "database-away":
    "Der Server erreicht seine Datenbank gerade nicht. Nichts wurde geändert: Schick es noch einmal.",
  "database-busy": "Der Server ist beschäftigt. Nichts wurde geändert: Schick es gleich noch einmal.",
  stopping: "Der Server wird gerade beendet. Schick es gleich noch einmal.",
  bug: "Das ist ein Fehler des Servers; sein Protokoll sagt mehr. Nichts wurde geändert.",
  "no-server": "Statt des Servers der Werkstatt hat etwas anderes geantwortet. Prüf das Netz.",
};
