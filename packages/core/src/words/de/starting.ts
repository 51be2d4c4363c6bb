import type { StartingWords } from "../en/starting.ts";
import { withComma } from "../figures.ts";
import type { TheoryBasis } from "../rests-on.ts";

const SCREW_RULE = {
  air: "Eine Luftschraube sitzt auf der Filterseite des Schiebers: hinaus ist magerer, hinein fetter.",
  fuel: "Eine Gemischschraube sitzt auf der Motorseite des Schiebers: hinaus ist fetter, hinein magerer.",
};

function theory(basis: TheoryBasis): string {
  switch (basis.of) {
    case "clip":
      return "übliche Praxis: Die meisten enden auf Kerbe 2 oder 3 von 5";
    case "screw":
      return "übliche Praxis: 1 bis 2 Umdrehungen, veröffentlicht sind 1/2 bis 2 1/4";
    case "cutaway":
      return "der übliche Schieber für den Durchlass";
    default: {
      const { of, lowPercent, highPercent, flow } = basis;
      const range = `${withComma(lowPercent.toFixed(1))} bis ${withComma(highPercent.toFixed(1))} %`;
      const what = `eine ${of === "main" ? "Hauptdüse" : "Leerlaufdüse"} von ${range} des Vergaserdurchlasses`;
      const roughly = flow ? ", wobei eine Durchflusszahl die Bohrung nur grob nennt" : "";
      return `Theorie und veröffentlichte Abstimmungen: ${what}${roughly}`;
    }
  }
}

/** A starting point in words. */
export const starting: StartingWords = {
  restsOn: ({ theory: basis, shop }) => {
    if (shop === null) return [theory(basis)];
    const { bikes, lowCc, highCc, most } = shop;
    const span = lowCc === highCc ? `mit ${lowCc} cm³` : `zwischen ${lowCc} und ${highCc} cm³`;
    const words = `${bikes === 1 ? "ein Motorrad" : `${bikes} Motorräder`} dieser Werkstatt ${span}, auf Normalluft umgerechnet`;
    return most
      ? [`vor allem ${words}`, `der Rest ${theory(basis)}`]
      : [`vor allem ${theory(basis)}`, `zum Teil ${words}`];
  },
  needle: (alike) => {
    const keep =
      "Behalt die Düsennadel und die Nadeldüse, die drin sind; schreib ihre Kennung auf und miss nach, was verschlissen ist.";
    return alike.length === 0
      ? keep
      : `${keep} Sehr ähnliche Motorräder dieser Werkstatt fahren ${alike.length === 1 ? "die Düsennadel" : "die Düsennadeln"} ${alike.join(", ")}.`;
  },
  firstRide: (strokes) => [
    strokes === 2
      ? "Oben ist es mit Absicht fett: Rechne bei Vollgas mit Rauch und etwas Viertakten."
      : "Oben ist es mit Absicht fett: Rechne damit, dass es bei Vollgas zäh ist.",
    "Fahr es ganz warm. Ab 3/4 Gas nur ein paar Sekunden, bis der Test mit Gas-Zurücknehmen gemacht ist.",
    "Klingeln, Leistung, die bei Vollgas nachlässt, plötzliche Hitze: Gas zu, Kupplung ziehen, anhalten. Bau eine größere Hauptdüse ein, bevor es wieder läuft.",
    "Ein Leerlauf, der nach dem Schließen hängen bleibt, ist mager, zuerst im Leerlaufsystem, oder Falschluft: Fahr nicht weiter, bevor du weißt, welches.",
  ],
  afterwards: (screw) => {
    const sweep =
      "Schraube: warm, im Leerlauf, such die Umdrehungen mit dem schnellsten runden Leerlauf, dann Viertelumdrehungen nach Gefühl.";
    const [few, many] = screw === "air" ? ["größere", "kleinere"] : ["kleinere", "größere"];
    return [
      "Vor jeder Düse die Mechanik: Falschluft an Ansaugstutzen, Membranen und Dichtringen; Schwimmerstand; Kraftstoffzufluss; sauberer Filter; neue Kerze; Choke, der schließt; Schieber, der zuschnappt.",
      screw === null
        ? `${sweep} Klär zuerst, welche Schraube es ist. ${SCREW_RULE.air} ${SCREW_RULE.fuel}`
        : `${sweep} Am besten unter 3/4 Umdrehung offen: eine ${few} Leerlaufdüse; über 2 1/2: eine ${many}. ${SCREW_RULE[screw]}`,
      "Gas zurücknehmen: warm, hoher Gang, 3 bis 5 s Vollgas, dann auf 7/8 zurück. Zieht es an, ist es mager: eine Größe größer. Lässt es nur nach, geh Größe um Größe herunter und bleib bei der ersten, mit der es sauber läuft.",
      "Dann die Mitte: Clip um eine Kerbe nach der anderen, beurteilt bei 1/4 bis 3/4. Ein Teil ändern, fahren, aufschreiben.",
    ];
  },
  text: {
    heading: (engine) => `Grundabstimmung: ${engine}`,
    strokes: (strokes) => (strokes === 2 ? "Zweitakter" : "Viertakter"),
    uses: { trail: "Wandern", enduro: "Enduro", race: "Rennen" },
    bore: (mm, guessed) => `Vergaser ${mm} mm${guessed ? " (geschätzt)" : ""}`,
    air: (celsius, hPa) => `Für Luft von ${celsius} °C, ${hPa} hPa am Ort.`,
    part: {
      main: "Hauptdüse",
      pilot: "Leerlaufdüse",
      clip: "Clip",
      screw: "Schraube",
      cutaway: "Ausschnitt",
    },
    numbered: (part, numbering) => `${part} (Zahl: ${numbering === "bore" ? "Bohrung" : "Durchfluss"})`,
    clip: (groove) => `Kerbe ${groove} von 5, von oben`,
    turns: (turns) => `${turns} Umdrehungen offen`,
    cutaway: (mm) => `${mm} mm, falls einer zu kaufen ist`,
    range: (low, high) => `${low} bis ${high}`,
    needle: (words) => `Düsennadel: ${words}`,
    noSetting:
      "Das ist ein Anfang und keine Abstimmung. Neun von zehn solchen Motorrädern enden in den Bereichen rechts.",
    know: "Zuerst zu wissen",
    rests: "Worauf es ruht",
    notUsed: "Nicht genutzt",
    firstRide: "Erste Fahrt",
    next: "Danach",
  },
};
