import { describe, expect, test } from "vitest";
import { text } from "./test-airs.ts";
import { around, codes, hpa, taken } from "./test-reports.ts";

describe("pressure groups", () => {
  test.each([
    ["Q1018", 1018, "Q"],
    ["Q0995", 995, "Q"],
    ["Q 1016", 1016, "Q"],
    ["QNH 1016", 1016, "Q"],
    ["QNH1016", 1016, "Q"],
    ["QNH1016HPA", 1016, "Q"],
    ["QNH2992INS", 1013.21, "Q"],
    ["A2992", 1013.21, "A"],
    ["A29.92", 1013.21, "A"],
    ["A 29.92", 1013.21, "A"],
    ["A3014", 1020.66, "A"],
  ])("%s", (group, value, letter) => {
    const report = taken(around(`17/16 ${group}`));
    expect(hpa(report.altimeter)).toBe(value);
    expect(report.altimeterFrom).toBe(letter);
    expect(codes(report)).toEqual([]);
  });

  test("[12.4] Q2992 is inches, A1013 is hPa, and both are said", () => {
    const q = taken(around("17/16 Q2992"));
    expect(hpa(q.altimeter)).toBe(1013.21);
    expect(text(q, "pressure-group-unit")).toContain("hundredths of an inch");
    const a = taken(around("17/16 A1013"));
    expect(hpa(a.altimeter)).toBe(1013);
    expect(text(a, "pressure-group-unit")).toContain("hPa");
  });

  test("missing or impossible pressure is no pressure", () => {
    for (const group of ["Q////", "A////", ""]) {
      expect(codes(taken(around(`17/16 ${group}`)))).toEqual(["pressure-missing"]);
    }
    const report = taken(around("17/16 Q0869 A2992"));
    expect(hpa(report.altimeter)).toBe(1013.21);
    expect(codes(report)).toEqual(["pressure-group-impossible"]);
    expect(codes(taken(around("17/16 Q1086")))).toContain("pressure-group-impossible");
    expect(hpa(taken(around("17/16 Q1085")).altimeter)).toBe(1085);
    expect(hpa(taken(around("17/16 Q0870")).altimeter)).toBe(870);
    expect(hpa(taken(around("17/16 Q//// Q1013")).altimeter)).toBe(1013);
  });

  test("[12.8] Q and A both: both kept, the finer A used where they agree", () => {
    const report = taken(around("17/16 Q1012 NOSIG RMK 1CU020 A2990"));
    expect(report.altimeterFrom).toBe("A");
    expect([hpa(report.qGroup), hpa(report.aGroup), hpa(report.altimeter)]).toEqual([1012, 1012.53, 1012.53]);
    expect(codes(report)).toEqual([]);
    const joined = taken(around("17/16 Q1009/A2980"));
    expect([hpa(joined.qGroup), hpa(joined.aGroup)]).toEqual([1009, 1009.14]);
  });

  test("Q and A that do not agree: Q, and it is said", () => {
    const report = taken(around("17/16 Q1012 A3012"));
    expect(report.altimeterFrom).toBe("Q");
    expect(hpa(report.altimeter)).toBe(1012);
    expect(text(report, "altimeters-disagree")).toContain("1020 hPa");
    // 29.93 inHg is 1013.55 hPa, 1.55 above 1012; 29.86 is 1011.18, 0.82 below.
    expect(taken(around("17/16 Q1012 A2993")).altimeterFrom).toBe("Q");
    expect(taken(around("17/16 Q1012 A2992")).altimeterFrom).toBe("A");
    expect(taken(around("17/16 Q1012 A2986")).altimeterFrom).toBe("Q");
    expect(taken(around("17/16 Q1012 A2988")).altimeterFrom).toBe("A");
  });

  test("the same group twice: the first, and said if they differ", () => {
    const two = taken(around("17/16 Q1002/Q1001"));
    expect(hpa(two.altimeter)).toBe(1002);
    expect(codes(two)).toEqual(["pressure-group-twice"]);
    expect(codes(taken(around("17/16 Q1002 Q1002")))).toEqual([]);
  });

  test("[12.3] a sea-level pressure remark is never the altimeter setting", () => {
    const report = taken(around("17/16 RMK SLP125"));
    expect(report.altimeter).toBeNull();
    expect(hpa(report.seaLevelPressure)).toBe(1012.5);
    expect(text(report, "pressure-missing")).toContain("SLP");
    expect(text(taken(around("17/16")), "pressure-missing")).not.toContain("SLP");
    expect(taken(around("17/16 A2990 RMK SLPNO")).seaLevelPressure).toBeNull();
  });

  test.each([
    ["A2990 RMK SLP125", 1012.5],
    ["A2912 RMK SLP862", 986.2],
    ["A3090 RMK SLP500", 1050],
    ["A2805 RMK SLP500", 950],
    ["A2950 RMK SLP995", 999.5],
    ["RMK SLP499", 1049.9],
    ["RMK SLP500", 950],
    ["RMK SLP999", 999.9],
  ])("[4.3] century of SLP by the nearest altimeter setting: %s is %s", (groups, value) => {
    expect(hpa(taken(around(`17/16 ${groups}`)).seaLevelPressure)).toBe(value);
  });

  test.each([
    ["QFE729/0972", 972, false],
    ["QFE 729/0972", 972, false],
    ["QFE729", 971.92, true],
    ["QFE745.5", 993.92, true],
    ["QFE820", 1093.24, true],
    ["QFE821", 821, false],
    ["QFE0994", 994, false],
    ["QFE994", 994, false],
    ["QFE0700", 700, false],
    ["QFE1005HPA", 1005, false],
  ])("[12.4] station pressure remark %s is %s hPa", (group, value, coarse) => {
    const report = taken(around(`17/16 Q1018 NOSIG RMK ${group}`));
    expect(hpa(report.stationPressure)).toBe(value);
    expect(report.stationPressureCoarse).toBe(coarse);
    expect(codes(report)).toEqual([]);
    expect(hpa(report.altimeter)).toBe(1018);
  });

  test("station pressures that disagree or cannot be", () => {
    const report = taken(around("17/16 Q1018 RMK QFE729/0992"));
    expect(hpa(report.stationPressure)).toBe(992);
    expect(codes(report)).toEqual(["station-pressures-disagree"]);
    expect(codes(taken(around("17/16 Q1018 RMK QFE729/0973")))).toEqual([]);
    expect(codes(taken(around("17/16 Q1018 RMK QFE9999")))).toEqual(["station-pressure-impossible"]);
    expect(hpa(taken(around("17/16 Q1018 RMK QFE729/9999")).stationPressure)).toBe(971.92);
    expect(taken(around("17/16 Q1018 RMK QFEABC")).stationPressure).toBeNull();
    expect(hpa(taken(around("17/16 RMK QFE729 QFE0800")).stationPressure)).toBe(971.92);
    expect(codes(taken(around("17/16 RMK QFE729")))).toEqual([]);
  });
});
