import { ALL_SCREENS } from "./all-screens.ts";
import { openShop } from "./example-shop.ts";
import { expect, type Page, test } from "./quiet-test.ts";

// Reached without a finger, read in large type, drawn without movement.

/** Everything a finger can use and Tab must reach; of a group of radios, one. */
const controls = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const groups = new Set<string>();
    const all = [
      ...document.querySelectorAll<HTMLElement>(
        "a[href], button:not(:disabled), input:not(:disabled), select, textarea, summary, [tabindex='0']",
      ),
    ].filter((each) => {
      if (!each.checkVisibility()) return false;
      if (!(each instanceof HTMLInputElement) || each.type !== "radio") return true;
      if (groups.has(each.name)) return false;
      groups.add(each.name);
      return true;
    });
    return all.length;
  });

/** How many different things get the focus when Tab is pressed `times` times. */
async function reached(page: Page, times: number): Promise<number> {
  await page.evaluate(() => {
    (document.activeElement as HTMLElement | null)?.blur();
    const met = new Set<Element>();
    document.addEventListener("focusin", ({ target }) => met.add(target as Element));
    Object.assign(window, { met });
  });
  for (let pressed = 0; pressed < times; pressed++) await page.keyboard.press("Tab");
  return page.evaluate(() => {
    const { met } = window as unknown as { met: Set<HTMLElement> };
    return [...met].filter((each) => each.isConnected && each.tabIndex >= 0 && each !== document.body).length;
  });
}

for (const [name, screen, ready] of [
  ["the bike page", "/bike/bramble", "Show me how"],
  ["the ride report", "/bike/bramble/report", "Could not tell"],
] as const) {
  test(`Tab reaches every control of ${name}`, async ({ page }) => {
    await openShop(page);
    await page.reload();
    await page.goto(`/#${screen}`);
    await expect(page.getByText(ready).first()).toBeVisible();
    await expect(page.getByRole("button").or(page.getByRole("link")).first()).toBeVisible();
    const there = await controls(page);
    expect(there).toBeGreaterThan(5);
    expect(await reached(page, there + 8)).toBeGreaterThanOrEqual(there);
  });
}

test("a ride is told with the keyboard alone", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/bike/bramble/report");
  for (let asked = 0; asked < 5; asked++) {
    const sign = page.locator("ul.signs button.it").first();
    const heading = await page.locator("h2.asked").textContent();
    await sign.focus();
    await page.keyboard.press("Enter");
    await expect(page.getByText(heading!, { exact: true })).toHaveCount(0);
  }
  await page.getByRole("button", { name: "Keep it" }).focus();
  await page.keyboard.press("Enter");
  await expect(page.getByText("Ride kept.")).toBeVisible();
});

test("text at 200 % needs no scrolling sideways", async ({ page }) => {
  await openShop(page);
  const wide: string[] = [];
  for (const screen of ALL_SCREENS) {
    await page.goto(`/#${screen}`);
    await expect(page.locator("h1")).toBeVisible();
    await page.waitForLoadState("networkidle");
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    if (over > 1) wide.push(`${screen}: ${over} px`);
  }
  expect(wide).toEqual([]);
});

/** 48 px for a bare finger; 15 mm, of which a page has 96 px in 25.4, for a glove. */
const LEAST_HEIGHT = { bare: 48, gloved: (15 * 96) / 25.4 } as const;

for (const hand of ["bare", "gloved"] as const) {
  test(`every button is large enough for a ${hand} finger`, async ({ page }) => {
    await openShop(page);
    if (hand === "gloved") {
      await page.goto("/#/more");
      await page.getByRole("radio", { name: "Gloves on" }).check();
    }
    const small: string[] = [];
    let measured = 0;
    for (const screen of ALL_SCREENS) {
      await page.goto(`/#${screen}`);
      await expect(page.locator("h1")).toBeVisible();
      await page.waitForLoadState("networkidle");
      // What the worker has still to say comes within this time or is a button of the next screen.
      await page.waitForTimeout(250);
      const found = await page.evaluate((least) => {
        const finger = "button, a.button, a.row, summary, .choices label, nav a";
        const shown = [...document.querySelectorAll<HTMLElement>(finger)].filter((each) =>
          each.checkVisibility(),
        );
        const height = (each: HTMLElement) => each.getBoundingClientRect().height;
        const low = shown.filter((each) => height(each) < least - 0.5);
        return {
          all: shown.length,
          low: low.map((each) => `${each.textContent?.trim()} ${Math.round(height(each))} px`),
        };
      }, LEAST_HEIGHT[hand]);
      measured += found.all;
      small.push(...found.low.map((each) => `${screen}: ${each}`));
    }
    console.log(`measured: ${measured} buttons for a ${hand} finger`);
    expect(small).toEqual([]);
    expect(measured).toBeGreaterThan(5 * ALL_SCREENS.length);
  });
}

test("nothing moves by itself when the device asks for less movement", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await openShop(page);
  for (const screen of ["/bike/bramble", "/bike/bramble/next", "/bike/bramble/report"]) {
    await page.goto(`/#${screen}`);
    await expect(page.locator("h1")).toBeVisible();
    const moving = await page.evaluate(() =>
      document.getAnimations().flatMap(({ effect }) => {
        const { duration } = effect?.getComputedTiming() ?? {};
        return typeof duration === "number" && duration > 1 ? [duration] : [];
      }),
    );
    expect(moving).toEqual([]);
  }
});
