import { describe, expect, test } from "vitest";
import { chartOutput } from "../output/chart-output.ts";
import { LOG, line, runHere } from "../test-run.ts";

const json = async (argv: readonly string[], log = LOG) => {
  const ran = await runHere(["chart", ...argv, "--json"], { stdin: log });
  expect(ran.error).toBe("");
  return chartOutput.parse(JSON.parse(ran.out));
};

describe("the chart", () => {
  test("has a cell for every height and temperature; higher and hotter is a smaller main jet", async () => {
    const { cells } = await json(["--heights", "0,1000m,2000", "--temperatures", "0,30C"]);
    expect(cells!.map(({ heightM, temperatureC }) => [heightM, Math.round(temperatureC)])).toEqual([
      [0, 0],
      [0, 30],
      [1000, 0],
      [1000, 30],
      [2000, 0],
      [2000, 30],
    ]);
    const main = cells!.map(({ exactMain }) => exactMain!);
    expect(main[0]).toBeGreaterThan(main[1]!);
    expect(main[0]).toBeGreaterThan(main[2]!);
    expect(main[2]).toBeGreaterThan(main[4]!);
    for (const cell of cells!) expect(cell.main).toBeGreaterThanOrEqual(cell.exactMain!);
  });

  test("in text: a grid with both edges in the units asked for", async () => {
    const { out } = await runHere(["chart", "--us"], { stdin: LOG });
    expect(out).toMatch(/20 °F +40 °F +60 °F/);
    expect(out).toMatch(/^6000 ft +\d+ \/\d/m);
    expect(out).toContain("Taken to be right at 64 °F");
  });

  test("--drawer keeps to the main jets that are owned", async () => {
    const drawer = line(
      "r20",
      "parts-counted",
      {
        parts: [
          { part: "main", number: 160, numbering: "bore", count: 1 },
          { part: "main", number: 190, numbering: "bore", count: 2 },
          { part: "main", number: 170, numbering: "bore", count: 0 },
        ],
      },
      null,
    );
    const { cells } = await json(["--drawer"], `${LOG}\n${drawer}`);
    expect(new Set(cells!.map(({ main }) => main))).toEqual(new Set([160, 175, 190]));
  });

  test("a bike of unknown main jet still gets its screw, and is told", async () => {
    const log = LOG.split("\n")
      .filter((one) => !one.includes("asFound"))
      .join("\n");
    const { out, code } = await runHere(["chart"], { stdin: log });
    expect(code).toBe(0);
    expect(out).toContain("The main jet fitted is not known");
  });

  test.each([
    [["--heights", "0,tall"], '--heights "tall"'],
    [["--heights", ","], "takes 1 to 40 values"],
    [["--temperatures", Array(41).fill("1").join(",")], "takes 1 to 40 values"],
    [["--heights", "9000"], "9000"],
    [["--trip", "pass"], "name:height:coldest"],
    [["--trip", "pass:2000m:4C:x"], "name:height:coldest"],
    [["--trip", "pass:2000m:cold"], '--trip "cold"'],
  ])("%j is refused with what to do", async (argv, words) => {
    const { code, error } = await runHere(["chart", ...argv], { stdin: LOG });
    expect(code).toBe(2);
    expect(error).toContain(words);
  });
});

describe("a trip", () => {
  const trip = ["--trip", "pass:2200m:2C, valley:200m:10C"];

  test("the densest air decides, and no place is leaner than right", async () => {
    const answer = await json(trip);
    expect(answer.cells).toBeNull();
    expect(answer.trip!.decides).toBe("valley");
    for (const { withSafeMain } of answer.trip!.stops)
      expect(withSafeMain.at(-1)!.richerPercent).toBeGreaterThanOrEqual(-1e-6);
    const [pass, valley] = answer.trip!.stops;
    expect(pass!.main).toBeLessThan(answer.trip!.safeMain!);
    expect(valley!.refitBelowM).toBeNull();
    expect(pass!.refitBelowM).toBeGreaterThan(200);
  });

  test("in text: the way back is told, in the units asked for", async () => {
    const { out } = await runHere(["chart", ...trip], { stdin: LOG });
    expect(out).toMatch(/Ride on main jet \d+\. valley decides it/);
    expect(out).toMatch(/back before you go\s+below \d+ m/);
    const us = await runHere(["chart", ...trip, "--us"], { stdin: LOG });
    expect(us.out).toMatch(/back before you\s+go\s+below\s+\d+ ft/);
  });
});
