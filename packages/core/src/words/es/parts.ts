import type { CoreWords } from "../core-words.ts";
import { turnsText, withComma } from "../figures.ts";
import { upperFirst } from "../letters.ts";
import type { JetSpoken, PartMove, PartStand } from "../part-stand.ts";

const NAMES: Readonly<Record<Exclude<PartStand["part"], "screw">, string>> = {
  main: "chiclé principal",
  pilot: "chiclé de baja",
  needle: "aguja",
  clip: "clip",
  slide: "campana",
  needleJet: "pulverizador",
};
const NUMBERINGS: Readonly<Record<JetSpoken["numbering"], string>> = {
  bore: "paso, 1/100 mm",
  flow: "caudal",
};
const UNKNOWN = "no se sabe";

/** "1½ vueltas afuera", "1 vuelta afuera", "¾ de vuelta afuera". */
export function turnsOut(turns: number): string {
  const said = turnsText(turns, withComma);
  const unit = turns > 1 ? "vueltas" : /^[¼½¾]$/.test(said) && said !== "½" ? "de vuelta" : "vuelta";
  return `${said} ${unit} afuera`;
}

/** "chiclé principal", "tornillo del aire". */
export const partName = (stand: PartStand): string =>
  stand.part === "screw"
    ? stand.kind === "air"
      ? "tornillo del aire"
      : "tornillo de riqueza"
    : NAMES[stand.part];

/** How a part stands, short: "175", "muesca 3", "1½ vueltas afuera". */
export function partValue(stand: PartStand): string {
  switch (stand.part) {
    case "main":
    case "pilot":
      return stand.number === null ? UNKNOWN : withComma(stand.number);
    case "clip":
      return stand.groove === null ? UNKNOWN : `muesca ${withComma(stand.groove)}`;
    case "needle":
      return stand.marks === null
        ? UNKNOWN
        : `${stand.marks}, muesca ${stand.groove === null ? "?" : withComma(stand.groove)}`;
    case "slide":
      return stand.cutawayMm === null ? UNKNOWN : `rebaje ${withComma(stand.cutawayMm.toFixed(1))} mm`;
    case "screw":
      return stand.turns === null ? UNKNOWN : turnsOut(stand.turns);
    case "needleJet":
      return stand.boreMm === null ? UNKNOWN : `${withComma(stand.boreMm.toFixed(2))} mm`;
  }
}

/** "chiclé principal 175", "tornillo del aire 1½ vueltas afuera". */
export const partNamed = (stand: PartStand): string => `${partName(stand)} ${partValue(stand)}`;

function moved({ from, to }: PartMove): string {
  if (from.part === "clip" && to.part === "clip" && from.groove !== null && to.groove !== null) {
    const way = to.groove > from.groove ? "abajo" : "arriba";
    return `clip más ${way}, de la muesca ${withComma(from.groove)} a la ${withComma(to.groove)}`;
  }
  const name = partName(from);
  if (from.part === "screw" && from.turns !== null)
    return `${name} de ${turnsText(from.turns, withComma)} a ${partValue(to)}`;
  if (from.part === "slide" || from.part === "needleJet")
    return `${name} de ${partValue(from).replace(/ mm$/, "")} a ${partValue(to).replace(/^rebaje /, "")}`;
  return `${name} de ${partValue(from)} a ${partValue(to)}`;
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
