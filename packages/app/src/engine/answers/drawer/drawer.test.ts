import { describe, expect, test } from "vitest";
import { DEMO, shopOf } from "../test-shop.ts";
import { drawerView } from "./drawer-view.ts";
import { jetsWanted } from "./jets-wanted.ts";
import { needleShape } from "./needle-shape.ts";
import { ridingRange } from "./riding-range.ts";

const line = (n: number, kind: string, body: object, bike?: string) => ({
  id: `r${n}`,
  kind,
  v: 1,
  at: `2026-05-01T10:${String(n).padStart(2, "0")}:00Z`,
  ...(bike === undefined ? {} : { bike }),
  body,
});
const jets = (n: number, kind: string, ...parts: object[]) => line(n, kind, { parts });
const main = (number: number, count = 1, more = {}) => ({ part: "main", number, count, ...more });

describe("the drawer", () => {
  test("jets apart by what the number means and by maker, smallest first", () => {
    const { groups } = drawerView(
      shopOf([
        jets(1, "parts-counted", main(170), main(162.5), main(160, 1, { numbering: "flow" })),
        jets(2, "parts-bought", main(160, 2, { maker: "Ours " }), main(165, 1, { maker: "ours" })),
        jets(
          3,
          "parts-bought",
          { part: "needle", marks: "N1", count: 1 },
          { part: "pilot", number: 42, count: 1 },
        ),
      ]),
      null,
    );
    expect(
      groups.map(({ part, kind, lines }) => [
        part,
        kind && `${kind.numbering} ${kind.maker}`,
        lines.map(({ key, count }) => `${key}:${count}`).join(" "),
      ]),
    ).toEqual([
      ["main", "bore ", "162.5:1 170:1"],
      ["main", "flow ", "160:1"],
      ["main", "bore Ours", "160:2 165:1"],
      ["pilot", "bore ", "42:1"],
      ["needle", null, "n1:1"],
    ]);
  });

  test("the last jet fitted twice: who took it, and who took it once more", () => {
    const fitted = (n: number, bike: string, by: object) => ({
      ...line(n, "setup-fitted", { main: { number: 170 }, drawer: { took: [main(170)] } }, bike),
      by,
    });
    const { short, groups } = drawerView(
      shopOf([
        jets(1, "parts-counted", main(170)),
        line(2, "bike-described", { name: "Fern" }, "fern"),
        fitted(3, "fern", { person: "Ada" }),
        fitted(4, "moss", {}),
      ]),
      null,
    );
    expect(groups[0]!.lines[0]!.count).toBe(0);
    expect(short).toEqual([
      {
        part: expect.objectContaining({ part: "main", number: 170 }),
        taken: { bike: "moss", by: null, at: Date.parse("2026-05-01T10:04:00Z") },
        lastTaken: { bike: "Fern", by: "Ada", at: Date.parse("2026-05-01T10:03:00Z") },
      },
    ]);
  });

  test("the next sizes sold, how much hole they are, and whether they are here", () => {
    const { groups } = drawerView(shopOf([jets(1, "parts-counted", main(170), main(172.5, 3))]), null);
    const [small, big] = groups[0]!.lines;
    // Area goes with the square of the bore: (172.5/170)^2 = 1.0296.
    expect(small!.up).toEqual({ number: 172.5, percent: expect.closeTo(2.963, 2), owned: 3 });
    expect(small!.down).toMatchObject({ number: 167.5, owned: 0 });
    expect(small!.down!.percent).toBeLessThan(0);
    expect(big!.down).toMatchObject({ number: 170, owned: 1 });
  });

  test("one in and one out add up whatever the order, and striking one takes it back", () => {
    const lines = [
      jets(1, "parts-counted", main(170, 2)),
      jets(2, "parts-bought", main(170)),
      jets(3, "parts-bought", main(170)),
      jets(4, "parts-used", main(170)),
    ];
    const count = (...more: object[]) =>
      drawerView(shopOf([...lines, ...more]), null).groups[0]!.lines[0]!.count;
    expect(count()).toBe(3);
    expect(count(line(5, "record-struck", { record: "r3" }))).toBe(2);
  });

  test("offers the kinds of jets on the bikes as well", () => {
    const { kinds, groups } = drawerView(
      shopOf([line(1, "setup-fitted", { main: { number: 150, numbering: "flow", maker: "Ours" } }, "fern")]),
      null,
    );
    expect(groups).toEqual([]);
    expect(kinds).toEqual([{ numbering: "flow", maker: "Ours" }]);
  });
});

