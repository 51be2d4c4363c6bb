import {
  type AirState,
  airAt,
  areaFactor,
  compare,
  correctFor,
  fromCelsius,
  intakeRestriction,
  type Jet,
  known,
  type Metre,
  OPENINGS,
  type Opening,
  type Outcome,
  type Pascal,
  type Setup,
  type Shares,
  type Situation,
  saturationPressure,
  shares,
  totalAt,
} from "@jetwright/core";
import type { ReferenceCheck } from "./check.ts";
import { read } from "./check-rows.ts";
import { body, boreJet, dryAir, dryAt, flowJet, isothermalAt, PETROL, usual } from "./slide-body.ts";

/** The value of an outcome that a check expects. */
function sure<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.detail);
  return outcome.value;
}

const mm = (x: number) => (x / 1000) as Metre;
const pa = (x: number) => x as Pascal;

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

export const METERING_CHECKS: readonly ReferenceCheck[] = [...published, ...humidity, ...ranges, ...trade];
