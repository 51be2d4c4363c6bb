import type { CoreWords } from "../core-words.ts";
import { withComma } from "../figures.ts";
import { upperFirst } from "../letters.ts";
import { listed } from "./listed.ts";
import { openings } from "./openings.ts";
import { partName, partNamed, parts, partValue } from "./parts.ts";

type Steps = CoreWords["steps"];

const NOTHING_CHANGED = "Es wird nichts verändert.";
const CHANGE_TOOLS = ["Kreuzschlitz-Schraubendreher Gr. 2", "Schlitz-Schraubendreher", "Innensechskant 3 mm"];
const PLUG_SPANNER = "Gabelschlüssel 14 oder 17 mm für die Ablassschraube";

const TO_READ = {
  pilot: "Leerlaufdüse",
  screw: "Stellung der Schraube",
  needle: "Düsennadel",
  clip: "Kerbe des Clips",
  main: "Hauptdüse",
} as const;

const TOP_RIDE = {
  free: "3/4 bis voll: einige Sekunden halten, dann etwas zurückdrehen.",
  "seconds only": "3/4 bis voll: zwei, drei Sekunden halten, nicht länger, dann etwas zurückdrehen.",
  "stay below 3/4": "Von 3/4 an aufwärts die Finger weg.",
} as const;

const mend: Steps["mend"] = {
  title: (fault) => `Vor jeder Düse beheben: ${fault}`,
  expect:
    "Die alte Klage ändert sich oder verschwindet. Was vor der Reparatur auffiel, zählt danach nur noch wenig.",
  wrongIf: "Er läuft genau wie vorher: Der Fehler war nicht die Ursache, oder er ist noch da.",
  undo: "Heb auf, was du abbaust, bis die nächste Fahrt gezeigt hat, dass die Reparatur stimmt.",
  note: "Trag die Reparatur ein, wenn sie gemacht ist.",
};

const check: Steps["check"] = {
  expect: (fault, timesInTen, remedy) =>
    `Liegt es daran (${fault}), findet es diese Prüfung in etwa ${timesInTen} von 10 Fällen. Dann: ${remedy}`,
  wrongIf: (fault) =>
    `Alles ist in Ordnung. Weniger wahrscheinlich ist dann: ${fault}. Prüfung eintragen und weitermachen.`,
  undo: NOTHING_CHANGED,
};

const lookOver: Steps["lookOver"] = {
  title: "Vor jeder Düse das Motorrad einmal durchsehen",
  look: (words) => (words.endsWith("?") ? words : `${words}.`),
  expect: (timesInTen) =>
    `Bei einem Motorrad, das so läuft, findet sich in etwa ${timesInTen} von 10 Fällen etwas. Das wird zuerst behoben; keine Düse heilt es.`,
  wrongIf:
    "Alles ist in Ordnung: Dann liegt es weniger wahrscheinlich an dem, was angesehen wurde, und die Düsen sind dran.",
  undo: "Es wird nichts geändert. Bau wieder an, was du abgenommen hast.",
  note: "In einem Zug dauert es kürzer als Blick für Blick: das Werkzeug nur einmal holen, die Kerze nur einmal heraus.",
};

const test: Steps["test"] = {
  titleAt: (words, opening) => `${words}, ${openings.at(opening)}`,
  expect: (outcome, timesInTen) =>
    `Am wahrscheinlichsten: „${outcome}“, etwa ${timesInTen} von 10 Malen. Jede Antwort führt zu einem anderen Schritt.`,
  wrongIf: "Es antwortet jedes Mal anders. Dann sagt der Test nichts: nicht eintragen.",
  undo: "Stell zurück, was du für den Test verstellt hast.",
};

