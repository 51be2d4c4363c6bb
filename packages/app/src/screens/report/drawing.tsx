// What the engine speed does: time runs to the right, revs go up. Box of 44 by 32, idle at 24.
const STRAIGHT = "M2 7H14L20 24H42";
const HANGS = "M2 7H10L14 14H32L36 24H42";
const DIVES = "M2 7H12L20 30L27 27L33 24H42";
const LOADS_UP = "M2 18H10L13 20L16 19L20 22L24 21L28 26L31 25L36 31H42";
const HUNTS = "M2 22C5 12 9 12 12 22S19 30 22 22S29 12 32 22S39 30 42 22";
const ANSWERS = "M2 24H12C18 24 19 6 24 6H42";
const GARGLES = "M2 24L6 22L8 26L11 19L14 26L17 17L20 24L23 14L26 20L30 9L42 5";
const GASPS = "M2 20H8L12 22C15 31 21 31 23 30L25 29L28 8L42 6";
const BURBLES = "M2 20L5 14L8 20L11 14L14 20L17 12L20 20L23 14L26 20L29 13L32 20L35 14L38 20L41 14";
const BURBLES_UP = "M2 27L6 20L9 25L13 17L16 23L20 14L23 21L27 12L30 18L34 10L37 17L42 9";
const TUGS = "M2 16H7L9 11L12 17H19L21 10L24 18H30L32 11L35 17H42";
const PULLS = "M2 26C14 24 26 14 42 6";
const LAZY = "M2 25H14C24 25 28 20 42 15";
const SWITCH = "M2 25H22L24 8L42 5";
const RATTLES = "M2 27L30 12M12 13V8M18 10V5M24 7V2M30 6V1M36 9V4M30 12L42 8";
const HOLLOW = "M2 26L8 22M12 19L18 15M22 12L28 9M32 7L42 6";
const MISSES = "M2 25L12 19V29L15 17L24 12V28L27 10L33 7V27L36 6H42";
const SIGNS_OFF = "M2 28L26 7H42";
const HELD_BACK = "M2 28L18 15L21 18L24 13L27 18L30 13L33 18L36 13L39 17L42 14";
const FADES = "M2 28L14 8H20C27 9 28 22 33 22L36 9L42 8";
const RINGS_ON = "M2 28L20 12L30 5L36 3H42M30 8L42 6";
const TEARS = "M2 27L16 12L18 2L20 22L23 3L26 21L29 2L32 20L35 8L42 24";
const UNSURE = "M2 16H8M13 16H19M24 16H30M35 16H41";

const DRAWINGS: Readonly<Record<string, string>> = {
  "drops-straight-to-idle": STRAIGHT,
  "hangs-after-closing": HANGS,
  "dives-below-idle": DIVES,
  "idle-loads-up": LOADS_UP,
  "idle-hunts": HUNTS,
  "answers-crisply": ANSWERS,
  "stumbles-with-smoke": GARGLES,
  "bogs-hollow-no-smoke": GASPS,
  "four-strokes-light-throttle": BURBLES,
  "lazy-revs-petrol-smell-four-stroke": LAZY,
  "jerks-at-constant-grip": TUGS,
  "pulls-smoothly": PULLS,
  "four-strokes-under-load": BURBLES_UP,
  "delay-then-sudden-hit": SWITCH,
  "pings-on-roll-on": RATTLES,
  "revs-without-pull": HOLLOW,
  "misses-more-the-harder-it-pulls": MISSES,
  "pulls-clean-to-peak": SIGNS_OFF,
  "will-not-rev-out": HELD_BACK,
  "fades-then-recovers": FADES,
  "over-revs-thin-and-sharp": RINGS_ON,
  "tearing-note-at-full-throttle": TEARS,
};

/** A small line drawing of what the engine speed does; null draws "could not tell". Says nothing to a screen reader. */
export function SignDrawing({ sign }: { readonly sign: string | null }) {
  return (
    <svg class="sign-drawing" viewBox="0 0 44 32" aria-hidden="true">
      <path d={(sign === null ? undefined : DRAWINGS[sign]) ?? UNSURE} />
    </svg>
  );
}
