import {
  blendByVolume,
  densityAt,
  expansionCoefficient,
  type FuelName,
  type FuelUse,
  fromCelsius,
  fromImperialGallon,
  fromKgPerCubicMetre,
  fromLitre,
  fromUsGallon,
  fuelEffect,
  fuelState,
  NAMED_FUELS,
  oilPerFuel,
  oilShareOfMix,
  oilToMeasure,
  oxygenShareOf,
  readOil,
  stoichiometricRatioOf,
  toCubicCentimetre,
  viscosityRatio,
} from "@jetwright/core";
import type { ReferenceCheck } from "./check.ts";

const HEYWOOD = "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), table D.4";
const DOE = "US Department of Energy, Alternative Fuels Data Center, Properties of Fuels";

const ratios: readonly (readonly [FuelName, number, number, string, "memory" | "read", string])[] = [
  ["petrol", 14.6, 0.05, HEYWOOD, "memory", "printed to three figures"],
  ["isooctane", 15.13, 0.02, HEYWOOD, "memory", "printed to four figures; his air is 0.04 % lighter"],
  ["toluene", 13.5, 0.02, HEYWOOD, "memory", "printed to four figures"],
  ["ethanol", 9, 0.02, DOE, "read", "printed to one figure, 9.00 in handbooks"],
  ["methanol", 6.47, 0.01, HEYWOOD, "memory", "printed to three figures"],
  ["methanol", 6.5, 0.05, DOE, "read", "printed to two figures"],
  ["mtbe", 11.7, 0.1, DOE, "memory", "printed to three figures, 11.7 or 11.8 by edition"],
  ["etbe", 12.1, 0.1, DOE, "memory", "printed to three figures, 12.1 or 12.2 by edition"],
];

const stoichiometry: ReferenceCheck[] = ratios.map(([fuel, want, within, source, standing, because]) => ({
  name: `air wanted by ${fuel}`,
  source,
  standing,
  unit: "kg/kg",
  want,
  within,
  because,
  got: () => stoichiometricRatioOf(NAMED_FUELS[fuel].composition),
}));

const oxygen: ReferenceCheck[] = (
  [
    ["ethanol", 0.347],
    ["methanol", 0.499],
    ["mtbe", 0.182],
  ] as const
).map(([fuel, want]) => ({
  name: `oxygen in ${fuel}`,
  source: DOE,
  standing: "read",
  unit: "kg/kg",
  want,
  within: 6e-4,
  because: "printed to a tenth of a percent",
  got: () => oxygenShareOf(NAMED_FUELS[fuel].composition),
}));

const use = (change: Partial<FuelUse>): FuelUse => ({
  ethanol: 0,
  alkylate: 0,
  oilPerFuel: 0,
  temperature: fromCelsius(15),
  ...change,
});
const ok = <Value>(outcome: { ok: true; value: Value } | { ok: false; detail: string }): Value => {
  if (!outcome.ok) throw new RangeError(outcome.detail);
  return outcome.value;
};
const blended = (fuel: FuelName, share: number) =>
  ok(
    blendByVolume([
      { fuel: NAMED_FUELS.petrol, share: 1 - share },
      { fuel: NAMED_FUELS[fuel], share },
    ]),
  );

// The limits of oxygen and of the oxygenate in the same standard are meant for each other.
const limits: ReferenceCheck[] = [
  {
    name: "10 % ethanol reaches the oxygen limit of its class",
    source: "EN 228, petrol with up to 10 % ethanol: at most 3.7 % oxygen by mass",
    standing: "read",
    unit: "% by mass",
    want: 3.7,
    within: 0.06,
    because: "the limit is rounded to a tenth; petrol density moves it by 0.1",
    got: () => blended("ethanol", 0.1).oxygenShare * 100,
  },
  {
    name: "15 % MTBE reaches the oxygen limit of its class",
    source: "EN 228, petrol with up to 2.7 % oxygen by mass",
    standing: "read",
    unit: "% by mass",
    want: 2.7,
    within: 0.06,
    because: "the limit is rounded to a tenth",
    got: () => blended("mtbe", 0.15).oxygenShare * 100,
  },
];

