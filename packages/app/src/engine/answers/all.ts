import type { EngineState } from "../state.ts";
import { adviceFor } from "./advice.ts";
import { bikeView } from "./bike.ts";
import { bikeList } from "./bikes.ts";
import { foresee } from "./foresee.ts";
import { governsFor } from "./governs.ts";
import { rideForm } from "./ride-form.ts";

/**
 * Everything the page may ask the worker, by name: each a pure function of the state and of what is given. A new
 * question is a file of its own and one line here.
 */
export const ANSWERS = {
  bikes: bikeList,
  bike: bikeView,
  advice: adviceFor,
  foresee,
  rideForm,
  governs: governsFor,
} as const satisfies Readonly<Record<string, (state: EngineState, given: never) => unknown>>;

export type Question = keyof typeof ANSWERS;
export type ArgumentsOf<Q extends Question> = Parameters<(typeof ANSWERS)[Q]>[1];
export type AnswerOf<Q extends Question> = ReturnType<(typeof ANSWERS)[Q]>;
