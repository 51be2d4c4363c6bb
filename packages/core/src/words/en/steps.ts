import type { Opening } from "../../units/quantity.ts";
import { lowerFirst, upperFirst } from "../letters.ts";
import type { JetSpoken, PartStand } from "../part-stand.ts";
import { listed } from "./listed.ts";
import { openings } from "./openings.ts";
import { partName, partNamed, parts, partValue } from "./parts.ts";

type TopThrottle = "free" | "seconds only" | "stay below 3/4";
type PartToRead = "pilot" | "screw" | "needle" | "clip" | "main";

const NOTHING_CHANGED = "Nothing is changed.";
const CHANGE_TOOLS = ["no. 2 cross-head screwdriver", "flat screwdriver", "3 mm hex key"];
const PLUG_SPANNER = "14 or 17 mm open spanner for the bowl plug";

const TO_READ: Readonly<Record<PartToRead, string>> = {
  pilot: "pilot jet",
  screw: "screw setting",
  needle: "needle",
  clip: "clip groove",
  main: "main jet",
};

const TOP_RIDE: Readonly<Record<TopThrottle, string>> = {
  free: "3/4 to full: hold a few seconds, then roll back a little.",
  "seconds only": "3/4 to full: hold two or three seconds, no longer, then roll back a little.",
  "stay below 3/4": "Leave 3/4 and more alone.",
};

const mend = {
  /** @param fault the words of the fault, with its article */
  title: (fault: string): string => `Put this right before any jet: ${fault}`,
  expect: "The old complaint changes or goes. What was noticed before the mend counts for little afterwards.",
  wrongIf: "It runs exactly as before: the fault was not the cause, or it is still there.",
  undo: "Keep what you take off until the next ride has shown that the mend is right.",
  note: "Note the mend in the log when it is done.",
};

const check = {
  /**
   * @param fault the words of the fault, with its article
   * @param timesInTen how often the check finds it, 1 to 9
   * @param mend what to do then, a sentence
   */
  expect: (fault: string, timesInTen: number, mend: string): string =>
    `If ${fault} is behind it, this finds it about ${timesInTen} times in ten. Then: ${lowerFirst(mend)}`,
  wrongIf: (fault: string): string =>
    `All is sound. ${upperFirst(fault)} is then less likely; note the check, and go on.`,
  undo: NOTHING_CHANGED,
};

const lookOver = {
  title: "Look the bike over before any jet",
  /** One of its looks, as a sentence. @param words the heading of the check */
  look: (words: string): string => (words.endsWith("?") ? words : `${words}.`),
  /** @param timesInTen how often it finds something, 1 to 10 */
  expect: (timesInTen: number): string =>
    `On a bike that runs like this it finds something wrong in about ${timesInTen} of ten cases. That is put right first; a jet cures none of it.`,
  wrongIf: "All is fine: then what was looked at is less likely to be behind it, and the jets are next.",
  undo: "Nothing is changed. Put back what you took off.",
  note: "In one go it takes fewer minutes than look by look: the tools are fetched once, the plug is out once.",
};

const test = {
  /** The heading of a test with the place to make it, where there is a choice of places. */
  titleAt: (words: string, opening: Opening): string => `${words}, ${openings.at(opening)}`,
  /** @param outcome the words of the likeliest outcome */
  expect: (outcome: string, timesInTen: number): string =>
    `Likeliest: ${lowerFirst(outcome)}, about ${timesInTen} times in ten. Each answer leads on to another step.`,
  wrongIf: "It answers otherwise each time. Then it tells nothing: do not note it.",
  undo: "Put back whatever you moved for the test.",
};