// Blends worked out apart from our code from volume shares, CH1.87 and the formula area ∝ 1/(AFR √density).
const blendTable: readonly (readonly [number, number, number, number, number])[] = [
  [0.05, 747.5, 14.307, 1.0191, 1.84],
  [0.1, 749.9, 14.011, 1.0389, 3.68],
  [0.2, 754.8, 13.426, 1.0806, 7.31],
];
const BLENDS = "blend formulas by volume, E0 = 745 kg/m³ and CH1.87, worked apart from this code";
const blends: ReferenceCheck[] = blendTable.flatMap(([share, density, air, area, oxygenPercent]) => {
  const row = (
    name: string,
    unit: string,
    want: number,
    within: number,
    got: () => number,
  ): ReferenceCheck => ({
    name: `E${share * 100} ${name}`,
    source: BLENDS,
    standing: "computed by hand",
    unit,
    want,
    within,
    because: "rounding of the worked row",
    got,
  });
  return [
    row("density", "kg/m³", density, 0.06, () => blended("ethanol", share).density),
    row("air wanted", "kg/kg", air, 6e-4, () => blended("ethanol", share).stoichiometricRatio),
    row("oxygen", "% by mass", oxygenPercent, 6e-3, () => blended("ethanol", share).oxygenShare * 100),
    row("fuel area", "×", area, 6e-5, () => ok(fuelEffect(use({}), use({ ethanol: share }))).areaFactor),
  ];
});

const effects: ReferenceCheck[] = [
  {
    name: "petrol to methanol: jet diameter +50 %",
    source:
      'a carburetor maker\'s tuning guide, "Tuning Guide - Other Factors", section 5.1 (density left out)',
    standing: "read",
    unit: "×",
    want: 1.5,
    within: 0.02,
    because: "printed as about 50 %",
    got: () =>
      Math.sqrt(
        stoichiometricRatioOf(NAMED_FUELS.petrol.composition) /
          stoichiometricRatioOf(NAMED_FUELS.methanol.composition),
      ),
  },
  {
    name: "alkylate needs no jet change",
    source: "common practice, no source",
    standing: "common practice",
    unit: "×",
    want: 1,
    within: 0.01,
    because: "below a third of a main jet step",
    got: () => ok(fuelEffect(use({}), use({ alkylate: 1 }))).areaFactor,
  },
  {
    name: "50:1 to 30:1, petrol through the same jet",
    source:
      "orifice and volume formulas, petrol 745 and oil 870 kg/m³: 0.96513 / 0.97878, worked apart from this code",
    standing: "computed by hand",
    unit: "×",
    want: 0.96513 / 0.97878,
    within: 2e-5,
    because: "rounding of the worked row",
    got: () => Math.exp(ok(fuelEffect(use({ oilPerFuel: 1 / 50 }), use({ oilPerFuel: 1 / 30 }))).shift),
  },
  {
    name: "petrol viscosity, -20 against 20 °C",
    source: DOE,
    standing: "read",
    unit: "×",
    want: 0.9 / 0.55,
    within: 0.25,
    relative: true,
    because: "printed as 0.8-1.0 and 0.5-0.6 mm²/s",
    got: () => viscosityRatio({ ethanol: 0, alkylate: 0 }, 0, fromCelsius(-20)).ratio,
  },
];

const TABLE_54B = "API MPMS 11.1 / ASTM D1250 (1980) table 54B, formula worked apart from this code";
const expansion: ReferenceCheck[] = [
  ...(
    [
      [690, 1.364e-3],
      [720, 1.278e-3],
      [745, 1.213e-3],
      [760, 1.177e-3],
      [770, 1.154e-3],
    ] as const
  ).map(
    ([density, want]): ReferenceCheck => ({
      name: `expansion of petrol of ${density} kg/m³`,
      source: TABLE_54B,
      standing: "computed by hand",
      unit: "1/K",
      want,
      within: 6e-7,
      because: "rounding of the worked row",
      got: () => expansionCoefficient(fromKgPerCubicMetre(density)),
    }),
  ),
  ...(
    [
      [-10, 767.4],
      [0, 758.5],
      [20, 740.5],
      [30, 731.4],
      [40, 722.2],
      [45, 717.6],
    ] as const
  ).map(
    ([celsius, want]): ReferenceCheck => ({
      name: `density of petrol at ${celsius} °C`,
      source: TABLE_54B,
      standing: "computed by hand",
      unit: "kg/m³",
      want,
      within: 0.06,
      because: "rounding of the worked row",
      got: () => densityAt(fromKgPerCubicMetre(745), fromCelsius(celsius)),
    }),
  ),
];

