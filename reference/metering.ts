import {
  type AirState,
  airAt,
  airFuelRatio,
  areaFactor,
  compare,
  correctFor,
  freeVentRichness,
  fromCelsius,
  fromMillimetreOfMercury,
  intakeRestriction,
  type Jet,
  type Kelvin,
  type KgPerCubicMetre,
  known,
  lipPressure,
  type Metre,
  OPENINGS,
  type Opening,
  type Outcome,
  orificeArea,
  orificeDrop,
  type Pascal,
  type Setup,
  type Shares,
  type Situation,
  type SquareMetre,
  saturationPressure,
  shares,
  standardPressure,
  startSpeed,
  throatAt,
  totalAt,
  UNKNOWN,
} from "@jetwright/core";
import type { ReferenceCheck } from "./check.ts";

/** The value of an outcome that a check expects. */
function sure<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.detail);
  return outcome.value;
}

const kg = (x: number) => x as KgPerCubicMetre;
const square = (x: number) => x as SquareMetre;
const m = (x: number) => x as Metre;
const mm = (x: number) => (x / 1000) as Metre;
const pa = (x: number) => x as Pascal;
const circle = (diameter: number) => square((Math.PI / 4) * diameter * diameter);
const acrossOf = (area: number) => Math.sqrt((4 * area) / Math.PI);

// --- textbook carburetors ---------------------------------------------------------------------------------

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

type Row = readonly [
  name: string,
  source: string,
  unit: string,
  want: number,
  within: number,
  because: string,
  got: () => number,
];
const read = (rows: readonly Row[], standing: ReferenceCheck["standing"] = "read"): ReferenceCheck[] =>
  rows.map(([name, source, unit, want, within, because, got]) => ({
    name,
    source,
    standing,
    unit,
    want,
    within,
    because,
    got,
  }));