const change = {
  how: {
    main: (jet: string): string =>
      `Bowl plug out (or bowl off), main jet out, fit the ${jet}. Read the number on the one that comes out.`,
    pilot: (jet: string): string =>
      `Bowl off, pilot jet out with a driver that fills the slot, fit the ${jet}.`,
    clip: (from: PartStand, to: PartStand): string =>
      `Cap off, slide out, clip from ${partValue(from)} to ${partValue(to)}. Groove 1 is the top one, at the blunt end; a lower groove lifts the needle and richens the middle.`,
    needle: (to: PartStand): string => `Cap off, slide out, fit needle ${partValue(to)}.`,
    slide: (to: PartStand): string =>
      `Cap off, fit the slide with ${partValue(to)}; the relief faces the filter.`,
    screw: (kind: "air" | "fuel", to: PartStand): string =>
      `${kind === "air" ? "Air screw, on the filter side: out is leaner" : "Fuel screw, on the engine side: out is richer"}. Count the turns to lightly seated, then set ${partValue(to)}.`,
    needleJet: (to: PartStand): string => `Bowl off, needle jet out, fit the ${partValue(to)} one.`,
  },
  /** The jet that goes in; null: not known. */
  jet: (jet: JetSpoken | null): string => (jet === null ? "not known" : parts.jet(jet)),
  /** Common practice, no source. */
  tools: {
    screw: ["flat screwdriver"],
    cap: CHANGE_TOOLS,
    bowl: [...CHANGE_TOOLS, PLUG_SPANNER],
  },
  /**
   * @param percent by how much, whole; 0: less than one
   * @param right the clause for that stretch when it is right
   */
  expect: (way: "leaner" | "richer", percent: number, opening: Opening, right: string): string =>
    `${way === "leaner" ? "Leaner" : "Richer"} by ${percent < 1 ? "less than 1 %" : `about ${percent} %`} ${openings.at(opening)}, where it acts most. If that is right, ${right}.`,
  /** @param clause what is noticed when it went too far */
  wrongIf: (clause: string): string => `${upperFirst(clause)}. Then undo it.`,
  undo: (before: readonly PartStand[]): string => `Back to ${before.map(partNamed).join("; ")}.`,
  notInDrawer: (missing: readonly PartStand[]): string =>
    `Not in the drawer: ${missing.map(partNamed).join(", ")}.`,
  fitsThisBody: "The drawer does not say which body these parts are for: check that they fit this one first.",
  togetherSaves: (changed: readonly PartStand[], minutes: number): string =>
    `Changing ${listed(changed.map(partName))} together would save about ${minutes} minutes on the whole; one at a time tells more surely what did what.`,
  oneAtATimeCosts: (minutes: number): string =>
    `One change at a time would cost about ${minutes} minutes more on the whole; it tells more surely what did what.`,
};

const waiting = {
  /** The heading of a ride while nothing but a waiting change would pay. */
  ride: "A change that would help has to wait: ride on, and report what changes",
  /** @param percent by how much it would lean 3/4 to full throttle, whole */
  why: {
    top: (percent: number): string =>
      `It would lean 3/4 to full throttle by about ${percent} %, and full throttle is not proved yet.`,
    "other reasons": (): string =>
      "It would lean full throttle, where something else than the jets may feel rich.",
    pinging: (): string => "It would make it leaner, and it pinged like this.",
  },
  /** What has to come before it. */
  frees: {
    top: "Prove full throttle first.",
    "bigger main": "A bigger main jet keeps full throttle safe.",
    "other reasons": "Look at spark, filter, exhaust and compression first.",
    pinging: "Find what makes it ping and mend it, or go richer.",
  },
  /** @param title the heading of the step that comes before it */
  by: (title: string): string => `Next for that: ${lowerFirst(title)}.`,
  /** Said by the step that comes before it. @param change the heading of the change that waits */
  comesFirst: {
    test: (change: string, opening: Opening): string =>
      `${change}: that would help ${openings.at(opening)}. Prove full throttle first.`,
    other: (change: string, opening: Opening): string =>
      `${change}: that would help ${openings.at(opening)}. This comes first.`,
  },
};

