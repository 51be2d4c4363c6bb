import type { AirState } from "../air/air-state.ts";
import type { FuelState } from "../fuel/fuel-state.ts";
import { boreHeight } from "../parts/bore.ts";
import type { Jet } from "../parts/jet.ts";
import { jetAreaRatio, sameMaker } from "../parts/jet-compare.ts";
import type { Known } from "../parts/known.ts";
import type { Needle } from "../parts/needle.ts";
import type { Body, Setup } from "../parts/setup.ts";
import { type Refusal, refuse } from "../units/outcome.ts";
import type { Situation } from "./situation.ts";

/** Why two situations, or one, cannot be worked out. */
export type MeteringRefusal =
  | "impossible part"
  | "impossible air or fuel"
  | "other body"
  | "known on one side only"
  | "jets not comparable"
  | "needles not comparable";

type No = Refusal<MeteringRefusal> | null;

const millimetres = (metres: number): string => `${Number((metres * 1000).toFixed(3))} mm`;

/** What stops a single situation: sizes that cannot exist, or parts that cannot go together. */
export function whyUnusable({ setup, air, fuel }: Situation): No {
  return (
    whyBodyImpossible(setup.body) ??
    whyJetImpossible("main jet", setup.main.part) ??
    whyJetImpossible("pilot jet", setup.pilot.part) ??
    whyNeedleImpossible(setup) ??
    whyRestImpossible(setup) ??
    whyGasImpossible(air, fuel)
  );
}

/** What stops the comparison of two situations, each usable by itself. */
export function whyIncomparable(from: Setup, to: Setup): No {
  if (from.body !== to.body && !sameBody(from.body, to.body)) {
    return refuse(
      "other body",
      "The two setups are for different carburetor bodies: only parts in the same body can be compared.",
    );
  }
  return (
    whyOneSided("main jet", from.main, to.main) ??
    whyOneSided("pilot jet", from.pilot, to.pilot) ??
    whyOneSided("needle", from.needle, to.needle) ??
    whyOneSided("clip groove", from.clip, to.clip) ??
    whyOneSided("needle jet", from.needleJet, to.needleJet) ??
    whyOneSided("slide's cutaway", from.cutaway, to.cutaway) ??
    whyOneSided("screw setting", from.screw, to.screw) ??
    whyOneSided("float level", from.fuelLift, to.fuelLift) ??
    whyJetsDiffer("main jets", from.main.part, to.main.part) ??
    whyJetsDiffer("pilot jets", from.pilot.part, to.pilot.part) ??
    whyNeedlesDiffer(from, to)
  );
}

/** True when the two are the same jet as far as its packet tells. */
export const sameJet = (a: Jet | null, b: Jet | null): boolean =>
  a === b ||
  (a !== null && b !== null && a.number === b.number && a.numbering === b.numbering && sameMaker(a, b));

/** True when the maker of one of the two is not known. */
export const makerOpen = (a: Jet | null, b: Jet | null): boolean =>
  a !== null && b !== null && !sameMaker(a, b);

const marksKey = (needle: Needle): string => needle.marks.trim().toLowerCase();

/** True when both are one needle, as far as marks and sizes tell. */
export function sameNeedle(a: Needle | null, b: Needle | null): boolean {
  if (a === b) return true;
  if (a === null || b === null || a.grooves !== b.grooves || a.groovePitch !== b.groovePitch) return false;
  if (a.profile === null || b.profile === null) return a.profile === b.profile && marksKey(a) === marksKey(b);
  const { profile: p } = a;
  const { profile: q } = b;
  return (
    p.straightDiameter === q.straightDiameter &&
    p.tapers.length === q.tapers.length &&
    p.tapers.every((taper, i) => {
      const other = q.tapers[i]!;
      return taper.start === other.start && taper.includedAngle === other.includedAngle;
    })
  );
}

