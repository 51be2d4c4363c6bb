import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { airOutput } from "../output/air-output.ts";
import { LOG, runHere } from "../test-run.ts";

const folder = mkdtempSync(join(tmpdir(), "jetwright-"));
afterAll(() => rmSync(folder, { recursive: true }));
const log = join(folder, "log.jsonl");
writeFileSync(log, LOG);

const json = async (...argv: readonly string[]) => {
  const ran = await runHere(["air", ...argv, "--json"]);
  expect(ran.error).toBe("");
  return airOutput.parse(JSON.parse(ran.out));
};

describe("air by hand", () => {
  // ISO 2533:1975 [from memory]: 1.2250 kg/m³ at sea level, 15 °C and 1013.25 hPa, dry; real air is 0.04 % denser.
  test("standard air at sea level is standard", async () => {
    const { air, densityAltitudeM, shareOfStandardPercent } = await json(
      "--temperature",
      "15C",
      "--pressure",
      "1013.25hPa",
      "--humidity",
      "0%",
    );
    expect(air.densityKgPerM3).toBeCloseTo(1.225, 2);
    expect(densityAltitudeM).toBeCloseTo(0, -2);
    expect(shareOfStandardPercent).toBeCloseTo(100, 1);
  });

  test("units and decimal commas come to the same air", async () => {
    const metric = await json(
      "--temperature",
      "23,9 °C",
      "--pressure",
      "1013.2hPa",
      "--sea-level",
      "--height",
      "1524 m",
    );
    const us = await json(
      "--temperature",
      "75F",
      "--pressure",
      "29.92inHg",
      "--sea-level",
      "--height",
      "5000ft",
    );
    const bare = await json(
      "--us",
      "--temperature",
      "75",
      "--pressure",
      "29.92",
      "--sea-level",
      "--height",
      "5000",
    );
    expect(us.air.densityKgPerM3).toBeCloseTo(metric.air.densityKgPerM3, 3);
    expect(bare.air).toEqual(us.air);
    expect(us.air.pressureHpa).toBeLessThan(870);
  });

  test("a temperature below nothing is a value and not a flag", async () => {
    expect((await json("--temperature", "-5C", "--height", "300m")).air.temperatureC).toBeCloseTo(-5, 9);
    expect((await json("--temperature=-5C", "--height", "300m")).air.temperatureC).toBeCloseTo(-5, 9);
  });

  test("dew point and wet bulb take the place of humidity", async () => {
    const { relativeHumidityPercent } = await json(
      "--temperature",
      "20C",
      "--height",
      "0m",
      "--dew-point",
      "20C",
    );
    expect(relativeHumidityPercent).toBeCloseTo(100, 0);
    const dry = await json("--temperature", "20C", "--height", "0m", "--wet-bulb", "12C");
    expect(dry.relativeHumidityPercent).toBeLessThan(45);
  });

  test("text says it in words first, and the doubt once", async () => {
    const { out } = await runHere(["air", "--temperature", "30C", "--height", "1500m"]);
    expect(out.split("\n")[0]).toMatch(/^The air is \d+ % thinner than standard air/);
    expect(out).toContain("50 % was assumed");
    const us = await runHere(["air", "--temperature", "30C", "--height", "1500m", "--us"]);
    expect(us.out).toMatch(/86 °F, \d\d\.\d\d inHg/);
  });

  test.each([
    [[], "No temperature is given"],
    [["--temperature", "24C"], "Neither a pressure nor a height"],
    [["--temperature", "warm", "--height", "1m"], '--temperature "warm" cannot be read'],
    [["--temperature", "24C", "--height", "high"], '--height "high" cannot be read'],
    [
      ["--temperature", "24C", "--height", "10m", "--humidity", "40", "--dew-point", "3C"],
      "say the same thing twice",
    ],
    [["--temperature", "24C", "--sea-level", "--height", "10m"], "Add --pressure"],
    [["--temperature", "240C", "--height", "10m"], "240"],
    [["--temperature", "24C", "--pressure", "1013parsec"], '--pressure "1013parsec"'],
    [["--report", "METAR EDUD 021020Z 17/09 Q1018"], "Add --height"],
    [["--report", "hello", "--height", "10m"], "report"],
    [
      ["--report", "METAR EDUD 021020Z 17/09 Q1018", "--height", "10m", "--humidity", "4"],
      "say the same thing twice",
    ],
  ])("%j is refused with what to do", async (argv, words) => {
    const { code, error } = await runHere(["air", ...argv]);
    expect(code).toBe(2);
    expect(error).toContain(words);
  });

  test("1013 hPa at 1500 m is surely a sea-level pressure, and is said to be", async () => {
    const { out, error } = await runHere([
      "air",
      "--temperature",
      "20C",
      "--pressure",
      "1013hPa",
      "--height",
      "1500m",
    ]);
    expect(out + error).toMatch(/sea-level/);
  });
});

describe("air from a report", () => {
  const report = "METAR EDUD 021020Z 24004KT 9999 17/09 Q1018";

  test("its temperature and pressure are carried to the place", async () => {
    const answer = await json("--report", report, "--height", "120m", "--station-height", "120m");
    expect(answer.air.temperatureC).toBeCloseTo(17, 6);
    expect(answer.air.pressureHpa).toBeCloseTo(1018 - 14, -1);
    expect(answer.report).toContain("Q1018");
  });

  test("an old one is said to be old", async () => {
    const now = Date.UTC(2026, 4, 2, 18, 20);
    const { out } = await runHere(["air", "--report", report, "--height", "120m"], { now });
    expect(out).toContain("8.0 hours old");
  });
});

describe("air and a bike", () => {
  const there = ["--temperature", "5C", "--height", "2200m", "--log", log];

  test("thin air runs richer, and every way of righting it is leaner", async () => {
    const { bike } = await json(...there);
    const { unchanged, everyOpening, mainAlone, fromDrawer } = bike!.corrections;
    expect(unchanged.at.at(-1)!.richerPercent).toBeGreaterThan(3);
    expect(everyOpening.main).toBeLessThan(175);
    expect(fromDrawer).toBeNull();
    if ("refused" in mainAlone) throw new Error(mainAlone.refused.detail);
    expect(mainAlone.setup.main!.number).toBeLessThan(175);
    expect(mainAlone.remaining.at(-1)!.richerPercent).toBeCloseTo(0, 6);
    const { out } = await runHere(["air", ...there]);
    expect(out).toContain("left alone, it runs richer");
    expect(out).toContain("main jet alone: 175 to ");
  });
});
