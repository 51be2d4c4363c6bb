import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import type { Test } from "./catalogue.ts";

// Minutes are estimates. A test whose outcomes are the same at every throttle stands twice where the upper half
// is only safe once full throttle is proved.

function at(...openings: readonly number[]): readonly Opening[] {
  return OPENINGS.filter((opening) => openings.includes(opening));
}

const RIDING = ["test-riding", "runaway"] as const;
const STANDING = ["fumes", "hot-parts", "runaway"] as const;
const WIDE = ["test-riding", "seizure-at-full-throttle", "stop-at-knock", "noise", "runaway"] as const;

const PLUG_OUTCOMES = [
  { id: "white", sign: "plug-nose-white" },
  { id: "tan", sign: "plug-nose-tan" },
  { id: "black", sign: "plug-nose-dry-black" },
  { id: "specks", sign: "specks-on-plug" },
] as const;
const PLUG_SOURCE =
  "mopedarmy.com, hondachopper.com, forums.sohc4.net 14069 on the plug chop [read]; minutes [estimate]";

const ONE_STEP_OUTCOMES = [
  { id: "better", sign: "one-step-more-fuel-better" },
  { id: "same", sign: "one-step-more-fuel-same" },
  { id: "worse", sign: "one-step-more-fuel-worse" },
] as const;
const ONE_STEP_CAUTIONS = ["fuel-off-first", "petrol-vapour", "slide-snap-before-start", ...RIDING] as const;
const ONE_STEP_SOURCE =
  "kartpulse.com on finishing on the side of more fuel [read]; method from memory; tools: common practice, no source; minutes [estimate]";

const SWEEP_SOURCE =
  "a carburetor maker's setting guide, engineerfix.com on the mixture screw, a tool maker's service data [read]; minutes [estimate]";

