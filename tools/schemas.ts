// Writes docs/schemas from the shapes the code checks with: every kind of record, and every answer in JSON.
import { mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { schemaFiles } from "../packages/cli/src/output/json-schemas.ts";
import { ROOT, runStep } from "./run-step.ts";

const folder = new URL("../docs/schemas/", import.meta.url);
const files = schemaFiles();
for (const sub of ["records", "answers"]) {
  mkdirSync(new URL(`${sub}/`, folder), { recursive: true });
  for (const name of readdirSync(new URL(`${sub}/`, folder))) {
    if (!Object.hasOwn(files, `${sub}/${name}`)) rmSync(new URL(`${sub}/${name}`, folder));
  }
}
for (const [path, schema] of Object.entries(files)) {
  writeFileSync(new URL(path, folder), `${JSON.stringify(schema, null, 2)}\n`);
}
const { ok, output } = await runStep("format", "biome", ["format", "--write", "docs/schemas"], ROOT);
if (!ok) console.error(output);
console.log(`${Object.keys(files).length} schemas in docs/schemas`);
process.exitCode = ok ? 0 : 1;
