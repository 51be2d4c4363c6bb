import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import config from "../playwright.config.ts";
import { expect, type Page, test } from "./quiet-test.ts";

// A made recording of known speed played through the browser's own microphone, and what comes of it.

const IDLE = 1700;
const HANG = 2;
const RECORDING = join(tmpdir(), `jetwright-hang-${IDLE}-${process.ppid}.wav`);
if (!existsSync(RECORDING)) {
  const script = fileURLToPath(new URL("../../sound-lab/src/write-take.ts", import.meta.url));
  execFileSync("npx", ["tsx", script, "hang", "4201", `${IDLE}`, `${HANG}`, RECORDING]);
}

const usual = config.use?.launchOptions ?? {};
test.use({
  launchOptions: {
    ...usual,
    args: [
      ...(usual.args ?? []),
      "--use-fake-ui-for-media-stream",
      "--use-fake-device-for-media-stream",
      `--use-file-for-fake-audio-capture=${RECORDING}%noloop`,
    ],
  },
});

async function openBike(page: Page): Promise<void> {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await page.getByRole("link", { name: /Kestrel 300/ }).click({ timeout: 20_000 });
}

/** The figure in a row of the table of what was heard. */
const figure = async (page: Page, name: string): Promise<number> =>
  Number.parseFloat((await page.getByRole("row", { name }).getByRole("cell").first().textContent()) ?? "");

test("a hang heard through the microphone changes the next step to the screw and the leak", async ({
  page,
}) => {
  test.setTimeout(120_000);
  await openBike(page);
  await page.goto("/#/bike/kestrel/next");
  await expect(page.getByText("Nothing needs changing").first()).toBeVisible({ timeout: 20_000 });
  await page.goto("/#/bike/kestrel/listen");
  await expect(page.getByText("Outdoors only")).toBeVisible();
  await expect(page.getByText("No real engine has been measured")).toBeVisible();
  await page.getByRole("button", { name: "Start listening" }).click();
  const needle = page.locator(".needle-figure");
  // Idle first, then an opening well above it.
  await expect
    .poll(async () => Number(((await needle.textContent()) ?? "").replace(/\D/g, "")), { timeout: 15_000 })
    .toBeGreaterThan(IDLE * 0.97);
  await expect
    .poll(async () => Number(((await needle.textContent()) ?? "").replace(/\D/g, "")), { timeout: 15_000 })
    .toBeGreaterThan(5000);
  await page.waitForTimeout(12_000);
  await page.getByRole("button", { name: /^Stop/ }).click();
  await expect(page.getByRole("heading", { name: "What was heard" })).toBeVisible({ timeout: 30_000 });
  expect(Math.abs((await figure(page, "Idle")) / IDLE - 1)).toBeLessThan(0.02);
  expect(Math.abs((await figure(page, "Hang after closing")) - HANG)).toBeLessThan(0.15);
  await expect(page.getByRole("img", { name: /Engine speed against time/ })).toBeVisible();
  await expect(page.getByText("closed", { exact: true }).first()).toBeVisible();
  await page.getByRole("button", { name: "Keep these figures" }).click();
  await expect(page.getByRole("heading", { name: "Next step" })).toBeVisible();
  await expect(page.getByText("Nothing needs changing")).toHaveCount(0);
  await expect(page.getByText(/Sweep the air screw/).first()).toBeVisible();
  await expect(page.getByText(/Pressure-test the crankcase/).first()).toBeVisible();
  await expect(page.getByText("Revs hang before they drop").first()).toBeVisible();
});

test("a recording is loaded from a file, and what is no sound is refused in a sentence", async ({ page }) => {
  await openBike(page);
  await page.goto("/#/bike/kestrel/listen");
  await page.locator("input[type=file]").setInputFiles(RECORDING);
  await expect(page.getByRole("heading", { name: "What was heard" })).toBeVisible({ timeout: 30_000 });
  expect(Math.abs((await figure(page, "Idle")) / IDLE - 1)).toBeLessThan(0.01);
  await page
    .locator("input[type=file]")
    .setInputFiles({ name: "note.wav", mimeType: "audio/wav", buffer: Buffer.from("not a sound at all") });
  await expect(page.getByText("The browser cannot read this file")).toBeVisible({ timeout: 20_000 });
});
