/** What is in the tank. */
export interface Tank {
  /** Volume share of ethanol. */
  readonly ethanol: number;
  /** Volumes of oil to one of fuel; 0 none. */
  readonly oil: number;
  /** Density of the petrol part at 15 °C, kg/m³. */
  readonly petrolDensity: number;
  /** Share of the oil that burns as if it were petrol. */
  readonly oilBurns: number;
}

/** Fuel as it passes the jets at a temperature. */
export interface Fuel {
  readonly density: number;
  /** Kinematic viscosity, m²/s. */
  readonly viscosity: number;
  /** Air wanted for complete burning over that of petrol without ethanol, per mass of what burns. */
  readonly airWanted: number;
  /** Mass share of the mix that burns. */
  readonly burns: number;
}

// Densities: ethanol 794, oil 870 kg/m³ [from memory]; viscosity of petrol 0.58 and ethanol 1.5 mm²/s at 20 °C
// (a government fuel property table [read in a stored copy]), mixed in the logarithm; 1.25 % a kelvin [estimate].
export function fuelOf({ ethanol, oil, petrolDensity, oilBurns }: Tank, celsius: number): Fuel {
  const swelling = 1 - 1.2e-3 * (celsius - 15);
  const petrolMass = (1 - ethanol) * petrolDensity;
  const ethanolMass = ethanol * 794;
  const oilMass = oil * 870;
  const mass = petrolMass + ethanolMass + oilMass;
  const oilShare = oil / (1 + oil);
  const logViscosity =
    (1 - oilShare) * ((1 - ethanol) * Math.log(0.58e-6) + ethanol * Math.log(1.5e-6)) +
    oilShare * Math.log(120e-6);
  const burning = petrolMass + ethanolMass;
  return {
    density: (mass / (1 + oil)) * swelling,
    viscosity: Math.exp(logViscosity - 0.0125 * (celsius - 20)),
    airWanted: (petrolMass * 14.6 + ethanolMass * 9.0) / burning / 14.6,
    burns: (burning + oilBurns * oilMass) / mass,
  };
}
