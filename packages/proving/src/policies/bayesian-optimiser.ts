import type { Parts } from "../truth/bike.ts";
import { stepped } from "../truth/sizes.ts";
import { type Report, ride } from "../world/report-of.ts";
import { STRETCHES } from "../world/stretches.ts";
import type { World } from "../world/world.ts";
import { GaussianProcess } from "./gaussian-process.ts";
import { mayGoOn, type Policy } from "./policy.ts";
import { complaints } from "./symptoms.ts";

/** Knobs without a meaning: steps of main, groove, steps of pilot, turns. */
type Point = readonly [number, number, number, number];

/** A general optimiser: it turns four knobs and is told how many complaints came of it. Starts at what is fitted. */
export const bayesianOptimiser: Policy = {
  name: "Bayesian optimiser",
  words: "Gaussian process with expected improvement over the parts, told only how many complaints",
  work(world) {
    if (Object.values(world.written).some((part) => part === null)) world.readParts();
    const { needle } = world.drawn.bike;
    const start = world.written;
    const origin: Point = [0, start.groove!, 0, start.turns!];
    const process = new GaussianProcess([3, 1.3, 1.8, 0.9], 1.6, 0.7);
    const score = scoreOf(ride(world, "free"), world.drawn.bike.engine.strokes);
    process.add(origin, score);
    const tried: { point: Point; score: number }[] = [{ point: origin, score }];
    let content = score === 0 ? 1 : 0;
    while (mayGoOn(world) && content < 2) {
      const best = tried.reduce((least, each) => (each.score < least.score ? each : least));
      const last = tried[tried.length - 1]!;
      // No complaint: once more on the same, to be sure.
      const next = last.score === 0 ? last.point : propose(world, process, best, needle.grooves);
      world.fit(partsAt(world, start as Parts, next));
      const told = scoreOf(ride(world, "free"), world.drawn.bike.engine.strokes);
      process.add(next, told);
      tried.push({ point: next, score: told });
      content = told === 0 ? content + 1 : 0;
    }
  },
};

function propose(
  world: World,
  process: GaussianProcess,
  best: { readonly point: Point; readonly score: number },
  grooves: number,
): Point {
  const chance = world.chance("optimiser");
  let chosen: Point = best.point;
  let most = -Infinity;
  for (let i = 0; i < 400; i++) {
    const near = i < 200;
    const [main, groove, pilot, turns] = best.point;
    const pick = (from: number, reach: number, step: number): number =>
      from + step * Math.round(chance.between(-reach, reach) / step);
    const point: Point = near
      ? [
          clamp(pick(main, 2, 1), -5, 5),
          clamp(pick(groove, 1, 1), 1, grooves),
          clamp(pick(pilot, 1.4, 1), -3, 3),
          clamp(pick(turns, 0.75, 0.25), 0.5, 3),
        ]
      : [
          pick(0, 5, 1),
          clamp(pick((1 + grooves) / 2, 2, 1), 1, grooves),
          pick(0, 3, 1),
          clamp(pick(1.75, 1.25, 0.25), 0.5, 3),
        ];
    const gain = process.improvement(point, best.score);
    if (gain > most) {
      most = gain;
      chosen = point;
    }
  }
  return chosen;
}

const clamp = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, value));

function partsAt(world: World, start: Parts, [main, groove, pilot, turns]: Point): Partial<Parts> {
  const { numbering } = world.drawn.bike.body;
  return {
    main: stepped("main", numbering, start.main, main),
    groove: Math.round(groove),
    pilot: stepped("pilot", numbering, start.pilot, pilot),
    turns,
  };
}

/** Complaints by stretch; a stretch nobody spoke of counts a little. */
function scoreOf(report: Report, strokes: 2 | 4): number {
  const list = complaints(report, strokes);
  const praised = new Set(report.said.filter(({ seen }) => seen).map(({ sign }) => sign));
  return STRETCHES.reduce((sum, stretch) => {
    const here = list.filter((each) => each.stretch === stretch.name);
    if (here.length > 0) return sum + 1 + 0.3 * Math.max(...here.map(({ loud }) => loud));
    return praised.has(stretch.says(strokes).right[0]!) ? sum : sum + 0;
  }, 0);
}
