import { madeSound } from "./made-sound.ts";
import { expect, test } from "./quiet-test.ts";

// A made recording with its sparks on the second channel, held against what is heard on the first.

const RECORDING = madeSound("sparks", "write-proof", "4400");

test("the sound is held against the sparks, and the result is kept", async ({ page }) => {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await page.getByRole("link", { name: /Kestrel 300/ }).click();
  await expect(page.getByRole("heading", { name: "Kestrel 300" })).toBeVisible();
  await page.goto("/#/bike/kestrel/proof");
  await expect(page.getByText("No real engine has been measured so far")).toBeVisible();
  await expect(page.getByText("Ignition voltage can stop a heart")).toBeVisible();
  await page.locator("input[type=file]").setInputFiles(RECORDING);
  await expect(page.getByRole("heading", { name: "Sound against sparks" })).toBeVisible();
  const off = await page
    .getByRole("row", { name: /in the middle/ })
    .getByRole("cell")
    .textContent();
  expect(Number.parseFloat(off ?? "")).toBeLessThan(1);
  await page.getByRole("button", { name: "Keep this result" }).click();
  await expect(page.getByText("It goes with every copy of the log")).toBeVisible();
  await page.goto("/#/bike/kestrel/history");
  await expect(page.getByText(/Hearing held against the ignition/).first()).toBeVisible();
});
