import { english } from "@jetwright/core/words/en";
import { readLog } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import type { AnswerOf } from "../../engine/answers/all.ts";
import { changePlan } from "../../engine/answers/change/change-plan.ts";
import { EngineState } from "../../engine/state.ts";
import { fitted } from "../../words/en/fitted.ts";
import {
  type ChangeDraft,
  isUntouched,
  newDraft,
  pagesOf,
  RUNAWAY_READ,
  readChangeDraft,
  readyTicks,
  SNAP_TICKS,
  stillOpen,
  togetherTicks,
} from "./change-draft.ts";
import { fittedRecords, photoRecord } from "./fitted-records.ts";
import { fromDrawer } from "./from-drawer.ts";

const AT = Date.parse("2026-05-02T10:00:00Z");
const line = (kind: string, body: object, i: number, bike: string | null = "fern"): string =>
  JSON.stringify({
    id: `t${i}`,
    kind,
    v: 1,
    at: `2026-05-01T08:0${i}:00Z`,
    ...(bike === null ? {} : { bike }),
    body,
  });
const LINES = [
  line(
    "bike-described",
    {
      name: "Fern",
      engine: { strokes: 2, displacementCc: 249 },
      carburetor: { bore: { shape: "round", diameterMm: 36 }, screw: "air", jetNumbering: "bore" },
    },
    1,
  ),
  line(
    "setup-fitted",
    {
      main: { number: 175, how: "told" },
      pilot: { number: 45, how: "read by eye" },
      needle: { marks: "N2K", grooves: 5, groovePitchMm: 1 },
      clip: { groove: 3, how: "told" },
    },
    2,
  ),
  line(
    "parts-counted",
    {
      parts: [
        { part: "main", number: 172, count: 2 },
        { part: "main", number: 170, numbering: "flow", count: 1 },
        { part: "main", number: 168, maker: "Hollin", count: 1 },
        { part: "pilot", number: 42, count: 0 },
      ],
    },
    3,
    null,
  ),
];

function fern(): EngineState {
  const state = new EngineState();
  state.speak(english);
  state.add(LINES);
  return state;
}
function plan(): Extract<AnswerOf<"change">, { ok: true }>["value"] {
  const made = changePlan(fern(), { bike: "fern", step: null });
  if (!made.ok) throw new RangeError(made.detail);
  return made.value;
}
const draft = (over: Partial<ChangeDraft>): ChangeDraft => ({ ...newDraft(plan()), ...over });

/** The shop after those records, read as any log is. */
function afterwards(one: ChangeDraft) {
  const records = fittedRecords(one, "fern", AT, fitted.edit);
  if (!records.ok) throw new RangeError(records.detail);
  const lines = records.value.map(({ kind, bike, at, body }, i) =>
    JSON.stringify({ id: `n${i}`, kind, v: 1, at: new Date(at!).toISOString(), bike, body }),
  );
  expect(readLog(lines).problems).toEqual([]);
  expect(readLog(lines).counts.used).toBe(lines.length);
  const state = fern();
  state.add(lines);
  return { records: records.value, shop: state.shop, bike: state.shop.bikes.get("fern")! };
}

