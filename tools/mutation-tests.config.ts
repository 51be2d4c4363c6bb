import { defineConfig } from "vitest/config";

/** The tests a mutation run repeats: quick ones of the core alone. */
export default defineConfig({
  test: {
    include: ["packages/core/src/**/*.test.ts"],
    // Broken code may be slow without being stuck; the run has a limit of its own.
    testTimeout: 30_000,
    // The rules of advice on random stories work out forty of them before the first test: too long for each mutant.
    exclude: ["**/*.slow.test.ts", "**/next-step.property.test.ts", "**/node_modules/**"],
  },
});
