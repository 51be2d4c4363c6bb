import { bikeCase, readLog, replay, writeRecord } from "@jetwright/records";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { en } from "../../words/en.ts";
import { type BikeDraft, NEW_BIKE, readBikeDraft } from "./bike-draft.ts";
import { bikeId, bikeRecords } from "./bike-records.ts";

const UNITS = { temperature: "C", height: "m", pressure: "hPa" } as const;
const made = (change: Partial<BikeDraft>) => bikeRecords({ ...NEW_BIKE, strokes: "2", ...change }, UNITS, en);

const logOf = (change: Partial<BikeDraft>) => {
  const bike = made(change);
  if (!bike.ok) throw new RangeError(JSON.stringify(bike.faults));
  return readLog(
    bike
      .records("b1")
      .map(({ kind, body }, i) =>
        writeRecord({ id: `n${i}`, kind, v: 1, at: "2026-05-01T10:00:00Z", bike: "b1", body }),
      ),
  );
};
const faults = (change: Partial<BikeDraft>) => {
  const bike = made(change);
  return bike.ok ? [] : Object.keys(bike.faults);
};

const FULL: Partial<BikeDraft> = {
  name: "Bramble 250",
  displacement: "249",
  bore: "38 mm",
  pilot: "45",
  main: "167,5",
  numbering: "bore",
  how: "measured",
  marks: "N2K",
  grooves: "5",
  clip: "3",
  needleJet: "2.70",
  cutaway: "3.5",
  screw: "air",
  turns: "1 1/2",
  place: "Hollin Wood",
  height: "2100 ft",
  temperature: "57F",
  ethanol: "5",
  oil: "40:1",
  use: "cross-country",
};

describe("a new bike", () => {
  test("is in the log with everything that was typed", () => {
    const log = logOf(FULL);
    expect(log.problems).toEqual([]);
    expect(log.entries.map(({ kind }) => kind)).toEqual([
      "bike-described",
      "setup-fitted",
      "air-measured",
      "fuel-used",
    ]);
    const made = bikeCase(replay(log.entries), "b1");
    if (!made.ok) throw new RangeError(made.detail);
    const { setup, air } = made.value.now;
    expect(setup.main).toEqual({ part: { number: 167.5, numbering: "bore", maker: "" }, how: "measured" });
    expect(setup.screw.part).toEqual({ kind: "air", turnsOut: 1.5 });
    expect(setup.clip.part).toBe(3);
    expect(setup.cutaway.part).toBeCloseTo(0.0035, 9);
    expect(setup.body.bore).toEqual({ shape: "round", diameter: 0.038 });
    // 57 °F is 13.89 °C and 2100 ft is 640.08 m, by the definitions of both.
    expect(air.temperature - 273.15).toBeCloseTo(13.889, 3);
    expect(log.entries[2]).toMatchObject({ body: { heightM: expect.closeTo(640.08, 6) } });
  });

  test("needs no more than its engine", () => {
    const log = logOf({});
    expect(log.problems).toEqual([]);
    expect(log.counts.used).toBe(1);
    expect(bikeCase(replay(log.entries), "b1").ok).toBe(true);
    expect(faults({ strokes: "" })).toEqual(["strokes"]);
  });

  test("has one cylinder, or the two that were chosen", () => {
    const cylindersOf = (change: Partial<BikeDraft>) => {
      const made = bikeCase(replay(logOf(change).entries), "b1");
      return made.ok ? made.value.engine.cylinders : null;
    };
    expect(cylindersOf({})).toBe(1);
    expect(cylindersOf({ cylinders: "2" })).toBe(2);
  });

  test("says every field that cannot be right, and writes nothing then", () => {
    expect(
      faults({
        displacement: "2490",
        bore: "x",
        pilot: "3",
        main: "17.5.0",
        clip: "9",
        grooves: "5",
        marks: "N",
        needleJet: "27",
        cutaway: "0",
        turns: "9",
        height: "9000 m",
        temperature: "14 K",
        oil: "some",
      }).sort(),
    ).toEqual(
      [
        "displacement",
        "bore",
        "pilot",
        "main",
        "clip",
        "needleJet",
        "cutaway",
        "turns",
        "height",
        "temperature",
        "oil",
      ].sort(),
    );
    expect(faults({ grooves: "0" })).toEqual(["grooves"]);
    expect(faults({ grooves: "0", marks: "N" })).toEqual(["grooves"]);
  });

  test("not sure of what a number means or which side the screw is on leaves it open", () => {
    const log = logOf({ numbering: "unsure", screw: "unsure", main: "170", turns: "1.5", ethanol: "unsure" });
    const made = bikeCase(replay(log.entries), "b1");
    if (!made.ok) throw new RangeError(made.detail);
    const codes = made.value.warnings.map(({ code }) => code);
    expect(codes).toContain("numbering-assumed");
    expect(codes).toContain("screw-side-unknown");
    expect(log.entries.some(({ kind }) => kind === "fuel-used")).toBe(false);
  });

  test("has a height of its place where no temperature was told, and no air", () => {
    const log = logOf({ height: "420" });
    expect(log.entries.map(({ kind }) => kind)).toEqual(["bike-described"]);
    expect(log.entries[0]).toMatchObject({ body: { place: { heightM: 420 } } });
  });

  test("is named after its engine when nobody named it", () => {
    const bike = made({ displacement: "249" });
    expect(bike.ok && bike.name).toBe("249 two-stroke");
  });

  test("whatever is typed, the log can use what is written", () => {
    const typed = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom("", "3", "1.5", "40:1", "170", "2.7"),
    );
    const draft = fc.record(
      Object.fromEntries(
        (["name", "displacement", "bore", "pilot", "main", "marks", "grooves", "clip", "needleJet"] as const)
          .concat(["cutaway", "turns", "place", "height", "temperature", "oil", "use"] as never)
          .map((field) => [field, typed]),
      ),
    );
    fc.assert(
      fc.property(draft, (change) => {
        if (!made(change).ok) return;
        expect(logOf(change).problems).toEqual([]);
      }),
      { seed: 20261127, numRuns: 300 },
    );
  });
});

describe("the id of a bike", () => {
  test("is its name and a little chance", () => {
    expect(bikeId("Bramble 250", "4f2a")).toBe("bramble-250-4f2a");
    expect(bikeId("Müller's Öl", "1")).toBe("mu-ller-s-o-l-1");
    expect(bikeId("  ", "1")).toBe("bike-1");
    expect(bikeId("x".repeat(200), "4f2a")).toMatch(/^[a-z0-9-]{1,64}$/);
  });
});

describe("a stored draft", () => {
  test("comes back as it was, and what is not understood starts empty", () => {
    expect(readBikeDraft(JSON.parse(JSON.stringify({ ...NEW_BIKE, ...FULL })))).toEqual({
      ...NEW_BIKE,
      ...FULL,
    });
    expect(readBikeDraft({ name: 3, strokes: "8", main: "170", more: true })).toEqual({
      ...NEW_BIKE,
      main: "170",
    });
    expect(readBikeDraft(null)).toEqual(NEW_BIKE);
  });
});
