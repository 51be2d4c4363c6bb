import { standardAir } from "../air/standard-atmosphere.ts";
import type { FuelState } from "../fuel/fuel-state.ts";
import { fuelState } from "../fuel/fuel-use.ts";
import type { MeteringRefusal } from "../metering/comparable.ts";
import type { Situation } from "../metering/situation.ts";
import { boreHeight } from "../parts/bore.ts";
import { openArea } from "../parts/bore-area.ts";
import type { Jet } from "../parts/jet.ts";
import { fromCelsius, toCubicCentimetre } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { CubicMetre, Metre } from "../units/quantity.ts";
import { type BroughtJet, broughtTo } from "./brought-to.ts";
import type { Features } from "./likeness.ts";
import type { Use } from "./use.ts";
import { believableDisplacement, usualDisplacement } from "./usual-bore.ts";

/** A bike of the shop that runs well as it is: its engine, and its setup in the air and on the fuel it did so. */
export interface KnownGood {
  readonly engine: { readonly strokes: 2 | 4; readonly displacement: CubicMetre | null };
  readonly use: Use | null;
  readonly situation: Situation;
}

/** A known-good setup brought to standard air and fuel. */
export interface StandardSetup {
  readonly good: KnownGood;
  readonly features: Features;
  readonly main: (BroughtJet & Pick<Jet, "numbering" | "maker">) | null;
  readonly pilot: (BroughtJet & Pick<Jet, "numbering" | "maker">) | null;
  /** Clip from the middle groove, lower on the needle counted up. */
  readonly grooves: number | null;
}

/** Dry air at 15 °C and 1013.25 hPa: the yardstick. */
export const STANDARD_AIR = standardAir(0 as Metre);

/** Pump petrol without ethanol at 15 °C; on two-strokes with oil at 32:1, as most published settings mean it. */
export function standardFuel(strokes: 2 | 4): FuelState {
  const fuel = fuelState({
    ethanol: 0,
    alkylate: 0,
    oilPerFuel: strokes === 2 ? 1 / 32 : 0,
    temperature: fromCelsius(15),
  });
  if (!fuel.ok) throw new RangeError(`The standard fuel was refused: ${fuel.detail}`);
  return fuel.value;
}

/** Diameter of the round bore with the same open area. */
export const roundBore = (situation: Situation): Metre => {
  const { bore } = situation.setup.body;
  return Math.sqrt((4 / Math.PI) * openArea(bore, boreHeight(bore))) as Metre;
};

/** Brings a known-good setup to standard air and fuel; refuses one whose parts or air cannot be. */
export function toStandard(good: KnownGood): Outcome<StandardSetup, MeteringRefusal | "shop displacement"> {
  const { engine, use, situation } = good;
  if (engine.displacement !== null && !believableDisplacement(engine.displacement)) {
    return refuse(
      "shop displacement",
      `A bike of the shop is down as ${Math.round(toCubicCentimetre(engine.displacement))} cm³ for one carburetor: mend its record.`,
    );
  }
  const brought = broughtTo(situation, STANDARD_AIR, standardFuel(engine.strokes));
  if (!brought.ok) return brought;
  const { setup } = situation;
  const jet = (size: BroughtJet | null, { part }: { part: Jet | null }) =>
    size && part && { ...size, numbering: part.numbering, maker: part.maker.trim() };
  const bore = roundBore(situation);
  const clip = setup.clip.part;
  const middle = ((setup.needle.part?.grooves ?? 5) + 1) / 2;
  return accept({
    good,
    features: {
      strokes: engine.strokes,
      displacement: engine.displacement ?? usualDisplacement(bore, use),
      bore,
      use,
    },
    main: jet(brought.value.main, setup.main),
    pilot: jet(brought.value.pilot, setup.pilot),
    grooves: clip === null ? null : clip - middle + (brought.value.grooves ?? 0),
  });
}