describe("a change carried out", () => {
  test("writes what was really fitted, as read by eye, and what it replaces", () => {
    const { records, bike } = afterwards(draft({ chosen: ["main"], went: { main: { number: "172" } } }));
    expect(bike.now.setup.parts.main).toMatchObject({ number: 172, how: "read by eye" });
    expect(bike.now.setup.parts.pilot).toMatchObject({ number: 45 });
    expect(records[0]).toMatchObject({ kind: "setup-fitted", body: { replaces: "t2" } });
  });

  test("writes what the carburetor is where that was seen, beside what was known of it", () => {
    const one = draft({ chosen: ["screw"], went: { screw: { number: "2" } } });
    const before = afterwards(one).bike.description?.carburetor;
    expect(afterwards(one).records.map(({ kind }) => kind)).toEqual(["setup-fitted"]);
    const { bike } = afterwards({ ...one, seen: { screw: "fuel" } });
    expect(bike.description?.carburetor).toEqual({ ...before, screw: "fuel" });
  });

  test("takes from the drawer what came from it, and no more", () => {
    const one = draft({ chosen: ["main"], went: { main: { number: "172" } } });
    const count = (shop: EngineState["shop"]) =>
      shop.drawer.find(({ part }) => part.part === "main" && part.number === 172)?.count;
    expect(count(afterwards(one).shop)).toBe(1);
    expect(count(afterwards({ ...one, taken: { main: false } }).shop)).toBe(2);
    const other = afterwards(draft({ chosen: ["main"], went: { main: { number: "173" } } }));
    expect(other.records.map(({ kind }) => kind)).toEqual(["setup-fitted"]);
  });

  test("what came off goes into the drawer, as the drawer knows it, unless the person says no or nobody knows", () => {
    const one = draft({ chosen: ["main"], went: { main: { number: "172" } } });
    const held = (over: Partial<ChangeDraft>, number: number) =>
      afterwards({ ...one, ...over }).shop.drawer.find(
        ({ part }) => part.part === "main" && part.number === number,
      );
    expect(held({}, 175)).toEqual({
      part: { part: "main", numbering: "bore", number: 175, count: 1 },
      count: 1,
    });
    expect(held({ kept: { main: false } }, 175)).toBeUndefined();
    const other = { is: "other", typed: { number: "168", maker: "hollin" }, how: "read by eye" } as const;
    // Written on the jet itself: one more of those of that maker, not a kind of its own.
    expect(held({ came: { main: other } }, 168)).toMatchObject({ part: { maker: "Hollin" }, count: 2 });
    expect(held({ came: { main: { ...other, is: "not-looked" } } }, 175)).toBeUndefined();
    const clip = afterwards(draft({ chosen: ["clip"], went: { clip: { number: "2" } } }));
    expect(clip.records[0]!.body.drawer).toBeUndefined();
  });

  test("a jet taken out, cleaned and put back leaves the drawer alone", () => {
    const { records } = afterwards(draft({ chosen: ["pilot"], went: { pilot: { number: "45" } } }));
    expect(records[0]!.body.drawer).toBeUndefined();
  });

  test("puts the log right where something else came out, before the new part", () => {
    const { bike, records } = afterwards(
      draft({
        chosen: ["main"],
        came: { main: { is: "other", typed: { number: "180" }, how: "measured" } },
        went: { main: { number: "172" } },
      }),
    );
    expect(records[0]).toMatchObject({ body: { asFound: true, main: { number: 180, how: "measured" } } });
    const numbers = bike.setups.map(({ parts }) =>
      typeof parts.main === "object" ? parts.main.number : null,
    );
    expect(numbers.slice(-2)).toEqual([180, 172]);
  });

  test("a part that was as written is written again only when it is known more surely", () => {
    const as = (part: "main" | "pilot") =>
      fittedRecords(
        draft({
          chosen: [part],
          came: { [part]: { is: "as-written", typed: {}, how: "read by eye" } },
          went: { [part]: { number: "40" } },
        }),
        "fern",
        AT,
        fitted.edit,
      );
    const told = as("main");
    const read = as("pilot");
    expect(told.ok && told.value.filter(({ body }) => body.asFound === true)).toHaveLength(1);
    expect(read.ok && read.value.filter(({ body }) => body.asFound === true)).toHaveLength(0);
  });

  test("nobody looked: nothing is said of what came out", () => {
    const { records } = afterwards(
      draft({
        chosen: ["clip"],
        came: { clip: { is: "not-looked", typed: { number: "9" }, how: "told" } },
        went: { clip: { number: "2" } },
      }),
    );
    expect(records).toHaveLength(1);
  });

  test("a figure that cannot be read is refused by its part, and nothing is written", () => {
    const jet = draft({
      chosen: ["pilot", "main"],
      went: { pilot: { number: "42" }, main: { number: "x" } },
    });
    expect(fittedRecords(jet, "fern", AT, fitted.edit)).toMatchObject({ ok: false, part: "main" });
    const clip = draft({ chosen: ["clip"], went: { clip: { number: "7" } } });
    expect(fittedRecords(clip, "fern", AT, fitted.edit)).toMatchObject({ ok: false, part: "clip" });
    const nothing = draft({ chosen: ["pilot"] });
    expect(fittedRecords(nothing, "fern", AT, fitted.edit)).toMatchObject({ ok: false, part: "pilot" });
  });

  test("pictures go along by their fingerprint", () => {
    const hash = "ab".repeat(32);
    const { records } = afterwards(
      draft({ chosen: ["clip"], went: { clip: { number: "2" } }, photos: [{ hash, of: "Clip" }] }),
    );
    expect(records.at(-1)).toMatchObject({ kind: "photo", body: { hash, of: "Clip" } });
  });

  test("a picture of what came out is older than the change, one of what went in is of its time", () => {
    const hash = "ab".repeat(32);
    const taken = (photo: object, at = AT) => photoRecord({ hash, part: "clip", ...photo }, "fern", at);
    const body = { hash, part: "clip" };
    expect(taken({ at: AT - 90_000 })).toEqual({ kind: "photo", bike: "fern", at: AT - 90_000, body });
    expect(taken({ at: AT - 90_000, goesIn: true })).toEqual({ kind: "photo", bike: "fern", at: AT, body });
    // A clock that was set back, or a draft that does not say when.
    expect(taken({ at: AT + 5 }).at).toBe(AT - 1000);
    expect(taken({}).at).toBe(AT - 1000);
  });
});

