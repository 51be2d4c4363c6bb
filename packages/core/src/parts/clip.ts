import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Metre } from "../units/quantity.ts";
import type { Groove, Needle } from "./needle.ts";

/** What must be known before grooves are counted, in one sentence. */
export const GROOVE_RULE =
  "Groove 1 is the top one, at the blunt end; a lower groove (a higher number) lifts the needle and is richer.";

/** How far the needle sits above its place with the clip in groove 1, m: a lower groove lifts it by one pitch each. */
export const clipLift = (needle: Pick<Needle, "groovePitch">, groove: Groove): Metre =>
  ((groove - 1) * needle.groovePitch) as Metre;

/** A groove a person can have fitted: 1 to the needle's last, or half way with a shim under the clip. */
export function checkGroove(needle: Pick<Needle, "grooves">, groove: number): Outcome<Groove, "groove"> {
  if (groove >= 1 && groove <= needle.grooves && Number.isInteger(groove * 2)) return accept(groove);
  return refuse(
    "groove",
    `The needle has ${needle.grooves} grooves; the clip can be in 1 to ${needle.grooves} or half way with a shim, got ${groove}. ${GROOVE_RULE}`,
    { grooves: needle.grooves },
  );
}

const PLACES = ["top", "second", "third", "fourth", "fifth", "sixth", "seventh"];

/**
 * Reads a clip position as typed: "3", "2.5", "2,5", "2 1/2", "3 of 5", "2nd from top", "second from bottom", "middle",
 * "top", "bottom". Counted from the top unless it says bottom.
 */
export function readGroove(
  typed: string,
  needle: Pick<Needle, "grooves">,
): Outcome<Groove, "groove" | "other needle" | "not a groove"> {
  const text = typed.trim().toLowerCase().replace(/\s+/g, " ").replace(/ ?½/, " 1/2").trim();
  if (text === "bottom") return checkGroove(needle, needle.grooves);
  if (text === "middle") {
    if (needle.grooves % 2 === 1) return checkGroove(needle, (needle.grooves + 1) / 2);
    return refuse(
      "not a groove",
      `A needle with ${needle.grooves} grooves has no middle one. ${GROOVE_RULE}`,
      { grooves: needle.grooves },
    );
  }
  const found =
    /^(?:groove |clip |no\.? ?|#)?([0-9]+(?:[.,]5| 1\/2)?|[a-z]+)(?:st|nd|rd|th)?(?: (?:groove|clip))?(?: from (?:the )?(top|bottom)| of ([0-9]+)(?: from (?:the )?(top|bottom))?)?$/.exec(
      text,
    );
  const count = found ? placeNumber(found[1]!) : null;
  if (!found || count === null) {
    return refuse(
      "not a groove",
      `"${typed.trim()}" is not a clip position. Type its number. ${GROOVE_RULE}`,
    );
  }
  if (found[3] && Number(found[3]) !== needle.grooves) {
    return refuse(
      "other needle",
      `You counted ${found[3]} grooves, but the needle on record has ${needle.grooves}. Count again, or record the other needle.`,
      { counted: Number(found[3]), grooves: needle.grooves },
    );
  }
  const fromBottom = (found[2] ?? found[4]) === "bottom";
  return checkGroove(needle, fromBottom ? needle.grooves + 1 - count : count);
}

function placeNumber(word: string): number | null {
  if (/^[0-9]/.test(word)) return Number(word.replace(",", ".").replace(" 1/2", ".5"));
  const place = word === "first" ? 0 : PLACES.indexOf(word);
  return place < 0 ? null : place + 1;
}

/** The clip in words: "clip in groove 3 of 5 from the top", with the shim where there is one. */
export function clipText(needle: Pick<Needle, "grooves"> | null, groove: Groove): string {
  const whole = Math.floor(groove);
  const of = needle === null ? "" : ` of ${needle.grooves}`;
  const shim = groove === whole ? "" : " with a half-step shim under it";
  return `clip in groove ${whole}${of} from the top${shim}`;
}
