import { existsSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { defineConfig } from "@playwright/test";

/** A browser that is there: named, Debian's, or Chrome. Playwright's own where none is. */
const found = [process.env.CHROMIUM, "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
  (path) => path !== undefined && existsSync(path),
);
if (found === undefined) {
  throw new Error(
    "No browser for the end-to-end tests. Install Chromium (Debian: apt-get install chromium), or set CHROMIUM to one.",
  );
}

/** Another port where several checkouts of the project share a machine. */
const PORT = Number(process.env.E2E_PORT ?? 4310);

export default defineConfig({
  testDir: "e2e",
  // These only guard against hanging: what a busy machine takes longer for is no fault.
  timeout: 300_000,
  expect: { timeout: 30_000 },
  workers: 2,
  reporter: [["list"]],
  use: {
    baseURL: `http://localhost:${PORT}`,
    launchOptions: {
      executablePath: found,
      args: [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
      ],
    },
    trace: "retain-on-failure",
  },
  projects: [
    { name: "phone", use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } },
    // What a screen says, and how a page comes, does not hang on its width.
    {
      name: "desk",
      use: { viewport: { width: 1280, height: 800 } },
      testIgnore: ["tongue.spec.ts", "lan.spec.ts"],
    },
  ],
  webServer: {
    command: `npx tsx ../../tools/start.ts --port ${PORT} --data ${join(tmpdir(), `jetwright-e2e-${PORT}`)}`,
    url: `http://localhost:${PORT}`,
    reuseExistingServer: false,
    timeout: 240_000,
  },
});