/** What can be done to the running engine to learn more, the quick ones first. */
export const TESTS: readonly Test[] = [
  {
    id: "idle-hold",
    minutes: 3,
    openings: at(0),
    outcomes: [
      { id: "steady", sign: "idles-steadily" },
      { id: "loads-up", sign: "idle-loads-up" },
      { id: "hunts", sign: "idle-hunts" },
      { id: "will-not", sign: "will-not-idle" },
    ],
    cautions: STANDING,
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "memory; minutes [estimate]",
  },
  {
    id: "chop-warm",
    minutes: 4,
    openings: at(0, 1 / 16),
    outcomes: [
      { id: "straight", sign: "drops-straight-to-idle" },
      { id: "hangs", sign: "hangs-after-closing" },
      { id: "dives", sign: "dives-below-idle" },
      { id: "stalls", sign: "stalls-on-closing" },
    ],
    cautions: [...STANDING, "free-revving", "noise"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "motocrosshideout.com on hanging idle [read]; times and minutes [estimate]",
  },
  {
    id: "chop-hot",
    minutes: 12,
    openings: at(0, 1 / 16),
    outcomes: [
      { id: "no-hang", sign: "drops-straight-to-idle" },
      { id: "same", sign: "hang-no-longer-when-hot" },
      { id: "grows", sign: "hang-grows-with-heat" },
      { id: "only-hot", sign: "hangs-only-when-hot" },
    ],
    cautions: [...STANDING, "free-revving", "test-riding"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "scooterlab.uk on the pressure test [read]; the half second and minutes [estimate]",
  },
  {
    id: "quick-opening",
    minutes: 4,
    openings: at(1 / 8, 1 / 4),
    outcomes: [
      { id: "crisp", sign: "answers-crisply" },
      { id: "bog", sign: "bogs-hollow-no-smoke" },
      { id: "stumble", sign: "stumbles-with-smoke" },
      { id: "switch", sign: "delay-then-sudden-hit" },
    ],
    cautions: [...STANDING, "free-revving", "noise"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "blog.greenlandmx.com, tkart.it [read]; minutes [estimate]",
  },
  {
    id: "slow-versus-fast-opening",
    minutes: 4,
    openings: at(1 / 8, 1 / 4),
    outcomes: [
      { id: "both-clean", sign: "answers-crisply" },
      {
        id: "fast-only",
        sign: "fast-opening-bogs-slow-is-clean-four-stroke",
      },
      { id: "both-bog", sign: "bogs-fast-and-slow-four-stroke" },
    ],
    cautions: [...STANDING, "free-revving", "noise"],
    strokes: "four",
    screw: null,
    wideOpen: false,
    source: "dieseltwitch.com on accelerator pumps [read]; memory; minutes [estimate]",
  },
  {
    id: "touch-of-choke",
    minutes: 4,
    openings: at(0, 1 / 8, 1 / 4),
    outcomes: [
      { id: "better", sign: "touch-of-choke-better" },
      { id: "worse", sign: "touch-of-choke-worse" },
      { id: "no-change", sign: "touch-of-choke-no-change" },
    ],
    cautions: [...RIDING, "fumes"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source:
      "engineerfix.com on bogging, seadooforum.com 93974 [read]; its limit from memory; minutes [estimate]",
  },
  {
    id: "half-turn-for-the-hang",
    minutes: 5,
    openings: at(0, 1 / 16),
    outcomes: [
      { id: "gone", sign: "hang-gone-with-half-a-turn" },
      { id: "same", sign: "hang-stays-after-half-a-turn" },
    ],
    cautions: [...STANDING, "free-revving"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "memory; minutes [estimate]",
  },
  {
    id: "screw-sweep-air",
    minutes: 10,
    openings: at(0),
    outcomes: [
      { id: "middle", sign: "screw-peak-in-the-middle" },
      {
        id: "nearly-closed",
        sign: "air-screw-best-nearly-closed",
      },
      { id: "far-out", sign: "air-screw-best-far-out" },
      { id: "no-difference", sign: "screw-makes-no-difference" },
    ],
    cautions: ["makers-manual", ...STANDING],
    strokes: "both",
    screw: "air",
    wideOpen: false,
    source: SWEEP_SOURCE,
  },
  {
    id: "screw-sweep-fuel",
    minutes: 10,
    openings: at(0),
    outcomes: [
      { id: "middle", sign: "screw-peak-in-the-middle" },
      {
        id: "nearly-closed",
        sign: "fuel-screw-best-nearly-closed",
      },
      { id: "far-out", sign: "fuel-screw-best-far-out" },
      { id: "no-difference", sign: "screw-makes-no-difference" },
    ],
    cautions: ["makers-manual", "law", ...STANDING],
    strokes: "both",
    screw: "fuel",
    wideOpen: false,
    source: SWEEP_SOURCE,
  },
  {
    id: "tap-off-run-down",
    minutes: 6,
    openings: at(0, 1 / 8, 1 / 4, 1 / 2),
    outcomes: [
      { id: "clears", sign: "tap-off-clears-before-it-dies" },
      { id: "no-clearing", sign: "tap-off-no-clearing" },
    ],
    cautions: [...RIDING, "lean-damage", "stop-at-knock"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "memory; minutes [estimate]",
  },
  {
    id: "roll-on",
    minutes: 8,
    openings: at(1 / 8, 1 / 4, 1 / 2),
    outcomes: [
      { id: "smooth", sign: "pulls-smoothly" },
      { id: "burbles", sign: "four-strokes-under-load" },
      { id: "jerks", sign: "jerks-at-constant-grip" },
      { id: "hollow", sign: "revs-without-pull" },
      { id: "pings", sign: "pings-on-roll-on" },
    ],
    cautions: [...RIDING, "stop-at-knock"],
    strokes: "two",
    screw: null,
    wideOpen: false,
    source: "forums.sohc4.net 14069 on marks [read]; memory; minutes [estimate]",
  },
  {
    id: "roll-on-four-stroke",
    minutes: 8,
    openings: at(1 / 8, 1 / 4, 1 / 2),
    outcomes: [
      { id: "smooth", sign: "pulls-smoothly" },
      { id: "lazy", sign: "lazy-revs-petrol-smell-four-stroke" },
      { id: "jerks", sign: "jerks-at-constant-grip" },
      { id: "hollow", sign: "revs-without-pull" },
      { id: "pings", sign: "pings-on-roll-on" },
    ],
    cautions: [...RIDING, "stop-at-knock"],
    strokes: "four",
    screw: null,
    wideOpen: false,
    source: "forums.sohc4.net 14069 on marks [read]; memory; minutes [estimate]",
  },
  {
    id: "full-pull",
    minutes: 8,
    openings: at(3 / 4, 1),
    outcomes: [
      { id: "clean", sign: "pulls-clean-to-peak" },
      { id: "rough", sign: "will-not-rev-out" },
      { id: "fades", sign: "fades-then-recovers" },
      { id: "cuts", sign: "cuts-as-if-tap-off" },
      { id: "thin", sign: "over-revs-thin-and-sharp" },
      { id: "tearing", sign: "tearing-note-at-full-throttle" },
    ],
    cautions: WIDE,
    strokes: "both",
    screw: null,
    wideOpen: true,
    source: "blog.greenlandmx.com, tkart.it [read]; memory; minutes [estimate]",
  },
  {
    id: "roll-off",
    minutes: 8,
    openings: at(1),
    outcomes: [
      { id: "picks-up", sign: "roll-off-picks-up" },
      { id: "tiny-cut", sign: "four-strokes-after-tiny-cut" },
      { id: "at-80", sign: "four-strokes-at-about-80-percent" },
      { id: "never", sign: "roll-off-never-four-strokes" },
    ],
    cautions: WIDE,
    strokes: "two",
    screw: null,
    wideOpen: true,
    source: "mopedarmy.com on the roll-off method [read]; minutes [estimate]",
  },
  {
    id: "roll-off-four-stroke",
    minutes: 8,
    openings: at(1),
    outcomes: [
      { id: "picks-up", sign: "roll-off-picks-up" },
      { id: "eases", sign: "roll-off-no-pick-up" },
    ],
    cautions: WIDE,
    strokes: "four",
    screw: null,
    wideOpen: true,
    source: "memory; minutes [estimate]",
  },
  {
    id: "choke-flick-at-full",
    minutes: 8,
    openings: at(1),
    outcomes: [
      { id: "higher", sign: "choke-flick-revs-higher" },
      { id: "lower", sign: "choke-flick-revs-lower" },
      { id: "no-change", sign: "choke-flick-no-change" },
    ],
    cautions: WIDE,
    strokes: "both",
    screw: null,
    wideOpen: true,
    source: "karting.co.uk 372893 [read]; minutes [estimate]",
  },
  {
    id: "plug-look-part",
    minutes: 20,
    openings: at(1 / 4, 1 / 2),
    outcomes: PLUG_OUTCOMES,
    cautions: [...RIDING, "hot-parts", "battery"],
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: PLUG_SOURCE,
  },
  {
    id: "plug-look-full",
    minutes: 20,
    openings: at(3 / 4, 1),
    outcomes: PLUG_OUTCOMES,
    cautions: [...WIDE, "hot-parts", "battery"],
    strokes: "both",
    screw: null,
    wideOpen: true,
    source: PLUG_SOURCE,
  },
  {
    id: "one-step-more-fuel",
    minutes: 25,
    openings: at(0, 1 / 8, 1 / 4, 1 / 2),
    outcomes: ONE_STEP_OUTCOMES,
    cautions: ONE_STEP_CAUTIONS,
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: ONE_STEP_SOURCE,
  },
  {
    id: "one-step-more-fuel-top",
    minutes: 25,
    openings: at(3 / 4, 1),
    outcomes: ONE_STEP_OUTCOMES,
    cautions: [...ONE_STEP_CAUTIONS, "seizure-at-full-throttle", "stop-at-knock"],
    strokes: "both",
    screw: null,
    wideOpen: true,
    source: ONE_STEP_SOURCE,
  },
  {
    id: "best-known-setting",
    minutes: 40,
    openings: at(0, 1 / 8, 1 / 4, 1 / 2),
    outcomes: [
      { id: "stays", sign: "stays-on-known-good-setting" },
      { id: "gone", sign: "gone-on-known-good-setting" },
    ],
    cautions: ONE_STEP_CAUTIONS,
    strokes: "both",
    screw: null,
    wideOpen: false,
    source: "memory; tools: common practice, no source; minutes [estimate]",
  },
];

const byId = new Map<string, Test>(TESTS.map((test) => [test.id, test]));

/** The test of that id, or undefined for a name the catalogue does not know. */
export function testById(id: string): Test | undefined {
  return byId.get(id);
}
