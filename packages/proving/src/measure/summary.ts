import { Chance } from "../chance.ts";
import { clustered, type Quantile, quantile, type Share, wilson } from "./intervals.ts";
import type { Outcome } from "./run-bike.ts";

/** One policy's figures over many bikes. */
export interface Summary {
  readonly policy: string;
  readonly bikes: number;
  readonly median: Quantile;
  readonly ninetieth: Quantile;
  readonly never: Share;
  readonly medianMinutes: Quantile;
  readonly ninetiethMinutes: Quantile;
  readonly stayMedian: Quantile;
  readonly stayNinetieth: Quantile;
  readonly cleanAtEnd: Share;
  readonly rides: number;
  readonly minutes: number;
  readonly lean: Share;
  readonly leanest: number;
  readonly lost: Share;
  readonly bought: number;
  readonly checks: number;
  /** Of bikes with a fault: mended at all, and mended before a second needless change of jets. */
  readonly found: Share;
  readonly foundInTime: Share;
  readonly ridesBeforeFound: Quantile;
  /** Checks on bikes with nothing broken. */
  readonly wasted: number;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each, 0) / Math.max(1, values.length);

export function summarise(policy: string, outcomes: readonly Outcome[]): Summary {
  const of = outcomes.length;
  const faulty = outcomes.filter(({ fault }) => fault !== null);
  const random = new Chance("resample", policy);
  const rides = outcomes.map(({ ridesToClean }) => ridesToClean);
  const minutes = outcomes.map(({ minutesToClean }) => minutesToClean);
  const stays = outcomes.map(({ ridesToStay }) => ridesToStay);
  return {
    policy,
    bikes: of,
    median: quantile(rides, 0.5),
    ninetieth: quantile(rides, 0.9),
    never: wilson(rides.filter((each) => each === null).length, of),
    medianMinutes: quantile(minutes, 0.5),
    ninetiethMinutes: quantile(minutes, 0.9),
    stayMedian: quantile(stays, 0.5),
    stayNinetieth: quantile(stays, 0.9),
    cleanAtEnd: wilson(outcomes.filter(({ cleanAtEnd }) => cleanAtEnd).length, of),
    rides: mean(outcomes.map(({ rides: each }) => each)),
    minutes: mean(outcomes.map(({ minutes: each }) => each)),
    lean: clustered(
      outcomes.map(({ leanRides, advisedRides }) => [leanRides, advisedRides] as const),
      () => random.uniform(),
    ),
    leanest: Math.min(0, ...outcomes.map(({ leanest }) => leanest)),
    lost: wilson(outcomes.filter(({ engineLost }) => engineLost).length, of),
    bought: mean(outcomes.map(({ bought }) => bought)),
    checks: mean(outcomes.map(({ checks }) => checks)),
    found: wilson(faulty.filter(({ mended }) => mended).length, faulty.length),
    foundInTime: wilson(
      faulty.filter(({ mended, jetsBeforeMend }) => mended && jetsBeforeMend < 2).length,
      faulty.length,
    ),
    ridesBeforeFound: quantile(
      faulty.map(({ mended, ridesBeforeMend }) => (mended ? ridesBeforeMend : null)),
      0.5,
    ),
    wasted: mean(outcomes.filter(({ fault }) => fault === null).map(({ checks }) => checks)),
  };
}

/** How honest the bands were at one opening. */
export interface BandCover {
  readonly at: number;
  readonly half: Share;
  readonly ninety: Share;
  readonly bias: number;
  readonly spread: number;
}

export function bandCover(outcomes: readonly Outcome[], broken: boolean): readonly BandCover[] {
  return [0, 1 / 8, 1 / 4, 1 / 2, 3 / 4, 1].map((at) => {
    const random = new Chance("bands", at);
    const within = (limit: number): Share =>
      clustered(
        outcomes.map(({ notes }) => {
          const here = notes.bands.filter((band) => band.at === at && band.broken === broken);
          return [here.filter(({ z }) => Math.abs(z) < limit).length, here.length] as const;
        }),
        () => random.uniform(),
        200,
      );
    const here = outcomes.flatMap(({ notes }) =>
      notes.bands.filter((band) => band.at === at && band.broken === broken),
    );
    return {
      at,
      half: within(0.6744898),
      ninety: within(1.6448536),
      bias: mean(here.map(({ z }) => z)),
      spread: mean(here.map(({ sd }) => sd)),
    };
  });
}

/** Said chance against what was true, in tenths. */
export interface Reliability {
  readonly from: number;
  readonly to: number;
  readonly said: number;
  readonly true: Share;
}

export function reliability(
  said: readonly { readonly chance: number; readonly there: boolean }[],
): readonly Reliability[] {
  const edges = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0001];
  return edges.slice(0, -1).flatMap((from, i): Reliability[] => {
    const to = edges[i + 1]!;
    const here = said.filter(({ chance }) => chance >= from && chance < to);
    if (here.length === 0) return [];
    return [
      {
        from,
        to,
        said: mean(here.map(({ chance }) => chance)),
        true: wilson(here.filter(({ there }) => there).length, here.length),
      },
    ];
  });
}

/** Mean squared error of chances: 0 is perfect, the share's own spread is no knowledge. */
export const brier = (said: readonly { readonly chance: number; readonly there: boolean }[]): number =>
  mean(said.map(({ chance, there }) => (chance - (there ? 1 : 0)) ** 2));
