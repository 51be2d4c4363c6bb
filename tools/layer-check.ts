import { readdirSync } from "node:fs";
import { join, relative } from "node:path";
import { ROOT, runStep } from "./run-step.ts";

export interface LayerCheck {
  /** One line for each import against the table: from where to where, and what is allowed. */
  readonly violations: readonly string[];
  /** How many of our own modules were looked at. */
  readonly cruised: number;
  /** Source files on disk that were not: with these the check would be green and check nothing. */
  readonly missed: readonly string[];
  /** The import circles among the violations, each as its files in order. */
  readonly cycles: readonly (readonly string[])[];
}

interface Cruise {
  readonly summary: {
    readonly violations: readonly {
      readonly from: string;
      readonly to: string;
      readonly rule: { readonly name: string };
      readonly cycle?: readonly { readonly name: string }[];
    }[];
    readonly ruleSetUsed: {
      readonly forbidden: readonly { readonly name: string; readonly comment?: string }[];
    };
  };
  readonly modules: readonly { readonly source: string }[];
}

/** Looks at every import under the folders of a tree by the table in tools/layers.config.cjs. */
export async function cruiseLayers(root: string, folders: readonly string[]): Promise<LayerCheck> {
  const config = join(ROOT, "tools", "layers.config.cjs");
  const step = await runStep("layers", "depcruise", ["--config", config, "-T", "json", ...folders], root);
  const cruise = read(step.output);
  const { violations, ruleSetUsed } = cruise.summary;
  const comments = new Map(ruleSetUsed.forbidden.map(({ name, comment }) => [name, comment ?? ""]));
  const seen = new Set(cruise.modules.map(({ source }) => source));
  const files = folders.flatMap((folder) => sourceFiles(root, folder));
  return {
    violations: violations.map(
      ({ from, to, rule }) => `${from} -> ${to}\n  ${rule.name}: ${comments.get(rule.name)}`,
    ),
    cruised: files.filter((file) => seen.has(file)).length,
    missed: files.filter((file) => !seen.has(file)),
    cycles: violations.flatMap(({ cycle }) => (cycle ? [cycle.map(({ name }) => name)] : [])),
  };
}

function read(output: string): Cruise {
  try {
    return JSON.parse(output) as Cruise;
  } catch {
    throw new Error(`The layer check did not run:\n${output.slice(0, 2000)}`);
  }
}

/** Every TypeScript source file under a folder of a tree, by its path from the tree's root. */
export function sourceFiles(root: string, folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .filter((file) => !/node_modules|[.]stryker-tmp|coverage\//.test(file))
    .sort();
}
