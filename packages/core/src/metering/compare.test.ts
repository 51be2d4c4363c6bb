import { describe, expect, test } from "vitest";
import { known, UNKNOWN } from "../parts/known.ts";
import type { NeedleProfile } from "../parts/needle.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import type { KgPerCubicMetre } from "../units/quantity.ts";
import { type Comparison, compare } from "./compare.ts";
import { pilotShareAt } from "./frame.ts";
import { shiftBetween, shiftsFrom } from "./shift.ts";
import type { Situation } from "./situation.ts";
import {
  BODY,
  boreJet,
  dryAir,
  FUEL_SCREW,
  fitted,
  flowJet,
  HERE,
  inAir,
  mm,
  NEEDLE,
  PETROL,
  type SETUP,
  withScrew,
} from "./test-situations.ts";

function compared(to: Situation, from: Situation = HERE): Comparison {
  const result = compare(from, to);
  if (!result.ok) throw new Error(result.detail);
  return result.value;
}
const logs = (to: Situation, from: Situation = HERE) => compared(to, from).at.map((at) => at.logRatio);
const percents = (to: Situation, from: Situation = HERE) =>
  compared(to, from).at.map((at) => (at.ratio - 1) * 100);
const reasonOf = (to: Situation, from: Situation = HERE) => {
  const result = compare(from, to);
  return result.ok ? "none" : result.reason;
};
const profile = NEEDLE.profile as NeedleProfile;
const otherNeedle = (change: Partial<NeedleProfile>, marks = "N2") =>
  known({ ...NEEDLE, marks, profile: { ...profile, ...change } });
const fuelScrew = fitted({}, { ...HERE, setup: FUEL_SCREW });

describe("signs (common practice, no source)", () => {
  test.each([
    ["a bigger main jet", fitted({ main: known(boreJet(180)) }), 10],
    ["a bigger pilot jet", fitted({ pilot: known(boreJet(44)) }), 0],
    ["a lower groove", fitted({ clip: known(4) }), 5],
    ["a thinner needle", fitted({ needle: otherNeedle({ straightDiameter: mm(2.51) }) }), 4],
    ["a bigger needle jet", fitted({ needleJet: known(mm(2.71)) }), 4],
    ["a lower cutaway", fitted({ cutaway: known(mm(3)) }), 2],
    ["a higher float level", fitted({ fuelLift: known(mm(11)) }), 1],
    ["an air screw turned in", withScrew(1), 0],
    ["thinner air", inAir(dryAir(1.1)), 5],
    ["denser fuel", { ...HERE, fuel: { ...PETROL, density: 760 as KgPerCubicMetre } }, 5],
    ["fuel that needs more air", { ...HERE, fuel: { ...PETROL, stoichiometricRatio: 15 } }, 5],
  ] as const)("%s is richer", (_name, to, opening) => {
    expect(logs(to)[opening]).toBeGreaterThan(0.001);
    for (const log of logs(to)) expect(log).toBeGreaterThanOrEqual(0);
    expect(logs(HERE, to)[opening]).toBeLessThan(-0.001);
  });

  test("a higher groove leans the middle and leaves closed alone", () => {
    const higher = logs(fitted({ clip: known(2) }));
    expect(higher[6]).toBeLessThan(-0.03);
    expect(Math.abs(higher[0]!)).toBe(0);
  });

  test("oil and ethanol lean the mixture", () => {
    expect(logs({ ...HERE, fuel: { ...PETROL, fuelShare: 0.97 } })[5]).toBeCloseTo(Math.log(0.97), 12);
    const e10 = logs({ ...HERE, fuel: { ...PETROL, stoichiometricRatio: 14.01 } });
    for (const log of e10) expect(log).toBeCloseTo(Math.log(14.01 / 14.6), 12);
  });

  test("moisture leans nothing of the depression but takes oxygen away", () => {
    const moist = { ...dryAir(1.225), dryDensity: (1.225 * 0.98) as KgPerCubicMetre };
    for (const log of logs(inAir(moist))) expect(log).toBeCloseTo(-Math.log(0.98), 12);
  });

  test("thicker fuel is leaner, most at the pilot", () => {
    const thick = logs({ ...HERE, fuel: { ...PETROL, viscosityRatio: 1.3 } });
    expect(thick[0]).toBeCloseTo(
      -Math.log(1.3) * (0.1 * pilotShareAt(0.045) + 0.03 * (1 - pilotShareAt(0.045))),
      12,
    );
    expect(thick[10]).toBeCloseTo(-Math.log(1.3) * (0.1 * 0.05 + 0.03 * 0.95), 6);
  });

  test("a fuel screw turned out is richer, and alike to an air screw turned in", () => {
    const out = logs(withScrew(2, fuelScrew), fuelScrew);
    expect(out[0]).toBeGreaterThan(0.02);
    expect(out[0]).toBeLessThan(0.05);
    expect(logs(withScrew(1, fuelScrew), fuelScrew)[0]).toBeLessThan(-0.02);
    expect(logs(withScrew(2))[0]).toBeLessThan(-0.02);
  });

  test("a fuel screw's outlet takes its share of the pilot jet's say", () => {
    const air = logs(fitted({ pilot: known(boreJet(43)) }))[0]!;
    const fuel = logs(fitted({ pilot: known(boreJet(43)) }, fuelScrew), fuelScrew)[0]!;
    // one third of the say lies with the outlet for a usual pilot at the usual turns
    expect(fuel / air).toBeGreaterThan(0.62);
    expect(fuel / air).toBeLessThan(0.68);
  });

  test("a flow number counts half of what a bore number counts", () => {
    const flow = fitted({ main: known(flowJet(306.25)), pilot: known(flowJet(42)) });
    const step = (n: number) => fitted({ main: known(flowJet(n)) }, flow);
    const bore = logs(fitted({ main: known(boreJet(176.75)) }));
    const area = logs(step(306.25 * 1.0201), flow);
    expect(area[10]).toBeCloseTo(bore[10]!, 12);
  });
});

