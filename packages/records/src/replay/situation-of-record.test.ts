import { describe, expect, test } from "vitest";
import { readLog } from "../log-reader.ts";
import { bikeCase } from "./bike-case.ts";
import { replay } from "./replay.ts";
import { AS_FOUND, situationOfRecord } from "./situation-of-record.ts";

const record = (id: string, minute: number, kind: string, body: object): string =>
  JSON.stringify({ id, kind, at: `2026-05-02T10:${String(minute).padStart(2, "0")}:00Z`, bike: "b", body });

const LINES = [
  record("d", 0, "bike-described", { engine: { strokes: 2 }, carburetor: { screw: "air" } }),
  record("s1", 1, "setup-fitted", { main: { number: 175 }, asFound: true }),
  record("a1", 2, "air-measured", { temperatureC: 5, heightM: 100 }),
  record("s2", 3, "setup-fitted", { main: { number: 170 } }),
  record("r2", 4, "ride-reported", { words: "better" }),
  record("a2", 5, "air-measured", { temperatureC: 30, heightM: 1500 }),
  record("s3", 6, "setup-fitted", { main: { number: 165 } }),
];
const state = replay(readLog(LINES).entries);
const at = (id: string) => {
  const found = situationOfRecord(state, "b", id);
  if (!found.ok) throw new Error(found.detail);
  return found.value;
};

describe("a situation by its record", () => {
  test("a ride stands in the setup and air of its time", () => {
    expect(at("r2").setup.main.part?.number).toBe(170);
    expect(at("r2").air.temperature - 273.15).toBeCloseTo(5, 9);
  });

  test("a setup stands in the air it was last ridden in, or in the last noted one", () => {
    expect(at("s2").air.temperature - 273.15).toBeCloseTo(5, 9);
    expect(at("s3").air.temperature - 273.15).toBeCloseTo(30, 9);
  });

  test("the setup fitted now is that of the case", () => {
    const now = bikeCase(state, "b");
    expect(now.ok && now.value.now.setup).toEqual(at("s3").setup);
  });

  test("parts that were found fitted are those of before the first change", () => {
    expect(at("s1").setup.main.part?.number).toBe(175);
    expect(at(AS_FOUND)).toEqual(at("s1"));
  });

  test("a name that is not there is refused with a hint", () => {
    const missing = situationOfRecord(state, "b", "s4");
    expect(missing).toMatchObject({ ok: false, reason: "no-such-record" });
    expect(!missing.ok && missing.detail).toContain("s3");
    expect(situationOfRecord(state, "nobody", "s1")).toMatchObject({ ok: false, reason: "no-such-bike" });
  });
});
