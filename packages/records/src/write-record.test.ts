import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canonicalJson, digest } from "./canonical-json.ts";
import type { Json, JsonObject } from "./json.ts";
import { readLog, readLogText } from "./log-reader.ts";
import { writeLog, writeRecord } from "./write-record.ts";

/** Any JSON that a line may hold: whole characters, finite numbers, not too deep. */
const json = fc.jsonValue({ maxDepth: 4, stringUnit: "binary" }).map((value) => value as Json);

describe("[R13] writing", () => {
  test("envelope first, then unknown fields, then the body, keys inside sorted", () => {
    const record = {
      body: { b: 1, a: [{ d: null, c: "é" }] },
      zone: 3,
      at: "t",
      id: "i",
      extra: 2,
      v: 1,
      kind: "note",
    };
    expect(writeRecord(record)).toBe(
      '{"id":"i","kind":"note","v":1,"at":"t","extra":2,"zone":3,"body":{"a":[{"c":"é","d":null}],"b":1}}',
    );
  });

  test("what was read can be written and read again, used or not, and writes the same", () => {
    const record = fc
      .record(
        {
          id: fc.stringMatching(/^[a-z0-9]{1,6}$/),
          kind: fc.oneof(
            fc.constantFrom("note", "photo", "ride-reported"),
            fc.stringMatching(/^[a-z-]{1,9}$/),
          ),
          v: fc.integer({ min: 1, max: 3 }),
          at: fc.constantFrom("2026-05-02T10:15:00Z", "2026-05-02T10:15:00.5+02:00"),
          bike: fc.constant("b"),
          body: fc.oneof(json, fc.constant({ text: "x" })),
          more: json,
        },
        { requiredKeys: ["id", "kind", "at"] },
      )
      .map((one) => one as JsonObject);
    fc.assert(
      fc.property(fc.array(record, { maxLength: 6 }), (records) => {
        const once = readLog(records.map((one) => JSON.stringify(one)));
        const text = writeLog(once.entries.map(({ source }) => source));
        const again = readLogText(text);
        expect(again.entries.map(({ source }) => source)).toEqual(
          once.entries.map(({ source }) => JSON.parse(JSON.stringify(source))),
        );
        expect(again.entries.map(({ reading }) => reading)).toEqual(
          once.entries.map(({ reading }) => reading),
        );
        expect(writeLog(again.entries.map(({ source }) => source))).toBe(text);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test("the text does not depend on the order of keys", () => {
    const turned = (value: Json): Json => {
      if (Array.isArray(value)) return value.map(turned);
      if (typeof value !== "object" || value === null) return value;
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, one]) => [key, turned(one)]),
      );
    };
    fc.assert(
      fc.property(json, (value) => {
        expect(canonicalJson(turned(value))).toBe(canonicalJson(value));
      }),
      { seed: 20261125 },
    );
  });

  test("the text is JSON that says the same", () => {
    fc.assert(
      fc.property(json, (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { seed: 20261125 },
    );
  });

  test("fields left undefined are left out; what JSON cannot say is a bug of ours", () => {
    expect(
      writeRecord({ id: "a", by: undefined, body: { x: undefined, y: 1 } } as unknown as JsonObject),
    ).toBe('{"id":"a","body":{"y":1}}');
    expect(() => writeRecord({ id: "a", body: { x: Number.NaN } })).toThrow("NaN");
    let deep: Json = 1;
    for (let i = 0; i < 40; i++) deep = [deep];
    expect(() => canonicalJson(deep)).toThrow("32");
  });
});

test("[R10] digests of different short texts differ, and are whole numbers below 2^53", () => {
  const texts = Array.from({ length: 60_000 }, (_, i) =>
    i < 30_000 ? `r${i}` : JSON.stringify({ n: i / 8 }),
  );
  const digests = texts.map(digest);
  expect(new Set(digests).size).toBe(texts.length);
  expect(digests.every((value) => Number.isSafeInteger(value) && value >= 0)).toBe(true);
});
