import {
  accept,
  type Metre,
  type NozzleKind,
  needleDiameter,
  type Opening,
  type Outcome,
  type ScrewKind,
  type Situation,
  type Sizes,
  shares,
  sizesOf,
  toMillimetre,
} from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../state.ts";
import { adviceIn } from "./advice.ts";
import { type Governor, type Stretch, stretchesOf } from "./governs.ts";

/** A carburetor to be drawn: plain sizes in mm, and at each opening what sets the fuel. */
export interface Anatomy {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly shape: "round" | "oval" | "D";
  readonly cutawayMm: number;
  readonly seatToJetMm: number;
  readonly needleJetMm: number;
  readonly mainBoreMm: number;
  readonly pilotBoreMm: number;
  readonly fuelLiftMm: number;
  readonly grooves: number;
  readonly groovePitchMm: number;
  readonly clip: number;
  /** Bends of the needle, from the top groove to the tip. */
  readonly needle: readonly NeedlePoint[];
  readonly screw: { readonly kind: ScrewKind; readonly turns: number };
  readonly nozzle: NozzleKind;
  readonly numbers: {
    readonly main: number | null;
    readonly pilot: number | null;
    readonly needle: string | null;
  };
  /** A usual one is drawn, because nobody knows these. */
  readonly usual: Sizes["usual"];
  readonly at: readonly AtOpening[];
  readonly stretches: readonly Stretch[];
}

export interface NeedlePoint {
  readonly belowTopGrooveMm: number;
  readonly diameterMm: number;
}

export interface AtOpening {
  readonly opening: Opening;
  readonly liftMm: number;
  /** Needle at the top of the needle jet, and the gap on each side of it. */
  readonly needleMm: number;
  readonly gapMm: number;
  readonly leads: Governor;
  /** Parts of the say, together 1. */
  readonly shares: { readonly pilot: number; readonly needle: number; readonly main: number };
  /** What the usual small step to the richer side does, ln ratio. */
  readonly steps: { readonly slide: number; readonly screw: number; readonly clip: number };
}

export interface Anatomies {
  readonly now: Anatomy;
  /** With the parts of the step fitted; null when the step changes none. */
  readonly after: Anatomy | null;
}

/** The carburetor as fitted, and as it would be after a step of the advice (0 is the step advised). */
export function anatomyFor(
  { shop, words }: EngineState,
  { bike, step }: { readonly bike: string; readonly step: number | null },
): Outcome<Anatomies> {
  const story = bikeCase(shop, bike);
  if (!story.ok) return story;
  const now = anatomyOf(story.value.now);
  if (!now.ok) return now;
  const situation = step === null ? null : situationOfStep(adviceIn(shop, bike, words), step);
  const after = situation === null ? null : anatomyOf(situation);
  return accept({ now: now.value, after: after?.ok ? after.value : null });
}

function situationOfStep(advice: ReturnType<typeof adviceIn>, index: number): Situation | null {
  if (!advice.ok) return null;
  return [advice.value.step, ...advice.value.others][index]?.situation ?? null;
}

/** Past the point where the needle still sits in its jet at full throttle, and never less past the last bend, mm. */
const TIP_PAST_JET = 3;
const TIP_PAST_BEND = 6;

function anatomyOf(situation: Situation): Outcome<Anatomy> {
  const found = sizesOf(situation);
  if (!found.ok) return found;
  const said = shares(situation);
  if (!said.ok) return said;
  const sizes = found.value;
  const { setup } = situation;
  const stretches = stretchesOf(said.value);
  const width = sizes.bore.shape === "round" ? sizes.bore.diameter : sizes.bore.width;
  return accept({
    widthMm: toMillimetre(width),
    heightMm: toMillimetre(sizes.height),
    shape: sizes.bore.shape,
    cutawayMm: toMillimetre(sizes.cutaway),
    seatToJetMm: toMillimetre(sizes.seatToJet),
    needleJetMm: toMillimetre(sizes.needleJet),
    mainBoreMm: toMillimetre(sizes.mainBore),
    pilotBoreMm: toMillimetre(sizes.pilotBore),
    fuelLiftMm: toMillimetre(sizes.fuelLift),
    grooves: sizes.grooves,
    groovePitchMm: toMillimetre(sizes.groovePitch),
    clip: sizes.clip,
    needle: needlePoints(sizes),
    screw: { kind: setup.body.screwKind, turns: sizes.turns },
    nozzle: setup.body.nozzle,
    numbers: {
      main: setup.main.part?.number ?? null,
      pilot: setup.pilot.part?.number ?? null,
      needle: setup.needle.part?.marks ?? null,
    },
    usual: sizes.usual,
    at: said.value.map(({ opening, pilot, outlet, needle, main, slideStep, screwStep, clipStep }) => {
      const lift = Math.max(opening * sizes.height, sizes.idleLift);
      const diameter = needleDiameter(sizes.needle, (inJet(sizes) + lift) as Metre);
      return {
        opening,
        liftMm: toMillimetre(lift as Metre),
        needleMm: toMillimetre(diameter),
        gapMm: toMillimetre((sizes.needleJet - diameter) as Metre) / 2,
        leads: stretches.find(({ to }) => opening <= to)?.part ?? "main",
        shares: { pilot: pilot + outlet, needle, main },
        steps: { slide: slideStep, screw: screwStep, clip: clipStep },
      };
    }),
    stretches,
  });
}

/** Distance below the top groove at which the needle sits in the top of its jet with the slide down. */
const inJet = ({ seatToJet, clip, groovePitch }: Sizes): number => seatToJet + (clip - 1) * groovePitch;

function needlePoints(sizes: Sizes): readonly NeedlePoint[] {
  const { needle, seatToJet, height, grooves, groovePitch } = sizes;
  const bends = needle.tapers.map(({ start }) => start as number);
  const tip = Math.max(
    seatToJet + height + (grooves - 1) * groovePitch + TIP_PAST_JET / 1000,
    (bends[bends.length - 1] ?? 0) + TIP_PAST_BEND / 1000,
  );
  return [0, ...bends.filter((start) => start > 0), tip].map((below) => ({
    belowTopGrooveMm: toMillimetre(below as Metre),
    diameterMm: toMillimetre(needleDiameter(needle, below as Metre)),
  }));
}
