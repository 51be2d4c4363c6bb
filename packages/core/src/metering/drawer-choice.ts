import type { Drawer, Stock } from "../parts/drawer.ts";
import type { Jet } from "../parts/jet.ts";
import { known } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { OPENINGS } from "../units/opening.ts";
import { sameJet } from "./comparable.ts";
import { compare, totalAt } from "./compare.ts";
import { type Correction, remainingOf } from "./correction.ts";
import { shiftsFrom } from "./shift.ts";
import type { Situation } from "./situation.ts";

/** Openings from 3/4 up, where lean destroys engines. */
const WIDE = OPENINGS.flatMap((opening, i) => (opening >= 0.75 ? [i] : []));
/** How far below the target still counts as on it: rounding. */
const ROUNDING = 1e-9;
/** What one changed part must gain to be worth it, in the log of the mixture: a tenth of a per cent. */
const LEAST_GAIN = 1e-3;

/** The same as a sum of squares over the openings. */
const SQUARED_GAIN = OPENINGS.length * LEAST_GAIN * LEAST_GAIN;

interface Choice {
  readonly setup: Setup;
  readonly error: readonly number[];
  readonly changes: number;
}

/**
 * The combination of main jet, pilot jet and clip groove, from the drawer and what is fitted, that brings the
 * mixture in `there` closest to that of `from` (least squares over the openings, a part left alone where changing it
 * gains under a tenth of a per cent). From 3/4 up it is never leaner
 * than before; where nothing owned can do that, it is the least lean one there, with a warning.
 */
export function chooseFromDrawer(from: Situation, there: Situation, drawer: Drawer): Correction | null {
  const choices = combinations(from, there, drawer);
  const safe = choices.filter((choice) => leanest(choice) >= -ROUNDING);
  const best =
    safe.length > 0
      ? least(safe, (choice) => squares(choice.error) + SQUARED_GAIN * choice.changes)
      : least(choices, (choice) => -leanest(choice) + LEAST_GAIN * choice.changes);
  if (best === null) return null;
  const after = compare(from, { ...there, setup: best.setup });
  if (!after.ok) return null;
  return {
    setup: best.setup,
    remaining: remainingOf(after.value),
    warnings:
      safe.length > 0
        ? []
        : [
            "Nothing in the drawer is rich enough from 3/4 up: this is the least lean of it. Do not hold it wide open; get a bigger main jet.",
          ],
  };
}

const leanest = (choice: Choice): number => Math.min(...WIDE.map((i) => choice.error[i]!));
const squares = (error: readonly number[]): number => error.reduce((sum, x) => sum + x * x, 0);

function least<T>(items: readonly T[], cost: (item: T) => number): T | null {
  let best: T | null = null;
  let bestCost = Infinity;
  for (const item of items) {
    const itemCost = cost(item);
    if (itemCost < bestCost) [best, bestCost] = [item, itemCost];
  }
  return best;
}

/** The pilot jet adds to main jet and clip without touching them, so the two are worked out apart. */
function combinations(from: Situation, there: Situation, drawer: Drawer): Choice[] {
  const shifts = shiftsFrom(from);
  if (!shifts.ok) return [];
  const { setup } = from;
  const errorOf = (parts: Setup): readonly number[] | null => {
    const shift = shifts.value({ ...there, setup: parts });
    return shift.ok ? OPENINGS.map((_, i) => totalAt(shift.value, i)) : null;
  };
  const base = errorOf(setup);
  if (base === null) return [];
  const pilots = jetsFor(setup.pilot, drawer.pilots).flatMap((pilot) => {
    const error = errorOf({ ...setup, pilot });
    return error === null ? [] : [{ pilot, added: error.map((x, i) => x - base[i]!) }];
  });
  const choices: Choice[] = [];
  for (const main of jetsFor(setup.main, drawer.mains)) {
    for (const clip of clipsFor(setup)) {
      const error = errorOf({ ...setup, main, clip });
      if (error === null) continue;
      for (const { pilot, added } of pilots) {
        const changes = [
          !sameJet(main.part, setup.main.part),
          clip.part !== setup.clip.part,
          !sameJet(pilot.part, setup.pilot.part),
        ].filter(Boolean).length;
        choices.push({
          setup: { ...setup, main, clip, pilot },
          error: error.map((x, i) => x + added[i]!),
          changes,
        });
      }
    }
  }
  return choices;
}

function jetsFor(fitted: Setup["main"], stock: readonly Stock<Jet>[]): Setup["main"][] {
  if (fitted.part === null) return [fitted];
  const others = stock.filter(({ part, count }) => count > 0 && !sameJet(part, fitted.part));
  return [fitted, ...others.map(({ part }) => known(part))];
}

function clipsFor({ needle, clip }: Setup): Setup["clip"][] {
  if (needle.part === null || clip.part === null) return [clip];
  const others = Array.from({ length: needle.part.grooves }, (_, i) => i + 1).filter(
    (groove) => groove !== clip.part,
  );
  return [clip, ...others.map((groove) => known(groove))];
}
