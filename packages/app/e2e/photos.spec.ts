import { deflateSync } from "node:zlib";
import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "./quiet-test.ts";

// A picture of a part: taken, made smaller, shown beside it, opened large, removed and had back.

async function openShop(page: Page): Promise<void> {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible({ timeout: 20_000 });
}

function crc32(bytes: Buffer): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/** A PNG by the format's own rules: grey, 8 bits, left half dark and right half light. */
function png(width: number, height: number): Buffer {
  const chunk = (type: string, data: Buffer): Buffer => {
    const named = Buffer.concat([Buffer.from(type, "latin1"), data]);
    const [length, crc] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    crc.writeUInt32BE(crc32(named));
    return Buffer.concat([length, named, crc]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  const row = Buffer.alloc(width + 1, 60).fill(200, 1 + width / 2);
  row[0] = 0;
  return Buffer.concat([
    Buffer.from("89504e470d0a1a0a", "hex"),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(Buffer.concat(Array.from({ length: height }, () => row)))),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

/** A camera's JPEG, lying on its side: 300 by 200 with the Exif orientation 6, and a text that stands for the place. */
async function cameraJpeg(page: Page): Promise<Buffer> {
  const address = await page.evaluate(() => {
    const canvas = document.createElement("canvas");
    Object.assign(canvas, { width: 300, height: 200 });
    canvas.getContext("2d")!.fillRect(0, 0, 150, 200);
    return canvas.toDataURL("image/jpeg");
  });
  const jpeg = Buffer.from(address.split(",")[1]!, "base64");
  const entries = Buffer.from(
    // Little-endian TIFF with two entries: orientation (0x0112, short, 6) and description (0x010e, 20 letters at 38).
    "49492a0008000000" +
      "0200" +
      "0e01020014000000" +
      "26000000" +
      "1201030001000000" +
      "06000000" +
      "00000000",
    "hex",
  );
  const body = Buffer.concat([
    Buffer.from("Exif\0\0", "latin1"),
    entries,
    Buffer.from("47.0707N 9.0909E\0\0\0\0", "latin1"),
  ]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
}

/** What the device keeps: hash told and hash of the bytes, type, size in pixels, and the bytes as letters. */
const keptPictures = (page: Page) =>
  page.evaluate(async () => {
    const { photos } = (
      window as unknown as {
        jetwright: {
          database: {
            photos: { held(): Promise<readonly { hash: string }[]>; get(hash: string): Promise<Blob> };
          };
        };
      }
    ).jetwright.database;
    return Promise.all(
      (await photos.held()).map(async ({ hash }) => {
        const blob = await photos.get(hash);
        const bytes = new Uint8Array(await blob.arrayBuffer());
        const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
        const { width, height } = await createImageBitmap(blob);
        return {
          hash,
          digest: [...digest].map((byte) => byte.toString(16).padStart(2, "0")).join(""),
          type: blob.type,
          width,
          height,
          letters: new TextDecoder("latin1").decode(bytes),
        };
      }),
    );
  });

/** A busy machine takes its time to draw a picture anew. */
const DRAWN = { timeout: 20_000 };

test("a picture of a part is made smaller, stands beside it, opens large, goes and comes back", async ({
  page,
}) => {
  await openShop(page);
  await page.goto("/#/more");
  await page.getByRole("textbox", { name: "Who works here" }).fill("Ilse");
  await page.goto("/#/bike/bramble/fitted/main");
  await page
    .getByLabel("Take a picture: Picture of it", { exact: true })
    .setInputFiles({ name: "main.png", mimeType: "image/png", buffer: png(4000, 3000) });
  await expect(page.getByText("The picture is kept on this phone.")).toBeVisible(DRAWN);
  const [kept, ...more] = await keptPictures(page);
  expect(more).toEqual([]);
  expect(kept).toMatchObject({ type: "image/jpeg", width: 1600, height: 1200, hash: kept!.digest });

  await page.goto("/#/bike/bramble/fitted");
  await page.reload();
  const thumb = page.getByRole("button", { name: /^Picture: Main jet, / });
  await expect(thumb.locator("img")).toBeVisible();
  await expect(page.getByRole("button", { name: /^Picture: / })).toHaveCount(1);

  // Opened and closed from the keyboard, and the place on the page is kept.
  await thumb.focus();
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog", { name: "Main jet" });
  await expect(dialog.getByRole("img", { name: "Main jet" })).toBeVisible();
  await expect(dialog.getByText(/· by Ilse$/)).toBeVisible();
  expect((await new AxeBuilder({ page }).include("dialog").analyze()).violations).toEqual([]);
  await page.keyboard.press("Escape");
  await expect(dialog).toHaveCount(0);
  await expect(thumb).toBeFocused();

  await thumb.click();
  await dialog.getByRole("button", { name: "Remove this picture" }).click();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("The picture is back.")).toBeVisible();
  await page.reload();
  await expect(thumb.locator("img")).toBeVisible();

  await page.goto("/#/bike/bramble/history");
  await page.getByRole("button", { name: /^Picture: Main jet, / }).click();
  await expect(dialog.getByRole("img", { name: "Main jet" })).toBeVisible();
  await dialog.getByRole("button", { name: "Close", exact: true }).click();
  // One of the example's was taken on another phone.
  await page.getByRole("button", { name: /^Picture: plug after the hill/ }).click();
  await expect(page.getByRole("dialog").getByText(/not on this phone/)).toBeVisible();
  await page.keyboard.press("Escape");
  await page.goto("/#/backup");
  await expect(page.getByText(/^1 picture on this phone: \d+ kB\.$/)).toBeVisible();

  await page.goto("/#/bike/bramble/fitted");
  await thumb.click();
  await dialog.getByRole("button", { name: "Remove this picture" }).click();
  await expect(thumb).toHaveCount(0);
  await page.goto("/#/bike/bramble/history");
  await expect(page.locator("s").filter({ hasText: /^A picture: main jet$/ })).toBeVisible();
  await expect(thumb).toHaveCount(0);
});

test("a picture is kept upright without its place, and what is none gets a sentence", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/bike/bramble/fitted/pilot");
  const take = page.getByLabel("Choose a picture: Picture of it", { exact: true });
  await take.setInputFiles({ name: "notes.png", mimeType: "image/png", buffer: Buffer.from("no picture") });
  await expect(page.getByText("cannot open “notes.png” as a picture")).toBeVisible();
  expect(await keptPictures(page)).toEqual([]);

  const buffer = await cameraJpeg(page);
  expect(buffer.includes("47.0707N")).toBe(true);
  await take.setInputFiles({ name: "camera.jpg", mimeType: "image/jpeg", buffer });
  await expect(page.getByText("The picture is kept on this phone.")).toBeVisible(DRAWN);
  const [kept] = await keptPictures(page);
  // On its side it was 300 by 200: orientation 6 of the Exif standard stands it up.
  expect(kept).toMatchObject({ width: 200, height: 300 });
  expect(kept!.letters).not.toContain("47.0707N");
  expect(kept!.letters).not.toContain("Exif");
});

test("a plug looked at is pictured on the card, and stands in the history", async ({ page }) => {
  await openShop(page);
  await page.goto("/#/bike/bramble/test/plug-look-part");
  await page
    .getByLabel("Choose a picture: Picture of the plug")
    .setInputFiles({ name: "plug.png", mimeType: "image/png", buffer: png(40, 30) });
  await expect(page.getByText("The picture is kept on this phone.")).toBeVisible();
  await expect(page.locator(".photo-thumb img")).toBeVisible();
  await page.goto("/#/bike/bramble/history");
  await expect(page.getByText("A picture: Plug look after a steady run")).toBeVisible();
});
