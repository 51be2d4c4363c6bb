import { expect, test } from "vitest";
import { fitInside } from "./fit-inside.ts";

test("the longer side comes down to the most allowed, the other in step", () => {
  expect(fitInside({ width: 4000, height: 3000 })).toEqual({ width: 1600, height: 1200 });
  expect(fitInside({ width: 3000, height: 4000 })).toEqual({ width: 1200, height: 1600 });
  expect(fitInside({ width: 1601, height: 10 })).toEqual({ width: 1600, height: 10 });
  expect(fitInside({ width: 500, height: 250 }, 100)).toEqual({ width: 100, height: 50 });
});

test("a small picture stays as it is, and a thin one keeps a line", () => {
  expect(fitInside({ width: 1600, height: 1600 })).toEqual({ width: 1600, height: 1600 });
  expect(fitInside({ width: 3, height: 2 })).toEqual({ width: 3, height: 2 });
  expect(fitInside({ width: 20_000, height: 1 })).toEqual({ width: 1600, height: 1 });
});
