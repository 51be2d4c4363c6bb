import fc from "fast-check";
import { expect, test } from "vitest";
import { fromCelsius } from "../units/convert.ts";
import type { KgPerCubicMetre } from "../units/quantity.ts";
import { type FuelEffect, fuelEffect, shiftText } from "./fuel-effect.ts";
import type { FuelUse } from "./fuel-use.ts";

const plain: FuelUse = { ethanol: 0, alkylate: 0, oilPerFuel: 0.02, temperature: fromCelsius(15) };
const effect = (to: Partial<FuelUse>, from: Partial<FuelUse> = {}): FuelEffect => {
  const outcome = fuelEffect({ ...plain, ...from }, { ...plain, ...to });
  if (!outcome.ok) throw new Error(outcome.detail);
  return outcome.value;
};

const anyUse = fc.record({
  ethanol: fc.double({ min: 0, max: 0.3, noNaN: true }),
  alkylate: fc.double({ min: 0, max: 0.7, noNaN: true }),
  oilPerFuel: fc.double({ min: 0, max: 0.1, noNaN: true }),
  temperature: fc.double({ min: -20, max: 50, noNaN: true }).map(fromCelsius),
});

test("the same fuel changes nothing, exactly", () => {
  fc.assert(
    fc.property(anyUse, (use) => {
      const same = effect(use, use);
      expect(same.shift).toBe(0);
      expect(same.areaFactor).toBe(1);
      expect(same.words).toEqual([]);
    }),
    { seed: 3, numRuns: 100 },
  );
});

test("there and back cancels, and the area factor undoes the shift", () => {
  fc.assert(
    fc.property(anyUse, anyUse, (a, b) => {
      const there = effect(b, a);
      expect(there.shift + effect(a, b).shift).toBeCloseTo(0, 12);
      expect(Math.exp(there.shift) * there.areaFactor).toBeCloseTo(1, 12);
      expect(there.viscosityShift.pilot).toBeCloseTo((there.viscosityShift.main * 10) / 3, 12);
    }),
    { seed: 4, numRuns: 100 },
  );
});

test("signs: ethanol leaner, oil leaner, warm fuel leaner, thick fuel less of it", () => {
  expect(effect({ ethanol: 0.1 }).shift).toBeLessThan(-0.03);
  expect(effect({ oilPerFuel: 0.05 }).shift).toBeLessThan(-0.02);
  expect(effect({ temperature: fromCelsius(40) }).shift).toBeCloseTo(-0.0155, 3);
  expect(effect({ temperature: fromCelsius(0) }).viscosityShift.main).toBeLessThan(0);
});

test("oil that burns along hardly changes anything", () => {
  const more = effect({ oilPerFuel: 1 / 30 });
  expect(more.shift).toBeCloseTo(Math.log(0.96513 / 0.97878), 4);
  expect(more.shiftIfOilBurns).toBeGreaterThan(0);
  expect(more.shiftIfOilBurns).toBeLessThan(0.0015);
});

test("words say what there is less of, never a leaner oil", () => {
  expect(effect({ oilPerFuel: 1 / 30 }).words).toEqual([
    expect.stringMatching(/^More oil means less petrol.*leaner/),
  ]);
  expect(effect({ oilPerFuel: 0.01 }).words).toEqual([
    expect.stringMatching(/^Less oil means more petrol.*richer/),
  ]);
  expect(effect({ ethanol: 0.1 }).words).toEqual([
    expect.stringMatching(/^More ethanol brings more.*3.7 % leaner/),
  ]);
  expect(effect({}, { ethanol: 0.1 }).words).toEqual([
    expect.stringMatching(/^Less ethanol brings less.*3.9 % richer/),
  ]);
  expect(effect({ alkylate: 1 }).words).toEqual([expect.stringMatching(/Alkylate.*0.4 % leaner/)]);
  expect(effect({ temperature: fromCelsius(40) }).words).toEqual([
    expect.stringMatching(/^Warmer.*1.5 % leaner/),
  ]);
  expect(effect({ temperature: fromCelsius(-5) }).words).toEqual([expect.stringMatching(/^Colder.*richer/)]);
  expect(effect({ petrolDensity: 730 as KgPerCubicMetre }).words).toEqual([
    expect.stringMatching(/^Petrol of another density: 1 % leaner/),
  ]);
  expect(effect({}, { petrolDensity: 730 as KgPerCubicMetre }).words).toEqual([
    expect.stringMatching(/^Petrol of another density: 1 % richer/),
  ]);
});

test("alcohol fuels are refused on either side", () => {
  expect(fuelEffect(plain, { ...plain, ethanol: 0.85 })).toMatchObject({
    ok: false,
    reason: "outside the tool",
  });
  expect(fuelEffect({ ...plain, ethanol: 0.85 }, plain)).toMatchObject({
    ok: false,
    reason: "outside the tool",
  });
});

test("shift in words", () => {
  expect(shiftText(0)).toBe("no change");
  expect(shiftText(0.0004)).toBe("no change");
  expect(shiftText(Math.log(1.05))).toBe("5 % richer");
  expect(shiftText(Math.log(0.963))).toBe("3.7 % leaner");
});
