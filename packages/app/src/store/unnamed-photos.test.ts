import { expect, test } from "vitest";
import { unnamedPhotos } from "./unnamed-photos.ts";

const DAY = 24 * 3_600_000;
const nothing = () => false;

test("a picture that nothing names waits a day and is then due", () => {
  const first = unnamedPhotos(["a"], nothing, {}, 1000);
  expect(first).toEqual({ due: [], waiting: { a: 1000 } });
  expect(unnamedPhotos(["a"], nothing, first.waiting, 999 + DAY)).toEqual({ due: [], waiting: { a: 1000 } });
  expect(unnamedPhotos(["a"], nothing, first.waiting, 1000 + DAY)).toEqual({ due: ["a"], waiting: {} });
});

test("a picture named again is never due, and begins anew when it is let go a second time", () => {
  const named = unnamedPhotos(["a", "b"], (hash) => hash === "a", { a: 0, b: 0 }, 5 * DAY);
  expect(named).toEqual({ due: ["b"], waiting: {} });
  expect(unnamedPhotos(["a"], nothing, named.waiting, 6 * DAY)).toEqual({ due: [], waiting: { a: 6 * DAY } });
});

test("what is no longer there is forgotten, and a clock set back does not lengthen the wait", () => {
  expect(unnamedPhotos([], nothing, { a: 0 }, DAY)).toEqual({ due: [], waiting: {} });
  expect(unnamedPhotos(["a"], nothing, { a: 9 * DAY }, DAY)).toEqual({ due: [], waiting: { a: DAY } });
});
