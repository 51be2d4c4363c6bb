import { english } from "@jetwright/core/words/en";
import { KINDS } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import everyKind from "../../../../../records/fixtures/version-1/every-kind.jsonl?raw";
import { DEMO, linesOf, shopOf } from "../test-shop.ts";
import { sentenceOf } from "./sentence.ts";
import { storyWords } from "./story-words.ts";

const EVERY_KIND = linesOf(everyKind);

const every = shopOf(EVERY_KIND);
const byId = new Map(every.entries.map((entry) => [entry.id, entry]));
const say = storyWords("en", english);
const said = (id: string): string => sentenceOf(byId.get(id)!, say, (other) => byId.get(other));

describe("a record in one sentence", () => {
  test("every kind there is has one", () => {
    const kinds = new Set(every.entries.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(KINDS.map(({ kind }) => kind).sort());
    for (const entry of every.entries) {
      const words = sentenceOf(entry, say, (id) => byId.get(id));
      expect(words.length).toBeGreaterThan(4);
      expect(words).not.toMatch(/undefined|null|\[object|NaN|true|false/);
    }
  });

  test("a picture says which part is in it, and what else was told", () => {
    const hash = "0".repeat(64);
    const told = (body: object) =>
      sentenceOf(
        shopOf([{ id: "p", kind: "photo", v: 1, at: "2026-05-01T10:00:00Z", bike: "b", body }]).entries[0]!,
        say,
      );
    expect(told({ hash, part: "pilot" })).toBe("A picture: pilot jet");
    expect(told({ hash, part: "clip", of: "bent" })).toBe("A picture: clip, bent");
    expect(told({ hash })).toBe("A picture was taken");
  });

  const fitted = (id: string, body: object) => ({
    id,
    kind: "setup-fitted",
    v: 1,
    at: `2026-05-0${id}T10:00:00Z`,
    bike: "b",
    body,
  });
  const CHAIN = shopOf([
    fitted("1", { pilot: { number: 45 }, clip: { groove: 3 }, asFound: true }),
    fitted("2", { clip: { groove: 4 }, replaces: "1" }),
    fitted("3", { pilot: { number: 42 }, replaces: "2", why: "Pilot jet 45 to 42" }),
    fitted("4", { pilot: { number: 42 }, replaces: "3", why: "pilot jet was clogged" }),
  ]).entries;
  test.each([
    ["2", "Fitted: clip in groove 4 (before: clip in groove 3)"],
    ["3", "Fitted: pilot jet 42 (before: pilot jet 45)"],
    ["4", "Fitted: pilot jet 42; why: pilot jet was clogged"],
  ])(
    "a change says what it took the place of, and its reason unless that is the same again: %s",
    (id, told) => {
      const find = (wanted: string) => CHAIN.find((entry) => entry.id === wanted);
      expect(sentenceOf(find(id)!, say, find)).toBe(told);
    },
  );

  test("what was heard is told by name and with units", () => {
    const figures = { hangSeconds: 0.204, idleRpm: 1650.4, confidence: 0.7, stalls: 1, other: 3 };
    const heard = {
      id: "s",
      kind: "sound-heard",
      v: 1,
      at: "2026-05-01T10:00:00Z",
      bike: "b",
      body: { figures },
    };
    expect(sentenceOf(shopOf([heard]).entries[0]!, say)).toBe(
      "Engine listened to: Idle 1650 rpm, Hang after closing 0.20 s, died after closing",
    );
  });

  test.each([
    ["k01", ["Bramble 250", "two-stroke", "249 cc", "36 mm", "air screw", "enduro", "Hollin Wood", "420 m"]],
    ["k02", ["Fuel: pump 95", "E5", "oil 40:1"]],
    [
      "k03",
      [
        "Found fitted",
        "main jet 175 (nobody) (read by eye)",
        "clip in groove 3",
        "main air jet not known",
        "as it came",
      ],
    ],
    ["k04", ["14 °C (57 °F)", "962 hPa at the place", "420 m (1378 ft)", "60 % humidity"]],
    ["k05", ["Ridden: 1/2: ", "not: ", "full: ", "“blubbers up the long hill”"]],
    ["k06", ["Fitted: clip in groove 2", "why: rich in the middle"]],
    ["k07", ["better at 1/2", "the same at 1/8"]],
    ["k08", ["at closed", "“clear peak”"]],
    ["k09", ["sound"]],
    ["k10", ["4 % rich at 3/4", "lambda 0.84 where 0.88 is wanted at full"]],
    ["k11", ["Marked as right", "“clean everywhere”"]],
    ["k12", ["Drawer counted", "2 × main jet 175", "1 × slide with 4 mm cutaway"]],
    ["k13", ["Into the drawer: 3 × main jet 172"]],
    ["k14", ["Out of the drawer: 1 × main jet 172"]],
    ["k15", ["Needle N2J measured at 6 places"]],
    ["k16", ["main jet 6", "pilot jet 25", "needle jet 35"]],
    ["k17", ["One change at a time"]],
    ["k18", ["Hang after closing 0.40 s"]],
    ["k19", ["wants a new throttle cable soon"]],
    ["k20", ["A picture: plug"]],
    ["k21", ["The tool said: Ride it", "(done)"]],
    ["k23", ["Struck as a mistake: “written for another bike by mistake”", "why: wrong bike"]],
    ["k24", ["Engine changed: pipe", "“new front pipe”"]],
    ["k25", ["Put away", "winter"]],
    ["k26", ["Customer: Jo Ferrant, 0555 0142, calls back after five"]],
    ["k27", ["Work order opened: “it dies when I shut the throttle”"]],
    ["k28", ["Worked: 45 minutes, bowl off, pilot jet cleaned, 1 × bowl gasket"]],
    ["k29", ["Handed over: ridden together; sheet given"]],
  ])("%s says what was written", (id, parts) => {
    const words = said(id);
    for (const part of parts) expect(words).toContain(part);
  });

  test("lean and rich are never mixed up, nor groove and half groove, nor a turn and turns", () => {
    const { entries } = shopOf([
      {
        id: "a",
        kind: "mixture-measured",
        v: 1,
        at: "2026-01-01T00:00:00Z",
        bike: "b",
        body: {
          readings: [
            { opening: "1/4", errorPercent: -3 },
            { opening: "1/2", errorPercent: 0 },
          ],
        },
      },
      {
        id: "b",
        kind: "setup-fitted",
        v: 1,
        at: "2026-01-01T00:00:00Z",
        bike: "b",
        body: { clip: { groove: 2.5 }, screw: { turnsOut: 1 } },
      },
      {
        id: "c",
        kind: "setup-fitted",
        v: 1,
        at: "2026-01-01T00:00:00Z",
        bike: "b",
        body: { screw: { turnsOut: 1.25 } },
      },
    ]);
    const [a, b, c] = entries.map((entry) => sentenceOf(entry, say));
    expect(a).toContain("3 % lean at 1/4");
    expect(a).toContain("right at 1/2");
    expect(b).toContain("groove 2 with a half-step shim");
    expect(b).toContain("screw 1 turn out");
    expect(c).toContain("1¼ turns out");
  });

  test("what is kept without being used says so, and why", () => {
    const at = "2026-01-01T00:00:00Z";
    const { entries } = shopOf([
      { id: "a", kind: "dreamt-of", v: 1, at, body: {} },
      { id: "b", kind: "note", v: 9, at, body: {} },
      { id: "c", kind: "note", v: 1, at, body: { text: 7 } },
    ]);
    const [unknown, newer, faulty] = entries.map((entry) => sentenceOf(entry, say));
    expect(unknown).toMatch(/does not know.*dreamt-of.*kept/);
    expect(newer).toMatch(/newer version.*kept; update/i);
    expect(faulty).toMatch(/cannot be read.*kept/i);
  });

  test("a strike taken back says what counts again", () => {
    const at = "2026-01-01T00:00:00Z";
    const strike = (id: string, record: string) => ({
      id,
      kind: "record-struck",
      v: 1,
      at,
      body: { record },
    });
    const { entries } = shopOf([
      { id: "a", kind: "note", v: 1, at, body: { text: "new plug" } },
      strike("b", "a"),
      strike("c", "b"),
      strike("d", "c"),
      strike("e", "gone"),
    ]);
    const find = (id: string) => entries.find((entry) => entry.id === id);
    expect(entries.slice(1).map((entry) => sentenceOf(entry, say, find))).toEqual([
      "Struck as a mistake: “new plug”",
      "Counts again: “new plug”",
      "A strike was taken back",
      "Struck as a mistake: a record that is not on this device",
    ]);
  });

  test("every line of the example shop can be told", () => {
    for (const entry of shopOf(DEMO).entries) {
      expect(sentenceOf(entry, say)).not.toMatch(/undefined|\[object|NaN/);
    }
  });
});
