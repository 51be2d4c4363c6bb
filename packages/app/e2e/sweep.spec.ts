import { hearing, madeSound } from "./made-sound.ts";
import { expect, test } from "./quiet-test.ts";

// The small screw swept by ear: a made idle of known speed through the browser's own microphone, over and over.

const IDLE = 1680;
const RECORDING = madeSound("idle", "write-take", "idle", "4300", `${IDLE}`, "1");

test.use(hearing(RECORDING, "over and over"));

/** A sweep as another day left it half done: best at 1.6 turns. */
const HALF_DONE = {
  start: 1.75,
  at: 2,
  step: 0.25,
  marks: [1, 1.25, 1.5, 1.75, 2].map((turns) => ({
    turns,
    rpm: 1690 - 200 * (turns - 1.6) ** 2,
    error: 4,
  })),
};

test("a held idle is marked by itself, and a best idle is kept as a measured sweep", async ({ page }) => {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await page.getByRole("link", { name: /Kestrel 300/ }).click();
  await expect(page.getByRole("heading", { name: "Kestrel 300" })).toBeVisible();
  await page.goto("/#/bike/kestrel/sweep");
  await expect(page.getByText("Outdoors only")).toBeVisible();
  await expect(page.getByText("out is leaner, in is richer")).toBeVisible();
  await page.getByRole("button", { name: "Start", exact: true }).click();
  const marked = page.getByText(/^Marked: 1¾ out/);
  await expect(marked).toBeVisible({ timeout: 40_000 });
  const rpm = Number((await marked.textContent())?.match(/, (\d+) rpm/)?.[1]);
  expect(Math.abs(rpm - IDLE)).toBeLessThanOrEqual(20);
  await page.getByRole("button", { name: "Stop" }).click();

  await page.evaluate(
    (value) =>
      new Promise<void>((resolve, reject) => {
        void indexedDB.databases().then(([first]) => {
          const opened = indexedDB.open(first!.name!);
          opened.onerror = () => reject(opened.error);
          opened.onsuccess = () => {
            const writing = opened.result.transaction("settings", "readwrite");
            writing.objectStore("settings").put({ key: "sweep:kestrel", value });
            writing.oncomplete = () => resolve();
            writing.onerror = () => reject(writing.error);
          };
        });
      }),
    HALF_DONE,
  );
  await page.reload();
  await expect(page.getByText("Best idle at 1.6 turns out (± 0.1), 1690 rpm.")).toBeVisible();
  await expect(page.getByRole("img", { name: "Idle against turns of the screw" })).toBeVisible();
  await page.getByRole("button", { name: "Keep; I put it back to 1¾" }).click();
  await expect(page.getByRole("heading", { name: "Next step" })).toBeVisible();
  await page.goto("/#/bike/kestrel/history");
  await expect(page.getByText(/Sweep the air screw/).first()).toBeVisible();
});
