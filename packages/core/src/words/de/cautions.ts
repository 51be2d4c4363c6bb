import type { CoreWords } from "../core-words.ts";

/** What to mind, one to three short sentences each. */
export const cautions: CoreWords["cautions"] = {
  "makers-manual":
    "Das Handbuch des Herstellers für genau dieses Motorrad geht allem vor, was hier steht: seine Werte, seine Reihenfolge, seine Drehmomente.",
  "fuel-off-first":
    "Vor der Arbeit den Benzinhahn zu. Motor abkühlen lassen. Die Schwimmerkammer in eine benzinfeste Schale entleeren.",
  "petrol-vapour":
    "Im Freien oder bei offenen Toren arbeiten. Keine Flamme, Heizung, Zündflamme, kein Schleifer, nicht rauchen: Benzindampf ist schwer und sammelt sich in Gruben. Feuerlöscher für brennbare Flüssigkeiten in Reichweite; niemals Wasser.",
  "spilled-fuel":
    "Verschüttetes Benzin vor dem Starten aufwischen, die Lappen in einen geschlossenen Metallbehälter. Ein Leck, das nicht aufhört, heißt: nicht starten.",
  battery:
    "Wo eine Batterie ist, den Minuspol abklemmen, solange Kraftstoff offen ist. Das Kerzenkabel von Kraftstoff fernhalten und nie mit ausgebauter Kerze neben offenem Kraftstoff durchtreten.",
  fumes:
    "Abgas tötet, ohne zu riechen. Den Motor nie drinnen laufen lassen, auch nicht bei offenem Tor; Wind kann das Gas zurückdrücken.",
  "hot-parts":
    "Krümmer, Zylinderkopf und Kühlmittel verbrennen die Haut. Warten oder Handschuhe tragen. Einen heißen Kühler nie öffnen.",
  "eyes-and-skin":
    "Brille tragen, wenn Düsen ausgeblasen werden, Handschuhe gegen Benzin und Reiniger. Einen Lappen über die Düse halten. Druckluft nie auf die Haut richten.",
  "seizure-at-full-throttle":
    "Zu wenig Kraftstoff bei Vollgas kann den Motor fressen lassen und das Rad blockieren. Auf der fetten Seite anfangen, zwei Finger an der Kupplung, kein langes Vollgas mit einer unerprobten Hauptdüse, und beim ersten Klingeln aufhören.",
  "lean-damage":
    "Zu wenig Kraftstoff verbrennt Kolben; zu viel verrußt meist nur Kerzen. Im Zweifel auf die Seite mit mehr Kraftstoff.",
  "stop-at-knock":
    "Ein Klopfen, ein reißender Ton, Metall an der Kerze oder ein Klemmen des Kolbens beendet das Abstimmen. Sanft vom Gas, nicht wiederholen, die Ursache suchen.",
  runaway:
    "Motor geht durch: Kupplung ziehen, bremsen, Notaus. Läuft er weiter: Benzinhahn zu und die Vergaseröffnung abdecken, wenn sie gefahrlos zu erreichen ist; oder, nur im Sitzen und mit beiden Rädern am Boden, höchster Gang, beide Bremsen fest, Kupplung kommen lassen und ihn abwürgen. Sonst Abstand halten, bis er leer ist, und kein Neustart, bevor Schieber, Zug, Stutzen und Dichtringe geprüft sind.",
  "slide-snap-before-start":
    "Vor jedem ersten Start, Motor aus: Gas auf und loslassen, Lenker gerade, links und rechts. Der Schieber muss hörbar auf seinen Anschlag schlagen. Ein Daumen bleibt am Notaus.",
  "test-riding":
    "Testfahrten nur auf gesperrter Strecke oder Gelände, wo es erlaubt ist, in voller Schutzkleidung, mit jemandem, der zusieht, und erprobtem Notaus. Kein Telefon in der Hand. Kinder nur unter Aufsicht.",
  noise: "Wer am Motorrad hilft, trägt Gehörschutz. Lärmgrenze und Zeiten des Ortes einhalten.",
  "free-revving":
    "Ohne eingelegten Gang kein Vollgas halten: Nichts belastet den Motor, und Teile fliegen. Nur kurze Gasstöße.",
  "spray-fire":
    "Kraftstoff oder Gas an Dichtstellen zu sprühen kann einen Brand auslösen. Nie am heißen Motor und nie in der Nähe eines Funkens; der Drucktest mit Seifenwasser sagt mehr und verbrennt nichts.",
  "low-pressure-only":
    "Nur geringer Druck: in einem Kurbelgehäuse nie über 10 psi (0,69 bar). Handpumpe und Manometer bis 15 psi, keine Werkstatt-Druckluft.",
  "never-wire-or-drill":
    "Düsen nur mit Lösemittel und Luft reinigen. Nie Draht oder Bohrer hindurch, und nie zur Filterseite blasen.",
  waste:
    "Benzin, Reiniger, Kühlmittel, Öl und alte Dämmwolle gehören zur Sammelstelle, nie in den Abfluss oder in den Boden.",
  law: "An zugelassenen Fahrzeugen dürfen plombierte Schrauben und Düsen nicht verändert werden; Änderungen können Zulassung und Versicherung kosten. Im Gelände gelten die örtlichen Regeln für Lärm und Funkenschutz.",
  "hand-over":
    "Übergib ihn einer Fachwerkstatt nach einem Durchgehen, Fressen oder Klopfen, bei Metall an der Kerze, nicht bestandenem Drucktest, einem Kraftstoffleck, das nicht aufhört, einem Fehler an Gas oder Bremse, oder ohne das Werkzeug und einen sicheren Platz.",
};
