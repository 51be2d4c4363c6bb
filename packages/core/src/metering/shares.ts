import { OPENINGS, openingName } from "../units/opening.ts";
import { accept, type Outcome } from "../units/outcome.ts";
import type { Opening } from "../units/quantity.ts";
import { mainShare } from "./branches.ts";
import type { MeteringRefusal } from "./comparable.ts";
import { outletThrottling } from "./fitted.ts";
import { baselineOf, shiftsFrom } from "./shift.ts";
import type { Situation } from "./situation.ts";

/** What each part has to say at one opening. */
export interface Shares {
  readonly opening: Opening;
  /**
   * Part of a 1 % change in the hole's area that arrives in the fuel. pilot, outlet, needle (the gap between needle
   * and needle jet) and main sum to 1; outlet is the fuel screw's passage, 0 with an air screw.
   */
  readonly pilot: number;
  readonly outlet: number;
  readonly needle: number;
  readonly main: number;
  /** Change in the log of the mixture for half a millimetre less cutaway, and for half a turn to the richer side. */
  readonly slideStep: number;
  readonly screwStep: number;
  /** The same for the clip one groove lower; 0 where no lower groove is left. */
  readonly clipStep: number;
  readonly governs: "pilot" | "needle" | "main";
  /** In words. Which part governs is a matter of degree. */
  readonly text: string;
}

/**
 * The share of each part at the eleven openings for one situation. Pilot share good to ±40 %, the split between
 * needle and main jet to a few per cent where both are known. Refuses impossible parts.
 */
export function shares(situation: Situation): Outcome<readonly Shares[], MeteringRefusal> {
  const baseline = baselineOf(situation);
  if (!baseline.ok) return baseline;
  const { frame, side } = baseline.value;
  const { mainArea, annulus, pilot, turns } = side.fitted;
  const throttled = frame.body.screwKind === "air" ? 0 : outletThrottling(pilot, turns);
  const slide = stepOf(situation, "slide", side.fitted.cutaway);
  const screw = stepOf(situation, "screw", turns);
  const clip = stepOf(situation, "clip", situation.setup.clip.part ?? 3);
  return accept(
    OPENINGS.map((opening, i) => {
      const w = frame.pilotShare[i]!;
      const main = (1 - w) * mainShare(mainArea, annulus[i]!);
      const parts = {
        pilot: w / (1 + throttled),
        outlet: (w * throttled) / (1 + throttled),
        needle: 1 - w - main,
        main,
        slideStep: slide[i]!,
        screwStep: screw[i]!,
        clipStep: clip[i]!,
      };
      const governs = w >= parts.needle && w >= main ? "pilot" : parts.needle >= main ? "needle" : "main";
      return { opening, ...parts, governs, text: inWords(opening, w, parts, governs) };
    }),
  );
}

/** What the usual small step of a part does at each opening; zeros where the step cannot be made. */
function stepOf(situation: Situation, part: "slide" | "screw" | "clip", now: number): readonly number[] {
  const { setup } = situation;
  const { screwKind } = setup.body;
  const put = <T>(value: unknown) => ({ part: value as T, how: "read by eye" as const });
  const with_ = (x: number) =>
    part === "slide"
      ? { ...setup, cutaway: put<NonNullable<typeof setup.cutaway.part>>(x) }
      : part === "screw"
        ? { ...setup, screw: put<NonNullable<typeof setup.screw.part>>({ kind: screwKind, turnsOut: x }) }
        : { ...setup, clip: put<number>(x) };
  const step = part === "slide" ? -0.5e-3 : part === "clip" ? 1 : screwKind === "air" ? -0.5 : 0.5;
  const from = shiftsFrom({ ...situation, setup: with_(now) });
  const shift = from.ok ? from.value({ ...situation, setup: with_(now + step) }) : from;
  const circuit = part === "clip" ? "needle" : part;
  return shift.ok ? shift.value[circuit] : OPENINGS.map(() => 0);
}

const percent = (x: number): string => `${Math.round(x * 100)} %`;

function inWords(
  opening: Opening,
  pilot: number,
  parts: { readonly needle: number; readonly main: number; readonly slideStep: number },
  governs: Shares["governs"],
): string {
  const names = { pilot: "pilot circuit", needle: "needle and needle jet", main: "main jet" };
  const sizes = { pilot, needle: parts.needle, main: parts.main };
  const others = (["pilot", "needle", "main"] as const)
    .filter((name) => name !== governs && sizes[name] >= 0.1)
    .sort((a, b) => sizes[b] - sizes[a])
    .map((name) => `${names[name]} ${percent(sizes[name])}`);
  const first = `At ${openingName(opening)} the ${names[governs]} has ${percent(sizes[governs])} of the say`;
  const rest = others.length > 0 ? `, ${others.join(", ")}` : "";
  const slide =
    parts.slideStep >= 0.02
      ? ` The slide has its say here: half a millimetre less cutaway is ${percent(parts.slideStep)} richer.`
      : "";
  return `${first}${rest}.${slide}`;
}
