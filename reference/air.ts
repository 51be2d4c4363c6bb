import {
  airAt,
  enhancementFactor,
  fromCelsius,
  fromHectopascal,
  fromMillimetreOfMercury,
  moistAirDensity,
  type Pascal,
  saturationPressure,
  vapourFraction,
} from "@jetwright/core";
import psychrolib from "psychrolib";
import type { ReferenceCheck } from "./check.ts";

psychrolib.SetUnitSystem(psychrolib.SI);

/** Air at °C, Pa and relative humidity 0 to 1. */
const airOf = (celsius: number, pressure: Pascal, fraction: number) => {
  const t = fromCelsius(celsius);
  return airAt(t, pressure, vapourFraction({ kind: "relative", fraction, sd: 0 }, t, pressure));
};
/** kg vapour per kg dry air. */
const humidityRatio = (x: number): number => (0.621945 * x) / (1 - x);

const CIPM = "Picard, Davis, Glaser, Fujii, Metrologia 45 (2008) 149 (CIPM-2007)";

const density: readonly ReferenceCheck[] = [
  {
    name: "density: 22.3 °C, 748.1 mmHg, 37 %",
    source: "NIST SOP 2 (NISTIR 6969), appendix B, example 1, by Jones (1978)",
    standing: "read",
    unit: "kg/m³",
    want: 1.17194,
    within: 1e-4,
    relative: true,
    because: "the example uses Jones's 1978 formula, 5e-5 below CIPM-2007 here",
    got: () => airOf(22.3, fromMillimetreOfMercury(748.1), 0.37).density,
  },
  {
    name: "density: 10 °C, 730 mmHg, 40 %, 0.04 % carbon dioxide",
    source: "S. V. Gupta, Mass Metrology (Springer), appendix, p. 205, by CIPM",
    standing: "read",
    unit: "kg/m³",
    want: 1.19569,
    within: 1e-5,
    because: "half a unit of the printed last digit, and the earlier constants of CIPM-81/91",
    got: () => airOf(10, fromMillimetreOfMercury(730), 0.4).density,
  },
  {
    name: "density: short form 3.483740 p/(Z T)(1 - 0.3780 x), Z = 0.99961 at 20 °C, 1013.25 hPa, 50 %",
    source: `${CIPM}, short form; Z from the BIPM's table of 1981 (Giacomo, Metrologia 18, 33)`,
    standing: "memory",
    unit: "kg/m³",
    want: ((3.48374e-3 * 101_325) / (0.99961 * 293.15)) * (1 - 0.378 * 0.0116),
    within: 3e-5,
    relative: true,
    because: "Z is tabled to five decimals and the vapour fraction to four",
    got: () => airOf(20, fromHectopascal(1013.25), 0.5).density,
  },
  {
    name: "density: 30 °C, humidity ratio 0.02, 95461 Pa",
    source: "ASHRAE Fundamentals (2017), ch. 1, table 2, as in the tests of psychrometrics/psychrolib",
    standing: "read",
    unit: "kg/m³",
    want: 1.08412,
    within: 8e-4,
    relative: true,
    because: "ASHRAE takes an ideal gas; compressibility adds 0.03 to 0.08 %",
    got: () => moistAirDensity(fromCelsius(30), 95_461 as Pascal, 0.02 / (0.621945 + 0.02)),
  },
  ...(
    [
      [-10, 1013.25, 0.5],
      [0, 900, 0.8],
      [20, 1013.25, 0.5],
      [35, 700, 0.3],
      [45, 1013.25, 1],
    ] as const
  ).map(
    ([celsius, hectopascal, fraction]): ReferenceCheck => ({
      name: `density: ${celsius} °C, ${hectopascal} hPa, ${fraction * 100} % by a psychrometrics package`,
      source: "psychrolib 1.1.1 (npm), GetMoistAirDensity",
      standing: "second library",
      unit: "kg/m³",
      want: psychrolib.GetMoistAirDensity(
        celsius,
        psychrolib.GetHumRatioFromRelHum(celsius, fraction, hectopascal * 100),
        hectopascal * 100,
      ),
      within: 8e-4,
      relative: true,
      because: "the package takes an ideal gas; compressibility and enhancement make up to 0.075 %",
      got: () => airOf(celsius, fromHectopascal(hectopascal), fraction).density,
    }),
  ),
  ...(
    [
      [20, 0.5],
      [20, 1],
      [30, 0.8],
      [40, 1],
    ] as const
  ).flatMap(([celsius, fraction]): ReferenceCheck[] => {
    // Dalton's law with saturation pressures of ASHRAE's order: what dry air loses is the vapour's share.
    const vapour = psychrolib.GetSatVapPres(celsius) * fraction;
    const share = vapour / 101_325;
    const ratio = (air: "density" | "dryDensity") => {
      const p = fromHectopascal(1013.25);
      return airOf(celsius, p, fraction)[air] / airOf(celsius, p, 0)[air];
    };
    return [
      {
        name: `oxygen: dry-air share at ${celsius} °C, ${fraction * 100} % against dry air`,
        source: "Dalton's law on psychrolib 1.1.1 saturation pressure: 1 - e/p",
        standing: "second library",
        unit: "1",
        want: 1 - share,
        within: 6e-4,
        because: "Dalton's law leaves out the enhancement factor (0.4 % of the vapour) and Z",
        got: () => ratio("dryDensity"),
      },
      {
        name: `oxygen: whole density at ${celsius} °C, ${fraction * 100} % against dry air`,
        source: "Dalton's law on psychrolib 1.1.1 saturation pressure: 1 - 0.378 e/p",
        standing: "second library",
        unit: "1",
        want: 1 - 0.378 * share,
        within: 3e-4,
        because: "Dalton's law leaves out the enhancement factor (0.4 % of the vapour) and Z",
        got: () => ratio("density"),
      },
    ];
  }),
];

