import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "vite";
import { ROOT } from "./run-step.ts";

/**
 * Builds the app and holds its script to the budget: what the first visit loads, the page's own and the worker's,
 * together at most 150 kB gzip. Fonts and screens loaded when asked for are listed apart.
 */

const LIMIT_KB = 150;

await build({
  root: join(ROOT, "packages/app"),
  configFile: join(ROOT, "packages/app/vite.config.ts"),
  logLevel: "error",
});
const assets = join(ROOT, "dist/app/assets");
const page = readFileSync(join(ROOT, "dist/app/index.html"), "utf8");
const sizes = readdirSync(assets)
  .filter((name) => name.endsWith(".js"))
  .map((name) => {
    const kilobytes = gzipSync(readFileSync(join(assets, name)), { level: 9 }).length / 1000;
    return { name, kilobytes, first: page.includes(name) || name.startsWith("worker") };
  })
  .sort((a, b) => b.kilobytes - a.kilobytes);
let first = 0;
for (const { name, kilobytes, first: early } of sizes) {
  if (early) first += kilobytes;
  console.log(`${early ? "first" : "later"}  ${kilobytes.toFixed(1).padStart(6)} kB  ${name}`);
}
const fits = first > 0 && first <= LIMIT_KB;
console.log(`${fits ? "fine" : "FAIL"}  first load ${first.toFixed(1)} kB gzip of ${LIMIT_KB}`);
process.exitCode = fits ? 0 : 1;
