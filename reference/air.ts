import {
  airAt,
  airFrom,
  altimeterSetting,
  densityAltitude,
  enhancementFactor,
  fromCelsius,
  fromFoot,
  fromHectopascal,
  fromInchOfMercury,
  fromMetre,
  fromMillimetreOfMercury,
  geopotentialHeight,
  moistAirDensity,
  type Pascal,
  pressureAfterRise,
  pressureAltitude,
  saturationPressure,
  standardDensity,
  standardPressure,
  standardTemperature,
  stationPressure,
  toFoot,
  toHectopascal,
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

const ISO = "ISO 2533:1975 / US Standard Atmosphere 1976";
const geometric = (metre: number) => geopotentialHeight(fromMetre(metre));

const standard: readonly ReferenceCheck[] = [
  ...(
    [
      [-500, 107_478],
      [500, 95_461],
      [1000, 89_875],
      [4000, 61_640],
      [10_000, 26_436],
    ] as const
  ).map(
    ([metre, pascal]): ReferenceCheck => ({
      name: `standard pressure at ${metre} m (geopotential)`,
      source: "ASHRAE Fundamentals (2017), ch. 1, table 1, as in the tests of psychrometrics/psychrolib",
      standing: "read",
      unit: "Pa",
      want: pascal,
      within: 2,
      because: "printed to whole pascals, by a formula with rounded constants",
      got: () => standardPressure(fromMetre(metre)),
    }),
  ),
  ...(
    [
      [-2000, 301.15, 127_780, 1.4782],
      [2000, 275.15, 79_501, 1.0066],
      [4000, 262.17, 61_660, 0.81935],
      [6000, 249.19, 47_218, 0.66011],
    ] as const
  ).flatMap(([metre, kelvin, pascal, rho]): ReferenceCheck[] => {
    const from = {
      source: "US Standard Atmosphere 1976, PDAS table as in CalebBell/fluids tests/test_atmosphere.py",
      standing: "read",
      within: 6e-5,
      relative: true,
      because: "printed to five digits",
    } as const;
    return [
      {
        ...from,
        name: `standard temperature at ${metre} m (geometric)`,
        unit: "K",
        want: kelvin,
        got: () => standardTemperature(geometric(metre)),
      },
      {
        ...from,
        name: `standard pressure at ${metre} m (geometric)`,
        unit: "Pa",
        want: pascal,
        got: () => standardPressure(geometric(metre)),
      },
      {
        ...from,
        name: `standard density at ${metre} m (geometric)`,
        unit: "kg/m³",
        want: rho,
        got: () => standardDensity(geometric(metre)),
      },
    ];
  }),
  {
    name: "standard pressure at 10000 ft",
    source: `${ISO}, table in feet: 696.8 hPa`,
    standing: "memory",
    unit: "hPa",
    want: 696.8,
    within: 0.06,
    because: "printed to a tenth",
    got: () => toHectopascal(standardPressure(fromFoot(10_000))),
  },
  {
    name: "pressure altitude of 5,883 ft with 30.10 inHg",
    source: "FAA-H-8083-25, ch. 10, figure 10-21, sample problem 1",
    standing: "read",
    unit: "ft",
    want: 5718,
    within: 5,
    because: "the book's correction table is in whole feet for each hundredth of an inch",
    got: () => toFoot(pressureAltitude(stationPressure(fromInchOfMercury(30.1), fromFoot(5883)))),
  },
  {
    name: "density altitude: 5,883 ft, 70 °F, 30.10 inHg, end to end from typed readings",
    source: "FAA-H-8083-25, ch. 10, figure 10-21, sample problem 1: about 7,700 ft",
    standing: "read",
    unit: "ft",
    want: 7700,
    within: 60,
    because: "the answer is read off a chart, in hundreds; it is for dry air of ideal gas",
    got: () => {
      const air = airFrom({
        temperature: { value: 70, unit: "F" },
        pressure: { kind: "sea-level", value: 30.1, unit: "inHg" },
        humidity: { kind: "relative", percent: 0 },
        height: { value: 5883, unit: "ft" },
      });
      return air.ok ? toFoot(densityAltitude(air.value.density)) : Number.NaN;
    },
  },
  {
    name: "density altitude: 1500 ft pressure altitude at 25 °C adds 1560 ft",
    source: "flight training rule: 120 ft for each °C above standard",
    standing: "read",
    unit: "ft",
    want: 3060,
    within: 80,
    because: "5 % of the correction: the rule rounds 118 ft up and leaves out that it falls as the air warms",
    got: () => {
      const pressure = standardPressure(fromFoot(1500));
      return toFoot(densityAltitude(moistAirDensity(fromCelsius(25), pressure, 0)));
    },
  },
];

const US =
  "Smithsonian Meteorological Tables, 6th ed., p. 269, as in the tests of MetPy (altimeter_to_station_pressure)";
const US_WHY =
  "the US formula adds 0.3 hPa for the barometer standing above the runway and has 288 K for 288.15; ICAO's has neither";

const reduction: readonly ReferenceCheck[] = [
  ...(
    [
      ["29.80 inHg", fromInchOfMercury(29.8), 500, 950.96498],
      ["1005 hPa", fromHectopascal(1005), 1500, 838.651657],
      ["1013 hPa", fromHectopascal(1013), 500, 954.639265],
    ] as const
  ).map(
    ([said, setting, metre, hectopascal]): ReferenceCheck => ({
      name: `altimeter setting ${said} down to a station at ${metre} m`,
      source: US,
      standing: "read",
      unit: "hPa",
      want: hectopascal,
      within: 0.3,
      because: US_WHY,
      got: () => toHectopascal(stationPressure(setting, fromMetre(metre))),
    }),
  ),
  {
    name: "29.80 inHg at 500 m, the US formula's 0.3 hPa taken off",
    source: US,
    standing: "computed by hand",
    unit: "hPa",
    want: 950.66498,
    within: 0.04,
    because: "288 K against 288.15 K is all that is left: 0.03 hPa at 500 m",
    got: () => toHectopascal(stationPressure(fromInchOfMercury(29.8), fromMetre(500))),
  },
  {
    name: "altimeter setting of a station at 1500 m reading 845.56 hPa",
    source: ISO,
    standing: "memory",
    unit: "hPa",
    want: 1013.25,
    within: 0.01,
    because: "standard pressure at 1500 m is 845.56 hPa, printed to hundredths",
    got: () => toHectopascal(altimeterSetting(fromHectopascal(845.56), fromMetre(1500))),
  },
  {
    name: "hypsometric: 1012.265 hPa at 105 m and 17.19 °C is 1024.84 hPa at sea level",
    source: "tests of psychrometrics/psychrolib, GetSeaLevelPressure (102484.0 Pa)",
    standing: "read",
    unit: "hPa",
    want: 1024.84,
    within: 0.02,
    because:
      "the test takes the mean of the column from the same lapse, with a scale height rounded to 5 digits",
    got: () => {
      const mean = fromCelsius(17.19 + (0.0065 * 105) / 2);
      return toHectopascal(pressureAfterRise(101_226.5 as Pascal, -105, mean));
    },
  },
];

export const AIR_CHECKS: readonly ReferenceCheck[] = [...density, ...humidity, ...standard, ...reduction];
