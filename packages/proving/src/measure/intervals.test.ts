import { describe, expect, test } from "vitest";
import { cumulative, GaussianProcess } from "../policies/gaussian-process.ts";
import { withFigures } from "../report/write-report.ts";
import { clustered, quantile, wilson } from "./intervals.ts";

describe("intervals", () => {
  test("Wilson: none of ten gives up to 27.8 %, half of ten 23.7 to 76.3 % (Brown, Cai and DasGupta 2001 [from memory])", () => {
    expect(wilson(0, 10)).toMatchObject({ share: 0, low: 0 });
    expect(wilson(0, 10).high).toBeCloseTo(0.278, 3);
    expect(wilson(5, 10).low).toBeCloseTo(0.237, 3);
    expect(wilson(5, 10).high).toBeCloseTo(0.763, 3);
  });

  test("whole clusters drawn again: wider than rides one by one when a bike's rides go wrong together", () => {
    let k = 0;
    const random = (): number => {
      k = (k * 16807 + 11) % 2147483647;
      return k / 2147483647;
    };
    const together = Array.from({ length: 100 }, (_, i) => [i < 5 ? 10 : 0, 10] as const);
    const share = clustered(together, random);
    expect(share.share).toBeCloseTo(0.05, 10);
    expect(share.high - share.low).toBeGreaterThan(1.5 * (wilson(50, 1000).high - wilson(50, 1000).low));
  });

  test("quantiles: never comes last, and holds its place in the middle", () => {
    expect(quantile([3, null, 1, 2, 4], 0.5).value).toBe(3);
    expect(quantile([1, null, null, null], 0.5).value).toBe(null);
    expect(quantile([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0.9).value).toBe(9);
  });
});

describe("the general optimiser", () => {
  test("its curve goes through what it was told when nothing is noisy, and is unsure far away", () => {
    const process = new GaussianProcess([1, 1], 1, 1e-6);
    process.add([0, 0], 2);
    process.add([1.5, 0], 0);
    expect(process.at([0, 0]).mean).toBeCloseTo(2, 5);
    expect(process.at([1.5, 0]).mean).toBeCloseTo(0, 5);
    expect(process.at([0, 0]).sd).toBeLessThan(1e-3);
    expect(process.at([20, 20])).toMatchObject({ mean: 1, sd: 1 });
    expect(process.improvement([1.2, 0], 0)).toBeGreaterThan(process.improvement([0, 0], 0));
  });

  test("the normal distribution: 0.975 at 1.959964 (printed tables)", () => {
    expect(cumulative(1.959964)).toBeCloseTo(0.975, 6);
    expect(cumulative(-1.2815516)).toBeCloseTo(0.1, 6);
  });
});

test("the page keeps its own words and takes the figures in between", () => {
  const page = "a\n<!-- figures: written by npm run prove -->\nold\n<!-- end of figures -->\nb";
  expect(withFigures(page, "new")).toBe(
    "a\n<!-- figures: written by npm run prove -->\n\nnew\n\n<!-- end of figures -->\nb",
  );
  expect(() => withFigures("nothing", "new")).toThrow(RangeError);
});
