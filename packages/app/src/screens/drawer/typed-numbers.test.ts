import { expect, test } from "vitest";
import { typedJets } from "./typed-numbers.ts";

const read = (typed: string) => {
  const { jets, wrong } = typedJets(typed);
  return wrong?.detail ?? jets.map(({ number, count }) => `${number}:${count}`).join(" ");
};

test("numbers in a row, with a count behind or before", () => {
  expect(read("165 170 175x2")).toBe("165:1 170:1 175:2");
  expect(read("165, 170; 175 x 2 3×180")).toBe("165:1 170:1 175:2 180:3");
  expect(read("165,170,175")).toBe("165:1 170:1 175:1");
  expect(read("#42 no.45")).toBe("42:1 45:1");
});

test("decimals with comma or point", () => {
  expect(read("17,5 17.5×3")).toBe("17.5:1 17.5:3");
  expect(read("162,5, 165")).toBe("162.5:1 165:1");
});

test("nothing typed is no jet and no mistake", () => {
  expect(typedJets("  ")).toEqual({ jets: [], wrong: null });
});

test("the first piece that is no jet is named, and what came before it is kept", () => {
  expect(typedJets("165 abc 170")).toEqual({
    jets: [{ number: 165, count: 1 }],
    wrong: expect.objectContaining({ detail: expect.stringContaining('"abc"') }),
  });
  expect(read("1.75")).toContain("type 175");
  for (const typed of ["165x", "170x0", "175x2x3", "-3", "4000", "0"]) {
    expect(typedJets(typed).wrong).not.toBeNull();
  }
});