const textbook = read([
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

// --- a slide carburetor with parts of no maker -------------------------------------------------------------

const boreJet = (number: number): Jet => ({ number, numbering: "bore", maker: "" });
const flowJet = (number: number): Jet => ({ number, numbering: "flow", maker: "" });

/** A two-stroke body with a needle nobody has measured; 36 mm, 165, 45, 2.70 is a published setting. */
function body(diameter: number, main: Jet): Setup {
  return {
    body: {
      bore: { shape: "round", diameter: mm(diameter) },
      screwKind: "air",
      nozzle: "primary",
      seatToJet: null,
      idleLift: null,
      bowlVent: "free air",
    },
    pilot: known(boreJet(45)),
    main: known(main),
    needle: known({ marks: "any", grooves: 5, groovePitch: mm(0.9), profile: null }),
    clip: known(3),
    needleJet: known(mm(2.7)),
    cutaway: known(mm(3.5)),
    screw: known({ kind: "air", turnsOut: 1.5 }),
    fuelLift: UNKNOWN,
    mainAirJet: UNKNOWN,
    pilotAirJet: UNKNOWN,
  };
}

const PETROL = { density: kg(740), stoichiometricRatio: 14.6, fuelShare: 1, viscosityRatio: 1 };
const usual = (air: AirState, setup: Setup = body(36, boreJet(165))): Situation => ({
  setup,
  air,
  fuel: PETROL,
});

function dryAir(density: number): AirState {
  return { ...airAt(fromCelsius(15), pa(101_325), 0), density: kg(density), dryDensity: kg(density) };
}
const dryAt = (height: number, celsius: number): AirState =>
  airAt(fromCelsius(celsius), standardPressure(m(height)), 0);
/** Isothermal pressure law at 15 °C, which the published table was evidently made with. */
const isothermalAt = (height: number, celsius: number): AirState =>
  airAt(fromCelsius(celsius), pa(101_325 * Math.exp(-height / 8434)), 0);

/** Main jet when every fuel opening is scaled, from one air to another. */
const scaled = (main: Jet, from: AirState, to: AirState): number =>
  sure(correctFor(usual(from, body(36, main)), to, PETROL)).everyOpening.main!;
/** Main jet when it is changed alone. */
const alone = (situation: Situation, to: AirState): number =>
  sure(sure(correctFor(situation, to, PETROL)).mainAlone).setup.main.part!.number;

// --- published correction table ---------------------------------------------------------------------------

const BING =
  "Bing, table of main jet factors, printed at powerboxer.de/gemischaufbereitung/392-vergaser-hkorrektur";
const BING_HEIGHTS = [0, 500, 1000, 1500, 2000, 2500, 3000, 3500, 4000];
const BING_TABLE: readonly (readonly [celsius: number, factors: readonly number[]])[] = [
  [-30, [104, 103, 101, 100, 98, 97, 95, 94, 93]],
  [-20, [103, 102, 100, 99, 97, 96, 95, 93, 92]],
  [-10, [102, 101, 99, 98, 96, 95, 94, 92, 91]],
  [0, [101, 100, 98, 97, 95, 94, 93, 91, 90]],
  [10, [100, 99, 97, 96, 95, 93, 92, 91, 89]],
  [15, [100, 99, 97, 96, 94, 93, 92, 90, 89]],
  [20, [100, 98, 97, 95, 94, 93, 91, 90, 88]],
  [30, [99, 97, 96, 94, 93, 92, 90, 89, 88]],
  [40, [98, 96, 95, 94, 92, 91, 90, 88, 87]],
  [50, [97, 96, 94, 93, 92, 90, 89, 88, 86]],
];
const CELLS = BING_TABLE.flatMap(([celsius, factors]) =>
  factors.map((factor, i) => ({ celsius, height: BING_HEIGHTS[i]!, factor })),
);
const bing = (air: typeof dryAt) =>
  CELLS.map(({ celsius, height, factor }) => scaled(boreJet(100), air(0, 15), air(height, celsius)) - factor);

const published: ReferenceCheck[] = [
  ...read([
    [
      "cells of the factor table within 1, standard pressure",
      BING,
      "of 90",
      90,
      0,
      "the table is in whole numbers and used another pressure law",
      () => bing(dryAt).filter((gap) => Math.abs(gap) <= 1).length,
    ],
    [
      "cells of the factor table exact, isothermal pressure",
      BING,
      "of 90",
      85,
      5,
      "whole numbers; its own law is not printed, at least 80 should round alike",
      () => bing(isothermalAt).filter((gap) => Math.round(gap) === 0).length,
    ],
    [
      "150 at 500 m and 20 °C becomes, at 2500 m and 0 °C",
      BING,
      "number",
      144,
      1,
      "the table works in whole numbers; its unrounded answer is 143.9",
      () => scaled(boreJet(150), dryAt(500, 20), dryAt(2500, 0)),
    ],
    [
      "methanol for petrol: main jet number up by",
      "A carburetor maker's tuning guide, section 5.1 (petrol 14.5, methanol 6.5)",
      "%",
      50,
      1,
      "printed as 50 %; leaves density out, and so does the check",
      () => {
        const from = { ...usual(dryAir(1.225)), fuel: { ...PETROL, stoichiometricRatio: 14.5 } };
        const to = { ...PETROL, stoichiometricRatio: 6.5 };
        return (sure(correctFor(from, from.air, to)).everyOpening.main! / 165 - 1) * 100;
      },
    ],
    [
      "flow-numbered main jet of 300, per 1000 ft: down by",
      "jetsrus.com, rejetting page: six for each 1000 ft, large flow-numbered jets",
      "number",
      6,
      0.5,
      "a shop's rule in whole numbers, for jets of about 300",
      () => 300 - alone(usual(dryAt(0, 15), body(36, flowJet(300))), dryAt(304.8, 15 - 1.98)),
    ],
    [
      "flow-numbered main jet of 300, per 10 °F: down by",
      "jetsrus.com, rejetting page: four for each 10 °F",
      "number",
      4,
      0.5,
      "a shop's rule in whole numbers, for jets of about 300",
      () => 300 - alone(usual(dryAt(0, 15), body(36, flowJet(300))), dryAt(0, 15 + 10 / 1.8)),
    ],
    [
      "27 mm body, summer main jet 115: winter",
      "Moto Guzzi Superalce manual, carburetor chapter: 115 in summer, 118 in winter",
      "number",
      118,
      1,
      "the temperatures are not printed; 28 and 5 °C taken",
      () => alone(usual(dryAt(0, 28), body(27, boreJet(115))), dryAt(0, 5)),
    ],
    [
      "main jet area that an intake silencer takes away",
      "Rotax 277 and 447, 36 mm bodies: 148 to 140 and 165 to 155 (raanz.org.nz, main jet list); mean of the two",
      "%",
      -11.1,
      1.5,
      "the restriction is not printed; 260 Pa, the middle of an estimated 240 to 280",
      () => (sure(intakeRestriction(usual(dryAir(1.225)), pa(260))).mainAreaFactor! - 1) * 100,
    ],
  ]),
  ...read(
    [
      [
        "main jet number alone goes as density to the power",
        "Shop rules for changing the main jet only: 0.25 if it governed alone, up to 0.4 seen",
        "",
        0.345,
        0.055,
        "shop rules differ; the range 0.29 to 0.40 holds most of them",
        () => Math.log(alone(usual(dryAir(1.225)), dryAir(1)) / 165) / Math.log(1 / 1.225),
      ],
      [
        "the same for flow numbers, over bore numbers",
        "Area goes as the number, or as its square",
        "",
        2,
        1e-9,
        "exact",
        () =>
          Math.log(alone(usual(dryAir(1.225), body(36, flowJet(272.25))), dryAir(1)) / 272.25) /
          Math.log(alone(usual(dryAir(1.225)), dryAir(1)) / 165),
      ],
    ],
    "common practice",
  ),
];

// --- moist air ---------------------------------------------------------------------------------------------

const moist = (celsius: number): AirState => {
  const temperature = fromCelsius(celsius);
  return airAt(temperature, pa(101_325), (1.004 * saturationPressure(temperature)) / 101_325);
};
const oxygenLost = (celsius: number) =>
  (1 - moist(celsius).dryDensity / airAt(fromCelsius(celsius), pa(101_325), 0).dryDensity) * 100;
const jetAreaIn = (celsius: number) =>
  areaFactor(usual(airAt(fromCelsius(celsius), pa(101_325), 0)), usual(moist(celsius)));

const CIPM = "CIPM-2007 (Picard and others, Metrologia 45, 2008), dry air in saturated air over dry air";
const humidity = read(
  [
    [
      "oxygen lost to saturated moisture, 20 °C",
      CIPM,
      "%",
      2.31,
      0.02,
      "enhancement factor rounded to 1.004",
      () => oxygenLost(20),
    ],
    [
      "oxygen lost to saturated moisture, 30 °C",
      CIPM,
      "%",
      4.2,
      0.03,
      "enhancement factor rounded to 1.004",
      () => oxygenLost(30),
    ],
    [
      "jet area in saturated air, 20 °C",
      `${CIPM}; area as dry density over the root of density`,
      "",
      0.98116,
      2e-4,
      "enhancement factor rounded to 1.004",
      () => jetAreaIn(20),
    ],
    [
      "jet area in saturated air, 30 °C",
      `${CIPM}; area as dry density over the root of density`,
      "",
      0.96569,
      3e-4,
      "enhancement factor rounded to 1.004",
      () => jetAreaIn(30),
    ],
  ],
  "computed by hand",
);

// --- which part governs where ------------------------------------------------------------------------------

const RANGES =
  "OSSA 5-speed manual pp. 89-107 and Velocette MAC guide 1965: pilot to 1/8, slide 1/8 to 1/4, needle 1/4 to 3/4, main above";
const parts = (): readonly Shares[] => sure(shares(usual(dryAir(1.225))));
const led = (by: Shares["governs"]): readonly number[] =>
  parts().flatMap((at) => (at.governs === by ? [at.opening as number] : []));
const STEP = "one step of our openings; published ranges overlap by as much";

const ranges = read([
  ["pilot circuit governs up to", RANGES, "opening", 1 / 8, 1 / 16, STEP, () => Math.max(...led("pilot"))],
  [
    "slide says most at",
    RANGES,
    "opening",
    3 / 16,
    1 / 16,
    "the published stretch is 1/8 to 1/4",
    () => parts().reduce((best, at) => (at.slideStep > best.slideStep ? at : best)).opening,
  ],
  ["needle governs from", RANGES, "opening", 1 / 4, 1 / 16, STEP, () => Math.min(...led("needle"))],
  ["needle governs up to", RANGES, "opening", 3 / 4, 1 / 8, STEP, () => Math.max(...led("needle"))],
  [
    "main jet governs from",
    `Yamaha TY80B (1975) p. 115 and ${RANGES}`,
    "opening",
    3 / 4,
    1 / 8,
    STEP,
    () => Math.min(...led("main")),
  ],
]);

// --- facts of the trade ------------------------------------------------------------------------------------

const TRADE = "Common practice, no source";
const changed = (change: Partial<Setup>, opening: number): number => {
  const from = usual(dryAir(1.225));
  const { shift } = sure(compare(from, { ...from, setup: { ...from.setup, ...change } }));
  return Math.sign(totalAt(shift, OPENINGS.indexOf(opening as Opening)));
};
const SIGN = "a sign: 1 is richer, -1 leaner, 0 neither";

const trade = read(
  [
    [
      "higher main jet number at full",
      TRADE,
      "sign",
      1,
      0,
      SIGN,
      () => changed({ main: known(boreJet(170)) }, 1),
    ],
    [
      "higher pilot jet number when closed",
      TRADE,
      "sign",
      1,
      0,
      SIGN,
      () => changed({ pilot: known(boreJet(48)) }, 0),
    ],
    [
      "higher clip (towards groove 1) lowers the needle: at 1/2",
      TRADE,
      "sign",
      -1,
      0,
      SIGN,
      () => changed({ clip: known(2) }, 1 / 2),
    ],
    ["higher clip when closed", TRADE, "sign", 0, 0, SIGN, () => changed({ clip: known(2) }, 0)],
    ["bigger cutaway at 1/8", TRADE, "sign", -1, 0, SIGN, () => changed({ cutaway: known(mm(4)) }, 1 / 8)],
    [
      "air screw out when closed",
      TRADE,
      "sign",
      -1,
      0,
      SIGN,
      () => changed({ screw: known({ kind: "air", turnsOut: 2 }) }, 0),
    ],
    [
      "fuel screw out when closed",
      TRADE,
      "sign",
      1,
      0,
      SIGN,
      () => {
        const setup = { ...body(36, boreJet(165)), screw: known({ kind: "fuel" as const, turnsOut: 1.5 }) };
        const from = usual(dryAir(1.225), { ...setup, body: { ...setup.body, screwKind: "fuel" } });
        const to = {
          ...from,
          setup: { ...from.setup, screw: known({ kind: "fuel" as const, turnsOut: 2 }) },
        };
        return Math.sign(totalAt(sure(compare(from, to)).shift, 0));
      },
    ],
    [
      "metering parts that lead somewhere: pilot jet, needle, main jet, and the slide with 2 % a half millimetre",
      TRADE,
      "parts",
      4,
      0,
      "a count",
      () => new Set(parts().flatMap((at) => [at.governs, ...(at.slideStep > 0.02 ? ["slide"] : [])])).size,
    ],
  ],
  "common practice",
);

export const METERING_CHECKS: readonly ReferenceCheck[] = [
  ...textbook,
  ...companion,
  ...published,
  ...humidity,
  ...ranges,
  ...trade,
];
