import { accept, type Outcome, pressureAltitude, type Situation, toCelsius } from "@jetwright/core";
import {
  type BikeStory,
  bikeCase,
  type ReplayedCase,
  type ShopState,
  situationOfRecord,
} from "@jetwright/records";

/** The air that a bike's setup is counted from, as plain figures. */
export interface RightAir {
  readonly celsius: number;
  /** As noted, else the height where standard air has that pressure. */
  readonly heightM: number;
  /** When somebody marked the setup as right in it; null where nobody did, and the air last noted is taken. */
  readonly markedAt: number | null;
}

export interface RanRight {
  readonly situation: Situation;
  readonly air: RightAir;
  readonly bikeCase: ReplayedCase;
}

/**
 * The setup fitted now in the air it was right in: where it was last marked as right with these parts and this fuel,
 * else the air last noted.
 */
export function ranRight(shop: ShopState, bike: string): Outcome<RanRight> {
  const made = bikeCase(shop, bike);
  if (!made.ok) return made;
  const story = shop.bikes.get(bike)!;
  const marked = lastMark(story);
  const there = marked === null ? null : situationOfRecord(shop, bike, marked.entry.id);
  const situation = there?.ok ? there.value : made.value.now;
  const body = (marked?.moment ?? story.now).air?.body;
  return accept({
    situation,
    air: {
      celsius: toCelsius(situation.air.temperature),
      heightM: body?.heightM ?? pressureAltitude(situation.air.pressure),
      markedAt: there?.ok ? marked!.entry.at : null,
    },
    bikeCase: made.value,
  });
}

/** The last mark that still speaks of what is fitted, on the fuel of now. */
function lastMark({ knownGood, now, freshStart }: BikeStory): BikeStory["knownGood"][number] | null {
  return (
    knownGood.findLast(
      ({ entry, moment }) =>
        moment.setup === now.setup &&
        moment.fuel?.id === now.fuel?.id &&
        moment.air !== null &&
        entry.at >= (freshStart?.at ?? -Infinity),
    ) ?? null
  );
}
