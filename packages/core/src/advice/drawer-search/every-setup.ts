import { writeSeriesShift } from "../../metering/part-shifts.ts";
import { OPENINGS } from "../../units/opening.ts";
import { BestList, type Found } from "./best-list.ts";
import type { DrawerSpace } from "./drawer-space.ts";
import { writeShift } from "./drawer-space.ts";
import { foundAt } from "./found-at.ts";
import { expectedLoss, leanChance, SHIFT_SIZE } from "./loss-table.ts";

/** Plain enumeration: every combination weighed by itself. What the search must give, and is measured against. */
export function everySetup(space: DrawerSpace, wanted: number): readonly Found[] {
  const best = new BestList(wanted);
  const needle = new Float64Array(OPENINGS.length);
  const main = new Float64Array(OPENINGS.length);
  const shift = new Float64Array(SHIFT_SIZE);
  for (let n = 0; n < space.places.needles.length; n++) {
    for (let m = 0; m < space.places.mains.length; m++) {
      writeSeriesShift(space.shifts, n, m, needle, main);
      for (let k = 0; k < space.partners.count; k++) {
        writeShift(shift, needle, main, space.partners, k);
        if (space.leanChance < 1 && leanChance(space.loss, shift) > space.leanChance) continue;
        best.offer(foundAt(space, n, m, k, expectedLoss(space.loss, shift)));
      }
    }
  }
  return best.kept;
}