describe("exactness", () => {
  test("the same situation gives exactly nothing, also from another copy of it", () => {
    const copy = structuredClone(HERE);
    for (const base of [HERE, fuelScrew]) {
      const result = compared(base === HERE ? copy : structuredClone(base), base);
      for (const at of result.at) {
        expect(at.logRatio).toBe(0);
        expect(at.ratio).toBe(1);
        expect(at.sd).toBe(0);
        for (const circuit of CIRCUITS) expect(Math.abs(at.byCircuit[circuit])).toBe(0);
      }
      for (const circuit of CIRCUITS) expect(result.firmness[circuit].word).toBe("unchanged");
    }
  });

  test("openings, shift and sums agree", () => {
    const to = fitted(
      { main: known(boreJet(165)), clip: known(2), cutaway: known(mm(4)) },
      inAir(dryAir(1.1)),
    );
    const result = compared(to);
    expect(result.at.map((at) => at.opening)).toEqual(OPENINGS);
    const shift = shiftBetween(HERE, to);
    expect(shift).toEqual({ ok: true, value: result.shift });
    const made = shiftsFrom(HERE);
    expect(made.ok && made.value(to)).toEqual(shift);
    result.at.forEach((at, i) => {
      expect(CIRCUITS.reduce((sum, circuit) => sum + at.byCircuit[circuit], 0)).toBe(at.logRatio);
      expect(at.ratio).toBeCloseTo(Math.exp(at.logRatio), 14);
      for (const circuit of CIRCUITS) expect(result.shift[circuit][i]).toBe(at.byCircuit[circuit]);
    });
  });

  test("each part's change lands in its own circuit", () => {
    const only = (to: Situation) =>
      CIRCUITS.filter((c) => compared(to).shift[c].some((x) => Math.abs(x) > 1e-12));
    expect(only(fitted({ main: known(boreJet(180)) }))).toEqual(["main"]);
    expect(only(fitted({ pilot: known(boreJet(45)) }))).toEqual(["pilot"]);
    expect(only(withScrew(2))).toEqual(["screw"]);
    expect(only(fitted({ cutaway: known(mm(3)) }))).toEqual(["slide"]);
    expect(only(fitted({ clip: known(2) }))).toEqual(["needle"]);
    expect(only(fitted({ needleJet: known(mm(2.72)) }))).toEqual(["needle"]);
    expect(only(fitted({ fuelLift: known(mm(14)) }))).toEqual(["main"]);
    expect(only(inAir(dryAir(1)))).toEqual(["air"]);
    expect(only({ ...HERE, fuel: { ...PETROL, fuelShare: 0.96 } })).toEqual(["air"]);
  });
});

