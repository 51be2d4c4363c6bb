import { expect, type Page, test } from "@playwright/test";
import { openShop } from "./example-shop.ts";

// Parts changed with the phone in hand: made safe, what came out, what went in, together again, and the log has it.

/** Ticks every box of the page that is not ticked; gives how many there were. */
async function tickAll(page: Page): Promise<number> {
  const open = page.getByRole("checkbox", { checked: false });
  const there = await open.count();
  for (let ticked = 0; ticked < there; ticked++) await open.first().check();
  return there;
}

/** A picture as a camera would hand it over, larger than a phone's screen shows. */
const photographed = (page: Page): Promise<Buffer> =>
  page
    .evaluate(async () => {
      const canvas = document.createElement("canvas");
      canvas.width = 3000;
      canvas.height = 2000;
      const context = canvas.getContext("2d")!;
      for (let x = 0; x < 3000; x += 20) {
        context.fillStyle = `hsl(${x % 360} 60% 50%)`;
        context.fillRect(x, 0, 20, 2000);
      }
      return canvas.toDataURL("image/jpeg", 0.95);
    })
    .then((address) => Buffer.from(address.split(",")[1]!, "base64"));

test("a change is carried out from its card, and the log has what was really fitted", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/more");
  await page.getByRole("textbox", { name: "Who works here" }).fill("Ilse");
  await page.goto("/#/bike/bramble/next");
  await expect(page.getByRole("heading", { name: /^Pilot jet \d+ to \d+/ })).toBeVisible();
  await page.getByRole("link", { name: "Change the parts" }).click();
  const next = page.getByRole("button", { name: "Next", exact: true });

  // Cautions and tools first; the work does not start before each is ticked.
  await expect(page.getByRole("heading", { name: "Before you start" })).toBeVisible();
  await expect(page.locator("p").filter({ hasText: /^Tools:/ })).toContainText("screwdriver");
  await expect(page.getByText(/petrol vapour/i).first()).toBeVisible();
  for (const tick of [/Fuel is off/, /engine is cool/, /spark is near/, /tray/, /battery's negative lead/]) {
    await expect(page.getByRole("checkbox", { name: tick })).toBeVisible();
  }
  await next.click();
  await expect(page.getByText(/Still open: Fuel is off/)).toBeVisible();
  await tickAll(page);
  await next.click();

  // The part, drawn in this carburetor; what came out is not what the log said, and who read it is written down.
  await expect(page.getByRole("heading", { name: "Pilot jet", level: 1 })).toBeVisible();
  await expect(page.locator("main svg").first()).toBeVisible();
  await page.getByRole("radio", { name: "Something else" }).check();
  await page.getByRole("textbox", { name: "Number on the jet" }).first().fill("48");
  await page.getByRole("radio", { name: "measured it" }).check();
  await expect(page.getByText("Read by Ilse.")).toBeVisible();
  await page
    .getByLabel("Take a picture: Picture of it", { exact: true })
    .setInputFiles({ name: "jet.jpg", mimeType: "image/jpeg", buffer: await photographed(page) });
  await expect(page.getByText("The picture is kept on this phone.")).toBeVisible({ timeout: 20_000 });

  // A locked phone loses nothing.
  await page.reload();
  await expect(page.getByRole("radio", { name: "Something else" })).toBeChecked();
  await page.getByRole("textbox", { name: "Number on the jet" }).last().fill("40");
  await next.click();

  await expect(page.getByRole("heading", { name: "Back together" })).toBeVisible();
  await next.click();
  await expect(page.getByText(/Still open: The jets are in/)).toBeVisible();
  expect(await tickAll(page)).toBeGreaterThanOrEqual(8);
  await next.click();

  // The slide snaps at three places of the bars, and the card on a runaway engine is open before the first start.
  await expect(page.getByRole("heading", { name: "Before the first start" })).toBeVisible();
  expect(await tickAll(page)).toBe(3);
  const fitted = page.getByRole("button", { name: "Fitted", exact: true });
  await fitted.click();
  await expect(page.getByText(/Still open: Open the card/)).toBeVisible();
  await page.getByRole("button", { name: /If the engine runs away/ }).click();
  await expect(page.getByRole("heading", { name: "If the engine runs away" })).toBeVisible();
  await expect(page.getByText(/top gear, both brakes hard/)).toBeVisible();
  await fitted.click();

  await expect(page.getByRole("heading", { name: "Bramble 250" })).toBeVisible();
  await expect(page.getByText(/^40 \(bore/)).toBeVisible();
  await page.goto("/#/bike/bramble/history");
  const story = page.locator("ol.story");
  await expect(story.getByText(/^Fitted: pilot jet 40/)).toHaveCount(1);
  await expect(story.getByText(/^Found fitted: pilot jet 48/)).toHaveCount(1);
  await expect(story.getByText(/Into the drawer: 1 × pilot jet 48/)).toHaveCount(1);
  await expect(story.getByText(/by Ilse/).first()).toBeVisible();
});

test("with only the screw turned nothing is taken apart, so nothing is put together", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/bike/bramble/change");
  await expect(page.getByRole("heading", { name: "What do you change?" })).toBeVisible();
  await page.getByRole("checkbox", { name: /Air screw/ }).check();
  const next = page.getByRole("button", { name: "Next", exact: true });
  await next.click();
  await expect(page.getByRole("heading", { name: "Before you start" })).toBeVisible();
  expect(await tickAll(page)).toBe(2);
  await next.click();
  await expect(page.getByRole("heading", { name: "Air screw", level: 1 })).toBeVisible();
  await page.getByRole("textbox", { name: "Turns out" }).fill("1 3/4");
  await page.getByRole("button", { name: "Fitted", exact: true }).click();
  await expect(page.getByRole("link", { name: "Air screw 1¾ turns out" })).toBeVisible();
});

