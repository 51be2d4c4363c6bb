import AxeBuilder from "@axe-core/playwright";
import { expect, test } from "@playwright/test";
import { openShop } from "./example-shop.ts";

// A bike looked over in one go: one tap a look, kept as it goes, left half-way and taken up again.

test("a bike is looked over in one go, left half-way, taken up again, and what was found comes first", async ({
  page,
}) => {
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  await openShop(page);
  await page.goto("/#/bike/old-iron/next");
  await page.getByRole("link", { name: "Look it over" }).click();
  await expect(page.getByRole("heading", { name: "Look the bike over", level: 1 })).toBeVisible();
  const answer = (what: string, look: string) =>
    page.getByRole("button", { name: `${what}: ${look}`, exact: true });
  await expect(page.getByText(/^\d+ looks to go\.$/)).toBeVisible();
  const looks = await page.locator(".looks h2").allTextContents();
  expect(looks.length).toBeGreaterThanOrEqual(4);
  await expect(page.getByText(`${looks.length} looks to go.`)).toBeVisible();

  // How it is made opens in place, by keyboard too.
  const how = page.getByText("How", { exact: true }).first();
  await how.focus();
  await page.keyboard.press("Enter");
  await expect(page.getByText("Follow every hose of the bowl", { exact: false })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);

  // One tap each; one thing taken back; one left out.
  await answer("Fine", "Check tap, cap vent and hoses").click();
  await expect(answer("Fine", "Check tap, cap vent and hoses")).toHaveAttribute("aria-pressed", "true");
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await expect(answer("Fine", "Check tap, cap vent and hoses")).toHaveAttribute("aria-pressed", "false");
  await answer("Fine", "Check tap, cap vent and hoses").click();
  await answer("Leave out", "Measure the fuel flow").click();
  await answer("Not fine", "Tap on for two minutes: does it drip?").click();
  await page.getByRole("button", { name: "a leaking float valve" }).click();
  await expect(answer("Not fine", "Tap on for two minutes: does it drip?")).toHaveAttribute(
    "aria-pressed",
    "true",
  );

  // Half done, it is as it was left.
  await page.reload();
  await expect(answer("Fine", "Check tap, cap vent and hoses")).toHaveAttribute("aria-pressed", "true");
  await expect(answer("Leave out", "Measure the fuel flow")).toHaveAttribute("aria-pressed", "true");
  await expect(page.locator(".looks h2")).toHaveCount(looks.length);
  const open = page.locator(".looks > li").filter({ hasNot: page.locator('[aria-pressed="true"]') });
  for (let left = looks.length - 3; left > 0; left--) {
    await expect(page.getByText(left === 1 ? "1 look to go." : `${left} looks to go.`)).toBeVisible();
    await open
      .first()
      .getByRole("button", { name: /^Fine:/ })
      .click();
  }
  await expect(page.getByText("Found: a leaking float valve. It is put right first.")).toBeVisible();
  await page.getByRole("button", { name: "Next step", exact: true }).click();
  await expect(page.getByRole("heading", { name: /Put this right before any jet/ })).toBeVisible();
  expect(errors).toEqual([]);
});
