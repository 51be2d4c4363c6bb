import { DEFAULT_PRIOR, type Gaussian, type PriorFigures, priorGaussian } from "../belief/prior.ts";
import { shiftsFrom } from "../metering/shift.ts";
import type { Situation } from "../metering/situation.ts";
import type { Jet } from "../parts/jet.ts";
import { type JetPlace, typicalSteps } from "../parts/jet-steps.ts";
import { type Known, known } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";

/**
 * What is believed of a bike before any report, for the setup it is held for: the usual prior, and on top of it that
 * each part that is easily changed may be wrong by about what the sign table calls clearly rich or lean: a jet step or
 * two, a clip groove, half a turn of the screw (estimate). A wrong clip is not a smooth curve over the openings: it
 * steps where the needle's taper begins.
 */
export function priorFor(reference: Situation): Gaussian {
  const { answerSd } = BESIDE_THE_PARTS;
  const measured = (reference.setup.needle.part?.profile ?? null) !== null;
  const figures = measured
    ? BESIDE_THE_PARTS
    : { ...BESIDE_THE_PARTS, answerSd: { ...answerSd, needle: NEEDLE_UNMEASURED } };
  return priorGaussian(figures, wrongParts(reference));
}

/** How far the answer to a clip strays where nobody measured the needle: its taper is guessed. Estimate. */
const NEEDLE_UNMEASURED = 0.3;

/** What is wrong for other reasons than the parts that are easily changed: smooth over the openings. Estimate. */
const BESIDE_THE_PARTS: PriorFigures = {
  ...DEFAULT_PRIOR,
  commonSd: 0.03,
  ownSd: [0.06, 0.055, 0.05, 0.05, 0.045, 0.045, 0.045, 0.045, 0.045, 0.045, 0.045],
};

/** What each part wrong by one standard deviation does to the mixture at the eleven openings. */
function wrongParts(reference: Situation): readonly (readonly number[])[] {
  const from = shiftsFrom(reference);
  if (!from.ok) return [];
  return wrongSetups(reference.setup).flatMap(({ setup, times }) => {
    const shift = from.value({ ...reference, setup });
    if (!shift.ok) return [];
    return [
      OPENINGS.map((_, i) => times * CIRCUITS.reduce((sum, circuit) => sum + shift.value[circuit][i]!, 0)),
    ];
  });
}

interface Wrong {
  readonly setup: Setup;
  /** How many of such steps are one standard deviation. */
  readonly times: number;
}

function wrongSetups(setup: Setup): readonly Wrong[] {
  const { main, pilot, needle, clip, screw } = setup;
  const wrong: Wrong[] = [];
  const jet = ({ part }: Known<Jet>, place: JetPlace, times: number): void => {
    if (part === null) return;
    const number = part.number + typicalSteps(part, place)[0];
    wrong.push({ setup: { ...setup, [place]: known({ ...part, number }) }, times });
  };
  jet(main, "main", MAIN_STEPS);
  jet(pilot, "pilot", PILOT_STEPS);
  if (clip.part !== null && needle.part !== null) {
    const groove = clip.part < needle.part.grooves ? clip.part + 1 : clip.part - 1;
    if (groove >= 1) wrong.push({ setup: { ...setup, clip: known(groove) }, times: GROOVES });
  }
  if (screw.part !== null) {
    const { kind, turnsOut } = screw.part;
    wrong.push({ setup: { ...setup, screw: known({ kind, turnsOut: turnsOut + 0.5 }) }, times: HALF_TURNS });
  }
  return wrong;
}

const MAIN_STEPS = 1.5;
const PILOT_STEPS = 1;
const GROOVES = 1;
const HALF_TURNS = 1;
