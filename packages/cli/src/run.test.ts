import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { COMMANDS } from "./commands.ts";
import type { Io } from "./io.ts";
import { speaksUnicode, wantsColour, widthFor } from "./io.ts";
import { run } from "./run.ts";
import { LOG, runHere } from "./test-run.ts";

const folder = mkdtempSync(join(tmpdir(), "jetwright-"));
afterAll(() => rmSync(folder, { recursive: true }));

describe("help", () => {
  test("without a command the list of commands is shown", async () => {
    const { code, out } = await runHere([]);
    expect(code).toBe(0);
    for (const { name, summary } of COMMANDS) {
      expect(out).toContain(`  ${name} `);
      expect(out).toContain(summary.split(" ").slice(0, 4).join(" "));
    }
  });

  test.each(COMMANDS.map(({ name }) => name))(
    "%s --help teaches with an example and lists its flags",
    async (name) => {
      const { code, out } = await runHere([name, "--help"]);
      const command = COMMANDS.find((one) => one.name === name)!;
      expect(code).toBe(0);
      expect(out).toContain(`jetwright ${name}`);
      expect(command.manual).toContain(`jetwright ${name} `);
      for (const flag of Object.keys(command.flags)) expect(out).toContain(`--${flag}`);
      expect(out).toContain("--json");
      for (const paragraph of out.split("\n").filter((one) => !/^[ {]/.test(one))) {
        expect(paragraph.length).toBeLessThanOrEqual(80);
      }
      expect((await runHere(["help", name])).out).toBe(out);
      expect((await runHere([name, "-h"])).out).toBe(out);
    },
  );

  test("the log in the help of next is one that next can read", async () => {
    const { out } = await runHere(["next", "--help"]);
    const log = out
      .split("\n")
      .filter((one) => one.startsWith("{"))
      .join("\n");
    const answer = await runHere(["next"], { stdin: log });
    expect(answer).toMatchObject({ code: 0, error: "" });
    expect(answer.out).toContain("Trail 250 (mine)");
    expect(answer.out).toContain("NEXT: ");
  });

  test("the version is that of the package", async () => {
    const { version } = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8"));
    expect(await runHere(["--version"])).toEqual({ code: 0, out: `${version}\n`, error: "" });
  });
});

describe("what cannot be understood", () => {
  test.each([
    [["nxt"], 'Did you mean "next"?'],
    [["xylophone"], "The commands are next, compare"],
    [["help", "chrt"], 'Did you mean "chart"?'],
    [["next", "a", "b"], '"b" is one argument too many'],
    [["next", "--bkie", "x"], "Did you mean --bike?"],
    [["next", "--bike"], "--bike needs a value"],
    [["next", "--bike", "--json"], "--bike needs a value"],
    [["next", "--bike="], "--bike needs a value"],
    [["next", "--bike", "a", "--bike", "b"], "given twice"],
    [["next", "--json=yes"], "--json takes no value"],
    [["next", "-x"], "There is no flag -x"],
    [["next", "--constructor"], "There is no flag --constructor"],
  ])("%j is refused with what was meant", async (argv, words) => {
    const { code, out, error } = await runHere(argv, { stdin: LOG });
    expect(code).toBe(2);
    expect(error).toContain(words);
    expect(error).toMatch(/^jetwright: [^\n]+\n$/);
    if (!argv.includes("--json") && !argv.includes("--json=yes")) expect(out).toBe("");
  });

  test("a bug of ours is said to be one, with exit code 1", async () => {
    let said = "";
    const io = {
      out: () => {
        throw new RangeError("planted 17");
      },
      error: (text: string) => {
        said += text;
      },
      width: 80,
      unicode: true,
    };
    expect(await run(["--version"], io as unknown as Io)).toBe(1);
    expect(said).toContain("bug in Jetwright");
    expect(said).toContain("planted 17");
  });
});

describe("--out", () => {
  test("writes a new file and never over one", async () => {
    const file = join(folder, "answer.json");
    const first = await runHere(["next", "--json", "--out", file], { stdin: LOG });
    expect(first).toMatchObject({ code: 0, out: "" });
    const written = readFileSync(file, "utf8");
    expect(JSON.parse(written).command).toBe("next");
    const second = await runHere(["signs", "--out", file]);
    expect(second.code).toBe(2);
    expect(second.error).toContain("nothing is written over");
    expect(readFileSync(file, "utf8")).toBe(written);
  });

  test("a folder that is not there is said", async () => {
    const file = join(folder, "no", "answer.txt");
    const { code, error } = await runHere(["signs", "--out", file]);
    expect(code).toBe(2);
    expect(error).toContain("folder");
    expect(existsSync(file)).toBe(false);
  });
});

describe("the terminal", () => {
  test.each([
    [{}, true],
    [{ LANG: "" }, true],
    [{ LANG: "en_GB.UTF-8" }, true],
    [{ LANG: "de_DE.utf8" }, true],
    [{ LANG: "C" }, false],
    [{ LANG: "en_GB.UTF-8", LC_ALL: "POSIX" }, false],
    [{ LC_CTYPE: "en_US.ISO-8859-1" }, false],
    [{ TERM: "dumb" }, false],
  ])("%j speaks UTF-8: %j", (env, expected) => expect(speaksUnicode(env)).toBe(expected));

  test("colour needs a terminal, and NO_COLOR forbids it", () => {
    expect(wantsColour({}, true)).toBe(true);
    expect(wantsColour({}, false)).toBe(false);
    expect(wantsColour({ NO_COLOR: "1" }, true)).toBe(false);
    expect(wantsColour({ NO_COLOR: "" }, true)).toBe(true);
    expect(wantsColour({ TERM: "dumb" }, true)).toBe(false);
  });

  test("never wider than 80 columns", () => {
    expect([widthFor(undefined), widthFor(200), widthFor(60), widthFor(10)]).toEqual([80, 80, 60, 48]);
  });
});
