/** The throttle openings a ride report asks about, in the words of a record. */
export const REPORT_OPENINGS = ["closed", "1/8", "1/4", "1/2", "3/4", "full"] as const;
export type ReportOpening = (typeof REPORT_OPENINGS)[number];

/** Asked only when the person wants it: few riders hold three quarters for long. */
export const OPTIONAL_OPENING: ReportOpening = "3/4";

/** The openings a full report walks through. */
export const ASKED_OPENINGS: readonly ReportOpening[] = REPORT_OPENINGS.filter(
  (opening) => opening !== OPTIONAL_OPENING,
);

/** One sign for both kinds of engine, or one for each. */
type Choice = string | { readonly two: string; readonly four: string };

const BURBLES_OR_LAZY: Choice = {
  two: "four-strokes-under-load",
  four: "lazy-revs-petrol-smell-four-stroke",
};

/**
 * What may be tapped at each opening, the healthy answer first: signs of the catalogue from different groups where
 * it has them, so that two taps are two votes.
 */
const CHOICES: Readonly<Record<ReportOpening, readonly Choice[]>> = {
  closed: [
    "drops-straight-to-idle",
    "hangs-after-closing",
    "dives-below-idle",
    "idle-loads-up",
    "idle-hunts",
  ],
  "1/8": [
    "answers-crisply",
    "stumbles-with-smoke",
    "bogs-hollow-no-smoke",
    { two: "four-strokes-light-throttle", four: "lazy-revs-petrol-smell-four-stroke" },
    "jerks-at-constant-grip",
  ],
  "1/4": [
    "pulls-smoothly",
    BURBLES_OR_LAZY,
    "jerks-at-constant-grip",
    "delay-then-sudden-hit",
    "pings-on-roll-on",
  ],
  "1/2": [
    "pulls-smoothly",
    BURBLES_OR_LAZY,
    "revs-without-pull",
    "misses-more-the-harder-it-pulls",
    "pings-on-roll-on",
  ],
  "3/4": [
    "pulls-clean-to-peak",
    "will-not-rev-out",
    "revs-without-pull",
    "fades-then-recovers",
    "pings-on-roll-on",
  ],
  full: [
    "pulls-clean-to-peak",
    "will-not-rev-out",
    "fades-then-recovers",
    "over-revs-thin-and-sharp",
    "tearing-note-at-full-throttle",
  ],
};

/** The signs to choose from at one opening. Strokes that nobody noted: what only one kind of engine does is left out. */
export function signChoices(opening: ReportOpening, strokes: 2 | 4 | null): readonly string[] {
  return CHOICES[opening].flatMap((choice) => {
    if (typeof choice === "string") return [choice];
    return strokes === null ? [] : [strokes === 2 ? choice.two : choice.four];
  });
}

/** What a touch of choke does, and the sign each answer stands for. */
export const CHOKE_ANSWERS = {
  better: "touch-of-choke-better",
  worse: "touch-of-choke-worse",
  same: "touch-of-choke-no-change",
} as const;
export type ChokeAnswer = keyof typeof CHOKE_ANSWERS;

/** Signs that are a warning though they do not end the ride: the report waits at them for a moment. */
export const WARNING_SIGNS: readonly string[] = ["pings-on-roll-on"];
