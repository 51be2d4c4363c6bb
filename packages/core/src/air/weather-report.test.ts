import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toCelsius } from "../units/convert.ts";
import { text } from "./test-airs.ts";
import { around, celsius, codes, hpa, reason, taken } from "./test-reports.ts";
import { readWeatherReport } from "./weather-report.ts";

describe("report text", () => {
  test("head: kind, station, time, automatic, corrected", () => {
    const plain = taken("METAR LFPG 121130Z 24008KT 9999 SCT030 17/16 Q1018");
    expect(plain).toMatchObject({
      kind: "METAR",
      station: "LFPG",
      time: { day: 12, hour: 11, minute: 30 },
      automatic: false,
      corrected: false,
      inTenths: false,
      altimeterFrom: "Q",
      aGroup: null,
      seaLevelPressure: null,
      stationPressure: null,
      warnings: [],
    });
    const special = taken("SPECI COR YUDO 151115Z AUTO 05025G37KT 3000 25/22 Q1008");
    expect(special).toMatchObject({ kind: "SPECI", station: "YUDO", automatic: true, corrected: true });
    expect(taken("CYYZ 151100Z CCA 05025KT 15SM 25/22 A2992")).toMatchObject({
      kind: null,
      station: "CYYZ",
      corrected: true,
    });
    expect(taken("METAR LFPG 121130Z 17/16 Q1018 RMK AUTO COR NIL")).toMatchObject({
      automatic: false,
      corrected: false,
    });
  });

  test("a time that cannot be is said, the rest kept", () => {
    for (const time of ["321130Z", "002330Z", "122430Z", "121160Z"]) {
      const report = taken(`METAR LFPG ${time} 17/16 Q1018`);
      expect(report.time).toBeNull();
      expect(codes(report)).toEqual(["report-time-impossible"]);
    }
    expect(taken("METAR LFPG 312359Z 17/16 Q1018").time).toEqual({ day: 31, hour: 23, minute: 59 });
    expect(taken("METAR LFPG 010000Z 17/16 Q1018").time).toEqual({ day: 1, hour: 0, minute: 0 });
  });

  test("a typed fragment with a pressure is enough; a bare pair may be a date", () => {
    expect(celsius(taken("19/16 A2993"))).toEqual([19, 16]);
    expect(reason("10/03")).toBe("not-a-report");
    expect(taken("METAR Q1013").temperature).toBeNull();
  });

  test("[4.1] M is minus, and M00 is 0, never -0", () => {
    expect(celsius(taken(around("M05/M07 Q1018")))).toEqual([-5, -7]);
    expect(celsius(taken(around("01/M01 Q1018")))).toEqual([1, -1]);
    const zero = taken(around("M00/M00 Q1018"));
    expect(Object.is(toCelsius(zero.temperature!), 0)).toBe(true);
    expect(Object.is(toCelsius(zero.dewPoint!), 0)).toBe(true);
    expect(celsius(taken(around("-05/-07 Q1018")))).toEqual([-5, -7]);
    expect(celsius(taken(around("\u221205/\u221207 Q1018")))).toEqual([-5, -7]);
  });

  test.each(["10///", "10/", "10/XX"])("[12.2] dew point missing, %s: the temperature is kept", (group) => {
    const report = taken(around(`${group} Q1018`));
    expect(celsius(report)).toEqual([10, null]);
    expect(codes(report)).toEqual(["dew-point-missing"]);
  });

  test("[12.2] M05/ keeps its minus", () => {
    expect(celsius(taken(around("M05/ Q1018")))).toEqual([-5, null]);
    expect(celsius(taken(around("M05/// Q1018")))).toEqual([-5, null]);
  });

  test("temperature missing or left out: the pressure is kept and it is said", () => {
    for (const group of ["///// ", "///05 ", "// ", "/// ", "////// ", "XX/XX ", ""]) {
      const report = taken(around(`${group}Q1018`));
      expect(celsius(report)).toEqual([null, null]);
      expect(codes(report)).toEqual(["temperature-missing"]);
      expect(hpa(report.altimeter)).toBe(1018);
    }
    expect(celsius(taken(around("// /// ////// 18/17 Q1018")))).toEqual([18, 17]);
  });

  test("groups with strokes that are no temperature", () => {
    const report = taken(
      "METAR ENVA 121150Z VRB02KT 1/2SM R12/1000U R24/290155 //////CB BKN/// 11/08 Q1001 W15/S4 RF00.0/000.4",
    );
    expect(celsius(report)).toEqual([11, 8]);
  });

  test("[12.5] tenths from the remarks; a missing dew point falls back on whole degrees", () => {
    const report = taken(around("06/04 A2990 RMK AO2 T00640036 10066 21012"));
    expect(celsius(report)).toEqual([6.4, 3.6]);
    expect(report.inTenths).toBe(true);
    expect(celsius(taken(around("M12/M15 A3014 RMK T11171150")))).toEqual([-11.7, -15]);
    expect(celsius(taken(around("06/04 A2990 RMK T0064")))).toEqual([6.4, 4]);
    expect(celsius(taken(around("00/M01 A2990 RMK T10001011")))).toEqual([0, -1.1]);
    expect(celsius(taken(around("A2990 RMK T01280083")))).toEqual([12.8, 8.3]);
  });

  test("tenths that belong to another temperature are not used", () => {
    const report = taken(around("16/04 A2990 RMK T00640036"));
    expect(celsius(report)).toEqual([16, 4]);
    expect(report.inTenths).toBe(false);
    expect(text(report, "tenths-disagree")).toContain("6.4 °C");
    expect(taken(around("07/04 A2990 RMK T00600036")).inTenths).toBe(true);
    expect(taken(around("08/04 A2990 RMK T00690036")).inTenths).toBe(false);
  });
});

