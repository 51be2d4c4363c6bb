import { describe, expect, test } from "vitest";
import { known, UNKNOWN } from "../parts/known.ts";
import type { NeedleProfile } from "../parts/needle.ts";
import type { KgPerCubicMetre } from "../units/quantity.ts";
import { type Comparison, compare } from "./compare.ts";
import { shiftBetween } from "./shift.ts";
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
const _percents = (to: Situation, from: Situation = HERE) =>
  compared(to, from).at.map((at) => (at.ratio - 1) * 100);
const reasonOf = (to: Situation, from: Situation = HERE) => {
  const result = compare(from, to);
  return result.ok ? "none" : result.reason;
};
const profile = NEEDLE.profile as NeedleProfile;
const otherNeedle = (change: Partial<NeedleProfile>, marks = "N2") =>
  known({ ...NEEDLE, marks, profile: { ...profile, ...change } });
const fuelScrew = fitted({}, { ...HERE, setup: FUEL_SCREW });

describe("unknown parts", () => {
  const blank = fitted({
    pilot: UNKNOWN,
    main: UNKNOWN,
    needleJet: UNKNOWN,
    cutaway: UNKNOWN,
    fuelLift: UNKNOWN,
  });
  test("unknown on both sides has no effect of its own and lets the rest be compared", () => {
    expect(logs(blank, blank).every((x) => x === 0)).toBe(true);
    const result = compared(fitted({ clip: known(2) }, blank), blank);
    expect(result.at[6]!.logRatio).toBeCloseTo(logs(fitted({ clip: known(2) }))[6]!, 6);
    expect(result.at[6]!.sd).toBeGreaterThan(4 * compared(fitted({ clip: known(2) })).at[6]!.sd);
    expect(result.notes[0]).toEqual({
      code: "stand-in parts",
      given: { parts: ["main", "pilot", "needleJet", "cutaway", "fuelLift"] },
    });
  });

  test("an unknown screw stands at the usual turns", () => {
    const open = fitted({ screw: UNKNOWN }, fuelScrew);
    const pilots = (base: Situation) => logs(fitted({ pilot: known(boreJet(45)) }, base), base)[0]!;
    expect(pilots(open)).toBe(pilots(fuelScrew));
  });

  test.each([
    ["main", "main jet"],
    ["pilot", "pilot jet"],
    ["needle", "needle"],
    ["clip", "clip groove"],
    ["needleJet", "needle jet"],
    ["cutaway", "cutaway"],
    ["screw", "screw setting"],
    ["fuelLift", "float level"],
  ] as const)("%s known on one side only is refused", (part, words) => {
    for (const [a, b] of [
      [HERE, fitted({ [part]: UNKNOWN })],
      [fitted({ [part]: UNKNOWN }), HERE],
    ] as const) {
      const result = compare(a, b);
      expect(result).toMatchObject({ ok: false, reason: "known on one side only" });
      if (!result.ok) expect(result.detail).toContain(words);
    }
  });

  test("a needle nobody measured can move its clip, with a wide band", () => {
    const unmeasured = fitted({ needle: known({ ...NEEDLE, profile: null }) });
    const lower = compared(fitted({ clip: known(4) }, unmeasured), unmeasured);
    const real = compared(fitted({ clip: known(4) }));
    // usual tapers arrive where this body's do, so the middle figure is the same
    expect(lower.at[6]!.logRatio).toBeCloseTo(real.at[6]!.logRatio, 3);
    expect(lower.at[6]!.sd).toBeGreaterThan(0.4 * lower.at[6]!.logRatio);
    expect(lower.firmness.needle.word).toBe("soft");
    expect(lower.notes.map((note) => note.code)).toEqual(["needle not measured"]);
    const nothing = fitted({ needle: UNKNOWN, clip: known(3), needleJet: UNKNOWN });
    expect(logs(fitted({ clip: known(2) }, nothing), nothing)[6]).toBeCloseTo(
      logs(fitted({ clip: known(2) }))[6]!,
      3,
    );
  });

  test("needles that cannot be compared are refused with what to measure", () => {
    const unmeasured = known({ ...NEEDLE, profile: null });
    const other = known({ ...NEEDLE, marks: "N2", profile: null });
    const refusals: [Situation, Situation, string][] = [
      [HERE, fitted({ needle: unmeasured }), "every 5 mm"],
      [fitted({ needle: unmeasured }), fitted({ needle: other }), "every 5 mm"],
      [
        fitted({ needle: unmeasured }),
        fitted({ needle: unmeasured, needleJet: known(mm(2.72)) }),
        "micrometer",
      ],
      [
        fitted({ needleJet: UNKNOWN }),
        fitted({ needleJet: UNKNOWN, needle: otherNeedle({ straightDiameter: mm(2.5) }) }),
        "gauge pin",
      ],
    ];
    for (const [a, b, words] of refusals) {
      const result = compare(a, b);
      expect(result).toMatchObject({ ok: false, reason: "needles not comparable" });
      if (!result.ok) expect(result.detail).toContain(words);
    }
    const sameMark = compare(
      fitted({ needle: unmeasured }),
      fitted({ needle: known({ ...NEEDLE, marks: " n1", profile: null }) }),
    );
    expect(sameMark.ok).toBe(true);
  });

  test("without the seat distance only needles whose tapers begin alike are compared", () => {
    const body = { ...BODY, seatToJet: null };
    const open = fitted({ body });
    const later = otherNeedle({
      tapers: profile.tapers.map((t) => ({ ...t, start: mm(t.start * 1000 + 1) })),
    });
    expect(reasonOf(fitted({ body, needle: later }), open)).toBe("needles not comparable");
    expect(
      logs(fitted({ body, needle: otherNeedle({ straightDiameter: mm(2.5) }) }), open)[2],
    ).toBeGreaterThan(0.03);
    const clip = compared(fitted({ body, clip: known(4) }), open);
    expect(clip.at[6]!.logRatio).toBeCloseTo(logs(fitted({ clip: known(4) }))[6]!, 12);
    expect(clip.notes.map((note) => note.code)).toEqual(["seat not measured"]);
    expect(clip.at[6]!.sd).toBeGreaterThan(0.15 * clip.at[6]!.logRatio);
  });

  test("a plain straight needle can be compared, with nothing for the clip to do", () => {
    const straight = fitted({ body: { ...BODY, seatToJet: null }, needle: otherNeedle({ tapers: [] }) });
    expect(logs(fitted({ clip: known(5) }, straight), straight).every((x) => x === 0)).toBe(true);
    expect(logs(fitted({ main: known(boreJet(180)) }, straight), straight)[10]).toBeGreaterThan(0.003);
  });

  test("the same marks on needles of other size are pointed out", () => {
    const worn = compared(fitted({ needle: otherNeedle({ straightDiameter: mm(2.5) }, "N1") }));
    expect(worn.notes.map((note) => note.code)).toEqual(["same marks"]);
  });
});

