import { describe, expect, test } from "vitest";
import { toHectopascal } from "../units/convert.ts";
import { codes, metres, refused, seaLevel, station, taken, text } from "./test-airs.ts";

describe("[12.3] sea-level pressure typed as station pressure", () => {
  test.each([
    [1013, 1500, "20 %"],
    [1013, 500, "6.1 %"],
    [1013, 1000, "13 %"],
    [1013, 2000, "27 %"],
  ])("%s hPa at %s m: read as sea-level pressure, with the cost %s", (hectopascal, metre, cost) => {
    const air = taken({ pressure: station(hectopascal, "hPa"), height: metres(metre) });
    const right = taken({ pressure: seaLevel(hectopascal, "hPa"), height: metres(metre) });
    expect(codes(air)).toContain("sea-level-pressure-as-station");
    expect(text(air, "sea-level-pressure-as-station")).toContain(
      `${hectopascal} hPa at ${metre} m is surely a sea-level pressure: the air would come out ${cost} too dense`,
    );
    expect(air.pressure).toBe(right.pressure);
    expect(air.relativeSd).toBe(right.relativeSd);
  });
  test("near the ground it may be either: kept, with the cost", () => {
    const air = taken({ pressure: station(1013, "hPa"), height: metres(300) });
    expect(codes(air)).toEqual(["station-pressure-high"]);
    expect(text(air, "station-pressure-high")).toContain("3.6 %");
    expect(toHectopascal(air.pressure)).toBeCloseTo(1013, 9);
    expect(codes(taken({ pressure: station(1013, "hPa"), height: metres(100) }))).toEqual([]);
  });
  test("below sea level a high station pressure is in order", () => {
    const air = taken({ pressure: station(1063, "hPa"), height: metres(-400) });
    expect(codes(air)).toEqual([]);
    expect(
      text(taken({ pressure: station(1094, "hPa"), height: metres(-400) }), "station-pressure-high"),
    ).toMatch(/sea-level pressure\.$/);
  });
  test("without a height it cannot be seen, and that is said where it matters", () => {
    const air = taken({ pressure: station(1013, "hPa") });
    expect(codes(air)).toEqual(["station-pressure-unchecked"]);
    expect(text(air, "station-pressure-unchecked")).toContain("13 %");
    expect(codes(taken({ pressure: station(979, "hPa") }))).toEqual([]);
    expect(codes(taken({ pressure: station(980, "hPa") }))).toEqual(["station-pressure-unchecked"]);
  });
  test("a station pressure given as sea-level pressure is refused", () => {
    const refusal = refused({ pressure: seaLevel(845, "hPa"), height: metres(1500) });
    expect(refusal.reason).toBe("pressure-out-of-range");
    expect(refusal.detail).toContain("give it as station pressure");
  });
  test("a sea-level pressure needs the height", () => {
    expect(refused({ pressure: seaLevel(1013, "hPa") }).reason).toBe("height-missing");
    expect(refused({ pressure: { kind: "none" } }).reason).toBe("height-missing");
  });
  test("station pressure that fits no weather at that height is refused with the likely cause", () => {
    const feet = refused({ pressure: station(845, "hPa"), height: metres(5000) });
    expect(feet.reason).toBe("pressure-height-mismatch");
    expect(feet.detail).toContain("1510 m");
    expect(feet.detail).toContain("in feet (1524 m)");
    const mercury = refused({ pressure: station(745, "hPa"), height: metres(100) });
    expect(mercury.detail).toContain("in mmHg (993 hPa)");
    expect(refused({ pressure: station(800, "hPa"), height: metres(700) }).detail).toMatch(/check both\.$/);
    expect(codes(taken({ pressure: station(820, "hPa"), height: metres(1100) }))).toContain(
      "station-pressure-low",
    );
    expect(codes(taken({ pressure: station(870, "hPa"), height: metres(1100) }))).toEqual([]);
  });
  test("rare sea-level pressures are named", () => {
    for (const [value, rare] of [
      [949, true],
      [951, false],
      [1049, false],
      [1051, true],
    ] as const) {
      const air = taken({ pressure: seaLevel(value, "hPa"), height: metres(100) });
      expect(codes(air).includes("unusual-sea-level-pressure")).toBe(rare);
    }
  });
});

