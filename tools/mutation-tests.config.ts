import { defineConfig } from "vitest/config";

/** The tests a mutation run repeats: quick ones of the core alone. */
export default defineConfig({
  test: {
    include: ["packages/core/src/**/*.test.ts"],
    exclude: ["**/*.slow.test.ts", "**/node_modules/**"],
  },
});