const change: Steps["change"] = {
  how: {
    main: (jet) =>
      `Ablassschraube heraus (oder Schwimmerkammer ab), Hauptdüse heraus, ${jet} einsetzen. Lies die Zahl auf der ausgebauten.`,
    pilot: (jet) =>
      `Schwimmerkammer ab, Leerlaufdüse mit einem Schraubendreher heraus, der den Schlitz ausfüllt, ${jet} einsetzen.`,
    clip: (from, to) =>
      `Deckel ab, Schieber heraus, Clip von ${partValue(from)} auf ${partValue(to)}. Kerbe 1 ist die oberste, am stumpfen Ende; eine tiefere Kerbe hebt die Nadel und macht die Mitte fetter.`,
    needle: (to) => `Deckel ab, Schieber heraus, Düsennadel ${partValue(to)} einsetzen.`,
    slide: (to) => `Deckel ab, den Schieber mit ${partValue(to)} einsetzen; der Ausschnitt zeigt zum Filter.`,
    screw: (kind, to) =>
      `${kind === "air" ? "Luftschraube, auf der Filterseite: heraus ist magerer" : "Gemischschraube, auf der Motorseite: heraus ist fetter"}. Umdrehungen zählen, bis sie leicht aufsitzt, dann einstellen: ${partValue(to)}.`,
    needleJet: (to) => `Schwimmerkammer ab, Nadeldüse heraus, die mit ${partValue(to)} einsetzen.`,
  },
  jet: (jet) => (jet === null ? "nicht bekannt" : parts.jet(jet)),
  tools: {
    screw: ["Schlitz-Schraubendreher"],
    cap: CHANGE_TOOLS,
    bowl: [...CHANGE_TOOLS, PLUG_SPANNER],
  },
  expect: (way, percent, opening, right) =>
    `${upperFirst(openings.at(opening))}, wo es am meisten wirkt, ${percent < 1 ? "weniger als 1 %" : `etwa ${withComma(percent)} %`} ${way === "leaner" ? "magerer" : "fetter"}. Stimmt das, ${right}.`,
  wrongIf: (clause) => `${upperFirst(clause)}. Dann mach es rückgängig.`,
  undo: (before) => `Zurück auf: ${before.map(partNamed).join("; ")}.`,
  notInDrawer: (missing) => `Nicht in der Schublade: ${missing.map(partNamed).join(", ")}.`,
  fitsThisBody:
    "Die Schublade sagt nicht, zu welchem Vergaser diese Teile gehören: zuerst prüfen, ob sie in diesen passen.",
  togetherSaves: (changed, minutes) =>
    `${listed(changed.map(partName))} zusammen zu ändern würde insgesamt etwa ${minutes} Minuten sparen; einzeln zeigt sich sicherer, was was bewirkt hat.`,
  oneAtATimeCosts: (minutes) =>
    `Einzeln zu ändern würde insgesamt etwa ${minutes} Minuten mehr kosten; es zeigt sicherer, was was bewirkt hat.`,
};

const waiting: Steps["waiting"] = {
  ride: "Eine Änderung, die helfen würde, muss warten: weiterfahren und berichten, was sich ändert",
  why: {
    top: (percent) =>
      `Sie würde 3/4 bis Vollgas um etwa ${percent} % abmagern, und Vollgas ist noch nicht geprüft.`,
    "other reasons": () => "Sie würde Vollgas abmagern, wo etwas anderes als die Düsen fett wirken kann.",
    pinging: () => "Sie würde abmagern, und so hat er geklingelt.",
  },
  frees: {
    top: "Erst Vollgas prüfen.",
    "bigger main": "Eine größere Hauptdüse hält Vollgas sicher.",
    "other reasons": "Erst nach Zündfunke, Filter, Auspuff und Kompression sehen.",
    pinging: "Die Ursache des Klingelns finden und beheben, oder fetter gehen.",
  },
  by: (title) => `Dafür als Nächstes: ${title}.`,
  comesFirst: {
    test: (change, opening) => `${change}: Das würde ${openings.at(opening)} helfen. Erst Vollgas prüfen.`,
    other: (change, opening) => `${change}: Das würde ${openings.at(opening)} helfen. Dies kommt zuerst.`,
  },
};

const readParts: Steps["readParts"] = {
  title: (unknown) => `Nachsehen, was verbaut ist: ${listed(unknown.map((part) => TO_READ[part]))}`,
  how: [
    "Zähl die Umdrehungen der Schraube von jetzt bis leicht aufsitzend, schreib sie auf und dreh sie zurück.",
    "Ablassschraube oder Schwimmerkammer ab: die Zahlen auf Haupt- und Leerlaufdüse mit der Lupe lesen, mit Herstellerzeichen.",
    "Deckel ab, Schieber heraus: welche Kerbe von oben den Clip hält und was auf Nadel und Schieber steht.",
    "Eine Nadel ohne Kennung: den Durchmesser mit der Mikrometerschraube alle 5 mm von der obersten Kerbe abwärts messen.",
  ],
  tools: [...CHANGE_TOOLS, PLUG_SPANNER, "Lupe"],
  expect:
    "Zahlen, von denen aus geändert werden kann. Trag zu jedem Teil ein, ob du es abgelesen, gemessen oder nur gehört hast.",
  wrongIf:
    "Eine Zahl passt nicht dazu, wie er läuft: Die Düse kann aufgebohrt oder getauscht sein. Miss sie nach.",
  undo: "Setz jedes Teil wieder so ein, wie es war.",
  note: "Bis dahin bleiben diese Teile, wie sie sind.",
};

