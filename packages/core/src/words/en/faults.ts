import type { FaultWords } from "../entry.ts";

/** Mechanical faults, named so that the name can stand at the start of a sentence or in it. */
export const faults = {
  "air-leak": { words: "an air leak" },
  "blocked-pilot": { words: "a blocked pilot jet or passage" },
  "float-level": { words: "a wrong float height" },
  "float-valve": { words: "a leaking float valve" },
  "fuel-supply": { words: "too little fuel coming from the tank" },
  "choke-not-seating": { words: "a choke that does not shut fully" },
  "air-filter": { words: "a dirty, wet or torn air filter" },
  "slide-or-cable": { words: "a sticking slide or cable" },
  "worn-needle-and-jet": { words: "a worn needle and needle jet" },
  reed: { words: "chipped or tired reeds" },
  ignition: { words: "a weak spark or wrong timing" },
  "plug-heat-range": { words: "a plug of the wrong heat range" },
  compression: { words: "low compression" },
  "gearbox-side-seal": { words: "a crank seal passing gearbox oil" },
  "exhaust-blocked": { words: "a blocked pipe or silencer" },
  "power-valve": { words: "a stuck power valve" },
  "fuel-or-oil-wrong": { words: "old, wet or wrong fuel, or a wrong oil ratio" },
  cooling: { words: "a cooling fault" },
  "loose-head": { words: "a loose head or plug" },
  "idle-stop": { words: "a wrong idle stop setting" },
  "accelerator-pump": { words: "an accelerator pump out of time" },
  "valve-clearance": { words: "tight valves" },
} satisfies Readonly<Record<string, FaultWords>>;
