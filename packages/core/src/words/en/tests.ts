import type { TestWords } from "../entry.ts";

const WARM = "Engine fully warm: ridden gently until the coolant is at its running temperature.";
const MARKS =
  "Mark the grip: tape on the fixed housing and lines at 1/8, 1/4, 1/2, 3/4 and full, by slide lift, not by twist.";
const THREE_TIMES = "Do it three times, same place, same gear, and note what most of them did.";

const ROLL_ON_STEPS = [
  WARM,
  MARKS,
  "2nd or 3rd gear, low revs, uphill if there is a hill: roll on to the mark and hold it 3 to 5 s.",
  THREE_TIMES,
  "At the first ping close it and stop the test.",
];
const PLUG_OUTCOMES = {
  white: "White or glazed",
  tan: "Tan or light brown",
  black: "Dry, sooty black",
  specks: "Grey specks or metal beads",
};
const PLUG_STEPS = [
  "Warm up on an old plug, then fit a new one of the right heat range.",
  "Run steadily at the chosen throttle under load, long enough to colour it; sources say from half a mile to several minutes.",
  "Without closing the throttle pull the clutch and kill the engine at the same moment. Do not let it idle. Coast to a stop.",
  "Plug out, look at the porcelain with a light and a glass, then put the old plug back.",
];
const ONE_STEP_OUTCOMES = { better: "Better", same: "Same", worse: "Worse" };
const ONE_STEP_STEPS = [
  WARM,
  MARKS,
  "Ride the run that shows the trouble. Change one thing by one step toward more fuel: near closed the small screw a quarter turn (air screw in, fuel screw out), in the middle the clip one groove down, at the top the main one size up.",
  "Ride the same run again: better, same or worse? Best if a helper fits it unseen.",
  "Put it back, unless it is better. Set the answer down for the setting before the step.",
];
const ONE_STEP_TOOLS = [
  "no. 2 cross-head and flat screwdriver",
  "3 mm hex key",
  "14 or 17 mm open spanner for the bowl plug",
  "next size of jet",
];
const SWEEP_OUTCOMES = {
  middle: "Best between about 1 and 2½ turns",
  "nearly-closed": "Best nearly closed, under 1 turn",
  "far-out": "Best far out, beyond 2½ to 3 turns",
  "no-difference": "No difference anywhere",
};
const SWEEP_STEPS = [
  WARM,
  "About 1 mm of cable play. Raise the idle a little with the stop screw (one carburetor maker: about 1400 a minute for a two-stroke, 1200 for a four-stroke).",
  "Count the turns from the present setting to lightly seated and write them down. Never force the screw on its seat.",
  "Start at 1½ turns out. Move a quarter turn at a time and wait 10 to 20 s each time.",
  "Find where the revs are highest and smoothest, bring the idle down with the stop screw, and search again. Write down the turns.",
];

