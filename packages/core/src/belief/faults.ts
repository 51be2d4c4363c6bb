import type { Fault, FaultId } from "./catalogue.ts";

// Chances before anything is known: of 72 rider questions and case stories read, 22 had a mechanical fault
// behind the complaint, so about a third is shared out. The sharing is an estimate: air leak, fuel supply and
// dirt, float and ignition come first. Zero where that engine has no such part.

const SOURCE = "22 of 72 rider reports had a mechanical fault behind them; the sharing out [estimate]";

/** Every mechanical fault held, with how likely it is on a bike brought in with a running complaint. */
export const FAULT_CATALOGUE: readonly Fault[] = [
  {
    id: "air-leak",
    words: "an air leak",
    does: "Air gets in past the carburetor, so the engine runs thin at idle and small throttle, hangs after closing, and more so hot.",
    prior: { two: 0.055, four: 0.045 },
    touches: "closed to 1/4, less as the throttle opens",
    source: `an oil maker's page on leak testing, scooterlab.uk [read]; ${SOURCE}`,
  },
  {
    id: "blocked-pilot",
    words: "a blocked pilot jet or passage",
    does: "Dirt keeps fuel out of the idle circuit: it idles badly or not at all and wants the choke.",
    prior: { two: 0.03, four: 0.04 },
    touches: "closed to 1/8",
    source: `engineerfix.com on running only on choke [read]; ${SOURCE}`,
  },
  {
    id: "float-level",
    words: "a wrong float height",
    does: "Fuel stands too high or too low in the bowl: thick or thin at low revs, and it changes on bumps and slopes.",
    prior: { two: 0.025, four: 0.025 },
    touches: "every opening, most at low revs and on slopes",
    source: `a maker's workshop manual on a leaning float [read]; ${SOURCE}`,
  },
  {
    id: "float-valve",
    words: "a leaking float valve",
    does: "The valve does not shut off: the bowl overfills, it floods, drips, and runs thick everywhere.",
    prior: { two: 0.025, four: 0.025 },
    touches: "every opening, most at idle and hot starts",
    source: `a table of carburetor faults [read]; ${SOURCE}`,
  },
  {
    id: "fuel-supply",
    words: "too little fuel coming from the tank",
    does: "Tap, cap vent, filter or hose lets too little through: good for seconds at full throttle, then it fades or dies.",
    prior: { two: 0.035, four: 0.035 },
    touches: "long full throttle",
    source: `an aircraft kit maker's service bulletin on vents [read]; ${SOURCE}`,
  },
  {
    id: "choke-not-seating",
    words: "a choke that does not shut fully",
    does: "The plunger leaks or its cable is tight: extra fuel below 1/4, it loads up and fouls plugs.",
    prior: { two: 0.015, four: 0.015 },
    touches: "closed to 1/4",
    source: `rider reports, cases 22 and 53; ${SOURCE}`,
  },
  {
    id: "air-filter",
    words: "a dirty, wet or torn air filter",
    does: "Clogged, it chokes the engine most at full throttle and high revs; torn, it lets the idle wander and dirt in.",
    prior: { two: 0.015, four: 0.015 },
    touches: "full throttle at high revs",
    source: `a table of carburetor faults, mobilemotorcyclemechanic.blogspot 2011 [read]; ${SOURCE}`,
  },
  {
    id: "slide-or-cable",
    words: "a sticking slide or cable",
    does: "The slide does not come home, or hangs crooked or worn: high or wandering idle, hanging, revs that rise by themselves.",
    prior: { two: 0.01, four: 0.01 },
    touches: "closed, and whenever the throttle is shut",
    source: `trialscentral.com 63536 [read]; ${SOURCE}`,
  },
  {
    id: "worn-needle-and-jet",
    words: "a worn needle and needle jet",
    does: "The gap between them has grown: thick from 1/8 to 3/4, right at full throttle, more fuel used, no clip cures it.",
    prior: { two: 0.012, four: 0.012 },
    touches: "1/8 to 3/4",
    source: `oppermann-einbeck.de [read]; ${SOURCE}`,
  },
  {
    id: "reed",
    words: "chipped or tired reeds",
    does: "The petals do not shut: hard starting, fuel mist at the carburetor mouth, weak low end, high idle.",
    prior: { two: 0.01, four: 0 },
    touches: "closed to 1/2",
    source: `a table of carburetor faults [read]; ${SOURCE}`,
  },
  {
    id: "ignition",
    words: "a weak spark or wrong timing",
    does: "It misses and wets or blackens plugs as if it had too much fuel, worse the harder it pulls; wrong timing makes it ping.",
    prior: { two: 0.03, four: 0.03 },
    touches: "under load, everywhere",
    source: `bonecutteroffroad.com on plugs [read]; separation from memory; ${SOURCE}`,
  },
  {
    id: "plug-heat-range",
    words: "a plug of the wrong heat range",
    does: "The plug looks black or white whatever the jets, while speed and sound stay the same.",
    prior: { two: 0.005, four: 0.005 },
    touches: "what the plug shows, not how it runs",
    source: `memory; ${SOURCE}`,
  },
  {
    id: "compression",
    words: "low compression",
    does: "Worn rings or a tired cylinder: weak, lazy, hard to start hot, and it looks as if it had too much fuel.",
    prior: { two: 0.01, four: 0.012 },
    touches: "every opening",
    source: `a magazine article on keeping a two-stroke alive [read]; ${SOURCE}`,
  },
  {
    id: "gearbox-side-seal",
    words: "a crank seal passing gearbox oil",
    does: "Gearbox oil is drawn in and burnt: steady smoke, oily plugs, wet silencer, and the gearbox oil goes missing.",
    prior: { two: 0.01, four: 0 },
    touches: "every opening, most after long closed throttle",
    source: `an oil maker's page on leak testing [read]; ${SOURCE}`,
  },
  {
    id: "exhaust-blocked",
    words: "a blocked pipe or silencer",
    does: "Carbon or collapsed packing holds the gas back: flat on top, hot, and no jet cures it.",
    prior: { two: 0.008, four: 0.006 },
    touches: "3/4 to full",
    source: `memory; ${SOURCE}`,
  },
  {
    id: "power-valve",
    words: "a stuck power valve",
    does: "Stuck open the low end is flat, stuck shut the top end is; the step in power is missing and jets do not move it.",
    prior: { two: 0.008, four: 0 },
    touches: "by revs, not by throttle",
    source: `memory; ${SOURCE}`,
  },
  {
    id: "fuel-or-oil-wrong",
    words: "old, wet or wrong fuel, or a wrong oil ratio",
    does: "Water, stale petrol, too little octane or a wrong mix: hard starting, coughing, pinging, whatever the jets.",
    prior: { two: 0.01, four: 0.012 },
    touches: "every opening",
    source: `a table of carburetor faults [read]; ${SOURCE}`,
  },
  {
    id: "cooling",
    words: "a cooling fault",
    does: "Coolant, pump, radiator or fins do not carry the heat away: strong cold, weaker and pinging as it heats.",
    prior: { two: 0.005, four: 0.005 },
    touches: "every opening, growing with time",
    source: `memory; ${SOURCE}`,
  },
  {
    id: "loose-head",
    words: "a loose head or plug",
    does: "Gas leaks at the head joint or plug thread: weak, hot, loses coolant, and answers to no jet.",
    prior: { two: 0.006, four: 0.003 },
    touches: "every opening",
    source: `rider reports, cases 42 and 52; ${SOURCE}`,
  },
  {
    id: "idle-stop",
    words: "a wrong idle stop setting",
    does: "The slide stands too high or too low at rest: it hangs and will not answer the small screw, or it dives and stalls.",
    prior: { two: 0.006, four: 0.006 },
    touches: "closed",
    source: `memory; ${SOURCE}`,
  },
  {
    id: "accelerator-pump",
    words: "an accelerator pump out of time",
    does: "The squirt comes late, short or not at all: it bogs on a fast opening and is clean on a slow one.",
    prior: { two: 0, four: 0.015 },
    touches: "quick openings from closed",
    source: `memory; ${SOURCE}`,
  },
  {
    id: "valve-clearance",
    words: "tight valves",
    does: "Valves that do not quite shut: hard starting, spitting back, hanging or unsteady idle, popping on a closed throttle.",
    prior: { two: 0, four: 0.014 },
    touches: "closed to 1/8, and starting",
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
