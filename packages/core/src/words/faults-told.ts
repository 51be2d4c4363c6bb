import type { FaultWordsId } from "./core-words.ts";

/** What a fault does to the engine, one sentence, and the stretch of openings it touches most. */
export interface FaultTold {
  readonly does: string;
  readonly touches: string;
}

/** Told by `jetwright signs --faults` alone, so in English and apart from what the app loads. */
export const faultsTold: Readonly<Record<FaultWordsId, FaultTold>> = {
  "air-leak": {
    does: "Air gets in past the carburetor, so the engine runs thin at idle and small throttle, hangs after closing, and more so hot.",
    touches: "closed to 1/4, less as the throttle opens",
  },
  "blocked-pilot": {
    does: "Dirt keeps fuel out of the idle circuit: it idles badly or not at all and wants the choke.",
    touches: "closed to 1/8",
  },
  "float-level": {
    does: "Fuel stands too high or too low in the bowl: thick or thin at low revs, and it changes on bumps and slopes.",
    touches: "every opening, most at low revs and on slopes",
  },
  "float-valve": {
    does: "The valve does not shut off: the bowl overfills, it floods, drips, and runs thick everywhere.",
    touches: "every opening, most at idle and hot starts",
  },
  "fuel-supply": {
    does: "Tap, cap vent, filter or hose lets too little through: good for seconds at full throttle, then it fades or dies.",
    touches: "long full throttle",
  },
  "choke-not-seating": {
    does: "The plunger leaks or its cable is tight: extra fuel below 1/4, it loads up and fouls plugs.",
    touches: "closed to 1/4",
  },
  "air-filter": {
    does: "Clogged, it chokes the engine most at full throttle and high revs; torn, it lets the idle wander and dirt in.",
    touches: "full throttle at high revs",
  },
  "slide-or-cable": {
    does: "The slide does not come home, or hangs crooked or worn: high or wandering idle, hanging, revs that rise by themselves.",
    touches: "closed, and whenever the throttle is shut",
  },
  "worn-needle-and-jet": {
    does: "The gap between them has grown: thick from 1/8 to 3/4, right at full throttle, more fuel used, no clip cures it.",
    touches: "1/8 to 3/4",
  },
  reed: {
    does: "The petals do not shut: hard starting, fuel mist at the carburetor mouth, weak low end, high idle.",
    touches: "closed to 1/2",
  },
  ignition: {
    does: "It misses and wets or blackens plugs as if it had too much fuel, worse the harder it pulls; wrong timing makes it ping.",
    touches: "under load, everywhere",
  },
  "plug-heat-range": {
    does: "The plug looks black or white whatever the jets, while speed and sound stay the same.",
    touches: "what the plug shows, not how it runs",
  },
  compression: {
    does: "Worn rings or a tired cylinder: weak, lazy, hard to start hot, and it looks as if it had too much fuel.",
    touches: "every opening",
  },
  "gearbox-side-seal": {
    does: "Gearbox oil is drawn in and burnt: steady smoke, oily plugs, wet silencer, and the gearbox oil goes missing.",
    touches: "every opening, most after long closed throttle",
  },
  "exhaust-blocked": {
    does: "Carbon or collapsed packing holds the gas back: flat on top, hot, and no jet cures it.",
    touches: "3/4 to full",
  },
  "power-valve": {
    does: "Stuck open the low end is flat, stuck shut the top end is; the step in power is missing and jets do not move it.",
    touches: "by revs, not by throttle",
  },
  "fuel-or-oil-wrong": {
    does: "Water, stale petrol, too little octane or a wrong mix: hard starting, coughing, pinging, whatever the jets.",
    touches: "every opening",
  },
  cooling: {
    does: "Coolant, pump, radiator or fins do not carry the heat away: strong cold, weaker and pinging as it heats.",
    touches: "every opening, growing with time",
  },
  "loose-head": {
    does: "Gas leaks at the head joint or plug thread: weak, hot, loses coolant, and answers to no jet.",
    touches: "every opening",
  },
  "idle-stop": {
    does: "The slide stands too high or too low at rest: it hangs and will not answer the small screw, or it dives and stalls.",
    touches: "closed",
  },
  "accelerator-pump": {
    does: "The squirt comes late, short or not at all: it bogs on a fast opening and is clean on a slow one.",
    touches: "quick openings from closed",
  },
  "valve-clearance": {
    does: "Valves that do not quite shut: hard starting, spitting back, hanging or unsteady idle, popping on a closed throttle.",
    touches: "closed to 1/8, and starting",
  },
};
