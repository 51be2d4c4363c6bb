import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { ROOT } from "./run-step.ts";
import { countReport, countsLine, slowestFiles } from "./vitest-counts.ts";

const report = (
  passed: number,
  failed: number,
  pending = 0,
  files: { status: string; tests: number }[] = [],
) => ({
  numPassedTests: passed,
  numFailedTests: failed,
  numPendingTests: pending,
  numTodoTests: 0,
  testResults: files.map(({ status, tests }) => ({
    name: status,
    status,
    assertionResults: Array(tests).fill({}),
    startTime: 0,
    endTime: 0,
  })),
});

describe("counts of a test run", () => {
  test("a clean run", () => {
    expect(countReport(report(12, 0), "well")).toEqual({ passed: 12, failed: 0, skipped: 0 });
  });
  test("a file that does not load counts as one failed", () => {
    const files = [
      { status: "failed", tests: 0 },
      { status: "failed", tests: 3 },
      { status: "passed", tests: 0 },
    ];
    expect(countReport(report(12, 2, 0, files), "badly").failed).toBe(3);
  });
  test("a run of nothing, or one that ended badly with no test to blame, is not green", () => {
    expect(countReport(report(0, 0), "well").failed).toBe(1);
    expect(countReport(report(12, 0), "badly").failed).toBe(1);
    expect(countReport(report(12, 2), "badly").failed).toBe(2);
  });
  test("the line names skipped tests only where there are any", () => {
    expect(countsLine({ passed: 12, failed: 0, skipped: 0 })).toBe("12 passed, 0 failed");
    expect(countsLine({ passed: 3, failed: 1, skipped: 2 })).toBe("3 passed, 1 failed, 2 skipped");
  });
  test("the slowest files come first", () => {
    const file = (name: string, startTime: number, endTime: number) => ({
      name: join(ROOT, name),
      status: "passed",
      assertionResults: [],
      startTime,
      endTime,
    });
    const testResults = [file("a", 900, 1000), file("b", 0, 2500), file("c", 5000, 6000)];
    expect(slowestFiles({ testResults }, 2)).toEqual(["2.5 s  b", "1.0 s  c"]);
  });
});
