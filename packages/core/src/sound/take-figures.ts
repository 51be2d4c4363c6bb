import type { Heard } from "./listen.ts";
import type { SoundEvent } from "./sound-event.ts";
import { middle } from "./speed-line.ts";

/** What is measured on a take, in the order it is shown. */
export const TAKE_FIGURES = [
  "idleRpm",
  "hangSeconds",
  "undershootPercent",
  "settleSeconds",
  "halvingSeconds",
  "delaySeconds",
  "riseSeconds",
  "bogPercent",
  "huntingPercent",
] as const;
export type TakeFigureName = (typeof TAKE_FIGURES)[number];

/** One figure of a take, with what each try gave. */
export interface TakeFigure {
  readonly name: TakeFigureName;
  /** One a snap or closing, in their order. */
  readonly tries: readonly number[];
  readonly middle: number;
  readonly least: number;
  readonly most: number;
}

/** Decimals a figure is kept with: no more than the reading is good for. */
const DECIMALS: Readonly<Record<TakeFigureName, number>> = {
  idleRpm: 0,
  hangSeconds: 2,
  undershootPercent: 1,
  settleSeconds: 2,
  halvingSeconds: 2,
  delaySeconds: 2,
  riseSeconds: 2,
  bogPercent: 1,
  huntingPercent: 1,
};

/**
 * Two takes of one bike differ in a figure when it is off by more than this besides the scatter of the tries, its own
 * unit: smaller steps come from the hand and the day. Estimates.
 */
const LEAST_DIFFERENCE: Readonly<Record<TakeFigureName, number>> = {
  idleRpm: 75,
  hangSeconds: 0.3,
  undershootPercent: 4,
  settleSeconds: 0.7,
  halvingSeconds: 0.12,
  delaySeconds: 0.08,
  riseSeconds: 0.15,
  bogPercent: 5,
  huntingPercent: 4,
};

/** What each event gives. */
function figureIn(name: TakeFigureName, event: SoundEvent): number | null {
  switch (event.kind) {
    case "idle":
      return name === "idleRpm" ? event.rpm : null;
    case "hunting":
      return name === "huntingPercent" ? event.swingPercent : null;
    case "chop":
      if (name === "hangSeconds" || name === "undershootPercent") return event[name];
      // The time in which the speed halves as it falls.
      if (name === "halvingSeconds") return event.fallRate > 0 ? 1 / event.fallRate : null;
      return name === "settleSeconds" ? event.settleSeconds : null;
    case "snap":
      return name === "delaySeconds" || name === "riseSeconds" || name === "bogPercent" ? event[name] : null;
    default:
      return null;
  }
}

const rounded = (x: number, decimals: number): number => Number(x.toFixed(decimals));

/** Every figure that was measured, with its middle and its extremes. */
export function takeFigures({ events }: Pick<Heard, "events">): readonly TakeFigure[] {
  return TAKE_FIGURES.flatMap((name) => {
    const tries = events.flatMap((event) => {
      const value = figureIn(name, event);
      return value === null ? [] : [rounded(value, DECIMALS[name])];
    });
    if (tries.length === 0) return [];
    return [
      {
        name,
        tries,
        middle: rounded(middle(tries), DECIMALS[name]),
        least: Math.min(...tries),
        most: Math.max(...tries),
      },
    ];
  });
}

/**
 * The figures a record keeps, by name: middles; half the range of the tries as `...Spread`; `closings`; `stalls`; and
 * `confidence`, that of the weakest event.
 */
export function keptFigures({ events }: Pick<Heard, "events">): Record<string, number> {
  const figures: Record<string, number> = {};
  for (const { name, tries, middle: value, least, most } of takeFigures({ events })) {
    figures[name] = value;
    if (tries.length > 1) figures[`${name}Spread`] = rounded((most - least) / 2, DECIMALS[name]);
  }
  const closings = events.filter(({ kind }) => kind === "chop").length;
  if (closings > 0) figures.closings = closings;
  if (events.some(({ kind }) => kind === "stall")) figures.stalls = 1;
  if (events.length > 0)
    figures.confidence = rounded(Math.min(...events.map(({ confidence }) => confidence)), 2);
  return figures;
}

/** A figure in which one take differs from another beyond scatter. */
export interface TakeDifference {
  readonly name: TakeFigureName;
  readonly way: "more" | "less";
  /** By how much, above 0, the figure's own unit. */
  readonly by: number;
}

/** In what a take's kept figures differ from those of another take of the same bike, such as its good one. */
export function takeDifferences(
  now: Readonly<Record<string, number>>,
  good: Readonly<Record<string, number>>,
): readonly TakeDifference[] {
  return TAKE_FIGURES.flatMap((name) => {
    const [a, b] = [now[name], good[name]];
    if (a === undefined || b === undefined) return [];
    const scatter = (now[`${name}Spread`] ?? 0) + (good[`${name}Spread`] ?? 0);
    const by = Math.abs(a - b);
    if (by <= LEAST_DIFFERENCE[name] + scatter) return [];
    return [{ name, way: a > b ? "more" : "less", by: rounded(by, DECIMALS[name]) }];
  });
}

/** Speed against time, thin enough to be written down. */
export interface SpeedOutline {
  readonly everySeconds: number;
  /** Revolutions a minute, tens; 0: not heard. */
  readonly rpm: readonly number[];
}

const OUTLINE_SECONDS = 0.1;
const OUTLINE_MOST = 1800;

/** The speed of a take every tenth of a second, cut after three minutes. */
export function speedOutline({ track, seconds }: Pick<Heard, "track" | "seconds">): SpeedOutline {
  const length = Math.min(OUTLINE_MOST, Math.floor(seconds / OUTLINE_SECONDS) + 1);
  const rpm = Array.from({ length }, (_, i) => {
    const frame = Math.min(track.rpm.length - 1, Math.round((i * OUTLINE_SECONDS) / track.hop));
    return Math.round((track.rpm[frame] ?? 0) / 10) * 10;
  });
  return { everySeconds: OUTLINE_SECONDS, rpm };
}
