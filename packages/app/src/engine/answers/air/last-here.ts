import {
  type AirState,
  accept,
  compare,
  log,
  OPENINGS,
  type Outcome,
  pressureAltitude,
  refuse,
  type Situation,
  toCelsius,
} from "@jetwright/core";
import {
  airOf,
  type BikeStory,
  type BodyOf,
  bikeCase,
  knownGoodSetups,
  type ShopState,
} from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { fuelWords } from "../story/sentence.ts";
import { setupWords } from "../story/setup-words.ts";
import { storyWords } from "../story/story-words.ts";

type AirBody = BodyOf<"air-measured">;

/** A setup that somebody marked as right in air much like this. */
export interface RanHere {
  readonly record: string;
  readonly bike: string;
  readonly bikeName: string;
  readonly own: boolean;
  readonly at: number;
  readonly setup: string;
  readonly place: string | null;
  readonly celsius: number;
  /** As noted, else where standard air has that pressure. */
  readonly heightM: number;
  readonly fuel: string | null;
  /** What was said with the mark. */
  readonly words: string | null;
  /** The air of now against that one: per cent more dry air in the same room; below zero less. */
  readonly denserPercent: number;
  /** How much richer that setup would run now at full throttle, per cent; null where it cannot be said. */
  readonly richerPercent: number | null;
}

export interface LastHere {
  readonly celsius: number;
  readonly heightM: number;
  /** This bike first, then the air most alike. */
  readonly ran: readonly RanHere[];
}

/** Air this near counts as "here": it moves the mixture by about 2 %. Common practice, no source. */
const NEAR_M = 300;
const NEAR_CELSIUS = 10;
const MOST = 6;
const FULL = OPENINGS.length - 1;

/**
 * What ran right at about this place, height and temperature: of each bike the setup last marked so in such air.
 * @param body the air asked about; null: the air last noted for the bike
 */
export function lastHere(
  { shop, words: core }: EngineState,
  {
    bike,
    body,
    at,
    language,
  }: { readonly bike: string; readonly body: AirBody | null; readonly at: number; readonly language: string },
): Outcome<LastHere> {
  const story = shop.bikes.get(bike);
  const now = airNow(shop, story, bike, body, at);
  if (!now.ok) return now;
  const air = now.value;
  const told = body ?? story?.now.air?.body;
  const heightM = told?.heightM ?? pressureAltitude(air.pressure);
  const words = storyWords(language, core);
  const near = knownGoodSetups(shop).flatMap(({ record, bike: id, at: markedAt, situation, description }) => {
    const mark = shop.bikes.get(id)!.knownGood.find(({ entry }) => entry.id === record)!;
    const then = mark.moment.air?.body;
    if (then === undefined) return [];
    const ran: RanHere = {
      record,
      bike: id,
      bikeName: description.name ?? id,
      own: id === bike,
      at: markedAt,
      setup: setupWords(mark.moment.setup.parts, words),
      place: then.place?.trim() || null,
      celsius: toCelsius(situation.air.temperature),
      heightM: then.heightM ?? pressureAltitude(situation.air.pressure),
      fuel: mark.moment.fuel === null ? null : fuelWords(mark.moment.fuel.body, words),
      words: mark.entry.body.words?.trim() || null,
      denserPercent: 100 * (air.dryDensity / situation.air.dryDensity - 1),
      richerPercent: richerIn(air, situation),
    };
    const samePlace = ran.place !== null && ran.place.toLowerCase() === told?.place?.trim().toLowerCase();
    const nearBy = samePlace || Math.abs(ran.heightM - heightM) <= NEAR_M;
    return nearBy && Math.abs(ran.celsius - toCelsius(air.temperature)) <= NEAR_CELSIUS ? [ran] : [];
  });
  const lastOfEach = new Map(near.map((ran) => [ran.bike, ran]));
  const apart = ({ denserPercent }: RanHere): number => Math.abs(log(1 + denserPercent / 100));
  return accept({
    celsius: toCelsius(air.temperature),
    heightM,
    ran: [...lastOfEach.values()]
      .sort((a, b) => Number(b.own) - Number(a.own) || apart(a) - apart(b) || b.at - a.at)
      .slice(0, MOST),
  });
}

function airNow(
  shop: ShopState,
  story: BikeStory | undefined,
  bike: string,
  body: AirBody | null,
  at: number,
): Outcome<AirState> {
  if (body !== null) return airOf(body, at, story?.description?.place?.heightM);
  if (story?.now.air == null) return refuse("no-air", "Nobody has noted the air of now.");
  const made = bikeCase(shop, bike);
  return made.ok ? accept(made.value.now.air) : made;
}

function richerIn(air: AirState, situation: Situation): number | null {
  const moved = compare(situation, { ...situation, air });
  return moved.ok ? 100 * (moved.value.at[FULL]!.ratio - 1) : null;
}
