import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import type { Test } from "./catalogue.ts";

// Minutes are estimates. A test whose outcomes are the same at every throttle stands twice where the upper half
// is only safe once full throttle is proved.

function at(...openings: readonly number[]): readonly Opening[] {
  return OPENINGS.filter((opening) => openings.includes(opening));
}

const WARM = "Engine fully warm: ridden gently until the coolant is at its running temperature.";
const MARKS =
  "Mark the grip: tape on the fixed housing and lines at 1/8, 1/4, 1/2, 3/4 and full, by slide lift, not by twist.";
const TWICE_MORE = "Do it three times, same place, same gear, and note what most of them did.";
const RIDING = ["test-riding", "runaway"] as const;
const STANDING = ["fumes", "hot-parts", "runaway"] as const;
const WIDE = ["test-riding", "seizure-at-full-throttle", "stop-at-knock", "noise", "runaway"] as const;

const PLUG_OUTCOMES = [
  { id: "white", words: "White or glazed", sign: "plug-nose-white" },
  { id: "tan", words: "Tan or light brown", sign: "plug-nose-tan" },
  { id: "black", words: "Dry, sooty black", sign: "plug-nose-dry-black" },
  { id: "specks", words: "Grey specks or metal beads", sign: "specks-on-plug" },
] as const;
const PLUG_STEPS = [
  "Warm up on an old plug, then fit a new one of the right heat range.",
  "Run steadily at the chosen throttle under load, long enough to colour it; sources say from half a mile to several minutes.",
  "Without closing the throttle pull the clutch and kill the engine at the same moment. Do not let it idle. Coast to a stop.",
  "Plug out, look at the porcelain with a light and a glass, then put the old plug back.",
] as const;
const PLUG_SOURCE =
  "mopedarmy.com, hondachopper.com, forums.sohc4.net 14069 on the plug chop [read]; minutes [estimate]";

const ONE_STEP_OUTCOMES = [
  { id: "better", words: "Better", sign: "one-step-more-fuel-better" },
  { id: "same", words: "Same", sign: "one-step-more-fuel-same" },
  { id: "worse", words: "Worse", sign: "one-step-more-fuel-worse" },
] as const;
const ONE_STEP_STEPS = [
  WARM,
  MARKS,
  "Ride the run that shows the trouble. Change one thing by one step toward more fuel: near closed the small screw a quarter turn (air screw in, fuel screw out), in the middle the clip one groove down, at the top the main one size up.",
  "Ride the same run again: better, same or worse? Best if a helper fits it unseen.",
  "Put it back, unless it is better. Set the answer down for the setting before the step.",
] as const;
const ONE_STEP_TOOLS = [
  "no. 2 cross-head and flat screwdriver",
  "3 mm hex key",
  "14 or 17 mm open spanner for the bowl plug",
  "next size of jet",
] as const;
const ONE_STEP_CAUTIONS = ["fuel-off-first", "petrol-vapour", "slide-snap-before-start", ...RIDING] as const;
const ONE_STEP_SOURCE =
  "kartpulse.com on finishing on the side of more fuel [read]; method from memory; tools: common practice, no source; minutes [estimate]";

const SWEEP_STEPS = [
  WARM,
  "About 1 mm of cable play. Raise the idle a little with the stop screw (one carburetor maker: about 1400 a minute for a two-stroke, 1200 for a four-stroke).",
  "Count the turns from the present setting to lightly seated and write them down. Never force the screw on its seat.",
  "Start at 1½ turns out. Move a quarter turn at a time and wait 10 to 20 s each time.",
  "Find where the revs are highest and smoothest, bring the idle down with the stop screw, and search again. Write down the turns.",
] as const;
const SWEEP_SOURCE =
  "a carburetor maker's setting guide, engineerfix.com on the mixture screw, a tool maker's service data [read]; minutes [estimate]";

