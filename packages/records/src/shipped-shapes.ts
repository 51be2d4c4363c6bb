import { bodySchema, type JsonSchema } from "./json-schemas.ts";
import { KINDS } from "./kinds/all.ts";

/** A schema without the words for people, which may be improved at any time. */
function bare(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(bare);
  if (typeof schema !== "object" || schema === null) return schema;
  return Object.fromEntries(
    Object.entries(schema)
      .filter(([key, value]) => !(key === "$schema" || (key === "description" && typeof value === "string")))
      .map(([key, value]) => [key, bare(value)]),
  );
}

/** What every kind of record means today, by "kind@version": the shape of its body. */
export const shippedShapes = (): Record<string, JsonSchema> =>
  Object.fromEntries(KINDS.map((kind) => [`${kind.kind}@${kind.v}`, bare(bodySchema(kind)) as JsonSchema]));
