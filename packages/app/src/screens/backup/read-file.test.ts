import { describe, expect, test } from "vitest";
import { readPiece } from "../../engine/answers/copy/read-piece.ts";
import { DEMO, shopOf } from "../../engine/answers/test-shop.ts";
import type { EngineState } from "../../engine/state.ts";
import { readFile } from "./read-file.ts";
import { bytesText, clearsAfterSevenDays } from "./storage-state.ts";

const reading = (
  state: EngineState,
  file: Blob,
  signal = new AbortController().signal,
  onProgress = (_done: number, _all: number) => {},
) => readFile(file, { ask: async (piece) => readPiece(state, piece), onProgress, signal });
const note = (id: string, text = "x"): string =>
  JSON.stringify({ id, kind: "note", v: 1, at: "2026-01-01T00:00:00Z", body: { text } });

describe("a file taken in", () => {
  test("the example shop comes in whole, and a second time it is all here", async () => {
    const file = new Blob([DEMO.join("\n")]);
    const first = await reading(shopOf([]), file);
    expect(first.fresh.length).toBe(DEMO.length);
    expect(first.records).toBe(DEMO.length);
    expect(first.leftOut).toEqual([]);
    const state = shopOf(first.fresh.map(({ line }) => line));
    const second = await reading(state, file);
    expect(second).toMatchObject({ repeated: DEMO.length, lines: DEMO.length, problemCount: 0 });
    expect(second.fresh).toEqual([]);
  });

  test("counts a record that stands twice, and keeps the first of two under one id", async () => {
    const read = await reading(
      shopOf([note("h", "here")]),
      new Blob([[note("a"), note("a"), note("a", "other"), note("h", "not here")].join("\n")]),
    );
    expect(read.fresh.map(({ id }) => id)).toEqual(["a"]);
    expect(read.fresh[0]!.line).toContain('"x"');
    expect(read.repeated).toBe(1);
    expect(read.leftOut).toHaveLength(2);
    expect(read.problems.map(({ record }) => record)).toEqual(["a", "h"]);
  });

  test("gives back the lines it cannot take, with their place also past the first piece", async () => {
    const good = Array.from({ length: 450 }, (_, i) => note(`n${i}`));
    good.splice(420, 0, "not a record äöü");
    const progress: number[] = [];
    const read = await reading(shopOf([]), new Blob([`${good.join("\r\n")}\r\n`]), undefined, (done, all) =>
      progress.push(done / all),
    );
    expect(read.fresh).toHaveLength(450);
    expect(read.leftOut.map((line) => line.trim())).toEqual(["not a record äöü"]);
    expect(read.problems[0]).toMatchObject({ line: 421 });
    expect(progress.at(-1)).toBe(1);
    expect(progress).toEqual([...progress].sort((a, b) => a - b));
  });

  test("stops when told to, and says so", async () => {
    const stop = new AbortController();
    const lines = Array.from({ length: 2000 }, (_, i) => note(`n${i}`));
    const read = await reading(shopOf([]), new Blob([lines.join("\n")]), stop.signal, () => stop.abort());
    expect(read.stopped).toBe(true);
    expect(read.fresh.length).toBeLessThan(2000);
  });

  test("a file that is not ours gives no record, and a line without end is not held whole", async () => {
    const picture = new Blob([new Uint8Array(3_000_000).fill(0xd8)]);
    const read = await reading(shopOf([]), picture);
    expect(read.records).toBe(0);
    expect(read.leftOut).toHaveLength(1);
    expect(read.leftOut[0]!.length).toBeLessThan(1_100_000);
    expect((await reading(shopOf([]), new Blob([]))).lines).toBe(0);
  });
});

describe("where it is kept", () => {
  test.each([
    [
      "Mozilla/5.0 (iPhone; CPU iPhone OS 17_0 like Mac OS X) AppleWebKit/605.1.15 CriOS/120 Mobile Safari/604.1",
      true,
    ],
    ["Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15) AppleWebKit/605.1.15 Version/17.0 Safari/605.1.15", true],
    ["Mozilla/5.0 (Linux; Android 14) AppleWebKit/537.36 Chrome/120 Mobile Safari/537.36", false],
    ["Mozilla/5.0 (X11; Linux x86_64; rv:120.0) Gecko/20100101 Firefox/120.0", false],
  ])("%s clears by the week: %s", (agent, clears) => expect(clearsAfterSevenDays(agent)).toBe(clears));

  test("bytes in words", () => {
    expect([200, 45_000, 3_400_000, 1_250_000_000].map((bytes) => bytesText(bytes, "en"))).toEqual([
      "1 kB",
      "45 kB",
      "3 MB",
      "1.3 GB",
    ]);
    expect(bytesText(1_250_000_000, "de")).toBe("1,3 GB");
  });
});
