import { warningText } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLogText } from "./log-reader.ts";
import { mergeEntries } from "./merge.ts";
import { bikeCase } from "./replay/bike-case.ts";
import { knownGoodSetups } from "./replay/known-good.ts";
import { replay } from "./replay/replay.ts";
import { anyLog, textOf } from "./test-any-log.ts";
import { writeLog } from "./write-record.ts";

describe("any log of well-formed records", () => {
  test("[R7] [R24] is read, replayed and made into cases without a throw, with numbers that are numbers", () => {
    let cases = 0;
    let rides = 0;
    fc.assert(
      fc.property(anyLog, (records) => {
        const log = readLogText(textOf(records));
        const state = replay(log.entries);
        knownGoodSetups(state);
        for (const bike of state.bikes.keys()) {
          const got = bikeCase(state, bike);
          if (!got.ok) continue;
          cases++;
          rides += got.value.rides.length;
          for (const { situation } of [
            ...got.value.rides,
            ...got.value.tests,
            { situation: got.value.reference },
          ]) {
            expect(situation.air.dryDensity).toBeGreaterThan(0.1);
            expect(situation.air.dryDensity).toBeLessThan(2);
            expect(situation.air.relativeSd).toBeGreaterThan(0);
            expect(situation.fuel.density).toBeGreaterThan(500);
            expect(situation.setup.body.screwKind).toMatch(/^(air|fuel)$/);
          }
          for (const { error, sd } of got.value.measurements) {
            expect(Number.isFinite(error) && sd > 0).toBe(true);
          }
          for (const warning of got.value.warnings)
            expect(warningText(warning, english)).toMatch(/^(?!.*undefined).{10}/s);
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
    expect(cases).toBeGreaterThan(300);
    expect(rides).toBeGreaterThan(40);
  });

  test("[R13] [R14] [R17] written, read, split and merged it is the same log", () => {
    fc.assert(
      fc.property(anyLog, fc.nat({ max: 27 }), (records, cut) => {
        const whole = readLogText(textOf(records));
        const sources = (entries: readonly { source: object }[]): object[] =>
          entries.map(({ source }) => source);
        const halves = [records.slice(cut), records.slice(0, cut)].map(
          (half) => readLogText(textOf(half)).entries,
        );
        const merged = mergeEntries(...halves);
        expect(sources(merged)).toEqual(sources(mergeEntries(whole.entries)));
        const again = readLogText(writeLog(sources(merged) as never));
        expect(again.problems.filter(({ path }) => path === "id")).toEqual([]);
        expect(sources(again.entries)).toEqual(sources(merged));
        const unlined = (entries: Parameters<typeof replay>[0]): unknown =>
          JSON.parse(
            JSON.stringify(
              [...replay(entries).bikes].sort(([a], [b]) => (a < b ? -1 : 1)),
              (key, value) => (key === "line" ? undefined : value),
            ),
          );
        expect(unlined(again.entries)).toEqual(unlined(whole.entries));
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });
});