describe("[12.4] pressure unit by its size", () => {
  test.each([
    [29.92, 1013.21, "inHg"],
    [2992, 1013.21, "hundredths of inHg"],
    [101.3, 1013, "kPa"],
    [101_325, 1013.25, "Pa"],
  ])("%s without a unit is %s hPa, from %s", (value, hectopascal, name) => {
    for (const kind of ["station", "sea-level"] as const) {
      const air = taken({ pressure: { kind, value }, height: metres(0) });
      expect(toHectopascal(air.pressure)).toBeCloseTo(hectopascal, 1);
      expect(text(air, "pressure-unit-guessed")).toContain(`read as ${name},`);
    }
  });
  test.each([
    ["hPa", 900, 900],
    ["mbar", 900, 900],
    ["kPa", 90, 900],
    ["Pa", 90_000, 900],
    ["mmHg", 675, 899.93],
    ["inHg", 26.58, 900.1],
  ] as const)("%s stated", (unit, value, hectopascal) => {
    const air = taken({ pressure: station(value, unit) });
    expect(toHectopascal(air.pressure)).toBeCloseTo(hectopascal, 1);
    expect(codes(air)).toEqual([]);
  });
  test("850 to 1060 is hPa, without a word", () => {
    expect(codes(taken({ pressure: station(850) }))).toEqual([]);
    expect(codes(taken({ pressure: station(978) }))).toEqual([]);
  });
  test("650 to 800 is asked: hPa high up, or mmHg", () => {
    for (const value of [650, 720, 800]) {
      const refusal = refused({ pressure: station(value) });
      expect(refusal.reason).toBe("pressure-unit");
      expect(refusal.detail).toContain(`${value} hPa or ${value} mmHg`);
    }
  });
  test("the height settles it where only one reading fits, and it is said", () => {
    const low = taken({ pressure: station(720), height: metres(300) });
    expect(toHectopascal(low.pressure)).toBeCloseTo(959.9, 1);
    expect(text(low, "pressure-unit-guessed")).toContain("mmHg, 960 hPa");
    const high = taken({ pressure: station(720), height: metres(2700) });
    expect(toHectopascal(high.pressure)).toBeCloseTo(720, 9);
    expect(text(high, "pressure-unit-guessed")).toContain("hPa, 720 hPa");
    expect(refused({ pressure: station(720), height: metres(1500) }).reason).toBe("pressure-unit");
    const mercury = taken({ pressure: seaLevel(760), height: metres(1500) });
    expect(text(mercury, "pressure-unit-guessed")).toContain("mmHg, 1013 hPa");
  });
  test("a unit that cannot be is refused with the one that could", () => {
    expect(refused({ pressure: station(29.92, "hPa") }).detail).toContain("29.92 inHg would be 1013 hPa");
    expect(refused({ pressure: station(1013, "mmHg") }).detail).toContain("1013 hPa would be 1013 hPa");
    expect(refused({ pressure: station(2992, "inHg") }).detail).toContain("hundredths of inHg");
    expect(refused({ pressure: station(2992, "inHg") }).reason).toBe("pressure-unit");
    expect(refused({ pressure: station(5, "hPa") }).reason).toBe("pressure-out-of-range");
  });
  test("what is no pressure at all is refused", () => {
    for (const value of [0, -5, Number.NaN, Infinity]) {
      expect(refused({ pressure: station(value) }).reason).toBe("pressure-not-a-number");
    }
    expect(refused({ pressure: station(300) }).reason).toBe("pressure-out-of-range");
    expect(refused({ pressure: seaLevel(5), height: metres(0) }).detail).toContain("no sea-level pressure");
    expect(refused({ pressure: station(5) }).detail).toContain("no pressure to ride in");
  });
});
