/** Atoms of a fuel CxHyOz, per molecule or in any proportion. */
export interface Composition {
  readonly carbon: number;
  readonly hydrogen: number;
  readonly oxygen: number;
}

// g/mol. IUPAC conventional atomic weights, from memory.
const CARBON = 12.011;
const HYDROGEN = 1.00794;
const OXYGEN = 15.9994;
/** g/mol, dry air. Picard and others, CIPM-2007, Metrologia 45 (2008), at 400 ppm CO2. */
const DRY_AIR = 28.96546;
/** Mole share of oxygen in dry air. US Standard Atmosphere 1976, table 3 (0.209476), rounded, from memory. */
const OXYGEN_IN_AIR = 0.20946;

/** g for one formula unit. */
export function molarMass(fuel: Composition): number {
  const mass = CARBON * fuel.carbon + HYDROGEN * fuel.hydrogen + OXYGEN * fuel.oxygen;
  if (!(mass > 0 && mass < Infinity && fuel.carbon >= 0 && fuel.hydrogen >= 0 && fuel.oxygen >= 0)) {
    throw new RangeError(
      `Atoms must be finite, at least 0 and not all 0, got C${fuel.carbon} H${fuel.hydrogen} O${fuel.oxygen}`,
    );
  }
  return mass;
}

/**
 * Mass of dry air that burns a unit mass of CxHyOz to carbon dioxide and water: (x + y/4 - z/2) mol of oxygen
 * a mol of fuel. Exact but for the atomic weights; within 0.1 % of handbook tables, which round.
 */
export function stoichiometricRatioOf(fuel: Composition): number {
  const oxygenWanted = fuel.carbon + fuel.hydrogen / 4 - fuel.oxygen / 2;
  return ((oxygenWanted / OXYGEN_IN_AIR) * DRY_AIR) / molarMass(fuel);
}

/** Mass share of oxygen in the fuel, 0 to 1. */
export const oxygenShareOf = (fuel: Composition): number => (OXYGEN * fuel.oxygen) / molarMass(fuel);
