import { expect, test } from "vitest";
import { readAir, type TypedAir } from "./air-body.ts";

const METRIC = { temperature: "C", height: "m", pressure: "hPa" } as const;
const US = { temperature: "F", height: "ft", pressure: "inHg" } as const;
const NOTHING: TypedAir = {
  way: "hand",
  temperature: "",
  height: "",
  pressureKind: "station",
  pressure: "",
  humidityKind: "none",
  humidity: "",
  report: "",
  stationHeight: "",
};
const bodyOf = (typed: Partial<TypedAir>, units: Parameters<typeof readAir>[1] = METRIC) =>
  readAir({ ...NOTHING, ...typed }, units).body;

test("by hand: temperature and pressure, the rest where it is typed", () => {
  expect(bodyOf({})).toBeNull();
  expect(bodyOf({ temperature: "12" })).toBeNull();
  expect(bodyOf({ pressure: "965" })).toBeNull();
  expect(bodyOf({ temperature: "12", pressure: "965" })).toEqual({
    temperatureC: 12,
    stationPressureHpa: 965,
  });
  expect(
    bodyOf({
      temperature: "12,5",
      height: "420",
      pressureKind: "seaLevel",
      pressure: "1017",
      humidityKind: "percent",
      humidity: "60 %",
    }),
  ).toEqual({ temperatureC: 12.5, heightM: 420, seaLevelPressureHpa: 1017, humidityPercent: 60 });
  expect(bodyOf({ temperature: "12", pressure: "965", humidityKind: "dewPoint", humidity: "41F" })).toEqual({
    temperatureC: 12,
    stationPressureHpa: 965,
    dewPointC: expect.closeTo(5, 9),
  });
});

test("without a pressure the height must be there", () => {
  expect(bodyOf({ temperature: "12", pressureKind: "none", pressure: "965" })).toBeNull();
  expect(bodyOf({ temperature: "12", pressureKind: "none", pressure: "965", height: "420" })).toEqual({
    temperatureC: 12,
    heightM: 420,
  });
});

test("each field takes the other unit too", () => {
  expect(bodyOf({ temperature: "59", pressure: "29.92", height: "1000" }, US)).toEqual({
    temperatureC: expect.closeTo(15, 9),
    stationPressureHpa: expect.closeTo(1013.2, 1),
    heightM: expect.closeTo(304.8, 9),
  });
  expect(bodyOf({ temperature: "15C", pressure: "1013 hPa", height: "300 m" }, US)).toEqual({
    temperatureC: 15,
    stationPressureHpa: 1013,
    heightM: 300,
  });
});

test("a report is kept as typed", () => {
  const report = "  metar xskp 160720z 28006kt 9999 09/02 q1019\n";
  expect(bodyOf({ way: "report", report, height: "1900", stationHeight: "1120", pressure: "965" })).toEqual({
    report,
    heightM: 1900,
    stationHeightM: 1120,
  });
  expect(bodyOf({ way: "report", report: " \n" })).toBeNull();
});

test("by height alone both figures are needed", () => {
  expect(bodyOf({ way: "height", height: "420" })).toBeNull();
  expect(bodyOf({ way: "height", height: "420", temperature: "-3" })).toEqual({
    heightM: 420,
    temperatureC: -3,
  });
});

test("what cannot be read is named and stops the record; fields of another way do not", () => {
  const read = readAir(
    { ...NOTHING, temperature: "warm", height: "x", pressure: "965", stationHeight: "y" },
    METRIC,
  );
  expect([...read.wrong]).toEqual(["temperature", "height"]);
  expect(read.body).toBeNull();
  expect([
    ...readAir({ ...NOTHING, humidity: "damp", pressure: "?", pressureKind: "none" }, METRIC).wrong,
  ]).toEqual([]);
});
