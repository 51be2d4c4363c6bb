import { expect, test } from "./quiet-test.ts";

// A bike comes in: the order is one tap from the list of bikes, gathers what is done, and goes out as a page.

test("a work order from complaint to handing over", async ({ page }) => {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible({ timeout: 20_000 });
  await page.getByRole("link", { name: "Work orders", exact: true }).click();
  await page.getByRole("link", { name: /^Bramble 250/ }).click();
  await page.getByRole("textbox", { name: "The complaint" }).fill("it dies when I shut the throttle");
  await page.getByRole("combobox", { name: "Whose bike it is" }).fill("Jo Ferrant");
  await page.getByRole("textbox", { name: "How to reach them" }).fill("0555 0142");
  await page.getByRole("button", { name: "Open the order" }).click();
  const sheet = page.locator("article.sheet");
  await expect(sheet).toContainText("“it dies when I shut the throttle”");
  await expect(sheet).toContainText("Jo Ferrant · 0555 0142");

  // The bike leads to it, by the complaint.
  await page.goto("/#/bike/bramble");
  await page.getByRole("link", { name: "Work order: “it dies when I shut the throttle”" }).click();
  await expect(sheet).toContainText("Jo Ferrant");

  // What is done to the bike is on the order by itself.
  await page.goto("/#/bike/bramble/fitted/pilot");
  await page.getByRole("textbox", { name: "Number on the jet" }).fill("42");
  await page.getByRole("button", { name: "Keep it", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Fitted" })).toBeVisible();
  await page.goto("/#/");
  await expect(page.getByText("Jo Ferrant")).toBeVisible();
  await page.getByRole("link", { name: "Work orders: 1 open" }).click();
  await page.getByRole("link", { name: /it dies when I shut/ }).click();
  await expect(sheet).toContainText("1 × pilot jet 42");
  await page.getByRole("textbox", { name: "Minutes" }).fill("40");
  await page.getByRole("textbox", { name: "What was done" }).fill("bowl off");
  await page.getByRole("textbox", { name: "Parts that are in no drawer" }).fill("2 x seal");
  await page.getByRole("button", { name: "Add it" }).click();
  await expect(sheet).toContainText("40 min");
  await expect(sheet).toContainText("2 × seal");

  await page.getByRole("textbox", { name: "What was handed over" }).fill("ridden together");
  await page.getByRole("button", { name: "Hand over and close" }).click();
  await expect(sheet).toContainText("ridden together");
  await expect(page.getByRole("button", { name: "Hand over and close" })).toHaveCount(0);
  await page.goto("/#/customers");
  await expect(page.getByRole("link", { name: "Jo Ferrant" })).toContainText("Bramble 250");
});

test("what ran here last time stands beside the air, with how far the air is from then", async ({ page }) => {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await expect(page.getByRole("link", { name: /Heron 250/ })).toBeVisible({ timeout: 20_000 });
  await page.goto("/#/bike/heron");
  await page.getByRole("link", { name: "What did we run last time here?" }).click();
  await expect(page.getByRole("heading", { name: "Last time here", exact: true })).toBeVisible();
  await page.goto("/#/bike/heron/air");
  await page.getByRole("radio", { name: "Height only" }).check();
  await page.getByRole("textbox", { name: "Height where you ride" }).fill("20");
  await page.getByRole("textbox", { name: "Temperature in the shade" }).fill("16");
  const own = page.getByRole("listitem").filter({ has: page.getByRole("heading", { name: "This bike" }) });
  await expect(own).toContainText("right at the sea");
  await expect(own).toContainText(/The air of now is .* at full throttle\./);
});