/** What can be done to the running engine to learn more, the quick ones first. */
export const TESTS: readonly Test[] = [
  {
    id: "idle-hold",
    words: "Let it idle for a minute",
    minutes: 3,
    openings: at(0),
    outcomes: [
      { id: "steady", words: "Steady for the whole minute", sign: "idles-steadily" },
      { id: "loads-up", words: "Slows, thickens, dies or nearly dies", sign: "idle-loads-up" },
      { id: "hunts", words: "Wanders up and down", sign: "idle-hunts" },
      { id: "will-not", words: "Will not idle at all", sign: "will-not-idle" },
    ],
    steps: [
      WARM,
      "Standing outdoors, neutral, hands off for 60 s.",
      "Then one short blip: does it clear with a burble and smoke?",
    ],
    tools: ["stop-watch"],
    cautions: STANDING,
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "memory; minutes [estimate]",
  },
  {
    id: "chop-warm",
    words: "Close the throttle from middle revs, warm",
    minutes: 4,
    openings: at(0, 1 / 16),
    outcomes: [
      { id: "straight", words: "Drops straight to idle", sign: "drops-straight-to-idle" },
      { id: "hangs", words: "Hangs above idle, falls late", sign: "hangs-after-closing" },
      { id: "dives", words: "Dives below idle, climbs back", sign: "dives-below-idle" },
      { id: "stalls", words: "Stalls", sign: "stalls-on-closing" },
    ],
    steps: [
      WARM,
      "Neutral. Bring the revs up smoothly to about the middle and let go at once.",
      "Count the time until it is back at idle: 0.8 to 1.5 s is good, a heavy flywheel takes 2 s; a second more than that is a hang.",
      TWICE_MORE,
    ],
    tools: ["stop-watch"],
    cautions: [...STANDING, "free-revving", "noise"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "motocrosshideout.com on hanging idle [read]; times and minutes [estimate]",
  },
  {
    id: "chop-hot",
    words: "Close the throttle again hot, after a hard lap",
    minutes: 12,
    openings: at(0, 1 / 16),
    outcomes: [
      { id: "no-hang", words: "No hang, warm or hot", sign: "drops-straight-to-idle" },
      { id: "same", words: "Hangs as long as it did warm", sign: "hang-no-longer-when-hot" },
      { id: "grows", words: "Hangs half a second longer or more", sign: "hang-grows-with-heat" },
      { id: "only-hot", words: "Hangs only now that it is hot", sign: "hangs-only-when-hot" },
    ],
    steps: [
      "Time the closing of the throttle warm, three times, and write it down.",
      "Ride one hard lap, come straight in, and time it again within a minute.",
      "Half a second longer or more is growth.",
    ],
    tools: ["stop-watch"],
    cautions: [...STANDING, "free-revving", "test-riding"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "scooterlab.uk on the pressure test [read]; the half second and minutes [estimate]",
  },
  {
    id: "quick-opening",
    words: "Snap it open from closed",
    minutes: 4,
    openings: at(1 / 8, 1 / 4),
    outcomes: [
      { id: "crisp", words: "Crisp at once", sign: "answers-crisply" },
      { id: "bog", words: "Hollow gasp, silent, no smoke", sign: "bogs-hollow-no-smoke" },
      { id: "stumble", words: "Gargles and smokes, clears as it revs", sign: "stumbles-with-smoke" },
      { id: "switch", words: "Nothing, then a sudden hit", sign: "delay-then-sudden-hit" },
    ],
    steps: [WARM, "Idle for 20 s, snap to 1/4 and back.", "Look at the silencer: smoke or none?", TWICE_MORE],
    tools: [],
    cautions: [...STANDING, "free-revving", "noise"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "blog.greenlandmx.com, tkart.it [read]; minutes [estimate]",
  },
  {
    id: "slow-versus-fast-opening",
    words: "Open it fast, then the same slowly",
    minutes: 4,
    openings: at(1 / 8, 1 / 4),
    outcomes: [
      { id: "both-clean", words: "Clean both ways", sign: "answers-crisply" },
      {
        id: "fast-only",
        words: "Bogs fast, clean slowly",
        sign: "fast-opening-bogs-slow-is-clean-four-stroke",
      },
      { id: "both-bog", words: "Bogs both ways", sign: "bogs-fast-and-slow-four-stroke" },
    ],
    steps: [
      WARM,
      "Closed to 1/2 as fast as the hand goes, three times.",
      "Then the same rolled on over two seconds, three times.",
    ],
    tools: [],
    cautions: [...STANDING, "free-revving", "noise"],
    strokes: "four",
    screw: null,
    wideOpen: false,
    source: "dieseltwitch.com on accelerator pumps [read]; memory; minutes [estimate]",
  },
  {
    id: "touch-of-choke",
    words: "Give it a touch of choke",
    minutes: 4,
    openings: at(0, 1 / 8, 1 / 4),
    outcomes: [
      { id: "better", words: "Better", sign: "touch-of-choke-better" },
      { id: "worse", words: "Worse, or dies", sign: "touch-of-choke-worse" },
      { id: "no-change", words: "No change", sign: "touch-of-choke-no-change" },
    ],
    steps: [
      WARM,
      "Make the trouble show, on the stand or riding slowly, at half throttle or below.",
      "Crack the choke just a little; if it has only on and off, flick it.",
      "Choke fully off again afterwards.",
    ],
    tools: [],
    cautions: [...RIDING, "fumes"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source:
      "engineerfix.com on bogging, seadooforum.com 93974 [read]; its limit from memory; minutes [estimate]",
  },
  {
    id: "half-turn-for-the-hang",
    words: "Half a turn of the small screw against the hang",
    minutes: 5,
    openings: at(0, 1 / 16),
    outcomes: [
      { id: "gone", words: "Hang gone or clearly shorter", sign: "hang-gone-with-half-a-turn" },
      { id: "same", words: "Hangs just as long", sign: "hang-stays-after-half-a-turn" },
    ],
    steps: [
      "Warm, with a hang timed three times. Write down the screw's turns.",
      "Half a turn toward more fuel: an air screw (filter side) in, a fuel screw (engine side) out.",
      "Idle set again, then time it three times more.",
      "Put the screw back where it was.",
    ],
    tools: ["flat screwdriver", "stop-watch"],
    cautions: [...STANDING, "free-revving"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "memory; minutes [estimate]",
  },
  {
    id: "screw-sweep-air",
    words: "Sweep the air screw for the best idle",
    minutes: 10,
    openings: at(0),
    outcomes: [
      { id: "middle", words: "Best between about 1 and 2½ turns", sign: "screw-peak-in-the-middle" },
      {
        id: "nearly-closed",
        words: "Best nearly closed, under 1 turn",
        sign: "air-screw-best-nearly-closed",
      },
      { id: "far-out", words: "Best far out, beyond 2½ to 3 turns", sign: "air-screw-best-far-out" },
      { id: "no-difference", words: "No difference anywhere", sign: "screw-makes-no-difference" },
    ],
    steps: ["Air screw: on the filter side of the slide. Out is more air, so less fuel.", ...SWEEP_STEPS],
    tools: ["flat screwdriver", "tachometer where there is one"],
    cautions: ["makers-manual", ...STANDING],
    strokes: "both",
    screw: "air",
    wideOpen: false,
    source: SWEEP_SOURCE,
  },
  {
    id: "screw-sweep-fuel",
    words: "Sweep the fuel screw for the best idle",
    minutes: 10,
    openings: at(0),
    outcomes: [
      { id: "middle", words: "Best between about 1 and 2½ turns", sign: "screw-peak-in-the-middle" },
      {
        id: "nearly-closed",
        words: "Best nearly closed, under 1 turn",
        sign: "fuel-screw-best-nearly-closed",
      },
      { id: "far-out", words: "Best far out, beyond 2½ to 3 turns", sign: "fuel-screw-best-far-out" },
      { id: "no-difference", words: "No difference anywhere", sign: "screw-makes-no-difference" },
    ],
    steps: ["Fuel screw: on the engine side of the slide. Out is more fuel.", ...SWEEP_STEPS],
    tools: ["flat screwdriver", "tachometer where there is one"],
    cautions: ["makers-manual", "law", ...STANDING],
    strokes: "both",
    screw: "fuel",
    wideOpen: false,
    source: SWEEP_SOURCE,
  },
  {
    id: "tap-off-run-down",
    words: "Shut the tap and let it run down",
    minutes: 6,
    openings: at(0, 1 / 8, 1 / 4, 1 / 2),
    outcomes: [
      { id: "clears", words: "Clears up just before it dies", sign: "tap-off-clears-before-it-dies" },
      { id: "no-clearing", words: "No better before it dies", sign: "tap-off-no-clearing" },
    ],
    steps: [
      WARM,
      "Make the trouble show at half throttle or below, then shut the tap and hold it there.",
      "Listen to the last seconds: does it sharpen, or only starve?",
      "Close the throttle as soon as it starves, tap on again. Never at three quarters or more: it runs out of fuel under full load there.",
    ],
    tools: [],
    cautions: [...RIDING, "lean-damage", "stop-at-knock"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "memory; minutes [estimate]",
  },
  {
    id: "roll-on",
    words: "Roll on and hold it steady",
    minutes: 8,
    openings: at(1 / 8, 1 / 4, 1 / 2),
    outcomes: [
      { id: "smooth", words: "Pulls smoothly", sign: "pulls-smoothly" },
      { id: "burbles", words: "Burbles: half the beat, soft", sign: "four-strokes-under-load" },
      { id: "jerks", words: "Jerks or surges", sign: "jerks-at-constant-grip" },
      { id: "hollow", words: "Revs but does not pull, hollow", sign: "revs-without-pull" },
      { id: "pings", words: "Pings", sign: "pings-on-roll-on" },
    ],
    steps: [
      WARM,
      MARKS,
      "2nd or 3rd gear, low revs, uphill if there is a hill: roll on to the mark and hold it 3 to 5 s.",
      TWICE_MORE,
      "At the first ping close it and stop the test.",
    ],
    tools: ["tape and paint pen"],
    cautions: [...RIDING, "stop-at-knock"],
    strokes: "two",
    screw: null,
    wideOpen: false,
    source: "forums.sohc4.net 14069 on marks [read]; memory; minutes [estimate]",
  },
  {
    id: "roll-on-four-stroke",
    words: "Roll on and hold it steady",
    minutes: 8,
    openings: at(1 / 8, 1 / 4, 1 / 2),
    outcomes: [
      { id: "smooth", words: "Pulls smoothly", sign: "pulls-smoothly" },
      { id: "lazy", words: "Lazy, dull, smells of petrol", sign: "lazy-revs-petrol-smell-four-stroke" },
      { id: "jerks", words: "Jerks or surges", sign: "jerks-at-constant-grip" },
      { id: "hollow", words: "Revs but does not pull, hollow", sign: "revs-without-pull" },
      { id: "pings", words: "Pings", sign: "pings-on-roll-on" },
    ],
    steps: [
      WARM,
      MARKS,
      "2nd or 3rd gear, low revs, uphill if there is a hill: roll on to the mark and hold it 3 to 5 s.",
      TWICE_MORE,
      "At the first ping close it and stop the test.",
    ],
    tools: ["tape and paint pen"],
    cautions: [...RIDING, "stop-at-knock"],
    strokes: "four",
    screw: null,
    wideOpen: false,
    source: "forums.sohc4.net 14069 on marks [read]; memory; minutes [estimate]",
  },
  {
    id: "full-pull",
    words: "Hold it open for a few seconds",
    minutes: 8,
    openings: at(3 / 4, 1),
    outcomes: [
      { id: "clean", words: "Pulls clean to the top", sign: "pulls-clean-to-peak" },
      { id: "rough", words: "Flat, rough, will not rev out", sign: "will-not-rev-out" },
      { id: "fades", words: "Strong, then fades; back once closed", sign: "fades-then-recovers" },
      { id: "cuts", words: "Cuts as if the tap were off", sign: "cuts-as-if-tap-off" },
      { id: "thin", words: "Revs on and on, thin and sharp", sign: "over-revs-thin-and-sharp" },
      { id: "tearing", words: "Metallic, tearing note", sign: "tearing-note-at-full-throttle" },
    ],
    steps: [
      WARM,
      "3rd or 4th gear, loaded: full throttle for 3 to 5 s, two fingers on the clutch.",
      "Close it gently. At any ping or tearing note close it at once and do not repeat.",
      TWICE_MORE,
    ],
    tools: [],
    cautions: WIDE,
    strokes: "both",
    screw: null,
    wideOpen: true,
    source: "blog.greenlandmx.com, tkart.it [read]; memory; minutes [estimate]",
  },
  {
    id: "roll-off",
    words: "Roll off from full throttle",
    minutes: 8,
    openings: at(1),
    outcomes: [
      { id: "picks-up", words: "Picks up on easing to 7/8", sign: "roll-off-picks-up" },
      { id: "tiny-cut", words: "Burbles after a hair's cut", sign: "four-strokes-after-tiny-cut" },
      { id: "at-80", words: "Burbles a little at about 80 %", sign: "four-strokes-at-about-80-percent" },
      { id: "never", words: "Never burbles", sign: "roll-off-never-four-strokes" },
    ],
    steps: [
      WARM,
      MARKS,
      "High gear, flat ground, full throttle and loaded for 3 to 5 s.",
      "Ease it slowly to 7/8, then to about 80 %, and listen all the way.",
      TWICE_MORE,
    ],
    tools: ["tape and paint pen"],
    cautions: WIDE,
    strokes: "two",
    screw: null,
    wideOpen: true,
    source: "mopedarmy.com on the roll-off method [read]; minutes [estimate]",
  },
  {
    id: "roll-off-four-stroke",
    words: "Roll off from full throttle",
    minutes: 8,
    openings: at(1),
    outcomes: [
      { id: "picks-up", words: "Picks up on easing to 7/8", sign: "roll-off-picks-up" },
      { id: "eases", words: "Only pulls a little less", sign: "roll-off-no-pick-up" },
    ],
    steps: [
      WARM,
      MARKS,
      "High gear, flat ground, full throttle and loaded for 3 to 5 s.",
      "Ease it slowly to 7/8 and feel whether it pulls harder.",
      TWICE_MORE,
    ],
    tools: ["tape and paint pen"],
    cautions: WIDE,
    strokes: "four",
    screw: null,
    wideOpen: true,
    source: "memory; minutes [estimate]",
  },
  {
    id: "choke-flick-at-full",
    words: "Flick the choke at full throttle",
    minutes: 8,
    openings: at(1),
    outcomes: [
      { id: "higher", words: "Revs go higher before they settle", sign: "choke-flick-revs-higher" },
      { id: "lower", words: "Revs come back lower", sign: "choke-flick-revs-lower" },
      { id: "no-change", words: "No change", sign: "choke-flick-no-change" },
    ],
    steps: [
      "Only for practised hands, on a long closed straight, and only where the choke can be reached without letting go of the bars' control.",
      WARM,
      "Full throttle, high gear, then choke on for an instant and off.",
      TWICE_MORE,
    ],
    tools: ["tachometer"],
    cautions: WIDE,
    strokes: "both",
    screw: null,
    wideOpen: true,
    source: "karting.co.uk 372893 [read]; minutes [estimate]",
  },
  {
    id: "plug-look-part",
    words: "Plug look after a steady run",
    minutes: 20,
    openings: at(1 / 4, 1 / 2),
    outcomes: PLUG_OUTCOMES,
    steps: PLUG_STEPS,
    tools: ["new plug", "plug spanner", "magnifier and torch", "gloves"],
    cautions: [...RIDING, "hot-parts", "battery"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: PLUG_SOURCE,
  },
  {
    id: "plug-look-full",
    words: "Plug look after a wide-open run",
    minutes: 20,
    openings: at(3 / 4, 1),
    outcomes: PLUG_OUTCOMES,
    steps: [
      "Not before the main jet is known to be on the side of more fuel. Closed course only.",
      ...PLUG_STEPS,
    ],
    tools: ["new plug", "plug spanner", "magnifier and torch", "gloves"],
    cautions: [...WIDE, "hot-parts", "battery"],
    strokes: "both",
    screw: null,
    wideOpen: true,
    source: PLUG_SOURCE,
  },
  {
    id: "one-step-more-fuel",
    words: "Try one step more fuel",
    minutes: 25,
    openings: at(0, 1 / 8, 1 / 4, 1 / 2),
    outcomes: ONE_STEP_OUTCOMES,
    steps: ONE_STEP_STEPS,
    tools: ONE_STEP_TOOLS,
    cautions: ONE_STEP_CAUTIONS,
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: ONE_STEP_SOURCE,
  },
  {
    id: "one-step-more-fuel-top",
    words: "Try one size more main jet",
    minutes: 25,
    openings: at(3 / 4, 1),
    outcomes: ONE_STEP_OUTCOMES,
    steps: ONE_STEP_STEPS,
    tools: ONE_STEP_TOOLS,
    cautions: [...ONE_STEP_CAUTIONS, "seizure-at-full-throttle", "stop-at-knock"],
    strokes: "both",
    screw: null,
    wideOpen: true,
    source: ONE_STEP_SOURCE,
  },
  {
    id: "best-known-setting",
    words: "Go back to the best known setting",
    minutes: 40,
    openings: at(0, 1 / 8, 1 / 4, 1 / 2),
    outcomes: [
      { id: "stays", words: "Trouble stays", sign: "stays-on-known-good-setting" },
      { id: "gone", words: "Trouble gone", sign: "gone-on-known-good-setting" },
    ],
    steps: [
      "Fit every part of the setting that used to run well, in air much like then.",
      WARM,
      "Ride the run that shows the trouble. Set the answer down for the setting the trouble came with.",
    ],
    tools: ONE_STEP_TOOLS,
    cautions: ONE_STEP_CAUTIONS,
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "memory; tools: common practice, no source; minutes [estimate]",
  },
];

const byId = new Map(TESTS.map((test) => [test.id, test]));

/** The test of that id, or undefined for a name the catalogue does not know. */
export function testById(id: string): Test | undefined {
  return byId.get(id);
}
