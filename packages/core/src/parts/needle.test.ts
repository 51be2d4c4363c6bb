import { expect, test } from "vitest";
import { fromDegree, fromMillimetre as mm } from "../units/convert.ts";
import { type NeedleProfile, needleDiameter } from "./needle.ts";

const profile: NeedleProfile = {
  straightDiameter: mm(2.52),
  tapers: [
    { start: mm(25), includedAngle: fromDegree(1.5) },
    { start: mm(40), includedAngle: fromDegree(3) },
  ],
  diameterSd: mm(0.003),
};

test("straight, then each taper takes off twice the tangent of its half angle a metre", () => {
  expect(needleDiameter(profile, mm(0))).toBeCloseTo(0.00252, 15);
  expect(needleDiameter(profile, mm(25))).toBeCloseTo(0.00252, 15);
  const first = 2 * Math.tan((0.75 * Math.PI) / 180);
  const second = 2 * Math.tan((1.5 * Math.PI) / 180);
  expect(needleDiameter(profile, mm(35)) * 1e3).toBeCloseTo(2.52 - 10 * first, 10);
  expect(needleDiameter(profile, mm(45)) * 1e3).toBeCloseTo(2.52 - 15 * first - 5 * second, 10);
});

test("never thinner than a tenth of a millimetre", () => {
  expect(needleDiameter(profile, mm(500))).toBe(1e-4);
});
