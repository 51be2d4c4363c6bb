import { describe, expect, test } from "vitest";
import everyKind from "../../../../records/fixtures/version-1/every-kind.jsonl?raw";
import { compared } from "./compared.ts";
import { historyOf } from "./history.ts";
import { takeBack } from "./take-back.ts";
import { DEMO, linesOf, shopOf } from "./test-shop.ts";

const EVERY_KIND = linesOf(everyKind);

const at = (minute: number): string => `2026-05-01T10:${String(minute).padStart(2, "0")}:00Z`;
const two = [
  {
    id: "d",
    kind: "bike-described",
    v: 1,
    at: at(0),
    bike: "b",
    body: { engine: { strokes: 2, displacementCc: 249 } },
  },
  {
    id: "f1",
    kind: "setup-fitted",
    v: 1,
    at: at(1),
    bike: "b",
    body: { main: { number: 175, how: "measured" }, pilot: { number: 42 }, asFound: true },
  },
  {
    id: "f2",
    kind: "setup-fitted",
    v: 1,
    at: at(2),
    bike: "b",
    body: { main: { number: 170, how: "measured" } },
  },
];
const english = { bike: "b", language: "en" };

describe("history", () => {
  test("tells every record of the bike, newest first, struck ones and strikes among them", () => {
    const history = historyOf(shopOf(EVERY_KIND), { bike: "bramble", language: "en" })!;
    const ids = history.lines.map(({ id }) => id);
    expect(ids[0]).toBe("k29");
    expect(ids).toContain("k23");
    const struck = history.lines.find(({ id }) => id === "k22")!;
    expect(struck.struck).toEqual({ id: "k23", why: "wrong bike" });
    expect(history.lines.find(({ id }) => id === "k01")!.by).toBe("Ada");
    expect(ids).not.toContain("k12");
    expect([...history.lines].map((line) => line.at)).toEqual(
      [...history.lines].map((line) => line.at).sort((a, b) => b - a),
    );
  });

  test("keeps another bike's records out and the whole shop's fuel in", () => {
    const state = shopOf(DEMO);
    const history = historyOf(state, { bike: "sorrel", language: "en" })!;
    const mine = state.entries.filter(({ bike }) => bike === "sorrel").length;
    expect(history.lines.filter(({ shop }) => !shop).length).toBe(mine);
    expect(history.lines.some(({ id, shop }) => id === "shop-02" && shop)).toBe(true);
  });

  test("a record of a newer version stands in it as kept and not used", () => {
    const history = historyOf(
      shopOf([...two, { id: "n", kind: "note", v: 7, at: at(9), bike: "b", body: {} }]),
      english,
    )!;
    expect(history.lines[0]).toMatchObject({ id: "n", used: false });
  });

  test("is null for a bike nobody wrote about", () => {
    expect(historyOf(shopOf(DEMO), { bike: "nobody", language: "en" })).toBeNull();
  });

  test("lists the setups with the one fitted now", () => {
    const { setups } = historyOf(shopOf(two), english)!;
    expect(setups.map(({ record, now }) => [record, now])).toEqual([
      ["as-found", false],
      ["f2", true],
    ]);
    expect(setups[0]!.words).toContain("main jet 175");
  });
});

