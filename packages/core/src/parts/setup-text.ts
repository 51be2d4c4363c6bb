import { toMillimetre } from "../units/convert.ts";
import type { Metre } from "../units/quantity.ts";
import { clipText } from "./clip.ts";
import { cutawayText } from "./cutaway.ts";
import { jetText } from "./jet-compare.ts";
import type { Known } from "./known.ts";
import type { Needle } from "./needle.ts";
import { screwText } from "./screw.ts";
import type { Setup } from "./setup.ts";

/** The parts of a setup that can be said in words. */
export type SetupPart = Exclude<keyof Setup, "body">;

/** One part of a setup in words, with how it is known: "main 175 (bore, 1/100 mm), read by eye". */
export function partText(setup: Setup, part: SetupPart): string {
  switch (part) {
    case "pilot":
      return said("pilot", setup.pilot, (jet) => `pilot ${jetText(jet)}`);
    case "main":
      return said("main", setup.main, (jet) => `main ${jetText(jet)}`);
    case "mainAirJet":
      return said("main air jet", setup.mainAirJet, (jet) => `main air jet ${jetText(jet)}`);
    case "pilotAirJet":
      return said("pilot air jet", setup.pilotAirJet, (jet) => `pilot air jet ${jetText(jet)}`);
    case "needle":
      return said("needle", setup.needle, needleText);
    case "clip":
      return said("clip", setup.clip, (groove) => clipText(setup.needle.part, groove));
    case "needleJet":
      return said("needle jet", setup.needleJet, needleJetText);
    case "cutaway":
      return said("slide", setup.cutaway, cutawayText);
    case "screw":
      return said(`${setup.body.screwKind} screw`, setup.screw, screwText);
    case "fuelLift":
      return said(
        "fuel lift",
        setup.fuelLift,
        (lift) => `fuel level ${millimetres(lift, 1)} mm below the top of the needle jet`,
      );
  }
}

/** Every part of a setup, in the order of the throttle from closed to full. */
export const SETUP_ORDER: readonly SetupPart[] = [
  "pilot",
  "screw",
  "cutaway",
  "needleJet",
  "needle",
  "clip",
  "main",
  "fuelLift",
  "pilotAirJet",
  "mainAirJet",
];

/** A needle jet by its bore: "needle jet 2.70 mm". */
export const needleJetText = (bore: Metre): string => `needle jet ${toMillimetre(bore).toFixed(2)} mm`;

/** A needle by its marks and what is known of its shape. */
export function needleText(needle: Needle): string {
  const name = needle.marks.trim() === "" ? "needle without marks" : `needle ${needle.marks.trim()}`;
  const shape =
    needle.profile === null
      ? "not measured"
      : `${toMillimetre(needle.profile.straightDiameter).toFixed(3)} mm straight, ${tapers(needle.profile.tapers.length)}`;
  return `${name} (${needle.grooves} grooves, ${shape})`;
}

const tapers = (count: number): string =>
  count === 0 ? "no taper" : count === 1 ? "1 taper" : `${count} tapers`;

function said<Part>(name: string, fitted: Known<Part>, words: (part: Part) => string): string {
  if (fitted.part === null) return `${name} not known`;
  return `${words(fitted.part)}, ${fitted.how === "unknown" ? "a guess" : fitted.how}`;
}

const millimetres = (x: Metre, digits: number): string => toMillimetre(x).toFixed(digits);
