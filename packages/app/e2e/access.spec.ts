import AxeBuilder from "@axe-core/playwright";
import { ALL_SCREENS } from "./all-screens.ts";
import { openShop } from "./example-shop.ts";
import { expect, test } from "./quiet-test.ts";

// Every screen in both themes: rules of WCAG 2.0 to 2.2, levels A and AA, by axe.

for (const theme of ["light", "dark"] as const) {
  test(`axe finds nothing on any screen, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme, reducedMotion: "reduce" });
    await openShop(page);
    const found: string[] = [];
    for (const screen of ALL_SCREENS) {
      await page.goto(`/#${screen}`);
      await expect(page.locator("h1")).toBeVisible();
      await page.waitForLoadState("networkidle");
      const { violations } = await new AxeBuilder({ page })
        .withTags(["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"])
        .analyze();
      for (const { id, nodes } of violations) found.push(`${screen}: ${id}: ${nodes[0]?.html.slice(0, 120)}`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      if (wide > 1) found.push(`${screen}: ${wide} px too wide`);
    }
    expect(found).toEqual([]);
  });
}
