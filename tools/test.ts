import { ROOT, runStep, type StepResult } from "./run-step.ts";
import { type Counts, countsLine, runTests } from "./vitest-counts.ts";

/**
 * `npm test`: format and lint, types, layers, then every quick test. Each of the first three counts as one test.
 * `tsx tools/test.ts slow` runs the slow tests alone. The last line is always `N passed, N failed`.
 */

let passed = 0;
let failed = 0;
let skipped = 0;

function say({ name, ok, seconds, output }: StepResult, what: string): void {
  console.log(`${ok ? "fine" : "FAIL"}  ${name}${what}  ${seconds.toFixed(1)} s`);
  if (!ok) console.log(`\n${output.trim()}\n`);
}

async function check(name: string, command: string, args: readonly string[]): Promise<void> {
  const result = await runStep(name, command, args, ROOT);
  if (result.ok) passed++;
  else failed++;
  say(result, "");
}

async function tests(project: "unit" | "slow"): Promise<void> {
  const { step, counts, slowest } = await runTests(project);
  say({ ...step, ok: step.ok && counts.failed === 0 }, `: ${countsLine(counts)}`);
  for (const file of slowest) console.log(`        ${file}`);
  add(counts);
}

function add(counts: Counts): void {
  passed += counts.passed;
  failed += counts.failed;
  skipped += counts.skipped;
}

if (process.argv[2] === "slow") {
  await tests("slow");
} else {
  await check("format and lint", "biome", ["ci", "."]);
  await check("types", "tsx", ["tools/types.ts"]);
  await check("layers", "tsx", ["tools/layers.ts"]);
  await tests("unit");
}
console.log(countsLine({ passed, failed, skipped }));
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
