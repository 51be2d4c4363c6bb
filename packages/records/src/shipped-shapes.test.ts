import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { recordJsonSchemas } from "./json-schemas.ts";
import { KINDS } from "./kinds/all.ts";
import { readLogText } from "./log-reader.ts";
import { onlyAdds } from "./schema-growth.ts";
import { shippedShapes } from "./shipped-shapes.ts";

const fixtures = new URL("../fixtures/", import.meta.url);
const shipped = JSON.parse(readFileSync(new URL("shipped-shapes.json", fixtures), "utf8"));
const RECORD_IT = "run: npx tsx tools/ship-schemas.ts";

describe("[R15] the meaning of a kind at a version never changes", () => {
  const now = shippedShapes();
  test.each(KINDS.map((kind) => `${kind.kind}@${kind.v}`))("%s", (name) => {
    const before = shipped[name];
    expect(before, `${name} is new: ${RECORD_IT}`).toBeDefined();
    expect(
      onlyAdds(before, now[name]),
      `The meaning of ${name} changed. Raise v in its kind, add an upcaster and a fixture of the old version, then ${RECORD_IT}`,
    ).toBe(true);
    expect(now[name], `${name} grew by optional fields: ${RECORD_IT}`).toEqual(before);
  });

  test("no kind that was shipped is gone", () => {
    const names = new Set<string>(KINDS.map((kind) => kind.kind));
    expect(Object.keys(shipped).filter((name) => !names.has(name.split("@")[0]!))).toEqual([]);
  });

  test("growth is a new optional field, and nothing else", () => {
    const field = { type: "number", minimum: 0 };
    const shape = { type: "object", properties: { a: field }, required: ["a"], additionalProperties: {} };
    const changed = (change: object): object => ({ ...shape, ...change });
    expect(onlyAdds(shape, changed({ properties: { a: field, b: field } }))).toBe(true);
    expect(onlyAdds({ anyOf: [shape] }, { anyOf: [changed({ properties: { a: field, b: field } })] })).toBe(
      true,
    );
    for (const other of [
      changed({ required: ["a", "b"], properties: { a: field, b: field } }),
      changed({ properties: {} }),
      changed({ properties: { a: { ...field, minimum: 1 } } }),
      changed({ properties: { a: { ...field, maximum: 9 } } }),
      changed({ properties: { a: { type: "number" } } }),
      changed({ required: [] }),
      changed({ properties: null }),
      { type: "object", properties: { a: field } },
      null,
      "object",
    ]) {
      expect(onlyAdds(shape, other)).toBe(false);
    }
    expect(onlyAdds({ anyOf: [shape] }, { anyOf: [shape, shape] })).toBe(false);
    expect(onlyAdds({ anyOf: [shape] }, { anyOf: shape })).toBe(false);
  });
});

describe("[R16] every line ever shipped is still read", () => {
  const versions = readdirSync(fixtures).filter((name) => name.startsWith("version-"));

  test.each(versions)("%s: no problem, no note, every record used", (version) => {
    const folder = new URL(`${version}/`, fixtures);
    for (const name of readdirSync(folder)) {
      const log = readLogText(readFileSync(new URL(name, folder), "utf8"));
      expect([...log.problems, ...log.notes], name).toEqual([]);
      expect(log.counts.used, name).toBe(log.counts.lines);
    }
  });

  test("every version of every kind has a line", () => {
    for (const kind of KINDS) {
      for (let v = 1; v <= kind.v; v++) {
        const file = new URL(`version-${v}/every-kind.jsonl`, fixtures);
        const text = existsSync(file) ? readFileSync(file, "utf8") : "";
        expect(text, `${kind.kind} version ${v}: add a line`).toContain(`"kind":"${kind.kind}","v":${v},`);
        if (v < kind.v) expect(kind.upcasters[v], `${kind.kind} from version ${v}`).toBeDefined();
      }
    }
  });
});

describe("JSON Schemas", () => {
  const schemas = recordJsonSchemas();

  test("one for every kind, of draft 2020-12, each with an id of its own", () => {
    expect(Object.keys(schemas)).toEqual(KINDS.map((kind) => `${kind.kind}@${kind.v}`));
    for (const schema of Object.values(schemas)) {
      expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    }
    expect(new Set(Object.values(schemas).map(({ $id }) => $id)).size).toBe(KINDS.length);
  });

  test("say what the reader asks for", () => {
    expect(schemas["ride-reported@1"]).toMatchObject({
      required: ["id", "kind", "at", "body", "bike"],
      properties: { kind: { const: "ride-reported" }, body: { type: "object" } },
    });
    expect(schemas["note@1"]!.required).toEqual(["id", "kind", "at", "body"]);
    expect(schemas["parts-counted@1"]!.properties).not.toHaveProperty("bike");
    expect(schemas["setup-fitted@1"]).toMatchObject({
      properties: {
        body: { properties: { clip: { anyOf: [{ const: "unknown" }, { required: ["groove"] }] } } },
      },
    });
    // Fields we do not know are kept, so a schema must let them pass.
    expect(JSON.stringify(schemas)).not.toContain('"additionalProperties":false');
  });
});
