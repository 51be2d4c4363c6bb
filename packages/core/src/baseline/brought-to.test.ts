import { describe, expect, test } from "vitest";
import { compare } from "../metering/compare.ts";
import {
  boreJet,
  dryAir,
  fitted,
  flowJet,
  HERE,
  mm,
  NEEDLE,
  PETROL,
  SETUP,
} from "../metering/test-situations.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import { broughtTo } from "./brought-to.ts";

const THIN = dryAir(1);
const to = (from = HERE, air = THIN, fuel = PETROL) => {
  const result = broughtTo(from, air, fuel);
  if (!result.ok) throw new Error(result.detail);
  return result.value;
};

describe("a setup brought to other air", () => {
  test("to its own air and fuel: the same numbers, no groove, no doubt", () => {
    const { main, pilot, grooves } = to(HERE, HERE.air);
    expect(main?.number).toBeCloseTo(175, 10);
    expect(pilot?.number).toBeCloseTo(42, 10);
    expect(grooves).toBeCloseTo(0, 10);
    expect(main?.sd).toBe(0);
  });

  test("the jets it names hold the mixture at full throttle and closed", () => {
    const { main, pilot } = to();
    const there = {
      ...fitted({ main: known(boreJet(main!.number)), pilot: known(boreJet(pilot!.number)) }),
      air: THIN,
    };
    const compared = compare(HERE, there);
    if (!compared.ok) throw new Error(compared.detail);
    expect(compared.value.at[10]!.logRatio).toBeCloseTo(0, 10);
    // The main jet has next to no say closed; the pilot was found before it.
    expect(Math.abs(compared.value.at[0]!.logRatio)).toBeLessThan(0.002);
    expect(compared.value.at[6]!.logRatio).toBeGreaterThan(0.02);
  });

  test("and the clip it names takes away what is left at 1/2", () => {
    const { main, pilot, grooves } = to();
    expect(grooves).toBeLessThan(-0.5);
    const there = {
      ...fitted({
        main: known(boreJet(main!.number)),
        pilot: known(boreJet(pilot!.number)),
        clip: known(3 + grooves!),
      }),
      air: THIN,
    };
    const compared = compare(HERE, there);
    if (!compared.ok) throw new Error(compared.detail);
    expect(Math.abs(compared.value.at[6]!.logRatio)).toBeLessThan(0.006);
  });

  test("the slope is what one more in the log of the number does: 1.3 to 1.4 by bore, half of it by flow", () => {
    const { main } = to();
    expect(main!.slope).toBeGreaterThan(1.2);
    expect(main!.slope).toBeLessThan(1.5);
    const flow = to(fitted({ main: known(flowJet(306)) })).main!;
    expect(flow.slope).toBeCloseTo(main!.slope / 2, 1);
    expect(Math.log(flow.number / 306)).toBeCloseTo(2 * Math.log(main!.number / 175), 2);
    // Air good to a tenth of the log of density, through that slope.
    expect(main!.sd).toBeCloseTo((0.1 * Math.log(1.225)) / main!.slope, 4);
  });

  test("what is not known is passed over, and a bottom groove is still worth a groove", () => {
    const bare = to(fitted({ main: UNKNOWN, pilot: UNKNOWN, clip: UNKNOWN }));
    expect(bare).toEqual({ main: null, pilot: null, grooves: null });
    const bottom = to(fitted({ clip: known(5) })).grooves!;
    expect(bottom).toBeLessThan(-0.5);
    expect(bottom).toBeGreaterThan(-3);
  });

  test("no main jet can make up for a needle that leaves no gap; a setup that cannot be is refused", () => {
    const tight = {
      ...SETUP,
      needleJet: known(mm(2.53)),
      needle: known({
        ...NEEDLE,
        profile: { straightDiameter: mm(2.52), tapers: [], diameterSd: mm(0.005) },
      }),
    };
    expect(to({ ...HERE, setup: tight }, dryAir(1.6)).main).toBeNull();
    const wrong = broughtTo(fitted({ main: known(boreJet(2)) }), THIN, PETROL);
    expect(wrong.ok).toBe(false);
  });
});
