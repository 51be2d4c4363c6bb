import { de } from "../src/words/de.ts";
import { es } from "../src/words/es.ts";
import { ALL_SCREENS } from "./all-screens.ts";
import { expect, test } from "./quiet-test.ts";
import { hasEnglish, settled, spoken } from "./tongue.ts";

// Every screen in German and in Spanish, with all its folds open: no English but what the people of the shop wrote.

for (const [locale, words] of [
  ["de-AT", de],
  ["es-MX", es],
] as const) {
  test.describe(`a browser that asks for ${locale}`, () => {
    test.use({ locale });
    test("sees no English on any screen", async ({ page }) => {
      await page.goto("/");
      await page.getByText(words.home.example).click();
      await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible();
      const left: string[] = [];
      for (const screen of ALL_SCREENS) {
        await page.goto(`/#${screen}`);
        await expect(page.locator("h1")).toBeVisible();
        await settled(page);
        await page.evaluate(() => {
          for (const fold of document.querySelectorAll("details")) fold.open = true;
        });
        for (const text of await spoken(page)) if (hasEnglish(text)) left.push(`${screen}: ${text}`);
      }
      expect(left).toEqual([]);
    });
  });
}
