import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runStep, type StepResult } from "./run-step.ts";

export interface Counts {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

/** The parts of the test runner's JSON report that are counted. */
interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly { readonly status: string; readonly assertionResults: readonly unknown[] }[];
}

/**
 * Counts a report. A file that did not load has no tests of its own and counts as one failed; so does a run that
 * ended badly with no test to blame, and a run of no test at all.
 */
export function countReport(report: Report, ended: "well" | "badly"): Counts {
  const unloaded = report.testResults.filter(
    ({ status, assertionResults }) => status === "failed" && assertionResults.length === 0,
  ).length;
  const failed = report.numFailedTests + unloaded;
  const nothing = report.numPassedTests === 0;
  return {
    passed: report.numPassedTests,
    failed: failed > 0 ? failed : ended === "badly" || nothing ? 1 : 0,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** Runs the tests of one project of vitest.config.ts. */
export async function runTests(
  project: "unit" | "slow",
): Promise<{ readonly step: StepResult; readonly counts: Counts }> {
  const folder = mkdtempSync(join(tmpdir(), "jetwright-test-"));
  const file = join(folder, "report.json");
  const step = await runStep(`${project} tests`, "vitest", [
    "run",
    "--project",
    project,
    "--reporter=dot",
    "--reporter=json",
    `--outputFile.json=${file}`,
  ]);
  try {
    const report = JSON.parse(readFileSync(file, "utf8")) as Report;
    return { step, counts: countReport(report, step.ok ? "well" : "badly") };
  } catch {
    return {
      step: { ...step, ok: false, output: `${step.output}\nThe test runner left no report.` },
      counts: { passed: 0, failed: 1, skipped: 0 },
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The last line of every test command. */
export const countsLine = ({ passed, failed, skipped }: Counts): string =>
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`;