describe("bands", () => {
  const sdAt = (to: Situation, i: number, from: Situation = HERE) => compared(to, from).at[i]!.sd;
  test("a clip move is firm, the slide, pilot and screw are soft", () => {
    const clip = compared(fitted({ clip: known(2) }));
    expect(clip.at[6]!.sd).toBeCloseTo(0.04 * Math.abs(clip.at[6]!.logRatio), 12);
    expect(clip.firmness.needle.word).toBe("firm");
    expect(clip.firmness.main.word).toBe("unchanged");
    for (const [to, circuit] of [
      [fitted({ cutaway: known(mm(3)) }), "slide"],
      [withScrew(2), "screw"],
    ] as const) {
      const result = compared(to);
      expect(result.at[1]!.sd).toBeCloseTo(0.4 * Math.abs(result.at[1]!.logRatio), 12);
      expect(result.firmness[circuit].word).toBe("soft");
      expect(result.firmness[circuit].text).toContain("40 %");
    }
  });

  test("two jets carry two tolerances, by what they have to say", () => {
    const main = compared(fitted({ main: known(boreJet(177.5)) })).at[10]!;
    // ±1 % of bore each is 2 % of area each; 0.65 of it arrives
    expect(main.sd).toBeGreaterThan(0.0175);
    expect(main.sd).toBeLessThan(0.0195);
    const pilot = compared(fitted({ pilot: known(boreJet(44)) })).at[0]!;
    expect(pilot.sd).toBeCloseTo(
      Math.hypot(0.4 * pilot.logRatio, pilotShareAt(0.045) * 0.02 * Math.SQRT2),
      10,
    );
    const throughOutlet = compared(fitted({ pilot: known(boreJet(42.001)) }, fuelScrew), fuelScrew).at[0]!;
    expect(throughOutlet.sd).toBeCloseTo(((pilotShareAt(0.045) * 2) / 3) * 0.02 * Math.SQRT2, 3);
  });

  test("a jet without a maker widens the band", () => {
    const unnamed = fitted({ main: known({ ...boreJet(180), maker: "" }) });
    expect(sdAt(unnamed, 10)).toBeGreaterThan(1.9 * sdAt(fitted({ main: known(boreJet(180)) }), 10));
    expect(compared(unnamed).notes.map((note) => note.code)).toEqual(["maker not known"]);
    expect(reasonOf(fitted({ main: known({ ...boreJet(180), maker: " ours " }) }))).toBe("none");
  });

  test("needles and needle jets carry theirs", () => {
    // 0.005 mm is worth about 1.2 % at 1/8 where the clearance is 0.18 mm
    const thinner = fitted({ needle: otherNeedle({ straightDiameter: mm(2.5199) }) });
    expect(sdAt(thinner, 2)).toBeGreaterThan(0.015);
    expect(sdAt(thinner, 2)).toBeLessThan(0.019);
    const jet = fitted({ needleJet: known(mm(2.7001)) });
    expect(sdAt(jet, 2)).toBeGreaterThan(0.016);
    expect(sdAt(jet, 2)).toBeLessThan(0.02);
    const badlyMeasured = fitted({
      needle: otherNeedle({ straightDiameter: mm(2.5199), diameterSd: mm(0.02) }),
    });
    expect(sdAt(badlyMeasured, 2)).toBeGreaterThan(2 * sdAt(thinner, 2));
  });

  test("air: the exponent, and both readings", () => {
    const thin = compared(inAir(dryAir(1)));
    expect(thin.at[5]!.sd).toBeCloseTo(0.1 * Math.log(1.225), 12);
    const read = compared(inAir(dryAir(1.225 * 0.999, 0.02)), inAir(dryAir(1.225, 0.01)));
    expect(read.at[5]!.sd).toBeCloseTo(0.5 * Math.hypot(0.02, 0.01), 5);
    expect(thin.firmness.air.word).toBe("fair");
    const oily = compared({ ...HERE, fuel: { ...PETROL, fuelShare: 0.97, viscosityRatio: 1.2 } });
    expect(oily.at[5]!.sd).toBeCloseTo(Math.hypot(0.33 * Math.log(0.97), 0.5 * 0.05 * Math.log(1.2)), 12);
  });

  test("a bled nozzle widens main jet and needle and says so", () => {
    const bled = compared(fitted({ clip: known(2) }, fuelScrew), fuelScrew);
    expect(bled.at[6]!.sd).toBeCloseTo(Math.hypot(0.04, 0.15) * Math.abs(bled.at[6]!.logRatio), 12);
    expect(bled.notes.map((note) => note.code)).toContain("bled nozzle");
    expect(bled.firmness.needle.word).toBe("fair");
  });
});

