import { expect, type Page, test } from "./quiet-test.ts";

// Somebody asks for their data to be removed: it is gone from the disk, and an old copy does not bring it back.

const onDisk = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((done, failed) => {
        const opening = indexedDB.open("jetwright");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction("records").objectStore("records").getAll();
          all.onsuccess = () => {
            opening.result.close();
            done((all.result as { line: string }[]).map(({ line }) => line).join("\n"));
          };
        };
      }),
  );

test("a customer's data is removed for good, and the bike runs as before", async ({ page }) => {
  await page.goto("/");
  await page.getByText("Look at an example shop").click();
  await expect(page.getByRole("link", { name: /Bramble 250/ })).toBeVisible({ timeout: 20_000 });
  await page.goto("/#/bike/bramble/order");
  await page.getByRole("textbox", { name: "The complaint" }).fill("Ferrant says it dies");
  await page.getByRole("combobox", { name: "Whose bike it is" }).fill("Jo Ferrant");
  await page.getByRole("textbox", { name: "How to reach them" }).fill("0555 0142");
  await page.getByRole("button", { name: "Open the order" }).click();
  await expect(page.locator("article.sheet")).toContainText("Jo Ferrant");
  const copy = await onDisk(page);
  expect(copy).toContain("Ferrant");

  await page.goto("/#/more");
  await page.getByRole("link", { name: "Remove a person's data" }).click();
  await page.getByRole("link", { name: /^Jo Ferrant/ }).click();
  const remove = page.getByRole("button", { name: "Remove for good" });
  await expect(remove).toBeDisabled();
  await page.getByRole("checkbox", { name: "This person asked for it" }).check();
  await remove.click();
  await expect(page.getByText("Removed. The other devices")).toBeVisible();
  const after = await onDisk(page);
  expect(after).not.toMatch(/Ferrant|0555 0142/);
  expect(after.split("\n")).toHaveLength(copy.split("\n").length + 1);

  await page.goto("/#/backup");
  const file = { name: "old.jsonl", mimeType: "text/plain", buffer: Buffer.from(copy) };
  await page.locator("input[type=file]").setInputFiles(file);
  await expect(page.getByText("old.jsonl").first()).toBeVisible();
  await page.goto("/#/bike/bramble/fitted");
  await expect(page.getByRole("link", { name: /^Pilot jet 45/ })).toBeVisible();
  await page.goto("/#/orders");
  await expect(page.getByRole("link", { name: /^bramble/i })).toBeVisible();
  expect(await onDisk(page)).not.toContain("Ferrant");
});
