import { describe, expect, test } from "vitest";
import { fromCelsius } from "../units/convert.ts";
import type { KgPerCubicMetre } from "../units/quantity.ts";
import type { FuelState } from "./fuel-state.ts";
import { type FuelUse, fuelState, fuelWarnings } from "./fuel-use.ts";

const plain: FuelUse = { ethanol: 0, alkylate: 0, oilPerFuel: 0, temperature: fromCelsius(15) };
const state = (change: Partial<FuelUse>): FuelState => {
  const outcome = fuelState({ ...plain, ...change });
  if (!outcome.ok) throw new Error(outcome.detail);
  return outcome.value;
};
const kg = (x: number) => x as KgPerCubicMetre;

test("plain petrol at 15 °C is its own density, all fuel", () => {
  expect(state({})).toMatchObject({ density: 745, fuelShare: 1 });
  expect(state({ petrolDensity: kg(730) }).density).toBeCloseTo(730, 10);
});

test("oil weighs in by mass and swells less than petrol when warm", () => {
  const mixed = state({ oilPerFuel: 0.02 });
  expect(mixed.fuelShare).toBeCloseTo(745 / (745 + 0.02 * 870), 12);
  expect(mixed.density).toBeCloseTo((745 + 0.02 * 870) / 1.02, 9);
  expect(mixed.stoichiometricRatio).toBe(state({}).stoichiometricRatio);
  const warm = state({ oilPerFuel: 0.02, temperature: fromCelsius(40) });
  const neatWarm = state({ temperature: fromCelsius(40) }).density;
  expect(warm.density).toBeCloseTo((745 + 17.4) / (745 / neatWarm + 0.02 / (1 - 7e-4 * 25)), 9);
});

test("viscosity comes with temperature, ethanol and oil", () => {
  expect(state({ temperature: fromCelsius(20) }).viscosityRatio).toBeCloseTo(1, 12);
  expect(state({ oilPerFuel: 0.05 }).viscosityRatio).toBeGreaterThan(
    state({ oilPerFuel: 0.02 }).viscosityRatio,
  );
  expect(state({ ethanol: 0.1 }).viscosityRatio).toBeGreaterThan(state({}).viscosityRatio);
});

test("alkylate and ethanol take the place of petrol", () => {
  expect(state({ alkylate: 1 }).density).toBeCloseTo(695, 9);
  expect(state({ alkylate: 0.5, ethanol: 0.1 }).density).toBeCloseTo(0.5 * 695 + 79.4 + 0.4 * 745, 9);
  expect(state({ alkylate: 0.9, ethanol: 0.1 }).density).toBeCloseTo(0.9 * 695 + 79.4, 9);
});

describe("refused, with what to do", () => {
  test.each([
    [{ ethanol: 0.85 }, "outside the tool", /float valve and the pilot/],
    [{ ethanol: 0.301 }, "outside the tool", /30.1 %/],
    [{ ethanol: 10 }, "ethanol", /1000 %/],
    [{ ethanol: -0.1 }, "ethanol", /0 to 100/],
    [{ ethanol: Number.NaN }, "ethanol", /NaN/],
    [{ alkylate: 1.1 }, "alkylate", /together/],
    [{ alkylate: 0.95, ethanol: 0.1 }, "alkylate", /together/],
    [{ alkylate: -0.1 }, "alkylate", /together/],
    [{ oilPerFuel: 0.21 }, "oil", /5:1/],
    [{ oilPerFuel: 50 }, "oil", /5:1/],
    [{ oilPerFuel: -0.01 }, "oil", /5:1/],
    [{ temperature: fromCelsius(61) }, "temperature", /unit/],
    [{ temperature: fromCelsius(-41) }, "temperature", /unit/],
    [{ petrolDensity: kg(0.745) }, "density", /kg\/l/],
    [{ petrolDensity: kg(901) }, "density", /kg\/l/],
  ] as const)("%o", (change, reason, detail) => {
    const outcome = fuelState({ ...plain, ...change });
    expect(outcome).toMatchObject({ ok: false, reason });
    if (!outcome.ok) expect(outcome.detail).toMatch(detail);
  });

  test("the limits themselves are taken", () => {
    for (const change of [
      { ethanol: 0.3 },
      { oilPerFuel: 0.2 },
      { alkylate: 1 },
      { temperature: fromCelsius(60) },
    ]) {
      expect(fuelState({ ...plain, ...change }).ok).toBe(true);
    }
  });
});

test("warnings name what is odd, and stay silent otherwise", () => {
  expect(fuelWarnings({ ...plain, oilPerFuel: 0.02 })).toEqual([]);
  expect(fuelWarnings({ ...plain, oilPerFuel: 1 / 100 })).toEqual([]);
  expect(fuelWarnings({ ...plain, petrolDensity: kg(640) })).toEqual([
    { code: "fuel-density", given: { kgPerM3: 640 } },
    { code: "petrol-density" },
  ]);
  expect(fuelWarnings({ ...plain, petrolDensity: kg(772) })).toEqual([
    { code: "fuel-density", given: { kgPerM3: 772 } },
  ]);
  expect(fuelWarnings({ ...plain, oilPerFuel: 1 / 150 })).toEqual([{ code: "little-oil" }]);
  expect(fuelWarnings({ ...plain, oilPerFuel: 1 / 10 })).toEqual([{ code: "much-oil" }]);
  expect(fuelWarnings({ ...plain, ethanol: 0.85 })).toEqual([]);
});
