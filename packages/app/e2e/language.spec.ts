import { expect, type Page, test } from "@playwright/test";
import { de } from "../src/words/de.ts";
import { en } from "../src/words/en.ts";
import { es } from "../src/words/es.ts";
import { hasEnglish, spoken } from "./tongue.ts";

// The way from the bikes to a report in German and in Spanish: nothing of it in English, nothing too wide.

/** Every text of a catalogue that stands without anything put into it. */
function texts(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(texts) : [];
}

for (const [language, words, name] of [
  ["de", de, "Deutsch"],
  ["es", es, "Español"],
] as const) {
  const own = new Set(texts(words));
  const english = new Set(texts(en).filter((text) => /\p{L}{3}/u.test(text) && !own.has(text)));

  async function expectOnly(page: Page, screen: string): Promise<void> {
    await page.waitForLoadState("networkidle");
    const left = (await spoken(page)).filter(
      (text) => english.has(text) || hasEnglish(text) || /\d\.\d/.test(text),
    );
    expect(left, screen).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide, `${screen}: px too wide`).toBeLessThanOrEqual(0);
    await expect(page.locator("html")).toHaveAttribute("lang", language);
  }

  test(`chosen on the first screen, the way to a report is in ${name} alone`, async ({ page }) => {
    const errors: string[] = [];
    page.on("pageerror", (error) => errors.push(error.message));
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto("/");
    await expect(page.getByText(en.home.first)).toBeVisible();
    await page.getByRole("radio", { name: new RegExp(name) }).check();
    await expect(page.getByText(words.home.first)).toBeVisible();
    await page.getByText(words.home.example).click();
    const bike = page.getByRole("link", { name: /Bramble 250/ });
    await expect(bike).toBeVisible();
    await expectOnly(page, "bikes");
    await bike.click();
    const go = page.getByRole("link", { name: words.bike.showMe });
    await expect(go).toBeVisible();
    await expect(page.getByText(words.bike.fitted, { exact: true })).toBeVisible();
    await expectOnly(page, "bike");
    await go.click();
    await expect(page.locator("section.loud")).toContainText(words.step.undo);
    await expectOnly(page, "next step");
    await page.getByRole("link", { name: words.bike.bar.ridden }).click();
    await expect(page.getByText(words.report.unsure)).toBeVisible();
    await expectOnly(page, "report");
    for (const at of ["1/8", "1/4", "1/2", "full"] as const) {
      await page.getByText(words.report.unsure).first().click();
      await expect(page.getByText(words.report.ask[at])).toBeVisible();
      await expectOnly(page, `report at ${at}`);
    }
    // Kept: the next visit begins in it.
    await page.reload();
    await expect(page.getByText(words.report.unsure)).toBeVisible();
    await expect(page.locator("html")).toHaveAttribute("lang", language);
    expect(errors).toEqual([]);
  });

  test.describe(`a browser that asks for ${name}`, () => {
    test.use({ locale: language === "de" ? "de-AT" : "es-MX" });
    test("has it from the first visit, and without a network too", async ({ page, context }) => {
      await page.goto("/");
      await expect(page.getByText(words.home.first)).toBeVisible();
      await expect(page.locator("html")).toHaveAttribute("lang", language);
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      await page.reload();
      await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
      await context.setOffline(true);
      await page.reload();
      await expect(page.getByText(words.home.first)).toBeVisible();
      // A language never shown before was put by at the first visit.
      const other = language === "de" ? { name: "Español", words: es } : { name: "Deutsch", words: de };
      await page.getByRole("radio", { name: new RegExp(other.name) }).check();
      await expect(page.getByText(other.words.home.first)).toBeVisible();
    });
  });
}
