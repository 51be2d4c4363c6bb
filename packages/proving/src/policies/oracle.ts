import type { Parts } from "../truth/bike.ts";
import { LIFTS } from "../truth/bike.ts";
import { stepped } from "../truth/sizes.ts";
import { CLEAN } from "../world/limits.ts";
import { ride } from "../world/report-of.ts";
import type { World } from "../world/world.ts";
import type { Policy } from "./policy.ts";

/** Knows the truth: mends the fault and fits the best there is, after the owner's own ride. The bound for all. */
export const oracle: Policy = {
  name: "oracle",
  words: "knows the truth; what no rider and no tool can beat",
  work(world) {
    ride(world, "free");
    const broken = world.broken;
    for (let i = 0; i < 5 && world.broken !== null; i++) {
      world.spend(0);
      world.mend(broken!.fault);
    }
    world.fit(bestParts(world));
    ride(world, "free");
  },
};

export function bestParts(world: World): Partial<Parts> {
  const { body, needle } = world.drawn.bike;
  const now = world.parts;
  const mixture = world.mixtureWith(null);
  let best: Parts = now;
  let least = Infinity;
  for (let m = -8; m <= 8; m++) {
    const main = stepped("main", body.numbering, now.main, m);
    for (let groove = 1; groove <= needle.grooves; groove++) {
      for (let p = -4; p <= 4; p++) {
        const pilot = stepped("pilot", body.numbering, now.pilot, p);
        for (let turns = 0.5; turns <= 3; turns += 0.25) {
          const parts = { ...now, main, groove, pilot, turns };
          const off = offClean(mixture.error(parts));
          if (off < least) {
            least = off;
            best = parts;
          }
        }
      }
    }
  }
  const { main, groove, pilot, turns } = best;
  return { main, groove, pilot, turns };
}

/** How far the worst place lies from the middle of clean, in half widths. */
function offClean(error: readonly number[]): number {
  const middle = (CLEAN.rich + CLEAN.lean) / 2;
  const half = (CLEAN.rich - CLEAN.lean) / 2;
  let worst = 0;
  for (const lift of CLEAN.at) worst = Math.max(worst, Math.abs(error[LIFTS.indexOf(lift)]! - middle) / half);
  return worst;
}
