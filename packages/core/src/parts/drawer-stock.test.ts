import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromMillimetre as mm } from "../units/convert.ts";
import { type Drawer, EMPTY_DRAWER } from "./drawer.ts";
import { addPart, countPart, howMany, nextOwned, sizesOwned, usePart } from "./drawer-stock.ts";
import type { Jet } from "./jet.ts";
import type { Needle } from "./needle.ts";

const jet = (number: number, maker = "Nadel"): Jet => ({ number, numbering: "bore", maker });
const needle = (marks: string, profile: Needle["profile"] = null): Needle => ({
  marks,
  grooves: 5,
  groovePitch: mm(0.9),
  profile,
});
const shape = { straightDiameter: mm(2.5), tapers: [], diameterSd: mm(0.003) };

test("adding, using and counting agree with a plain tally", () => {
  const act = fc.record({
    what: fc.constantFrom("add", "use", "count"),
    number: fc.constantFrom(170, 172.5, 175),
    n: fc.integer({ min: 1, max: 4 }),
  });
  fc.assert(
    fc.property(fc.array(act, { maxLength: 25 }), (acts) => {
      let drawer: Drawer = EMPTY_DRAWER;
      const tally = new Map<number, number>();
      for (const { what, number, n } of acts) {
        const had = tally.get(number);
        if (what === "add") {
          drawer = addPart(drawer, "mains", jet(number), n);
          tally.set(number, (had ?? 0) + n);
        } else if (what === "count") {
          const counted = countPart(drawer, "mains", jet(number), n - 1);
          if (counted.ok) drawer = counted.value;
          tally.set(number, n - 1);
        } else {
          const used = usePart(drawer, "mains", jet(number));
          if (had === undefined) expect(used).toMatchObject({ reason: "not owned" });
          else if (had === 0) expect(used).toMatchObject({ reason: "none left" });
          else tally.set(number, had - 1);
          if (used.ok) drawer = used.value;
        }
      }
      for (const [number, count] of tally) expect(howMany(drawer, "mains", jet(number))).toBe(count);
      expect(drawer.mains).toHaveLength(tally.size);
      expect(drawer.pilots).toEqual([]);
      const left = [...tally].filter(([, count]) => count > 0).map(([number]) => number);
      expect(sizesOwned(drawer, "mains", { numbering: "bore", maker: "nadel" })).toEqual(
        left.sort((a, b) => a - b),
      );
    }),
    { seed: 21, numRuns: 100 },
  );
});

test("adding one at a time when no count is given; odd counts are bugs or refused", () => {
  const one = addPart(EMPTY_DRAWER, "pilots", jet(42));
  expect(howMany(one, "pilots", jet(42))).toBe(1);
  expect(howMany(one, "mains", jet(42))).toBe(0);
  for (const count of [0, -1, 1.5]) expect(() => addPart(one, "pilots", jet(42), count)).toThrow(RangeError);
  for (const count of [-1, 0.5, Number.NaN]) {
    expect(countPart(one, "pilots", jet(42), count)).toMatchObject({ ok: false, reason: "count" });
  }
});

test("the refusal names the part", () => {
  expect(usePart(EMPTY_DRAWER, "mains", jet(175))).toMatchObject({
    detail: expect.stringMatching(/jet 175/),
  });
  expect(usePart(EMPTY_DRAWER, "needleJets", mm(2.7))).toMatchObject({
    detail: expect.stringMatching(/2.7 mm/),
  });
  expect(usePart(EMPTY_DRAWER, "needles", needle("N3"))).toMatchObject({
    detail: expect.stringMatching(/needle N3/),
  });
  expect(usePart(EMPTY_DRAWER, "needles", needle(" "))).toMatchObject({
    detail: expect.stringMatching(/without marks/),
  });
});

test("sizes of other makers, other numberings and used-up jets are left out", () => {
  let drawer = addPart(EMPTY_DRAWER, "mains", jet(180));
  drawer = addPart(drawer, "mains", jet(170, "Quell"));
  drawer = addPart(drawer, "mains", { ...jet(172), numbering: "flow" });
  drawer = addPart(drawer, "mains", jet(165));
  const used = usePart(drawer, "mains", jet(165));
  expect(used.ok && sizesOwned(used.value, "mains", jet(0))).toEqual([180]);
});

describe("the next owned jet", () => {
  const drawer = [165, 180, 172.5].reduce<Drawer>((so, n) => addPart(so, "mains", jet(n)), EMPTY_DRAWER);

  test("richer is the next larger, leaner the next smaller, never itself", () => {
    expect(nextOwned(drawer, "mains", jet(172.5), "richer")).toMatchObject({ value: jet(180) });
    expect(nextOwned(drawer, "mains", jet(172.5), "leaner")).toMatchObject({ value: jet(165) });
    expect(nextOwned(drawer, "mains", jet(170), "richer")).toMatchObject({ value: jet(172.5) });
    expect(nextOwned(drawer, "mains", jet(190), "leaner")).toMatchObject({ value: jet(180) });
  });

  test("refused with what is there", () => {
    expect(nextOwned(drawer, "mains", jet(180), "richer")).toMatchObject({
      reason: "not owned",
      detail: expect.stringMatching(/165, 172.5, 180.*larger/),
    });
    expect(nextOwned(drawer, "mains", jet(165), "leaner")).toMatchObject({
      detail: expect.stringMatching(/smaller/),
    });
    expect(nextOwned(drawer, "pilots", jet(42), "richer")).toMatchObject({
      detail: expect.stringMatching(/none of its kind/),
    });
    expect(nextOwned(drawer, "mains", jet(170, "Quell"), "richer")).toMatchObject({ ok: false });
  });
});

describe("which parts are the same", () => {
  test("bores and cutaways within a thousandth of a millimetre", () => {
    const drawer = addPart(EMPTY_DRAWER, "needleJets", mm(2.7));
    expect(howMany(drawer, "needleJets", mm(2.7004))).toBe(1);
    expect(howMany(drawer, "needleJets", mm(2.7015))).toBe(0);
    expect(howMany(addPart(drawer, "slides", mm(3.5)), "slides", mm(3.5))).toBe(1);
  });

  test("needles by marks, grooves and pitch; a measured shape is kept", () => {
    let drawer = addPart(EMPTY_DRAWER, "needles", needle("N3"));
    drawer = addPart(drawer, "needles", needle("n3 ", shape));
    drawer = addPart(drawer, "needles", needle("N3"));
    expect(drawer.needles).toEqual([{ part: needle("n3 ", shape), count: 3 }]);
    expect(howMany(drawer, "needles", { ...needle("N3"), grooves: 4 })).toBe(0);
    expect(howMany(drawer, "needles", { ...needle("N3"), groovePitch: mm(1) })).toBe(0);
    expect(howMany(drawer, "needles", needle("N4"))).toBe(0);
  });

  test("needles without marks only by their shape", () => {
    const drawer = addPart(EMPTY_DRAWER, "needles", needle("", shape));
    expect(howMany(drawer, "needles", needle("", { ...shape }))).toBe(1);
    expect(howMany(drawer, "needles", needle("", { ...shape, straightDiameter: mm(2.6) }))).toBe(0);
    expect(howMany(drawer, "needles", needle(""))).toBe(0);
  });
});
