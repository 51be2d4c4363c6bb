import AxeBuilder from "@axe-core/playwright";
import { ALL_SCREENS } from "./all-screens.ts";
import { expect, test } from "./quiet-test.ts";

// Every screen in both themes: rules of WCAG 2.0 to 2.2, levels A and AA, by axe.

for (const theme of ["light", "dark"] as const) {
  test(`axe finds nothing on any screen, ${theme}`, async ({ page }) => {
    test.setTimeout(180_000);
    await page.emulateMedia({ colorScheme: theme, reducedMotion: "reduce" });
    await page.goto("/");
    await page.getByText("Look at an example shop").click();
    await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible({ timeout: 20_000 });
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
