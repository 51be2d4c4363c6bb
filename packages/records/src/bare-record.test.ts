import { describe, expect, test } from "vitest";
import { readBareRecord } from "./bare-record.ts";
import { note } from "./test-lines.ts";

describe("a record read without its body", () => {
  test("gives id, kind, time and bike of kinds we do not know as of those we do", () => {
    for (const kind of ["note", "moon-landed"]) {
      const read = readBareRecord(note("r1", { kind, bike: "bramble" }));
      expect(read).toMatchObject({ ok: true, value: { id: "r1", kind, bike: "bramble", at: 1777716900000 } });
    }
  });

  test("keeps a body that is faulty: the devices that have it must stay alike", () => {
    expect(readBareRecord(note("r1", { kind: "ride-reported", body: 7 })).ok).toBe(true);
  });

  test.each([
    ["", "empty"],
    ["hello", "not a record"],
    ['{"id":"a","kind":"note"}', "at"],
    ['{"kind":"note","at":"2026-05-02T10:15:00Z","body":{}}', "id"],
    [`{"id":"a","x":${"[".repeat(1_000)}${"]".repeat(1_000)}}`, "deeper"],
    [`{"id":"a","x":1e999}`, "too large"],
  ])("refuses %j and says what is wrong", (line, word) => {
    const read = readBareRecord(line);
    expect(read.ok ? "" : read.detail).toContain(word);
  });
});
