import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { ROOT } from "./run-step.ts";

/** The rules of the house, which a planted tree gets copies of. */
const RULES = [
  "biome.json",
  "tools/pure.grit",
  "tsconfig.base.json",
  "tsconfig.json",
  "packages/core/package.json",
  "packages/core/tsconfig.json",
  "packages/records/tsconfig.json",
];

/**
 * Makes a small tree of its own with the house's rules and the given files, hands it over, and removes it.
 * So a check can be shown something forbidden without planting it in the real tree.
 */
export async function withPlanted<Result>(
  files: Readonly<Record<string, string>>,
  use: (root: string) => Promise<Result>,
): Promise<Result> {
  const root = mkdtempSync(join(tmpdir(), "jetwright-planted-"));
  try {
    for (const rule of RULES) {
      mkdirSync(dirname(join(root, rule)), { recursive: true });
      copyFileSync(join(ROOT, rule), join(root, rule));
    }

    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(root, name)), { recursive: true });
      writeFileSync(join(root, name), text);
    }
    return await use(root);
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}
