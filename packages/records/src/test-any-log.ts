import { CHECKS, FAULTS, SIGNS } from "@jetwright/core";
import fc from "fast-check";
import { formatInstant } from "./instant.ts";
import { bodySchema, type JsonSchema } from "./json-schemas.ts";
import type { AnyKind } from "./kind.ts";
import { KINDS } from "./kinds/all.ts";

// Any well-formed records, for the properties.

/** Fields whose words come from a catalogue or name another record. */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  sign: SIGNS.map(({ id }) => id),
  test: ["chop-warm"],
  outcome: ["hangs", "straight"],
  check: CHECKS.map(({ id }) => id),
  fault: [...FAULTS],
  bikes: ["b"],
  records: ["r0", "r1", "r5"],
  record: ["r0", "r1", "r2", "r3", "r9"],
  replaces: ["r0", "r1"],
  customer: ["c1", "c2"],
  order: ["r0", "r1", "r2"],
  marks: ["N2K", "n2k", "", "bare 1"],
  report: ["METAR YUDO 020950Z 24004MPS 9999 FEW020 17/16 Q1018", "KABC 121755Z 06/04 A2990"],
  oil: ["40:1", "none", "2 % of fuel"],
  hash: ["0".repeat(64)],
  clip: ["f".repeat(64)],
};

/** Anything that a schema lets pass, its limits included. */
function valuesOf(schema: JsonSchema, name: string): fc.Arbitrary<unknown> {
  const branches = (schema.anyOf ?? schema.oneOf) as readonly JsonSchema[] | undefined;
  if (branches !== undefined) return fc.oneof(...branches.map((one) => valuesOf(one, name)));
  if ("const" in schema) return fc.constant(schema.const);
  if (Array.isArray(schema.enum)) return fc.constantFrom(...schema.enum);
  switch (schema.type) {
    case "null":
      return fc.constant(null);
    case "boolean":
      return fc.boolean();
    case "string":
      return fc.constantFrom(...(WORDS[name] ?? ["", "some words", "é🏍"]));
    case "integer":
    case "number": {
      const above = schema.exclusiveMinimum === undefined ? -1e6 : (schema.exclusiveMinimum as number) + 1e-3;
      const below = schema.exclusiveMaximum === undefined ? 1e6 : (schema.exclusiveMaximum as number) - 1e-3;
      const from = (schema.minimum as number | undefined) ?? above;
      const to = (schema.maximum as number | undefined) ?? below;
      if (schema.type === "integer")
        return fc.integer({ min: Math.ceil(from), max: Math.floor(Math.min(to, 1e6)) });
      return fc.oneof(fc.double({ min: from, max: to, noNaN: true }), fc.constantFrom(from, to));
    }
    case "array": {
      const least = (schema.minItems ?? 0) as number;
      return fc.array(valuesOf(schema.items as JsonSchema, name), { minLength: least, maxLength: least + 4 });
    }
    case "object": {
      if (schema.properties === undefined) {
        return fc.dictionary(
          fc.constantFrom("a", "b", "__proto__"),
          valuesOf(schema.additionalProperties as JsonSchema, ""),
        );
      }
      const fields = Object.entries(schema.properties as Record<string, JsonSchema>);
      return fc.record(Object.fromEntries(fields.map(([field, one]) => [field, valuesOf(one, field)])), {
        requiredKeys: (schema.required ?? []) as string[],
      });
    }
    default:
      throw new RangeError(`No values for ${JSON.stringify(schema)}`);
  }
}

const recordOf = (kind: AnyKind): fc.Arbitrary<object> =>
  fc.record({
    id: fc.nat({ max: 40 }).map((n) => `r${n}`),
    kind: fc.constant(kind.kind),
    v: fc.constant(kind.v),
    at: fc.oneof(
      fc.constantFrom("2026-05-02T10:15:00Z", "0002-01-01T00:00+14:00", "9998-12-31T23:59-12:00"),
      fc.integer({ min: 0, max: 4e12 }).map(formatInstant),
    ),
    bike: fc.constantFrom("b", "c"),
    body: valuesOf(bodySchema(kind), "body"),
  });
/** A record of any kind that its schema lets pass. */
export const anyRecord = fc.oneof(...KINDS.map(recordOf));
/** Logs that begin with an engine, so that most of them make a case. */
export const anyLog = fc
  .tuple(fc.array(anyRecord, { maxLength: 25 }), fc.constantFrom(2, 4))
  .map(([records, strokes]) => [
    ...["b", "c"].map((bike) => ({
      id: `engine-${bike}`,
      kind: "bike-described",
      at: "2026-01-01T00:00:00Z",
      bike,
      body: { engine: { strokes } },
    })),
    ...records,
  ]);
export const textOf = (records: readonly object[]): string =>
  records.map((one) => `${JSON.stringify(one)}\n`).join("");
