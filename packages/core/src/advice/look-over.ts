import { FAULTS, type FaultId } from "../belief/catalogue.ts";
import { type Step, surenessOf } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import type { Check } from "./catalogue.ts";
import { lastAnswer } from "./check-steps.ts";
import { stakeOf } from "./fault-cost.ts";
import { reasonsForFault } from "./reasons.ts";
import { topThrottle } from "./top-throttle.ts";
import type { Weighing } from "./weighing.ts";

/**
 * Looks that go together, in working order: cold and fuel first, then the air side, the cable, the electrics, the plug
 * out and what needs it out. Minutes with the tools at hand, each look after the one before it. The order is common
 * practice, no source; the minutes are estimates.
 */
const IN_ONE_GO: readonly { readonly id: Check["id"]; readonly minutes: number }[] = [
  { id: "fresh-fuel-and-oil", minutes: 8 },
  { id: "tap-and-vents", minutes: 2 },
  { id: "fuel-flow", minutes: 3 },
  { id: "overflow-drip", minutes: 1 },
  { id: "air-filter", minutes: 2 },
  { id: "look-at-boots-and-clamps", minutes: 2 },
  { id: "choke-plunger", minutes: 3 },
  { id: "slide-snap-and-cable", minutes: 1 },
  { id: "head-and-plug-tight", minutes: 4 },
  { id: "cooling", minutes: 5 },
  { id: "spark-and-plug", minutes: 4 },
  { id: "compression", minutes: 2 },
];

/** Fetching the tools and standing the bike up. Estimate. */
const SETTING_UP = 2;
/** Taking the plug out and putting it back, once for all that need it out. Estimate. */
const PLUG_OUT = 2;
const PLUG_IS_OUT: readonly string[] = ["spark-and-plug", "compression"];
/** It never takes longer than this, the setting up included. */
const MOST_MINUTES = 24;
/** A look joins in only when it saves this many minutes for each minute it adds. */
const LEAST_RATE = 0.25;
/** With fewer looks to make it is no looking over; and with as many answered the bike has been looked over. */
const LEAST_LOOKS = 4;
/** An answer stays good for so long, ms. Estimate: a season's riding. */
const GOOD_FOR = 90 * 86_400_000;

interface Chosen {
  readonly looks: readonly Check[];
  /** Chance that it finds something that is wrong. */
  readonly finds: number;
  /** Minutes it saves. */
  readonly gain: number;
}

/**
 * Looking the bike over in one go of about twenty minutes: the short looks worth most on this bike, as one step; null
 * where it was looked over lately, or too few looks are worth their minutes. Rule A21.
 * @param checks the checks this engine can be given
 */
export function lookOver(weighing: Weighing, checks: readonly Check[]): Step | null {
  if (lookedOver(weighing.story)) return null;
  const { looks, finds, gain } = choose(weighing, checks);
  if (looks.length < LEAST_LOOKS) return null;
  const ids = looks.map(({ id }) => id);
  const minutes = lookOverMinutes(ids);
  const { words, belief, present, chances } = weighing;
  const say = words.steps.lookOver;
  const likeliest = FAULTS.reduce((best, fault) =>
    foundBy(looks, fault) * (chances[fault] ?? 0) > foundBy(looks, best) * (chances[best] ?? 0)
      ? fault
      : best,
  );
  return {
    kind: "look-over",
    id: "look-over",
    title: say.title,
    how: looks.map(({ id }) => say.look(words.checks[id].words)),
    tools: [...new Set(looks.flatMap(({ id }) => words.checks[id].tools))],
    why: reasonsForFault(weighing, likeliest),
    expect: say.expect(Math.max(1, Math.round(10 * finds))),
    wrongIf: say.wrongIf,
    undo: say.undo,
    sure: surenessOf(finds),
    minutes,
    worth: gain / minutes,
    cautions: [...new Set(looks.flatMap(({ cautions }) => cautions))],
    changes: [],
    looks: ids,
    situation: null,
    opening: null,
    topThrottle: topThrottle(belief, present.shift),
    notes: [say.note],
  };
}

/** True when enough of these looks have an answer that is still good. */
export function lookedOver(story: BikeCase): boolean {
  return IN_ONE_GO.filter(({ id }) => answered(story, id)).length >= LEAST_LOOKS;
}

/** True when a look was made since the last fresh start, and no longer ago than a season before the last that was told. */
function answered(story: BikeCase, id: Check["id"]): boolean {
  const last = lastAnswer(story, id);
  return last !== undefined && last.at >= lastTold(story) - GOOD_FOR;
}

const lastTold = ({ rides, tests, checks }: BikeCase): number =>
  Math.max(-Infinity, ...[...rides, ...tests, ...checks].map(({ at }) => at));

/** Of the looks open on this bike those that save most for each minute they add, as long as they fit. */
function choose({ story, chances, belief }: Weighing, checks: readonly Check[]): Chosen {
  const open = IN_ONE_GO.flatMap(({ id }) => {
    const check = checks.find((each) => each.id === id);
    return check === undefined || answered(story, id) ? [] : [check];
  });
  const left = new Map(
    FAULTS.map((fault) => [fault, belief.openFaults.includes(fault) ? 0 : (chances[fault] ?? 0)]),
  );
  let looks: readonly Check[] = [];
  let finds = 0;
  let gain = 0;
  for (;;) {
    const minutes = lookOverMinutes(looks.map(({ id }) => id));
    const best = open
      .filter((check) => !looks.includes(check))
      .map((check) => {
        const adds = lookOverMinutes([...looks, check].map(({ id }) => id)) - minutes;
        return { check, adds, saves: saved(check, left) };
      })
      .filter(({ adds, saves }) => minutes + adds <= MOST_MINUTES && saves / adds >= LEAST_RATE)
      .reduce<{ check: Check; adds: number; saves: number } | null>(
        (most, each) => (most === null || each.saves / each.adds > most.saves / most.adds ? each : most),
        null,
      );
    if (best === null) return { looks: open.filter((check) => looks.includes(check)), finds, gain };
    looks = [...looks, best.check];
    gain += best.saves;
    for (const fault of FAULTS) {
      const found = left.get(fault)! * (best.check.finds[fault] ?? 0);
      finds += found;
      left.set(fault, left.get(fault)! - found);
    }
  }
}

/**
 * Minutes that these looks take when they are made in one go, the setting up included. Estimate.
 * Throws RangeError for a look that is not made in one go, which would be our bug.
 */
export function lookOverMinutes(looks: readonly string[]): number {
  const each = looks.map((id) => {
    const minutes = IN_ONE_GO.find((look) => look.id === id)?.minutes;
    if (minutes === undefined) throw new RangeError(`The look "${id}" is not one of those made in one go`);
    return minutes;
  });
  const plug = looks.some((id) => PLUG_IS_OUT.includes(id)) ? PLUG_OUT : 0;
  return each.reduce((sum, minutes) => sum + minutes, SETTING_UP + plug);
}

const saved = ({ finds }: Check, left: ReadonlyMap<FaultId, number>): number =>
  FAULTS.reduce((sum, fault) => sum + left.get(fault)! * (finds[fault] ?? 0) * stakeOf(fault), 0);

const foundBy = (looks: readonly Check[], fault: FaultId): number =>
  1 - looks.reduce((missed, { finds }) => missed * (1 - (finds[fault] ?? 0)), 1);
