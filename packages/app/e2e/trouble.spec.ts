import { readFileSync } from "node:fs";
import { openShop } from "./example-shop.ts";
import { expect, type Page, test } from "./quiet-test.ts";

// What a browser can do to a log: refuse it, run out of room, damage it, open it twice. A sentence, and nothing lost.

const REFUSED = {
  "en-GB": /Jetwright cannot open its storage/,
  "de-AT": /Jetwright kann seinen Speicher/,
  "es-MX": /Jetwright no puede abrir/,
};

for (const [locale, sentence] of Object.entries(REFUSED)) {
  test.describe(`asked for in ${locale}`, () => {
    test.use({ locale });
    test("a browser that opens no storage says so in its language instead of losing what is typed", async ({
      page,
    }) => {
      await page.addInitScript(() => {
        indexedDB.open = () => {
          throw new DOMException("The user denied permission", "SecurityError");
        };
      });
      await page.goto("/");
      await expect(page.getByRole("alert")).toHaveText(sentence);
      await expect(page.getByRole("link")).toHaveCount(0);
    });
  });
}

test("a page older than its storage says so, and leaves it as it is", async ({ page }) => {
  // A newer version opens it first.
  await page.addInitScript(() => {
    const opening = indexedDB.open("jetwright", 99);
    opening.onupgradeneeded = () => opening.result.createObjectStore("records", { keyPath: "id" });
    opening.onsuccess = () => opening.result.close();
  });
  await page.goto("/");
  await expect(page.getByRole("alert")).toHaveText(/A newer version of Jetwright was in this browser/);
  expect((await page.evaluate(() => indexedDB.databases()))[0]?.version).toBe(99);
});

/** The five openings answered alike, down to the last page. */
async function tellRide(page: Page): Promise<void> {
  await page.goto("/#/bike/bramble/report");
  for (let asked = 0; asked < 5; asked++) {
    const heading = await page.locator("h2.asked").textContent();
    await page.locator("ul.signs button.it").first().click();
    await expect(page.getByText(heading!, { exact: true })).toHaveCount(0);
  }
}

/** From now on every write fails as this kind of failure. */
const failWith = (page: Page, name: string): Promise<void> =>
  page.evaluate((kind) => {
    const usual = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, "add")!;
    Object.assign(window, { mend: () => Object.defineProperty(IDBObjectStore.prototype, "add", usual) });
    IDBObjectStore.prototype.add = () => {
      throw new DOMException("played", kind);
    };
  }, name);
const mend = (page: Page): Promise<void> =>
  page.evaluate(() => (window as unknown as { mend: () => void }).mend());

test("a ride told on a full phone is kept once there is room, and only once", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/bike/bramble/history");
  const rides = page.getByRole("button", { name: /^Strike this as a mistake: Ridden/ });
  await expect(rides.first()).toBeVisible();
  const before = await rides.count();
  await tellRide(page);
  await failWith(page, "QuotaExceededError");
  const keep = page.getByRole("button", { name: "Keep it" });
  await keep.click();
  await expect(page.getByText(/storage is full\. Free some space/)).toBeVisible();
  await failWith(page, "InvalidStateError");
  await keep.click();
  await expect(page.getByText(/this page has lost its storage/)).toBeVisible();
  await page.reload();
  await page.getByRole("button", { name: "Keep it" }).click();
  await expect(page.getByText("Ride kept.")).toBeVisible();
  await page.goto("/#/bike/bramble/history");
  await expect(rides).toHaveCount(before + 1);
});

test("a file taken in on a full phone leaves nothing half, and can be taken in again", async ({ page }) => {
  await page.goto("/#/backup");
  const file = new URL("../../../demo/shop.jsonl", import.meta.url).pathname;
  await page.getByLabel("Choose a file").setInputFiles(file);
  const take = page.getByRole("button", { name: /^Take in \d+ records/ });
  await expect(take).toBeVisible();
  await failWith(page, "QuotaExceededError");
  await take.click();
  await expect(page.getByRole("alert")).toHaveText(/storage is full.*Stopped: 0 records kept/);
  await mend(page);
  await page.getByLabel("Choose a file").setInputFiles(file);
  await take.click();
  await expect(page.getByText(/^Kept: \d+ records\./)).toBeVisible();
});

