import type { CoreWords } from "../core-words.ts";
import { turnsText, withComma } from "../figures.ts";
import { upperFirst } from "../letters.ts";
import type { JetSpoken, PartMove, PartStand } from "../part-stand.ts";

const NAMES: Readonly<Record<Exclude<PartStand["part"], "screw">, string>> = {
  main: "Hauptdüse",
  pilot: "Leerlaufdüse",
  needle: "Düsennadel",
  clip: "Clip",
  slide: "Schieber",
  needleJet: "Nadeldüse",
};
const NUMBERINGS: Readonly<Record<JetSpoken["numbering"], string>> = {
  bore: "Bohrung, 1/100 mm",
  flow: "Durchfluss",
};
const UNKNOWN = "nicht bekannt";

/** "1½ Umdrehungen offen", "1 Umdrehung offen", "¾ Umdrehung offen". */
export const turnsOut = (turns: number): string =>
  `${turnsText(turns, withComma)} ${turns <= 1 ? "Umdrehung" : "Umdrehungen"} offen`;

/** "Hauptdüse", "Luftschraube". */
export const partName = (stand: PartStand): string =>
  stand.part === "screw" ? (stand.kind === "air" ? "Luftschraube" : "Gemischschraube") : NAMES[stand.part];

/** How a part stands, short: "175", "Kerbe 3", "1½ Umdrehungen offen". */
export function partValue(stand: PartStand): string {
  switch (stand.part) {
    case "main":
    case "pilot":
      return stand.number === null ? UNKNOWN : withComma(stand.number);
    case "clip":
      return stand.groove === null ? UNKNOWN : `Kerbe ${withComma(stand.groove)}`;
    case "needle":
      return stand.marks === null
        ? UNKNOWN
        : `${stand.marks}, Kerbe ${stand.groove === null ? "?" : withComma(stand.groove)}`;
    case "slide":
      return stand.cutawayMm === null ? UNKNOWN : `Ausschnitt ${withComma(stand.cutawayMm.toFixed(1))} mm`;
    case "screw":
      return stand.turns === null ? UNKNOWN : turnsOut(stand.turns);
    case "needleJet":
      return stand.boreMm === null ? UNKNOWN : `${withComma(stand.boreMm.toFixed(2))} mm`;
  }
}

/** "Hauptdüse 175", "Luftschraube 1½ Umdrehungen offen". */
export const partNamed = (stand: PartStand): string => `${partName(stand)} ${partValue(stand)}`;

function moved({ from, to }: PartMove): string {
  if (from.part === "clip" && to.part === "clip" && from.groove !== null && to.groove !== null) {
    const way = to.groove > from.groove ? "tiefer" : "höher";
    return `Clip ${way}, von Kerbe ${withComma(from.groove)} auf ${withComma(to.groove)}`;
  }
  const name = partName(from);
  if (from.part === "screw" && from.turns !== null)
    return `${name} von ${turnsText(from.turns, withComma)} auf ${partValue(to)}`;
  if (from.part === "slide" || from.part === "needleJet")
    return `${name} von ${partValue(from).replace(/ mm$/, "")} auf ${partValue(to).replace(/^Ausschnitt /, "")}`;
  return `${name} von ${partValue(from)} auf ${partValue(to)}`;
}

/** Parts and how they stand. */
export const parts: CoreWords["parts"] = {
  value: partValue,
  change: (moves) => upperFirst(moves.map(moved).join("; ")),
  turnsOut,
  jet: ({ number, numbering, maker }) => {
    const named = maker.trim() === "" ? "" : `, ${maker.trim()}`;
    return `${withComma(number)} (${NUMBERINGS[numbering]}${named})`;
  },
};
