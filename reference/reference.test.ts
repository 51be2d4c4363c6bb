import { describe, expect, test } from "vitest";
import { REFERENCES } from "./all.ts";
import { runCheck } from "./check.ts";

for (const { topic, checks } of REFERENCES) {
  describe(`reference: ${topic}`, () => {
    test.each(checks.map((check) => [check.name, check] as const))("%s", (_name, check) => {
      const { ours, want, within, relative, passed, source } = runCheck(check);
      expect(passed, `${ours} against ${want} ±${within}${relative ? " (relative)" : ""}; ${source}`).toBe(
        true,
      );
    });
  });
}

test("there are outside checks to run", () => {
  expect(REFERENCES.flatMap((topic) => topic.checks).length).toBeGreaterThan(0);
});
