import { accept, type MixtureReading, mixtureOver, type Opening, type Outcome } from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../state.ts";

/** One ride, with the mixture it was ridden on as it is seen now; closed or nearly, half, and full throttle. */
export interface TrendRide {
  readonly record: string;
  readonly at: number;
  /** True where the parts differ from the ride before. */
  readonly changed: boolean;
  readonly bottom: MixtureReading;
  readonly middle: MixtureReading;
  readonly top: MixtureReading;
}

const OPENINGS = [1 / 8, 1 / 2, 1] as readonly number[] as readonly Opening[];
/** Rides shown, the last ones. */
const MOST = 12;

/** The last rides of a bike, oldest first; those on parts that cannot be compared are left out. */
export function trendOf(
  { shop }: EngineState,
  { bike }: { readonly bike: string },
): Outcome<readonly TrendRide[]> {
  const story = bikeCase(shop, bike);
  if (!story.ok) return story;
  const rides = [...story.value.rides].sort((a, b) => a.at - b.at).slice(-MOST);
  const readings = mixtureOver(
    story.value,
    rides.map(({ situation }) => situation),
    OPENINGS,
  );
  return accept(
    rides.flatMap(({ record, at, situation }, i) => {
      const [bottom, middle, top] = readings[i] ?? [];
      if (bottom === undefined || middle === undefined || top === undefined) return [];
      const before = rides[i - 1]?.situation;
      return [
        {
          record,
          at,
          changed: before !== undefined && before.setup !== situation.setup,
          bottom,
          middle,
          top,
        },
      ];
    }),
  );
}
