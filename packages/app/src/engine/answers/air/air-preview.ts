import {
  type AirState,
  accept,
  type CoreWords,
  compare,
  densityAltitude,
  type Outcome,
  openingName,
  refuse,
  relativeHumidity,
  SPOKEN_OPENINGS,
  STANDARD_AIR,
  toCelsius,
  toHectopascal,
  warningText,
} from "@jetwright/core";
import { airOf, type BodyOf, readLogText } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { type RightAir, ranRight } from "./ran-right.ts";
import { type ReportRead, reportRead } from "./report-read.ts";

export type AirBody = BodyOf<"air-measured">;

export interface AirFigures {
  readonly celsius: number;
  readonly hectopascal: number;
  readonly humidityPercent: number;
  /** Dry air in it against standard air at sea level: 100 is as dense. */
  readonly percentOfStandard: number;
  /** One standard deviation of that, per cent. */
  readonly doubtPercent: number;
  /** The height in standard air that is as thin, metres. */
  readonly likeHeightM: number;
  /** Mild: nothing is wrong, something was taken as usual. */
  readonly warnings: readonly { readonly code: string; readonly text: string; readonly mild: boolean }[];
}

export interface AirEffect {
  /** The air it is compared with. */
  readonly from: RightAir;
  /** With nothing changed, per cent richer; below zero leaner. */
  readonly at: readonly { readonly opening: string; readonly percent: number }[];
}

export interface AirPreview {
  readonly air: Outcome<AirFigures>;
  /** What it does to the fitted setup, or why that cannot be said; null while there is no air. */
  readonly effect: Outcome<AirEffect> | null;
  /** What was read of the report; null where there is none or it cannot be read. */
  readonly report: ReportRead | null;
  /** The other kind of pressure, where the figure only makes sense as that. */
  readonly mend: "sea level" | "station" | null;
}

/** Warnings a rider can do nothing about: they move the density by hundredths of a per cent. */
const QUIET: readonly string[] = ["outside-formula-range"];
/** Warnings that only say what was taken as usual, and at what cost. */
const MILD: readonly string[] = [
  "humidity-assumed",
  "dew-point-missing",
  "pressure-from-height",
  "reduction-uncertain",
  "report-age-unknown",
  "station-height-unknown",
  "station-height-differs",
];
/** Warnings that say the pressure may be of the other kind. */
const TRAPS: readonly string[] = [
  "sea-level-pressure-as-station",
  "station-pressure-high",
  "station-pressure-low",
  "unusual-sea-level-pressure",
];

/** What air a record would tell of, before it is kept, and what it does to the fitted setup. */
export function airPreview(
  { shop, words }: EngineState,
  { bike, body, at }: { readonly bike: string; readonly body: AirBody; readonly at: number },
): AirPreview {
  const place = shop.bikes.get(bike)?.description?.place?.heightM;
  const air = keepable(body) ?? airOf(body, at, place);
  return {
    air: air.ok ? accept(figuresOf(air.value, words)) : air,
    effect: air.ok ? effectOf(shop, bike, air.value) : null,
    report: body.report === undefined ? null : reportRead(body.report, at),
    mend: mendOf(body, at, place),
  };
}

/** Why a record with this body would not be used; null where it would. */
function keepable(body: AirBody): Outcome<never> | null {
  const line = { id: "preview", kind: "air-measured", v: 1, at: "2026-01-01T00:00:00Z", body };
  const { entries, problems } = readLogText(JSON.stringify(line));
  if (entries[0]?.reading === "used") return null;
  const said = problems.map(({ path, what, mend }) => `${path.replace(/^body\.?/, "")} ${what}. ${mend}`);
  return refuse("not-usable", said.join(" ").trim());
}

function effectOf(shop: EngineState["shop"], bike: string, air: AirState): Outcome<AirEffect> {
  const base = ranRight(shop, bike);
  if (!base.ok) return base;
  const { situation } = base.value;
  const result = compare(situation, { ...situation, air });
  if (!result.ok) return result;
  return accept({
    from: base.value.air,
    at: result.value.at
      .filter(({ opening }) => SPOKEN_OPENINGS.includes(opening))
      .map(({ opening, ratio }) => ({ opening: openingName(opening), percent: 100 * (ratio - 1) })),
  });
}

/** The other kind where the pressure typed is refused or doubted as it is, and neither as the other. */
function mendOf(body: AirBody, at: number, place: number | undefined): AirPreview["mend"] {
  const { stationPressureHpa, seaLevelPressureHpa, ...rest } = body;
  const pressure = stationPressureHpa ?? seaLevelPressureHpa;
  if (pressure === undefined || body.report !== undefined) return null;
  const asStation = stationPressureHpa !== undefined;
  const other = asStation
    ? { ...rest, seaLevelPressureHpa: pressure }
    : { ...rest, stationPressureHpa: pressure };
  const doubted = (one: AirBody): boolean => {
    const air = airOf(one, at, place);
    return !air.ok || air.value.warnings.some(({ code }) => TRAPS.includes(code));
  };
  if (!doubted(body) || doubted(other)) return null;
  return asStation ? "sea level" : "station";
}

const figuresOf = (air: AirState, words: CoreWords): AirFigures => ({
  celsius: toCelsius(air.temperature),
  hectopascal: toHectopascal(air.pressure),
  humidityPercent: 100 * relativeHumidity(air),
  percentOfStandard: (100 * air.dryDensity) / STANDARD_AIR.dryDensity,
  doubtPercent: 100 * air.relativeSd,
  likeHeightM: densityAltitude(air.density),
  warnings: air.warnings
    .filter(({ code }) => !QUIET.includes(code))
    .map((warning) => ({
      code: warning.code,
      text: warningText(warning, words),
      mild: MILD.includes(warning.code),
    })),
});
