import type { SignWords } from "../../entry.ts";

/** What a test shows. */
export const engineTests = {
  "touch-of-choke-better": {
    words: "A touch of choke makes it better",
    description:
      "With the choke just cracked, the trouble shrinks or goes: it pulls or idles better at once.",
    when: "Warm, where the trouble shows, below about half throttle",
  },
  "touch-of-choke-worse": {
    words: "A touch of choke makes it worse or kills it",
    description: "With the choke just cracked, it thickens, burbles or dies.",
    when: "Warm, where the trouble shows, below about half throttle",
  },
  "touch-of-choke-no-change": {
    words: "A touch of choke changes nothing",
    description: "With the choke just cracked, it runs just the same.",
    when: "Warm, where the trouble shows, below about half throttle",
  },
  "tap-off-clears-before-it-dies": {
    words: "Tap off: clears up just before it dies",
    description: "Running on the bowl alone, it sharpens for the last seconds before it starves.",
    when: "Warm, tap shut, held where the trouble shows",
  },
  "tap-off-no-clearing": {
    words: "Tap off: no better before it dies",
    description: "Running on the bowl alone, it gets worse or simply dies, never sharper.",
    when: "Warm, tap shut, held where the trouble shows",
  },
  "screw-peak-in-the-middle": {
    words: "Idle is best between about 1 and 2½ turns",
    description:
      "Turning the small screw, the idle rises to a clear best between one and two and a half turns out and falls on both sides.",
    when: "Warm, idle raised a little, a quarter turn at a time",
  },
  "air-screw-best-nearly-closed": {
    words: "Air screw: idle is best nearly closed",
    description: "The idle keeps getting better as the air screw goes in, best below one turn out.",
    when: "Warm, idle raised a little, air screw on the filter side",
  },
  "air-screw-best-far-out": {
    words: "Air screw: idle is best far out",
    description:
      "The idle keeps getting better as the air screw comes out, best beyond two and a half to three turns.",
    when: "Warm, idle raised a little, air screw on the filter side",
  },
  "fuel-screw-best-nearly-closed": {
    words: "Fuel screw: idle is best nearly closed",
    description: "The idle keeps getting better as the fuel screw goes in, best below one turn out.",
    when: "Warm, idle raised a little, fuel screw on the engine side",
  },
  "fuel-screw-best-far-out": {
    words: "Fuel screw: idle is best far out",
    description:
      "The idle keeps getting better as the fuel screw comes out, best beyond two and a half to three turns.",
    when: "Warm, idle raised a little, fuel screw on the engine side",
  },
  "screw-makes-no-difference": {
    words: "The small screw makes no difference",
    description: "From lightly seated to three turns out, the idle does not answer.",
    when: "Warm, idle set as low as it will run",
  },
  "one-step-more-fuel-better": {
    words: "One step more fuel: better",
    description: "One jet size up, one clip groove down or a quarter turn, and the trouble is clearly less.",
    notToBeTakenFor:
      "Wishing: let somebody else fit it unseen, and repeat. Set it down for the setting before the step.",
    when: "Same run before and after one step",
  },
  "one-step-more-fuel-worse": {
    words: "One step more fuel: worse",
    description: "One jet size up, one clip groove down or a quarter turn, and the trouble is clearly more.",
    notToBeTakenFor:
      "Wishing: let somebody else fit it unseen, and repeat. Set it down for the setting before the step.",
    when: "Same run before and after one step",
  },
  "one-step-more-fuel-same": {
    words: "One step more fuel: no difference",
    description: "One jet size up, one clip groove down or a quarter turn, and nothing changes.",
    when: "Same run before and after one step",
  },
  "stays-on-known-good-setting": {
    words: "Trouble stays on the best known setting",
    description:
      "Every part back to the setting that used to run well, in similar air, and the trouble is still there.",
    when: "Set down for the setting the trouble came with",
  },
  "gone-on-known-good-setting": {
    words: "Trouble gone on the best known setting",
    description:
      "Every part back to the setting that used to run well, in similar air, and the trouble is gone.",
    when: "Set down for the setting the trouble came with",
  },
  "roll-off-picks-up": {
    words: "Rolled off from full to 7/8: it picks up",
    description: "Easing the throttle a little from full makes it pull harder or rev higher.",
    notToBeTakenFor: "A dip in the ground.",
    when: "High gear, flat ground, steady full throttle",
  },
  "four-strokes-after-tiny-cut": {
    words: "Rolled off a hair: burbles at once",
    description: "The smallest cut from full and it fires every other turn: half the beat, soft and uneven.",
    when: "High gear, steady full throttle, eased a hair",
  },
  "four-strokes-at-about-80-percent": {
    words: "Rolled off to about 80 %: burbles a little",
    description:
      "Eased from full it pulls on, then at about four fifths it begins to fire every other turn, lightly.",
    when: "High gear, steady full throttle, eased to 80 %",
  },
  "roll-off-never-four-strokes": {
    words: "Rolled off well below 80 %: never burbles",
    description: "Eased from full to well under four fifths, it stays smooth and dry and simply slows.",
    when: "High gear, steady full throttle, eased to below 80 %",
  },
  "roll-off-no-pick-up": {
    words: "Rolled off from full to 7/8: eases evenly",
    description: "Easing the throttle a little from full only makes it pull a little less.",
    when: "High gear, flat ground, steady full throttle",
  },
  "choke-flick-revs-higher": {
    words: "Choke flicked at full throttle: revs go higher",
    description: "For the instant the choke is on, the revs step up before they settle.",
    when: "Long straight, full throttle, choke on for an instant; needs skill",
  },
  "choke-flick-revs-lower": {
    words: "Choke flicked at full throttle: revs come back lower",
    description: "For the instant the choke is on, the engine sags and the revs come back lower.",
    when: "Long straight, full throttle, choke on for an instant; needs skill",
  },
  "choke-flick-no-change": {
    words: "Choke flicked at full throttle: no change",
    description: "For the instant the choke is on, the revs do not move.",
    when: "Long straight, full throttle, choke on for an instant; needs skill",
  },
  "bogs-fast-and-slow-four-stroke": {
    words: "Bogs opened fast and opened slowly",
    description: "Opened quickly or rolled on slowly, it gasps and sags either way, no smoke.",
    when: "Warm, closed to 1/2 fast, then the same slowly",
  },
} satisfies Readonly<Record<string, SignWords>>;
