import { turnsText } from "@jetwright/core";
import type { BodyOf, FittedPart } from "@jetwright/records";
import type { StoryWords } from "../../../words/en/story.ts";

type Fitted = BodyOf<"setup-fitted">;

/** How far a number is told: what was typed, without a tail of digits. */
const tidy = (x: number): number => Math.round(x * 1000) / 1000;

/** What a part is, without how it is known: "main jet 175", "clip in groove 3". */
export function partWords(name: FittedPart, fitted: Fitted[FittedPart], words: StoryWords): string {
  const part = words.part[name];
  if (fitted === undefined || fitted === "unknown") return words.notKnown(part);
  if ("number" in fitted) {
    const maker = typeof fitted.maker === "string" && fitted.maker !== "" ? ` (${fitted.maker})` : "";
    return `${part} ${words.figure(String(fitted.number))}${maker}`;
  }
  if ("marks" in fitted) return `${part} ${fitted.marks}`;
  if ("groove" in fitted) return words.groove(fitted.groove as number);
  if ("boreMm" in fitted) return `${part} ${words.figure((fitted.boreMm as number).toFixed(2))} mm`;
  if ("cutawayMm" in fitted) return words.cutaway(tidy(fitted.cutawayMm as number));
  if ("turnsOut" in fitted) {
    const turns = fitted.turnsOut as number;
    return words.turns(
      turnsText(turns, (plain) => words.figure(String(plain))),
      turns > 0 && turns <= 1,
    );
  }
  return words.level(tidy((fitted as { liftMm: number }).liftMm));
}
