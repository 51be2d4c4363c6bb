import { describe, expect, test } from "vitest";
import { checkOutput } from "../output/check-output.ts";
import { LOG, line, runHere } from "../test-run.ts";

const json = async (stdin: string) => {
  const { code, out } = await runHere(["check", "--json"], { stdin });
  return { code, answer: checkOutput.parse(JSON.parse(out)) };
};

describe("check", () => {
  test("a sound log: counted by kind and bike", async () => {
    const { code, answer } = await json(LOG);
    expect(code).toBe(0);
    expect(answer.lines).toBe(6);
    expect(answer.usedByKind).toEqual({
      "air-measured": 1,
      "bike-described": 1,
      "ride-reported": 2,
      "setup-fitted": 2,
    });
    expect(answer.bikes).toEqual({ mine: 5 });
    const { out } = await runHere(["check"], { stdin: LOG });
    expect(out).toContain("6 lines, 6 records in use, 1 bike. Every record counts.");
  });

  test("everything wrong is listed with line, path and how to mend it", async () => {
    const bad = [
      LOG,
      "{",
      line("r20", "setup-fitted", { main: { number: -1 } }),
      line("r21", "tea-brewed", {}),
      line("r13", "ride-reported", {}, "mine", "r59"),
    ].join("\n");
    const { code, answer } = await json(bad);
    expect(code).toBe(2);
    expect(answer.problems.map(({ line: at, path }) => [at, path])).toEqual([
      [7, ""],
      [8, "body.main.number"],
      [10, "id"],
    ]);
    for (const { mend } of answer.problems) expect(mend).not.toBe("");
    expect(answer.unknownKinds).toEqual({ "tea-brewed": 1 });
    expect(answer.faulty).toBe(1);
    const { out } = await runHere(["check"], { stdin: bad });
    expect(out).toContain("line 8, body.main.number (r20)");
    expect(out).toContain("1 of the kind tea-brewed, which this tool does not know: kept");
  });

  test("a record met again counts once", async () => {
    const { code, answer } = await json(`${LOG}\n${LOG}`);
    expect(code).toBe(0);
    expect(answer.repeated).toBe(6);
    expect(answer.bikes).toEqual({ mine: 5 });
  });

  test("a strike of a record that is there is fine, whatever its kind; of one that is not, a problem", async () => {
    const fine = await json(`${LOG}\n${line("r30", "record-struck", { record: "r13" }, null)}`);
    expect(fine).toMatchObject({ code: 0, answer: { problems: [] } });
    const dangling = await json(`${LOG}\n${line("r30", "record-struck", { record: "r77" }, null)}`);
    expect(dangling.code).toBe(2);
    expect(dangling.answer.problems[0]).toMatchObject({ line: 7, path: "body.record" });
  });

  test("a part found that is not what the records say is worth a look and no fault", async () => {
    const found = line("r40", "setup-fitted", { main: { number: 180 }, asFound: true });
    const { code, answer } = await json(`${LOG}\n${found}`);
    expect(code).toBe(0);
    expect(answer.notes[0]).toMatchObject({ line: 7, path: "body.main" });
  });
});
