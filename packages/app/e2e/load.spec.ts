import { openShop } from "./example-shop.ts";
import { leastOf } from "./least-of.ts";
import { type Browser, expect, type Page, test } from "./quiet-test.ts";
import { longestTask } from "./task-times.ts";

// Opened on a slow network and a slow processor, and kept smooth with a long log. The figures are printed; the limits
// stand where a machine shared with other work still holds them.

/** A phone on a poor connection: 1.6 Mbit/s, 150 ms there and back, processor slowed four times. */
const SLOW = { bytesPerSecond: 200_000, latency: 150, cpu: 4 };
/** The aim is 1500 ms, which it meets with other work beside it; the limit is for a machine that has a great deal. */
const FIRST_SCREEN_LIMIT_MS = 3000;
/** Processor time of the page's own. The aim is 100 ms on a phone, which is some six times slower. */
const LONG_TASK_MS = 50;
const RECORDS = 1000;

/** Notes in the page's own time when its first screen is drawn: the two ways to begin, or the bikes. */
const noteFirstScreen = (page: Page) =>
  page.addInitScript(() => {
    const look = () => {
      if (document.querySelector("#app main button, #app main li a") === null) requestAnimationFrame(look);
      else requestAnimationFrame(() => Object.assign(window, { drawnAt: performance.now() }));
    };
    look();
  });

const firstScreen = async (page: Page): Promise<number> => {
  const drawn = await page.waitForFunction(() => (window as { drawnAt?: number }).drawnAt);
  return Math.round(Number(await drawn.jsonValue()));
};

/** Both times of one device that was never here before. */
async function firstScreens(browser: Browser): Promise<{ readonly first: number; readonly again: number }> {
  const page = await browser.newPage();
  await noteFirstScreen(page);
  const session = await page.context().newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", {
    offline: false,
    latency: SLOW.latency,
    downloadThroughput: SLOW.bytesPerSecond,
    uploadThroughput: SLOW.bytesPerSecond,
  });
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOW.cpu });
  await page.goto("/");
  const first = await firstScreen(page);
  await page.getByText("Look at an example shop").click();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  const again = await firstScreen(page);
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
  await page.close();
  return { first, again };
}

test("the bike list is drawn soon on a slow phone, at once the second time", async ({ browser }) => {
  const slower = await leastOf(FIRST_SCREEN_LIMIT_MS, async () => {
    const { first, again } = await firstScreens(browser);
    console.log(`measured: first screen after ${first} ms on a first visit, ${again} ms on the second`);
    return Math.max(first, again);
  });
  expect(slower).toBeLessThanOrEqual(FIRST_SCREEN_LIMIT_MS);
});

test(`advice with ${RECORDS} records in the log leaves the page free`, async ({ page }) => {
  await openShop(page);
  await page.evaluate(async (wanted) => {
    const { jetwright } = window as unknown as {
      jetwright: { store: { count(): Promise<number> }; keep(...drafts: object[]): Promise<{ ok: boolean }> };
    };
    const rides = Array.from({ length: wanted - (await jetwright.store.count()) }, (_, i) => ({
      kind: "ride-reported",
      bike: "bramble",
      body: { reports: [{ sign: i % 3 === 0 ? "stumbles-with-smoke" : "pulls-smoothly", opening: "1/8" }] },
      at: Date.now() - 1000 * (wanted - i),
    }));
    if (!(await jetwright.keep(...rides)).ok) throw new Error("not kept");
  }, RECORDS);
  await page.reload();
  const bike = page.getByRole("link", { name: /Bramble 250/ });
  await expect(bike).toBeVisible();
  const ended = await longestTask(page);
  const asked = Date.now();
  await bike.click();
  await expect(page.getByRole("link", { name: "Show me how" })).toBeVisible();
  const took = Date.now() - asked;
  const longest = await ended();
  console.log(
    `measured: longest task of the page ${longest.toFixed(1)} ms of its own; advice with ${RECORDS} records in ${took} ms`,
  );
  expect(longest).toBeLessThan(LONG_TASK_MS);
});
