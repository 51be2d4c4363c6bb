import { expect, test } from "vitest";
import { readWork } from "./read-work.ts";

const words = { minutesWrong: "wrong", nothingTyped: "nothing" };
const read = (minutes: string, done: string, parts: string) =>
  readWork({ minutes, words: done, parts }, words);

test("minutes, words and parts, each where it was typed", () => {
  expect(read("37,5 min", " jet cleaned ", "plug, 2 x seal; bowl gasket x3")).toEqual({
    ok: true,
    value: {
      minutes: 37.5,
      words: "jet cleaned",
      parts: [
        { name: "plug", count: 1 },
        { name: "seal", count: 2 },
        { name: "bowl gasket", count: 3 },
      ],
    },
  });
  expect(read("10", "", "")).toEqual({ ok: true, value: { minutes: 10 } });
  expect(read("", "", "0 x seal")).toEqual({ ok: true, value: { parts: [{ name: "0 x seal", count: 1 }] } });
});

test("no number, no time and too much of it are refused, and so is nothing at all", () => {
  for (const minutes of ["ten", "0", "-5", "10001"]) {
    expect(read(minutes, "x", "")).toEqual({ ok: false, reason: "minutes", detail: "wrong" });
  }
  expect(read("10000", "", "").ok).toBe(true);
  expect(read(" ", " ", " , ")).toEqual({ ok: false, reason: "nothing", detail: "nothing" });
});
