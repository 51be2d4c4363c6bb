import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { preview } from "vite";

/**
 * Kills the browser's whole process group while the page writes records, again and again on one profile, and looks
 * each time whether every record that the page called kept is still there. Rounds: first argument, 50 when left out.
 */

const APP = join(import.meta.dirname, "..");
const rounds = Number(process.argv[2] ?? 50);
const browserPath = [process.env.CHROMIUM, "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
  (path) => path !== undefined && existsSync(path),
);
if (browserPath === undefined) throw new Error("No browser: install Chromium, or set CHROMIUM to one.");

interface Kept {
  readonly store: { readonly all: () => Promise<readonly string[]> };
  readonly keep: (draft: object) => Promise<{ ok: boolean; value: readonly string[] }>;
}

const profile = mkdtempSync(join(tmpdir(), "jetwright-kill-"));
const server = await preview({
  root: APP,
  configFile: join(APP, "vite.config.ts"),
  preview: { port: 4320 },
  logLevel: "error",
});
const address = server.resolvedUrls!.local[0]!;

function launch(): { child: ChildProcess; endpoint: Promise<string> } {
  const child = spawn(
    browserPath!,
    [
      "--headless=new",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      `--user-data-dir=${profile}`,
      "--remote-debugging-port=0",
      "about:blank",
    ],
    { detached: true, stdio: ["ignore", "ignore", "pipe"] },
  );
  const endpoint = new Promise<string>((resolve, reject) => {
    let said = "";
    child.stderr!.on("data", (chunk: Buffer) => {
      said += chunk;
      const found = /DevTools listening on (ws:\S+)/.exec(said);
      if (found) resolve(found[1]!);
    });
    child.on("exit", () => reject(new Error(`The browser ended by itself:\n${said}`)));
  });
  return { child, endpoint };
}

/** Guards against hanging only: a busy machine is no fault. */
const PATIENCE = { timeout: 180_000 };

const kept = new Set<string>();
let lost = 0;
let killed = 0;
let failedRounds = 0;

async function killAgainAndAgain(): Promise<void> {
  // One launch more than kills: the last one only looks.
  for (let round = 1; round <= rounds + 1; round++) {
    const { child, endpoint } = launch();
    const browser = await chromium.connectOverCDP(await endpoint, PATIENCE);
    const context = browser.contexts()[0]!;
    const page = await context.newPage();
    await page.exposeBinding("told", (_source, id: string) => {
      kept.add(id);
    });
    await page.goto(address, PATIENCE);
    await page.waitForFunction(() => "jetwright" in window, null, PATIENCE);
    const there = new Set(
      await page.evaluate(async () => {
        const lines = await (window as unknown as { jetwright: Kept }).jetwright.store.all();
        return lines.map((line) => (JSON.parse(line) as { id: string }).id);
      }),
    );
    const missing = [...kept].filter((id) => !there.has(id));
    lost += missing.length;
    if (missing.length > 0) failedRounds++;
    for (const id of missing) kept.delete(id);
    child.removeAllListeners("exit");
    const closed = new Promise((resolve) => child.once("close", resolve));
    if (round <= rounds) {
      void page
        .evaluate(async () => {
          const shop = (window as unknown as { jetwright: Kept }).jetwright;
          const told = (window as unknown as { told: (id: string) => void }).told;
          for (let i = 0; ; i++) {
            const result = await shop.keep({
              kind: "note",
              body: { text: `written before a kill, number ${i}` },
            });
            if (result.ok) told(result.value[0]!);
          }
        })
        .catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, 150 + ((round * 97) % 500)));
      killed++;
    }
    process.kill(-child.pid!, "SIGKILL");
    await closed;
    await browser.close().catch(() => undefined);
  }
}

try {
  await killAgainAndAgain();
} catch (error) {
  failedRounds++;
  console.log(`After ${killed} kills: ${error instanceof Error ? error.stack : error}`);
}
await server.close();
// A child of the browser may still be writing its last.
rmSync(profile, { recursive: true, force: true, maxRetries: 20, retryDelay: 250 });
if (kept.size === 0) failedRounds++;
console.log(`${killed} kills, ${kept.size} records called kept, ${lost} lost`);
console.log(`${Math.max(0, killed - failedRounds)} passed, ${failedRounds} failed`);
// A browser that would not start may still hold the process.
process.exit(failedRounds > 0 ? 1 : 0);
