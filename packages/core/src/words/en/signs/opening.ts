import type { SignWords } from "../../entry.ts";

/** What the engine does when the throttle is opened. */
export const openingTheThrottle = {
  "answers-crisply": {
    words: "Answers crisply at once",
    description: "Open it, and the revs jump with the hand: a clean bark, no pause, no cough.",
    when: "Warm, snapped from closed to 1/4",
  },
  "bogs-hollow-no-smoke": {
    words: "Bogs: a hollow gasp, then nothing",
    description:
      "Open it on a big handful and it sags: a hollow gasp, the engine goes silent, no smoke, as if out of petrol; it may catch again with a jump.",
    notToBeTakenFor: "The stumble, which keeps firing, gargles and smokes. This is the commonest mix-up.",
    when: "Warm, opened quickly from closed to between 1/4 and 1/2",
  },
  "stumbles-with-smoke": {
    words: "Stumbles: gargles and smokes, slow to rev",
    description:
      "Open it and it misses but keeps firing: a wet gargle, blubbering, slow to pick up, smoke at the silencer; it clears as the revs rise.",
    notToBeTakenFor: "The bog, which goes silent and leaves no smoke.",
    when: "Warm, snapped or rolled open from low revs",
  },
  "fast-opening-bogs-slow-is-fine": {
    words: "Bogs when opened fast, fine when opened slowly",
    description: "Whacked open it sags and gasps; rolled open over a second it pulls away clean.",
    notToBeTakenFor: "A gear too high: no engine likes full throttle far below its power.",
    when: "Warm, closed to full from low revs, then the same slowly",
  },
  "fast-opening-bogs-slow-is-clean-four-stroke": {
    words: "Bogs when opened fast, clean when opened slowly",
    description:
      "A quick twist makes it gasp and sag or hiccup once; the same opening rolled on slowly is perfectly clean.",
    notToBeTakenFor: "A gear too high.",
    when: "Warm, closed to 1/2 fast, then the same slowly",
  },
  "delay-then-sudden-hit": {
    words: "Nothing, then a sudden hit",
    description: "Like a switch: a pause after opening, then it hits all at once with a thin metallic note.",
    notToBeTakenFor: "The jerk of a power valve opening.",
    when: "Out of corners",
  },
  "cuts-out-on-landing": {
    words: "Cuts out on landings or hard braking",
    description:
      "Runs well on smooth ground; a landing, a row of bumps or hard braking makes it cut or cough for a moment.",
    notToBeTakenFor: "A wire that touches bare metal on bumps.",
    when: "Jumps, bumps, hard braking",
  },
  "revs-rise-over-bumps": {
    words: "Revs rise over bumps with a steady hand",
    description: "Over a row of bumps the engine speeds up by itself though the hand does not move.",
    notToBeTakenFor: "The rider's wrist.",
    when: "Bumps, throttle held still",
  },
  "changes-on-slopes": {
    words: "Runs differently uphill and downhill",
    description:
      "Clean on the flat at that throttle; nose up or nose down for a while and it thickens or starves.",
    when: "Long steep climb or descent, throttle held still",
  },
  "no-step-where-the-power-valve-opens": {
    words: "The hit in the middle of the revs is missing",
    description:
      "It pulls evenly and weakly where there used to be a clear step in power, whatever jets are in.",
    when: "3rd gear, rolled on through the middle revs",
  },
} satisfies Readonly<Record<string, SignWords>>;
