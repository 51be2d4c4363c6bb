import {
  type Advice,
  accept,
  CHECKS,
  type MixtureReading,
  type Opening,
  type Outcome,
  openingName,
  toCelsius,
} from "@jetwright/core";
import { type BikeStory, bikeCase } from "@jetwright/records";
import type { ShopInWords } from "../state.ts";
import { adviceFor } from "./advice.ts";

/** What the mixture is at one opening; open: what was told so far does not say. */
export type Leaning = "rich" | "lean" | "right" | "open";

export interface MixtureThere {
  readonly opening: Opening;
  /** Above zero rich, below zero lean. */
  readonly percent: number;
  /** One standard deviation. */
  readonly sdPercent: number;
  readonly leaning: Leaning;
  /** False: it looks like that, and could still be otherwise. */
  readonly sure: boolean;
}

/** Neighbouring openings that lean the same way. */
export interface MixtureStretch {
  readonly from: string;
  readonly to: string;
  readonly leaning: Leaning;
  readonly sure: boolean;
}

/** How a bike stands, for its page. */
export interface Standing {
  readonly at: readonly MixtureThere[];
  readonly stretches: readonly MixtureStretch[];
  /** Rides, tests and readings told so far; with none the mixture is what such a bike usually does. */
  readonly told: number;
  readonly air: { readonly celsius: number; readonly heightM: number | null; readonly noted: boolean };
  /** The setup of now was marked as right, then and in that air; null when nobody did. */
  readonly rightAt: {
    readonly at: number;
    readonly celsius: number | null;
    readonly heightM: number | null;
  } | null;
  /** When each record was written that a step gives as its reason, milliseconds since 1970. */
  readonly dates: Readonly<Record<string, number>>;
  /** Those of them that were read from the engine's sound: there is a picture of each. */
  readonly heard: readonly string[];
  /** The check behind each record that a step of putting right gives as its reason. */
  readonly checkOf: Readonly<Record<string, string>>;
  /** After a stop sign: every look that can be noted as its answer; else none. */
  readonly looks: readonly { readonly id: string; readonly words: string; readonly first: boolean }[];
  /** The last thing written about the bike, where that is advice: so that it is not written twice. */
  readonly lastAdvice: { readonly words: string; readonly followed: boolean | null } | null;
}

export function standingOf(state: ShopInWords, given: { readonly bike: string }): Outcome<Standing> {
  const advice = adviceFor(state, given);
  if (!advice.ok) return advice;
  const made = bikeCase(state.shop, given.bike);
  if (!made.ok) return made;
  const { now, rides, tests, measurements, engine } = made.value;
  const story = state.shop.bikes.get(given.bike)!;
  const at = advice.value.picture.map(mixtureThere);
  const marked = story.knownGood.findLast(({ moment }) => moment.setup === story.now.setup) ?? null;
  const last = story.entries.at(-1);
  const placeHeight = story.description?.place?.heightM ?? null;
  return accept({
    at,
    stretches: stretchesOf(at),
    told: rides.length + tests.length + measurements.length,
    air: {
      celsius: toCelsius(now.air.temperature),
      heightM: story.now.air?.body.heightM ?? placeHeight,
      noted: story.now.air !== null,
    },
    rightAt: marked && {
      at: marked.entry.at,
      celsius: marked.moment.air?.body.temperatureC ?? null,
      heightM: marked.moment.air?.body.heightM ?? placeHeight,
    },
    ...behind(advice.value, story),
    looks:
      advice.value.step.kind === "stop"
        ? CHECKS.filter(
            ({ strokes }) => strokes === "both" || strokes === (engine.strokes === 2 ? "two" : "four"),
          ).map(({ id }) => ({ id, words: state.words.checks[id].words, first: AFTER_A_STOP.includes(id) }))
        : [],
    lastAdvice:
      last?.kind === "advice-given" ? { words: last.body.words, followed: last.body.followed ?? null } : null,
  });
}

/** What is looked at first after metal on the plug, a knock, a runaway or a seizure. Common practice, no source. */
const AFTER_A_STOP: readonly string[] = [
  "spark-and-plug",
  "slide-snap-and-cable",
  "fuel-flow",
  "fresh-fuel-and-oil",
  "cooling",
  "ignition-timing",
  "compression",
  "pressure-test",
];

/** What stands behind the reasons of the steps. */
function behind({ step, others }: Advice, story: BikeStory): Pick<Standing, "dates" | "heard" | "checkOf"> {
  const named = new Set([step, ...others].flatMap(({ why }) => why.map(({ record }) => record)));
  return {
    dates: Object.fromEntries(story.entries.filter(({ id }) => named.has(id)).map(({ id, at }) => [id, at])),
    heard: story.sounds.flatMap(({ entry }) => (named.has(entry.id) ? [entry.id] : [])),
    checkOf: Object.fromEntries(
      story.checks.filter(({ id }) => named.has(id)).map(({ id, body }) => [id, body.check]),
    ),
  };
}

/** Right is no leaner and no richer than this, as mixture errors: the limits a confirming ride has to hold. */
const RIGHT = { lean: -0.04, rich: 0.06 };
/** One standard deviation up to which "right" can be said. */
const KNOWN = 0.06;

function mixtureThere({ opening, mean, sd }: MixtureReading): MixtureThere {
  const off = mean > RIGHT.rich || mean < RIGHT.lean;
  const leaning: Leaning = off
    ? Math.abs(mean) < sd
      ? "open"
      : mean > 0
        ? "rich"
        : "lean"
    : sd <= KNOWN
      ? "right"
      : "open";
  return {
    opening,
    percent: 100 * Math.expm1(mean),
    sdPercent: 100 * sd,
    leaning,
    sure: leaning === "right" || Math.abs(mean) >= 2 * sd,
  };
}

/** Runs of openings that lean the same way; surely so only where each of them does. */
export function stretchesOf(at: readonly MixtureThere[]): readonly MixtureStretch[] {
  const stretches: MixtureStretch[] = [];
  for (const { opening, leaning, sure } of at) {
    const name = openingName(opening);
    const before = stretches.at(-1);
    if (before?.leaning === leaning) {
      stretches[stretches.length - 1] = { ...before, to: name, sure: before.sure && sure };
    } else stretches.push({ from: name, to: name, leaning, sure });
  }
  return stretches;
}
