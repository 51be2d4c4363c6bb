import { FAULTS, type FaultId, type Reliability, type Sign } from "./catalogue.ts";
import { affine, blend, type Factor, type Plateaus } from "./factor.ts";
import { reaches } from "./reach.ts";

/** How many times more likely one sign may make any state than another. Rules B3 and B4. */
export const SIGN_CAP: Readonly<Record<Reliability, number>> = { A: 10, B: 10, C: 5, D: 2 };

/**
 * The mixture error beyond which a stretch counts as clearly rich or lean in the catalogue's figures, at a
 * mean opening. Half of "two jet steps, one to two clip grooves": those are worth about 12 % of the fuel at
 * idle, 9 % at a quarter, 7 % wide open. Estimate.
 */
export function clearEdge(opening: number): number {
  return 0.035 + 0.03 * (1 - Math.sqrt(Math.min(1, Math.max(0, opening))));
}

/** Width of that edge: a normal step, so that "within one step of right" stays about right. */
export const edgeWidth = (opening: number): number => 0.45 * clearEdge(opening);

/** The share of a sign of health that each fault leaves, where it is another one than the catalogue's. */
export type Spared = ReadonlyMap<FaultId, number>;
const AS_USUAL: Spared = new Map();

/** The share of a sign of health that a fault leaves by the catalogue, 0 to 1; null where it does not touch it. */
export function shareLeft({ chance, faults }: Sign, fault: FaultId): number | null {
  const withFault = faults[fault];
  if (withFault === undefined) return null;
  return chance.right > 0 ? Math.min(1, withFault / chance.right) : 1;
}

/** Chances of noticing a sign at each mixture plateau, given the faults present. Rule B5. */
export function chanceWithFaults(
  sign: Sign,
  present: readonly FaultId[],
  spared: Spared = AS_USUAL,
  fresh = 1,
): Plateaus {
  let { rich, right, lean } = sign.chance;
  for (const fault of present) {
    const withFault = sign.faults[fault];
    if (withFault === undefined) continue;
    if (sign.healthy) {
      const left = spared.get(fault) ?? shareLeft(sign, fault)!;
      rich *= left;
      right *= left;
      lean *= left;
    } else {
      // The table's figure is for the fault with the jets right: take out what a right mixture already gives.
      const room = 1 - sign.chance.right;
      const added = room > 0 ? fresh * Math.max(0, (withFault - sign.chance.right) / room) : 0;
      rich = added + (1 - added) * rich;
      right = added + (1 - added) * right;
      lean = added + (1 - added) * lean;
    }
  }
  return { rich, right, lean };
}

const seenOrNot = (chance: Plateaus, seen: boolean): Plateaus =>
  seen ? chance : { rich: 1 - chance.rich, right: 1 - chance.right, lean: 1 - chance.lean };

/** What a sign still tells of the mixture when a fault was there that acts on that stretch, but has no figure for it. Estimate. */
const HIDDEN = 0.25;

/** Chances drawn together towards their mean: at 0 they say nothing. */
function towardsNothing({ rich, right, lean }: Plateaus, told: number): Plateaus {
  const mean = (rich + right + lean) / 3;
  const drawn = (chance: number): number => mean + told * (chance - mean);
  return { rich: drawn(rich), right: drawn(right), lean: drawn(lean) };
}

/** A sign whose every chance is below this cannot be. */
const IMPOSSIBLE = 1e-9;

/** A sign's likelihood for a sound engine and for each fault that alters it, already capped. */
export interface SignLikelihood {
  readonly sound: Factor;
  readonly faults: ReadonlyMap<FaultId, Factor>;
  /** Largest over smallest likelihood of any state and fault after the cap, at least 1. */
  readonly strength: number;
}

/**
 * Likelihood of a sign seen, or looked for and not seen.
 * @param opening mean opening it speaks of
 * @param present faults known to have been there at the time (found and mended later)
 * @param spared what each fault leaves of a sign of health, in the light of what it left before (rule B21)
 * @param fresh the share of a fault's own figure for a sign of trouble that still counts, 0 to 1 (rule B24)
 */
export function signLikelihood(
  sign: Sign,
  seen: boolean,
  opening: number,
  present: readonly FaultId[] = [],
  spared: Spared = AS_USUAL,
  fresh = 1,
): SignLikelihood {
  const altering = FAULTS.filter((fault) => sign.faults[fault] !== undefined && !present.includes(fault));
  const told = present.some((fault) => sign.faults[fault] === undefined && reaches(fault, opening))
    ? HIDDEN
    : 1;
  const chances = (faults: readonly FaultId[]): Plateaus =>
    towardsNothing(seenOrNot(chanceWithFaults(sign, faults, spared, fresh), seen), told);
  const sound = chances(present);
  const withFault = altering.map((fault) => [fault, chances([...present, fault])] as const);
  let least = Infinity;
  let most = 0;
  for (const { rich, right, lean } of [sound, ...withFault.map(([, plateaus]) => plateaus)]) {
    least = Math.min(least, rich, right, lean);
    most = Math.max(most, rich, right, lean);
  }
  const cap = SIGN_CAP[sign.reliability];
  // A small constant chance of noticing anything at all: enough to bring the largest ratio down to the cap.
  // What cannot happen at all, and did, says nothing of the state.
  const lapse = most > IMPOSSIBLE ? Math.max(0, (most - cap * least) / (cap - 1)) : 1;
  const factor = (plateaus: Plateaus): Factor =>
    affine(blend(plateaus, clearEdge(opening), edgeWidth(opening)), 1, lapse);
  return {
    sound: factor(sound),
    faults: new Map(withFault.map(([fault, plateaus]) => [fault, factor(plateaus)])),
    strength: (most + lapse) / (least + lapse),
  };
}
