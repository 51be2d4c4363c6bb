import {
  accept,
  type Outcome,
  openingName,
  refuse,
  signById,
  sweepOutcome,
  TESTS,
  type Test,
  testById,
  turnsText,
} from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../state.ts";
import { adviceFor } from "./advice.ts";

export interface TestCard {
  readonly id: string;
  readonly words: string;
  readonly minutes: number;
  readonly steps: readonly string[];
  readonly tools: readonly string[];
  readonly cautions: readonly string[];
  /** Where it can be made, in the words of a record. */
  readonly openings: readonly string[];
  /** Where to make it: as asked for, as advised, or the first; null where it has its own place. */
  readonly opening: string | null;
  readonly outcomes: readonly {
    readonly id: string;
    readonly words: string;
    readonly sign: string | null;
    /** It ends the ride. */
    readonly stop: boolean;
  }[];
  /** Made while riding: no phone in the hand. */
  readonly ridden: boolean;
  /** For a sweep of the small screw: every quarter turn and the outcome it stands for, and the one nearest to where the screw is now. */
  readonly sweep: {
    readonly quarters: readonly { readonly turns: number; readonly text: string; readonly outcome: string }[];
    readonly now: number;
  } | null;
}

/** A screw is swept between lightly seated and this many turns out. */
const MOST_TURNS = 5;
const USUAL_TURNS = 1.5;

/** A test as a card to work from; `opening` is a record's word or a fraction, or null when nobody chose. */
export function testCard(
  state: EngineState,
  given: { readonly bike: string; readonly test: string; readonly opening: string | null },
): Outcome<TestCard, "unknown-test"> {
  const test = testById(given.test);
  if (test === undefined) {
    return refuse(
      "unknown-test",
      `There is no test "${given.test}". The tests are: ${TESTS.map(({ id }) => state.words.tests[id].words.toLowerCase()).join("; ")}.`,
    );
  }
  const openings = test.openings.map(openingName);
  const chosen = spoken(given.opening);
  const opening =
    chosen !== null && openings.includes(chosen)
      ? chosen
      : (advisedOpening(state, given.bike, test.id) ?? openings[0] ?? null);
  const { id, minutes, cautions } = test;
  const { words, steps, tools, outcomes } = state.words.tests[id];
  return accept({
    id,
    words,
    minutes,
    steps,
    tools,
    cautions,
    openings,
    opening,
    outcomes: test.outcomes.map((outcome) => ({
      ...outcome,
      words: (outcomes as Readonly<Record<string, string>>)[outcome.id]!,
      stop: outcome.sign !== null && signById(outcome.sign)?.stop === true,
    })),
    ridden: cautions.includes("test-riding"),
    sweep: test.screw === null ? null : sweepOf(state, given.bike, test),
  });
}

/** "1/8", "0.125" and "1%2F8" alike; null for anything else. */
function spoken(said: string | null): string | null {
  if (said === null) return null;
  const text = said.replace(/%2F/i, "/");
  const fraction = Number(text);
  const at = TESTS.flatMap(({ openings }) => openings).find(
    (opening) => openingName(opening) === text || (text !== "" && opening === fraction),
  );
  return at === undefined ? null : openingName(at);
}

function advisedOpening(state: EngineState, bike: string, test: string): string | null {
  const advice = adviceFor(state, { bike });
  if (!advice.ok) return null;
  const steps = [advice.value.step, ...advice.value.others];
  const step = steps.find(({ kind, id }) => kind === "test" && id === test);
  return step === undefined || step.opening === null ? null : openingName(step.opening);
}

/** The outcome a best idle stands for, by the turns that the test's own words name. */
function outcomeOf(test: Test, turns: number): string {
  const id = sweepOutcome(turns);
  if (!test.outcomes.some((outcome) => outcome.id === id))
    throw new RangeError(`Test "${test.id}" has no outcome "${id}"`);
  return id;
}

function sweepOf({ shop }: EngineState, bike: string, test: Test): NonNullable<TestCard["sweep"]> {
  const quarters = Array.from({ length: MOST_TURNS * 4 + 1 }, (_, i) => i / 4).map((turns) => ({
    turns,
    text: turnsText(turns),
    outcome: outcomeOf(test, turns),
  }));
  const story = bikeCase(shop, bike);
  const fitted = story.ok ? (story.value.now.setup.screw.part?.turnsOut ?? null) : null;
  const now = fitted === null ? USUAL_TURNS : Math.min(MOST_TURNS, Math.round(fitted * 4) / 4);
  return { quarters, now };
}
