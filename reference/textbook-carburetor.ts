import {
  airFuelRatio,
  areaFactor,
  freeVentRichness,
  fromMillimetreOfMercury,
  type Kelvin,
  type KgPerCubicMetre,
  lipPressure,
  type Metre,
  orificeArea,
  orificeDrop,
  type Pascal,
  type SquareMetre,
  startSpeed,
  throatAt,
} from "@jetwright/core";
import type { ReferenceCheck } from "./check.ts";
import { read } from "./check-rows.ts";
import { dryAir, usual } from "./slide-body.ts";

const kg = (x: number) => x as KgPerCubicMetre;
const square = (x: number) => x as SquareMetre;
const m = (x: number) => x as Metre;
const pa = (x: number) => x as Pascal;
const circle = (diameter: number) => square((Math.PI / 4) * diameter * diameter);
const acrossOf = (area: number) => Math.sqrt((4 * area) / Math.PI);

const RAJPUT =
  "R. K. Rajput, A Textbook of Internal Combustion Engines, ch. 11, as worked in the FOSSEE Python companion";
const MATHUR =
  "M. L. Mathur and R. P. Sharma, Internal Combustion Engine, ch. 11, as worked in the FOSSEE companion";
const PRINTED = "the printed figures' last digit";
const GAS = "the textbook rounds the gas constant to 287 and g to 9.81";

/** Throat of a venturi for an air flow at a real speed, with a velocity coefficient: diameter, m. */
function throatDiameter(kgPerMinute: number, kelvin: number, speed: number, coefficient: number): number {
  const throat = throatAt(pa(101_300), kelvin as Kelvin, speed / coefficient);
  return acrossOf(kgPerMinute / 60 / (throat.density * speed));
}

const rajput12Drop = () => orificeDrop(5 / 3600, square(2e-6), 0.8, kg(750)) + lipPressure(750, 0.005);
const rajput14Drop = () => orificeDrop(5.45 / 3600, square(2e-6), 0.75, kg(720)) + lipPressure(720, 0.00635);

/** Rajput 11.8: choke and jet diameters, m, round an emulsion tube of 0.4 of the choke. */
function rajput18(): { choke: number; jet: number } {
  const volume = (0.75 * 1489e-6 * 4200) / 120;
  const density = 101_300 / (287 * 293);
  const throat = throatAt(pa(101_300), 293 as Kelvin, 85);
  const area = (volume * density) / (throat.density * 85 * 0.82);
  const drop = 101_300 - throat.pressure - lipPressure(740, 0.006);
  return {
    choke: acrossOf(area / (1 - 0.4 * 0.4)),
    jet: acrossOf(orificeArea((volume * density) / 13, 0.65, kg(740), pa(drop))),
  };
}

const venturi = (throat: number, jet: number, cAir: number, cJet: number, drop: number, lip: number) =>
  airFuelRatio(
    { area: circle(throat), coefficient: cAir, density: kg(1.2) },
    { area: circle(jet), coefficient: cJet, density: kg(750) },
    pa(drop),
    m(lip),
  );

