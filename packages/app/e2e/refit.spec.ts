import { openShop } from "./example-shop.ts";
import { expect, test } from "./quiet-test.ts";

// The way back to the log: what was fitted by hand shows on the bike's page and in its history, and on the next sheet.

test("a part written down as fitted stands on the bike, in its history and on its sheet", async ({
  page,
}) => {
  await openShop(page);
  await page.goto("/#/bike/bramble/fitted/pilot");
  await page.getByRole("textbox", { name: "Number on the jet" }).fill("42");
  await page.getByRole("radio", { name: /^I changed it just now/ }).check();
  await page.getByRole("button", { name: "Keep it", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Fitted" })).toBeVisible();
  for (const screen of ["", "/sheet"]) {
    await page.goto(`/#/bike/bramble${screen}`);
    await expect(page.getByText(/^42 \(/).first()).toBeVisible();
  }
  await page.goto("/#/bike/bramble/history");
  await expect(
    page
      .locator("ol.story")
      .getByText(/pilot.*42/i)
      .first(),
  ).toBeVisible();
});

test("a jet fitted from the drawer is one less there, the one that came off one more, and the other way round", async ({
  page,
}) => {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible({ timeout: 20_000 });
  await page.goto("/#/drawer");
  // Each bored pilot jet of the example, and how many of it.
  const count = (number: number) =>
    page
      .locator("section", { has: page.getByRole("heading", { name: "Pilot jets" }) })
      .filter({ hasText: "bore numbers" })
      .locator("li", { has: page.getByText(String(number), { exact: true }) })
      .locator("output");
  await expect(count(42)).toHaveText("1");
  const fitPilot = async (number: number) => {
    await page.goto("/#/bike/bramble/fitted/pilot");
    await page.getByRole("textbox", { name: "Number on the jet" }).fill(String(number));
    await expect(page.getByRole("checkbox", { name: "It came from the drawer" })).toBeChecked();
    await expect(page.getByRole("checkbox", { name: "What came out goes into the drawer" })).toBeChecked();
    await page.getByRole("button", { name: "Keep it", exact: true }).click();
    await expect(page.getByRole("heading", { name: "Fitted" })).toBeVisible();
    await page.goto("/#/drawer");
  };
  await fitPilot(42);
  await expect(count(42)).toHaveText("0");
  await expect(count(45)).toHaveText("1");
  await fitPilot(45);
  await expect(count(42)).toHaveText("1");
  await expect(count(45)).toHaveText("0");
});
