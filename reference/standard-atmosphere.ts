import {
  airFrom,
  altimeterSetting,
  densityAltitude,
  fromCelsius,
  fromFoot,
  fromHectopascal,
  fromInchOfMercury,
  fromMetre,
  geopotentialHeight,
  moistAirDensity,
  type Pascal,
  pressureAfterRise,
  pressureAltitude,
  standardDensity,
  standardPressure,
  standardTemperature,
  stationPressure,
  toFoot,
  toHectopascal,
} from "@jetwright/core";
import psychrolib from "psychrolib";
import type { ReferenceCheck } from "./check.ts";

psychrolib.SetUnitSystem(psychrolib.SI);

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

export const STANDARD_ATMOSPHERE_CHECKS: readonly ReferenceCheck[] = [...standard, ...reduction];
