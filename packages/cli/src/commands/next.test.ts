import { describe, expect, test } from "vitest";
import { nextOutput } from "../output/next-output.ts";
import { LOG, line, runHere } from "../test-run.ts";

const json = async (argv: readonly string[], stdin: string) => {
  const ran = await runHere(["next", ...argv, "--json"], { stdin });
  return { ...ran, answer: ran.out === "" ? null : nextOutput.parse(JSON.parse(ran.out)) };
};

describe("next in text", () => {
  test("names the bike, the air with its day, what is fitted and what was last heard", async () => {
    const { code, out } = await runHere(["next"], { stdin: LOG });
    expect(code).toBe(0);
    expect(out).toContain("Trail 250 (mine)");
    expect(out).toMatch(/450 m: 18 °C, 960 hPa \(noted 2 May 2026\)/);
    expect(out).toMatch(/clip in\s+groove 3/);
    expect(out).toMatch(/Not\s+known: slide, needle jet/);
    expect(out).toContain("Last ride, 2 May 2026: burbles under load (at 1/2).");
  });

  test("draws the mixture rich up and lean down, and gives every part of the step its word", async () => {
    const { out } = await runHere(["next"], { stdin: LOG });
    const rich = out.indexOf("rich  +");
    expect(rich).toBeGreaterThan(0);
    expect(out.indexOf("lean  -")).toBeGreaterThan(rich);
    expect(out).toMatch(/closed +1\/8 +1\/4 +1\/2 +3\/4 +full/);
    for (const word of ["NEXT: ", "Takes ", "Do ", "Expect ", "Sure? ", "Throttle ", "Mind ", "Other ways"]) {
      expect(out).toContain(word);
    }
  });

  test("keeps to 80 columns", async () => {
    const { out } = await runHere(["next"], { stdin: LOG });
    expect(Math.max(...out.split("\n").map((one) => one.length))).toBeLessThanOrEqual(80);
  });

  test("--plain and a terminal without UTF-8 print ASCII only", async () => {
    for (const ran of [
      await runHere(["next", "--plain"], { stdin: LOG }),
      await runHere(["next"], { stdin: LOG, unicode: false }),
    ]) {
      expect(ran.out).toMatch(/^[\n -~]+$/);
      expect(ran.out).toContain("18 C, 960 hPa");
      expect(ran.out).toContain("1 1/2 out");
    }
  });

  test("colour repeats the words and can be left away", async () => {
    const painted = await runHere(["next"], { stdin: LOG, colour: true });
    const plain = await runHere(["next"], { stdin: LOG });
    expect(painted.out).toContain("\u001b[7m NEXT: ");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: that is what colour is made of
    const bare = painted.out.replaceAll(/\u001b\[\d+m/g, "");
    expect(bare.replaceAll(/ +$/gm, "")).toBe(plain.out);
    expect((await runHere(["next", "--plain"], { stdin: LOG, colour: true })).out).not.toContain("\u001b");
  });

  test("--us shows feet, Fahrenheit and inches of mercury", async () => {
    const { out } = await runHere(["next", "--us"], { stdin: LOG });
    expect(out).toContain("1480 ft: 64 °F, 28.36 inHg");
  });

  test("control characters of a log never reach the terminal", async () => {
    const evil = LOG.replace("Trail 250", "Trail\\u001b[2J 250");
    const { out } = await runHere(["next"], { stdin: evil });
    expect(out).not.toContain("\u001b");
    expect(out).toContain("Trail [2J 250");
  });
});

describe("next in JSON", () => {
  test("is as its schema says, with six openings and the setup after a change", async () => {
    const { code, answer } = await json([], LOG);
    expect(code).toBe(0);
    expect(answer!.mixture.map(({ opening }) => opening)).toEqual([
      "closed",
      "1/8",
      "1/4",
      "1/2",
      "3/4",
      "full",
    ]);
    expect(answer!.bike).toBe("mine");
    expect(answer!.fitted.clip).toEqual({ groove: 3, how: "told" });
    expect(answer!.air.temperatureC).toBeCloseTo(18, 9);
    for (const { lowPercent, errorPercent, highPercent } of answer!.mixture) {
      expect(lowPercent).toBeLessThan(errorPercent);
      expect(highPercent).toBeGreaterThan(errorPercent);
    }
    for (const step of [answer!.step, ...answer!.others])
      expect(step.setupAfter !== null).toBe(step.kind === "change");
  });

  test("a burble at half throttle reads rich there", async () => {
    const { answer } = await json([], LOG);
    const half = answer!.mixture.find(({ opening }) => opening === "1/2")!;
    expect(half.errorPercent).toBeGreaterThan(1);
  });

  test("air given by hand takes the place of the noted one, and thin air reads richer", async () => {
    const noted = await json([], LOG);
    const high = await json(["--temperature", "30C", "--height", "2200m"], LOG);
    expect(high.answer!.air.temperatureC).toBeCloseTo(30, 9);
    const full = (of: typeof noted) => of.answer!.mixture.at(-1)!.errorPercent;
    expect(full(high)).toBeGreaterThan(full(noted) + 5);
    const { out } = await runHere(["next", "--temperature", "30C", "--height", "2200m"], { stdin: LOG });
    expect(out).toContain("Air you gave: 30 °C");
  });

  test("--one-at-a-time never asks for two parts together", async () => {
    const { answer } = await json(["--one-at-a-time"], LOG);
    for (const step of [answer!.step, ...answer!.others]) expect(step.changes.length).toBeLessThan(2);
  });
});

describe("which bike", () => {
  const two = `${LOG}\n${line("r30", "bike-described", { name: "Other", engine: { strokes: 4 } }, "other")}`;

  test("a log of two bikes asks which, by id and name", async () => {
    const { code, error, out } = await runHere(["next"], { stdin: two });
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(error).toContain("--bike: mine (Trail 250), other (Other)");
  });

  test("the one named is taken, and its case alone", async () => {
    const { answer } = await json(["--bike", "mine"], two);
    const alone = await json([], LOG);
    expect(answer).toEqual(alone.answer);
  });

  test.each([
    ["Mine", "Did you mean --bike mine?"],
    ["trail", "Did you mean --bike mine?"],
    ["zzz", "Its bikes are mine (Trail 250), other (Other)."],
  ])("%s is not there, with a hint", async (bike, words) => {
    const { code, error } = await runHere(["next", "--bike", bike], { stdin: two });
    expect(code).toBe(2);
    expect(error).toContain(words);
  });
});
