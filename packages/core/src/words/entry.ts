/** A sign in words. */
export interface SignWords {
  /** A few trade words, as on a button. */
  readonly words: string;
  /** How it sounds, smokes and feels, so that it can be told from its look-alikes. */
  readonly description: string;
  /** The commonest mix-up and how to tell; left out where there is none. */
  readonly notToBeTakenFor?: string;
  /** When it counts: how and where it is noticed. */
  readonly when: string;
}

/** A mechanical fault in words. */
export interface FaultWords {
  /** As in "an air leak", with its article where the language has one. */
  readonly words: string;
}

/** A check in words. */
export interface CheckWords {
  /** Imperative, as on a card: "Pressure-test the crankcase". */
  readonly words: string;
  readonly steps: readonly string[];
  readonly tools: readonly string[];
  /** What to do when it finds something. */
  readonly mend: string;
}

/** A test on the running engine in words. */
export interface TestWords {
  readonly words: string;
  /** What may happen, by the outcome's id. */
  readonly outcomes: Readonly<Record<string, string>>;
  readonly steps: readonly string[];
  readonly tools: readonly string[];
}
