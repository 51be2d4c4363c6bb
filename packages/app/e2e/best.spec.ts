import { expect, type Page, test } from "@playwright/test";
import { openShop } from "./example-shop.ts";
import { longestTask } from "./task-times.ts";

// The list of best setups follows height and temperature as they are moved.

/** Processor time of the page's own. */
const LONG_TASK_MS = 50;

async function openBest(page: Page): Promise<void> {
  await openShop(page);
  await page.goto("/#/bike/bramble/best");
  await expect(page.getByRole("heading", { name: "As fitted" }).first()).toBeVisible();
}

const rows = (page: Page) => page.locator(".best-list > li");

test("the list follows the height, by keyboard, and no task holds the page up", async ({ page }) => {
  await openBest(page);
  await page.getByRole("radio", { name: "Sizes sold" }).check();
  await expect(rows(page)).toHaveCount(20);
  const height = page.getByRole("slider", { name: "Height" });
  const fitted = page.locator(".best-fitted .best-mixture");
  const atFull = async (): Promise<number> => {
    const [, percent, side] = /full: (?:(\d+) % )?(rich|lean|right)/.exec((await fitted.textContent())!)!;
    return (side === "lean" ? -1 : 1) * Number(percent ?? 0);
  };
  const there = await atFull();
  await height.focus();
  const ended = await longestTask(page);
  // Thin air is rich and thick air lean: full throttle's figure goes up and down.
  await page.keyboard.press("End");
  await expect(height).toHaveAttribute("aria-valuetext", "3500 m");
  await expect.poll(atFull).toBeGreaterThan(there + 5);
  await page.keyboard.press("Home");
  await expect(height).toHaveAttribute("aria-valuetext", "0 m");
  await expect.poll(atFull).toBeLessThanOrEqual(there);
  for (let i = 0; i < 40; i++) await page.keyboard.press("ArrowRight");
  await expect(height).toHaveAttribute("aria-valuetext", "2000 m");
  await expect.poll(atFull).toBeGreaterThan(there + 5);
  const longest = await ended();
  console.log(`measured: longest task of the page ${longest.toFixed(1)} ms of its own under the slider`);
  expect(longest).toBeLessThan(LONG_TASK_MS);
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
