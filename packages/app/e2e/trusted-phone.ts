import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { serveLan } from "./serve-lan.ts";
import { browserOf, steps, trustingHome } from "./trusting-home.ts";

// A browser that trusts the authority of `--lan` as a person makes it: by putting the certificate of the trust page into
// its list. No certificate error is told to be overlooked. Build the app first; prints what came of each step, and ends with 1 where one was otherwise.

const NAME = `${hostname().toLowerCase().split(".")[0]}.local`;

const folder = mkdtempSync(join(tmpdir(), "jetwright-trusted-"));
const { child, ports } = serveLan(join(folder, "data"));
const { step, failures } = steps();

/** The error that an address opens with; null where it opens. */
async function errorAt(home: string, address: string): Promise<string | null> {
  const browser = await browserOf(home);
  try {
    const page = await browser.newPage();
    await page.goto(address);
    return null;
  } catch (error) {
    return /net::(\w+)/.exec((error as Error).message)?.[1] ?? (error as Error).message;
  } finally {
    await browser.close();
  }
}

try {
  const { securePort, trustPort } = await ports;
  const address = `https://${NAME}:${securePort}/#/more`;
  const stranger = join(folder, "stranger");
  mkdirSync(stranger);
  step("not trusted, it opens with", await errorAt(stranger, address), "ERR_CERT_AUTHORITY_INVALID");
  const got = await fetch(`http://localhost:${trustPort}/jetwright.crt`);
  const home = trustingHome(folder, Buffer.from(await got.arrayBuffer()));
  step("trusted, it opens with", await errorAt(home, address), null);
  const elsewhere = `https://another.local:${securePort}/`;
  step("at a name the certificate has not", await errorAt(home, elsewhere), "ERR_CERT_COMMON_NAME_INVALID");

  const browser = await browserOf(home);
  const page = await browser.newPage({ locale: "en" });
  await page.goto(address);
  step("a protected page", await page.evaluate(() => isSecureContext), true);
  const tracks = await page.evaluate(async () =>
    (await navigator.mediaDevices.getUserMedia({ audio: true }))
      .getAudioTracks()
      .map(({ readyState }) => readyState),
  );
  step("the microphone", tracks, ["live"]);
  step("fingerprints of pictures", await page.evaluate(() => typeof crypto.subtle?.digest), "function");
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  const ended = new Promise((resolve) => child.once("exit", resolve));
  child.kill("SIGKILL");
  await ended;
  await page.reload();
  const link = page.getByRole("link", { name: "Shop and its other phones" });
  await link.waitFor({ timeout: 30_000 }).catch(() => undefined);
  step("started with the server gone", await link.isVisible(), true);
  await browser.close();
} finally {
  child.kill("SIGKILL");
  rmSync(folder, { recursive: true, force: true });
}
process.exitCode = failures() === 0 ? 0 : 1;
