import * as z from "zod/mini";
import type { AnyKind } from "./kind.ts";
import { KINDS } from "./kinds/all.ts";
import { SAFE_ID } from "./kinds/shapes.ts";

/** A JSON Schema, draft 2020-12. */
export type JsonSchema = { readonly [key: string]: unknown };

/** The schema of a kind's body alone. */
export const bodySchema = (kind: AnyKind): JsonSchema =>
  z.toJSONSchema(kind.body, { target: "draft-2020-12" }) as JsonSchema;

/** The schema of a whole record of a kind, as one line of a log carries it. */
export function recordSchema(kind: AnyKind): JsonSchema {
  const { $schema, ...body } = bodySchema(kind);
  const needed = ["id", "kind", "at", "body"];
  if (kind.bike === "needed") needed.push("bike");
  const id = { type: "string", pattern: SAFE_ID.source };
  return {
    $schema,
    $id: `urn:jetwright:record:${kind.kind}:${kind.v}`,
    title: `${kind.kind}, version ${kind.v}`,
    type: "object",
    required: needed,
    properties: {
      id: { ...id, description: "Unique name of the record; a UUID of version 7 when the tool writes it" },
      kind: { const: kind.kind },
      v: { const: kind.v, description: "Version of the kind; 1 when left out" },
      at: { type: "string", description: "When it happened: ISO 8601 with zone, 2026-05-02T10:15:00+02:00" },
      by: { type: "object", properties: { device: { type: "string" }, person: { type: "string" } } },
      ...(kind.bike === "never" ? {} : { bike: { ...id, description: "Name of the bike it concerns" } }),
      body,
    },
  };
}

/** JSON Schemas of every kind of record, newest version, by "kind@version". */
export function recordJsonSchemas(): Readonly<Record<string, JsonSchema>> {
  return Object.fromEntries(KINDS.map((kind) => [`${kind.kind}@${kind.v}`, recordSchema(kind)]));
}
