import type { Chance } from "../chance.ts";
import type { Broken } from "../truth/bike.ts";

/** How often a look finds each fault when it is bad; slight ones are missed more. Our own estimates. */
const FINDS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  "look-at-boots-and-clamps": { "air-leak": 0.55 },
  "spray-joints": { "air-leak": 0.75 },
  "pressure-test": { "air-leak": 0.97, "gearbox-side-seal": 0.85, "loose-head": 0.4 },
  "idle-stop": { "idle-stop": 0.95 },
  "tap-and-vents": { "fuel-supply": 0.55 },
  "fuel-flow": { "fuel-supply": 0.9 },
  "overflow-drip": { "float-valve": 0.85, "float-level": 0.15 },
  "air-filter": { "air-filter": 0.97 },
  "slide-snap-and-cable": { "slide-or-cable": 0.9 },
  "fresh-fuel-and-oil": { "fuel-or-oil-wrong": 0.9 },
  "choke-plunger": { "choke-not-seating": 0.9 },
  "spark-and-plug": { ignition: 0.65, "plug-heat-range": 0.9 },
  "ignition-timing": { ignition: 0.55 },
  "head-and-plug-tight": { "loose-head": 0.9 },
  cooling: { cooling: 0.85, "loose-head": 0.25 },
  compression: { compression: 0.9, "valve-clearance": 0.3, "loose-head": 0.3 },
  "gearbox-oil-and-smoke": { "gearbox-side-seal": 0.75 },
  "clean-pilot": { "blocked-pilot": 0.95 },
  "float-height": { "float-level": 0.95, "float-valve": 0.5 },
  "measure-needle-and-jet": { "worn-needle-and-jet": 0.9 },
  reeds: { reed: 0.9 },
  "exhaust-and-silencer": { "exhaust-blocked": 0.85 },
  "power-valve": { "power-valve": 0.9 },
  "pump-timing": { "accelerator-pump": 0.9 },
  "valve-clearance": { "valve-clearance": 0.97 },
};

/** A look at something sound calls it faulty this often. */
const FALSE_ALARM = 0.03;

/** Minutes of each look when many are made in one go, the tools at hand and the plug out for all. Our own estimates. */
const IN_ONE_GO: Readonly<Record<string, number>> = {
  "air-filter": 4,
  "look-at-boots-and-clamps": 3,
  "slide-snap-and-cable": 3,
  "tap-and-vents": 3,
  "overflow-drip": 2,
  "fuel-flow": 4,
  "choke-plunger": 6,
  "spark-and-plug": 6,
  "head-and-plug-tight": 5,
  compression: 5,
  "fresh-fuel-and-oil": 8,
  cooling: 6,
};
/** Fetching the tools, and the plug out and in. */
const SETTING_UP = 4;

/** What a walk round the bike with these looks takes, the same for whoever makes it. */
export function minutesInOneGo(ids: readonly string[]): number {
  return ids.reduce((sum, id) => {
    const minutes = IN_ONE_GO[id];
    if (minutes === undefined) throw new RangeError(`The world knows no look "${id}" made in one go`);
    return sum + minutes;
  }, SETTING_UP);
}

export interface Looked {
  readonly found: "sound" | "faulty";
  readonly fault: string | null;
}

export function look(chance: Chance, id: string, broken: Broken | null): Looked {
  const finds = FINDS[id];
  if (finds === undefined) throw new RangeError(`The world knows no look called "${id}"`);
  const seen = chance.uniform();
  const alarm = chance.uniform();
  const bad = broken === null ? 0 : (finds[broken.fault] ?? 0) * (0.65 + 0.35 * broken.severity);
  if (broken !== null && seen < bad) return { found: "faulty", fault: broken.fault };
  if (alarm < FALSE_ALARM) return { found: "faulty", fault: Object.keys(finds)[0]! };
  return { found: "sound", fault: null };
}

export const looksFor = (fault: string): readonly string[] =>
  Object.keys(FINDS).filter((id) => FINDS[id]![fault] !== undefined);
