import { readLog, replay, writeRecord } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import { en } from "../../words/en.ts";
import { type DescriptionTyped, descriptionChange, typedDescription } from "./description-change.ts";

const UNITS = { temperature: "C", height: "m", pressure: "hPa" } as const;
const TOLD = {
  name: "Bramble 250",
  engine: { strokes: 2, displacementCc: 249, boreMm: 66.4 },
  carburetor: { screw: "unknown", nozzle: "primary" },
  place: { name: "Hollin Wood", heightM: 420 },
} as const;
const BEFORE = typedDescription(TOLD, UNITS);
const change = (typed: Partial<DescriptionTyped>) =>
  descriptionChange(BEFORE, { ...BEFORE, ...typed }, UNITS, en.newBike);

describe("a bike described again", () => {
  test("is shown as it is known", () => {
    expect(BEFORE).toEqual({
      name: "Bramble 250",
      strokes: "2",
      cylinders: "",
      displacement: "249",
      bore: "",
      numbering: "",
      screw: "",
      place: "Hollin Wood",
      height: "420 m",
      use: "",
    });
    expect(typedDescription(null, UNITS).strokes).toBe("");
  });

  test("writes only what was changed", () => {
    expect(change({})).toEqual({ ok: true, value: null });
    expect(change({ name: " " })).toEqual({ ok: true, value: null });
    expect(change({ screw: "air", numbering: "flow" })).toEqual({
      ok: true,
      value: { carburetor: { screw: "air", jetNumbering: "flow" } },
    });
    expect(change({ displacement: "250 cc" })).toEqual({
      ok: true,
      value: { engine: { strokes: 2, displacementCc: 250 } },
    });
    expect(change({ cylinders: "2" })).toEqual({ ok: true, value: { engine: { strokes: 2, cylinders: 2 } } });
    expect(change({ height: "1000 ft" })).toMatchObject({ value: { place: { heightM: 304.8 } } });
  });

  test("is refused by the field that is wrong", () => {
    const field = (typed: Partial<DescriptionTyped>) => {
      const outcome = change(typed);
      return outcome.ok ? null : outcome.reason;
    };
    expect(field({ strokes: "" })).toBe("strokes");
    expect(field({ displacement: "10" })).toBe("displacement");
    expect(field({ bore: "wide" })).toBe("bore");
    expect(field({ bore: "71" })).toBe("bore");
    expect(field({ height: "7000" })).toBe("height");
  });

  test("lies over what was told before, field by field, in the log", () => {
    const made = change({ bore: "36", screw: "fuel", use: "enduro", place: "Tarn End" });
    const lines = [TOLD, made.ok && made.value].map((body, i) =>
      writeRecord({
        id: `d${i}`,
        kind: "bike-described",
        v: 1,
        at: `2026-05-0${i + 1}T10:00:00Z`,
        bike: "b",
        body: body as never,
      }),
    );
    const log = readLog(lines);
    expect(log.problems).toEqual([]);
    expect(replay(log.entries).bikes.get("b")!.description).toEqual({
      ...TOLD,
      carburetor: { screw: "fuel", nozzle: "primary", bore: { shape: "round", diameterMm: 36 } },
      place: { name: "Tarn End", heightM: 420 },
      use: "enduro",
    });
  });
});
