import { expect, type Page, test } from "@playwright/test";

// The list of best setups follows height and temperature as they are moved.

async function openBest(page: Page): Promise<void> {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible({ timeout: 20_000 });
  await page.goto("/#/bike/bramble/best");
  await expect(page.getByRole("heading", { name: "As fitted" }).first()).toBeVisible();
}

const rows = (page: Page) => page.locator(".best-list > li");

test("the list follows the height, by keyboard, and no task holds the page up", async ({ page }) => {
  await openBest(page);
  await page.getByRole("radio", { name: "Sizes sold" }).check();
  await expect(rows(page)).toHaveCount(20);
  const height = page.getByRole("slider", { name: "Height" });
  await page.evaluate(() => {
    const long: number[] = [];
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) long.push(duration);
    }).observe({ type: "longtask" });
    Object.assign(window, { long });
  });
  await height.focus();
  await page.keyboard.press("Home");
  await expect(height).toHaveAttribute("aria-valuetext", "0 m");
  const fitted = page.locator(".best-fitted .best-mixture");
  await expect(fitted).not.toHaveText("");
  await page.waitForTimeout(500);
  const low = await fitted.textContent();
  for (let i = 0; i < 40; i++) await page.keyboard.press("ArrowRight");
  await expect(height).toHaveAttribute("aria-valuetext", "2000 m");
  await expect(fitted).not.toHaveText(low!);
  // Thinner air is richer: full throttle's figure goes up.
  const atFull = (text: string): number => {
    const [, percent, side] = /full: (?:(\d+) % )?(rich|lean|right)/.exec(text)!;
    return (side === "lean" ? -1 : 1) * Number(percent ?? 0);
  };
  await expect.poll(async () => atFull((await fitted.textContent())!)).toBeGreaterThan(atFull(low!) + 5);
  const long = await page.evaluate(() => (window as unknown as { long: number[] }).long);
  expect(long.filter((milliseconds) => milliseconds > 200)).toEqual([]);
});

test("every setup says what to change, how lean the top may be, and the minutes", async ({ page }) => {
  await openBest(page);
  await page.getByRole("radio", { name: "Sizes sold" }).check();
  await expect(rows(page)).toHaveCount(20);
  const texts = await rows(page).allTextContents();
  for (const text of texts) {
    expect(text).toMatch(/Full throttle: not likely to be lean\./);
    expect(text).toMatch(/\d+ minutes, proof included|Nothing to change/);
  }
  await page.getByRole("radio", { name: "Held back" }).check();
  await expect(rows(page)).toHaveCount(20);
});

test("it is reached from the bike's page", async ({ page }) => {
  await openBest(page);
  await page.goto("/#/bike/bramble");
  await page.getByRole("link", { name: /Best setups for an air/ }).click();
  await expect(page).toHaveURL(/best/);
});
