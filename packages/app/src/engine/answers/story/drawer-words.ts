import type { DrawerPart } from "@jetwright/records";
import { partWords } from "./part-words.ts";
import type { Saying } from "./story-words.ts";

/** More parts than a sentence holds are counted. */
const MOST_PARTS = 6;

/** Parts that went into the drawer or came out of it. */
export function drawerWords(parts: readonly DrawerPart[], words: Saying): string {
  const named = parts.slice(0, MOST_PARTS).map((part) => words.times(part.count, drawerPart(part, words)));
  const rest = parts.length - named.length;
  return [...named, ...(rest > 0 ? [words.andMore(rest)] : [])].join(", ");
}

/** A part of the drawer as it is called: "main jet 170". */
export function drawerPart(part: DrawerPart, words: Saying): string {
  switch (part.part) {
    case "main":
    case "pilot":
      return partWords(part.part, { number: part.number, maker: part.maker }, words);
    case "needle":
      return partWords("needle", { marks: part.marks }, words);
    case "needleJet":
      return partWords("needleJet", { boreMm: part.boreMm }, words);
    case "slide":
      return partWords("slide", { cutawayMm: part.cutawayMm }, words);
  }
}
