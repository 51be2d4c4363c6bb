import {
  accept,
  type EngineSound,
  type Outcome,
  readSweep,
  type SweepMark,
  type SweepReading,
  type SweepRefusal,
  sweepOutcome,
  TESTS,
} from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { soundEngine } from "./sound-engine.ts";

/** A sweep of the small screw by engine speed, as far as it has come. */
export interface ScrewSweep {
  readonly engine: EngineSound;
  /** The side the screw sits on; null: nobody has said. */
  readonly screw: "air" | "fuel" | null;
  /** Id of the test it is kept as. */
  readonly test: string;
  /** Turns out that are on record, to the next eighth; null: not counted yet. */
  readonly fitted: number | null;
  readonly reading: SweepReading | null;
  /** Why there is no reading yet; null with one, or before the first mark. */
  readonly why: SweepRefusal | null;
  /** What it is kept as, in the test's own words; null while nothing can be kept. */
  readonly result: {
    readonly outcome: string;
    readonly words: string;
    readonly numbers: Readonly<Record<string, number>>;
  } | null;
}

/** Turned so near to its seat or so far out without a peak, there is none to be had further on. */
const NEARLY_SEATED = 0.5;
const FAR_OUT = 3;

export function screwSweep(
  state: EngineState,
  { bike, marks }: { readonly bike: string; readonly marks: readonly SweepMark[] },
): Outcome<ScrewSweep> {
  const story = bikeCase(state.shop, bike);
  if (!story.ok) return story;
  const sound = soundEngine(state, { bike });
  if (!sound.ok) return sound;
  const told = state.shop.bikes.get(bike)?.description?.carburetor?.screw ?? "unknown";
  const { body, screw } = story.value.now.setup;
  const test = TESTS.find((each) => each.screw === body.screwKind);
  if (test === undefined) throw new RangeError(`No sweep for a ${body.screwKind} screw`);
  const read = readSweep(marks);
  const reading = read.ok ? read.value : null;
  const kept = reading === null ? null : keptAs(reading, marks);
  const outcomes: Readonly<Record<string, string>> = state.words.tests[test.id].outcomes;
  return accept({
    engine: sound.value.engine,
    screw: told === "unknown" ? null : told,
    test: test.id,
    fitted: screw.part === null ? null : Math.round(screw.part.turnsOut * 8) / 8,
    reading,
    why: read.ok || marks.length === 0 ? null : read.reason,
    result: kept === null ? null : { ...kept, words: outcomes[kept.outcome]! },
  });
}

const hundredths = (x: number): number => Math.round(x * 100) / 100;

function keptAs(
  reading: SweepReading,
  marks: readonly SweepMark[],
): { readonly outcome: string; readonly numbers: Readonly<Record<string, number>> } | null {
  const numbers = { marks: marks.length };
  if (reading.kind === "flat") return { outcome: "no-difference", numbers };
  if (reading.kind === "at-end") {
    if (reading.end === "in")
      return reading.turns <= NEARLY_SEATED ? { outcome: "nearly-closed", numbers } : null;
    return reading.turns >= FAR_OUT ? { outcome: "far-out", numbers } : null;
  }
  const { turns, turnsSd, rpm, inner, outer } = reading;
  return {
    outcome: sweepOutcome(turns),
    numbers: {
      ...numbers,
      bestTurns: hundredths(turns),
      bestTurnsSd: Math.max(0.01, hundredths(turnsSd)),
      bestRpm: Math.round(rpm),
      ...(inner === null ? {} : { fiftyLowerIn: hundredths(inner) }),
      ...(outer === null ? {} : { fiftyLowerOut: hundredths(outer) }),
    },
  };
}
