import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { build } from "vite";
import { KeptRuns } from "../packages/proving/src/measure/kept-runs.ts";
import { runAll } from "../packages/proving/src/measure/run-all.ts";
import { summaryLines } from "../packages/proving/src/report/lines.ts";
import { withFigures, writeReport } from "../packages/proving/src/report/write-report.ts";
import { ROOT, runStep } from "./run-step.ts";

/**
 * Runs every policy over virtual bikes. `npm run prove` takes the bikes of the report and writes docs/proving.md;
 * `npm run prove -- --tune 100` takes that many of the bikes kept for tuning, prints, and writes nothing.
 * What was run is kept under dist/proving-runs: a run that was stopped goes on where it was.
 */
const { values } = parseArgs({
  options: {
    tune: { type: "string" },
    from: { type: "string", default: "0" },
    bikes: { type: "string", default: "2000" },
    threads: { type: "string", default: "2" },
    only: { type: "string", default: "" },
    rider: { type: "string" },
    /** Bikes the tool itself works on, the first of the seeds: where time is short. */
    tool: { type: "string" },
  },
});

const OUT = join(ROOT, "dist/proving");
await build({
  root: ROOT,
  configFile: false,
  logLevel: "error",
  build: {
    ssr: join(ROOT, "packages/proving/src/work.ts"),
    outDir: OUT,
    emptyOutDir: true,
    minify: false,
    rollupOptions: { output: { entryFileNames: "work.mjs" } },
  },
  ssr: { noExternal: true },
});
const { POLICIES } = await import("../packages/proving/src/policies/all.ts");
const policies = POLICIES.map(({ name }) => name).filter((name) => name.includes(values.only));
const tuning = values.tune !== undefined;
const count = Number(values.tune ?? values.bikes);
const first = Number(values.from);
const seeds = Array.from({ length: count }, (_, i) => `${tuning ? "tune" : "report"}-${first + i}`);
const kind =
  values.rider === "good" || values.rider === "typical" || values.rider === "novice" ? values.rider : null;
const script = join(OUT, "work.mjs");
const kept = new KeptRuns(join(ROOT, "dist/proving-runs"), script, kind);
const toolBikes = values.tool === undefined ? count : Number(values.tool);
const asked = seeds.map((seed, i) => ({
  seed,
  policies: policies.filter((name) => i < toolBikes || !name.startsWith("ours")),
}));
const tasks = asked
  .map(({ seed, policies }) => ({ seed, policies: policies.filter((name) => !kept.get(seed, name)) }))
  .filter(({ policies }) => policies.length > 0);
let left = tasks.length;
await runAll(script, { tasks, kind }, Number(values.threads), (outcomes) => {
  kept.add(outcomes);
  left--;
  if (process.stderr.isTTY) process.stderr.write(`\r${left} bikes left  `);
});
const outcomes = asked.flatMap(({ seed, policies }) => policies.map((name) => kept.get(seed, name)!));
// Time on one core of each, whenever it was spent.
const seconds = outcomes.reduce((sum, { milliseconds }) => sum + milliseconds, 0) / 1000;
console.log(summaryLines(policies, outcomes).join("\n"));
console.log(`${count} bikes, ${policies.length} policies: ${seconds.toFixed(0)} s of a core`);
if (!tuning && kind === null && values.only === "") {
  const { figures, plots } = writeReport(policies, outcomes, seconds);
  const page = join(ROOT, "docs/proving.md");
  writeFileSync(page, withFigures(readFileSync(page, "utf8"), figures));
  mkdirSync(join(ROOT, "docs/proving"), { recursive: true });
  for (const [name, picture] of plots) writeFileSync(join(ROOT, "docs/proving", name), picture);
  await runStep("format", "biome", ["format", "--write", "docs/proving.md"]);
}
