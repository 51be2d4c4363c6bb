import { expect, test } from "vitest";
import { type Blend, type BlendPart, blendByMass, blendByVolume } from "./blend.ts";
import { stoichiometricRatioOf } from "./composition.ts";
import { NAMED_FUELS } from "./named-fuels.ts";

const { petrol, ethanol } = NAMED_FUELS;
const value = (outcome: ReturnType<typeof blendByVolume>): Blend => {
  if (!outcome.ok) throw new Error(outcome.detail);
  return outcome.value;
};
const parts = (share: number): BlendPart[] => [
  { fuel: petrol, share: 1 - share },
  { fuel: ethanol, share },
];

test("density by volume is the plain mean, by mass the harmonic one", () => {
  expect(value(blendByVolume(parts(0.5))).density).toBeCloseTo((745 + 794) / 2, 10);
  expect(value(blendByMass(parts(0.5))).density).toBeCloseTo(2 / (1 / 745 + 1 / 794), 10);
});

test("a blend by volume is the same blend by its masses", () => {
  const byVolume = value(blendByVolume(parts(0.2)));
  const ethanolMass = (0.2 * 794) / (0.8 * 745 + 0.2 * 794);
  const byMass = value(blendByMass(parts(ethanolMass)));
  expect(byMass.density).toBeCloseTo(byVolume.density, 9);
  expect(byMass.stoichiometricRatio).toBeCloseTo(byVolume.stoichiometricRatio, 12);
  expect(byMass.oxygenShare).toBeCloseTo(byVolume.oxygenShare, 12);
});

test("a single part stays itself", () => {
  const pure = value(blendByMass([{ fuel: ethanol, share: 1 }]));
  expect(pure.density).toBeCloseTo(794, 10);
  expect(pure.stoichiometricRatio).toBeCloseTo(stoichiometricRatioOf(ethanol.composition), 12);
});

test("shares that cannot be are refused with what was given", () => {
  for (const shares of [[0.5, 0.4], [1.2, -0.2], [0.6, 0.6], []]) {
    const outcome = blendByVolume(shares.map((share) => ({ fuel: petrol, share })));
    expect(outcome).toMatchObject({ ok: false, reason: "shares" });
  }
  expect(blendByMass([{ fuel: petrol, share: Number.NaN }])).toMatchObject({ reason: "shares" });
  expect(blendByMass([{ fuel: petrol, share: 0.5 }])).toMatchObject({
    detail: expect.stringMatching(/50 %/),
  });
});
