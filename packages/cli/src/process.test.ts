import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, test } from "vitest";
import { LOG, line } from "./test-run.ts";

const bin = fileURLToPath(new URL("../bin/jetwright.js", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "jetwright-"));
afterAll(() => rmSync(folder, { recursive: true }));

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly error: string;
}

/** Starts a real process; `feed` is written to it as it reads. */
function start(
  args: readonly string[],
  feed: Iterable<string> = [],
  closeOutAfter = Number.POSITIVE_INFINITY,
): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, args, {
      cwd: folder,
      env: { ...process.env, NO_COLOR: "1", NODE_OPTIONS: "" },
    });
    let out = "";
    let error = "";
    child.stdout.on("data", (piece) => {
      out += piece;
      if (out.length >= closeOutAfter) child.stdout.destroy();
    });
    child.stderr.on("data", (piece) => {
      error += piece;
    });
    child.stdin.on("error", () => {});
    child.on("error", reject);
    child.on("close", (code) => resolve({ code, out, error }));
    const pieces = feed[Symbol.iterator]();
    const pump = (): void => {
      for (let one = pieces.next(); !one.done; one = pieces.next()) {
        if (!child.stdin.write(one.value)) {
          child.stdin.once("drain", pump);
          return;
        }
      }
      child.stdin.end();
    };
    pump();
  });
}

const MINUTE = 60_000;

describe("the real process", () => {
  test("runs from any folder, through a link, on a piped log", { timeout: MINUTE }, async () => {
    const link = join(folder, "jetwright");
    symlinkSync(bin, link);
    const { code, out, error } = await start([link, "next"], [LOG]);
    expect({ code, error }).toEqual({ code: 0, error: "" });
    expect(out).toContain("Trail 250 (mine)");
    expect(out).not.toContain("\u001b");
  });

  test("bad input ends with 2 and touches nothing", { timeout: MINUTE }, async () => {
    const log = join(folder, "log.jsonl");
    writeFileSync(log, `${LOG}\nnonsense`);
    const { code, out, error } = await start([bin, "check", log]);
    expect(code).toBe(2);
    expect(out).toContain("line 7");
    expect(error).toContain("could not be used");
  });

  test("a reader that goes away, as head does, is no trouble", { timeout: MINUTE }, async () => {
    const { code, error } = await start([bin, "signs", "--json"], [], 1);
    expect({ code, error }).toEqual({ code: 0, error: "" });
  });
});

const RECORDS = 100_000;
const BIKES = 200;
/** Bytes of heap for records in use; the log itself is 31 million. Node and the sources alone take some 20. */
const BUDGET_MIB = 64;

function* longLog(): Generator<string> {
  for (let i = 0; i < RECORDS; i++) {
    const bike = `b${i % BIKES}`;
    const at = `r${String(i % 60).padStart(2, "0")}`;
    if (i < BIKES) yield `${line(`d${i}`, "bike-described", { engine: { strokes: 2 } }, bike, "r00")}\n`;
    else if (i < 2 * BIKES) {
      yield `${line(`f${i}`, "setup-fitted", { main: { number: 170 }, asFound: true }, bike, "r00")}\n`;
    } else if (i % 7 === 0)
      yield `${line(`r${i}`, "setup-fitted", { main: { number: 160 + (i % 20) } }, bike, at)}\n`;
    else {
      const reports = [
        { sign: "drops-straight-to-idle" },
        { sign: "four-strokes-under-load", opening: "1/2", seen: i % 2 === 0 },
      ];
      yield `${line(`r${i}`, "ride-reported", { reports, words: "up the hill and down again, ".repeat(8) }, bike, at)}\n`;
    }
  }
}

describe(`a log of ${RECORDS} records in ${BUDGET_MIB} MiB of heap`, () => {
  test.each([
    ["check", []],
    ["next", ["--bike", "b7"]],
  ])("%s", { timeout: 3 * MINUTE }, async (command, flags) => {
    const { code, out, error } = await start(
      [`--max-old-space-size=${BUDGET_MIB}`, bin, command, "-", ...flags],
      longLog(),
    );
    expect({ code, error }).toEqual({ code: 0, error: "" });
    expect(out).toContain(command === "check" ? `${RECORDS} lines, ${RECORDS} records in use` : "NEXT: ");
  });
});
