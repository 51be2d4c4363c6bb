import { expect, test } from "vitest";
import { fromMillimetre as mm } from "../units/convert.ts";
import { checkBore } from "./bore-check.ts";

test("bores that exist pass unchanged", () => {
  const bore = { shape: "round", diameter: mm(36) } as const;
  expect(checkBore(bore)).toEqual({ ok: true, value: bore });
  expect(checkBore({ shape: "D", width: mm(34), height: mm(17) }).ok).toBe(true);
  expect(checkBore({ shape: "oval", width: mm(8), height: mm(60) }).ok).toBe(true);
});

test("wrong unit, swapped sides, no number: refused with what was given", () => {
  for (const diameter of [mm(0.036), mm(36000), mm(7.9), mm(60.1), mm(Number.NaN)]) {
    expect(checkBore({ shape: "round", diameter })).toMatchObject({ ok: false, reason: "bore" });
  }
  expect(checkBore({ shape: "oval", width: mm(30), height: mm(70) })).toMatchObject({ ok: false });
  expect(checkBore({ shape: "oval", width: mm(70), height: mm(30) })).toMatchObject({ ok: false });
  expect(checkBore({ shape: "D", width: mm(40), height: mm(19) })).toMatchObject({
    detail: expect.stringMatching(/40 mm wide and 19 mm high.*swapped/),
  });
});
