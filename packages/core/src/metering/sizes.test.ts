import { describe, expect, test } from "vitest";
import { known, UNKNOWN } from "../parts/known.ts";
import { needleDiameter } from "../parts/needle.ts";
import type { Metre } from "../units/quantity.ts";
import type { Situation } from "./situation.ts";
import { type Sizes, sizesOf } from "./sizes.ts";
import { boreJet, fitted, HERE, mm } from "./test-situations.ts";

function sizes(situation: Situation): Sizes {
  const result = sizesOf(situation);
  if (!result.ok) throw new RangeError(result.detail);
  return result.value;
}

describe("the sizes a section is drawn from", () => {
  test("are those fitted where they are known", () => {
    const { setup } = HERE;
    const got = sizes(HERE);
    expect(got.mainBore).toBeCloseTo(1.75e-3, 12);
    expect(got.pilotBore).toBeCloseTo(0.42e-3, 12);
    expect(got.cutaway).toBe(setup.cutaway.part);
    expect(got.needleJet).toBe(setup.needleJet.part);
    expect(got.needle).toBe(setup.needle.part!.profile);
    expect(got.clip).toBe(setup.clip.part);
    expect(got.grooves).toBe(setup.needle.part!.grooves);
    expect(got.groovePitch).toBe(setup.needle.part!.groovePitch);
    expect(got.turns).toBe(setup.screw.part!.turnsOut);
    for (const part of ["main", "pilot", "needle", "profile", "clip", "needleJet", "cutaway", "screw"]) {
      expect(got.usual).not.toContain(part);
    }
  });

  test("a flow number stands for the bore of its root", () => {
    const main = known({ number: 400, numbering: "flow" as const, maker: "" });
    expect(sizes(fitted({ main })).mainBore).toBeCloseTo(2e-3, 12);
  });

  test("usual ones stand in where nobody knows, and are named", () => {
    const bare = fitted({
      main: UNKNOWN,
      pilot: UNKNOWN,
      needle: UNKNOWN,
      clip: UNKNOWN,
      needleJet: UNKNOWN,
      cutaway: UNKNOWN,
      screw: UNKNOWN,
      fuelLift: UNKNOWN,
      body: { ...HERE.setup.body, seatToJet: null, idleLift: null },
    });
    const got = sizes(bare);
    expect([...got.usual].sort()).toEqual(
      [
        "clip",
        "cutaway",
        "fuelLift",
        "idleLift",
        "main",
        "needle",
        "needleJet",
        "pilot",
        "profile",
        "screw",
        "seatToJet",
      ].sort(),
    );
    expect(got.clip).toBe((got.grooves + 1) / 2);
    expect(got.idleLift).toBeCloseTo(0.045 * got.height, 12);
    // The needle that stands in goes through the jet that stands in, closed and wide open.
    const down = (lift: number) => (got.seatToJet + lift + (got.clip - 1) * got.groovePitch) as Metre;
    expect(needleDiameter(got.needle, down(got.idleLift))).toBeLessThan(got.needleJet);
    expect(needleDiameter(got.needle, down(got.height))).toBeLessThan(
      needleDiameter(got.needle, down(got.idleLift)),
    );
  });

  test("impossible parts are refused", () => {
    expect(sizesOf(fitted({ main: known(boreJet(-3)) })).ok).toBe(false);
    expect(sizesOf(fitted({ needleJet: known(mm(1)) })).ok).toBe(false);
  });
});
