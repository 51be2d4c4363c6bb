import {
  fromHectopascal,
  type Outcome,
  pressureAltitude,
  readWeatherReport,
  refuse,
  toCelsius,
} from "@jetwright/core";
import type { BodyOf } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

/** Heights in metres and temperatures in °C that the shop rides in. */
export interface RangeGiven {
  readonly lowestM: number;
  readonly highestM: number;
  readonly coldestC: number;
  readonly hottestC: number;
}

/** Rounded outward to whole hundreds of metres. */
const HEIGHT_GRAIN = 100;
/** °C beyond the coldest and hottest noted, then outward to whole fives: the log never saw the worst day. */
const TEMPERATURE_MARGIN = 3;
const TEMPERATURE_GRAIN = 5;

/** Where this shop rides, from the airs it noted and the places of its bikes, with a little to spare. */
export function ridingRange({ shop, entries }: EngineState, _given: null): Outcome<RangeGiven> {
  const struck = new Set(shop.struck.map(({ entry }) => entry.id));
  const heights: number[] = [];
  const celsius: number[] = [];
  for (const entry of entries) {
    if (entry.reading !== "used" || entry.kind !== "air-measured" || struck.has(entry.id)) continue;
    const height = heightOf(entry.body);
    const degrees = celsiusOf(entry.body);
    if (height !== null) heights.push(height);
    if (degrees !== null) celsius.push(degrees);
  }
  for (const { description, awayAt } of shop.bikes.values()) {
    const height = description?.place?.heightM;
    if (height !== undefined && awayAt === null) heights.push(height);
  }
  if (heights.length === 0 || celsius.length === 0) {
    return refuse("nothing-noted", "No air is noted yet: type the heights and temperatures you ride in.");
  }
  const down = (x: number, grain: number): number => Math.floor(x / grain) * grain;
  const up = (x: number, grain: number): number => Math.ceil(x / grain) * grain;
  return {
    ok: true,
    value: {
      lowestM: down(Math.min(...heights), HEIGHT_GRAIN),
      highestM: up(Math.max(...heights), HEIGHT_GRAIN),
      coldestC: down(Math.min(...celsius) - TEMPERATURE_MARGIN, TEMPERATURE_GRAIN),
      hottestC: up(Math.max(...celsius) + TEMPERATURE_MARGIN, TEMPERATURE_GRAIN),
    },
  };
}

type Body = BodyOf<"air-measured">;

const heightOf = ({ heightM, stationPressureHpa }: Body): number | null =>
  heightM ??
  (stationPressureHpa === undefined ? null : pressureAltitude(fromHectopascal(stationPressureHpa)));

function celsiusOf({ temperatureC, report }: Body): number | null {
  if (temperatureC !== undefined) return temperatureC;
  const read = report === undefined ? null : readWeatherReport(report);
  return read?.ok && read.value.temperature !== null ? toCelsius(read.value.temperature) : null;
}
