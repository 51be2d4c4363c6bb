import type { Chance } from "../chance.ts";
import type { Broken, Engine } from "./bike.ts";

/** How often a workshop meets each: air, fuel, dirt and spark lead. Our own guess, not the tool's. */
const OFTEN: readonly (readonly [string, number, "both" | 2 | 4])[] = [
  ["air-leak", 5, "both"],
  ["blocked-pilot", 3, "both"],
  ["fuel-supply", 3, "both"],
  ["ignition", 3, "both"],
  ["air-filter", 2.5, "both"],
  ["float-level", 2, "both"],
  ["choke-not-seating", 2, "both"],
  ["worn-needle-and-jet", 2, "both"],
  ["float-valve", 1.5, "both"],
  ["slide-or-cable", 1.5, "both"],
  ["fuel-or-oil-wrong", 1, "both"],
  ["compression", 1.5, "both"],
  ["reed", 1.5, 2],
  ["gearbox-side-seal", 1, 2],
  ["exhaust-blocked", 0.7, "both"],
  ["power-valve", 0.8, 2],
  ["cooling", 0.6, "both"],
  ["loose-head", 0.5, "both"],
  ["idle-stop", 0.8, "both"],
  ["plug-heat-range", 0.4, "both"],
  ["accelerator-pump", 1, 4],
  ["valve-clearance", 1.2, 4],
];

export function drawFault(chance: Chance, { strokes, pump }: Engine): Broken {
  const possible = OFTEN.filter(
    ([fault, , who]) => (who === "both" || who === strokes) && (fault !== "accelerator-pump" || pump),
  );
  const fault = chance.weighted(possible.map(([name, weight]) => [name, weight] as const));
  return {
    fault,
    severity: chance.between(0.4, 1),
    way: chance.of(fault === "air-filter" ? 0.8 : 0.5) ? 1 : -1,
  };
}
