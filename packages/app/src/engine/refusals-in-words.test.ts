import { accept, refuse } from "@jetwright/core";
import { beforeAll, expect, test } from "vitest";
import { refused } from "../words/de/refused.ts";
import { refusalsInWords } from "./refusals-in-words.ts";
import { learnSentences } from "./sentences.ts";

const no = refuse("no-such-take", "That take is not on record any more.");

beforeAll(() => learnSentences("de"));

test("a refusal keeps its reason and speaks the language; in English it stays as it is", () => {
  expect(refusalsInWords(no, "de")).toEqual({ ...no, detail: refused["no-such-take"] });
  expect(refusalsInWords(no, "en")).toEqual(no);
});

test("refusals in the fields of an answer speak it too, and the rest is left alone", () => {
  const rest = { report: null, mend: "station", list: [1, 2], effect: accept(3) };
  expect(refusalsInWords({ ...rest, air: no }, "de")).toEqual({
    ...rest,
    air: { ...no, detail: refused["no-such-take"] },
  });
  expect(refusalsInWords([no, 1], "de")).toEqual([{ ...no, detail: refused["no-such-take"] }, 1]);
});

test("an answer without a refusal is handed on itself", () => {
  for (const answer of [null, 3, "text", accept(4), { a: 1 }, [1, 2]]) {
    expect(refusalsInWords(answer, "de")).toBe(answer);
  }
});