// R: ml a litre, ml (fl oz) a US gallon, ml (fl oz) an imperial gallon, % of mix, density of mix, petrol mass share.
const premixRows = [
  [16, 62.5, 236.6, 8, 284.1, 10, 5.882, 752.4, 0.93198],
  [20, 50, 189.3, 6.4, 227.3, 8, 4.762, 751.0, 0.94483],
  [25, 40, 151.4, 5.12, 181.8, 6.4, 3.846, 749.8, 0.95537],
  [32, 31.25, 118.3, 4, 142.1, 5, 3.03, 748.8, 0.96479],
  [40, 25, 94.6, 3.2, 113.7, 4, 2.439, 748.0, 0.97163],
  [50, 20, 75.7, 2.56, 90.9, 3.2, 1.961, 747.4, 0.97718],
  [100, 10, 37.9, 1.28, 45.5, 1.6, 0.99, 746.2, 0.98846],
] as const;
const US_OUNCE = 29.57353;
const IMPERIAL_OUNCE = 28.41306;
const premix: ReferenceCheck[] = premixRows.flatMap(
  ([ratio, perLitre, us, usOunces, imperial, imperialOunces, ofMix, density, share]) => {
    const oil = () => ok(oilPerFuel(ok(readOil(`${ratio}:1`))));
    const row = (
      name: string,
      unit: string,
      want: number,
      within: number,
      got: () => number,
    ): ReferenceCheck => ({
      name: `${ratio}:1, ${name}`,
      source:
        "gallons and ounces of NIST SP 811 (2008), from memory; petrol 745, oil 870 kg/m³; worked apart from this code",
      standing: "computed by hand",
      unit,
      want,
      within,
      because: "rounding of the worked row",
      got,
    });
    const added = (volume: ReturnType<typeof fromLitre>) =>
      toCubicCentimetre(oilToMeasure(oil(), volume, "added fuel").oil);
    return [
      row("a litre", "ml", perLitre, 0.006, () => added(fromLitre(1))),
      row("a US gallon", "ml", us, 0.06, () => added(fromUsGallon(1))),
      row("a US gallon in ounces", "US fl oz", usOunces, 0.006, () => added(fromUsGallon(1)) / US_OUNCE),
      row("an imperial gallon", "ml", imperial, 0.06, () => added(fromImperialGallon(1))),
      row(
        "an imperial gallon in ounces",
        "imp fl oz",
        imperialOunces,
        0.006,
        () => added(fromImperialGallon(1)) / IMPERIAL_OUNCE,
      ),
      row("share of mix", "% by volume", ofMix, 6e-4, () => oilShareOfMix(oil()) * 100),
      row(
        "density of the mix",
        "kg/m³",
        density,
        0.06,
        () => ok(fuelState(use({ oilPerFuel: oil() }))).density,
      ),
      row("petrol by mass", "kg/kg", share, 6e-6, () => ok(fuelState(use({ oilPerFuel: oil() }))).fuelShare),
    ];
  },
);

const spotChecks: ReferenceCheck[] = [
  {
    name: "1 US gallon at 50:1",
    source: "premix tables on oil packets and rider pages",
    standing: "read",
    unit: "US fl oz",
    want: 2.6,
    within: 0.05,
    because: "printed to a tenth",
    got: () => toCubicCentimetre(oilToMeasure(0.02, fromUsGallon(1), "added fuel").oil) / US_OUNCE,
  },
  {
    name: "5 US gallons at 50:1",
    source: "premix tables on oil packets and rider pages",
    standing: "read",
    unit: "US fl oz",
    want: 12.8,
    within: 0.05,
    because: "printed to a tenth",
    got: () => toCubicCentimetre(oilToMeasure(0.02, fromUsGallon(5), "added fuel").oil) / US_OUNCE,
  },
];

export const FUEL_CHECKS: readonly ReferenceCheck[] = [
  ...stoichiometry,
  ...oxygen,
  ...limits,
  ...blends,
  ...effects,
  ...expansion,
  ...premix,
  ...spotChecks,
];
