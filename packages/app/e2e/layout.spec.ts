import { expect, test } from "@playwright/test";
import { openShop } from "./example-shop.ts";

// Where things stand on the screen: nothing jumps, nothing is cut, nothing hides under the bar.

test("the bike page does not jump while its answers come", async ({ page }) => {
  await openShop(page);
  await page.evaluate(() => {
    const shifts = { sum: 0 };
    Object.assign(window, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & { value: number })[]) {
        shifts.sum += entry.value;
      }
    }).observe({ type: "layout-shift" });
  });
  // Without a finger, so that a shift just after it counts like any other.
  await page.evaluate(() => {
    location.hash = "#/bike/bramble";
  });
  await expect(page.locator("svg.picture").first()).toBeVisible();
  await expect(page.getByRole("link", { name: "Show me how" })).toBeVisible();
  await page.waitForTimeout(500);
  const sum = await page.evaluate(() => (window as unknown as { shifts: { sum: number } }).shifts.sum);
  console.log(`measured: layout shift of the bike page ${sum.toFixed(3)}`);
  // 0.1: the limit of "good" of the web's layout-shift figure, from memory.
  expect(sum).toBeLessThan(0.1);
});

test("the first page of a ride report shows every answer above the bar", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/bike/bramble/report");
  const last = page.locator("ul.signs button.it").filter({ hasText: "Could not tell" });
  await expect(last).toBeVisible();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  const [answer, bar] = await Promise.all([last.boundingBox(), page.locator("nav.bar").boundingBox()]);
  expect(answer!.y + answer!.height).toBeLessThanOrEqual(bar!.y);
});

for (const [screen, table] of [
  ["chart", "table.height-chart"],
  ["sheet", "table.sheet-chart"],
] as const) {
  test(`every column of the chart fits on the screen: ${screen}`, async ({ page }) => {
    await openShop(page);
    await page.goto(`/#/bike/bramble/${screen}`);
    const chart = page.locator(table);
    await expect(chart).toBeVisible();
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    const cut = await chart.evaluate((each) => {
      const room = each.parentElement!;
      return room.scrollWidth - room.clientWidth;
    });
    expect(cut).toBeLessThanOrEqual(0);
  });
}

test("a record counted again leaves one line that says so", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/bike/bramble/history");
  const lines = page.locator("ol.story > li.story-line");
  await expect(lines.first()).toBeVisible();
  const before = await lines.count();
  await page
    .getByRole("button", { name: /^Strike this as a mistake: / })
    .first()
    .click();
  await expect(lines).toHaveCount(before + 1);
  await page.getByRole("button", { name: "Count it again" }).click();
  await expect(page.getByText("It counts again.")).toBeVisible();
  await expect(page.getByRole("button", { name: "Count it again" })).toHaveCount(0);
  await expect(lines).toHaveCount(before + 1);
});
