import type { Situation } from "../metering/situation.ts";
import type { Drawer } from "../parts/drawer.ts";
import type { CubicMetre, Opening } from "../units/quantity.ts";

/**
 * One bike's story, as the log's replay hands it to the core: what was fitted in which air at each ride,
 * what was noticed, tested and checked. Times are milliseconds since 1970, taken from the records.
 */
export interface BikeCase {
  readonly engine: Engine;
  /** What is fitted now, in the air and on the fuel it will be ridden with. */
  readonly now: Situation;
  /** The setup the mixture state is held for: as found, in the air it was first ridden in. */
  readonly reference: Situation;
  readonly rides: readonly Ride[];
  readonly tests: readonly TestResult[];
  readonly checks: readonly CheckResult[];
  readonly measurements: readonly MixtureMeasurement[];
  /** What was heard of it; left out: nothing. */
  readonly sounds?: readonly SoundResult[];
  readonly drawer: Drawer;
  /** Minutes of labour this body asks for, where the shop's own figure is known. */
  readonly minutes: Partial<Readonly<Record<LabourPart, number>>>;
  /** The person insists on changing one part at a time. */
  readonly oneChangeAtATime: boolean;
  /** Times something other than the recorded parts was changed (pipe, reeds, rebuild): older evidence is void. */
  readonly freshStartAt: number | null;
}

export interface Engine {
  readonly strokes: 2 | 4;
  readonly displacement: CubicMetre | null;
  readonly acceleratorPump: boolean;
  /** Cylinders that fire evenly; not told: one. */
  readonly cylinders?: 1 | 2;
}

export type LabourPart = "main" | "pilot" | "needle" | "clip" | "slide" | "screw" | "needleJet";

/** A ride on one situation and what was noticed at each opening. */
export interface Ride {
  readonly record: string;
  readonly at: number;
  readonly situation: Situation;
  readonly warm: boolean;
  readonly reports: readonly SignReport[];
  /** Against an earlier situation: how each opening felt. */
  readonly against: { readonly situation: Situation; readonly verdicts: readonly Verdict[] } | null;
}

export interface SignReport {
  /** Id of a sign in the catalogue. */
  readonly sign: string;
  /** Where it was noticed; null takes the sign's own usual stretch. */
  readonly opening: Opening | null;
  /** True: noticed. False: looked for and not there. */
  readonly seen: boolean;
}

export interface Verdict {
  readonly opening: Opening;
  readonly felt: "better" | "same" | "worse";
}

export interface TestResult {
  readonly record: string;
  readonly at: number;
  readonly situation: Situation;
  /** Id of a test in the catalogue. */
  readonly test: string;
  readonly opening: Opening | null;
  /** Id of one of that test's outcomes. */
  readonly outcome: string;
  /** Measured numbers that belong to it, by name, such as { bestTurns: 2.5 }. */
  readonly numbers: Readonly<Record<string, number>>;
}

/** Figures taken from the sound of the engine, by name, such as { hangSeconds: 1.2, confidence: 0.9 }. */
export interface SoundResult {
  readonly record: string;
  readonly at: number;
  readonly situation: Situation;
  readonly figures: Readonly<Record<string, number>>;
}

export interface CheckResult {
  readonly record: string;
  readonly at: number;
  /** Id of a check in the catalogue. */
  readonly check: string;
  readonly found: "sound" | "faulty" | "mended";
  /** The fault found or mended, where the check can find several; null: the check's first. */
  readonly fault: string | null;
}

/** A measured mixture error, such as from a lambda probe: ln(fuel-air ratio over wanted) with its spread. */
export interface MixtureMeasurement {
  readonly record: string;
  readonly at: number;
  readonly situation: Situation;
  readonly opening: Opening;
  readonly error: number;
  readonly sd: number;
}
