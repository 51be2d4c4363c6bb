import { describe, expect, test } from "vitest";
import type { AnswerOf } from "../engine/protocol.ts";
import { Foresight } from "./foresight.ts";

/** Answers that say which record they were made for. */
const madeFor = (name: string) => ({ bike: { name } }) as unknown as AnswerOf<"foresee">;
const BRAMBLE = JSON.stringify({ bike: "bramble" });

/** One line awaited, with its answers there. */
async function awaiting(foresight: Foresight, line: string, language: "en" | "de" = "en"): Promise<void> {
  foresight.expect({ bike: "bramble", line, language }, Promise.resolve(madeFor(line)));
  await Promise.resolve();
}

const name = (foresight: Foresight) => foresight.known("bike", BRAMBLE, "en")?.name;

describe("answers worked out before their record came", () => {
  test("are known from its coming to the next coming, not before and not after", async () => {
    const foresight = new Foresight();
    await awaiting(foresight, "r1");
    expect(name(foresight)).toBeUndefined();
    foresight.arrived(["r1"]);
    expect(name(foresight)).toBe("r1");
    foresight.arrived(["r2"]);
    expect(name(foresight)).toBeUndefined();
  });

  test("do not hold when anything came first, or together with it, or the log was read anew", async () => {
    for (const first of [["other"], ["r1", "other"], []]) {
      const foresight = new Foresight();
      await awaiting(foresight, "r1");
      foresight.arrived(first);
      expect(name(foresight)).toBeUndefined();
      foresight.arrived(["r1"]);
      expect(name(foresight)).toBeUndefined();
    }
  });

  test("do not hold when they come after the record, or after another one", async () => {
    for (const arrived of ["r1", "other"]) {
      const foresight = new Foresight();
      const coming = awaiting(foresight, "r1");
      foresight.arrived([arrived]);
      await coming;
      expect(name(foresight)).toBeUndefined();
      foresight.arrived(["r1"]);
      expect(name(foresight)).toBeUndefined();
    }
  });

  test("hold for that bike, that language and those questions alone", async () => {
    const foresight = new Foresight();
    await awaiting(foresight, "r1", "de");
    foresight.arrived(["r1"]);
    expect(foresight.known("bike", BRAMBLE, "de")).toEqual({ name: "r1" });
    expect(foresight.known("bike", BRAMBLE, "en")).toBeUndefined();
    expect(foresight.known("bike", JSON.stringify({ bike: "heron" }), "de")).toBeUndefined();
    expect(foresight.known("drawer", "null", "de")).toBeUndefined();
  });

  test("of a worker that broke are not there", async () => {
    const foresight = new Foresight();
    foresight.expect({ bike: "bramble", line: "r1", language: "en" }, Promise.reject(new Error("broken")));
    await Promise.resolve();
    foresight.arrived(["r1"]);
    expect(name(foresight)).toBeUndefined();
  });
});
