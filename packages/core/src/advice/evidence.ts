import type { Sign } from "../belief/catalogue.ts";
import type { Observation } from "../belief/observation.ts";
import { signById } from "../belief/signs/all.ts";
import { stretchAt, stretchOf } from "../belief/state.ts";
import { shiftsFrom } from "../metering/shift.ts";
import type { Situation } from "../metering/situation.ts";
import { known } from "../parts/known.ts";
import type { Shift } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Outcome, Refusal } from "../units/outcome.ts";
import type { Opening } from "../units/quantity.ts";
import type { BikeCase, CheckResult, SignReport, TestResult } from "./case.ts";
import { checkById } from "./checks.ts";
import { faultFound } from "./fault-found.ts";
import { screwPeakSd, sweepsInSitting } from "./screw-peak.ts";
import { situationKey } from "./situation-key.ts";
import { soundObservations } from "./sound-evidence.ts";
import { testById } from "./tests-on-engine.ts";

/** A record whose evidence could not be used, and why. */
export interface LeftOut {
  readonly record: string;
  readonly why: Refusal;
}

export interface Evidence {
  readonly observations: readonly Observation[];
  readonly leftOut: readonly LeftOut[];
}

/** Gives the shift of a situation against the case's reference, or null; remembers what it worked out. */
export type ShiftOf = (situation: Situation, record: string) => Shift | null;

/**
 * Where the idle peaks against the screw, the mixture there is right within this: the peak is half a turn to one turn
 * wide, and half a turn is worth about 3 % at idle. Estimate.
 */
export const SCREW_PEAK = { error: 0, sd: 0.03 };

/** Where that measurement looks. */
export const SCREW_STRETCH = stretchOf([
  [OPENINGS[0]!, 0.6],
  [OPENINGS[1]!, 0.4],
]);

/** Turns a bike's story into observations, each tied to its situation. Evidence from before a fresh start is void. */
export function evidenceFrom(story: BikeCase): Evidence {
  const leftOut: LeftOut[] = [];
  const shiftOf = shiftLookup(story.reference, leftOut);
  const since = story.freshStartAt ?? Number.NEGATIVE_INFINITY;
  const observations: Observation[] = [];
  for (const ride of story.rides) {
    if (ride.at < since) continue;
    const shift = shiftOf(ride.situation, ride.record);
    if (shift === null) continue;
    const place = { record: ride.record, at: ride.at, shift, situation: situationKey(ride.situation) };
    for (const report of ride.reports) {
      const seen = signSeen(report, story.engine.strokes, ride.warm, place);
      if (seen !== null) observations.push(seen);
    }
    if (ride.against === null) continue;
    const before = shiftOf(ride.against.situation, ride.record);
    if (before === null) continue;
    const situation = `${situationKey(ride.against.situation)}>${place.situation}`;
    for (const { opening, felt } of ride.against.verdicts) {
      observations.push({
        kind: "compared",
        record: ride.record,
        at: ride.at,
        opening,
        felt,
        before,
        after: shift,
        situation,
      });
    }
  }
  const tests = story.tests.filter(({ at }) => at >= since);
  for (const test of tests) {
    const sweeps = sweepsInSitting(test, tests);
    observations.push(...testObservations(test, story.engine.strokes, shiftOf, sweeps));
  }
  for (const sound of story.sounds ?? []) {
    const shift = sound.at >= since ? shiftOf(sound.situation, sound.record) : null;
    if (shift !== null) observations.push(...soundObservations(sound, shift));
  }
  for (const check of story.checks) {
    const checked = check.at >= since ? checkObservation(check) : null;
    if (checked !== null) observations.push(checked);
  }
  for (const { record, at, situation, opening, error, sd } of story.measurements) {
    const shift = at >= since ? shiftOf(situation, record) : null;
    if (shift !== null)
      observations.push({ kind: "measured", record, at, stretch: stretchAt(opening), error, sd, shift });
  }
  return { observations, leftOut: leftOut.sort((a, b) => (a.record < b.record ? -1 : 1)) };
}

export function shiftLookup(reference: Situation, leftOut: LeftOut[]): ShiftOf {
  const from = shiftsFrom(reference);
  const done = new Map<Situation, Outcome<Shift, string>>();
  return (situation, record) => {
    const shift = done.get(situation) ?? (from.ok ? from.value(situation) : from);
    done.set(situation, shift);
    if (shift.ok) return shift.value;
    if (!leftOut.some((each) => each.record === record)) leftOut.push({ record, why: shift });
    return null;
  };
}

interface Place {
  readonly record: string;
  readonly at: number;
  readonly shift: Shift;
  readonly situation: string;
}

function signSeen(report: SignReport, strokes: 2 | 4, warm: boolean, place: Place): Observation | null {
  const sign = signById(report.sign);
  if (sign === undefined || !fits(sign.strokes, strokes) || (sign.warmOnly && !warm)) return null;
  return { kind: "sign", ...place, sign, stretch: stretchFor(sign, report.opening), seen: report.seen };
}

export const fits = (wanted: "two" | "four" | "both", strokes: 2 | 4): boolean =>
  wanted === "both" || wanted === (strokes === 2 ? "two" : "four");

export const stretchFor = (sign: Sign, opening: Opening | null): readonly number[] =>
  opening === null ? stretchOf(sign.speaksOf) : stretchAt(opening);

function testObservations(
  result: TestResult,
  strokes: 2 | 4,
  shiftOf: ShiftOf,
  sweeps: number,
): Observation[] {
  const test = testById(result.test);
  const turns = result.numbers.bestTurns;
  const { screw } = result.situation.setup;
  if (test?.screw && turns !== undefined && screw.part !== null) {
    // The screw's best idle is a measurement: with the screw there, the bottom is right.
    const { kind } = screw.part;
    const shiftAt = (turnsOut: number): Shift | null => {
      const setup = { ...result.situation.setup, screw: known({ kind, turnsOut }, "measured") };
      return shiftOf({ ...result.situation, setup }, result.record);
    };
    const shift = shiftAt(turns);
    if (shift === null) return [];
    return [
      {
        kind: "measured",
        record: result.record,
        at: result.at,
        stretch: SCREW_STRETCH,
        shift,
        error: SCREW_PEAK.error,
        sd: screwPeakSd(SCREW_PEAK.sd, turns, result.numbers.bestTurnsSd, shiftAt, SCREW_STRETCH, sweeps),
      },
    ];
  }
  const shift = shiftOf(result.situation, result.record);
  const outcome = test?.outcomes.find(({ id }) => id === result.outcome);
  if (shift === null || !outcome?.sign) return [];
  const place = { record: result.record, at: result.at, shift, situation: situationKey(result.situation) };
  const seen = signSeen({ sign: outcome.sign, opening: result.opening, seen: true }, strokes, true, place);
  return seen === null ? [] : [seen];
}

function checkObservation(result: CheckResult): Observation | null {
  const { record, at, check, found } = result;
  const known = checkById(check);
  if (known === undefined) return null;
  return {
    kind: "checked",
    record,
    at,
    check,
    finds: known.finds,
    falseAlarm: known.falseAlarm,
    found,
    fault: faultFound(result),
  };
}
