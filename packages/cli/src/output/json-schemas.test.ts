import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { COMMANDS } from "../commands.ts";
import { OUTPUTS, schemaFiles } from "./json-schemas.ts";

const folder = new URL("../../../../docs/schemas/", import.meta.url);
const files = schemaFiles();

describe("docs/schemas", () => {
  test.each(Object.keys(files))("%s is up to date (npm run schemas writes it)", (path) => {
    expect(existsSync(new URL(path, folder)), "run: npm run schemas").toBe(true);
    const written = JSON.parse(readFileSync(new URL(path, folder), "utf8"));
    expect(written, "run: npm run schemas").toEqual(JSON.parse(JSON.stringify(files[path])));
  });

  test("holds nothing else", () => {
    const there = ["records", "answers"].flatMap((sub) =>
      readdirSync(new URL(`${sub}/`, folder)).map((name) => `${sub}/${name}`),
    );
    expect(there.sort()).toEqual(Object.keys(files).sort());
  });

  test("every command has the shape of its answer there, with its name and version in it", () => {
    for (const { name } of COMMANDS) {
      expect(Object.keys(OUTPUTS)).toContain(name);
      expect(files[`answers/${name}.json`]).toMatchObject({
        $schema: "https://json-schema.org/draft/2020-12/schema",
        properties: { command: { const: name }, v: { const: 1 } },
      });
    }
  });
});