describe("[12.8] what is not the observation", () => {
  test.each(["TEMPO", "BECMG", "NOSIG", "INTER", "PROB30"])("nothing after %s is read", (word) => {
    const report = taken(around(`Q1018 ${word} 30/20 Q0990 A2900 QFE700`));
    expect(report.temperature).toBeNull();
    expect(report.aGroup).toBeNull();
    expect(hpa(report.altimeter)).toBe(1018);
    expect(report.stationPressure).toBeNull();
  });
  test("a trend ends where the remarks begin, and a trend word in the remarks opens none", () => {
    const report = taken(around("17/16 Q1018 TEMPO 30/20 Q0990 RMK TEMPO T01720158 QFE729"));
    expect(celsius(report)).toEqual([17.2, 15.8]);
    expect(hpa(report.altimeter)).toBe(1018);
    expect(hpa(report.stationPressure)).toBe(971.92);
    expect(celsius(taken(around("Q1018 RMK 30/20")))).toEqual([null, null]);
    expect(taken(around("17/16 Q1018 RMKS SLP125")).seaLevelPressure).not.toBeNull();
    expect(taken(around("17/16 Q1018 SLP125 T01720158"))).toMatchObject({
      seaLevelPressure: null,
      inTenths: false,
    });
    expect(taken(around("17/16 RMK T 25 23 Q 1016 1017")).altimeter).toBeNull();
  });
  test("lower case, =, $, line breaks and commas", () => {
    for (const tail of ["", "=", " =", "$", " $", ";", "."]) {
      const report = taken(`  metar lfpg 121130z\n 24008kt,\t9999 17/m01 q1018${tail}\r\n`);
      expect(celsius(report)).toEqual([17, -1]);
      expect(hpa(report.altimeter)).toBe(1018);
      expect(report.station).toBe("LFPG");
      expect(report.warnings).toEqual([]);
      expect(report.text).toBe(`METAR LFPG 121130Z 24008KT 9999 17/M01 Q1018`);
    }
  });
  test("NIL is refused by itself and passed over among others", () => {
    expect(reason("METAR LFPG 121200Z NIL=")).toBe("nil");
    expect(reason("METAR LFPG NIL=")).toBe("nil");
    const report = taken("METAR LFPG 121200Z NIL= METAR LFPG 121130Z 17/16 Q1018=");
    expect(celsius(report)).toEqual([17, 16]);
    expect(codes(report)).toEqual(["nil-passed-over"]);
    expect(celsius(taken("METAR LFPG 121200Z 17/16 Q1018 RMK NIL"))).toEqual([17, 16]);
  });
  test("a forecast is refused by itself and passed over among others", () => {
    const taf = "TAF LFPG 121100Z 1212/1318 24008KT 9999 SCT030 TX21/1214Z TN12/1304Z";
    expect(reason(taf)).toBe("forecast");
    expect(reason(`${taf} QNH2992INS`)).toBe("forecast");
    const report = taken(`METAR LFPG 121130Z 17/16 Q1018\n${taf}`);
    expect(celsius(report)).toEqual([17, 16]);
    expect(codes(report)).toEqual(["forecast-passed-over"]);
  });
  test("empty, not a report, report without a reading, too long", () => {
    expect(reason("")).toBe("empty");
    expect(reason(" \n\t ")).toBe("empty");
    expect(reason("the bike bogs at half throttle")).toBe("not-a-report");
    expect(reason("METAR LFPG 121130Z 24008KT CAVOK")).toBe("no-reading");
    expect(reason(`${around("17/16 Q1018")} ${"x".repeat(100_000)}`)).toBe("too-long");
    expect(reason(`${around("17/16 Q1018")} ${"x".repeat(90_000)}`)).toBe("taken");
  });
});