describe("firmness in words", () => {
  const textOf = (to: Situation, circuit: (typeof CIRCUITS)[number], from: Situation = HERE) =>
    compared(to, from).firmness[circuit].text;
  test("each circuit says how far off and why", () => {
    const main = fitted({ main: known(boreJet(180)) });
    expect(textOf(main, "main")).toMatch(/^Good to about 4 % of the change, by the sizes/);
    expect(textOf(main, "needle")).toBe("Nothing changed here.");
    expect(textOf(fitted({ clip: known(2) }), "needle")).toMatch(
      /^Good to about 4 % of the change, by the sizes/,
    );
    expect(textOf(fitted({ clip: known(2) }, fuelScrew), "needle", fuelScrew)).toMatch(
      /^Good to about 16 % of the change only: a part beside it/,
    );
    expect(textOf(fitted({ main: known(boreJet(180)) }, fuelScrew), "main", fuelScrew)).toContain("16 %");
    expect(textOf(inAir(dryAir(1)), "air")).toContain(
      "20 % of the change: carburetors follow the square root",
    );
    for (const [to, circuit] of [
      [fitted({ pilot: known(boreJet(45)) }), "pilot"],
      [withScrew(1), "screw"],
      [fitted({ cutaway: known(mm(3)) }), "slide"],
    ] as const) {
      expect(textOf(to, circuit)).toMatch(
        /^Good to about 40 % of the change only: how much this circuit feeds/,
      );
    }
  });

  test("an unknown float level or clip widens what depends on it", () => {
    const low = fitted({ fuelLift: UNKNOWN });
    const main = compared(fitted({ main: known(boreJet(180)) }, low), low).at[10]!;
    expect(main.sd).toBeCloseTo(
      Math.hypot(
        0.04 * main.logRatio,
        0.15 * main.logRatio,
        0.02 * Math.SQRT2 * main.logRatio * (1 / (2 * Math.log(180 / 175))),
      ),
      4,
    );
    const open = fitted({ clip: UNKNOWN });
    const jet = (base: Situation) => compared(fitted({ needleJet: known(mm(2.72)) }, base), base).at[4]!;
    expect(jet(open).sd).toBeGreaterThan(jet(HERE).sd + 1e-4);
  });

  test("drier air of the same density still carries the doubt of both readings", () => {
    const wet = { ...dryAir(1.2, 0.01), dryDensity: 1.18 as KgPerCubicMetre };
    expect(compared(inAir(wet), inAir(dryAir(1.2, 0.01))).at[5]!.sd).toBeCloseTo(
      0.5 * Math.hypot(0.01, 0.01),
      9,
    );
    const same = { ...dryAir(1.21, 0.01), dryDensity: 1.2 as KgPerCubicMetre };
    expect(compared(inAir(same), inAir(dryAir(1.2, 0.01))).at[5]!.sd).toBeGreaterThan(0.007);
  });
});

describe("notes", () => {
  test("air jets are recorded, not computed", () => {
    const codes = (parts: Partial<typeof SETUP>) => compared(fitted(parts)).notes.map((note) => note.code);
    expect(codes({ mainAirJet: known(boreJet(80)) })).toEqual(["air jets"]);
    expect(codes({ pilotAirJet: known(boreJet(80)) })).toEqual(["air jets"]);
    expect(codes({})).toEqual([]);
  });

  test("a low float in thin air: the main system hardly starts, and the answer stays finite", () => {
    const low = fitted({ fuelLift: known(mm(30)) });
    const result = compared(low, low);
    expect(result.notes).toEqual([
      { code: "main system starting", given: { openings: expect.arrayContaining(["closed"]) } },
    ]);
    expect(logs(low).every(Number.isFinite)).toBe(true);
    expect(logs(low)[0]).toBeLessThan(-0.05);
    expect(logs(low)[0]).toBeGreaterThan(-0.25);
  });
});

test("a set idle lift moves only the closed end", () => {
  const body = { ...BODY, idleLift: mm(1) };
  const share = (base: Situation) => logs(fitted({ pilot: known(boreJet(44)) }, base), base);
  const low = share(fitted({ body }));
  expect(low[0]).toBeGreaterThan(share(HERE)[0]!);
  expect(low.slice(1)).toEqual(share(HERE).slice(1));
});

test("percent and log say the same", () => {
  expect(percents(fitted({ main: known(boreJet(180)) }))[10]).toBeCloseTo(
    (Math.exp(logs(fitted({ main: known(boreJet(180)) }))[10]!) - 1) * 100,
    9,
  );
});
