import { flawText } from "@jetwright/records";
import { flaws as german } from "@jetwright/records/words/de/flaws";
import { flaws as spanish } from "@jetwright/records/words/es/flaws";
import { de } from "../src/words/de.ts";
import { es } from "../src/words/es.ts";
import { ALL_SCREENS } from "./all-screens.ts";
import { expect, test } from "./quiet-test.ts";
import { hasEnglish, settled, spoken } from "./tongue.ts";

// Every screen in German and in Spanish, with all its folds open: no English but what the people of the shop wrote.

const LIMIT = { of: "value", edge: "at most", limit: "12" } as const;

for (const [locale, words, flaws] of [
  ["de-AT", de, german],
  ["es-MX", es, spanish],
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

    test("is told in its language what is wrong with a copy", async ({ page }) => {
      const at = "2026-05-02T10:15:00Z";
      const record = { id: "x1", kind: "setup-fitted", at, bike: "x", body: { screw: { turnsOut: 15 } } };
      const buffer = Buffer.from(`${JSON.stringify(record)}\nnot a record\n`);
      await page.goto("/#/backup");
      await page
        .locator('input[type="file"]')
        .setInputFiles({ name: "copy.jsonl", mimeType: "text/plain", buffer });
      await page.getByText(words.backup.problems(2)).click();
      const problems = page.locator("details li.problem");
      const { what, mend } = flawText(
        { code: "out-of-limit", given: { limit: LIMIT, seen: { text: "15" } } },
        flaws,
      );
      await expect(problems.first()).toContainText(`x1 · body.screw.turnsOut: ${what}. ${mend}`);
      await expect(problems.last()).toContainText(words.backup.problemAt(2));
      for (const text of await problems.allTextContents())
        expect(hasEnglish(text.replace(/not a record|body\.screw\.turnsOut/, ""))).toBe(false);
    });
  });
}
