import {
  type Advice,
  CHECKS,
  CIRCUITS,
  type Circuit,
  checkById,
  type FaultId,
  OPENINGS,
  type Opening,
  openingName,
  SIGNS,
  type Sign,
  type Situation,
  type Step,
  shiftBetween,
  signById,
  testById,
} from "@jetwright/core";
import { caseFrom } from "./advice-for.ts";

/** What the rider does not know: the mixture as found, how this engine answers, and what is broken. */
export interface Truth {
  /** Mixture error of the setup as found, at the eleven openings; above 0 rich. */
  readonly asFound: readonly number[];
  /** How strongly it answers to each circuit; 1 is what the metering model says. */
  readonly answers: Readonly<Record<Circuit, number>>;
  readonly fault: FaultId | null;
  /** What that fault does to the mixture at the eleven openings while it lasts. */
  readonly faultShift: readonly number[];
}

/** What a fault-free engine of usual answers would be. */
export const SOUND: Omit<Truth, "asFound"> = {
  answers: { pilot: 1, screw: 1, slide: 1, needle: 1, main: 1, air: 1 },
  fault: null,
  faultShift: OPENINGS.map(() => 0),
};

/** A mixture error straight from closed to full. */
export const straight = (closed: number, full: number): readonly number[] =>
  OPENINGS.map((opening) => closed + (full - closed) * opening);

/** One turn of the loop, for the test to judge. */
export interface Turn {
  readonly step: Step;
  /** The true mixture at the eleven openings when the step was advised. */
  readonly truth: readonly number[];
  /** The true mixture after it was done. */
  readonly after: readonly number[];
  readonly faultStill: boolean;
}

/** Beyond this a rider tells rich or lean from right. */
const CLEAR = 0.045;

interface Reported {
  readonly at: number;
  readonly rich: string;
  readonly right: string;
  readonly lean: string;
}

/** What the rider reports: for each stretch one sign of rich, of right and of lean. */
const reported = (strokes: 2 | 4): readonly Reported[] => {
  const dull = strokes === 2 ? "four-strokes-under-load" : "lazy-revs-petrol-smell-four-stroke";
  const bog = strokes === 2 ? "bogs-hollow-no-smoke" : "bogs-fast-and-slow-four-stroke";
  return [
    { at: 0, rich: "dives-below-idle", right: "drops-straight-to-idle", lean: "hangs-after-closing" },
    { at: 0.125, rich: "stumbles-with-smoke", right: "answers-crisply", lean: bog },
    { at: 0.25, rich: dull, right: "pulls-smoothly", lean: "jerks-at-constant-grip" },
    { at: 0.5, rich: dull, right: "pulls-smoothly", lean: "jerks-at-constant-grip" },
    { at: 1, rich: "will-not-rev-out", right: "pulls-clean-to-peak", lean: "roll-off-picks-up" },
  ];
};

/**
 * A rider who follows the advice. Answers come from the hidden truth: the mixture moves as the metering model says
 * times this engine's own answers; a sign or outcome is the one that the catalogue finds likeliest there.
 */
export class Rider {
  readonly #bike: string;
  readonly #truth: Truth;
  readonly #start: Situation;
  #log: string;
  #broken: boolean;
  #count = 0;

  constructor(log: string, bike: string, truth: Truth) {
    this.#log = log.trimEnd();
    this.#bike = bike;
    this.#truth = truth;
    this.#broken = truth.fault !== null;
    this.#start = caseFrom(log, bike).now;
  }

  get log(): string {
    return this.#log;
  }

  /** The true mixture at the eleven openings, now. */
  mixture(situation = caseFrom(this.#log, this.#bike).now): readonly number[] {
    const shift = shiftBetween(this.#start, situation);
    if (!shift.ok) throw new Error(shift.detail);
    return OPENINGS.map((_, i) => {
      let error = this.#truth.asFound[i]! + (this.#broken ? this.#truth.faultShift[i]! : 0);
      for (const circuit of CIRCUITS) error += this.#truth.answers[circuit] * shift.value[circuit][i]!;
      return error;
    });
  }

  #at(opening: number): number {
    return this.mixture()[OPENINGS.indexOf(opening as Opening)]!;
  }

  #write(kind: string, body: object): string {
    const id = `t${++this.#count}`;
    const at = `2026-05-03T${String(8 + Math.floor(this.#count / 6)).padStart(2, "0")}:${(this.#count % 6) * 10 || "00"}:00Z`;
    this.#log += `\n${JSON.stringify({ id, kind, at, bike: this.#bike, body })}`;
    return id;
  }