const ashraePressures: readonly (readonly [number, number])[] = [
  [5, 872.6],
  [25, 3169.7],
  [50, 12_351.3],
];

const humidity: readonly ReferenceCheck[] = [
  ...ashraePressures.map(
    ([celsius, pascal]): ReferenceCheck => ({
      name: `saturation pressure over water, ${celsius} °C`,
      source: "ASHRAE Fundamentals (2017), ch. 1, table 3, as in the tests of psychrometrics/psychrolib",
      standing: "read",
      unit: "Pa",
      want: pascal,
      within: 4e-4,
      relative: true,
      because: "ASHRAE claims 0.03 %; CIPM and Hyland-Wexler differ by another 0.01 to 0.03 %",
      got: () => saturationPressure(fromCelsius(celsius)),
    }),
  ),
  {
    name: "saturation pressure over supercooled water, -10 °C",
    source: "WMO-No. 8 / Goff-Gratch tables: 286.5 Pa over water (259.9 over ice)",
    standing: "memory",
    unit: "Pa",
    want: 286.5,
    within: 2e-3,
    relative: true,
    because: "formulas over supercooled water differ by 0.1 to 0.2 % here; ice would be 9 % off",
    got: () => saturationPressure(fromCelsius(-10)),
  },
  ...[0.01, 15, 30, 45].map(
    (celsius): ReferenceCheck => ({
      name: `saturation pressure at ${celsius} °C by a psychrometrics package`,
      source: "psychrolib 1.1.1 (npm), GetSatVapPres (Hyland and Wexler)",
      standing: "second library",
      unit: "Pa",
      want: psychrolib.GetSatVapPres(celsius),
      within: 3e-4,
      relative: true,
      because: "two fits to the same measurements; they part by up to 0.02 %",
      got: () => saturationPressure(fromCelsius(celsius)),
    }),
  ),
  {
    name: "enhancement factor at 20 °C, 1013.25 hPa",
    source: "L. Greenspan, J. Res. NBS 80A (1976) 41: 1.0040",
    standing: "memory",
    unit: "1",
    want: 1.004,
    within: 1e-4,
    because: "the table has four decimals; CIPM's own fit is within 1e-4 of it",
    got: () => enhancementFactor(fromCelsius(20), fromHectopascal(1013.25)),
  },
  ...(
    [
      [5, 0.005425],
      [25, 0.020173],
      [50, 0.086863],
    ] as const
  ).map(
    ([celsius, ratio]): ReferenceCheck => ({
      name: `saturated humidity ratio at ${celsius} °C, 1013.25 hPa`,
      source: "ASHRAE Fundamentals (2017), ch. 1, table 2, as in the tests of psychrometrics/psychrolib",
      standing: "read",
      unit: "kg/kg",
      want: ratio,
      within: 2e-3,
      relative: true,
      because: "the table is of real gases, and so is ours, but with another enhancement factor",
      got: () => {
        const t = fromCelsius(celsius);
        const x = vapourFraction({ kind: "dew-point", temperature: t, sd: 0 }, t, 101_325 as Pascal);
        return humidityRatio(x);
      },
    }),
  ),
  {
    name: "wet bulb: 40 °C dry, 20 °C wet, 101325 Pa gives a humidity ratio of 0.0065",
    source: "ASHRAE Fundamentals (2017), ch. 1, example 1",
    standing: "read",
    unit: "kg/kg",
    want: 0.0065,
    within: 1e-4,
    because: "read from a chart to two digits in the source",
    got: () => {
      const t = fromCelsius(40);
      const wet = { kind: "wet-bulb", temperature: fromCelsius(20), sd: 0 } as const;
      return humidityRatio(vapourFraction(wet, t, 101_325 as Pascal));
    },
  },
  ...(
    [
      [20, 15, 101_325],
      [35, 18, 84_556],
      [10, 2, 95_000],
    ] as const
  ).map(
    ([celsius, wet, pascal]): ReferenceCheck => ({
      name: `wet bulb: ${celsius} °C dry, ${wet} °C wet, ${pascal} Pa by a psychrometrics package`,
      source: "psychrolib 1.1.1 (npm), GetHumRatioFromTWetBulb",
      standing: "second library",
      unit: "kg/kg",
      want: psychrolib.GetHumRatioFromTWetBulb(celsius, wet, pascal),
      within: 6e-5,
      because: "the same balance without the enhancement factor, 0.4 % of the saturated ratio",
      got: () => {
        const bulb = { kind: "wet-bulb", temperature: fromCelsius(wet), sd: 0 } as const;
        return humidityRatio(vapourFraction(bulb, fromCelsius(celsius), pascal as Pascal));
      },
    }),
  ),
  {
    name: "dew point: 12 °C at 95000 Pa by a psychrometrics package",
    source: "psychrolib 1.1.1 (npm), GetHumRatioFromTDewPoint",
    standing: "second library",
    unit: "kg/kg",
    want: psychrolib.GetHumRatioFromTDewPoint(12, 95_000),
    within: 5e-3,
    relative: true,
    because: "the package leaves out the enhancement factor, 0.4 %",
    got: () =>
      humidityRatio(
        vapourFraction(
          { kind: "dew-point", temperature: fromCelsius(12), sd: 0 },
          fromCelsius(20),
          95_000 as Pascal,
        ),
      ),
  },
];

export const AIR_CHECKS: readonly ReferenceCheck[] = [...density, ...humidity];