describe("where the shop rides", () => {
  test("from airs, reports, barometers and places, rounded outward; what is struck does not count", () => {
    const air = (n: number, body: object) => line(n, "air-measured", body, "fern");
    const shop = shopOf([
      line(1, "bike-described", { name: "Fern", place: { name: "Hollin", heightM: 630 } }, "fern"),
      air(2, { temperatureC: 11, heightM: 120 }),
      air(3, { report: "METAR XSKP 160720Z 28006KT 9999 27/02 Q1019", heightM: 500 }),
      air(4, { temperatureC: 40, heightM: 4000 }),
      line(5, "record-struck", { record: "r4" }),
    ]);
    expect(ridingRange(shop, null)).toEqual({
      ok: true,
      value: { lowestM: 100, highestM: 700, coldestC: 5, hottestC: 30 },
    });
    // ISO 2533:1975 [from memory]: 794.95 hPa at 2000 m; 797 hPa is some 20 m lower.
    expect(ridingRange(shopOf([air(1, { temperatureC: 2, stationPressureHpa: 797 })]), null)).toMatchObject({
      value: { highestM: 2000, coldestC: -5, hottestC: 5 },
    });
  });

  test("an empty log says what to type", () => {
    expect(ridingRange(shopOf([]), null)).toMatchObject({ ok: false, reason: "nothing-noted" });
  });
});

describe("what to buy", () => {
  const RANGE = { lowestM: 0, highestM: 2000, coldestC: 0, hottestC: 30 };
  const BARE = [
    line(
      1,
      "bike-described",
      { name: "Fern", engine: { strokes: 2 }, carburetor: { bore: { shape: "round", diameterMm: 36 } } },
      "fern",
    ),
    line(2, "setup-fitted", { main: { number: 170 }, screw: { turnsOut: 1.5 }, asFound: true }, "fern"),
    line(3, "air-measured", { temperatureC: 15, stationPressureHpa: 1013, heightM: 0 }, "fern"),
  ];
  const wanted = (lines: readonly object[], range = RANGE) => {
    const made = jetsWanted(shopOf(lines), { range });
    if (!made.ok) throw new Error(made.detail);
    return made.value;
  };

  test("each jet with the bike, heights and temperatures it is for; the fitted jet serves its own", () => {
    const { kinds, leftOut } = wanted(BARE);
    const [mains] = kinds;
    expect(kinds).toHaveLength(1);
    expect(mains!.fields).toBe(5 * 4);
    expect(mains!.served).toBeGreaterThan(2);
    expect(mains!.buy.length).toBeGreaterThan(1);
    const fields = mains!.buy.flatMap((jet) => jet.for).reduce((sum, one) => sum + one.fields, 0);
    expect(fields + mains!.served).toBe(20);
    const [smallest] = mains!.buy;
    expect(smallest!.for[0]).toMatchObject({
      bike: "Fern",
      heightM: { to: 2000 },
      celsius: { to: expect.closeTo(30, 6) },
    });
    expect(leftOut).toEqual([{ bike: "Fern", why: expect.stringContaining("pilot") }]);
  });

  test("what was bought need not be bought again", () => {
    const { buy } = wanted(BARE).kinds[0]!;
    const bought = jets(4, "parts-bought", ...buy.map(({ number }) => main(number)));
    expect(wanted([...BARE, bought]).kinds[0]).toMatchObject({ buy: [], served: 20 });
    const other = jets(4, "parts-bought", ...buy.map(({ number }) => main(number, 1, { maker: "Else" })));
    expect(wanted([...BARE, other]).kinds[0]!.buy).toEqual(buy);
  });

  test("where it stands there is nothing to buy", () => {
    expect(wanted(BARE, { lowestM: 0, highestM: 0, coldestC: 15, hottestC: 15 }).kinds[0]!.buy).toEqual([]);
  });

  test("a bike put away asks for nothing", () => {
    expect(wanted([...BARE, line(4, "bike-put-away", { away: true }, "fern")])).toEqual({
      kinds: [],
      leftOut: [],
    });
  });

  test("upside down is refused, and so are heights without air", () => {
    const refused = (range: typeof RANGE) => jetsWanted(shopOf(BARE), { range });
    expect(refused({ ...RANGE, lowestM: 3000 }).ok).toBe(false);
    expect(refused({ ...RANGE, coldestC: 31 }).ok).toBe(false);
    expect(wanted(BARE, { ...RANGE, highestM: 9000 }).leftOut[0]!.why).toContain("-500 to 6000 m");
  });

  test("the example shop: every kind of jet on its bikes, none named twice", () => {
    const { kinds } = wanted(DEMO.map((one) => JSON.parse(one)));
    const keys = kinds.map(({ place, numbering, maker }) => `${place} ${numbering} ${maker}`);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { owned, buy } of kinds) {
      const numbers = buy.map(({ number }) => number);
      expect(new Set(numbers).size).toBe(numbers.length);
      expect(numbers.some((number) => owned.includes(number))).toBe(false);
    }
    expect(keys).toContain("main bore ");
    expect(keys).toContain("main flow ");
  });
});