describe("refusals", () => {
  test("jets of two numberings or two makers", () => {
    expect(reasonOf(fitted({ main: known(flowJet(300)) }))).toBe("jets not comparable");
    expect(reasonOf(fitted({ pilot: known(flowJet(40)) }))).toBe("jets not comparable");
    const foreign = compare(HERE, fitted({ main: known({ ...boreJet(175), maker: "Theirs" }) }));
    expect(foreign).toMatchObject({ ok: false, reason: "jets not comparable" });
    if (!foreign.ok) expect(foreign.detail).toContain("Theirs");
  });

  test("another body", () => {
    for (const change of [
      { bore: { shape: "round", diameter: mm(38) } },
      { bore: { shape: "oval", width: mm(36), height: mm(36) } },
      { nozzle: "bleed" },
      { seatToJet: mm(31) },
      { idleLift: mm(1.5) },
      { bowlVent: "airbox" },
    ] as const) {
      expect(reasonOf(fitted({ body: { ...BODY, ...change } })), JSON.stringify(change)).toBe("other body");
    }
    expect(reasonOf({ ...HERE, setup: FUEL_SCREW })).toBe("other body");
    const oval = { ...BODY, bore: { shape: "oval", width: mm(34), height: mm(38) } } as const;
    expect(
      reasonOf(fitted({ body: { ...oval, bore: { ...oval.bore, width: mm(35) } } }), fitted({ body: oval })),
    ).toBe("other body");
    expect(
      reasonOf(fitted({ body: { ...oval, bore: { ...oval.bore, height: mm(39) } } }), fitted({ body: oval })),
    ).toBe("other body");
    expect(reasonOf(fitted({ body: structuredClone(oval) }), fitted({ body: oval }))).toBe("none");
  });

  test.each([
    ["main jet number", { main: known(boreJet(0)) }],
    ["pilot jet number", { pilot: known(boreJet(Number.NaN)) }],
    ["big jet number", { main: known(boreJet(2000)) }],
    ["tiny jet number", { main: known(boreJet(4.9)) }],
    ["needle thicker than its jet", { needleJet: known(mm(2.52)) }],
    ["needle jet", { needleJet: known(mm(9)) }],
    ["groove", { clip: known(6) }],
    ["groove 0", { clip: known(0) }],
    ["groove of an unknown needle", { needle: UNKNOWN, clip: known(13) }],
    ["grooves", { needle: known({ ...NEEDLE, grooves: 0 }) }],
    ["half a groove", { needle: known({ ...NEEDLE, grooves: 4.5 }) }],
    ["pitch", { needle: known({ ...NEEDLE, groovePitch: mm(6) }) }],
    ["straight", { needle: otherNeedle({ straightDiameter: mm(0.2) }) }],
    ["taper order", { needle: otherNeedle({ tapers: [...profile.tapers].reverse() }) }],
    ["taper angle", { needle: otherNeedle({ tapers: [{ start: mm(30), includedAngle: 1 as never }] }) }],
    ["diameter spread", { needle: otherNeedle({ diameterSd: mm(2) }) }],
    ["cutaway", { cutaway: known(mm(19)) }],
    ["turns", { screw: known({ kind: "air", turnsOut: -1 }) }],
    ["screw kind", { screw: known({ kind: "fuel", turnsOut: 1 }) }],
    ["fuel lift", { fuelLift: known(mm(51)) }],
    ["bore", { body: { ...BODY, bore: { shape: "round", diameter: mm(4) } } }],
    ["flat D", { body: { ...BODY, bore: { shape: "D", width: mm(40), height: mm(19) } } }],
    ["idle lift", { body: { ...BODY, idleLift: mm(8) } }],
    ["seat", { body: { ...BODY, seatToJet: mm(-1) } }],
  ] as const)("an impossible %s is refused on either side", (_name, parts) => {
    const wrong = fitted(parts as Partial<typeof SETUP>);
    expect(reasonOf(wrong, wrong)).toBe("impossible part");
    expect(reasonOf(wrong)).toBe("impossible part");
    expect(reasonOf(HERE, wrong)).toBe("impossible part");
    expect(shiftBetween(wrong, HERE)).toMatchObject({ ok: false, reason: "impossible part" });
    expect(shiftBetween(HERE, wrong)).toMatchObject({ ok: false, reason: "impossible part" });
  });

  test.each([
    ["no air", inAir(dryAir(0))],
    ["dense air", inAir(dryAir(4))],
    ["more dry air than air", inAir({ ...dryAir(1.2), dryDensity: 1.3 as KgPerCubicMetre })],
    ["fuel density", { ...HERE, fuel: { ...PETROL, density: 0.74 as KgPerCubicMetre } }],
    ["air need", { ...HERE, fuel: { ...PETROL, stoichiometricRatio: 0 } }],
    ["fuel share", { ...HERE, fuel: { ...PETROL, fuelShare: 1.1 } }],
    ["viscosity", { ...HERE, fuel: { ...PETROL, viscosityRatio: Number.NaN } }],
  ])("impossible gas: %s", (_name, wrong) => {
    expect(reasonOf(wrong)).toBe("impossible air or fuel");
  });

  test("edges that exist are taken", () => {
    expect(reasonOf(withScrew(0))).toBe("none");
    expect(reasonOf(fitted({ clip: known(5.5) }))).toBe("none");
    expect(reasonOf(fitted({ cutaway: known(mm(0)) }))).toBe("none");
    for (const to of [withScrew(0, fuelScrew), withScrew(10, fuelScrew)]) {
      expect(logs(to, fuelScrew).every(Number.isFinite)).toBe(true);
    }
  });
});
