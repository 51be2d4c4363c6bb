import { expect, test } from "vitest";
import { shopOf } from "../test-shop.ts";
import { lastHere } from "./last-here.ts";

let n = 0;
const line = (kind: string, body: object, bike: string) => {
  n++;
  const at = `2026-05-01T${String(8 + Math.floor(n / 60)).padStart(2, "0")}:${String(n % 60).padStart(2, "0")}:00Z`;
  return { id: `r${n}`, kind, v: 1, at, bike, body };
};
const bikeOf = (bike: string, name: string) =>
  line(
    "bike-described",
    {
      name,
      engine: { strokes: 2 },
      carburetor: { bore: { shape: "round", diameterMm: 36 }, jetNumbering: "bore" },
    },
    bike,
  );
const right = (bike: string, main: number, temperatureC: number, heightM: number, more: object = {}) => [
  line("setup-fitted", { main: { number: main }, pilot: { number: 42 } }, bike),
  line("air-measured", { temperatureC, heightM, ...more }, bike),
  line("known-good-marked", {}, bike),
];
const LINES = [
  bikeOf("fern", "Fern"),
  bikeOf("moss", "Moss"),
  line("fuel-used", { name: "pump 95" }, "fern"),
  ...right("fern", 172, 18, 450),
  ...right("fern", 170, 22, 500),
  ...right("fern", 165, 20, 1900),
  ...right("moss", 160, 20, 400, { place: "Hollin" }),
];
const asked = (body: object | null, lines: readonly object[] = LINES, bike = "fern") =>
  lastHere(shopOf(lines), { bike, body, at: Date.parse("2026-06-01T10:00:00Z"), language: "en" });
const ran = (body: object | null) => {
  const here = asked(body);
  if (!here.ok) throw new Error(here.detail);
  return here.value.ran;
};

test("of each bike the setup last marked right in such air, this bike first", () => {
  const here = ran({ temperatureC: 20, heightM: 450 });
  expect(here.map(({ bikeName, setup, own }) => [bikeName, setup, own])).toEqual([
    ["Fern", "pilot jet 42, main jet 170", true],
    ["Moss", "pilot jet 42, main jet 160", false],
  ]);
  expect(here[0]).toMatchObject({
    celsius: expect.closeTo(22, 9),
    heightM: 500,
    fuel: "pump 95",
    place: null,
  });
  expect(here[1]).toMatchObject({ fuel: null, place: "Hollin" });
});

test("the edges of near: 300 m and 10 degrees, and the same place by name at any height", () => {
  const names = (body: object) => ran(body).map(({ bike, heightM }) => `${bike} ${heightM}`);
  expect(names({ temperatureC: 20, heightM: 1600 })).toEqual(["fern 1900"]);
  expect(names({ temperatureC: 20, heightM: 1599 })).toEqual([]);
  expect(names({ temperatureC: 30, heightM: 1900 })).toEqual(["fern 1900"]);
  expect(names({ temperatureC: 30.1, heightM: 1900 })).toEqual([]);
  expect(names({ temperatureC: 20, heightM: 1000, place: " hollin " })).toEqual(["moss 400"]);
});

test("colder air is denser, and the same jet leaner in it by the root of that (common practice, no source)", () => {
  const [own] = ran({ temperatureC: 12, heightM: 500 });
  // Ideal gas: density goes with 1/T at one pressure; the moisture taken as usual moves it by less than 1 %.
  expect(own!.denserPercent).toBeGreaterThan(100 * (295.15 / 285.15 - 1) - 1);
  expect(own!.denserPercent).toBeLessThan(100 * (295.15 / 285.15 - 1) + 1.5);
  const root = 100 * (1 / Math.sqrt(1 + own!.denserPercent / 100) - 1);
  expect(own!.richerPercent).toBeCloseTo(root, 0);
  expect(own!.richerPercent).toBeLessThan(0);
});

test("without air given the air last noted is meant; without any it says so; bad air is refused", () => {
  expect(ran(null).map(({ bike }) => bike)).toEqual(["fern"]);
  expect(asked(null, [bikeOf("fern", "Fern")])).toMatchObject({ ok: false, reason: "no-air" });
  expect(asked({ report: "no report at all", heightM: 100 }).ok).toBe(false);
});

test("a mark made in air nobody noted is of no place", () => {
  const bare = [
    bikeOf("fern", "Fern"),
    line("setup-fitted", { main: { number: 170 } }, "fern"),
    line("known-good-marked", {}, "fern"),
  ];
  expect(asked({ temperatureC: 15, heightM: 0 }, bare)).toMatchObject({ ok: true, value: { ran: [] } });
});