function sameBody(a: Body, b: Body): boolean {
  const [p, q] = [a.bore, b.bore];
  const sameBore =
    p.shape === "round"
      ? q.shape === "round" && p.diameter === q.diameter
      : q.shape === p.shape && p.width === q.width && p.height === q.height;
  return (
    sameBore &&
    a.screwKind === b.screwKind &&
    a.nozzle === b.nozzle &&
    a.seatToJet === b.seatToJet &&
    a.idleLift === b.idleLift &&
    a.bowlVent === b.bowlVent
  );
}

function whyOneSided(part: string, from: Known<unknown>, to: Known<unknown>): No {
  if ((from.part === null) === (to.part === null)) return null;
  return refuse(
    "known on one side only",
    `The ${part} is known in one setup and not in the other: find out what is fitted, or mark it unknown in both.`,
  );
}

function whyJetsDiffer(what: string, from: Jet | null, to: Jet | null): No {
  if (from === null || to === null || sameJet(from, to)) return null;
  const ratio = jetAreaRatio(from, to);
  return ratio.ok ? null : refuse("jets not comparable", `The ${what} cannot be compared. ${ratio.detail}`);
}

function whyNeedlesDiffer(from: Setup, to: Setup): No {
  const no = (detail: string) => refuse<MeteringRefusal>("needles not comparable", detail);
  const a = from.needle.part;
  const b = to.needle.part;
  const otherJet = from.needleJet.part !== to.needleJet.part;
  if (sameNeedle(a, b)) {
    if (otherJet && (a?.profile ?? null) === null) {
      return no(
        "The needle jets differ and the needle's diameter is not known: measure its straight part with a micrometer.",
      );
    }
    return null;
  }
  const p = a!.profile;
  const q = b!.profile;
  if (p === null || q === null) {
    return no(
      "The needles differ and one has no known diameters: measure its straight part, and the diameter every 5 mm down to the tip, with a micrometer.",
    );
  }
  if (from.needleJet.part === null && p.straightDiameter !== q.straightDiameter) {
    return no(
      "The needles differ on the straight part and the needle jet's bore is not known: measure it with a gauge pin or read its stamp.",
    );
  }
  if (
    from.body.seatToJet === null &&
    (p.tapers[0]?.start !== q.tapers[0]?.start ||
      a!.grooves !== b!.grooves ||
      a!.groovePitch !== b!.groovePitch)
  ) {
    return no(
      "The needles' tapers begin at different heights: measure the distance from the clip's seat in the slide to the top of the needle jet, throttle closed.",
    );
  }
  return null;
}

const impossible = (detail: string) => refuse<MeteringRefusal>("impossible part", detail);
const outside = (x: number, low: number, high: number): boolean => !(x >= low && x <= high);

function whyBodyImpossible(body: Body): No {
  const { bore } = body;
  const height = boreHeight(bore);
  const width = bore.shape === "round" ? bore.diameter : bore.width;
  if (outside(height, 5e-3, 0.1) || outside(width, 5e-3, 0.1) || (bore.shape === "D" && height < width / 2)) {
    return impossible(
      `A bore of ${millimetres(width)} by ${millimetres(height)} is no carburetor's: check it.`,
    );
  }
  if (body.idleLift !== null && outside(body.idleLift, 1e-3 * height, 0.2 * height)) {
    return impossible(
      `An idle lift of ${millimetres(body.idleLift)} is outside 0.1 to 20 % of the bore: measure it again.`,
    );
  }
  if (body.seatToJet !== null && outside(body.seatToJet, 0, 0.2)) {
    return impossible(
      `${millimetres(body.seatToJet)} from the clip's seat to the needle jet cannot be: measure it again.`,
    );
  }
  return null;
}

function whyJetImpossible(what: string, jet: Jet | null): No {
  if (jet === null || (jet.number >= 5 && jet.number < 2000)) return null;
  return impossible(`A ${what} cannot have the number ${jet.number}: read it again.`);
}

