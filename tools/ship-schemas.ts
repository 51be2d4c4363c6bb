// Records the shape of every kind of record that is shipped, so that a change of meaning cannot slip in.
// It adds kinds and versions, and lets a shipped shape grow by optional fields; it refuses everything else.
import { readFileSync, writeFileSync } from "node:fs";
import type { JsonSchema } from "../packages/records/src/json-schemas.ts";
import { onlyAdds } from "../packages/records/src/schema-growth.ts";
import { shippedShapes } from "../packages/records/src/shipped-shapes.ts";

const file = new URL("../packages/records/fixtures/shipped-shapes.json", import.meta.url);

let before: Record<string, JsonSchema> = {};
try {
  before = JSON.parse(readFileSync(file, "utf8"));
} catch (error) {
  if ((error as { code?: string }).code !== "ENOENT") throw error;
}
const now = shippedShapes();
const wrong = Object.keys(before).filter(
  (name) => now[name] !== undefined && !onlyAdds(before[name]!, now[name]!),
);
if (wrong.length > 0) {
  console.error(
    `The meaning of ${wrong.join(", ")} changed. Give the kind a new version and an upcaster instead.`,
  );
  process.exitCode = 1;
} else {
  writeFileSync(file, `${JSON.stringify({ ...before, ...now }, null, 1)}\n`);
  console.log(`${Object.keys(now).length} shapes recorded.`);
}
