import { describe, expect, test } from "vitest";
import { DEMO, shopOf } from "../test-shop.ts";
import { type AirBody, airPreview } from "./air-preview.ts";

const SHOP = shopOf(DEMO);
const AT = Date.parse("2026-05-16T07:50:00Z");
const preview = (body: AirBody, bike = "sorrel") => airPreview(SHOP, { bike, body, at: AT });
const figures = (body: AirBody) => {
  const { air } = preview(body);
  if (!air.ok) throw new Error(air.detail);
  return air.value;
};
const codes = (body: AirBody) => figures(body).warnings.map(({ code }) => code);

describe("the air before it is kept", () => {
  test("standard air at sea level is 100 %, and thinner higher up", () => {
    const sea = figures({ temperatureC: 15, stationPressureHpa: 1013.25, heightM: 0, humidityPercent: 0 });
    expect(sea.percentOfStandard).toBeCloseTo(100, 1);
    expect(Math.abs(sea.likeHeightM)).toBeLessThan(10);
    // ISO 2533:1975 [from memory]: density at 2000 m is 1.0065 of 1.2250 kg/m³.
    const high = figures({ temperatureC: 2, stationPressureHpa: 795, heightM: 2000, humidityPercent: 0 });
    expect(high.percentOfStandard).toBeCloseTo(82.2, 0);
    expect(high.likeHeightM).toBeGreaterThan(1950);
    expect(high.likeHeightM).toBeLessThan(2050);
  });

  test("the band is wider by height alone", () => {
    const measured = figures({
      temperatureC: 11,
      stationPressureHpa: 965,
      heightM: 420,
      humidityPercent: 60,
    });
    const byHeight = figures({ temperatureC: 11, heightM: 420 });
    expect(byHeight.doubtPercent).toBeGreaterThan(1.5 * measured.doubtPercent);
  });

  test("a sea-level pressure given as read at the place is caught, with the way to mend it", () => {
    const body = { temperatureC: 10, stationPressureHpa: 1016, heightM: 1900 };
    expect(codes(body)).toContain("sea-level-pressure-as-station");
    expect(
      figures(body)
        .warnings.map(({ text }) => text)
        .join(" "),
    ).toMatch(/\d+ % too dense/);
    // By the standard atmosphere the pressure at 1500 m is 0.8346 of sea level's: taken as read there, 20 % too dense.
    const at1500 = figures({ temperatureC: 15, stationPressureHpa: 1013, heightM: 1500 });
    expect(at1500.warnings.map(({ text }) => text).join(" ")).toContain("20 % too dense");
    expect(preview(body).mend).toBe("sea level");
    const mended = preview({ temperatureC: 10, seaLevelPressureHpa: 1016, heightM: 1900 });
    expect(mended.mend).toBeNull();
    expect(mended.air.ok && mended.air.value.hectopascal).toBeLessThan(820);
  });

  test("the other way round too, and nothing to mend where the figure fits", () => {
    expect(preview({ temperatureC: 10, seaLevelPressureHpa: 810, heightM: 1900 })).toMatchObject({
      air: { ok: false },
      mend: "station",
    });
    expect(preview({ temperatureC: 10, stationPressureHpa: 810, heightM: 1900 }).mend).toBeNull();
    expect(preview({ temperatureC: 10, stationPressureHpa: 600, heightM: 10 }).mend).toBeNull();
    expect(preview({ temperatureC: 10, heightM: 10 }).mend).toBeNull();
  });

  test("what was only taken as usual is told mildly, a likely mistake is not", () => {
    const mild = (body: AirBody) => figures(body).warnings.map(({ code, mild }) => [code, mild]);
    expect(mild({ temperatureC: 11, heightM: 420 })).toEqual([
      ["pressure-from-height", true],
      ["humidity-assumed", true],
    ]);
    const doubted = { temperatureC: 11, stationPressureHpa: 1010, heightM: 420, humidityPercent: 50 };
    expect(mild(doubted)).toEqual([["sea-level-pressure-as-station", false]]);
  });

  test("a report: what was read of it, and how old it is", () => {
    const report = "METAR XSKP 160720Z 28006KT 9999 FEW060 09/02 Q1019";
    expect(preview({ report, heightM: 1900, stationHeightM: 1120 }).report).toEqual({
      station: "XSKP",
      time: { day: 16, hour: 7, minute: 20 },
      ageMinutes: 30,
      celsius: expect.closeTo(9, 9),
      dewPointC: expect.closeTo(2, 9),
      altimeterHpa: expect.closeTo(1019, 9),
      stationHpa: null,
    });
    const nonsense = preview({ report: "hello there", heightM: 1900 });
    expect(nonsense.report).toBeNull();
    expect(nonsense.air.ok).toBe(false);
  });

  test("what would be kept and not used is refused before", () => {
    const { air } = preview({ temperatureC: 11, stationPressureHpa: 965, humidityPercent: 103 });
    expect(air.ok ? "" : air.detail).toContain("humidityPercent");
    expect(preview({}).air.ok).toBe(false);
  });
});

describe("what it does to the setup", () => {
  const effect = (body: AirBody, bike = "sorrel") => {
    const { effect } = preview(body, bike);
    if (effect === null || !effect.ok) throw new Error("no effect");
    return effect.value;
  };

  test("thinner air is richer at every opening, by name", () => {
    const { at } = effect({ temperatureC: 25, stationPressureHpa: 800, heightM: 1950 });
    expect(at.map(({ opening }) => opening)).toEqual(["closed", "1/8", "1/4", "1/2", "3/4", "full"]);
    for (const { percent } of at) expect(percent).toBeGreaterThan(3);
    for (const { percent } of effect({ temperatureC: -10, stationPressureHpa: 1030, heightM: 10 }).at) {
      expect(percent).toBeLessThan(-1);
    }
  });

  test("counted from where these parts were marked as right", () => {
    const marked = DEMO.map((line) => JSON.parse(line)).findLast(
      ({ kind, bike }) => kind === "known-good-marked" && bike === "sorrel",
    );
    expect(effect({ temperatureC: 12, heightM: 420 }).from.markedAt).toBe(
      marked === undefined ? null : Date.parse(marked.at),
    );
  });

  test("a bike nobody described still gets its air", () => {
    const { air, effect } = preview({ temperatureC: 12, heightM: 420 }, "nobody");
    expect(air.ok).toBe(true);
    expect(effect?.ok).toBe(false);
  });
});
