import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { compareOutput } from "../output/compare-output.ts";
import { LOG, runHere } from "../test-run.ts";

const folder = mkdtempSync(join(tmpdir(), "jetwright-"));
afterAll(() => rmSync(folder, { recursive: true }));
const file = (name: string, value: unknown): string => {
  const path = join(folder, name);
  writeFileSync(path, typeof value === "string" ? value : JSON.stringify(value));
  return path;
};
const A = {
  bike: { engine: { strokes: 2 }, carburetor: { screw: "air", jetNumbering: "bore" } },
  setup: { main: { number: 175 }, pilot: { number: 42 }, screw: { turnsOut: 1.5 } },
  air: { temperatureC: 18, heightM: 450 },
};
const a = file("a.json", A);
const json = async (argv: readonly string[], stdin?: string) => {
  const ran = await runHere(["compare", ...argv, "--json"], stdin === undefined ? {} : { stdin });
  expect(ran.code).toBe(0);
  return compareOutput.parse(JSON.parse(ran.out));
};
const at = (answer: Awaited<ReturnType<typeof json>>, opening: string): number =>
  answer.comparison.at.find((one) => one.opening === opening)!.richerPercent;

describe("two setup files", () => {
  test("what the second leaves out is as in the first, so the same file twice is no difference", async () => {
    const same = await json([a, file("empty.json", {})]);
    expect(same.comparison.at).toHaveLength(11);
    for (const { richerPercent } of same.comparison.at) expect(richerPercent).toBe(0);
    expect(same.to.setup).toEqual(same.from.setup);
  });

  // Common practice, no source: the higher the number on a jet, the bigger the hole and the richer.
  test("a bigger main jet is richer, most at full", async () => {
    const bigger = await json([a, file("b.json", { setup: { main: { number: 180 } } })]);
    expect(at(bigger, "full")).toBeGreaterThan(1);
    expect(at(bigger, "full")).toBeGreaterThan(at(bigger, "1/4"));
    const { out } = await runHere(["compare", a, file("b.json", { setup: { main: { number: 180 } } })]);
    expect(out).toContain("The second runs richer, most at full");
    expect(out).toMatch(/main 175 .*→ main\s+180/s);
  });

  test("circuits sum to the whole", async () => {
    const other = await json([
      a,
      file("c.json", { setup: { pilot: { number: 45 } }, air: { temperatureC: 0, heightM: 0 } }),
    ]);
    for (const { richerPercent, byCircuitPercent } of other.comparison.at) {
      const sum = Object.values(byCircuitPercent).reduce((x, y) => x + y, 0);
      expect(100 * Math.log(1 + richerPercent / 100)).toBeCloseTo(sum, 9);
    }
    expect(other.comparison.at[0]!.byCircuitPercent.air).toBeLessThan(0);
  });

  test.each([
    ["text", "hello", "not well-formed JSON"],
    ["a list", [1], "holds no setup"],
    ["a field nobody knows", { setups: {} }, "setups: is not a field"],
    ["a number where an object belongs", { air: 3 }, "air: must be an object"],
    ["a jet in quotes", { setup: { main: { number: "175" } } }, "setup.main"],
  ])("%s is refused with its place", async (_, value, words) => {
    const { code, error } = await runHere(["compare", a, file("bad.json", value)]);
    expect(code).toBe(2);
    expect(error).toContain(words);
  });

  test("flags of a log do not go with files", async () => {
    const { code, error } = await runHere(["compare", a, a, "--from", "r1"]);
    expect(code).toBe(2);
    expect(error).toContain("--from goes with a log");
  });
});

describe("two setups of a log", () => {
  test("what is fitted now against the setup before it", async () => {
    const answer = await json([], LOG);
    expect(answer.from.setup.clip?.groove).toBe(4);
    expect(answer.to.setup.clip?.groove).toBe(3);
    // Common practice, no source: a higher clip lowers the needle and leans the middle.
    expect(at(answer, "1/2")).toBeLessThan(-0.5);
    expect(Math.abs(at(answer, "closed"))).toBeLessThan(Math.abs(at(answer, "1/2")));
  });

  test("the same rides named with --from and --to, and turned round", async () => {
    const forth = await json(["--from", "r13", "--to", "r15"], LOG);
    const back = await json(["--from", "r15", "--to", "r13"], LOG);
    expect(at(forth, "1/2")).toBeLessThan(0);
    expect((1 + at(forth, "1/2") / 100) * (1 + at(back, "1/2") / 100)).toBeCloseTo(1, 12);
  });

  test("as-found is the first setup, and an id nobody has is refused with near ones", async () => {
    const found = await json(["--from", "as-found"], LOG);
    expect(found.from.setup.clip?.groove).toBe(4);
    const { code, error } = await runHere(["compare", "--from", "r99"], { stdin: LOG });
    expect(code).toBe(2);
    expect(error).toContain('"r99" is no setup, ride or test');
  });

  test("a log with one setup says so", async () => {
    const one = LOG.split("\n").slice(0, 4).join("\n");
    const { code, error } = await runHere(["compare"], { stdin: one });
    expect(code).toBe(2);
    expect(error).toContain("Only one setup");
  });
});
