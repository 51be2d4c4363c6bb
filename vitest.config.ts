import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    coverage: {
      provider: "v8",
      include: ["packages/core/src/**/*.ts", "packages/records/src/**/*.ts"],
      // The belief files left out serve tests and the benchmark alone.
      exclude: [
        "**/*.test.ts",
        "**/index.ts",
        "**/test-{airs,reports,lines,shop,situations,stories,weighing,any-story,judged}.ts",
        "**/belief/example-sign.ts",
        "**/belief/importance-oracle.ts",
        "**/belief/invented-log.ts",
      ],
      reporter: ["text-summary", "json-summary", "text"],
      thresholds: { branches: 90, "packages/core/src/**/*.ts": { branches: 90 } },
    },
    projects: [
      {
        test: {
          name: "unit",
          include: ["packages/*/src/**/*.test.ts", "reference/**/*.test.ts", "tools/**/*.test.ts"],
          exclude: ["**/*.slow.test.ts", "**/node_modules/**"],
          // Nothing here keeps state in a module, so files may share one: half the time.
          isolate: false,
          // Guards against hanging only: a busy machine is no fault.
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: "slow",
          include: ["packages/*/src/**/*.slow.test.ts"],
          testTimeout: 900_000,
        },
      },
    ],
  },
});
