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
