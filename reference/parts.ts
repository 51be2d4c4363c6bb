import {
  areaStep,
  checkGroove,
  clipLift,
  type FuelUse,
  fromCelsius,
  fromDegree,
  fromMillimetre,
  fuelEffect,
  type JetNumbering,
  jetArea,
  jetAreaRatio,
  type NeedleProfile,
  needleDiameter,
  needleFromMeasurements,
  openArea,
  outIs,
  stepsForArea,
  toMillimetre,
} from "@jetwright/core";
import { linearRegression, mean } from "simple-statistics";
import type { ReferenceCheck } from "./check.ts";

const ok = <Value>(outcome: { ok: true; value: Value } | { ok: false; detail: string }): Value => {
  if (!outcome.ok) throw new RangeError(outcome.detail);
  return outcome.value;
};

// Lift over bore, open area over full: the circular segment R² acos((R-h)/R) - (R-h) √(2Rh - h²), worked apart.
const segment: ReferenceCheck[] = (
  [
    [0.02, 0.0048, 5e-5],
    [0.04, 0.0134, 5e-5],
    [1 / 16, 0.026, 5e-4],
    [1 / 8, 0.072, 5e-4],
    [3 / 16, 0.13, 5e-4],
    [1 / 4, 0.196, 5e-4],
    [5 / 16, 0.267, 5e-4],
    [3 / 8, 0.343, 5e-4],
    [1 / 2, 0.5, 1e-12],
    [5 / 8, 0.6575, 6e-5],
    [3 / 4, 0.8045, 6e-5],
    [7 / 8, 0.928, 5e-4],
    [1, 1, 1e-12],
  ] as const
).map(([lift, want, within]) => ({
  name: `open area of a round bore at ${lift} of full lift`,
  source: "area of a circular segment, any table of geometry",
  standing: "computed by hand",
  unit: "of full area",
  want,
  within,
  because: within < 1e-9 ? "exact" : "rounding of the worked table",
  got: () => {
    const bore = { shape: "round", diameter: fromMillimetre(36) } as const;
    return openArea(bore, fromMillimetre(36 * lift)) / openArea(bore, fromMillimetre(36));
  },
}));

const steps: ReferenceCheck[] = (
  [
    ["bore", 100, 2, 4.0],
    ["bore", 100, 2.5, 5.1],
    ["bore", 130, 2.5, 3.9],
    ["bore", 150, 2.5, 3.4],
    ["bore", 175, 2.5, 2.9],
    ["bore", 175, 5, 5.8],
    ["bore", 200, 5, 5.1],
    ["bore", 38, 2, 10.8],
    ["bore", 42, 3, 14.8],
    ["bore", 45, 2, 9.1],
    ["bore", 48, 2, 8.5],
    ["flow", 120, 2.5, 2.1],
    ["flow", 150, 2.5, 1.7],
    ["flow", 200, 5, 2.5],
    ["flow", 300, 10, 3.3],
    ["flow", 400, 10, 2.5],
    ["flow", 17.5, 2.5, 14.3],
    ["flow", 25, 2.5, 10.0],
    ["flow", 35, 5, 14.3],
  ] as const
).map(([numbering, number, step, want]) => ({
  name: `${numbering} ${number} and ${step} more`,
  source: "area as the square of the bore, flow as the number; worked apart from this code",
  standing: "computed by hand",
  unit: "% of area",
  want,
  within: 0.0501,
  because: "rounding of the worked table",
  got: () => areaStep({ number, numbering }, step) * 100,
}));

const equivalents: ReferenceCheck[] = (
  [
    [200, 1.41],
    [300, 1.73],
    [400, 2.0],
    [17.5, 0.42],
    [25, 0.5],
    [35, 0.59],
  ] as const
).map(([number, want]) => ({
  name: `bore of a flow jet ${number}`,
  source: "0.4-0.5 m of fuel through 1.0 mm at a discharge coefficient of 0.75 gives 100-110 cm³ a minute",
  standing: "computed by hand",
  unit: "mm",
  want,
  within: 0.05,
  relative: true,
  because: "makers differ by about 5 % in number",
  got: () => Math.sqrt((jetArea({ number, numbering: "flow" }) * 4) / Math.PI) * 1e3,
}));

const petrol: FuelUse = { ethanol: 0, alkylate: 0, oilPerFuel: 0.02, temperature: fromCelsius(15) };
const inSteps = (to: Partial<FuelUse>): number =>
  stepsForArea(
    { number: 175, numbering: "bore" },
    ok(fuelEffect(petrol, { ...petrol, ...to })).areaFactor,
    2.5,
  );
