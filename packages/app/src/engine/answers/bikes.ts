import { signById, testById } from "@jetwright/core";
import type { BikeStory } from "@jetwright/records";
import type { EngineState } from "../state.ts";

/** In one word what a bike waits for, from its records alone. */
export type BikeState = "stopped" | "not-ridden" | "right" | "in-work" | "nothing-told";

export interface BikeListed {
  readonly id: string;
  readonly name: string;
  readonly strokes: 2 | 4 | null;
  readonly displacementCc: number | null;
  /** When anything was last written about it, milliseconds since 1970; null when nothing was. */
  readonly lastAt: number | null;
  readonly away: boolean;
  /** Name of whose bike it is; null where nobody said. */
  readonly customer: string | null;
  /** A work order is open for it. */
  readonly ordered: boolean;
  readonly state: BikeState;
}

/** Every bike of the shop, the last touched first, those put away at the end. */
export function bikeList({ shop }: EngineState, _given: null): readonly BikeListed[] {
  return [...shop.bikes.values()]
    .filter(({ description }) => description !== null)
    .map((story) => ({
      id: story.id,
      name: story.description?.name ?? story.id,
      strokes: story.description?.engine?.strokes ?? null,
      displacementCc: story.description?.engine?.displacementCc ?? null,
      lastAt: story.entries[story.entries.length - 1]?.at ?? null,
      away: story.awayAt !== null,
      customer: shop.customers.get(story.description?.customer ?? "")?.name ?? null,
      ordered: shop.orders.some(({ bike, closed }) => bike === story.id && closed === null),
      state: stateOf(story),
    }))
    .sort((a, b) => Number(a.away) - Number(b.away) || (b.lastAt ?? 0) - (a.lastAt ?? 0));
}

function stateOf(story: BikeStory): BikeState {
  const heard = [...story.rides, ...story.tests, ...story.measurements].map(({ entry }) => entry.at);
  const answered = Math.max(story.freshStart?.at ?? -Infinity, ...story.checks.map(({ at }) => at));
  if (stopsOf(story).some((at) => at > answered)) return "stopped";
  if (heard.length === 0) return "nothing-told";
  const lastHeard = Math.max(...heard);
  const marked = story.knownGood.findLast(({ moment }) => moment.setup === story.now.setup);
  if (marked !== undefined && marked.entry.at >= lastHeard) return "right";
  return story.now.setup.at > lastHeard ? "not-ridden" : "in-work";
}

/** When a sign was seen that ends the tuning. */
function stopsOf(story: BikeStory): readonly number[] {
  const rides = story.rides.flatMap(({ entry }) =>
    (entry.body.reports ?? []).some(({ sign, seen }) => seen !== false && signById(sign)?.stop === true)
      ? [entry.at]
      : [],
  );
  const tests = story.tests.flatMap(({ entry }) => {
    const outcome = testById(entry.body.test)?.outcomes.find(({ id }) => id === entry.body.outcome);
    return outcome?.sign != null && signById(outcome.sign)?.stop === true ? [entry.at] : [];
  });
  return [...rides, ...tests];
}