const printed = read([
  [
    "throat for 5 kg/min at 90 m/s",
    `${MATHUR}, ex. 11.1 p. 243`,
    "cm",
    3.25,
    0.005,
    PRINTED,
    () => 100 * throatDiameter(5, 300, 90, 0.8),
  ],
  [
    "suction of a four-cylinder engine on a 28 mm throat",
    `${RAJPUT}, ex. 11.1 p. 399`,
    "Pa",
    4447.61,
    0.01,
    PRINTED,
    () => orificeDrop(1.2 * 0.75 * 4 * circle(0.1) * 0.12 * 15, circle(0.028), 0.8, kg(1.2)),
  ],
  ["suction for 5 kg/h through 2 mm²", `${RAJPUT}, ex. 11.2 p. 400`, "Pa", 539.13, 0.05, GAS, rajput12Drop],
  [
    "throat that goes with it at 16 to 1",
    `${RAJPUT}, ex. 11.2 p. 400`,
    "cm²",
    7.72,
    0.005,
    PRINTED,
    () => 1e4 * orificeArea((16 * 5) / 3600, 0.8, kg(1.2), pa(rajput12Drop())),
  ],
  [
    "jet for 7.2 kg/h at 15 to 1 on a 24 mm choke",
    `${RAJPUT}, ex. 11.3 p. 401`,
    "mm",
    1.32,
    0.005,
    PRINTED,
    () => {
      const drop = orificeDrop((15 * 7.2) / 3600, circle(0.024), 0.8, kg(101_300 / (287 * 300)));
      return 1000 * acrossOf(orificeArea(7.2 / 3600, 0.7, kg(750), pa(drop - lipPressure(750, 0.0042))));
    },
  ],
  [
    "suction for 5.45 kg/h through 2 mm²",
    `${RAJPUT}, ex. 11.4 p. 402`,
    "cm water",
    7.67,
    0.006,
    GAS,
    () => rajput14Drop() / 98.1,
  ],
  [
    "throat that goes with it at 15 to 1",
    `${RAJPUT}, ex. 11.4 p. 402`,
    "cm",
    2.86,
    0.005,
    PRINTED,
    () => 100 * acrossOf(orificeArea((15 * 5.45) / 3600, 0.8, kg(1.29), pa(rajput14Drop()))),
  ],
  [
    "air speed at which fuel starts, 6.35 mm lip",
    `${RAJPUT}, ex. 11.4 p. 402`,
    "m/s",
    8.34,
    0.006,
    GAS,
    () => startSpeed(kg(1.29), kg(720), m(0.00635)),
  ],
  [
    "air cleaner of 30 mm Hg, bowl at free air: 15 to 1 becomes",
    `${RAJPUT}, ex. 11.5 p. 403`,
    "A/F",
    13.69,
    0.01,
    PRINTED,
    () => 15 / freeVentRichness(20_000, fromMillimetreOfMercury(30)),
  ],
  [
    "throat for 4.6 kg/min at 80 m/s",
    `${RAJPUT}, ex. 11.6 p. 403`,
    "m",
    0.03,
    0.005,
    PRINTED,
    () => throatDiameter(4.6, 298, 80, 0.8),
  ],
  [
    "throat for 6 kg/min at 92 m/s",
    `${RAJPUT}, ex. 11.7 p. 404`,
    "cm",
    3.53,
    0.005,
    PRINTED,
    () => 100 * throatDiameter(6, 300, 92, 0.8),
  ],
  [
    "jet that goes with it at 3/4 of the drop (printed 0.0023, in m)",
    `${RAJPUT}, ex. 11.7 p. 404`,
    "mm",
    2.3,
    0.05,
    PRINTED,
    () => {
      const drop = 0.75 * (101_300 - throatAt(pa(101_300), 300 as Kelvin, 92 / 0.8).pressure);
      return 1000 * acrossOf(orificeArea(0.45 / 60, 0.6, kg(740), pa(drop)));
    },
  ],
  [
    "choke for 1489 cm³ at 4200 a minute",
    `${RAJPUT}, ex. 11.8 p. 404`,
    "mm",
    29.61,
    0.01,
    GAS,
    () => 1000 * rajput18().choke,
  ],
  [
    "jet that goes with it at 13 to 1",
    `${RAJPUT}, ex. 11.8 p. 404`,
    "mm",
    1.68,
    0.005,
    PRINTED,
    () => 1000 * rajput18().jet,
  ],
  [
    "18 mm throat, 1.2 mm jet, no lip",
    `${RAJPUT}, ex. 11.9 p. 405`,
    "A/F",
    11.35,
    0.005,
    PRINTED,
    () => venturi(0.018, 0.0012, 0.82, 0.65, 6500, 0),
  ],
  [
    "18 mm throat, 1.2 mm jet, 6 mm lip",
    `${RAJPUT}, ex. 11.9 p. 405`,
    "A/F",
    11.39,
    0.005,
    PRINTED,
    () => venturi(0.018, 0.0012, 0.82, 0.65, 6500, 0.006),
  ],
  [
    "air speed at which fuel starts, 6 mm lip",
    `${RAJPUT}, ex. 11.9 p. 405`,
    "m/s",
    8.58,
    0.005,
    PRINTED,
    () => startSpeed(kg(1.2), kg(750), m(0.006)),
  ],
  [
    "14 to 1 at sea level and 25 °C becomes, at 4500 m",
    `${RAJPUT}, ex. 11.11 p. 407`,
    "A/F",
    11.26,
    0.005,
    PRINTED,
    () =>
      14 *
      areaFactor(
        usual(dryAir(101_300 / (287 * 298))),
        usual(dryAir(101_300 / 10 ** (4500 / 19_300) / (287 * (298 - 28.8)))),
      ),
  ],
]);

const companion = read(
  [
    [
      "20 mm throat, 1.14 mm jet, no lip",
      "FOSSEE Scilab companion 443, ex. 8.5",
      "A/F",
      15.15,
      0.005,
      "worked by hand from the inputs; the file prints no answer",
      () => venturi(0.02, 0.00114, 0.8, 0.65, 8000, 0),
    ],
    [
      "20 mm throat, 1.14 mm jet, 5 mm lip",
      "FOSSEE Scilab companion 443, ex. 8.5",
      "A/F",
      15.19,
      0.005,
      "worked by hand from the inputs",
      () => venturi(0.02, 0.00114, 0.8, 0.65, 8000, 0.005),
    ],
    [
      "air speed at which fuel starts, 5 mm lip",
      "FOSSEE Scilab companion 443, ex. 8.5",
      "m/s",
      7.83,
      0.005,
      "worked by hand from the inputs",
      () => startSpeed(kg(1.2), kg(750), m(0.005)),
    ],
  ],
  "computed by hand",
);

export const TEXTBOOK_CARBURETOR_CHECKS: readonly ReferenceCheck[] = [...printed, ...companion];
