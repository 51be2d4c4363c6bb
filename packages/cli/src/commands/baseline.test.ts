import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { baselineOutput } from "../output/baseline-output.ts";
import { LOG, line, runHere } from "../test-run.ts";

const folder = mkdtempSync(join(tmpdir(), "jetwright-"));
afterAll(() => rmSync(folder, { recursive: true }));
const caller = [
  "--strokes",
  "2",
  "--displacement",
  "249cc",
  "--bore",
  "36mm",
  "--use",
  "enduro",
  "--screw",
  "air",
  "--numbering",
  "bore",
  "--temperature",
  "18C",
  "--height",
  "450m",
];

const json = async (...argv: readonly string[]) => {
  const ran = await runHere(["baseline", ...argv, "--json"]);
  expect(ran.error).toBe("");
  return baselineOutput.parse(JSON.parse(ran.out));
};
const mainOf = ({ figures }: Awaited<ReturnType<typeof json>>) =>
  figures.find(({ part }) => part === "main")!;

describe("baseline", () => {
  test("gives every figure a spread and what it rests on", async () => {
    const answer = await json(...caller);
    expect(answer.engine).toEqual({
      strokes: 2,
      displacementCc: expect.closeTo(249, 6),
      use: "enduro",
      boreMm: expect.closeTo(36, 9),
    });
    for (const { low, high, restsOn } of answer.figures) {
      expect(low).toBeLessThanOrEqual(high);
      expect(restsOn.length).toBeGreaterThan(0);
    }
    expect(mainOf(answer).numbering).toBe("bore");
  });

  test("a known-good setup of the shop's log pulls the figure towards it", async () => {
    const log = join(folder, "shop.jsonl");
    const good = [
      line("r16", "setup-fitted", { main: { number: 150 } }),
      line("r17", "known-good-marked", {}),
    ];
    writeFileSync(log, [LOG, ...good].join("\n"));
    const theory = mainOf(await json(...caller));
    const shop = mainOf(await json(...caller, "--log", log));
    expect(Math.abs(shop.start - 150)).toBeLessThan(Math.abs(theory.start - 150));
    expect(shop.restsOn.join(" ")).toContain("this shop");
  });

  test("in text it keeps to 80 columns and says the air in the units asked for", async () => {
    const { out } = await runHere(["baseline", ...caller, "--us"]);
    expect(out).toContain("For air of 64 °F, 28.36 inHg at the place.");
    expect(Math.max(...out.split("\n").map((one) => one.length))).toBeLessThanOrEqual(80);
  });

  test.each([
    [["--temperature", "18C", "--height", "1m"], "--strokes 2 or --strokes 4"],
    [["--strokes", "3"], '"3" is not one of 2, 4'],
    [["--strokes", "2", "--bore", "wide"], '--bore "wide"'],
    [["--strokes", "2", "--use", "tea"], "trail, enduro, race"],
    [
      ["--strokes", "2", "--temperature", "18C", "--height", "1m"],
      "Neither displacement nor carburetor bore",
    ],
    [["--strokes", "2", "--displacement", "249cc"], "No temperature is given"],
  ])("%j is refused with what to do", async (argv, words) => {
    const { code, error } = await runHere(["baseline", ...argv]);
    expect(code).toBe(2);
    expect(error).toContain(words);
  });
});
