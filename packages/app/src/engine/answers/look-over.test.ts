import { readFileSync } from "node:fs";
import { CHECKS } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { describe, expect, test } from "vitest";
import { EngineState } from "../state.ts";
import { lookOverCard } from "./look-over.ts";

const DEMO = readFileSync(new URL("../../../../../demo/shop.jsonl", import.meta.url), "utf8")
  .split("\n")
  .filter((line) => line !== "");
const FROM = Date.parse("2026-06-06T12:00:00+02:00");
const looked = (id: string, check: string, found: string, at = "2026-06-06T13:00:00+02:00"): string =>
  JSON.stringify({ id, kind: "check-done", at, bike: "old-iron", body: { check, found } });

function cardOf(looks: readonly string[], ...lines: readonly string[]) {
  const state = new EngineState();
  state.speak(english);
  state.add([...DEMO, ...lines]);
  return lookOverCard(state, { bike: "old-iron", looks, from: FROM });
}
function rowsOf(...given: Parameters<typeof cardOf>) {
  const card = cardOf(...given);
  if (!card.ok) throw new RangeError(card.detail);
  return card.value;
}
const begun = ["tap-and-vents", "overflow-drip", "air-filter", "compression"];

describe("the card of a looking over", () => {
  test("holds the looks advised now, with the tools once and what to mind before all of them", () => {
    const { looks, tools, cautions, minutes } = rowsOf([]);
    expect(looks.length).toBeGreaterThanOrEqual(4);
    expect(new Set(tools).size).toBe(tools.length);
    expect(cautions).toContain("petrol-vapour");
    const alone = CHECKS.filter(({ id }) => looks.some((look) => look.id === id));
    expect(minutes).toBeLessThan(alone.reduce((sum, check) => sum + check.minutes, 0));
    for (const look of looks) {
      expect(look.found).toBeNull();
      expect(look.steps.length).toBeGreaterThan(1);
      for (const caution of look.cautions) expect(cautions).not.toContain(caution);
    }
  });

  test("once begun keeps its looks, whatever the advice is by then", () => {
    const answers = begun.map((check, i) => looked(`l${i}`, check, "sound"));
    const { looks } = rowsOf(begun, ...answers);
    expect(looks.map(({ id }) => id)).toEqual(begun);
    expect(looks.map(({ found }) => found?.what)).toEqual(["sound", "sound", "sound", "sound"]);
  });

  test("shows what was found since it was begun, the last answer of each look, and none that was struck", () => {
    const { looks } = rowsOf(
      begun,
      looked("l0", "tap-and-vents", "faulty", "2026-06-06T11:59:00+02:00"),
      looked("l1", "air-filter", "sound"),
      looked("l2", "air-filter", "faulty", "2026-06-06T13:01:00+02:00"),
      looked("l3", "compression", "sound"),
      '{"id":"l4","kind":"record-struck","at":"2026-06-06T13:02:00+02:00","bike":"old-iron","body":{"record":"l3"}}',
    );
    const found = Object.fromEntries(looks.map((look) => [look.id, look.found]));
    expect(found["tap-and-vents"]).toBeNull();
    expect(found["air-filter"]).toEqual({ record: "l2", what: "faulty", fault: null });
    expect(found.compression).toBeNull();
  });

  test("names a fault where one was named, and offers those the look can find, likeliest first", () => {
    const named = looked("l1", "overflow-drip", "faulty").replace('"found"', '"fault":"float-level","found"');
    const drip = rowsOf(begun, named).looks[1]!;
    expect(drip.found?.fault).toBe(english.faults["float-level"].words);
    expect(drip.faults.map(({ id }) => id)).toEqual(["float-valve", "float-level"]);
  });

  test("says so when there is nothing to look over; a list of another version is begun anew", () => {
    const answers = begun.map((check, i) => looked(`l${i}`, check, "sound"));
    const none = cardOf([], ...answers);
    expect(none.ok ? null : none.reason).toBe("nothing-to-look-over");
    expect(rowsOf(["air-filter", "a look of tomorrow"]).looks.map(({ id }) => id)).not.toContain(
      "a look of tomorrow",
    );
  });
});
