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
const scripts = readdirSync(assets).filter((name) => name.endsWith(".js"));
const textOf = (name: string): string => readFileSync(join(assets, name), "utf8");

/** What a script pulls in with it: its own static imports, and theirs. */
function withImports(name: string, found = new Set<string>()): Set<string> {
  if (found.has(name)) return found;
  found.add(name);
  for (const [, imported] of textOf(name).matchAll(
    /(?:\bfrom|^import|;import)\s*["']\.\/([^"']+\.js)["']/g,
  )) {
    withImports(imported!, found);
  }
  return found;
}

// The page names its own scripts; those name the worker.
const entries = scripts.filter((name) => page.includes(name) || name.startsWith("worker"));
const early = new Set(entries.flatMap((name) => [...withImports(name)]));
const sizes = scripts
  .map((name) => ({
    name,
    kilobytes: gzipSync(textOf(name), { level: 9 }).length / 1000,
    first: early.has(name),
  }))
  .sort((a, b) => b.kilobytes - a.kilobytes);
let first = 0;
for (const { name, kilobytes, first: atOnce } of sizes) {
  if (atOnce) first += kilobytes;
  console.log(`${atOnce ? "first" : "later"}  ${kilobytes.toFixed(1).padStart(6)} kB  ${name}`);
}
const fits = first > 0 && first <= LIMIT_KB;
console.log(`${fits ? "fine" : "FAIL"}  first load ${first.toFixed(1)} kB gzip of ${LIMIT_KB}`);
process.exitCode = fits ? 0 : 1;
