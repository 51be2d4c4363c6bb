import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { runBike } from "./measure/run-bike.ts";
import { newNotes } from "./policies/notes.ts";
import { oracle } from "./policies/oracle.ts";
import { ours } from "./policies/ours.ts";
import { symptomChart } from "./policies/symptom-chart.ts";
import { drawBike } from "./truth/draw-bike.ts";
import { endsAnEngine } from "./world/limits.ts";
import { ride } from "./world/report-of.ts";
import { World } from "./world/world.ts";

const sources = (folder: string): readonly string[] =>
  readdirSync(new URL(folder, import.meta.url))
    .filter((name) => !name.endsWith(".test.ts"))
    .map((name) => readFileSync(new URL(`${folder}/${name}`, import.meta.url), "utf8"));

describe("the world does not know the tool", () => {
  test("neither truth nor world imports the core: no model, no chances of the sign catalogue", () => {
    for (const text of [...sources("./truth"), ...sources("./world")])
      expect(text).not.toMatch(/@jetwright|packages\/core/);
  });

  test("the core knows no name of the proving ground", () => {
    const files = readdirSync(new URL("../../core/src", import.meta.url), { recursive: true })
      .map(String)
      .filter((name) => name.endsWith(".ts"));
    expect(files.length).toBeGreaterThan(100);
    for (const name of files) {
      const text = readFileSync(new URL(`../../core/src/${name}`, import.meta.url), "utf8");
      expect(text, name).not.toMatch(/jetwright\/proving|packages\/proving/);
    }
  });
});

describe("the same seed tells the same story", () => {
  test("the first report is the same whoever asks, and another bike's is another", () => {
    const first = (seed: string): string => JSON.stringify(ride(new World(drawBike(seed)), "free"));
    expect(first("same-1")).toBe(first("same-1"));
    expect(new Set(["same-1", "same-2", "same-3"].map(first)).size).toBe(3);
  });

  test("a whole run comes out the same twice", () => {
    for (const policy of [ours(false), symptomChart]) {
      const once = (): string => JSON.stringify(runBike("same-4", policy));
      expect(once()).toBe(once());
    }
  });
});

describe("the judge", () => {
  test("the oracle gets nearly every bike clean, with no engine lost", () => {
    const runs = Array.from({ length: 25 }, (_, i) => runBike(`judge-${i}`, oracle));
    expect(runs.filter(({ cleanAtEnd }) => cleanAtEnd).length).toBeGreaterThanOrEqual(21);
    expect(runs.some(({ engineLost }) => engineLost)).toBe(false);
  });

  test("a third of the bikes have a fault, and every sound one has a complaint", () => {
    const drawn = Array.from({ length: 150 }, (_, i) => drawBike(`judge-${i}`));
    const broken = drawn.filter((each) => each.broken !== null).length;
    expect(broken).toBeGreaterThan(30);
    expect(broken).toBeLessThan(70);
  });

  test("a lean top ends an engine by how lean, how long and how many strokes", () => {
    expect(endsAnEngine(2, -0.14, "free", 0.5)).toBe(true);
    expect(endsAnEngine(4, -0.14, "free", 0.5)).toBe(false);
    expect(endsAnEngine(2, -0.14, "seconds only", 0.5)).toBe(false);
    expect(endsAnEngine(2, -0.3, "stay below 3/4", 0)).toBe(false);
    expect(endsAnEngine(2, -0.11, "free", 0.05)).toBe(true);
    expect(endsAnEngine(2, -0.11, "free", 0.5)).toBe(false);
    expect(endsAnEngine(2, -0.09, "free", 0)).toBe(false);
  });

  test("a fault left in place is never clean, however right the jets are", () => {
    const seed = Array.from({ length: 60 }, (_, i) => `judge-${i}`).find(
      (each) => drawBike(each).broken?.fault === "ignition" || drawBike(each).broken?.fault === "air-leak",
    );
    const world = new World(drawBike(seed!));
    oracle.work(world, newNotes());
    expect(world.broken).toBe(null);
    const untouched = new World(drawBike(seed!));
    ride(untouched, "free");
    expect(untouched.isClean()).toBe(false);
  });
});
