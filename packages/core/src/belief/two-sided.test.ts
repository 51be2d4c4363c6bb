import { describe, expect, test } from "vitest";
import { OPENINGS } from "../units/opening.ts";
import { believe } from "./believe.ts";
import type { Sign } from "./catalogue.ts";
import { exampleSeen, exampleSign } from "./example-sign.ts";
import { priorGaussian } from "./prior.ts";
import { signById } from "./signs/all.ts";
import { stretchAt, stretchOf } from "./state.ts";
import { twoSidedOpenings } from "./two-sided.ts";

const prior = priorGaussian();
const closed = OPENINGS[0]!;
const from = (...signs: readonly Sign[]) =>
  believe({
    prior,
    faultPriors: {},
    observations: signs.map((sign, i) =>
      exampleSeen(sign, { stretch: stretchAt(closed), record: `r${i}`, situation: `s${i}` }),
    ),
  });

// Will not idle whatever the screw: much too rich or much too lean, hardly ever right.
const eitherWay = exampleSign({
  id: "either",
  group: "either",
  chance: { rich: 0.7, right: 0.05, lean: 0.6 },
});
const rich = exampleSign({ id: "rich", group: "rich", chance: { rich: 0.7, right: 0.1, lean: 0.05 } });
const lean = exampleSign({ id: "lean", group: "lean", chance: { rich: 0.05, right: 0.1, lean: 0.7 } });

describe("evidence that speaks for rich or lean", () => {
  test("[B17] a sign of either but not right gives two readings at its opening, one rich and one lean", () => {
    const found = twoSidedOpenings(from(eitherWay, eitherWay));
    expect(found.map(({ opening }) => opening)).toContain(closed);
    const { richPeak, leanPeak, rich: share } = found.find(({ opening }) => opening === closed)!;
    expect(richPeak).toBeGreaterThan(0.06);
    expect(leanPeak).toBeLessThan(-0.06);
    expect(share).toBeGreaterThan(0.4);
    expect(share).toBeLessThan(0.7);
  });

  test("[B17] evenly balanced it is half and half, peaks the same way out", () => {
    const even = exampleSign({ ...eitherWay, chance: { rich: 0.7, right: 0.05, lean: 0.7 } });
    const [first] = twoSidedOpenings(from(even, even));
    expect(first!.rich).toBeCloseTo(0.5, 2);
    expect(first!.richPeak).toBeCloseTo(-first!.leanPeak, 6);
  });

  test("[B17] a plain rich or lean sign, or none at all, has one reading", () => {
    expect(twoSidedOpenings(from(rich))).toEqual([]);
    expect(twoSidedOpenings(from(lean))).toEqual([]);
    expect(twoSidedOpenings(from(rich, lean))).toEqual([]);
    expect(twoSidedOpenings(from())).toEqual([]);
  });

  test("[B17] when other signs settle the side, one reading is left", () => {
    expect(
      twoSidedOpenings(from(eitherWay, eitherWay, rich, { ...rich, id: "rich-too", group: "more" })),
    ).toEqual([]);
  });

  test("[B17] the catalogue's own row says it alone: will not idle", () => {
    const row = signById("will-not-idle");
    expect(row).not.toBeNull();
    const sign = row!;
    const belief = believe({
      prior,
      faultPriors: {},
      observations: [exampleSeen(sign, { stretch: stretchAt(closed) })],
    });
    const twoSided = twoSidedOpenings(belief).some(({ opening }) => opening === closed);
    expect([Math.min(sign.chance.rich, sign.chance.lean) > 3 * sign.chance.right, twoSided]).toEqual([
      true,
      true,
    ]);
  });

  test("[B17] an opening that the sign hardly looks at is not spoken of", () => {
    const wide = stretchOf([
      [OPENINGS[2]!, 8],
      [OPENINGS[6]!, 2],
    ]);
    const belief = believe({
      prior,
      faultPriors: {},
      observations: [1, 2, 3].map((i) =>
        exampleSeen(eitherWay, { stretch: wide, situation: `s${i}`, record: `r${i}` }),
      ),
    });
    expect(twoSidedOpenings(belief).map(({ opening }) => opening)).toEqual([OPENINGS[2]]);
  });
});