  /** Chance of noticing a sign at a true mixture error, with the fault if it is there. */
  #chance(sign: Sign, error: number): number {
    const { rich, right, lean } = sign.chance;
    const jets = error > CLEAR ? rich : error < -CLEAR ? lean : right;
    const fault = this.#broken ? sign.faults[this.#truth.fault!] : undefined;
    if (fault === undefined) return jets;
    return sign.healthy ? Math.min(jets, fault) : 1 - (1 - jets) * (1 - fault);
  }

  /** Rides and reports; full throttle only where the advice leaves it open. */
  ride(top: Step["topThrottle"], before: readonly number[] | null = null): void {
    const { strokes } = caseFrom(this.#log, this.#bike).engine;
    const bands = reported(strokes).filter(({ at }) => at < 0.75 || top !== "stay below 3/4");
    const reports = bands.map(({ at, rich, right, lean }) => {
      const likeliest = [right, rich, lean]
        .map((id) => ({ id, chance: this.#chance(signById(id)!, this.#at(at)) }))
        .reduce((best, each) => (each.chance > best.chance ? each : best));
      return { sign: likeliest.id, ...(at > 0 && { opening: openingName(at as Opening) }) };
    });
    if (this.#broken) {
      // The sign that gives this fault away most.
      const tell = SIGNS.reduce((best, sign) =>
        telling(sign, this.#truth) > telling(best, this.#truth) ? sign : best,
      );
      reports.push({ sign: tell.id });
    }
    const felt =
      before === null
        ? []
        : bands.map(({ at }) => {
            const gain = Math.abs(before[OPENINGS.indexOf(at as Opening)]!) - Math.abs(this.#at(at));
            return {
              opening: openingName(at as Opening),
              felt: gain > 0.02 ? "better" : gain < -0.02 ? "worse" : "same",
            };
          });
    this.#write("ride-reported", { reports, ...(felt.length > 0 && { against: { felt } }) });
  }

  #look(id: string): void {
    const found = this.#broken && (checkById(id)!.finds[this.#truth.fault!] ?? 0) >= 0.6;
    this.#write("check-done", {
      check: id,
      found: found ? "faulty" : "sound",
      ...(found && { fault: this.#truth.fault }),
    });
  }

  /** Does what the step says; true when it was the ride that confirms. */
  follow({ step }: Advice): Turn {
    const truth = this.mixture();
    switch (step.kind) {
      case "ride":
        this.ride(step.topThrottle);
        break;
      case "change": {
        const { main, pilot, clip, screw } = step.situation!.setup;
        this.#write("setup-fitted", {
          main: { number: main.part!.number },
          pilot: { number: pilot.part!.number },
          clip: { groove: clip.part },
          screw: { turnsOut: screw.part!.turnsOut },
        });
        this.ride(step.topThrottle, truth);
        break;
      }
      case "test": {
        const test = testById(step.id)!;
        const named = /at (\S+) throttle$/.exec(step.title)?.[1];
        const opening = test.openings.find((each) => openingName(each) === named) ?? test.openings[0];
        const outcome = test.outcomes
          .filter(({ sign }) => sign !== null)
          .map(({ id, sign }) => ({ id, chance: this.#chance(signById(sign!)!, this.#at(opening ?? 0)) }))
          .reduce((best, each) => (each.chance > best.chance ? each : best));
        this.#write("test-done", {
          test: test.id,
          outcome: outcome.id,
          ...(opening !== undefined && { opening: openingName(opening) }),
        });
        break;
      }
      case "look-over":
        for (const id of step.looks!) this.#look(id);
        break;
      case "check":
        this.#look(step.id);
        break;
      case "mend": {
        const check = CHECKS.find(({ finds }) => (finds[this.#truth.fault!] ?? 0) >= 0.6)!;
        this.#broken = false;
        this.#write("check-done", { check: check.id, found: "mended", fault: this.#truth.fault });
        break;
      }
      default:
        throw new Error(`The rider cannot follow a step of kind ${step.kind}`);
    }
    return { step, truth, after: this.mixture(), faultStill: this.#broken };
  }
}

function telling(sign: Sign, { fault }: Truth): number {
  const { rich, right, lean } = sign.chance;
  if (fault === null || sign.healthy || sign.stop || sign.strokes === "four") return 0;
  return (sign.faults[fault] ?? 0) / Math.max(rich, right, lean);
}
