/** Things timed together, and which of them to compare. */
export interface Bench {
  readonly topic: string;
  /** How often each row is timed, where that is not the usual number. */
  readonly runs?: number;
  /** Lines printed after the times, worked out then. */
  readonly notes?: () => readonly string[];
  /** What is timed. `make` prepares it, outside the time taken. */
  readonly rows: readonly { readonly name: string; readonly make: () => () => void }[];
  /** Names of two rows: how many times longer the first takes than the second. */
  readonly ratios: readonly (readonly [string, string])[];
}
