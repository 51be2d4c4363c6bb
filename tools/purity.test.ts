import { describe, expect, test } from "vitest";
import { withPlanted } from "./planted-tree.ts";
import { runStep } from "./run-step.ts";

const lint = (file: string, text: string) =>
  withPlanted({ [file]: text }, (root) => runStep("lint", "biome", ["lint", file], root));

const CORE = "packages/core/src/air/planted.ts";
const LIMIT = 60_000;

describe("core has no clock, no outside randomness, no I/O, no engine-made powers", () => {
  test.each([
    ["Math.random()", "no outside randomness"],
    ["Math.exp(1)", "numerics/elementary"],
    ["Math.atan2(1, 2)", "numerics/elementary"],
    ["2 ** x", "Engines may round **"],
    ["Date.now()", "core and records have no clock"],
    ["new Date(0).getTime()", "core and records have no clock"],
    ["performance.now()", "core and records have no clock"],
    ["console.log(x)", "core and records do no I/O"],
    ['fetch("a")', "core and records do no I/O"],
  ])(
    "lint refuses %s",
    async (expression, why) => {
      const { ok, output } = await lint(CORE, `export const planted = (x: number) => [x, ${expression}];\n`);
      expect(ok).toBe(false);
      expect(output).toContain(why);
    },
    LIMIT,
  );

  test.each([
    ["x **= 2", "Engines may round **"],
    ["const { exp } = Math", "Name each use of Math where it is used"],
    ["const { exp, sin: sine } = Math", "Name each use of Math where it is used"],
  ])(
    "lint refuses the statement %s",
    async (statement, why) => {
      const { ok, output } = await lint(
        CORE,
        `export function planted(x: number) { ${statement}; return x; }\n`,
      );
      expect(ok).toBe(false);
      expect(output).toContain(why);
    },
    LIMIT,
  );

  test(
    "in records too, and nowhere else",
    async () => {
      const text = "export const planted = () => Math.random();\n";
      expect((await lint("packages/records/src/planted.ts", text)).ok).toBe(false);
      expect((await lint("packages/cli/src/planted.ts", text)).ok).toBe(true);
      expect((await lint("packages/core/src/air/planted.test.ts", text)).ok).toBe(true);
    },
    LIMIT,
  );

  test(
    "what is exact everywhere stays allowed",
    async () => {
      expect((await lint(CORE, "export const planted = (x: number) => Math.sqrt(x) * x;\n")).ok).toBe(true);
    },
    LIMIT,
  );

  test.each(["packages/core", "packages/records"])(
    "%s compiles with no page and no Node",
    async (folder) => {
      const names = ["document", "window", "process", "Buffer", "setTimeout"];
      const { ok, output } = await withPlanted(
        { [`${folder}/src/planted.ts`]: names.map((name) => `export const a${name} = ${name};\n`).join("") },
        (root) => runStep("types", "tsc", ["-p", folder, "--pretty", "false"], root),
      );
      expect(ok).toBe(false);
      for (const name of names) expect(output).toContain(`Cannot find name '${name}'`);
    },
    LIMIT,
  );
});
