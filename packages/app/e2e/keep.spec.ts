import { readFileSync } from "node:fs";
import { join } from "node:path";
import { openShop } from "./example-shop.ts";
import { expect, test } from "./quiet-test.ts";

// What is written down: out of the app and in again, struck, and seen in another tab.

const SHOP_FILE = join(import.meta.dirname, "../../../demo/shop.jsonl");
const SHOP_LINES = readFileSync(SHOP_FILE, "utf8").split("\n").filter(Boolean);

/** The records of these lines; the order of lines and of keys within one means nothing. */
const byId = (lines: readonly string[]): ReadonlyMap<string, unknown> =>
  new Map(lines.map((line) => JSON.parse(line) as { id: string }).map((record) => [record.id, record]));

test("the example shop goes in one tap and leaves what was written since", async ({ page }) => {
  await openShop(page);
  const count = () =>
    page.evaluate(() =>
      (window as unknown as { jetwright: { store: { count(): Promise<number> } } }).jetwright.store.count(),
    );
  await page.getByRole("button", { name: "Take it away" }).click();
  await expect(page.getByText("Look at an example shop")).toBeVisible();
  expect(await count()).toBe(0);

  await page.getByText("Look at an example shop").click();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
  await page.evaluate(() =>
    (window as unknown as { jetwright: { keep(...drafts: object[]): Promise<object> } }).jetwright.keep(
      { kind: "note", bike: "bramble", body: { text: "Mine" } },
      { kind: "note", bike: "own", body: { text: "Mine too" } },
    ),
  );
  const before = await count();
  await page.goto("/#/more");
  await page.getByRole("button", { name: "Take the example shop away" }).click();
  await expect(page.getByText("Gone, but for the example bikes you wrote about")).toBeVisible();
  await expect(page.getByRole("button", { name: "Take the example shop away" })).toHaveCount(0);
  const after = await count();
  expect(after).toBeLessThan(before);
  await page.goto("/#/");
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
  await expect(page.getByRole("link", { name: /Heron/ })).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
  expect(await count()).toBe(after);
});

test("a log file is taken in whole, and its copy carries every record of it", async ({ page }) => {
  await page.goto("/#/backup");
  await page.getByLabel("Choose a file").setInputFiles(SHOP_FILE);
  await page.getByRole("button", { name: `Take in ${SHOP_LINES.length} records` }).click();
  await expect(page.getByText(`Kept: ${SHOP_LINES.length} records.`)).toBeVisible();
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save a copy as a file" }).click();
  const copied = readFileSync(await (await download).path(), "utf8")
    .split("\n")
    .filter(Boolean);
  expect(byId(copied)).toEqual(byId(SHOP_LINES));
});

test("a file that is not ours gets a sentence, and nothing is lost", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/backup");
  const count = page.getByText(/^\d+ records on this device\.$/);
  await expect(count).toBeVisible();
  const before = await count.textContent();
  for (const [name, text] of [
    ["letter.txt", "Dear all,\nthe bike runs well.\n"],
    ["shop.json", '{"sold": 3}'],
    ["broken.jsonl", '{"id":"a1","kind":"ride-rep'],
  ] as const) {
    await page
      .getByLabel("Choose a file")
      .setInputFiles({ name, mimeType: "text/plain", buffer: Buffer.from(text) });
    await expect(page.getByText(`“${name}”`)).toBeVisible();
    await expect(page.getByRole("button", { name: /^Take in/ })).toHaveCount(0);
    const leave = page.getByRole("button", { name: "Leave it" });
    if (await leave.isVisible()) await leave.click();
  }
  expect(await count.textContent()).toBe(before);
  await page.goto("/#/");
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
});

test("a mistake is struck, stays readable, and counts again when asked", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/bike/bramble/history");
  const strike = page.getByRole("button", { name: /^Strike this as a mistake: / }).first();
  const words = (await strike.getAttribute("aria-label"))!.replace("Strike this as a mistake: ", "");
  const countable = page.getByRole("button", { name: `Strike this as a mistake: ${words}`, exact: true });
  const before = await countable.count();
  await expect(page.locator("s")).toHaveCount(0);
  await strike.click();
  await expect(page.locator("s")).toHaveCount(1);
  await expect(page.locator("s")).toHaveText(words);
  await expect(countable).toHaveCount(before - 1);
  await page.reload();
  await expect(page.locator("s")).toHaveText(words);
  await page.getByRole("button", { name: "Count it again" }).click();
  await expect(countable).toHaveCount(before);
});

test("what one tab keeps, the other shows without a reload", async ({ page, context }) => {
  await openShop(page);
  const other = await context.newPage();
  await other.goto("/#/bike/bramble/history");
  await expect(other.getByRole("heading", { name: "Everything written down" })).toBeVisible();
  await page.goto("/#/bike/bramble/history");
  await page
    .getByRole("button", { name: /^Strike this as a mistake: / })
    .first()
    .click();
  await expect(other.locator("s")).toHaveCount(1);
});
