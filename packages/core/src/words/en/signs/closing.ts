import type { SignWords } from "../../entry.ts";

/** What the engine does when the throttle is closed. */
export const closingTheThrottle = {
  "drops-straight-to-idle": {
    words: "Drops straight to idle and stays",
    description: "Let go, and the revs fall at once to idle and stay there; no hanging, no dip.",
    notToBeTakenFor: "A heavy flywheel falls more slowly, and that is normal.",
    when: "Throttle closed from middle revs, clutch in or neutral",
  },
  "hangs-after-closing": {
    words: "Revs hang before they drop",
    description:
      "Let go, and it stays well above idle for one to five seconds, humming along clean and thin, then falls late.",
    notToBeTakenFor: "Some engines are always slow to fall: compare with how this one was.",
    when: "Throttle closed from middle revs, clutch in or neutral",
  },
  "dives-below-idle": {
    words: "Revs dive below idle, then climb back",
    description:
      "Let go, and the revs drop right through idle, nearly die, and crawl back with a wet burble.",
    notToBeTakenFor: "An engine not warm yet.",
    when: "Throttle closed from middle revs, clutch in or neutral",
  },
  "stalls-on-closing": {
    words: "Stalls when the throttle is closed",
    description: "Braking or turning in with the throttle shut, it dies and has to be kicked or bumped.",
    notToBeTakenFor: "Stalling it with the rear brake.",
    when: "Braking, corner entry",
  },
  "hangs-only-when-hot": {
    words: "Hangs only when hot",
    description: "Cool, it drops cleanly to idle; after a hard lap it stays up for seconds before it falls.",
    notToBeTakenFor: "Fuel boiling in the bowl.",
    when: "After a hard lap, compared with before it",
  },
  "hang-grows-with-heat": {
    words: "The hang grows as it gets hotter",
    description:
      "The hang after closing the throttle lasts clearly longer hot than warm: half a second more, or growing lap by lap.",
    when: "The same closing of the throttle timed warm and again hot",
  },
  "hang-no-longer-when-hot": {
    words: "The hang is no longer hot than warm",
    description: "Timed warm and again hot, the hang lasts the same.",
    when: "The same closing of the throttle timed warm and again hot",
  },
  "hang-gone-with-half-a-turn": {
    words: "Half a turn of the small screw cures the hang",
    description:
      "With the small screw half a turn toward more fuel the revs drop straight; put back, they hang again.",
    when: "Warm, throttle closed from middle revs before and after half a turn",
  },
  "hang-stays-after-half-a-turn": {
    words: "The hang stays the same after half a turn",
    description: "Half a turn of the small screw toward more fuel, and the revs hang just as long.",
    when: "Warm, throttle closed from middle revs before and after half a turn",
  },
  "hang-stays-two-pilots-up": {
    words: "The hang stays with a pilot two sizes up",
    description: "Two sizes more pilot jet, screw set again, and the revs hang as before.",
    when: "Warm, after the change",
  },
  "runs-on-by-itself": {
    words: "Runs on or revs up by itself",
    description:
      "The engine keeps pulling or climbs with the throttle shut, perhaps even with the kill switch held.",
    when: "Any time: stop riding",
  },
  "pops-on-closed-throttle-two-stroke": {
    words: "Pops in the pipe on a closed throttle",
    description: "Dry pops or cracks from the silencer while the bike slows the engine down.",
    notToBeTakenFor: "A soft, smoky after-burn.",
    when: "Rolling down with the throttle shut, in gear",
  },
  "pops-on-closed-throttle-four-stroke": {
    words: "Pops in the pipe on a closed throttle",
    description: "A string of dry pops from the silencer while the bike slows the engine down.",
    notToBeTakenFor: "An exhaust joint drawing air, or the air valve some engines have for slowing down.",
    when: "Rolling down with the throttle shut, in gear",
  },
  "gargles-after-long-descent": {
    words: "Gargles when opened after a long descent",
    description:
      "After minutes on a shut throttle the first opening is wet: a gargle and a puff of smoke, then clean.",
    notToBeTakenFor: "A little of it is normal: oil pools in the crankcase.",
    when: "First opening after a long downhill",
  },
} satisfies Readonly<Record<string, SignWords>>;
