import type { Fault, FaultId } from "./catalogue.ts";

// Chances before anything is known: of 72 rider questions and case stories read, 22 had a mechanical fault
// behind the complaint, so about a third is shared out. The sharing is an estimate: air leak, fuel supply and
// dirt, float and ignition come first. Zero where that engine has no such part.

const SOURCE = "22 of 72 rider reports had a mechanical fault behind them; the sharing out [estimate]";

/** Every mechanical fault held, with how likely it is on a bike brought in with a running complaint. */
export const FAULT_CATALOGUE: readonly Fault[] = [
  {
    id: "air-leak",
    prior: { two: 0.055, four: 0.045 },
    source: `an oil maker's page on leak testing, scooterlab.uk [read]; ${SOURCE}`,
  },
  {
    id: "blocked-pilot",
    prior: { two: 0.03, four: 0.04 },
    source: `engineerfix.com on running only on choke [read]; ${SOURCE}`,
  },
  {
    id: "float-level",
    prior: { two: 0.025, four: 0.025 },
    source: `a maker's workshop manual on a leaning float [read]; ${SOURCE}`,
  },
  {
    id: "float-valve",
    prior: { two: 0.025, four: 0.025 },
    source: `a table of carburetor faults [read]; ${SOURCE}`,
  },
  {
    id: "fuel-supply",
    prior: { two: 0.035, four: 0.035 },
    source: `an aircraft kit maker's service bulletin on vents [read]; ${SOURCE}`,
  },
  {
    id: "choke-not-seating",
    prior: { two: 0.015, four: 0.015 },
    source: `rider reports, cases 22 and 53; ${SOURCE}`,
  },
  {
    id: "air-filter",
    prior: { two: 0.015, four: 0.015 },
    source: `a table of carburetor faults, mobilemotorcyclemechanic.blogspot 2011 [read]; ${SOURCE}`,
  },
  {
    id: "slide-or-cable",
    prior: { two: 0.01, four: 0.01 },
    source: `trialscentral.com 63536 [read]; ${SOURCE}`,
  },
  {
    id: "worn-needle-and-jet",
    prior: { two: 0.012, four: 0.012 },
    source: `oppermann-einbeck.de [read]; ${SOURCE}`,
  },
  {
    id: "reed",
    prior: { two: 0.01, four: 0 },
    source: `a table of carburetor faults [read]; ${SOURCE}`,
  },
  {
    id: "ignition",
    prior: { two: 0.03, four: 0.03 },
    source: `bonecutteroffroad.com on plugs [read]; separation from memory; ${SOURCE}`,
  },
  {
    id: "plug-heat-range",
    prior: { two: 0.005, four: 0.005 },
    source: `memory; ${SOURCE}`,
  },
  {
    id: "compression",
    prior: { two: 0.01, four: 0.012 },
    source: `a magazine article on keeping a two-stroke alive [read]; ${SOURCE}`,
  },
  {
    id: "gearbox-side-seal",
    prior: { two: 0.01, four: 0 },
    source: `an oil maker's page on leak testing [read]; ${SOURCE}`,
  },
  {
    id: "exhaust-blocked",
    prior: { two: 0.008, four: 0.006 },
    source: `memory; ${SOURCE}`,
  },
  {
    id: "power-valve",
    prior: { two: 0.008, four: 0 },
    source: `memory; ${SOURCE}`,
  },
  {
    id: "fuel-or-oil-wrong",
    prior: { two: 0.01, four: 0.012 },
    source: `a table of carburetor faults [read]; ${SOURCE}`,
  },
  {
    id: "cooling",
    prior: { two: 0.005, four: 0.005 },
    source: `memory; ${SOURCE}`,
  },
  {
    id: "loose-head",
    prior: { two: 0.006, four: 0.003 },
    source: `rider reports, cases 42 and 52; ${SOURCE}`,
  },
  {
    id: "idle-stop",
    prior: { two: 0.006, four: 0.006 },
    source: `memory; ${SOURCE}`,
  },
  {
    id: "accelerator-pump",
    prior: { two: 0, four: 0.015 },
    source: `memory; ${SOURCE}`,
  },
  {
    id: "valve-clearance",
    prior: { two: 0, four: 0.014 },
    source: `dirtbikeempire.com on valves [read]; ${SOURCE}`,
  },
];

const byId = new Map(FAULT_CATALOGUE.map((fault) => [fault.id, fault]));

/** What is known of a fault. Throws RangeError if the catalogue lacks it, which would be our bug. */
export function faultById(id: FaultId): Fault {
  const fault = byId.get(id);
  if (fault === undefined) throw new RangeError(`Fault "${id}" is not in the catalogue`);
  return fault;
}
