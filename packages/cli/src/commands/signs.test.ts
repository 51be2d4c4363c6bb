import { CHECKS, FAULTS, SIGNS, TESTS } from "@jetwright/core";
import { describe, expect, test } from "vitest";
import { signsOutput } from "../output/signs-output.ts";
import { runHere } from "../test-run.ts";

const json = async (...argv: readonly string[]) =>
  signsOutput.parse(JSON.parse((await runHere(["signs", ...argv, "--json"])).out));

describe("signs", () => {
  test("without a word every sign is there, by id", async () => {
    const { signs } = await json();
    expect(signs!.map(({ id }) => id)).toEqual(SIGNS.map(({ id }) => id));
    const { out } = await runHere(["signs"]);
    for (const { id } of SIGNS) expect(out).toMatch(new RegExp(`^  ${id}( |$)`, "m"));
  });

  test("a word finds what speaks of it, with the look-alike", async () => {
    const { signs } = await json("bog");
    expect(signs!.map(({ id }) => id)).toContain("bogs-hollow-no-smoke");
    expect(signs!.length).toBeLessThan(20);
    const { out } = await runHere(["signs", "bog"]);
    expect(out).toContain("Not to be taken for: The stumble");
  });

  test("two words must both be there", async () => {
    const both = await json("HANG", "hot");
    const one = await json("hang");
    expect(both.signs!.length).toBeLessThan(one.signs!.length);
    expect(both.signs!.map(({ id }) => id)).toContain("hangs-only-when-hot");
  });

  test("checks, tests and faults have lists of their own", async () => {
    expect((await json("--checks")).checks!.map(({ id }) => id)).toEqual(CHECKS.map(({ id }) => id));
    expect((await json("--tests")).tests!.map(({ id }) => id)).toEqual(TESTS.map(({ id }) => id));
    expect(new Set((await json("--faults")).faults!.map(({ id }) => id))).toEqual(new Set(FAULTS));
    const { out } = await runHere(["signs", "--tests", "tap"]);
    expect(out).toContain("clears: ");
    expect((await runHere(["signs", "--checks", "reed"])).out).toContain("Finds: ");
  });

  test("a word nobody uses is refused with near ones, and two lists at once as well", async () => {
    const { code, error } = await runHere(["signs", "hangz"]);
    expect(code).toBe(2);
    expect(error).toContain("Near it: hang-");
    expect((await runHere(["signs", "--checks", "--tests"])).error).toContain("one list at a time");
  });
});
