import { expect, test } from "vitest";
import { DEMO, shopOf } from "../test-shop.ts";
import { type BestGiven, bestSetups } from "./best-setups.ts";

const ASKED: BestGiven = { bike: "bramble", place: null, from: "sold", safe: true, countMinutes: false };

async function best(given: Partial<BestGiven> = {}) {
  const answer = await bestSetups(shopOf(DEMO), { ...ASKED, ...given });
  if (!answer?.ok) throw new Error(answer?.detail ?? "stopped");
  return answer.value;
}

const numberOf = (main: { readonly part: { readonly number: number } | null }): number => main.part!.number;

test("twenty setups, best first, each safe at full throttle", async () => {
  const { list, size, present } = await best();
  expect(list).toHaveLength(20);
  expect(size).toBeGreaterThan(2000);
  expect(list.map(({ trouble }) => trouble)).toEqual(
    list.map(({ trouble }) => trouble).sort((a, b) => a - b),
  );
  for (const { top, title, changes } of list) {
    expect(top).toBe("free");
    expect(title === "").toBe(changes.length === 0);
  }
  expect(present.changes).toEqual([]);
  expect(present.minutes).toBe(0);
});

test("higher up in the warm a smaller main jet is best, and what is fitted runs richer", async () => {
  const low = await best({ place: { heightM: 0, celsius: 0 } });
  const high = await best({ place: { heightM: 2500, celsius: 30 } });
  const main = (list: typeof low.list) => numberOf(list[0]!.situation.setup.main);
  expect(main(high.list)).toBeLessThan(main(low.list));
  for (let i = 0; i < low.present.mixture.length; i++) {
    expect(high.present.mixture[i]!.mean).toBeGreaterThan(low.present.mixture[i]!.mean);
  }
});

test("only what is owned: nothing to buy; what can be bought is no worse", async () => {
  const owned = await best({ from: "drawer", safe: false });
  const sold = await best({ safe: false });
  expect(owned.list.flatMap(({ changes }) => changes).every(({ inDrawer }) => inDrawer)).toBe(true);
  expect(sold.list[0]!.trouble).toBeLessThanOrEqual(owned.list[0]!.trouble);
  expect(sold.size).toBeGreaterThan(owned.size);
});

test("with the minutes counted the list saves work", async () => {
  const [run, work] = [await best({ safe: false }), await best({ safe: false, countMinutes: true })];
  const mean = (list: typeof run.list) => list.reduce((sum, { minutes }) => sum + minutes, 0) / list.length;
  expect(mean(work.list)).toBeLessThan(mean(run.list));
  const totals = work.list.map(({ trouble, minutes }) => trouble + minutes);
  expect(totals).toEqual([...totals].sort((a, b) => a - b));
});

test("air that cannot be is refused with what to mend", async () => {
  const answer = await bestSetups(shopOf(DEMO), { ...ASKED, place: { heightM: 90_000, celsius: 10 } });
  expect(answer).toMatchObject({ ok: false });
});

test("a bike nobody described is refused", async () => {
  expect(await bestSetups(shopOf(DEMO), { ...ASKED, bike: "nobody" })).toMatchObject({ ok: false });
});
