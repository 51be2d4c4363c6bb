import { RIDE_MINUTES } from "./labour.ts";
import { perceive } from "./perceive.ts";
import { over, STRETCHES, type Stretch } from "./stretches.ts";
import { FANCIED, FANCIES } from "./tells.ts";
import type { Throttle } from "./throttle.ts";
import type { World } from "./world.ts";

export interface Said {
  readonly sign: string;
  readonly at: number | null;
  readonly seen: boolean;
}

export interface Verdict {
  readonly at: number;
  readonly felt: "better" | "same" | "worse";
}

/** What a rider has to say after a ride. */
export interface Report {
  readonly said: readonly Said[];
  readonly felt: readonly Verdict[];
}

/**
 * Rides it and gives the rider's report.
 * @param before what it seemed to run at before the last change, where the rider can compare
 */
export function ride(world: World, throttle: Throttle, before: readonly number[] | null = null): Report {
  world.run(throttle, RIDE_MINUTES);
  return reportOf(world, throttle, before);
}

/** Minutes at idle and on quick openings to tell what a turned screw did. */
const STAND_MINUTES = 4;
/** The stretches that tell something there. */
export const ON_THE_STAND: readonly Stretch["name"][] = ["idle", "closing", "snap"];

/** Idles it and blips it where it stands, and says what the bottom does: after a turn of the screw alone. */
export function onTheStand(world: World, before: readonly number[] | null): Report {
  world.run("stay below 3/4", STAND_MINUTES, false);
  return reportOf(world, "stay below 3/4", before, ON_THE_STAND);
}

/** Stretch by stretch from the true mixture, then what else the bike shows, then against the ride before. */
function reportOf(
  world: World,
  throttle: Throttle,
  before: readonly number[] | null,
  of: readonly Stretch["name"][] = STRETCHES.map(({ name }) => name),
): Report {
  const { rider } = world;
  const { strokes } = world.drawn.bike.engine;
  const seems = world.seems(throttle);
  const said: Said[] = [];
  const felt: Verdict[] = [];
  for (const stretch of STRETCHES) {
    if (!of.includes(stretch.name)) continue;
    if (stretch.name === "top" && throttle === "stay below 3/4") continue;
    const chance = world.chance("report", stretch.name);
    if (chance.of(rider.lapses)) continue;
    const impression = perceive(chance, rider, stretch, strokes, seems);
    if (impression.sign !== null) {
      said.push({
        sign: impression.sign,
        at: impression.feel === "right" ? null : placeOf(stretch, chance.uniform()),
        seen: true,
      });
      if (impression.feel === "right" && chance.of(rider.denies)) {
        const { rich, lean } = stretch.says(strokes);
        for (const sign of [rich[0]!, lean[0]!]) said.push({ sign, at: placeOf(stretch, 1), seen: false });
      }
    }
    if (before !== null)
      felt.push({ at: verdictAt(stretch), felt: verdictOf(world, stretch, before, seems) });
  }
  const also = world.chance("also");
  for (const sign of world.shows) {
    const held = sign.startsWith("fades") || sign.startsWith("cuts") ? throttle === "free" : true;
    if (held && also.of(rider.attends)) said.push({ sign, at: null, seen: true });
  }
  if (also.of(FANCIES)) said.push({ sign: also.pick(FANCIED), at: null, seen: true });
  return { said: once(said), felt };
}

const placeOf = (stretch: Stretch, luck: number): number | null =>
  stretch.at !== null && luck < 0.6 ? stretch.at : null;

/** The spoken opening a stretch is judged at. */
function verdictAt({ name }: Stretch): number {
  const places = { idle: 0, closing: 0, snap: 1 / 8, light: 1 / 4, middle: 1 / 2, top: 1 } as const;
  return places[name];
}

function verdictOf(
  world: World,
  stretch: Stretch,
  before: readonly number[],
  now: readonly number[],
): Verdict["felt"] {
  const { rider } = world;
  const chance = world.chance("felt", stretch.name);
  const off = (seems: readonly number[]): number => Math.abs(over(stretch, seems) - rider.taste);
  const gain = off(before) - off(now) + chance.normal(0, 0.8 * rider.noise);
  const least = 0.4 * stretch.noticed * rider.dull;
  return gain > least ? "better" : gain < -least ? "worse" : "same";
}

function once(said: readonly Said[]): readonly Said[] {
  const seen = new Set(said.filter((each) => each.seen).map(({ sign }) => sign));
  const kept = new Map<string, Said>();
  for (const each of said) if (each.seen || !seen.has(each.sign)) kept.set(`${each.sign}|${each.at}`, each);
  return [...kept.values()];
}
