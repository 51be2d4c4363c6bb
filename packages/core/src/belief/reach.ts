import type { FaultId } from "./catalogue.ts";

/**
 * The stretch of openings, from and to, over which a fault hides what a change of parts does. Estimate, from
 * the general rule: a leak is inverse to air flow, an air restriction grows with flow squared, a supply
 * fault starves the top, ignition follows cylinder pressure.
 */
export const FAULT_REACH: Readonly<Record<FaultId, readonly [number, number]>> = {
  "air-leak": [0, 0.5],
  "blocked-pilot": [0, 0.25],
  "float-level": [0, 1],
  "float-valve": [0, 0.5],
  "fuel-supply": [0.5, 1],
  "choke-not-seating": [0, 0.5],
  "air-filter": [0.375, 1],
  "slide-or-cable": [0, 0.25],
  "worn-needle-and-jet": [0.125, 0.75],
  reed: [0, 0.5],
  ignition: [0.25, 1],
  "plug-heat-range": [0.5, 1],
  compression: [0, 1],
  "gearbox-side-seal": [0, 0.5],
  "exhaust-blocked": [0.5, 1],
  "power-valve": [0.375, 1],
  "fuel-or-oil-wrong": [0, 1],
  cooling: [0.5, 1],
  "loose-head": [0, 1],
  "idle-stop": [0, 0.0625],
  "accelerator-pump": [0, 0.5],
  "valve-clearance": [0, 0.5],
};

export function reaches(fault: FaultId, opening: number): boolean {
  const [from, to] = FAULT_REACH[fault];
  return opening >= from && opening <= to;
}
