import type { AirState } from "../air/air-state.ts";
import type { FuelState } from "../fuel/fuel-state.ts";
import type { MeteringRefusal } from "../metering/comparable.ts";
import type { Situation } from "../metering/situation.ts";
import { exp } from "../numerics/elementary.ts";
import { JET_NUMBERINGS, type JetNumbering } from "../parts/jet.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import { accept, type Outcome, type Refusal } from "../units/outcome.ts";
import type { Metre } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import type { BikeToStart } from "./bike.ts";
import { type BikeRefusal, type SizedBike, sizedBike } from "./bike-check.ts";
import { type BroughtTo, broughtTo } from "./brought-to.ts";
import { type KnownGood, STANDARD_AIR, type StandardSetup, standardFuel, toStandard } from "./known-good.ts";
import { likeness } from "./likeness.ts";
import { needlesAlike } from "./needles-alike.ts";
import { clipFigure, cutawayFigure, screwFigure } from "./starting-adjustments.ts";
import type { StartingFigure } from "./starting-figure.ts";
import { jetFigure, jetInStandardAir } from "./starting-jet.ts";

export interface StartingPlace {
  readonly air: AirState;
  readonly fuel: FuelState;
}

/** A setup to begin with on a bike that has no history. */
export interface StartingPoint {
  readonly bike: BikeToStart;
  readonly place: StartingPlace;
  /** The bore reckoned with: the bike's own, or the usual one where nobody knows it. */
  readonly bore: Metre;
  readonly figures: readonly StartingFigure[];
  /** Marks of the needles that bikes nearly alike in the shop run; the one in the body is kept in any case. */
  readonly needlesAlike: readonly string[];
  /** Things about the input or the result to settle first. */
  readonly warnings: readonly Warning[];
  /** Known-good setups that could not be used, each with why. */
  readonly leftOut: readonly Refusal[];
}

export type StartingRefusal = BikeRefusal | MeteringRefusal;

/**
 * A starting setup for a bike with no history: numbers with a spread, what they rest on, for the air and fuel of
 * the place. From theory and published settings (main jet good to about 7 % of its number, one standard
 * deviation) and from the shop's known-good setups, each brought to standard air and weighed by how alike the
 * bikes are. The main jet is on the rich side: leaner than 6 % with a chance of 2 % at most. Refuses a bike
 * nobody can say anything about, and a bore that does not fit the engine.
 */
export function startingPoint(
  bike: BikeToStart,
  knownGood: readonly KnownGood[],
  place: StartingPlace,
): Outcome<StartingPoint, StartingRefusal> {
  const sized = sizedBike(bike);
  if (!sized.ok) return sized;
  const target = sized.value;
  const { setups, leftOut } = standardSetups(knownGood, target);
  // How far the density formula was proved matters far less than a jet size.
  const doubts = place.air.warnings.filter(({ code }) => code !== "outside-formula-range");
  const warnings: Warning[] = [...target.warnings, ...doubts];
  const figures: StartingFigure[] = [];
  const makers = new Set<string>();
  let grooves = 0;
  for (const [part, numberings] of [
    ["main", bike.mainNumbering === null ? JET_NUMBERINGS : [bike.mainNumbering]],
    ["pilot", bike.pilotNumbering === null ? JET_NUMBERINGS : [bike.pilotNumbering]],
  ] as const) {
    for (const numbering of numberings) {
      const standard = jetInStandardAir(part, numbering, target, setups);
      const carried = carry(target, part, numbering, exp(standard.mean), place);
      if (!carried.ok) return carried;
      const jet = carried.value[part];
      if (jet === null) {
        warnings.push({ code: "no-jet-answers", given: { part } });
        continue;
      }
      figures.push(jetFigure(part, numbering, standard, jet));
      for (const maker of standard.makers) makers.add(maker);
      if (part === "main") grooves = carried.value.grooves ?? 0;
    }
  }
  if (makers.size > 0) {
    warnings.push({ code: "shop-makers", given: { makers: [...makers].sort() } });
  }
  figures.push(clipFigure(target, setups, grooves), screwFigure(target, setups));
  const cutaway = cutawayFigure(target, setups);
  if (cutaway !== null) figures.push(cutaway);
  return accept({
    bike,
    place,
    bore: target.bore,
    figures,
    needlesAlike: needlesAlike(target, setups),
    warnings,
    leftOut,
  });
}

/** Past this many the rest are so much less alike that they would only cost time. */
const MOST_SETUPS = 60;

function standardSetups(
  knownGood: readonly KnownGood[],
  target: SizedBike,
): { readonly setups: readonly StandardSetup[]; readonly leftOut: readonly Refusal[] } {
  const setups: StandardSetup[] = [];
  const leftOut: Refusal[] = [];
  for (const good of knownGood) {
    const standard = toStandard(good);
    if (standard.ok) setups.push(standard.value);
    else leftOut.push(standard);
  }
  const alike = (setup: StandardSetup): number => likeness(target, setup.features);
  setups.sort((a, b) => alike(b) - alike(a));
  return { setups: setups.slice(0, MOST_SETUPS), leftOut };
}

/** Carries a jet number from standard air and fuel to the place, on a usual body with this bore. */
function carry(
  target: SizedBike,
  part: "main" | "pilot",
  numbering: JetNumbering,
  number: number,
  { air, fuel }: StartingPlace,
): Outcome<BroughtTo, MeteringRefusal> {
  const screwKind = target.screwKind ?? (target.strokes === 2 ? "air" : "fuel");
  const from: Situation = {
    air: STANDARD_AIR,
    fuel: standardFuel(target.strokes),
    setup: {
      body: {
        bore: { shape: "round", diameter: target.bore },
        screwKind,
        nozzle: target.strokes === 2 ? "primary" : "bleed",
        seatToJet: null,
        idleLift: null,
        bowlVent: "free air",
      },
      main: UNKNOWN,
      pilot: UNKNOWN,
      [part]: known({ number, numbering, maker: "" }),
      needle: UNKNOWN,
      clip: known(3),
      needleJet: UNKNOWN,
      cutaway: UNKNOWN,
      screw: UNKNOWN,
      fuelLift: UNKNOWN,
      mainAirJet: UNKNOWN,
      pilotAirJet: UNKNOWN,
    },
  };
  return broughtTo(from, air, fuel);
}
