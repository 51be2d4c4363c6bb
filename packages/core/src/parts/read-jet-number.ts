import { accept, type Outcome, refuse } from "../units/outcome.ts";

/** Sizes sold: pilots from about 10, flow-numbered mains up to about 700. */
const SMALLEST = 8;
const LARGEST = 900;

/**
 * Reads the number on a jet as typed: "175", "17.5", "17,5", "#42", "no. 42". Refuses what is not one number, and
 * what is too small or too large for a jet, with the likely slip.
 */
export function readJetNumber(typed: string): Outcome<number, "not a number" | "not a jet size"> {
  const text = typed.trim();
  const found = /^(?:#|n[o°]\.? ?|nr\.? ?|№ ?)?([0-9]{1,4}(?:[.,][0-9]{1,2})?)$/i.exec(text);
  if (!found) {
    return refuse(
      "not a number",
      `"${text}" is not the number of a jet. Type only the digits stamped on it, such as 175 or 17.5.`,
    );
  }
  const value = Number(found[1]!.replace(",", "."));
  if (value >= SMALLEST && value <= LARGEST) return accept(value);
  const slip =
    value >= 0.2 && value <= 3
      ? `If that is the bore in mm, type ${Math.round(value * 100)}.`
      : "Read it again with a lens; a missing point (17.5) or a letter taken for a digit is common.";
  return refuse("not a jet size", `${text} is no jet size (${SMALLEST} to ${LARGEST}). ${slip}`, {
    least: SMALLEST,
    most: LARGEST,
  });
}