const NEWER = {
  id: "newer-1",
  kind: "ride-reported",
  v: 9,
  at: "2026-11-01T10:00:00Z",
  bike: "bramble",
  body: { dream: "of later" },
};
const UNKNOWN = { ...NEWER, id: "unknown-1", kind: "telepathy-read", v: 1 };
const DAMAGED = [
  { id: "half-1", line: '{"id":"half-1","kind":"ride-repor' },
  { id: "noise-1", line: "\u0000\ufffd\u0001 nothing of ours" },
  { id: "bare-1" },
  { id: "wrong-1", line: JSON.stringify({ ...NEWER, id: "wrong-1", v: 1, body: { reports: "many" } }) },
];

test("records damaged in the storage, or newer than the app, are named, kept and copied, and the rest is used", async ({
  page,
}) => {
  await openShop(page);
  const raw = [...DAMAGED, ...[NEWER, UNKNOWN].map((each) => ({ id: each.id, line: JSON.stringify(each) }))];
  await page.evaluate(
    (records) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("jetwright");
        opening.onsuccess = () => {
          const writing = opening.result.transaction("records", "readwrite");
          for (const record of records) writing.objectStore("records").put(record);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
          writing.onerror = () => reject(writing.error);
        };
      }),
    raw,
  );
  await page.reload();
  await page.getByRole("link", { name: /Bramble 250/ }).click();
  await expect(page.getByRole("link", { name: "Show me how" })).toBeVisible();
  await page.goto("/#/bike/bramble/history");
  await expect(page.getByText("“ride-reported” written by a newer version.").first()).toBeVisible();

  await page.goto("/#/backup");
  await expect(page.getByRole("heading", { name: "Kept and not used" })).toBeVisible();
  await expect(page.getByText("1 record written by a newer version.")).toBeVisible();
  await expect(page.getByText("Records of kinds this version does not know: telepathy-read.")).toBeVisible();
  await expect(page.getByText("Records that cannot be read.")).toBeVisible();
  await expect(page.locator("li.problem").filter({ hasText: "wrong-1" }).first()).toBeVisible();

  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save a copy as a file" }).click();
  const copy = readFileSync(await (await download).path(), "utf8");
  for (const { id } of raw) expect(copy).toContain(id === "noise-1" ? "nothing of ours" : id);

  // The same file on another phone: what can be read comes in, what cannot is handed back.
  const other = await page.context().browser()!.newPage();
  await other.goto(new URL("/#/backup", page.url()).href);
  await other
    .getByLabel("Choose a file")
    .setInputFiles({ name: "copy.jsonl", mimeType: "text/plain", buffer: Buffer.from(copy) });
  await expect(other.getByText("1 record written by a newer version: kept as they are")).toBeVisible();
  await expect(other.getByText("3 lines cannot be taken in")).toBeVisible();
  await other.getByRole("button", { name: /^Take in \d+ records/ }).click();
  await expect(other.getByText(/^Kept: \d+ records\./)).toBeVisible();
  await expect(other.getByText("1 record written by a newer version. Update the app")).toBeVisible();
  await other.close();
});

test("two tabs that write at once end with the same history", async ({ page, context }) => {
  await openShop(page);
  const other = await context.newPage();
  const tabs = [page, other];
  for (const tab of tabs) await tab.goto("/#/bike/bramble/history");
  const lines = page.locator("ol.story > li.story-line");
  for (const tab of tabs)
    await expect(tab.getByRole("heading", { name: "Everything written down" })).toBeVisible();
  await Promise.all(
    tabs.map((tab, which) =>
      tab.evaluate(async (name) => {
        const { jetwright } = window as unknown as { jetwright: { keep(draft: object): Promise<object> } };
        for (let i = 0; i < 5; i++)
          await jetwright.keep({ kind: "note", bike: "bramble", body: { text: `tab ${name} wrote ${i}` } });
      }, which),
    ),
  );
  for (const tab of tabs)
    for (const which of [0, 1])
      for (const i of [0, 4]) await expect(tab.getByText(`tab ${which} wrote ${i}`).first()).toBeVisible();
  await expect(lines.first()).toBeVisible();
  const [mine, others] = await Promise.all(
    tabs.map((tab) => tab.locator("ol.story > li.story-line").allTextContents()),
  );
  expect(mine).toEqual(others);
});