describe("a needle", () => {
  const readings = (...pairs: readonly (readonly [number, number])[]) =>
    needleShape(shopOf([]), {
      points: pairs.map(([belowTopGrooveMm, diameterMm]) => ({ belowTopGrooveMm, diameterMm })),
    });
  const taper = (below: number): number =>
    2.52 - Math.max(0, below - 30) * 2 * Math.tan((Math.PI / 180) * 0.75);
  const at = (...belows: number[]) => belows.map((x) => [x, Number(taper(x).toFixed(3))] as const);

  test("a straight part and a taper of 1.5 degrees", () => {
    const shape = readings(...at(10, 15, 20, 25, 28, 32, 36, 40, 44, 48));
    if (!shape.ok) throw new Error(shape.detail);
    expect(shape.value.straightMm).toBeCloseTo(2.52, 2);
    expect(shape.value.tapers).toHaveLength(1);
    expect(shape.value.tapers[0]!.startMm).toBeCloseTo(30, 0);
    expect(shape.value.tapers[0]!.degrees).toBeCloseTo(1.5, 1);
    expect(shape.value.line[0]).toMatchObject({ belowTopGrooveMm: 0 });
    expect(shape.value.line.at(-1)!.belowTopGrooveMm).toBe(48);
    expect(shape.value.line.at(-1)!.diameterMm).toBeCloseTo(taper(48), 2);
  });

  test("a slip of the pen is named, with what the others say", () => {
    const shape = readings(...at(10, 15, 20, 25, 28, 32), [36, 2.263], ...at(40, 44, 48));
    if (!shape.ok) throw new Error(shape.detail);
    expect(shape.value.doubtful).toEqual([
      { belowTopGrooveMm: 36, diameterMm: 2.263, expectedMm: expect.closeTo(taper(36), 2) },
    ]);
    expect(shape.value.remarks.join(" ")).toContain("36.0 mm was left out");
  });

  test("too few and upside down are refused in plain words", () => {
    const few = readings(...at(10, 20, 40));
    expect(few.ok ? "" : few.detail).toContain("5 are the least");
    const fromTip = readings([10, 2.0], [15, 2.1], [20, 2.2], [25, 2.3], [30, 2.4], [35, 2.5]);
    expect(fromTip.ok ? "" : fromTip.reason).toBe("gets thicker");
  });
});
