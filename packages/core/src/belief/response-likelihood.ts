import { FAULTS, type FaultId } from "./catalogue.ts";
import { affine, blend, type Factor, type Plateaus } from "./factor.ts";
import { reaches } from "./reach.ts";
import { clearEdge, SIGN_CAP } from "./sign-likelihood.ts";

export type Felt = "better" | "same" | "worse";

/**
 * Chances of each answer after one step richer, where a complaint is being chased: clearly rich, right,
 * clearly lean half-way between the two setups. Estimate (rows T08 and T09 of the sign table).
 */
const ONE_STEP_RICHER: Readonly<Record<Felt, Plateaus>> = {
  better: { rich: 0.04, right: 0.25, lean: 0.8 },
  worse: { rich: 0.8, right: 0.5, lean: 0.03 },
  same: { rich: 0.16, right: 0.25, lean: 0.17 },
};

/** With a change too small to feel, or a fault that hides it, the answer says little. Estimate. */
const NOTHING_FELT: Readonly<Record<Felt, number>> = { better: 0.2, same: 0.6, worse: 0.2 };

/** The change, in ln of fuel-air ratio, that half the riders feel. Estimate: half a jet step. */
const HALF_FELT = 0.02;

/** Smallest change that is taken as evidence at all. */
export const SMALLEST_FELT = 0.003;

export interface ResponseLikelihood {
  readonly sound: Factor;
  readonly faults: ReadonlyMap<FaultId, Factor>;
}

/**
 * Likelihood of better, same or worse after a change, along the mixture error half-way between the two
 * situations: a step towards right has its midpoint on the wrong side of right still. Rule B6.
 * @param change nominal ln ratio of the later over the earlier situation at that opening
 */
export function responseLikelihood(felt: Felt, change: number, opening: number): ResponseLikelihood {
  const size = Math.abs(change);
  const told = (size * size) / (size * size + HALF_FELT * HALF_FELT);
  const richer = ONE_STEP_RICHER[felt];
  const plateaus = change > 0 ? richer : { rich: richer.lean, right: richer.right, lean: richer.rich };
  const mixed = (weight: number): Plateaus => ({
    rich: weight * plateaus.rich + (1 - weight) * NOTHING_FELT[felt],
    right: weight * plateaus.right + (1 - weight) * NOTHING_FELT[felt],
    lean: weight * plateaus.lean + (1 - weight) * NOTHING_FELT[felt],
  });
  const sound = mixed(told);
  const hidden = mixed(told * 0.25);
  const all = [sound.rich, sound.right, sound.lean, hidden.rich, hidden.right, hidden.lean];
  const least = Math.min(...all);
  const most = Math.max(...all);
  const lapse = Math.max(0, (most - SIGN_CAP.A * least) / (SIGN_CAP.A - 1));
  const edge = clearEdge(opening) / 2;
  const factor = (chances: Plateaus): Factor => affine(blend(chances, edge, edge), 1, lapse);
  const faults = new Map<FaultId, Factor>();
  for (const fault of FAULTS) if (reaches(fault, opening)) faults.set(fault, factor(hidden));
  return { sound: factor(sound), faults };
}
