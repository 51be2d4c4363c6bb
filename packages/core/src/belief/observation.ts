import type { Shift } from "../units/circuit.ts";
import type { Opening } from "../units/quantity.ts";
import type { FaultId, Sign } from "./catalogue.ts";
import type { Stretch } from "./state.ts";

/**
 * One thing learnt about the engine, already tied to the situation it was learnt in (by that situation's
 * shift against the reference). `at` is the record's own time, `record` its id; their order among the
 * observations given does not matter.
 */
export type Observation = SignSeen | Compared | Measured | Checked;

interface Learnt {
  readonly record: string;
  readonly at: number;
}

/** A sign of the catalogue noticed, or looked for and not there. */
export interface SignSeen extends Learnt {
  readonly kind: "sign";
  readonly sign: Sign;
  readonly stretch: Stretch;
  readonly seen: boolean;
  readonly shift: Shift;
  /** Same text for the same setup in nearly the same air: repeats there are the same evidence. */
  readonly situation: string;
}

/** A later situation felt better, the same or worse than an earlier one at an opening. */
export interface Compared extends Learnt {
  readonly kind: "compared";
  readonly opening: Opening;
  readonly felt: "better" | "same" | "worse";
  readonly before: Shift;
  readonly after: Shift;
  readonly situation: string;
}

/** A measured mixture error: ln(fuel-air ratio / wanted), with its standard deviation. */
export interface Measured extends Learnt {
  readonly kind: "measured";
  readonly stretch: Stretch;
  readonly error: number;
  readonly sd: number;
  readonly shift: Shift;
}

/** The result of a mechanical check. */
export interface Checked extends Learnt {
  readonly kind: "checked";
  readonly check: string;
  /** Chance that the check finds each fault when it is there. */
  readonly finds: Partial<Readonly<Record<FaultId, number>>>;
  /** Chance that it cries fault on a sound bike. */
  readonly falseAlarm: number;
  readonly found: "sound" | "faulty" | "mended";
  /** Which of them was found or mended; null when it could be any of them. */
  readonly fault: FaultId | null;
}
