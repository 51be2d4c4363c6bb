import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { type BrowserContext, chromium, type Page } from "@playwright/test";
import { preview } from "vite";
import { palettePng } from "./palette-png.ts";

/** `npm run shots`: draws the main screens with the example shop into docs/shots. `--at` takes an app that runs already. */

const APP = join(import.meta.dirname, "..");
const SHOTS = join(APP, "../../docs/shots");
const LIMIT_KB = 60;
const THREE_LIMIT_KB = 150;
const STILL_MS = 1500;

const PHONE = { width: 390, height: 844 };
const SCREENS = [
  ["bikes", "/"],
  ["bike", "/bike/bramble"],
  ["next", "/bike/bramble/next"],
  ["report", "/bike/bramble/report"],
  ["carburetor", "/bike/bramble/carburetor"],
  ["change", "/bike/bramble/change/0"],
  ["check", "/bike/bramble/check/pressure-test"],
  ["air", "/bike/bramble/air"],
  ["chart", "/bike/bramble/chart"],
  ["sheet", "/bike/bramble/sheet"],
  ["history", "/bike/bramble/history"],
  ["drawer", "/drawer"],
  ["drawer-buy", "/drawer/buy"],
  ["drawer-needle", "/drawer/needle"],
  ["new-bike", "/new"],
  ["start", "/start"],
  ["look-over", "/bike/old-iron/look-over"],
  ["test", "/bike/bramble/test/touch-of-choke"],
  ["marks", "/bike/bramble/marks"],
  ["fitted", "/bike/bramble/fitted"],
  ["describe", "/bike/bramble/describe"],
  ["ask", "/bike/bramble/ask"],
  ["best", "/bike/bramble/best"],
  ["trip", "/bike/bramble/trip"],
  ["listen", "/bike/bramble/listen"],
  ["sweep", "/bike/bramble/sweep"],
  ["orders", "/orders"],
  ["customers", "/customers"],
  ["remove", "/remove"],
  ["shop", "/shop"],
  ["backup", "/backup"],
  ["take", "/take"],
  ["more", "/more"],
  ["cautions", "/cautions"],
] as const;
const AT_NIGHT = ["bike", "report", "carburetor"];

const { values } = parseArgs({ options: { at: { type: "string" } } });
const browserPath = [process.env.CHROMIUM, "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
  (path) => path !== undefined && existsSync(path),
);
if (browserPath === undefined) throw new Error("No browser: install Chromium, or set CHROMIUM to one.");

async function serve(): Promise<{ address: string; close: () => Promise<void> }> {
  const server = await preview({
    root: APP,
    configFile: join(APP, "vite.config.ts"),
    preview: { port: 4330 },
    logLevel: "error",
  });
  return { address: server.resolvedUrls!.local[0]!, close: () => server.close() };
}

/** Opens the app with the example shop in it. */
async function openShop(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await page.getByText("Look at an example shop").click();
  await page.getByRole("link", { name: /Bramble 250/ }).waitFor();
  // The list is drawn anew, without what it said when the shop came in.
  await page.reload();
  await page.getByRole("link", { name: /Bramble 250/ }).waitFor();
  return page;
}

async function show(page: Page, screen: string): Promise<void> {
  await page.goto(`${address}#${screen}`);
  await page.locator("h1").waitFor();
  // Answers come from the worker one after the other: drawn when nothing has changed for a while.
  await page.evaluate(
    (still) =>
      new Promise<void>((resolve) => {
        let timer = setTimeout(resolve, still);
        new MutationObserver(() => {
          clearTimeout(timer);
          timer = setTimeout(resolve, still);
        }).observe(document.body, { subtree: true, childList: true, characterData: true });
      }),
    STILL_MS,
  );
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

/** The page as it stands, in few colours. */
async function shoot(page: Page, name: string): Promise<void> {
  const drawn = `data:image/png;base64,${(await page.screenshot()).toString("base64")}`;
  const { width, height, pixels } = await reader.evaluate(async (source) => {
    const image = new Image();
    image.src = source;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = image.width;
    canvas.height = image.height;
    const context = canvas.getContext("2d")!;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    let pixels = "";
    for (let i = 0; i < data.length; i += 30_000) {
      pixels += String.fromCharCode(...data.subarray(i, i + 30_000));
    }
    return { width: image.width, height: image.height, pixels: btoa(pixels) };
  }, drawn);
  writeFileSync(join(SHOTS, `${name}.png`), palettePng(Buffer.from(pixels, "base64"), width, height));
}

const server = values.at === undefined ? await serve() : { address: values.at, close: async () => {} };
const { address } = server;
mkdirSync(SHOTS, { recursive: true });
const browser = await chromium.launch({
  executablePath: browserPath,
  args: ["--no-sandbox", "--disable-gpu"],
});
const reader = await browser.newPage();
const quiet = { reducedMotion: "reduce", timezoneId: "Europe/Berlin", locale: "en-GB" } as const;

for (const colorScheme of ["light", "dark"] as const) {
  const context = await browser.newContext({ ...quiet, viewport: PHONE, colorScheme });
  const page = await openShop(context);
  for (const [name, screen] of SCREENS) {
    if (colorScheme === "dark" && !AT_NIGHT.includes(name)) continue;
    await show(page, screen);
    await shoot(page, colorScheme === "dark" ? `${name}-night` : name);
  }
  await context.close();
}

const desk = await browser.newContext({ ...quiet, viewport: { width: 1280, height: 800 } });
const wide = await openShop(desk);
await show(wide, "/bike/bramble");
await shoot(wide, "bike-desk");

// Three side by side for the README.
const sheet = await desk.newPage();
await sheet.setViewportSize({ width: 3 * PHONE.width + 48, height: PHONE.height + 24 });
await sheet.goto(address);
const pictures = ["bike", "report", "carburetor"].map((name) => {
  const data = readFileSync(join(SHOTS, `${name}.png`)).toString("base64");
  return `<img alt="" src="data:image/png;base64,${data}" style="border:1px solid #888">`;
});
await sheet.setContent(
  `<body style="margin:0;padding:11px;display:flex;gap:10px;background:#fff">${pictures.join("")}</body>`,
);
await sheet.waitForFunction(() => [...document.images].every(({ complete }) => complete));
await shoot(sheet, "three");
await browser.close();
await server.close();

let tooLarge = 0;
for (const name of readdirSync(SHOTS)) {
  const kilobytes = statSync(join(SHOTS, name)).size / 1000;
  const limit = name === "three.png" ? THREE_LIMIT_KB : LIMIT_KB;
  if (kilobytes > limit) tooLarge++;
  console.log(`${kilobytes > limit ? "LARGE" : "fine "} ${kilobytes.toFixed(1).padStart(6)} kB  ${name}`);
}
process.exitCode = tooLarge === 0 ? 0 : 1;
