import { describe, expect, test } from "vitest";
import { DEMO, shopOf } from "../test-shop.ts";
import { photosNamed } from "./photos-named.ts";
import { photosOf } from "./photos-of.ts";

const HASHES = ["a", "b", "c", "d"].map((letter) => letter.repeat(64)) as [string, string, string, string];
const [A, B, C, D] = HASHES;
const at = (minute: number): string => `2026-05-01T10:${String(minute).padStart(2, "0")}:00Z`;
let ids = 0;
const record = (kind: string, minute: number, body: object, more: object = {}) => ({
  id: `r${++ids}`,
  kind,
  v: 1,
  at: at(minute),
  bike: "b",
  body,
  ...more,
});
const photo = (minute: number, body: object, more?: object) => record("photo", minute, body, more);

describe("pictures of a bike", () => {
  const jets = [
    record("bike-described", 0, { engine: { strokes: 2 } }),
    record("setup-fitted", 10, { main: { number: 175 }, pilot: { number: 42 }, asFound: true }),
    record("setup-fitted", 20, { main: { number: 170 } }),
  ];

  test("come newest first, with part, words and who", () => {
    const shop = shopOf([
      ...jets,
      photo(30, { hash: A, part: "main" }, { by: { person: "Ilse" } }),
      photo(31, { hash: B, of: "plug" }),
      photo(32, { hash: C }, { bike: "other" }),
    ]);
    const photos = photosOf(shop, { bike: "b" });
    expect(photos.map(({ hash, part, of, by }) => [hash, part, of, by])).toEqual([
      [B, null, "plug", null],
      [A, "main", "", "Ilse"],
    ]);
    expect(photos[1]!.at).toBe(Date.parse(at(30)));
    expect(photosOf(shop, { bike: "nobody's" })).toEqual([]);
  });

  test("show what is fitted from the moment it was put in, not what came out", () => {
    const shop = shopOf([
      ...jets,
      photo(5, { hash: A, part: "pilot" }),
      photo(19, { hash: B, part: "main" }),
      photo(20, { hash: C, part: "main" }),
      photo(25, { hash: D, of: "plug" }),
      // Looked at again, and it is the same jet: its pictures still show it.
      record("setup-fitted", 30, { main: { number: 170, how: "measured" }, asFound: true }),
    ]);
    const fitted = photosOf(shop, { bike: "b" }).filter((one) => one.fitted);
    expect(fitted.map(({ hash }) => hash)).toEqual([C, A]);
  });

  test("are gone once struck, and back when the strike is", () => {
    const taken = photo(30, { hash: A, part: "main" });
    const strike = record("record-struck", 31, { record: taken.id });
    const lines = [...jets, taken, strike];
    expect(photosOf(shopOf(lines), { bike: "b" })).toEqual([]);
    const back = [...lines, record("record-struck", 32, { record: strike.id })];
    expect(photosOf(shopOf(back), { bike: "b" })).toHaveLength(1);
  });
});

describe("what the log names", () => {
  test("is every picture and sound that counts, each once, of bikes and of the shop", () => {
    const struck = photo(30, { hash: D });
    const lines = [
      photo(1, { hash: A }),
      photo(2, { hash: A, part: "main" }),
      photo(3, { hash: B }, { bike: undefined }),
      record("sound-heard", 4, { figures: {}, clip: C }),
      struck,
      record("record-struck", 31, { record: struck.id }),
    ];
    const named = photosNamed(shopOf(lines));
    expect([...named.hashes].sort()).toEqual([A, B, C]);
    expect(named.records).toBe(lines.length);
    expect(photosNamed(shopOf([...lines, lines[0]!])).records).toBe(lines.length);
    expect(photosNamed(shopOf(DEMO)).records).toBe(DEMO.length);
  });

  test("is in doubt whatever looks like a hash in a record that cannot be read here", () => {
    const lines = [
      photo(1, { hash: A, pages: [B] }, { v: 99 }),
      record("picture-book", 2, { front: C }),
      photo(3, { hash: D, part: "saddle" }),
    ];
    expect([...photosNamed(shopOf(lines)).hashes].sort()).toEqual([A, B, C, D]);
  });
});
