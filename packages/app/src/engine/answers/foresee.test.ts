import { readFileSync } from "node:fs";
import { english } from "@jetwright/core/words/en";
import { writeRecord } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import { EngineState } from "../state.ts";
import { adviceFor } from "./advice.ts";
import { foresee } from "./foresee.ts";

const SHOP = readFileSync(new URL("../../../../../demo/shop.jsonl", import.meta.url), "utf8")
  .split("\n")
  .filter((line) => line !== "");
const BIKE = "bramble";

const ride = (id: string, sign: string, opening: string) =>
  writeRecord({
    id,
    kind: "ride-reported",
    v: 1,
    at: "2026-11-25T10:00:00Z",
    bike: BIKE,
    body: { reports: [{ sign, opening, seen: true }] },
  });

function shopWith(...lines: readonly string[]): EngineState {
  const state = new EngineState();
  state.speak(english);
  state.add(SHOP);
  for (const line of lines) state.add([line]);
  return state;
}

const RIDE = ride("ride-1", "fades-then-recovers", "full");
const OTHER = ride("ride-2", "hangs-after-closing", "closed");

describe("advice worked out ahead", () => {
  test("is the advice there is once the line is kept, and not before", () => {
    const state = shopWith();
    const before = adviceFor(state, { bike: BIKE });
    foresee(state, { bike: BIKE, line: RIDE });
    expect(adviceFor(state, { bike: BIKE })).toBe(before);
    const ahead = state.ahead(RIDE);
    state.add([RIDE]);
    expect(state.shop).toBe(ahead);
    expect(adviceFor(state, { bike: BIKE })).toEqual(adviceFor(shopWith(RIDE), { bike: BIKE }));
    expect(adviceFor(state, { bike: BIKE })).not.toEqual(before);
  });

  test("does not stand when another line came first", () => {
    const state = shopWith();
    foresee(state, { bike: BIKE, line: RIDE });
    state.add([OTHER]);
    state.add([RIDE]);
    expect(adviceFor(state, { bike: BIKE })).toEqual(adviceFor(shopWith(OTHER, RIDE), { bike: BIKE }));
  });

  test("does not stand for another line, nor for several at once", () => {
    const state = shopWith();
    foresee(state, { bike: BIKE, line: RIDE });
    const ahead = state.ahead(RIDE);
    state.add([RIDE, OTHER]);
    expect(state.shop).not.toBe(ahead);
    const second = shopWith();
    foresee(second, { bike: BIKE, line: RIDE });
    second.add([OTHER]);
    expect(adviceFor(second, { bike: BIKE })).toEqual(adviceFor(shopWith(OTHER), { bike: BIKE }));
  });

  test("of a line that cannot be read is the advice of now", () => {
    const state = shopWith();
    foresee(state, { bike: BIKE, line: "{half" });
    state.add(["{half"]);
    expect(adviceFor(state, { bike: BIKE })).toEqual(adviceFor(shopWith(), { bike: BIKE }));
  });

  test("asked twice is worked out once", () => {
    const state = shopWith();
    expect(adviceFor(state, { bike: BIKE })).toBe(adviceFor(state, { bike: BIKE }));
  });
});