function whyNeedleImpossible(setup: Setup): No {
  const needle = setup.needle.part;
  const clip = setup.clip.part;
  const jet = setup.needleJet.part;
  if (jet !== null && outside(jet, 0.5e-3, 8e-3)) {
    return impossible(`A needle jet of ${millimetres(jet)} cannot be: give its bore, such as 2.70 mm.`);
  }
  const grooves = needle?.grooves ?? null;
  if (grooves !== null && !(Number.isInteger(grooves) && grooves >= 1 && grooves <= 12)) {
    return impossible(`A needle has 1 to 12 grooves, not ${grooves}: count them.`);
  }
  if (needle !== null && outside(needle.groovePitch, 0, 5e-3)) {
    return impossible(`Grooves ${millimetres(needle.groovePitch)} apart cannot be: measure them.`);
  }
  if (clip !== null && outside(clip, 0.5, (grooves ?? 12) + 0.5)) {
    return impossible(
      `The clip cannot sit in groove ${clip} of ${grooves ?? "at most 12"}: count from the top.`,
    );
  }
  const profile = needle?.profile ?? null;
  if (profile === null) return null;
  const { straightDiameter: straight, tapers, diameterSd } = profile;
  const badTaper = tapers.some(
    ({ start, includedAngle }, i) =>
      outside(start, i === 0 ? 0 : tapers[i - 1]!.start, 0.2) || outside(includedAngle, 0, 0.7),
  );
  if (outside(straight, 0.3e-3, 8e-3) || badTaper || outside(diameterSd, 0, 1e-3)) {
    return impossible(
      "The needle's diameters or tapers cannot be: measure it again from the top groove down.",
    );
  }
  if (jet !== null && straight >= jet) {
    return impossible(
      `The needle (${millimetres(straight)}) does not go into its jet (${millimetres(jet)}): measure both again.`,
    );
  }
  return null;
}

function whyRestImpossible({ body, cutaway, screw, fuelLift }: Setup): No {
  if (cutaway.part !== null && outside(cutaway.part, 0, boreHeight(body.bore) / 2)) {
    return impossible(`A cutaway of ${millimetres(cutaway.part)} cannot be on this slide: measure it.`);
  }
  if (screw.part !== null && outside(screw.part.turnsOut, 0, 10)) {
    return impossible(`The screw cannot be ${screw.part.turnsOut} turns out: count from lightly seated.`);
  }
  if (screw.part !== null && screw.part.kind !== body.screwKind) {
    return impossible(
      `This body has ${body.screwKind === "air" ? "an air" : "a fuel"} screw, the setup speaks of the other kind: settle which it is, the direction depends on it.`,
    );
  }
  if (fuelLift.part !== null && outside(fuelLift.part, 0, 0.05)) {
    return impossible(
      `A fuel lift of ${millimetres(fuelLift.part)} cannot be: measure from the fuel level up to the needle jet's top.`,
    );
  }
  return null;
}

function whyGasImpossible(air: AirState, fuel: FuelState): No {
  if (outside(air.density, 0.2, 3) || outside(air.dryDensity, 0.2, air.density * 1.0001)) {
    return refuse(
      "impossible air or fuel",
      `Air of ${air.density} kg/m³ with ${air.dryDensity} kg/m³ of dry air cannot be: check the readings.`,
    );
  }
  if (
    outside(fuel.density, 500, 1100) ||
    outside(fuel.stoichiometricRatio, 1, 35) ||
    outside(fuel.fuelShare, 0.5, 1) ||
    outside(fuel.viscosityRatio, 0.1, 50)
  ) {
    return refuse(
      "impossible air or fuel",
      `Fuel of ${fuel.density} kg/m³, air need ${fuel.stoichiometricRatio}, fuel share ${fuel.fuelShare} and viscosity ratio ${fuel.viscosityRatio} cannot be: check the mix.`,
    );
  }
  return null;
}
