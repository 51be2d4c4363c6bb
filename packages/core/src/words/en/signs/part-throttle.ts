import type { SignWords } from "../../entry.ts";

/** Riding at part throttle. */
export const partThrottle = {
  "pulls-smoothly": {
    words: "Pulls smoothly at that throttle",
    description:
      "Holds a steady, even note at a still hand and pulls harder as it is rolled on; no jerk, no burble, no rattle.",
    when: "Warm, held and rolled on in 2nd to 4th gear",
  },
  "four-strokes-light-throttle": {
    words: "Burbles at light steady throttle",
    description:
      "It fires every other turn: half the beat, uneven and soft, like a slow bubbling, with the hand still on flat ground. A mild one is normal.",
    notToBeTakenFor: "A pipe or water still cold.",
    when: "Warm, 1/8 to 1/4, flat ground, no load",
  },
  "four-strokes-under-load": {
    words: "Burbles under load",
    description:
      "Pulling uphill it fires every other turn: half the beat, soft and uneven, heavy to ride, often with smoke behind.",
    notToBeTakenFor: "A rev limiter, or a dying plug.",
    when: "Warm, 1/4 to 3/4, uphill or in a high gear",
  },
  "jerks-at-constant-grip": {
    words: "Jerks or surges with a still hand",
    description:
      "The bike tugs and lets go again though the hand does not move: light, dry snatching, no smoke.",
    notToBeTakenFor: "A slack chain.",
    when: "Warm, 1/8 to 1/2, held still",
  },
  "revs-without-pull": {
    words: "Revs but does not pull, hollow and hot",
    description:
      "The note rises, thin and hollow, but the bike does not go with it, and the engine feels hot.",
    notToBeTakenFor: "Low compression.",
    when: "1/4 to 3/4 under load",
  },
  "weaker-lap-by-lap": {
    words: "Good first lap, then weaker and weaker",
    description: "Strong when it starts out; each lap it pulls less and feels hotter.",
    notToBeTakenFor: "A tired rider.",
    when: "A whole moto or long climb",
  },
  "pings-on-roll-on": {
    words: "Pings: a light rattle on rolling on",
    description:
      "A light metallic rattle, like marbles in a tin, when it is made to pull from low revs while hot.",
    notToBeTakenFor: "Piston slap, a clutch rattle or a loose shield. Take it as a warning until proven.",
    when: "Hot, 1/4 to 3/4, low revs, under load",
  },
  "lazy-and-heavy": {
    words: "Smooth but lazy and heavy",
    description:
      "No miss, no rattle, only slow to wake and dull; a clean plug turns wet on long slow riding.",
    when: "1/8 to 1/2, long slow riding",
  },
  "lazy-revs-petrol-smell-four-stroke": {
    words: "Lazy revs and a smell of petrol",
    description:
      "Picks up slowly with a dull, flat note and smells of unburnt petrol; it never burbles, for it fires every second turn anyway.",
    when: "Warm, rolled on or blipped",
  },
  "heavy-in-the-middle-clean-on-top": {
    words: "Heavy in the middle, clean at full throttle",
    description: "From 1/8 to 3/4 it is thick, burbling or smoky; opened right up it pulls clean.",
    when: "Warm, the same hill at part throttle and at full",
  },
  "clip-moves-make-no-difference": {
    words: "Moving the clip changes nothing",
    description: "One or two grooves either way, and the middle runs just as badly as before.",
    when: "After at least one clip move, same hill, same gear",
  },
  "follows-revs-not-grip": {
    words: "Comes at the same revs whatever the throttle",
    description:
      "The trouble comes at one engine speed, with the hand at half or at full alike, in every gear.",
    when: "The same revs reached at two throttle positions",
  },
  "worse-at-low-revs-same-grip": {
    words: "Same throttle: worse the lower the revs",
    description: "At one small throttle it is thin and jerky at low revs and gets better as the revs climb.",
    when: "Small throttle held still, from low revs up",
  },
  "misses-more-the-harder-it-pulls": {
    words: "Misses more the harder it pulls",
    description:
      "Runs clean off load; loaded, single beats drop out with a sharp crack, worse the more it is opened.",
    when: "The same revs, off load and loaded",
  },
  "comes-and-goes": {
    words: "Comes and goes for no reason",
    description: "Perfect for a while, then wrong for a while, at the same throttle on the same ground.",
    when: "Over a whole ride",
  },
} satisfies Readonly<Record<string, SignWords>>;
