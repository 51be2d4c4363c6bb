import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type BrowserContext, expect, type Page, test } from "@playwright/test";
import { openShop } from "./example-shop.ts";

// A bench PC and two phones do one job together on a server of their own, one phone offline half of the time.

const START = join(import.meta.dirname, "../../../tools/start.ts");
const PORT = Number(process.env.E2E_PORT ?? 4310) + 1;

interface Shop {
  readonly store: { readonly all: () => Promise<readonly string[]> };
  readonly take: (records: readonly { id: string; line: string }[]) => Promise<unknown>;
  readonly keep: (draft: object) => Promise<{ ok: boolean }>;
  readonly database: { readonly photos: { readonly put: (blob: Blob) => Promise<string> } };
}

let server: ChildProcess;
let data: string;
let address: string;
let code: string;

test.describe.configure({ mode: "serial" });

test.beforeAll(async ({ browserName: _ }, { project }) => {
  data = mkdtempSync(join(tmpdir(), "jetwright-together-"));
  const port = PORT + (project.name === "desk" ? 2 : 0);
  server = spawn(process.execPath, ["--import", "tsx", START, "--port", String(port), "--data", data], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  let said = "";
  await new Promise<void>((resolve, reject) => {
    server.once("exit", () => reject(new Error(`The server ended: ${said}`)));
    server.stdout!.on("data", (chunk: Buffer) => {
      said += chunk;
      if (/type this code once: \S+\n/.test(said)) resolve();
    });
  });
  address = /http:\/\/localhost:\d+/.exec(said)![0];
  code = /type this code once: (\S+)/.exec(said)![1]!;
});

test.afterAll(() => {
  server.removeAllListeners("exit");
  server.kill("SIGTERM");
  rmSync(data, { recursive: true, force: true });
});

async function device(browser: Browser): Promise<{ page: Page; context: BrowserContext }> {
  const context = await browser.newContext({ baseURL: address });
  const page = await context.newPage();
  return { page, context };
}

const linesOf = (page: Page) =>
  page.evaluate(async () =>
    [...(await (window as unknown as { jetwright: Shop }).jetwright.store.all())]
      .map((line) => (JSON.parse(line) as { id: string }).id)
      .sort(),
  );

const note = (page: Page, text: string) =>
  page.evaluate(async (words) => {
    const shop = (window as unknown as { jetwright: Shop }).jetwright;
    await shop.keep({ kind: "note", bike: "bramble", body: { text: words } });
  }, text);

/** A record under an id that somebody typed. */
const typed = (page: Page, id: string, text: string) =>
  page.evaluate(
    async ([name, words]) => {
      const record = {
        id: name,
        kind: "note",
        v: 1,
        at: "2026-05-02T10:15:00Z",
        bike: "bramble",
        body: { text: words },
      };
      const shop = (window as unknown as { jetwright: Shop }).jetwright;
      await shop.take([{ id: name!, line: JSON.stringify(record) }]);
    },
    [id, text],
  );

async function bringIn(owner: Page, name: string, role: string): Promise<string> {
  await owner.goto("/#/");
  await owner.goto("/#/shop");
  await owner.getByLabel("Your name").fill(name);
  await owner.getByRole("radio", { name: new RegExp(role) }).check();
  if (role === "rider") await owner.getByRole("checkbox", { name: /Bramble 250/ }).check();
  await owner.getByRole("button", { name: "Make a code" }).click();
  const words = (await owner.getByText(/^Type \S+ on the other device/).textContent())!;
  return /^Type (\S+) on/.exec(words)![1]!;
}

async function pair(page: Page, given: string, name: string): Promise<void> {
  // As a phone's camera opens it.
  await page.goto(`/#/shop/${given}`);
  await page.getByLabel("Name of this device").fill(name);
  await page.getByRole("button", { name: "Pair this device" }).click();
}

test("three devices do a job together, one offline half of the time, and end with the same log", async ({
  browser,
}) => {
  const bench = await device(browser);
  await openShop(bench.page);

  await bench.page.goto("/#/more");
  await bench.page.getByRole("link", { name: /Shop and its other phones/ }).click();
  await bench.page.getByLabel("Code").fill(code);
  await bench.page.getByLabel("Name of this device").fill("bench PC");
  await bench.page.getByLabel("Name of the shop").fill("Tarn End");
  await bench.page.getByLabel("Your name").fill("Mara");
  await bench.page.getByRole("button", { name: "Pair this device" }).click();
  await expect(bench.page.getByText("Tarn End: Mara, owner.")).toBeVisible();
  await expect(bench.page.getByText("Everything is at the shop.")).toBeVisible();

  const first = await device(browser);
  await pair(first.page, await bringIn(bench.page, "Kit", "technician"), "Kit's phone");
  await expect(first.page.getByText("Tarn End: Kit, technician.")).toBeVisible();
  expect(first.page.url()).not.toMatch(/shop\/./);
  await first.page.goto("/#/");
  await expect(first.page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();

  const second = await device(browser);
  // A phone whose clock is eight years ahead: nothing of the sharing hangs on it.
  await second.context.addInitScript(() => {
    const now = Date.now;
    Date.now = () => now() + 8 * 365 * 86_400_000;
  });
  await pair(second.page, await bringIn(bench.page, "Lou", "technician"), "Lou's phone");
  await second.page.goto("/#/");
  await expect(second.page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();

  // The job: notes from all three; the second phone goes out of reach and comes back, again and again.
  for (let round = 1; round <= 4; round++) {
    const out = round % 2 === 1;
    await second.context.setOffline(out);
    await note(bench.page, `bench ${round}`);
    await note(second.page, `ridden ${round}`);
    await note(first.page, `tested ${round}`);
    if (round === 3) {
      await typed(bench.page, "typed-1", "meant on the bench");
      await typed(second.page, "typed-1", "meant on the phone");
    }
    if (round === 3) {
      await second.page.goto("/#/");
      // Two, or up to four where the short time in reach before did not do for the others.
      await expect(second.page.getByText(/[1234] records? not yet at the shop/)).toBeVisible();
    }
  }
  await second.page.goto("/#/bike/bramble/report");
  for (let asked = 0; asked < 5; asked++) await second.page.getByText("Could not tell").first().click();
  await second.context.setOffline(false);

  await expect.poll(async () => (await linesOf(bench.page)).length).toBeGreaterThanOrEqual(139 + 12);
  await expect
    .poll(async () => {
      const [one, two, three] = await Promise.all([bench, first, second].map(({ page }) => linesOf(page)));
      return JSON.stringify(one) === JSON.stringify(two) && JSON.stringify(two) === JSON.stringify(three);
    })
    .toBe(true);

  const ahead = await bench.page.evaluate(async () => {
    const all = await (window as unknown as { jetwright: Shop }).jetwright.store.all();
    return all.filter(
      (line) => line.includes("ridden ") && Date.parse(JSON.parse(line).at) > Date.now() + 1e11,
    );
  });
  expect(ahead).toHaveLength(4);

  // Two meant different things by one id: neither is lost, and whoever came second is told.
  await second.page.goto("/#/shop");
  const told = second.page.getByText(/^typed-1: the shop had another record of this name/);
  await expect(told).toBeVisible();
  const moved = /as (typed-1-\w+)\.$/.exec((await told.textContent())!)![1]!;
  await expect
    .poll(async () => await linesOf(bench.page))
    .toEqual(expect.arrayContaining(["typed-1", moved]));

  // A picture taken on the bench PC is seen on a phone that has not got it.
  await bench.page.evaluate(async () => {
    const shop = (window as unknown as { jetwright: Shop }).jetwright;
    const canvas = new OffscreenCanvas(600, 400);
    canvas.getContext("2d")!.fillRect(0, 0, 300, 400);
    const hash = await shop.database.photos.put(await canvas.convertToBlob({ type: "image/jpeg" }));
    await shop.keep({ kind: "photo", bike: "bramble", body: { hash } });
  });
  await first.page.goto("/#/bike/bramble/history");
  await expect(first.page.locator(".photo-thumb img").first()).toBeVisible();

  // A rider's phone sees the own bike alone, and is out at once when it is shut out.
  const rider = await device(browser);
  await pair(rider.page, await bringIn(bench.page, "Jo", "rider"), "Jo's phone");
  await rider.page.goto("/#/");
  await expect(rider.page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
  await expect(rider.page.getByRole("link", { name: /Heron 250/ })).toHaveCount(0);
  await bench.page.goto("/#/");
  await bench.page.goto("/#/shop");
  await bench.page.getByRole("button", { name: "Shut out Jo's phone" }).click();
  await expect(bench.page.getByText("shut out", { exact: true })).toBeVisible();
  await note(rider.page, "written too late");
  await rider.page.goto("/#/shop");
  await expect(rider.page.getByText(/was shut out of the shop/)).toBeVisible();

  // Who leaves while the server is out of reach is told that the device is still on its list, and takes it off later.
  await second.page.goto("/#/");
  await second.page.goto("/#/shop");
  await second.page.route("**/api/v1/devices/*", (route) => route.abort());
  await second.page.getByRole("button", { name: "Leave the shop" }).click();
  await expect(second.page.getByRole("alert")).toContainText("this device is still on its list");
  await second.page.unroute("**/api/v1/devices/*");
  await second.page.getByRole("button", { name: "Take this device off the list" }).click();
  await expect(second.page.getByText("This device is off the shop's list.")).toBeVisible();
  await expect(second.page.getByRole("alert")).toHaveCount(0);

  // Jo asks for the own data to be removed, of whom the shop has no more than a name in its list.
  await bench.page.goto("/#/remove");
  await bench.page.getByRole("link", { name: /^Jo has a device of the shop/ }).click();
  await bench.page.getByRole("checkbox", { name: "This person asked for it" }).check();
  await bench.page.getByRole("button", { name: "Remove for good" }).click();
  await expect(bench.page.getByText("Removed. The other devices")).toBeVisible();
  await expect(async () => {
    await bench.page.goto("/#/");
    await bench.page.goto("/#/shop");
    await expect(bench.page.getByText("(name removed)")).toBeVisible({ timeout: 3000 });
  }).toPass();
  await expect(bench.page.getByText("Jo's phone")).toHaveCount(0);

  // With the server gone nobody is shut out, and the screen says so.
  server.removeAllListeners("exit");
  server.kill("SIGKILL");
  await bench.page.getByRole("button", { name: "Shut out Kit's phone" }).click();
  await expect(bench.page.getByText("Kit's phone is NOT shut out")).toBeVisible();
  await expect(bench.page.getByRole("button", { name: "Shut out Kit's phone" })).toBeVisible();
});
