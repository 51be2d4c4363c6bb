import { describe, expect, test } from "vitest";
import * as z from "zod/mini";
import { extraFields } from "./extra-fields.ts";

const jet = z.looseObject({ part: z.literal("jet"), number: z.number() });
const needle = z.looseObject({ part: z.literal("needle"), marks: z.string() });
const body = z.looseObject({
  words: z.optional(z.string()),
  fitted: z.optional(z.union([z.literal("unknown"), z.looseObject({ groove: z.number() })])),
  parts: z.optional(z.array(z.discriminatedUnion("part", [jet, needle]))),
  measured: z.optional(z.looseObject({ at: z.looseObject({ lengthMm: z.number() }) })),
  anything: z.optional(z.record(z.string(), z.unknown())),
});

const pathsOf = (value: unknown) => extraFields(body, value, "body").map(({ path }) => path);

describe("fields a schema does not name", () => {
  test("are found at the top, with the name they were likely meant for", () => {
    expect(extraFields(body, { word: "x" }, "body")).toEqual([
      {
        path: "body.word",
        told: { code: "extra-field", given: { near: ["words"], outside: false } },
        what: "is not a field we know; it is kept but not used",
        mend: expect.stringContaining('"words"'),
      },
    ]);
  });

  test("are found inside objects, lists and either side of a choice", () => {
    expect(
      pathsOf({
        words: "x",
        fitted: { groove: 3, grove: 3 },
        measured: { at: { lengthMm: 1, widthMm: 2 }, by: "eye" },
        parts: [
          { part: "jet", number: 45 },
          { part: "jet", number: 45, size: "s" },
        ],
      }),
    ).toEqual(["body.fitted.grove", "body.measured.at.widthMm", "body.measured.by", "body.parts.1.size"]);
  });

  test("are those of the branch a record chose, not of any", () => {
    expect(pathsOf({ parts: [{ part: "needle", marks: "A", number: 45 }] })).toEqual(["body.parts.0.number"]);
  });

  test("are none where the schema takes any name, or the value is a word", () => {
    expect(pathsOf({ anything: { a: 1, b: { c: 2 } }, fitted: "unknown" })).toEqual([]);
  });

  test("are also those that every object has from birth", () => {
    expect(pathsOf(JSON.parse('{"toString": 1, "__proto__": 2}'))).toEqual([
      "body.toString",
      "body.__proto__",
    ]);
  });
});
