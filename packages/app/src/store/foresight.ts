import type { Language } from "../engine/catalogues.ts";
import type { AnswerOf, Question } from "../engine/protocol.ts";

interface Foreseen {
  readonly bike: string;
  readonly line: string;
  readonly language: Language;
  readonly answers: AnswerOf<"foresee">;
}

/**
 * Answers of a bike's page that were worked out while its next record was still being told. They hold from the moment
 * that record comes into the log, alone and next, to the moment anything else does.
 */
export class Foresight {
  /** Goes up with everything that comes into the log: what was asked for under another count does not hold. */
  #count = 0;
  #ready: Foreseen | null = null;
  #holding: Foreseen | null = null;

  /** Answers on their way, for the log of now with this line more. */
  expect(of: Omit<Foreseen, "answers">, coming: Promise<AnswerOf<"foresee">>): void {
    const count = this.#count;
    coming.then(
      (answers) => {
        if (count === this.#count) this.#ready = { ...of, answers };
      },
      // Nothing is foreseen then, and the page asks as always.
      () => undefined,
    );
  }

  /** These lines came into the log; none where it was read anew. */
  arrived(lines: readonly string[]): void {
    this.#holding = lines.length === 1 && this.#ready?.line === lines[0] ? this.#ready : null;
    this.#ready = null;
    this.#count++;
  }

  /** The answer of now to a question as it would be asked; undefined where it was not foreseen. */
  known<Q extends Question>(question: Q, given: string, language: Language): AnswerOf<Q> | undefined {
    const { bike, language: spoken, answers } = this.#holding ?? {};
    if (answers === undefined || spoken !== language || given !== JSON.stringify({ bike })) return undefined;
    return (answers as Partial<{ [Each in Question]: AnswerOf<Each> }>)[question];
  }
}
