import { expect } from "vitest";
import { readLog } from "../log-reader.ts";
import { bikeCase, type ReplayedCase } from "./bike-case.ts";
import { replay } from "./replay.ts";
import type { ShopState } from "./shop-state.ts";

// Logs told in short for the tests of cases.

/** A log of records one minute apart from ten o'clock, all of bike "b" unless told; ids r0, r1 ... */
export type Told = [kind: string, body: object, more?: object];
export function stateOf(...told: Told[]): ShopState {
  const log = readLog(
    told.map(([kind, body, more], i) =>
      JSON.stringify({
        id: `r${i}`,
        kind,
        at: `2026-05-02T${10 + Math.floor(i / 60)}:${String(i % 60).padStart(2, "0")}:00.000Z`,
        bike: "b",
        body,
        ...more,
      }),
    ),
  );
  expect(log.problems).toEqual([]);
  return replay(log.entries);
}
export function caseOf(...told: Told[]): ReplayedCase {
  const got = bikeCase(stateOf(...told), "b");
  if (!got.ok) throw new Error(got.detail);
  return got.value;
}
export const codes = (one: ReplayedCase): string[] => one.warnings.map(({ code }) => code);
export const two: Told = ["bike-described", { engine: { strokes: 2 } }];
export const full: Told = [
  "bike-described",
  {
    engine: { strokes: 2, displacementCc: 250 },
    carburetor: {
      bore: { shape: "round", diameterMm: 36 },
      screw: "air",
      nozzle: "primary",
      jetNumbering: "bore",
    },
    place: { heightM: 500 },
  },
];
export const clip = (groove: number): Told => ["setup-fitted", { clip: { groove } }];
export const ride: Told = ["ride-reported", { reports: [{ sign: "answers-crisply", opening: "1/8" }] }];
export const air: Told = ["air-measured", { temperatureC: 20, stationPressureHpa: 960, humidityPercent: 50 }];
export const fuel: Told = ["fuel-used", { oil: "50:1", ethanolPercent: 10, temperatureC: 20 }];
