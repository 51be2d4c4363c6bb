import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatInstant, isLeapYear, parseInstant } from "./instant.ts";

const milliseconds = (text: string): number => {
  const got = parseInstant(text);
  if (!got.ok) throw new Error(got.detail);
  return got.value;
};
const reason = (text: string): string => {
  const got = parseInstant(text);
  return got.ok ? "ok" : got.reason;
};

describe("[R3] an instant is ISO 8601 with its zone, to the millisecond", () => {
  test("examples of RFC 3339 section 5.8 that are not leap seconds", () => {
    // The texts are the RFC's; the instants are the platform's own clock arithmetic.
    for (const text of ["1985-04-12T23:20:50.52Z", "1996-12-19T16:39:57-08:00"]) {
      expect(milliseconds(text)).toBe(Date.parse(text));
    }
    expect(milliseconds("1937-01-01T12:00:27.87+00:20")).toBe(Date.parse("1937-01-01T12:00:27.870+00:20"));
  });

  test("agrees with the platform's Date over 1600 to 2399, every zone", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: Date.UTC(1600, 0, 1), max: Date.UTC(2399, 11, 31) }),
        fc.integer({ min: -1439, max: 1439 }),
        (at, offset) => {
          const text = formatInstant(at, offset);
          expect(milliseconds(text)).toBe(at);
          expect(Date.parse(text)).toBe(at);
        },
      ),
      { seed: 20261125, numRuns: 500 },
    );
  });

  test("leap years: 2000 and 2024 have a 29 February, 1900, 2100 and 2026 do not", () => {
    expect([2000, 2024, 1900, 2100, 2026].map(isLeapYear)).toEqual([true, true, false, false, false]);
    expect(reason("2024-02-29T10:00Z")).toBe("ok");
    expect(reason("2026-02-29T10:00Z")).toBe("no-such-date");
    expect(reason("2100-02-29T10:00Z")).toBe("no-such-date");
  });

  test("UTC text is the same as the platform's, but drops empty thousandths", () => {
    expect(formatInstant(1_777_716_900_000)).toBe("2026-05-02T10:15:00Z");
    expect(formatInstant(1_777_716_900_007)).toBe(new Date(1_777_716_900_007).toISOString());
  });

  test("short forms a person types are read", () => {
    const at = milliseconds("2026-05-02T10:15:00+02:00");
    for (const text of [
      "2026-05-02T10:15+02:00",
      "2026-05-02 10:15+0200",
      "2026-05-02t08:15z",
      "2026-05-02T10:15:00,000+02",
    ])
      expect(milliseconds(text)).toBe(at);
    expect(milliseconds("2026-05-02T08:15:00.123987654Z")).toBe(at + 123);
  });

  test("what cannot be read says why and how to write it", () => {
    expect(reason("2026-05-02T10:15:00")).toBe("no-zone");
    expect(reason("2026-05-02")).toBe("not-a-time");
    expect(reason("yesterday")).toBe("not-a-time");
    expect(reason("2026-13-02T10:15Z")).toBe("no-such-date");
    expect(reason("2026-04-31T10:15Z")).toBe("no-such-date");
    expect(reason("2026-00-10T10:15Z")).toBe("no-such-date");
    expect(reason("0001-12-31T10:15Z")).toBe("no-such-date");
    expect(reason("9999-01-01T10:15Z")).toBe("no-such-date");
    expect(formatInstant(milliseconds("0002-01-01T00:00+23:59"))).toBe("0001-12-31T00:01:00Z");
    expect(formatInstant(milliseconds("9998-12-31T23:59-23:59"))).toBe("9999-01-01T23:58:00Z");
    expect(reason("2026-05-00T10:15Z")).toBe("no-such-date");
    expect(reason("2026-05-02T24:00Z")).toBe("no-such-time");
    expect(reason("2026-05-02T10:60Z")).toBe("no-such-time");
    expect(reason("2026-05-02T23:59:60Z")).toBe("no-such-time");
    expect(reason("2026-05-02T10:15+24:00")).toBe("no-such-time");
    expect(reason("2026-05-02T10:15+01:60")).toBe("no-such-time");
    const refused = parseInstant("2026-05-02T10:15:00");
    expect(!refused.ok && refused.detail).toContain("2026-05-02T10:15:00+02:00");
  });

  test("a bug of ours throws with the value", () => {
    expect(() => formatInstant(0.5)).toThrow("0.5");
    expect(() => formatInstant(0, 1440)).toThrow("1440");
    expect(() => formatInstant(1e15)).toThrow("outside 1 to 9999");
  });
});