describe("two setups", () => {
  test("a main jet 170 after 175 is leaner at full by its area, and hardly at idle", () => {
    const result = compared(shopOf(two), { bike: "b", from: "as-found", to: "f2", air: "same" });
    if (!result.ok) throw new Error(result.detail);
    const { at: rows, changes } = result.value;
    expect(rows.map(({ opening }) => opening)).toEqual(["closed", "1/8", "1/4", "1/2", "3/4", "full"]);
    // Flow through a jet goes with its area: (170/175)² is 5.6 % less. Textbook orifice; common practice, no source.
    const full = rows[5]!;
    expect(full.percent).toBeLessThan(-3);
    expect(full.percent).toBeGreaterThan(-5.7);
    expect(full.by).toBe("main");
    expect(Math.abs(rows[0]!.percent)).toBeLessThan(0.1);
    expect(changes).toHaveLength(1);
    expect(changes[0]!.from).toContain("175");
  });

  test("the other way round is richer by as much, and the same one twice is nothing", () => {
    const state = shopOf(two);
    const [there, back, same] = [
      ["as-found", "f2"],
      ["f2", "as-found"],
      ["f2", "f2"],
    ].map(([from, to]) => compared(state, { bike: "b", from: from!, to: to!, air: "same" }));
    if (!there?.ok || !back?.ok || !same?.ok) throw new Error("refused");
    there.value.at.forEach(({ percent }, i) => {
      expect((1 + percent / 100) * (1 + back.value.at[i]!.percent / 100)).toBeCloseTo(1, 9);
    });
    expect(same.value.at.every(({ percent, by }) => percent === 0 && by === null)).toBe(true);
    expect(same.value.changes).toEqual([]);
  });

  test("each in its own air adds the weather", () => {
    const state = shopOf([
      two[0]!,
      two[1]!,
      { id: "a1", kind: "air-measured", v: 1, at: at(1), bike: "b", body: { temperatureC: 25, heightM: 0 } },
      { id: "r1", kind: "ride-reported", v: 1, at: at(2), bike: "b", body: { reports: [] } },
      {
        id: "a2",
        kind: "air-measured",
        v: 1,
        at: at(3),
        bike: "b",
        body: { temperatureC: 25, heightM: 1500 },
      },
      { id: "r2", kind: "ride-reported", v: 1, at: at(4), bike: "b", body: { reports: [] } },
    ]);
    const same = compared(state, { bike: "b", from: "r1", to: "r2", air: "same" });
    const each = compared(state, { bike: "b", from: "r1", to: "r2", air: "each" });
    if (!same.ok || !each.ok) throw new Error("refused");
    expect(same.value.at.every(({ percent }) => percent === 0)).toBe(true);
    expect(each.value.at[5]!.percent).toBeGreaterThan(5);
    expect(each.value.at[5]!.by).toBe("air");
  });

  test("refuses a record that is no setup with what there is", () => {
    expect(compared(shopOf(two), { bike: "b", from: "zz", to: "f2", air: "same" })).toMatchObject({
      ok: false,
      reason: "no-such-record",
    });
  });
});

describe("the last change taken back", () => {
  test("gives the parts as they were, and fitting them is a setup like the first", () => {
    const back = takeBack(shopOf(two), english);
    if (!back.ok) throw new Error(back.detail);
    expect(back.value.body).toMatchObject({ main: { number: 175, how: "measured" }, replaces: "f2" });
    expect(back.value.body.pilot).toBeUndefined();
    expect(back.value.changes).toEqual([{ from: "main jet 170", to: "main jet 175" }]);
    const after = shopOf([
      ...two,
      { id: "f3", kind: "setup-fitted", v: 1, at: at(3), bike: "b", body: back.value.body },
    ]);
    expect(after.log.problems).toEqual([]);
    const { setups } = after.shop.bikes.get("b")!;
    expect(setups.at(-1)!.parts).toEqual(setups[0]!.parts);
    const again = takeBack(after, english);
    expect(again.ok && again.value.changes).toEqual([{ from: "main jet 175", to: "main jet 170" }]);
  });

  test("the drawer goes back with the parts", () => {
    const [described, found, fitted] = two;
    const jet = (number: number) => ({ part: "main", number, count: 1 });
    const drawer = { took: [jet(170)], kept: [jet(175)] };
    const moved = { ...fitted!, body: { ...fitted!.body, drawer } };
    const back = takeBack(shopOf([described!, found!, moved]), english);
    expect(back.ok && back.value.body.drawer).toEqual({ took: drawer.kept, kept: drawer.took });
    const after = shopOf([
      described!,
      found!,
      moved,
      { id: "f3", kind: "setup-fitted", v: 1, at: at(3), bike: "b", body: back.ok ? back.value.body : {} },
    ]);
    expect(after.shop.drawer.map(({ count }) => count)).toEqual([1, 0]);
    const { lines } = historyOf(after, { bike: "b", language: "en" })!;
    expect(lines.find(({ id }) => id === "f2")!.words).toBe(
      "Fitted: main jet 170. Out of the drawer: 1 × main jet 170. Into the drawer: 1 × main jet 175",
    );
  });

  test("refuses where nothing was changed, or the part before was never known", () => {
    expect(takeBack(shopOf(two.slice(0, 2)), english)).toMatchObject({
      ok: false,
      reason: "nothing-changed",
    });
    const blind = [two[0]!, { ...two[2]!, id: "x" }];
    expect(takeBack(shopOf(blind), english).ok).toBe(false);
    expect(takeBack(shopOf([]), english).ok).toBe(false);
  });
});
