import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { ROOT, runStep, type StepResult } from "./run-step.ts";

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
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly unknown[];
    readonly startTime: number;
    readonly endTime: number;
  }[];
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

/** The files that took longest, each with its seconds. */
export function slowestFiles(report: Pick<Report, "testResults">, count: number): string[] {
  return [...report.testResults]
    .sort((a, b) => b.endTime - b.startTime - (a.endTime - a.startTime))
    .slice(0, count)
    .map(
      ({ name, startTime, endTime }) =>
        `${((endTime - startTime) / 1000).toFixed(1)} s  ${relative(ROOT, name)}`,
    );
}

export interface TestRun {
  readonly step: StepResult;
  readonly counts: Counts;
  readonly slowest: readonly string[];
}

/** Runs the tests of one project of vitest.config.ts. */
export async function runTests(project: "unit" | "slow"): Promise<TestRun> {
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
    return {
      step,
      counts: countReport(report, step.ok ? "well" : "badly"),
      slowest: slowestFiles(report, 4),
    };
  } catch {
    return {
      step: { ...step, ok: false, output: `${step.output}\nThe test runner left no report.` },
      counts: { passed: 0, failed: 1, skipped: 0 },
      slowest: [],
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The last line of every test command. */
export const countsLine = ({ passed, failed, skipped }: Counts): string =>
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`;
