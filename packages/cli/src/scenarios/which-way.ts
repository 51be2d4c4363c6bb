import { type Advice, outIs, type Setup, type Step } from "@jetwright/core";
import type { ReplayedCase } from "@jetwright/records";

/** Which way a step moves the pilot circuit (pilot jet and screw), the clip and the main jet: 1 richer, -1 leaner, 0 not. */
export interface Ways {
  readonly pilot: number;
  readonly screw: number;
  readonly clip: number;
  readonly main: number;
}

const way = (from: number | undefined, to: number | undefined): number =>
  from === undefined || to === undefined ? 0 : Math.sign(to - from);

/** The ways of a step that changes parts; all 0 for other steps. */
export function waysOf(before: Setup, step: Step): Ways {
  const after = step.situation?.setup;
  if (after === undefined) return { pilot: 0, screw: 0, clip: 0, main: 0 };
  return {
    pilot: way(before.pilot.part?.number, after.pilot.part?.number),
    // + 0: no minus nought.
    screw: outIs(before.body.screwKind) * way(before.screw.part?.turnsOut, after.screw.part?.turnsOut) + 0,
    clip: way(before.clip.part ?? undefined, after.clip.part ?? undefined),
    main: way(before.main.part?.number, after.main.part?.number),
  };
}

/** Every way of changing parts that the advice offers, the first step included. */
export const changesOffered = (advice: Advice): readonly Step[] =>
  [advice.step, ...advice.others].filter(({ kind }) => kind === "change");

/** True when no change on offer moves any of those circuits the other way. */
export const neverMoves = (
  bikeCase: ReplayedCase,
  advice: Advice,
  circuits: readonly (keyof Ways)[],
  wrong: 1 | -1,
): boolean =>
  changesOffered(advice).every((step) => {
    const ways = waysOf(bikeCase.now.setup, step);
    return circuits.every((circuit) => ways[circuit] !== wrong);
  });
