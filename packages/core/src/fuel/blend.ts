import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { KgPerCubicMetre } from "../units/quantity.ts";
import { oxygenShareOf, stoichiometricRatioOf } from "./composition.ts";
import type { NamedFuel } from "./named-fuels.ts";

/** A fuel as far as the mixture is concerned, without oil. */
export interface Blend {
  /** At 15 °C. */
  readonly density: KgPerCubicMetre;
  /** Mass of air for a unit mass. */
  readonly stoichiometricRatio: number;
  /** Mass share of oxygen, 0 to 1. */
  readonly oxygenShare: number;
}

export interface BlendPart {
  readonly fuel: Pick<NamedFuel, "density" | "composition">;
  /** Of the whole, 0 to 1. */
  readonly share: number;
}

/**
 * The blend of parts given by volume at 15 °C. Volumes are added as they are: alcohol in petrol really swells
 * by up to 0.2 %, which is less than the doubt about one tank's density (about 2 %).
 * Refuses shares that are not 0 to 1 or do not add up to 1 within 1e-6.
 */
export function blendByVolume(parts: readonly BlendPart[]): Outcome<Blend, "shares"> {
  const refused = refusedShares(parts);
  if (refused) return refused;
  const masses = parts.map((part) => part.share * part.fuel.density);
  const density = masses.reduce((sum, mass) => sum + mass, 0);
  return accept(mix(parts, masses, density));
}

/** The blend of parts given by mass; otherwise as `blendByVolume`. */
export function blendByMass(parts: readonly BlendPart[]): Outcome<Blend, "shares"> {
  const refused = refusedShares(parts);
  if (refused) return refused;
  const volume = parts.reduce((sum, part) => sum + part.share / part.fuel.density, 0);
  return accept(
    mix(
      parts,
      parts.map((part) => part.share),
      1 / volume,
    ),
  );
}

function mix(parts: readonly BlendPart[], masses: readonly number[], density: number): Blend {
  const total = masses.reduce((sum, mass) => sum + mass, 0);
  let stoichiometricRatio = 0;
  let oxygenShare = 0;
  for (const [i, part] of parts.entries()) {
    stoichiometricRatio += (masses[i]! / total) * stoichiometricRatioOf(part.fuel.composition);
    oxygenShare += (masses[i]! / total) * oxygenShareOf(part.fuel.composition);
  }
  return { density: density as KgPerCubicMetre, stoichiometricRatio, oxygenShare };
}

function refusedShares(parts: readonly BlendPart[]) {
  const sum = parts.reduce((total, part) => total + part.share, 0);
  const inside = parts.every((part) => part.share >= 0 && part.share <= 1);
  if (inside && Math.abs(sum - 1) <= 1e-6) return null;
  const said = parts.map((part) => `${Math.round(part.share * 1e4) / 100} %`).join(" + ");
  return refuse(
    "shares",
    `The parts of a fuel must each be 0 to 100 % and add up to 100 %; got ${said || "nothing"}. Correct the shares.`,
  );
}
