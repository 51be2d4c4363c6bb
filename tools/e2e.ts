import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ROOT } from "./run-step.ts";

/** `npm run test:e2e`: the app in a real browser; the last line is `N passed, N failed`. Arguments go to the runner. */

interface Stats {
  readonly expected: number;
  readonly unexpected: number;
  readonly flaky: number;
  readonly skipped: number;
}

const folder = mkdtempSync(join(tmpdir(), "jetwright-e2e-"));
const report = join(folder, "report.json");
const run = spawnSync(
  join(ROOT, "node_modules/.bin/playwright"),
  ["test", "--config", "packages/app/playwright.config.ts", "--reporter=list,json", ...process.argv.slice(2)],
  { cwd: ROOT, stdio: "inherit", env: { ...process.env, PLAYWRIGHT_JSON_OUTPUT_NAME: report } },
);
let stats: Stats = { expected: 0, unexpected: 1, flaky: 0, skipped: 0 };
try {
  ({ stats } = JSON.parse(readFileSync(report, "utf8")) as { stats: Stats });
} catch {
  console.log("The runner left no report: nothing is proved.");
}
rmSync(folder, { recursive: true, force: true });
const failed = Math.max(stats.unexpected, run.status === 0 ? 0 : 1);
const skipped = stats.skipped > 0 ? `, ${stats.skipped} skipped` : "";
console.log(`${stats.expected + stats.flaky} passed, ${failed} failed${skipped}`);
process.exitCode = failed > 0 || stats.expected === 0 ? 1 : 0;
