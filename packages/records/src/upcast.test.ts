import { describe, expect, test } from "vitest";
import * as z from "zod/mini";
import { type AnyKind, defineKind } from "./kind.ts";
import { readRecord } from "./read-record.ts";
import { upcast } from "./upcast.ts";

// A kind that has had three versions: turns became turnsOut, then a side was added.
const kind: AnyKind = defineKind({
  kind: "screw-set",
  v: 3,
  bike: "never",
  personal: [],
  body: z.looseObject({ turnsOut: z.number(), side: z.enum(["air", "fuel", "unknown"]) }),
  upcasters: {
    1: ({ turns, ...rest }) => ({ ...rest, turnsOut: (turns as number) + 0 }),
    2: (body) => {
      if (typeof body.turnsOut !== "number") throw new TypeError("no turns");
      return { ...body, side: "unknown" };
    },
  },
});
const knowing = {
  kinds: new Map([[kind.kind, kind]]),
  words: { signs: null, tests: null, checks: null, faults: null },
};
const record = (v: number, body: object): unknown => ({
  id: "a",
  kind: "screw-set",
  v,
  at: "2026-05-02T10:15:00Z",
  body,
});

describe("[R16] old versions are read forward", () => {
  test("one version at a time, from whichever it was written in", () => {
    const now = { turnsOut: 1.5, side: "unknown", extra: 1 };
    expect(upcast(kind, 1, { turns: 1.5, extra: 1 })).toEqual(now);
    expect(upcast(kind, 2, { turnsOut: 1.5, extra: 1 })).toEqual(now);
    expect(upcast(kind, 3, { turnsOut: 1.5, side: "air" })).toEqual({ turnsOut: 1.5, side: "air" });
  });

  test("the record itself stays as it was written", () => {
    const old = record(1, { turns: 2 });
    const read = readRecord(old, 4, knowing);
    expect(read.entry).toMatchObject({
      reading: "used",
      v: 1,
      line: 4,
      body: { turnsOut: 2, side: "unknown" },
    });
    expect(read.entry!.source).toBe(old);
    expect(read.entry!.source.body).toEqual({ turns: 2 });
  });

  test("a body no upcaster can read is faulty, with a reason", () => {
    const read = readRecord(record(2, { turns: "two" }), 1, knowing);
    expect(read.entry).toMatchObject({ reading: "faulty" });
    expect(read.flaws).toMatchObject([{ path: "body", what: "cannot be read as version 2 of screw-set" }]);
  });

  test("a missing upcaster is a bug of ours", () => {
    expect(() => upcast({ ...kind, v: 4 }, 1, { turns: 1 })).toThrow("from version 3 to 4");
  });

  test("a version above ours is kept", () => {
    expect(readRecord(record(4, {}), 1, knowing).entry).toMatchObject({ reading: "newer-version" });
  });
});
