import { type Notes, newNotes } from "../policies/notes.ts";
import type { Policy } from "../policies/policy.ts";
import { drawBike } from "../truth/draw-bike.ts";
import { LEAN_RIDE } from "../world/limits.ts";
import type { Rider } from "../world/rider.ts";
import { World } from "../world/world.ts";

/** What one policy did with one bike. */
export interface Outcome {
  readonly seed: string;
  readonly policy: string;
  readonly strokes: 2 | 4;
  readonly rider: Rider["kind"];
  readonly fault: string | null;
  /** Rides made before the first clean one, and minutes spent by then; null: never. */
  readonly ridesToClean: number | null;
  readonly minutesToClean: number | null;
  /** The same for clean up to the end. */
  readonly ridesToStay: number | null;
  readonly cleanAtEnd: boolean;
  readonly rides: number;
  readonly minutes: number;
  /** Rides after the owner's own; of them leaner than the limit at the top, and the leanest. */
  readonly advisedRides: number;
  readonly leanRides: number;
  readonly leanest: number;
  readonly engineLost: boolean;
  readonly mended: boolean;
  /** Rides and changes of jets made before the fault was mended, or in all. */
  readonly jetsBeforeMend: number;
  readonly ridesBeforeMend: number;
  readonly checks: number;
  readonly bought: number;
  readonly notes: Notes;
}

export function runBike(seed: string, policy: Policy, kind?: Rider["kind"]): Outcome {
  const drawn = drawBike(seed);
  const world = new World(drawn, kind);
  const notes = newNotes();
  policy.work(world, notes);
  const cleanAtEnd = world.isClean() && !world.engineLost;
  const clean = [...world.rides.map((ride) => ride.clean), cleanAtEnd];
  const outingsBefore = (entry: number): number =>
    world.rides.slice(0, entry).filter(({ outing }) => outing).length;
  const first = clean.indexOf(true);
  let stay = clean.length;
  while (stay > 0 && clean[stay - 1]) stay--;
  const advised = world.rides.slice(1);
  const tops = advised.flatMap(({ leanestTop }) => (leanestTop === null ? [] : [leanestTop]));
  const reached = first < 0 || world.engineLost ? null : outingsBefore(first);
  return {
    seed,
    policy: policy.name,
    strokes: drawn.bike.engine.strokes,
    rider: world.rider.kind,
    fault: drawn.broken?.fault ?? null,
    ridesToClean: reached,
    minutesToClean: reached === null ? null : (world.rides[first]?.before ?? world.minutes),
    ridesToStay: cleanAtEnd ? outingsBefore(stay) : null,
    cleanAtEnd,
    rides: world.outings,
    minutes: world.minutes,
    advisedRides: advised.length,
    leanRides: tops.filter((top) => top < LEAN_RIDE).length,
    leanest: Math.min(0, ...tops),
    engineLost: world.engineLost,
    mended: world.mendedAfter !== null,
    jetsBeforeMend: world.mendedAfter?.jets ?? world.jetChanges,
    ridesBeforeMend: world.mendedAfter?.rides ?? world.outings,
    checks: world.looks.length,
    bought: world.bought,
    notes,
  };
}
