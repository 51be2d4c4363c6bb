import { describe, expect, test } from "vitest";
import { boreJet, dryAir, fitted, flowJet, inAir, mm, NEEDLE } from "../metering/test-situations.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { feelsTheSame, partsKey, situationKey } from "./situation-key.ts";
import { FOUND } from "./test-stories.ts";

const with_ = (parts: Partial<Setup>): Setup => ({ ...FOUND.setup, ...parts });
const screw = (turnsOut: number) => known({ kind: "air" as const, turnsOut });

describe("the key of the parts", () => {
  const setups: readonly Setup[] = [
    FOUND.setup,
    with_({ pilot: known(boreJet(45)) }),
    with_({ main: known(boreJet(180)) }),
    with_({ main: known(flowJet(175)) }),
    with_({ main: known({ ...boreJet(175), maker: "Theirs" }) }),
    with_({ needle: known({ ...NEEDLE, marks: "N2" }) }),
    with_({ needle: known({ ...NEEDLE, profile: { ...NEEDLE.profile!, straightDiameter: mm(2.5) } }) }),
    with_({ needle: known({ ...NEEDLE, profile: null }) }),
    with_({ clip: known(4) }),
    with_({ needleJet: known(mm(2.72)) }),
    with_({ cutaway: known(mm(4)) }),
    with_({ screw: screw(2) }),
    with_({ fuelLift: known(mm(14)) }),
    ...(["pilot", "main", "needle", "clip", "needleJet", "cutaway", "screw", "fuelLift"] as const).map(
      (part) => with_({ [part]: UNKNOWN }),
    ),
  ];

  test("differs wherever a metering part differs, is of another make, or is not known", () => {
    expect(new Set(setups.map(partsKey)).size).toBe(setups.length);
  });

  test("is the same for the same parts, however they came to be known", () => {
    expect(partsKey(with_({ main: known(boreJet(175), "told"), screw: screw(1.5) }))).toBe(
      partsKey(FOUND.setup),
    );
    expect(partsKey(with_({ mainAirJet: UNKNOWN }))).toBe(partsKey(FOUND.setup));
  });

  test("keeps neighbouring parts apart: a number never runs into the next", () => {
    const a = with_({ clip: known(1), needleJet: known(mm(11)) });
    const b = with_({ clip: known(1.1), needleJet: UNKNOWN });
    expect(partsKey(a).split("|")).toHaveLength(8);
    expect(partsKey(a)).not.toBe(partsKey(b));
  });
});

describe("what feels the same", () => {
  test("air within 4 % of density, for the mixture goes by its root; the same parts only", () => {
    const air = (density: number) => inAir(dryAir(density), FOUND);
    expect(feelsTheSame(air(1.2), air(1.2 * Math.exp(0.039)))).toBe(true);
    expect(feelsTheSame(air(1.2), air(1.2 * Math.exp(-0.039)))).toBe(true);
    expect(feelsTheSame(air(1.2), air(1.2 * Math.exp(0.041)))).toBe(false);
    expect(feelsTheSame(air(1.2), air(1.2 * Math.exp(-0.041)))).toBe(false);
    expect(feelsTheSame(FOUND, fitted({ clip: known(4) }, FOUND))).toBe(false);
  });

  test("fuel within 2 % of its wanted air; oil in the fuel within two hundredths", () => {
    const fuel = (parts: Partial<typeof FOUND.fuel>) => ({ ...FOUND, fuel: { ...FOUND.fuel, ...parts } });
    expect(feelsTheSame(FOUND, fuel({ stoichiometricRatio: 14.6 * Math.exp(0.019) }))).toBe(true);
    expect(feelsTheSame(FOUND, fuel({ stoichiometricRatio: 14.6 * Math.exp(-0.021) }))).toBe(false);
    expect(feelsTheSame(FOUND, fuel({ fuelShare: 0.981 }))).toBe(true);
    expect(feelsTheSame(FOUND, fuel({ fuelShare: 0.979 }))).toBe(false);
    expect(situationKey(fuel({ fuelShare: 0.97 }))).not.toBe(situationKey(FOUND));
  });
});
