import { createHash, type X509Certificate } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { connect } from "node:tls";
import { type Browser, expect, test } from "@playwright/test";
import { serveLan } from "./serve-lan.ts";

// A phone on the shop's own network. The name leads to this machine by a rule of the browser; that the phone trusts
// the certificate is played by the fingerprint of its key, which the browser is told to accept (its names are held against it in the server's own tests).

const NAME = "bench-of-the-test.local";

/** The certificate that a port answers with, whoever made it. */
const certificateAt = (port: number): Promise<X509Certificate> =>
  new Promise((resolve, reject) => {
    const socket = connect({ port, host: "127.0.0.1", rejectUnauthorized: false }, () => {
      const found = socket.getPeerX509Certificate();
      socket.destroy();
      if (found === undefined) reject(new Error("No certificate came"));
      else resolve(found);
    });
    socket.once("error", reject);
  });

test("on the shop's network an http page says what it lacks, and a trusted https page starts without a network", async ({
  playwright,
  launchOptions,
}) => {
  const data = mkdtempSync(join(tmpdir(), "jetwright-lan-"));
  const { child, ports } = serveLan(data);
  let browser: Browser | undefined;
  try {
    const { port, securePort } = await ports;
    const certificate = await certificateAt(securePort);
    const key = certificate.publicKey.export({ type: "spki", format: "der" });
    browser = await playwright.chromium.launch({
      ...launchOptions,
      args: [
        ...(launchOptions.args ?? []),
        `--host-resolver-rules=MAP ${NAME} 127.0.0.1`,
        `--ignore-certificate-errors-spki-list=${createHash("sha256").update(key).digest("base64")}`,
      ],
    });
    const page = await browser.newPage({ locale: "en" });

    await page.goto(`http://${NAME}:${port}/#/more`);
    await expect(page.getByRole("heading", { name: "What does not work at this address" })).toBeVisible();
    expect(await page.evaluate(() => "serviceWorker" in navigator)).toBe(false);

    await page.goto(`https://${NAME}:${securePort}/#/more`);
    await expect(page.getByRole("link", { name: "Shop and its other phones" })).toBeVisible();
    await expect(page.getByRole("heading", { name: "What does not work at this address" })).toHaveCount(0);
    expect(await page.evaluate(() => navigator.mediaDevices !== undefined)).toBe(true);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.reload();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const ended = new Promise((resolve) => child.once("exit", resolve));
    child.kill("SIGKILL");
    await ended;
    await page.reload();
    await expect(page.getByRole("link", { name: "Shop and its other phones" })).toBeVisible();
  } finally {
    await browser?.close();
    child.kill("SIGKILL");
    rmSync(data, { recursive: true, force: true });
  }
});
