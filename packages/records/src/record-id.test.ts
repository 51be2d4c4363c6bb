import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareIds, makeRecordId } from "./record-id.ts";

const bytes = (...values: number[]): Uint8Array => Uint8Array.from(values);

describe("[R2] ids", () => {
  test("the worked example of RFC 9562 appendix A.6", () => {
    // 2022-02-22 14:22:22 GMT-05:00, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F [from memory of the RFC].
    const random = bytes(0xcc, 0x30, 0x48, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f);
    expect(makeRecordId(0x017f22e279b0, random)).toBe("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
  });

  test("always version 7, variant 10, and the time can be read back", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 2 ** 48 - 1 }),
        fc.uint8Array({ minLength: 10, maxLength: 10 }),
        (at, random) => {
          const id = makeRecordId(at, random);
          expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
          expect(Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16)).toBe(at);
        },
      ),
      { seed: 20261125 },
    );
  });

  test("every random bit that has a place reaches the id", () => {
    const ids = new Set<string>();
    for (let bit = 0; bit < 80; bit++) {
      const random = new Uint8Array(10);
      random[bit >> 3] = 1 << (bit & 7);
      ids.add(makeRecordId(0, random));
    }
    // 74 random bits have a place in the format; the six others all give the id of ten zero bytes.
    expect(ids.size).toBe(75);
  });

  test("a bug of ours throws", () => {
    expect(() => makeRecordId(-1, new Uint8Array(10))).toThrow("-1");
    expect(() => makeRecordId(2 ** 48, new Uint8Array(10))).toThrow("281474976710656");
    expect(() => makeRecordId(0, new Uint8Array(9))).toThrow("9");
  });

  test("hand-typed ids sort with numbers as numbers, before UUIDs", () => {
    const early = makeRecordId(1000, new Uint8Array(10));
    const late = makeRecordId(2000, new Uint8Array(10));
    expect([late, "r10", "a", "r9", early, "r9b", "r09"].sort(compareIds)).toEqual([
      "a",
      "r09",
      "r9",
      "r9b",
      "r10",
      early,
      late,
    ]);
  });

  test("the order is total: antisymmetric, transitive, equal only when the same", () => {
    const id = fc.oneof(
      fc.stringMatching(/^[a-b0-1.]{1,5}$/),
      fc.uint8Array({ minLength: 10, maxLength: 10 }).map((random) => makeRecordId(5, random)),
    );
    fc.assert(
      fc.property(id, id, id, (a, b, c) => {
        expect(Math.sign(compareIds(a, b)) + Math.sign(compareIds(b, a))).toBe(0);
        expect(compareIds(a, b) === 0).toBe(a === b);
        if (compareIds(a, b) <= 0 && compareIds(b, c) <= 0) expect(compareIds(a, c)).toBeLessThanOrEqual(0);
      }),
      { seed: 20261125, numRuns: 2000 },
    );
  });
});
