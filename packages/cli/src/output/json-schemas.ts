import { type JsonSchema, recordJsonSchemas } from "@jetwright/records";
import * as z from "zod";
import { airOutput } from "./air-output.ts";
import { baselineOutput } from "./baseline-output.ts";
import { chartOutput } from "./chart-output.ts";
import { checkOutput } from "./check-output.ts";
import { compareOutput } from "./compare-output.ts";
import { nextOutput } from "./next-output.ts";
import { refusedOutput } from "./refused-output.ts";
import { signsOutput } from "./signs-output.ts";

/** Shapes of what the commands print with --json, by command. */
export const OUTPUTS = {
  next: nextOutput,
  compare: compareOutput,
  air: airOutput,
  chart: chartOutput,
  baseline: baselineOutput,
  check: checkOutput,
  signs: signsOutput,
  refused: refusedOutput,
} as const;

/** Every JSON Schema of docs/schemas, by its path there. */
export function schemaFiles(): Readonly<Record<string, JsonSchema>> {
  const files: Record<string, JsonSchema> = {};
  for (const [name, schema] of Object.entries(recordJsonSchemas())) {
    files[`records/${name.replace("@", ".")}.json`] = schema;
  }
  for (const [name, shape] of Object.entries(OUTPUTS)) {
    const { $schema, ...rest } = z.toJSONSchema(shape, { target: "draft-2020-12" }) as JsonSchema;
    files[`answers/${name}.json`] = { $schema, $id: `urn:jetwright:answer:${name}:1`, ...rest };
  }
  return files;
}
