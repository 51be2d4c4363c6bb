import type { DrawerPart } from "@jetwright/records";
import type { Words } from "../../words/en.ts";

/** What is written on a part, as it is spoken of. */
export function partName(part: DrawerPart, words: Words["drawer"]): string {
  switch (part.part) {
    case "main":
    case "pilot":
      return words.readOne(part.number, 1);
    case "needle":
      return part.marks;
    case "needleJet":
      return words.bored(part.boreMm);
    case "slide":
      return words.cutaway(part.cutawayMm);
  }
}
