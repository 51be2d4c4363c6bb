import type { MeteringRefusal } from "../../metering/comparable.ts";
import { type PartShifts, partShifts, writeSeriesShift } from "../../metering/part-shifts.ts";
import { baselineOf, otherSide } from "../../metering/shift.ts";
import type { Situation } from "../../metering/situation.ts";
import type { Setup } from "../../parts/setup.ts";
import { OPENINGS } from "../../units/opening.ts";
import { accept, type Outcome } from "../../units/outcome.ts";
import type { BikeCase } from "../case.ts";
import type { Option } from "../options.ts";
import { type Effort, effortFor, maskOf } from "./effort.ts";
import { CIRCUIT_COUNT, type LossTable, lossTable, type Mixture } from "./loss-table.ts";

/** What can be fitted in each place. A needle comes with its clip and needle jet. */
export interface DrawerPlaces {
  readonly needles: readonly Option[];
  readonly mains: readonly Option[];
  readonly slides: readonly Option[];
  readonly pilots: readonly Option[];
  readonly screws: readonly Option[];
}

export interface DrawerQuestion {
  readonly belief: Mixture;
  /** The situation the belief is held for. */
  readonly reference: Situation;
  /** What is fitted, in the air and on the fuel it will be ridden with. */
  readonly now: Situation;
  readonly places: DrawerPlaces;
  /** The largest chance allowed of being lean at the top; 1 allows all. Rule A2. */
  readonly leanChance: number;
  /** Whether the minutes a change takes count beside the trouble. */
  readonly countMinutes: boolean;
  /** The shop's own minutes for a part. */
  readonly minutes: BikeCase["minutes"];
}

/** Values of a partner at each opening: shift under pilot, screw, slide, main (by the fuel lift) and air. */
export const PARTNER_VALUES = 5;

/** Slide, pilot jet and screw together: all that needle and main jet are combined with. */
export interface Partners {
  readonly count: number;
  readonly shift: Float64Array;
  readonly mask: Uint8Array;
}

/** A drawer made ready to be searched: every combination of places, each with its shift and its minutes. */
export interface DrawerSpace {
  readonly places: DrawerPlaces;
  readonly now: Situation;
  readonly shifts: PartShifts;
  readonly loss: LossTable;
  readonly partners: Partners;
  readonly needleMask: Uint8Array;
  readonly mainMask: Uint8Array;
  readonly effort: Effort;
  readonly leanChance: number;
  readonly countMinutes: boolean;
  /** How many combinations there are. */
  readonly size: number;
  /** How many options were left out because metering cannot compare them. */
  readonly leftOut: number;
}

/** Makes a drawer ready. Options that metering refuses are left out; refuses where the setup of now is. */
export function drawerSpace(question: DrawerQuestion): Outcome<DrawerSpace, MeteringRefusal> {
  const { now, places } = question;
  const baseline = baselineOf(question.reference);
  if (!baseline.ok) return baseline;
  const present = otherSide(baseline.value, now);
  if (!present.ok) return present;
  let leftOut = 0;
  const sided = <Choice>(choices: readonly Choice[], changed: (choice: Choice) => Setup) => {
    const sides = choices.map((choice) => otherSide(baseline.value, { ...now, setup: changed(choice) }));
    const kept = choices.filter((_, i) => sides[i]!.ok);
    leftOut += choices.length - kept.length;
    return { kept, sides: sides.flatMap((side) => (side.ok ? [side.value] : [])) };
  };
  const needles = sided(places.needles, (option) => option.fit(now.setup));
  const mains = sided(places.mains, (option) => option.fit(now.setup));
  const slides = sided(places.slides, (option) => option.fit(now.setup));
  const pilots = sided(places.pilots, (option) => option.fit(now.setup));
  const screws = sided(places.screws, (option) => option.fit(now.setup));
  // Each of the two is usable with the other as it is, and nothing is checked of both: so is every pair.
  const pairs = pilots.kept.flatMap((pilot) => screws.kept.map((screw) => ({ pilot, screw })));
  const paired = sided(pairs, ({ pilot, screw }) => screw.fit(pilot.fit(now.setup)));
  if (paired.kept.length < pairs.length) {
    throw new RangeError(
      `${pairs.length - paired.kept.length} pairs of pilot jet and screw are refused that go one by one`,
    );
  }
  const shifts = partShifts(baseline.value, {
    now: present.value,
    needles: needles.sides,
    mains: mains.sides,
    slides: slides.sides,
    pilots: paired.sides,
  });
  const masks = (options: readonly Option[]): Uint8Array => Uint8Array.from(options, maskOf);
  const pairMasks = Uint8Array.from(paired.kept, ({ pilot, screw }) => maskOf(pilot) | maskOf(screw));
  const partners = partnersOf(shifts, masks(slides.kept), pairMasks);
  return accept({
    places: {
      needles: needles.kept,
      mains: mains.kept,
      slides: slides.kept,
      pilots: pilots.kept,
      screws: screws.kept,
    },
    now,
    shifts,
    loss: lossTable(question.belief),
    partners,
    needleMask: masks(needles.kept),
    mainMask: masks(mains.kept),
    effort: effortFor(question.minutes),
    leanChance: question.leanChance,
    countMinutes: question.countMinutes,
    size: needles.kept.length * mains.kept.length * partners.count,
    leftOut,
  });
}

function partnersOf(shifts: PartShifts, slides: Uint8Array, pilots: Uint8Array): Partners {
  const n = OPENINGS.length;
  const count = slides.length * pilots.length;
  const shift = new Float64Array(count * n * PARTNER_VALUES);
  const mask = new Uint8Array(count);
  for (let s = 0, k = 0; s < slides.length; s++) {
    for (let p = 0; p < pilots.length; p++, k++) {
      mask[k] = slides[s]! | pilots[p]!;
      for (let u = 0; u < n; u++) {
        const at = (k * n + u) * PARTNER_VALUES;
        shift[at] = shifts.pilot[p * n + u]!;
        shift[at + 1] = shifts.screw[p * n + u]!;
        shift[at + 2] = shifts.slide[s * n + u]!;
        shift[at + 3] = shifts.lift[s * n + u]!;
        shift[at + 4] = shifts.air[s * n + u]!;
      }
    }
  }
  return { count, shift, mask };
}

/** Writes the shift of needle and main (as worked out) with a partner, opening by opening, six circuits each. */
export function writeShift(
  into: Float64Array,
  needle: Float64Array,
  main: Float64Array,
  { shift }: Partners,
  partner: number,
): void {
  const n = needle.length;
  for (let u = 0; u < n; u++) {
    const from = (partner * n + u) * PARTNER_VALUES;
    const to = u * CIRCUIT_COUNT;
    into[to] = shift[from]!;
    into[to + 1] = shift[from + 1]!;
    into[to + 2] = shift[from + 2]!;
    into[to + 3] = needle[u]!;
    into[to + 4] = main[u]! + shift[from + 3]!;
    into[to + 5] = shift[from + 4]!;
  }
}

/** The shift of one combination, six circuits for each opening. */
export function shiftOfChoice(
  space: DrawerSpace,
  needle: number,
  main: number,
  partner: number,
): Float64Array {
  const own = new Float64Array(OPENINGS.length);
  const jets = new Float64Array(OPENINGS.length);
  const shift = new Float64Array(OPENINGS.length * CIRCUIT_COUNT);
  writeSeriesShift(space.shifts, needle, main, own, jets);
  writeShift(shift, own, jets, space.partners, partner);
  return shift;
}
