import { expect, test } from "vitest";
import type { BikePhoto } from "../engine/answers/photos/photos-of.ts";
import { en } from "../words/en.ts";
import { fittedPhotos, photoTitle } from "./shown-photo.ts";

const photo = (hash: string, change: Partial<BikePhoto> = {}): BikePhoto => ({
  record: `r-${hash}`,
  hash,
  part: "main",
  of: "",
  by: null,
  at: 0,
  fitted: true,
  ...change,
});

test("parts have the pictures of what is fitted, in the order given", () => {
  const found = fittedPhotos([
    photo("d"),
    photo("c", { part: null, fitted: false }),
    photo("b", { part: "clip" }),
    photo("a"),
    photo("old", { fitted: false }),
  ]);
  expect([...found].map(([part, photos]) => [part, photos.map(({ hash }) => hash)])).toEqual([
    ["main", ["d", "a"]],
    ["clip", ["b"]],
  ]);
});

test("a picture is called by its part, else by what was said, else a picture", () => {
  expect(photoTitle(photo("a", { of: "scratched" }), en)).toBe("Main jet");
  expect(photoTitle(photo("a", { part: null, of: "plug" }), en)).toBe("plug");
  expect(photoTitle(photo("a", { part: null }), en)).toBe("Picture");
});
