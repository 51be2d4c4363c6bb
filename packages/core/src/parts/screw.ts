import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Screw, ScrewKind } from "./setup.ts";

/** Sign of the mixture for turning out: 1 richer, -1 leaner. */
export const outIs = (kind: ScrewKind): 1 | -1 => (kind === "fuel" ? 1 : -1);

/** A screw that falls out at five turns is not metering any more. */
const MOST_TURNS = 6;

/**
 * Reads turns out from lightly seated: "1 1/2", "1½", "1.5", "1,5", "1 1/2 turns out", "3/4". Refuses more than six turns
 * and what is not a number.
 */
export function readTurns(typed: string): Outcome<number, "turns" | "not turns"> {
  const text = typed
    .trim()
    .toLowerCase()
    .replace("½", " 1/2")
    .replace("¼", " 1/4")
    .replace("¾", " 3/4")
    .replace(/\s+/g, " ")
    .trim();
  const found =
    /^(?:([0-9]+(?:[.,][0-9]+)?)(?: (?=[0-9]+\/))?)?(?:([0-9]+)\/([248]|16))?(?: turns?)?(?: out)?$/.exec(
      text,
    );
  if (!found || (found[1] === undefined && found[2] === undefined)) {
    return refuse(
      "not turns",
      `"${typed.trim()}" is not a number of turns. Type it like 1.5 or 1 1/2, counted out from lightly seated.`,
    );
  }
  const whole = found[1] === undefined ? 0 : Number(found[1].replace(",", "."));
  const part = found[2] === undefined ? 0 : Number(found[2]) / Number(found[3]);
  const turns = whole + part;
  if (turns <= MOST_TURNS) return accept(turns);
  return refuse(
    "turns",
    `${turns} turns out is more than a screw holds on. Seat it lightly and count the turns again.`,
    { turns: Number(turns.toFixed(2)) },
  );
}

/** The screw in words: "air screw 1 1/2 turns out". Quarters and eighths as fractions. */
export function screwText(screw: Screw): string {
  const turns = fraction(screw.turnsOut);
  return `${screw.kind} screw ${turns} ${screw.turnsOut > 0 && screw.turnsOut <= 1 ? "turn" : "turns"} out`;
}

function fraction(turns: number): string {
  const eighths = Math.round(turns * 8);
  if (Math.abs(eighths / 8 - turns) > 1e-9) return `${Math.round(turns * 100) / 100}`;
  const whole = Math.floor(eighths / 8);
  const rest = eighths % 8;
  if (rest === 0) return `${whole}`;
  const [top, bottom] = rest % 4 === 0 ? [rest / 4, 2] : rest % 2 === 0 ? [rest / 2, 4] : [rest, 8];
  return `${whole === 0 ? "" : `${whole} `}${top}/${bottom}`;
}
