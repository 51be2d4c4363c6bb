import { turnsText, withPoint } from "../figures.ts";
import { upperFirst } from "../letters.ts";
import type { JetSpoken, PartMove, PartStand } from "../part-stand.ts";

const NAMES: Readonly<Record<Exclude<PartStand["part"], "screw">, string>> = {
  main: "main jet",
  pilot: "pilot jet",
  needle: "needle",
  clip: "clip",
  slide: "slide",
  needleJet: "needle jet",
};
const NUMBERINGS: Readonly<Record<JetSpoken["numbering"], string>> = {
  bore: "bore, 1/100 mm",
  flow: "flow",
};

/** "1½ turns out", "1 turn out", "¾ turn out". */
export const turnsOut = (turns: number): string =>
  `${turnsText(turns, withPoint)} ${turns <= 1 ? "turn" : "turns"} out`;

/** "main jet", "air screw". */
export const partName = (stand: PartStand): string =>
  stand.part === "screw" ? `${stand.kind} screw` : NAMES[stand.part];

/** How a part stands, short: "175", "groove 3", "1½ turns out". */
export function partValue(stand: PartStand): string {
  switch (stand.part) {
    case "main":
    case "pilot":
      return stand.number === null ? "not known" : withPoint(stand.number);
    case "clip":
      return stand.groove === null ? "not known" : `groove ${withPoint(stand.groove)}`;
    case "needle":
      return stand.marks === null ? "not known" : `${stand.marks}, groove ${stand.groove ?? "?"}`;
    case "slide":
      return stand.cutawayMm === null ? "not known" : `cutaway ${withPoint(stand.cutawayMm.toFixed(1))} mm`;
    case "screw":
      return stand.turns === null ? "not known" : turnsOut(stand.turns);
    case "needleJet":
      return stand.boreMm === null ? "not known" : `${withPoint(stand.boreMm.toFixed(2))} mm`;
  }
}

/** "main jet 175", "air screw 1½ turns out". */
export const partNamed = (stand: PartStand): string => `${partName(stand)} ${partValue(stand)}`;

function moved({ from, to }: PartMove): string {
  if (from.part === "clip" && to.part === "clip" && from.groove !== null && to.groove !== null) {
    const way = to.groove > from.groove ? "down" : "up";
    return `clip ${way}, groove ${from.groove} to ${to.groove}`;
  }
  const name = partName(from);
  // A word that both values share is said once.
  if (from.part === "screw" && from.turns !== null)
    return `${name} ${turnsText(from.turns, withPoint)} to ${partValue(to)}`;
  if (from.part === "slide" || from.part === "needleJet")
    return `${name} ${partValue(from).replace(/ mm$/, "")} to ${partValue(to).replace(/^cutaway /, "")}`;
  return `${name} ${partValue(from)} to ${partValue(to)}`;
}

/** Parts and how they stand. */
export const parts = {
  value: partValue,
  /** A heading for a change: "Main jet 175 to 180", "Clip up, groove 3 to 2; pilot jet 45 to 42". */
  change: (moves: readonly PartMove[]): string => upperFirst(moves.map(moved).join("; ")),
  turnsOut,
  /** A jet in full, for a person who must find the right packet: "175 (bore, 1/100 mm)", with the maker where known. */
  jet: ({ number, numbering, maker }: JetSpoken): string => {
    const named = maker.trim() === "" ? "" : `, ${maker.trim()}`;
    return `${withPoint(number)} (${NUMBERINGS[numbering]}${named})`;
  },
};