const trade = "common practice, no source";
const yes = (name: string, got: () => boolean): ReferenceCheck => ({
  name,
  source: trade,
  standing: "common practice",
  unit: "1 is yes",
  want: 1,
  within: 0,
  because: "a sign, not a figure",
  got: () => (got() ? 1 : 0),
});

const rules: ReferenceCheck[] = [
  {
    name: "E10 instead of E0, main 175, every opening scaled",
    source: "air wanted 14.1 against 14.7: 4 % area, 2 % of a bore number, 3.5 on a 175",
    standing: "computed by hand",
    unit: "steps of 2.5",
    want: 3.5 / 2.5,
    within: 0.1,
    because: "the rule is rounded to a whole percent",
    got: () => inSteps({ ethanol: 0.1 }),
  },
  yes("50:1 to 30:1 is under half a step of 2.5 on a 175", () => {
    const size = inSteps({ oilPerFuel: 1 / 30 });
    return size > 0 && size < 0.51;
  }),
  yes("the higher the number, the bigger the hole", () =>
    (["bore", "flow"] as JetNumbering[]).every(
      (numbering) =>
        ok(jetAreaRatio({ number: 170, numbering, maker: "" }, { number: 175, numbering, maker: "" })).ratio >
        1,
    ),
  ),
  yes("a lower groove lifts the needle", () => {
    const needle = { grooves: 5, groovePitch: fromMillimetre(0.9) };
    return clipLift(needle, 3) > clipLift(needle, 2);
  }),
  yes("grooves count 1 at the top to 5 at the bottom", () => {
    const needle = { grooves: 5 };
    return (
      checkGroove(needle, 1).ok &&
      checkGroove(needle, 5).ok &&
      !checkGroove(needle, 0).ok &&
      !checkGroove(needle, 6).ok
    );
  }),
  yes("air screw out is leaner, fuel screw out is richer", () => outIs("air") < 0 && outIs("fuel") > 0),
];

const needle: NeedleProfile = {
  straightDiameter: fromMillimetre(2.52),
  tapers: [{ start: fromMillimetre(24.3), includedAngle: fromDegree(1.5) }],
  diameterSd: fromMillimetre(0.001),
};
// Fixed errors of reading, in µm, made up.
const ERRORS = [1, -2, 3, 0, -1, 2, -3, 1, 2, -2, 0, 1, -1, 3, -2, 2, 0, -3, 1, -1];
const readings = ERRORS.map((error, i) => {
  const at = fromMillimetre(6 + 2 * i);
  return {
    belowTopGroove: at,
    diameter: fromMillimetre(toMillimetre(needleDiameter(needle, at)) + error / 1000),
  };
});
const points = readings.map((r) => [toMillimetre(r.belowTopGroove), toMillimetre(r.diameter)] as const);
const straight = () => mean(points.filter(([x]) => x < 24.3).map(([, y]) => y));
const taper = () => linearRegression(points.filter(([x]) => x > 24.3).map(([x, y]) => [x, y]));
const found = () => ok(needleFromMeasurements(readings, fromMillimetre(0.003), fromMillimetre(0)));
const REGRESSION =
  "simple-statistics 7.10.1, mean and linearRegression of the readings above and below the known bend";
const needleFit: ReferenceCheck[] = [
  {
    name: "straight diameter of a measured needle",
    source: REGRESSION,
    standing: "second library",
    unit: "mm",
    want: straight(),
    within: 1e-9,
    because: "the same least squares where the two stretches cross between their readings",
    got: () => toMillimetre(found().profile.straightDiameter),
  },
  {
    name: "taper of a measured needle",
    source: REGRESSION,
    standing: "second library",
    unit: "degrees",
    want: (2 * Math.atan(-taper().m / 2) * 180) / Math.PI,
    within: 1e-8,
    because: "the same least squares where the two stretches cross between their readings",
    got: () => (found().profile.tapers[0]!.includedAngle * 180) / Math.PI,
  },
  {
    name: "start of the taper of a measured needle",
    source: REGRESSION,
    standing: "second library",
    unit: "mm",
    want: (straight() - taper().b) / taper().m,
    within: 1e-7,
    because: "where the two lines cross",
    got: () => toMillimetre(found().profile.tapers[0]!.start),
  },
];

export const PARTS_CHECKS: readonly ReferenceCheck[] = [
  ...segment,
  ...steps,
  ...equivalents,
  ...rules,
  ...needleFit,
];
