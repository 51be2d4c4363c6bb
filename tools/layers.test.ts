import { describe, expect, test } from "vitest";
import { cruiseLayers } from "./layer-check.ts";
import { withPlanted } from "./planted-tree.ts";

const cruise = (files: Readonly<Record<string, string>>) =>
  withPlanted(files, (root) => cruiseLayers(root, ["packages"]));

const UNIT = "packages/core/src/units/planted.ts";
const AIR = "packages/core/src/air/planted.ts";
const METERING = "packages/core/src/metering/planted.ts";
const value = "export const planted = 1;\n";

describe("the layer check", () => {
  test("lets an import along the table pass, and has looked at every file", async () => {
    const { violations, cruised, missed } = await cruise({
      [AIR]: value,
      [METERING]: 'import { planted } from "../air/planted.ts";\nexport const more = planted + 1;\n',
    });
    expect(violations).toEqual([]);
    expect(cruised).toBe(2);
    expect(missed).toEqual([]);
  }, 60_000);

  test("refuses an import against it and names what is allowed", async () => {
    const { violations } = await cruise({
      [METERING]: value,
      [AIR]: 'import { planted } from "../metering/planted.ts";\nexport const more = planted + 1;\n',
    });
    expect(violations).toHaveLength(1);
    expect(violations[0]).toContain(`${AIR} -> ${METERING}`);
    expect(violations[0]).toContain("core/air may import: units, numerics");
  }, 60_000);

  test("refuses a type-only import too, a circle, and another package by its back door", async () => {
    const { violations, cycles } = await cruise({
      [UNIT]: 'import type { More } from "../air/planted.ts";\nexport const planted: More = 1;\n',
      [AIR]:
        'import { other } from "./other.ts";\nexport type More = number;\nexport const again = (): number => other();\n',
      "packages/core/src/air/other.ts":
        'import { again } from "./planted.ts";\nexport const other = (): number => again();\n',
      "packages/records/src/planted.ts": 'export { again } from "../../core/src/air/planted.ts";\n',
    });
    const said = violations.join("\n");
    expect(said).toContain("core/units may import: nothing");
    expect(said).toContain("packages/records may import: @jetwright/core (its doors only)");
    expect(cycles).toHaveLength(1);
    expect(cycles[0]!.every((file) => file.startsWith("packages/core/src/air/"))).toBe(true);
  }, 60_000);
});
