import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "vite";
import { ROOT } from "./run-step.ts";

/**
 * Builds the app and holds the script of a first visit, gzip: what the page itself loads before it can draw, and that
 * with the worker which reckons beside it and the English it speaks. Fonts apart; screens loaded when asked for are
 * listed, not counted.
 */

const PAGE_LIMIT_KB = 50;
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

// The page names its own scripts; those name the worker, which asks for the words of one language as it starts.
const worker = scripts.find((name) => name.startsWith("worker-")) ?? "";
const entries = scripts.filter(
  (name) =>
    page.includes(name) ||
    name === worker ||
    (name.startsWith("en-") && worker !== "" && textOf(worker).includes(name)),
);
const early = new Set(entries.flatMap((name) => [...withImports(name)]));
const sizes = scripts
  .map((name) => ({
    name,
    kilobytes: gzipSync(textOf(name), { level: 9 }).length / 1000,
    first: early.has(name),
  }))
  .sort((a, b) => b.kilobytes - a.kilobytes);
const pageOnly = new Set(
  scripts.filter((name) => page.includes(name)).flatMap((name) => [...withImports(name)]),
);
let first = 0;
let own = 0;
for (const { name, kilobytes, first: atOnce } of sizes) {
  if (atOnce) first += kilobytes;
  if (pageOnly.has(name)) own += kilobytes;
  if (kilobytes >= 1)
    console.log(`${atOnce ? "first" : "later"}  ${kilobytes.toFixed(1).padStart(6)} kB  ${name}`);
}
const fits = own > 0 && own <= PAGE_LIMIT_KB && first <= LIMIT_KB;
console.log(`the page's own script ${own.toFixed(1)} kB gzip, limit ${PAGE_LIMIT_KB}`);
console.log(
  `${fits ? "fine" : "FAIL"}  first load with the worker ${first.toFixed(1)} kB gzip, limit ${LIMIT_KB}`,
);
process.exitCode = fits ? 0 : 1;
