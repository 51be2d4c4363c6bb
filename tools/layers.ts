import { existsSync } from "node:fs";
import { cruiseLayers } from "./layer-check.ts";
import { ROOT } from "./run-step.ts";

/** Says which import is against the table in layers.config.cjs, and what is allowed instead. */

const { violations, cruised, missed } = await cruiseLayers(
  ROOT,
  ["packages", "reference", "tools"].filter((folder) => existsSync(`${ROOT}/${folder}`)),
);
for (const violation of violations) console.log(violation);
if (missed.length > 0) {
  console.log(`Not looked at, so nothing is proved about them:\n  ${missed.join("\n  ")}`);
}
console.log(`${cruised} modules cruised, ${violations.length} imports against the table`);
process.exitCode = violations.length > 0 || missed.length > 0 || cruised === 0 ? 1 : 0;