test("a needle nobody can read and a screw nobody knew the side of are written down as they are found", async ({
  page,
}) => {
  await page.goto("/#/new");
  await page.getByRole("radio", { name: "Two-stroke" }).check();
  await page.getByRole("textbox", { name: "Displacement" }).fill("249");
  await page.getByRole("button", { name: "Keep it and go on" }).click();
  await expect(page.getByRole("heading", { name: "249 two-stroke" })).toBeVisible();
  await page.goto(`${page.url()}/change`);
  await page.getByRole("checkbox", { name: /^Screw/ }).check();
  await page.getByRole("checkbox", { name: /^Needle(?! jet)/ }).check();
  const next = page.getByRole("button", { name: "Next", exact: true });
  await next.click();
  await expect(page.getByRole("heading", { name: "Before you start" })).toBeVisible();
  await tickAll(page);
  await next.click();

  await expect(page.getByRole("heading", { name: "Screw", level: 1 })).toBeVisible();
  await page.getByRole("radio", { name: /^Filter side/ }).check();
  await expect(page.getByRole("heading", { name: "Air screw", level: 1 })).toBeVisible();
  await page.getByRole("textbox", { name: "Turns out" }).last().fill("1 1/2");
  await next.click();

  await expect(page.getByRole("heading", { name: "Needle", level: 1 })).toBeVisible();
  await expect(page.getByText(/A name of your own.*none that can be read/).first()).toBeVisible();
  await next.click();
  await expect(page.getByText("Write down what it is, as far as it can be read.").first()).toBeVisible();
  await page.getByRole("textbox", { name: "Marks" }).last().fill("bare 1");
  await next.click();
  await expect(page.getByRole("heading", { name: "Back together" })).toBeVisible();
  await tickAll(page);
  await next.click();
  await tickAll(page);
  await page.getByRole("button", { name: /If the engine runs away/ }).click();
  await page.getByRole("button", { name: "Fitted", exact: true }).click();
  await expect(page.getByRole("link", { name: "Air screw 1½ turns out" })).toBeVisible();
  await expect(page.getByRole("link", { name: /^Needle bare 1/ })).toBeVisible();
});
