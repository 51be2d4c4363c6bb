import { expect, type Page } from "@playwright/test";

/** Opens the app and puts the example shop in. */
export async function openShop(page: Page): Promise<void> {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
}
