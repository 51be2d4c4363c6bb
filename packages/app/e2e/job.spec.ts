import { english } from "@jetwright/core/words/en";
import { openShop } from "./example-shop.ts";
import { expect, type Page, test } from "./quiet-test.ts";

// The whole job on the example shop, as a technician walks it.

const open = async (page: Page, address: string): Promise<void> => {
  await page.goto(`/#${address}`);
};

test("the first visit offers two ways and no sign-in", async ({ page }) => {
  await page.goto("/");
  await expect(page.getByText("Set up my bike")).toBeVisible();
  await expect(page.getByText("Look at an example shop")).toBeVisible();
});

test("a known bike is three taps from its next step, with reasons, undo and cautions", async ({ page }) => {
  await openShop(page);
  await page.getByRole("link", { name: /Bramble 250/ }).click();
  await expect(
    page
      .getByRole("img", { name: /mixture/i })
      .or(page.locator("svg.picture"))
      .first(),
  ).toBeVisible();
  await page.getByRole("link", { name: "Show me how" }).click();
  await expect(page.getByRole("heading", { name: "Next step" })).toBeVisible();
  await expect(page.locator("section.loud")).toContainText("To undo it: ");
  await expect(page.locator("section.loud .caution").first()).toBeVisible();
  for (const words of ["Tools", "Other ways"]) {
    await expect(page.getByText(words, { exact: true }).first()).toBeVisible();
  }
  await page.getByRole("link", { name: "Change the parts" }).click();
  await expect(page.getByRole("heading", { name: "Before you start" })).toBeVisible();
});

test("a new bike from few figures gets a mixture picture", async ({ page }) => {
  await page.goto("/");
  await page.getByText("Set up my bike").click();
  await page.getByRole("radio", { name: "Two-stroke" }).check();
  await page.getByLabel("Displacement").fill("249");
  await page.getByLabel("Carburetor bore").fill("36");
  await page.getByLabel("Pilot jet").fill("42");
  await page.getByLabel("Main jet").fill("175");
  await page.getByRole("radio", { name: /The number is the bore/ }).check();
  await page.getByRole("button", { name: "Keep it and go on" }).click();
  await expect(page.locator("svg.picture").first()).toBeVisible();
  await expect(page.getByRole("link", { name: "Show me how" })).toBeVisible();
});

test("a ride report takes at most twelve taps and no typing, and gives new advice", async ({ page }) => {
  await openShop(page);
  await open(page, "/bike/bramble/report");
  await expect(page.getByRole("heading", { name: "What did it do?" })).toBeVisible();
  let taps = 0;
  for (let asked = 0; asked < 5; asked++) {
    await page.getByText("Could not tell").first().click();
    taps++;
  }
  const keep = page.getByRole("button", { name: /Keep it/ });
  if (await keep.isEnabled()) {
    await keep.click();
    taps++;
  }
  expect(taps).toBeLessThanOrEqual(12);
});

test("the sea-level trap is caught before the air is kept", async ({ page }) => {
  await openShop(page);
  await open(page, "/bike/bramble/air");
  await page.getByLabel("Temperature in the shade").fill("15");
  await page.getByLabel("Height where you ride").fill("1500");
  await page.getByLabel("Pressure", { exact: true }).fill("1013");
  await expect(page.locator("main").getByText(/20 %/).first()).toBeVisible();
});

test("a check is worked from its card and its result is kept", async ({ page }) => {
  await openShop(page);
  await open(page, "/bike/bramble/check/air-filter");
  await page.getByText("Looked at, nothing wrong").click();
  const keep = page.getByRole("button", { name: /Keep/ });
  if (await keep.count()) await keep.first().click();
  await open(page, "/bike/bramble/history");
  await expect(page.getByText(/air filter: sound/i).first()).toBeVisible();
});

test("what is kept is there after a reload, and in a second tab", async ({ page, context }) => {
  await openShop(page);
  const second = await context.newPage();
  await second.goto("/");
  await expect(second.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
  await page.reload();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
});

test("without a network it opens from the second load, deep links included", async ({ page, context }) => {
  await openShop(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);
  await page.goto("/#/bike/bramble/sheet");
  await page.reload();
  await expect(page.getByRole("heading", { name: "Sheet for the rider" })).toBeVisible();
  await page.goto("/#/bike/heron");
  await expect(page.getByRole("heading", { name: "Heron 250" })).toBeVisible();
});

test("a full phone says so and loses nothing", async ({ page }) => {
  await openShop(page);
  await open(page, "/bike/bramble/air");
  await page.evaluate(() => {
    IDBObjectStore.prototype.add = () => {
      throw new DOMException("no room", "QuotaExceededError");
    };
  });
  await page.getByRole("radio", { name: "Height only" }).check();
  await page.getByLabel("Height where you ride").fill("300");
  await page.getByLabel("Temperature in the shade").fill("12");
  await page.getByRole("button", { name: "Keep this air" }).click();
  await expect(page.getByText(/storage is full/)).toBeVisible();
  await expect(page.getByLabel("Height where you ride")).toHaveValue("300");
});

test("the sheet prints on one page of A4 and of Letter", async ({ page }) => {
  await openShop(page);
  await open(page, "/bike/bramble/sheet");
  await expect(page.getByText("Stop at once when it")).toBeVisible();
  for (const format of ["A4", "Letter"] as const) {
    const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page[^s]/g)?.length).toBe(1);
  }
});

test("a test that could not be done leads to the other ways, with a word in the history", async ({
  page,
}) => {
  await openShop(page);
  await open(page, "/bike/bramble/test/screw-sweep-air");
  await page.getByRole("button", { name: "Could not do it" }).click();
  await expect(page.getByRole("heading", { name: "Next step", level: 1 })).toBeVisible();
  await expect(page.getByText("Other ways", { exact: true })).toBeVisible();
  await open(page, "/bike/bramble/history");
  await expect(page.getByText(/Could not do it: /).first()).toBeVisible();
});

test("a stop card says what to expect, and a chart that may not be right leads to the step that mends it", async ({
  page,
}) => {
  await openShop(page);
  await open(page, "/bike/bramble/chart");
  await page.getByRole("link", { name: "Not right yet? Mend it first" }).click();
  await expect(page.locator("section.loud")).toBeVisible();
  await page.evaluate(() =>
    (window as unknown as { jetwright: { keep(draft: object): Promise<object> } }).jetwright.keep({
      kind: "ride-reported",
      bike: "bramble",
      body: { reports: [{ sign: "tearing-note-at-full-throttle", opening: "full", seen: true }] },
    }),
  );
  const card = page.locator("section.loud.stop");
  await expect(card).toBeVisible();
  await expect(card).toContainText(`What to expect: ${english.steps.stop.expect}`);
});