const readParts = {
  title: (unknown: readonly PartToRead[]): string =>
    `Find out what is fitted: ${listed(unknown.map((part) => TO_READ[part]))}`,
  how: [
    "Count the screw's turns from where it is to lightly seated, write them down, and turn it back.",
    "Bowl plug or bowl off: read the numbers on main and pilot jet with a magnifier, maker's mark and all.",
    "Cap off, slide out: which groove from the top holds the clip, and what is stamped on needle and slide.",
    "A needle without marks: measure its diameter with a micrometer every 5 mm from the top groove down.",
  ],
  tools: [...CHANGE_TOOLS, PLUG_SPANNER, "magnifier"],
  expect: "Numbers to change from. Note for each part whether you read it, measured it or were told.",
  wrongIf: "A number does not fit the way it runs: it may have been drilled or swapped. Measure it.",
  undo: "Put every part back as it was.",
  note: "Until then those parts stay as they are.",
};

const ride = {
  /** Nothing was heard of the parts as fitted. */
  unheard: "Ride it as it is, and report what it does",
  /** The screw alone was turned since. */
  onStand: "Let it idle and snap it open, and report what the turned screw did",
  howOnStand: [
    "Engine fully warm, on the stand, outdoors or with the exhaust led away.",
    "20 seconds at idle. Then a quick opening to 1/4 and back, three times, with time to settle in between.",
    "Report how it idles, how it answers and how it comes back to idle, against before the turn.",
  ],
  confirm: "Nothing needs changing: confirm it with this ride",
  rideOn: "No change is worth its minutes now: ride on, and report what changes",
  /** @param sorted one to three openings, from closed up */
  again: (sorted: readonly Opening[]): string => `Ride it again and report ${openings.atEach(sorted)}`,
  how: (top: TopThrottle): readonly string[] => [
    "Mark the grip: closed, 1/8, 1/4, 1/2, 3/4, full, by slide lift.",
    "Engine fully warm. The same stretch, the same gear, three times each.",
    "Closed: 20 seconds at idle, then a quick opening to 1/4 and back. 1/8 to 1/4: slow and steady, close, reopen.",
    `1/4 to 1/2: roll on from low revs in a higher gear. ${TOP_RIDE[top]}`,
    "Report what you heard, saw and felt at each, and what you looked for and did not find.",
  ],
  tools: ["tape and pen for the grip"],
  expectConfirmed: "It runs as well as it did, at every opening.",
  expectSame: "It runs as it did. Should one stretch get worse, a change there will pay.",
  expectMore: "Each report narrows the picture, and the next step follows from it.",
  wrongIf: "Something shows that was not there before. Report that too.",
  undo: NOTHING_CHANGED,
};

const stop = {
  title: "Stop: no riding and no jetting until the cause is found",
  how: [
    "Shut it off and let it cool. Do not start it again to try.",
    "Plug out: look for specks, metal and a melted edge, with a light and a magnifier.",
    "Look through the exhaust port and the plug hole for scuffs on the piston, if you can reach them.",
    "Check that slide, cable and boots are sound, and that nothing holds the throttle open.",
    "Hand it to a licensed technician for a pressure test, the timing and a look inside before it runs again.",
  ],
  tools: ["plug spanner", "torch", "magnifier"],
  expect:
    "A cause that can be seen or measured. Note the check and what it found; only then does the tuning go on.",
  wrongIf: "A thorough look finds nothing. Note that check as sound: the tuning goes on, gently.",
  undo: NOTHING_CHANGED,
  note: "Should it need to run at all before that: a richer main jet first, never a leaner one.",
};

const topThrottle = {
  "seconds only":
    "The top is not proved yet: a few seconds at 3/4 or more, no longer, and off the throttle at the first ping.",
  "stay below 3/4": "The top may be lean: stay below 3/4 throttle.",
};

/** Every sentence of a step: what to do, what to expect, what would prove it wrong, how to undo it. */
export const steps = {
  mend,
  check,
  lookOver,
  test,
  change,
  waiting,
  readParts,
  ride,
  stop,
  topThrottle,
  /** After pinging, on the next ride. */
  afterKnock: "It pinged like this: roll on gently, and off the throttle at the first rattle.",
};
