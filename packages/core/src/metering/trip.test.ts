import { describe, expect, test } from "vitest";
import { known, UNKNOWN } from "../parts/known.ts";
import { fromCelsius } from "../units/convert.ts";
import { accept } from "../units/outcome.ts";
import type { Metre } from "../units/quantity.ts";
import { usualAir } from "./air-lookup.ts";
import { compare } from "./compare.ts";
import type { Situation } from "./situation.ts";
import { boreJet, dryAir, fitted, HERE, mm } from "./test-situations.ts";
import { planTrip, type Trip, type TripOptions, type TripPoint } from "./trip.ts";

const place = (name: string, height: number, temperature: number, relativeHumidity?: number): TripPoint => ({
  name,
  height: height as Metre,
  temperature: fromCelsius(temperature),
  ...(relativeHumidity === undefined ? {} : { relativeHumidity }),
});
function trip(points: TripPoint[], options: TripOptions = {}, situation: Situation = HERE): Trip {
  const result = planTrip(situation, points, options);
  if (!result.ok) throw new Error(result.detail);
  return result.value;
}
const VALLEY = place("Valley", 300, 5);
const PASS = place("Pass", 1400, 12);
const SUMMIT = place("Summit", 2500, 8);
const SIZES = [150, 155, 160, 165, 170, 172.5, 175, 177.5, 180];

function errorAt(point: TripPoint, main: number): readonly number[] {
  const air = usualAir(point.height, point.temperature, point.relativeHumidity ?? 0.5);
  if (!air.ok) throw new Error(air.detail);
  const result = compare(HERE, { ...fitted({ main: known(boreJet(main)) }), air: air.value });
  if (!result.ok) throw new Error(result.detail);
  return result.value.at.map((at) => at.logRatio);
}

describe("a trip", () => {
  test("the densest air decides, wherever it stands in the list", () => {
    for (const points of [
      [VALLEY, PASS, SUMMIT],
      [SUMMIT, PASS, VALLEY],
    ]) {
      const plan = trip(points, { mains: SIZES });
      expect(plan.decides).toBe(VALLEY);
      expect(plan.stops.map((stop) => stop.point)).toEqual(points);
      expect(errorAt(VALLEY, plan.exactSafeMain)[10]).toBeCloseTo(0, 9);
      expect(plan.safeMain).toBe(175);
      expect(plan.warnings).toEqual([]);
    }
    expect(trip([place("Hot valley", 300, 40), place("Cold hill", 600, -20)]).decides.name).toBe("Cold hill");
    expect(trip([place("Damp", 0, 35, 1), place("Dry", 0, 35, 0)]).decides.name).toBe("Dry");
  });

  test("with the safe jet no place is lean at full, and each says how it feels", () => {
    const plan = trip([VALLEY, PASS, SUMMIT], { mains: SIZES });
    for (const stop of plan.stops) {
      expect(stop.feel).toEqual(errorAt(stop.point, plan.safeMain!));
      expect(stop.feel[10]).toBeGreaterThan(-1e-9);
    }
    const summit = plan.stops[2]!;
    const full = Math.round((Math.exp(summit.feel[10]!) - 1) * 100);
    const half = Math.round((Math.exp(summit.feel[6]!) - 1) * 100);
    expect(full).toBeGreaterThan(8);
    expect(summit.text).toContain(`Summit, 2500 m: ${full} % rich at full, ${half} % rich at 1/2.`);
    expect(plan.stops[0]!.text).toMatch(/^Valley, 300 m: (right|\d % rich) at full/);
  });

  test("the way back: the small jet is right down to a height and lean below it", () => {
    const plan = trip([VALLEY, PASS, SUMMIT], { mains: SIZES });
    const summit = plan.stops[2]!;
    expect(summit.main).toBe(160);
    expect(plan.stops[0]!.refitBelow).toBe(null);
    const below = summit.refitBelow!;
    expect(below).toBeLessThan(2500);
    expect(below).toBeGreaterThan(300);
    const coming = (height: number) =>
      errorAt(place("", height, 8 + 0.0065 * (2500 - height)), summit.main!)[10]!;
    expect(coming(below + 50)).toBeGreaterThan(0);
    expect(coming(below - 50)).toBeLessThan(0);
    const metres = Math.ceil(below / 10) * 10;
    expect(summit.text).toContain(
      `A 160 main jet would suit it; put the 175 back before going below ${metres} m`,
    );
  });

  test("where cold, not height, decides, it says to refit before lower or colder", () => {
    const plan = trip([place("Noon", 800, 30), place("Dawn", 800, -15)], { mains: SIZES });
    const noon = plan.stops[0]!;
    expect(noon.main).toBeLessThan(plan.safeMain!);
    expect(noon.refitBelow).toBe(null);
    expect(noon.text).toContain("lower or colder");
  });

  test("a list too small says so and still says what each place feels like", () => {
    const plan = trip([VALLEY, SUMMIT], { mains: [150, 155] });
    expect(plan.safeMain).toBe(null);
    expect(plan.warnings).toMatchObject([{ code: "no-main-big-enough", given: { place: "Valley" } }]);
    expect(plan.stops[0]!.feel[10]).toBeCloseTo(0, 9);
    expect(plan.stops[1]!.main).toBe(null);
  });

  test("without a list, whole numbers", () => {
    const plan = trip([VALLEY, SUMMIT]);
    expect(plan.safeMain).toBe(Math.ceil(plan.exactSafeMain));
    expect(plan.stops[1]!.main).toBe(Math.ceil(plan.stops[1]!.exactMain!));
  });

  test("refuses what it cannot plan", () => {
    expect(planTrip(HERE, [])).toMatchObject({ ok: false, reason: "no places" });
    expect(planTrip(fitted({ main: UNKNOWN }), [VALLEY])).toMatchObject({
      ok: false,
      reason: "main jet not known",
    });
    expect(planTrip(fitted({ main: known(boreJet(1)) }), [VALLEY])).toMatchObject({ ok: false });
    expect(planTrip(HERE, [place("Moon", 9000, 0)])).toMatchObject({
      ok: false,
      reason: "outside the tables",
    });
    const tight = fitted({ needleJet: known(mm(2.55)), clip: known(1) });
    expect(planTrip(tight, [VALLEY], { air: () => accept(dryAir(2.9)) })).toMatchObject({
      ok: false,
      reason: "needle limits",
    });
    expect(planTrip(HERE, [VALLEY], { air: () => accept(dryAir(0)) })).toMatchObject({
      ok: false,
      reason: "impossible air or fuel",
    });
  });
});
