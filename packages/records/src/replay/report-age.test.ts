import { expect, test } from "vitest";
import { reportAgeMinutes } from "./report-age.ts";

const at = Date.UTC(2026, 2, 1, 8, 0);

test("minutes since the report, over midnight, a month's end and a year's end", () => {
  expect(reportAgeMinutes({ day: 1, hour: 7, minute: 20 }, at)).toBe(40);
  expect(reportAgeMinutes({ day: 28, hour: 20, minute: 0 }, at)).toBe(12 * 60);
  expect(reportAgeMinutes({ day: 31, hour: 8, minute: 0 }, at)).toBe(29 * 24 * 60);
  expect(reportAgeMinutes({ day: 31, hour: 23, minute: 50 }, Date.UTC(2026, 0, 1, 0, 10))).toBe(20);
});

test("a station's clock may be a quarter of an hour ahead, no more", () => {
  expect(reportAgeMinutes({ day: 1, hour: 8, minute: 15 }, at)).toBe(-15);
  expect(reportAgeMinutes({ day: 1, hour: 8, minute: 16 }, at)).toBeGreaterThan(20 * 24 * 60);
});

test("no time, or a day no month has", () => {
  expect(reportAgeMinutes(null, at)).toBeNull();
  expect(reportAgeMinutes({ day: 32, hour: 8, minute: 16 }, at)).toBeNull();
});
