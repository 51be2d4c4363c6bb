import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { refusedOutput } from "./output/refused-output.ts";
import { LOG, line, runHere } from "./test-run.ts";

const folder = mkdtempSync(join(tmpdir(), "jetwright-"));
afterAll(() => rmSync(folder, { recursive: true }));
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

describe("a damaged line", () => {
  test.each([
    ["half written", '{"id":"x","kind":"note","at":"2026-05-02', "line 7", "only half written"],
    ["no JSON", "hello there", "line 7", "it starts with { and ends with }"],
    [
      "a number in quotes",
      line("r20", "setup-fitted", { main: { number: "175" } }),
      "line 7, body.main",
      "175",
    ],
    [
      "an unknown sign",
      line("r20", "ride-reported", { reports: [{ sign: "hang-after-closing" }] }),
      "line 7, body.reports.0.sign",
      "hangs-after-closing",
    ],
    [
      "no time zone",
      '{"id":"x","kind":"note","at":"2026-05-02T10:00:00","bike":"mine","body":{"text":"a"}}',
      "line 7, at",
      "time zone",
    ],
    [
      "the same id for another record",
      line("r11", "note", { text: "other" }, "mine", "r59"),
      "line 7, id",
      "two different records",
    ],
  ])(
    "%s is told with its line and how to mend it, and the answer is given all the same",
    async (_, bad, place, words) => {
      const { code, out, error } = await runHere(["next"], { stdin: `${LOG}\n${bad}\n` });
      expect(code).toBe(2);
      expect(out).toContain("NEXT: ");
      expect(error).toContain(place);
      expect(error).toContain(words);
      const asJson = await runHere(["next", "--json"], { stdin: `${LOG}\n${bad}\n` });
      expect(asJson.code).toBe(2);
      expect(JSON.parse(asJson.out).problems).toHaveLength(1);
      expect(JSON.parse(asJson.out).problems[0].line).toBe(7);
    },
  );

  test("it never hides the records around it", async () => {
    const whole = await runHere(["next"], { stdin: LOG });
    const lines = LOG.split("\n");
    const torn = [lines[0], "{{{", ...lines.slice(1), "\u0007", '{"id":1}'].join("\r\n");
    const { code, out, error } = await runHere(["next"], { stdin: torn });
    expect(code).toBe(2);
    expect(out).toBe(whole.out);
    expect(error).toContain("line 2");
  });

  test("a kind nobody knows is no fault", async () => {
    const { code } = await runHere(["next"], { stdin: `${LOG}\n${line("r40", "tea-brewed", { cups: 2 })}` });
    expect(code).toBe(0);
  });
});

describe("what is no log", () => {
  const gone = join(folder, "gone.jsonl");
  test.each([
    ["a missing file", () => gone, "There is no file"],
    ["a folder", () => folder, "is a folder"],
    ["a path through a file", () => join(file("f.txt", LOG), "x"), "is a file and not a folder"],
    ["an empty file", () => file("empty.jsonl", ""), "holds no record"],
    ["blank lines", () => file("blank.jsonl", "\n\n  \r\n"), "holds no record"],
    ["binary", () => file("b.bin", Uint8Array.from([1, 2, 0, 3, 200])), "is no text file"],
    ["UTF-16", () => file("u.jsonl", Uint8Array.from([0xff, 0xfe, 0x7b, 0])), "UTF-16"],
    ["gzip", () => file("l.gz", gzipSync(LOG)), "compressed"],
    ["zip", () => file("l.zip", "PK\u0003\u0004"), "zip"],
    [
      "a log about no bike",
      () => file("n.jsonl", line("r1", "note", { text: "a" }, null, "r01")),
      "names a bike",
    ],
    [
      "a bike nobody described",
      () => file("d.jsonl", line("r1", "note", { text: "a" }, "mine", "r01")),
      "what engine",
    ],
  ])("%s gives one plain sentence and exit code 2", async (_, path, words) => {
    for (const command of ["next", "chart", "compare"]) {
      const { code, out, error } = await runHere([command, path()]);
      expect(code).toBe(2);
      expect(out).toBe("");
      expect(error).toContain(words);
      expect(error).toMatch(/^jetwright: [^\n]+\n$/);
    }
  });

  test("no file and nobody piping asks for one in place of waiting", async () => {
    const { code, error } = await runHere(["next"]);
    expect(code).toBe(2);
    expect(error).toContain("No log is named");
  });

  test("with --json the refusal is JSON as well", async () => {
    const { code, out } = await runHere(["next", gone, "--json"]);
    expect(code).toBe(2);
    expect(refusedOutput.parse(JSON.parse(out)).refused.reason).toBe("no-such-file");
  });

  test("a letter cut between two pieces of the stream is one letter", async () => {
    const bytes = Buffer.from(LOG.replace("Trail 250", "Träil 250"));
    const cut = bytes.indexOf(0xc3) + 1;
    const { out } = await runHere(["next"], { stdin: [bytes.subarray(0, cut), bytes.subarray(cut)] });
    expect(out).toContain("Träil 250");
  });
});

test("whatever is piped in, no command crashes", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.oneof(fc.json(), fc.string(), fc.constantFrom(...LOG.split("\n"))), { maxLength: 8 }),
      fc.constantFrom("next", "check", "chart", "compare"),
      async (lines, command) => {
        const { code } = await runHere([command], { stdin: lines.join("\n") });
        expect([0, 2]).toContain(code);
      },
    ),
    { numRuns: 150, seed: 20260502 },
  );
});