const ride: Steps["ride"] = {
  unheard: "Fahr es, wie es ist, und berichte, was es tut",
  onStand:
    "Lass es im Leerlauf laufen, reiß das Gas kurz auf und berichte, was die gedrehte Schraube getan hat",
  howOnStand: [
    "Motor ganz warm, auf dem Ständer, im Freien oder mit abgeleitetem Abgas.",
    "20 Sekunden Leerlauf. Dann dreimal schnell auf 1/4 öffnen und zurück, dazwischen Zeit zum Beruhigen.",
    "Berichte gegenüber vorher: wie es im Leerlauf läuft, wie es anspricht und wie es in den Leerlauf zurückkommt.",
  ],
  confirm: "Nichts muss geändert werden: mit dieser Fahrt bestätigen",
  rideOn: "Keine Änderung lohnt jetzt ihre Minuten: weiterfahren und berichten, was sich ändert",
  again: (sorted) => `Noch einmal fahren und berichten: ${openings.atEach(sorted)}`,
  how: (top) => [
    "Griff markieren: zu, 1/8, 1/4, 1/2, 3/4, voll, nach dem Hub des Schiebers.",
    "Motor ganz warm. Dieselbe Strecke, derselbe Gang, je dreimal.",
    "Zu: 20 Sekunden Leerlauf, dann schnell auf 1/4 und zurück. 1/8 bis 1/4: langsam und gleichmäßig, schließen, wieder öffnen.",
    `1/4 bis 1/2: aus niedriger Drehzahl im höheren Gang aufziehen. ${TOP_RIDE[top]}`,
    "Berichte, was du bei jeder Öffnung gehört, gesehen und gespürt hast, und worauf du geachtet und was du nicht gefunden hast.",
  ],
  tools: ["Klebeband und Stift für den Griff"],
  expectConfirmed: "Er läuft bei jeder Öffnung so gut wie zuvor.",
  expectSame: "Er läuft wie zuvor. Wird ein Bereich schlechter, lohnt sich dort eine Änderung.",
  expectMore: "Jeder Bericht macht das Bild enger, und daraus folgt der nächste Schritt.",
  wrongIf: "Etwas zeigt sich, das vorher nicht da war. Berichte auch das.",
  undo: NOTHING_CHANGED,
};

const stop: Steps["stop"] = {
  title: "Halt: nicht fahren und keine Düse tauschen, bis die Ursache gefunden ist",
  how: [
    "Stell ihn ab und lass ihn abkühlen. Nicht zur Probe noch einmal starten.",
    "Kerze heraus: mit Licht und Lupe nach Körnchen, Metall und einer angeschmolzenen Kante suchen.",
    "Durch Auslass und Kerzenloch nach Riefen am Kolben sehen, wenn du hinkommst.",
    "Prüfen, ob Schieber, Zug und Gummistutzen heil sind und nichts das Gas offen hält.",
    "Bring ihn zu einer Fachwerkstatt: Drucktest, Zündzeitpunkt und ein Blick hinein, bevor er wieder läuft.",
  ],
  tools: ["Kerzenschlüssel", "Taschenlampe", "Lupe"],
  expect:
    "Eine Ursache, die man sehen oder messen kann. Trag die Prüfung und ihren Befund ein; erst dann geht das Abstimmen weiter.",
  wrongIf:
    "Gründliches Suchen findet nichts. Trag diese Prüfung als in Ordnung ein: Das Abstimmen geht weiter, behutsam.",
  undo: NOTHING_CHANGED,
  note: "Muss er vorher überhaupt laufen: zuerst eine fettere Hauptdüse, nie eine magerere.",
};

/** Every sentence of a step: what to do, what to expect, what would prove it wrong, how to undo it. */
export const steps: Steps = {
  mend,
  check,
  lookOver,
  test,
  change,
  waiting,
  readParts,
  ride,
  stop,
  topThrottle: {
    "seconds only":
      "Oben ist es noch nicht erwiesen: ein paar Sekunden bei 3/4 oder mehr, nicht länger, und beim ersten Klingeln Gas weg.",
    "stay below 3/4": "Oben könnte er mager sein: unter 3/4 Gas bleiben.",
  },
  afterKnock: "So hat er geklingelt: sanft aufziehen, und beim ersten Rasseln Gas weg.",
};
