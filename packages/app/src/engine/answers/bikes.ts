import type { EngineState } from "../state.ts";

export interface BikeListed {
  readonly id: string;
  readonly name: string;
  readonly strokes: 2 | 4 | null;
  readonly displacementCc: number | null;
  /** When anything was last written about it, milliseconds since 1970; null when nothing was. */
  readonly lastAt: number | null;
  readonly away: boolean;
}

/** Every bike of the shop, the last touched first, those put away at the end. */
export function bikeList({ shop }: EngineState, _given: null): readonly BikeListed[] {
  return [...shop.bikes.values()]
    .filter(({ description }) => description !== null)
    .map(({ id, description, entries, awayAt }) => ({
      id,
      name: description?.name ?? id,
      strokes: description?.engine?.strokes ?? null,
      displacementCc: description?.engine?.displacementCc ?? null,
      lastAt: entries[entries.length - 1]?.at ?? null,
      away: awayAt !== null,
    }))
    .sort((a, b) => Number(a.away) - Number(b.away) || (b.lastAt ?? 0) - (a.lastAt ?? 0));
}
