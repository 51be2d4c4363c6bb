/**
 * Words that a record may use because the core has them in a catalogue. Null: that catalogue is not at hand
 * and any word passes.
 */
export interface Vocabulary {
  readonly signs: ReadonlySet<string> | null;
  /** Outcomes by test. */
  readonly tests: ReadonlyMap<string, ReadonlySet<string>> | null;
  readonly checks: ReadonlySet<string> | null;
  readonly faults: ReadonlySet<string> | null;
}