describe("[12.8] several reports pasted together", () => {
  const one = (time: string, temperature: string, head = "METAR LFPG") =>
    `${head} ${time} 24008KT ${temperature} Q1018`;
  test.each([
    ["by the word METAR", `${one("121100Z", "17/10")} ${one("121130Z", "18/10")}`, 18],
    ["in the other order", `${one("121130Z", "18/10")}\n${one("121100Z", "17/10")}`, 18],
    ["by =", `${one("121130Z", "18/10", "LFPG")}=${one("121100Z", "17/10", "LFPG")}=`, 18],
    ["by station and time", `${one("121100Z", "17/10", "LFPG")} ${one("121130Z", "18/10", "LFPG")}`, 18],
    ["a special", `${one("121145Z", "19/10", "SPECI LFPG")} ${one("121130Z", "18/10")}`, 19],
    ["another hour", `${one("120930Z", "17/10")} ${one("121000Z", "18/10")}`, 18],
    ["another day", `${one("112330Z", "17/10")} ${one("120000Z", "18/10")}`, 18],
    ["across a month's end", `${one("010000Z", "18/10")} ${one("312330Z", "17/10")}`, 18],
    ["15 days apart is one month", `${one("160000Z", "18/10")} ${one("010000Z", "17/10")}`, 18],
    ["16 days apart is two", `${one("170000Z", "17/10")} ${one("010000Z", "18/10")}`, 18],
    ["the same time: the later", `${one("121130Z", "17/10")} ${one("121130Z", "18/10")}`, 18],
    ["a correction", `${one("121130Z COR", "18/10")} ${one("121130Z", "17/10")}`, 18],
    ["a later correction", `${one("121130Z COR", "17/10")} ${one("121130Z COR", "18/10")}`, 18],
    ["one without a time is oldest", `${one("121130Z", "18/10")} METAR LFPG 17/10 Q1018`, 18],
  ])("%s", (_name, pasted, temperature) => {
    const report = taken(pasted);
    expect(celsius(report)[0]).toBe(temperature);
    expect(codes(report)).toEqual(["several-reports"]);
    expect(text(report, "several-reports")).toMatch(/^2 reports .* newest by day and time/);
    expect(report.text).not.toContain("17/10");
  });
  test("other stations are named", () => {
    const report = taken(`${one("121100Z", "17/10")} ${one("121130Z", "18/10", "METAR EGLL")}`);
    expect(text(report, "several-reports")).toContain("LFPG, EGLL");
    expect(report.station).toBe("EGLL");
  });
  test("a bulletin's heading is no report", () => {
    const report = taken("SAFR31 LFPW 121130\nMETAR LFPG 121130Z 17/16 Q1018=");
    expect(report.warnings).toEqual([]);
    expect(report.station).toBe("LFPG");
    expect(taken("METAR LFPG 121130Z 17/16 Q1018 RMK LAST OBS NEXT 130500Z").warnings).toEqual([]);
  });
});

describe("any text", () => {
  const scrap = fc.constantFrom(
    "METAR",
    "SPECI",
    "TAF",
    "LFPG",
    "121130Z",
    "991199Z",
    "17/16",
    "M05/",
    "10///",
    "/////",
    "Q1018",
    "Q",
    "1016",
    "A2992",
    "A",
    "Q////",
    "Q1002/Q1001",
    "RMK",
    "SLP125",
    "T01280083",
    "QFE",
    "QFE729/0972",
    "TEMPO",
    "NIL",
    "COR",
    "=",
    "$",
    "\n",
    "\u0000",
    "ß",
    "//////",
    "-00/-00",
  );
  const anything = fc.oneof(
    fc.string({ unit: "binary", maxLength: 400 }),
    fc
      .array(fc.oneof(scrap, fc.string({ maxLength: 12 })), { maxLength: 60 })
      .map((words) => words.join(" ")),
    fc.array(scrap, { maxLength: 60 }).map((words) => words.join("")),
  );
  test("a report or a refusal with a sentence, never a throw, NaN or -0", () => {
    let accepted = 0;
    fc.assert(
      fc.property(anything, (garbage) => {
        const report = readWeatherReport(garbage);
        if (!report.ok) {
          expect(report.detail.length).toBeGreaterThan(20);
          return;
        }
        accepted++;
        const { temperature, dewPoint, altimeter, stationPressure, seaLevelPressure } = report.value;
        for (const x of [temperature, dewPoint, altimeter, stationPressure, seaLevelPressure]) {
          expect(x === null || x > 100).toBe(true);
        }
        expect(temperature ?? altimeter ?? stationPressure).not.toBeNull();
      }),
      { seed: 30, numRuns: 3000 },
    );
    expect(accepted).toBeGreaterThan(150);
  });
  test("long repetitions that slow patterns choke on", () => {
    for (const piece of [
      "/",
      "M",
      "0",
      "Q",
      "1/",
      "17/16 ",
      "=",
      "Q1018/",
      "METAR LFPG 121130Z ",
      "T0",
      " ",
    ]) {
      const report = readWeatherReport(piece.repeat(Math.floor(100_000 / piece.length)));
      expect(typeof report.ok).toBe("boolean");
    }
  });
});