/** What can be done to the running engine: the heading, the steps in order, and what may happen, as on a button. */
export const tests = {
  "idle-hold": {
    words: "Let it idle for a minute",
    outcomes: {
      steady: "Steady for the whole minute",
      "loads-up": "Slows, thickens, dies or nearly dies",
      hunts: "Wanders up and down",
      "will-not": "Will not idle at all",
    },
    steps: [
      WARM,
      "Standing outdoors, neutral, hands off for 60 s.",
      "Then one short blip: does it clear with a burble and smoke?",
    ],
    tools: ["stop-watch"],
  },
  "chop-warm": {
    words: "Close the throttle from middle revs, warm",
    outcomes: {
      straight: "Drops straight to idle",
      hangs: "Hangs above idle, falls late",
      dives: "Dives below idle, climbs back",
      stalls: "Stalls",
    },
    steps: [
      WARM,
      "Neutral. Bring the revs up smoothly to about the middle and let go at once.",
      "Count the time until it is back at idle: 0.8 to 1.5 s is good, a heavy flywheel takes 2 s; a second more than that is a hang.",
      THREE_TIMES,
    ],
    tools: ["stop-watch"],
  },
  "chop-hot": {
    words: "Close the throttle again hot, after a hard lap",
    outcomes: {
      "no-hang": "No hang, warm or hot",
      same: "Hangs as long as it did warm",
      grows: "Hangs half a second longer or more",
      "only-hot": "Hangs only now that it is hot",
    },
    steps: [
      "Time the closing of the throttle warm, three times, and write it down.",
      "Ride one hard lap, come straight in, and time it again within a minute.",
      "Half a second longer or more is growth.",
    ],
    tools: ["stop-watch"],
  },
  "quick-opening": {
    words: "Snap it open from closed",
    outcomes: {
      crisp: "Crisp at once",
      bog: "Hollow gasp, silent, no smoke",
      stumble: "Gargles and smokes, clears as it revs",
      switch: "Nothing, then a sudden hit",
    },
    steps: [
      WARM,
      "Idle for 20 s, snap to the opening named above (1/4 if none is) and back.",
      "Look at the silencer: smoke or none?",
      THREE_TIMES,
    ],
    tools: [],
  },
  "slow-versus-fast-opening": {
    words: "Open it fast, then the same slowly",
    outcomes: {
      "both-clean": "Clean both ways",
      "fast-only": "Bogs fast, clean slowly",
      "both-bog": "Bogs both ways",
    },
    steps: [
      WARM,
      "Closed to 1/2 as fast as the hand goes, three times.",
      "Then the same rolled on over two seconds, three times.",
    ],
    tools: [],
  },
  "touch-of-choke": {
    words: "Give it a touch of choke",
    outcomes: { better: "Better", worse: "Worse, or dies", "no-change": "No change" },
    steps: [
      WARM,
      "Make the trouble show, on the stand or riding slowly, at half throttle or below.",
      "Crack the choke just a little; if it has only on and off, flick it.",
      "Choke fully off again afterwards.",
    ],
    tools: [],
  },
  "half-turn-for-the-hang": {
    words: "Half a turn of the small screw against the hang",
    outcomes: { gone: "Hang gone or clearly shorter", same: "Hangs just as long" },
    steps: [
      "Warm, with a hang timed three times. Write down the screw's turns.",
      "Half a turn toward more fuel: an air screw (filter side) in, a fuel screw (engine side) out.",
      "Idle set again, then time it three times more.",
      "Put the screw back where it was.",
    ],
    tools: ["flat screwdriver", "stop-watch"],
  },
  "screw-sweep-air": {
    words: "Sweep the air screw for the best idle",
    outcomes: SWEEP_OUTCOMES,
    steps: ["Air screw: on the filter side of the slide. Out is more air, so less fuel.", ...SWEEP_STEPS],
    tools: ["flat screwdriver", "tachometer where there is one"],
  },
  "screw-sweep-fuel": {
    words: "Sweep the fuel screw for the best idle",
    outcomes: SWEEP_OUTCOMES,
    steps: ["Fuel screw: on the engine side of the slide. Out is more fuel.", ...SWEEP_STEPS],
    tools: ["flat screwdriver", "tachometer where there is one"],
  },
  "tap-off-run-down": {
    words: "Shut the tap and let it run down",
    outcomes: { clears: "Clears up just before it dies", "no-clearing": "No better before it dies" },
    steps: [
      WARM,
      "Make the trouble show at half throttle or below, then shut the tap and hold it there.",
      "Listen to the last seconds: does it sharpen, or only starve?",
      "Close the throttle as soon as it starves, tap on again. Never at three quarters or more: it runs out of fuel under full load there.",
    ],
    tools: [],
  },
  "roll-on": {
    words: "Roll on and hold it steady",
    outcomes: {
      smooth: "Pulls smoothly",
      burbles: "Burbles: half the beat, soft",
      jerks: "Jerks or surges",
      hollow: "Revs but does not pull, hollow",
      pings: "Pings",
    },
    steps: ROLL_ON_STEPS,
    tools: ["tape and paint pen"],
  },
  "roll-on-four-stroke": {
    words: "Roll on and hold it steady",
    outcomes: {
      smooth: "Pulls smoothly",
      lazy: "Lazy, dull, smells of petrol",
      jerks: "Jerks or surges",
      hollow: "Revs but does not pull, hollow",
      pings: "Pings",
    },
    steps: ROLL_ON_STEPS,
    tools: ["tape and paint pen"],
  },
  "full-pull": {
    words: "Hold it open for a few seconds",
    outcomes: {
      clean: "Pulls clean to the top",
      rough: "Flat, rough, will not rev out",
      fades: "Strong, then fades; back once closed",
      cuts: "Cuts as if the tap were off",
      thin: "Revs on and on, thin and sharp",
      tearing: "Metallic, tearing note",
    },
    steps: [
      WARM,
      "3rd or 4th gear, loaded: full throttle for 3 to 5 s, two fingers on the clutch.",
      "Close it gently. At any ping or tearing note close it at once and do not repeat.",
      THREE_TIMES,
    ],
    tools: [],
  },
  "roll-off": {
    words: "Roll off from full throttle",
    outcomes: {
      "picks-up": "Picks up on easing to 7/8",
      "tiny-cut": "Burbles after a hair's cut",
      "at-80": "Burbles a little at about 80 %",
      never: "Never burbles",
    },
    steps: [
      WARM,
      MARKS,
      "High gear, flat ground, full throttle and loaded for 3 to 5 s.",
      "Ease it slowly to 7/8, then to about 80 %, and listen all the way.",
      THREE_TIMES,
    ],
    tools: ["tape and paint pen"],
  },
  "roll-off-four-stroke": {
    words: "Roll off from full throttle",
    outcomes: { "picks-up": "Picks up on easing to 7/8", eases: "Only pulls a little less" },
    steps: [
      WARM,
      MARKS,
      "High gear, flat ground, full throttle and loaded for 3 to 5 s.",
      "Ease it slowly to 7/8 and feel whether it pulls harder.",
      THREE_TIMES,
    ],
    tools: ["tape and paint pen"],
  },
  "choke-flick-at-full": {
    words: "Flick the choke at full throttle",
    outcomes: {
      higher: "Revs go higher before they settle",
      lower: "Revs come back lower",
      "no-change": "No change",
    },
    steps: [
      "Only for practised hands, on a long closed straight, and only where the choke can be reached without letting go of the bars' control.",
      WARM,
      "Full throttle, high gear, then choke on for an instant and off.",
      THREE_TIMES,
    ],
    tools: ["tachometer"],
  },
  "plug-look-part": {
    words: "Plug look after a steady run",
    outcomes: PLUG_OUTCOMES,
    steps: PLUG_STEPS,
    tools: ["new plug", "plug spanner", "magnifier and torch", "gloves"],
  },
  "plug-look-full": {
    words: "Plug look after a wide-open run",
    outcomes: PLUG_OUTCOMES,
    steps: [
      "Not before the main jet is known to be on the side of more fuel. Closed course only.",
      ...PLUG_STEPS,
    ],
    tools: ["new plug", "plug spanner", "magnifier and torch", "gloves"],
  },
  "one-step-more-fuel": {
    words: "Try one step more fuel",
    outcomes: ONE_STEP_OUTCOMES,
    steps: ONE_STEP_STEPS,
    tools: ONE_STEP_TOOLS,
  },
  "one-step-more-fuel-top": {
    words: "Try one size more main jet",
    outcomes: ONE_STEP_OUTCOMES,
    steps: ONE_STEP_STEPS,
    tools: ONE_STEP_TOOLS,
  },
  "best-known-setting": {
    words: "Go back to the best known setting",
    outcomes: { stays: "Trouble stays", gone: "Trouble gone" },
    steps: [
      "Fit every part of the setting that used to run well, in air much like then.",
      WARM,
      "Ride the run that shows the trouble. Set the answer down for the setting the trouble came with.",
    ],
    tools: ONE_STEP_TOOLS,
  },
} satisfies Readonly<Record<string, TestWords>>;