describe("what lies in the drawer", () => {
  const { drawer } = plan();
  test("is the same jet only with its numbering and maker", () => {
    expect(fromDrawer("main", { number: 172 }, drawer, "bore")).toMatchObject({ number: 172 });
    expect(fromDrawer("main", { number: 172 }, drawer, "flow")).toBeNull();
    expect(fromDrawer("main", { number: 170 }, drawer, "bore")).toBeNull();
    expect(fromDrawer("main", { number: 170, numbering: "flow" }, drawer, "bore")).not.toBeNull();
    expect(fromDrawer("main", { number: 168, maker: "hollin " }, drawer, null)).not.toBeNull();
    expect(fromDrawer("main", { number: 168, maker: "Tarn" }, drawer, null)).toBeNull();
    expect(fromDrawer("pilot", { number: 172 }, drawer, null)).toBeNull();
  });
  test("none left is none", () => {
    expect(fromDrawer("pilot", { number: 42 }, drawer, null)).toBeNull();
  });
});

describe("the pages of a change", () => {
  test("a free choice is chosen first; bowl and cap ask for their own ticks", () => {
    const bowl = draft({ chosen: ["main"] });
    expect(pagesOf(bowl)).toEqual(["choose", "ready", "part:main", "together", "start"]);
    expect(readyTicks(bowl)).toContain("tray");
    expect(togetherTicks(bowl)).toContain("jets-tight");
    expect(togetherTicks(bowl)).not.toContain("slide-way");
    const cap = draft({ chosen: ["clip", "needle"] });
    expect(pagesOf(cap)).toEqual(["choose", "ready", "part:needle", "part:clip", "together", "start"]);
    expect(readyTicks(cap)).not.toContain("tray");
    expect(togetherTicks(cap)).toContain("slide-way");
  });

  test("a turned screw opens nothing", () => {
    const screw = draft({ chosen: ["screw"] });
    expect(pagesOf(screw)).toEqual(["choose", "ready", "part:screw"]);
    expect(readyTicks(screw)).toEqual(["outdoors", "warm"]);
  });

  test("before the first start the slide was heard at three places and the card was opened", () => {
    const one = draft({ chosen: ["main"] });
    expect(stillOpen(one, "start")).toEqual([...SNAP_TICKS, RUNAWAY_READ]);
    expect(stillOpen({ ...one, ticked: SNAP_TICKS }, "start")).toEqual([RUNAWAY_READ]);
    expect(stillOpen({ ...one, ticked: [...SNAP_TICKS, RUNAWAY_READ] }, "start")).toEqual([]);
    expect(stillOpen(one, "together")).toEqual(togetherTicks(one));
  });

  test("a stored change comes back, anything else does not", () => {
    const one = draft({ chosen: ["main"], page: "part:main", ticked: ["cool"] });
    expect(readChangeDraft(JSON.parse(JSON.stringify(one)))).toEqual(one);
    const { kept: _kept, ...older } = one;
    expect(readChangeDraft(older)).toEqual(one);
    expect(isUntouched(one)).toBe(false);
    expect(isUntouched(draft({}))).toBe(true);
    expect(readChangeDraft({ ...one, page: "part:clip" })).toBeNull();
    for (const bad of [
      null,
      3,
      {},
      { ...one, plan: null },
      { ...one, ticked: "cool" },
      { ...one, came: null },
    ]) {
      expect(readChangeDraft(bad)).toBeNull();
    }
  });
});

describe("the plan of an advised change", () => {
  test("proposes the part the advice named, as a record says it", async () => {
    const { readFileSync } = await import("node:fs");
    const state = new EngineState();
    state.speak(english);
    state.add(readFileSync("demo/shop.jsonl", "utf8").split("\n").filter(Boolean));
    const made = changePlan(state, { bike: "bramble", step: 0 });
    if (!made.ok) throw new RangeError(made.detail);
    const { advised, parts, title, cautions } = made.value;
    expect(title).not.toBeNull();
    expect(cautions).toContain("runaway");
    for (const { part, proposed, how } of parts) {
      expect(proposed !== null).toBe(advised.includes(part));
      if (proposed !== null) expect(how).not.toBeNull();
    }
    const records = fittedRecords(newDraft(made.value), "bramble", AT, fitted.edit);
    expect(records.ok).toBe(true);
  });

  test("a step that changes nothing, or none of that number, leaves the choice free", () => {
    const made = changePlan(fern(), { bike: "fern", step: 99 });
    expect(made.ok && made.value.advised).toEqual([]);
    expect(changePlan(fern(), { bike: "nobody", step: null }).ok).toBe(false);
  });
});
