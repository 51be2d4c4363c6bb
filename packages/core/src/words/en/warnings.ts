import type { Refusal } from "../../units/outcome.ts";
import { withPoint } from "../figures.ts";

/** A unit a bare pressure may be in. */
type PressureUnitRead = "hPa" | "kPa" | "Pa" | "mmHg" | "inHg" | "hundredths of inHg";

/** What came out as saturated or as dry air, and was clamped to it. */
type Clamped =
  | { readonly of: "relative"; readonly percent: number }
  | {
      readonly of: "dew-point" | "wet-bulb" | "carried dew-point" | "dry wet-bulb";
      readonly celsius: number;
      /** The air temperature; for a wet bulb that is too low, the lowest it can read. */
      readonly limitCelsius: number;
    };

const place = (heightM: number | null): string =>
  heightM === null ? "at sea level" : `at ${withPoint(heightM)} m`;
const fuel = (ratio: number | null): string =>
  ratio === null ? "pump petrol" : `pump petrol with oil ${ratio}:1`;

/** A part that may be unknown on both sides of a comparison. */
type ComparedPart = "main" | "pilot" | "needle" | "clip" | "needleJet" | "cutaway" | "screw" | "fuelLift";
const COMPARED: Readonly<Record<ComparedPart, string>> = {
  main: "main jet",
  pilot: "pilot jet",
  needle: "needle",
  clip: "clip groove",
  needleJet: "needle jet",
  cutaway: "cutaway",
  screw: "screw setting",
  fuelLift: "float level",
};

/** What was assumed about air, fuel, parts and rides, or should be looked at twice; with what to do. */
export const warnings = {
  // Air: the readings.
  "read-as-fahrenheit": ({ typed, celsius }: { typed: number; celsius: number }): string =>
    `${typed} cannot be an air temperature in °C, so it was read as °F: ${celsius} °C.`,
  "unusual-temperature": ({ celsius }: { celsius: number }): string =>
    `${celsius} °C is rarely met: check the reading, the shade and the unit.`,
  "pressure-unit-guessed": ({
    typed,
    unit,
    hPa,
  }: {
    typed: number;
    unit: PressureUnitRead;
    hPa: number;
  }): string => `No unit with the pressure ${typed}: read as ${unit}, ${hPa} hPa.`,
  "pressure-from-height": ({ m }: { m: number }): string =>
    `No pressure given: the usual one for ${m} m was taken and the band widened by 1 % or more.`,
  "unusual-sea-level-pressure": "A sea-level pressure below 950 or above 1050 hPa is rare: check the figure.",
  "reduction-uncertain": ({ m, percent }: { m: number; percent: number }): string =>
    `At ${m} m and this temperature an altimeter setting and a forecast's sea-level pressure differ by ${percent} %: a barometer on the spot is surer.`,
  "sea-level-pressure-as-station": ({
    hPa,
    m,
    percent,
  }: {
    hPa: number;
    m: number;
    percent: number;
  }): string =>
    `${hPa} hPa at ${m} m is surely a sea-level pressure: the air would come out ${percent} % too dense. It was read as one; give it as sea-level pressure, or check the height.`,
  "station-pressure-high": ({
    hPa,
    m,
    percent,
  }: {
    hPa: number;
    m: number;
    percent: number | null;
  }): string =>
    `${hPa} hPa is high for ${m} m. Check that it is not a sea-level pressure${percent === null ? "" : `: if so the air comes out ${percent} % too dense`}.`,
  "station-pressure-low": ({ hPa, m }: { hPa: number; m: number }): string =>
    `${hPa} hPa is low for ${m} m: check the barometer and the height.`,
  "station-pressure-unchecked": ({ hPa, percent }: { hPa: number; percent: number }): string =>
    `Without a height it cannot be seen whether ${hPa} hPa is read on the spot or is a sea-level pressure; at 1000 m that mistake makes the air ${percent} % too dense. Give the height.`,
  "humidity-assumed":
    "No humidity given: 50 % was assumed and the band widened. It matters on hot days; a dew point or a relative humidity narrows it.",
  "humidity-fraction": ({ typed, percent }: { typed: number; percent: number }): string =>
    `A relative humidity of ${typed} was read as a fraction: ${percent} %.`,
  "unusual-humidity": ({ percent }: { percent: number }): string =>
    `A relative humidity of ${percent} % is hardly ever met outdoors: check that the sensor works.`,
  "humidity-clamped": (given: Clamped): string => {
    if (given.of === "relative")
      return `A relative humidity of ${given.percent} % was taken as saturated air, 100 %.`;
    const { of, celsius, limitCelsius } = given;
    switch (of) {
      case "dry wet-bulb":
        return `A wet bulb of ${celsius} °C is a little below what dry air gives (${limitCelsius} °C): the air was taken as dry.`;
      case "carried dew-point":
        return `The dew point brought to the riding place, ${celsius} °C, lies above its temperature, ${limitCelsius} °C: the air was taken as saturated.`;
      default:
        return `The ${of === "dew-point" ? "dew point" : "wet bulb"} ${celsius} °C lies a little above the temperature ${limitCelsius} °C, as rounding can do: the air was taken as saturated.`;
    }
  },
  "wet-bulb-freezing":
    "Below freezing a wet bulb reads differently with ice on the wick; the effect on the jets is too small to see.",
  "outside-formula-range": ({ celsius, hPa }: { celsius: number; hPa: number }): string =>
    `${celsius} °C and ${hPa} hPa lie outside the range the density formula was proved in (15 to 27 °C, 600 to 1100 hPa); it should still hold within 0.1 %, far less than one jet size.`,

  // Air: a weather report.
  "tenths-disagree": ({ remarks, report }: { remarks: number; report: number }): string =>
    `The remarks give ${remarks} °C, the report ${report} °C: the report's was used. Check it.`,
  "altimeters-disagree": ({ q, a }: { q: number; a: number }): string =>
    `The Q group (${q} hPa) and the A group (${a} hPa) do not agree; Q was used: check the report.`,
  "temperature-missing": "The report gives no temperature: measure it on the spot.",
  "dew-point-missing":
    "The report gives no dew point: the temperature is kept; without a humidity 50 % is assumed.",
  "pressure-missing": ({ seaLevelRemark }: { seaLevelRemark: boolean }): string =>
    seaLevelRemark
      ? "The report's only pressure is the sea-level remark (SLP), which is no altimeter setting and was not used."
      : "The report gives no pressure: a barometer on the spot or the height alone must do.",
  /** The stations are null where one is not named; given only where they differ. */
  "several-reports": ({
    count,
    used,
    stations,
  }: {
    count: number;
    used: string;
    stations: readonly (string | null)[];
  }): string =>
    `${count} reports were pasted together; the newest by day and time was used: ${used}.${stations.length > 1 ? ` They come from ${stations.map((one) => one ?? "an unnamed station").join(", ")}.` : ""}`,
  "nil-passed-over": "One of the reports says NIL and was passed over.",
  "forecast-passed-over": "The forecast (TAF) in the text was passed over.",
  "report-time-impossible": ({ time }: { time: string }): string =>
    `The time ${time} of the report cannot be: check its age.`,
  "pressure-group-twice": ({ letter }: { letter: "Q" | "A" }): string =>
    `The report has more than one ${letter} group; the first was used.`,
  "pressure-group-impossible": ({ group }: { group: string }): string =>
    `The pressure group ${group} cannot be right and was left out.`,
  "pressure-group-unit": ({ group, inches, hPa }: { group: string; inches: boolean; hPa: number }): string =>
    `The pressure group ${group} was read as ${inches ? "hundredths of an inch of mercury" : "hPa"}: ${hPa} hPa.`,
  "station-pressure-impossible": ({ group }: { group: string }): string =>
    `The station pressure ${group} cannot be right and was left out.`,
  "station-pressures-disagree": ({ group, hPa }: { group: string; hPa: number }): string =>
    `The two figures of ${group} do not agree; ${hPa} hPa was used: check the report.`,
  /** The height of the station; null where none on land fits both. */
  "station-pressure-mismatch": ({
    qfe,
    setting,
    m,
  }: {
    qfe: number;
    setting: number;
    m: number | null;
  }): string =>
    m === null
      ? `QFE ${qfe} hPa and the altimeter setting ${setting} hPa belong to no station on land; QFE was not used: check the report.`
      : `QFE says ${qfe} hPa, the altimeter setting ${setting} hPa at ${m} m; QFE was used: check the station's height.`,
  "report-age-unknown": "The age of the report is not known: two hours were assumed.",
  "report-old": ({ hours }: { hours: number }): string =>
    `The report is ${hours.toFixed(1)} hours old and the air has changed since: take a newer one, or read a thermometer on the spot.`,
  "station-height-unknown":
    "The height of the station is not known: it was taken near the riding place's and the band widened. Give it.",
  /** The temperature as carried to the riding place; null where one was read there. */
  "station-height-differs": ({
    m,
    below,
    celsius,
  }: {
    m: number;
    below: boolean;
    celsius: number | null;
  }): string => {
    const where = `The station lies ${m} m ${below ? "below" : "above"} the riding place`;
    return celsius === null
      ? `${where}: its pressure was carried there.`
      : `${where}: its pressure and temperature were carried there (${celsius} °C). A thermometer on the spot is surer.`;
  },

  // Air as noted in the records.
  "air-assumed": ({ placeM }: { placeM: number | null }): string =>
    `No air is noted: standard air ${place(placeM)} was taken, with a wide band. Add an air-measured record with temperature and height or pressure.`,
  "air-unusable": ({ why, placeM }: { why: Refusal; placeM: number | null }): string =>
    `${why.detail} Until then standard air ${place(placeM)} is taken.`,
  "temperature-assumed": "No temperature is noted with the air: the standard one was taken.",
  "height-assumed": "No height is noted with the air: sea level was taken, with a wide band.",
  "air-old":
    "The air was noted more than half a day from the ride: it was used with a wider band. Note the air on the day.",

  // Fuel.
  /** Parts of fuel to one of oil; null for a four-stroke. */
  "fuel-assumed": ({ ratio }: { ratio: number | null }): string =>
    `No fuel is noted: ${fuel(ratio)} was taken. Add a fuel-used record.`,
  "fuel-unusable": ({ why, ratio }: { why: Refusal; ratio: number | null }): string =>
    `${why.detail} Until then ${fuel(ratio)} is taken.`,
  "oil-assumed": ({ ratio }: { ratio: number }): string =>
    `The oil in the fuel is not told: ${ratio}:1 was taken.`,
  "fuel-density": ({ kgPerM3 }: { kgPerM3: number }): string =>
    `${kgPerM3} kg/m³ at 15 °C is outside the table for petrol (653 to 770): its density when warm or cold is a guess.`,
  "petrol-density":
    "Pump petrol in Europe weighs 720 to 775 kg/m³ at 15 °C: is this petrol, and was it weighed cold?",
  "little-oil":
    "Less oil than 100:1 is below what two-stroke oils are sold for: check the ratio before riding.",
  "much-oil": "More oil than 15:1 is rare: check the ratio.",

  // What is fitted.
  "engine-assumed":
    'The engine is not told: a two-stroke was taken. Add "bike": {"engine": {"strokes": 4}} if it is not.',
  "bore-assumed": ({ mm }: { mm: number }): string =>
    `The carburetor's bore is not told: ${mm} mm was taken as usual for such an engine. Measure it at the engine side.`,
  "nothing-fitted":
    "No part is noted as fitted: look what is in it and add a setup-fitted record with asFound true.",
  "numbering-assumed":
    'What the jet numbers mean is not told: they were taken as bores in 1/100 mm. Add "jetNumbering" to the carburetor ("bore" or "flow").',
  "clip-beyond-grooves": ({
    groove,
    marks,
    grooves,
  }: {
    groove: number;
    marks: string;
    grooves: number;
  }): string =>
    `The clip is said to be in groove ${groove}, but the needle "${marks}" has ${grooves}. Count from the blunt end.`,
  "screw-side-unknown":
    'It is not told on which side the screw sits, so its turns cannot be used. Add "screw" to the carburetor: "air" (filter side) or "fuel" (engine side).',
  "needle-grooves-assumed": ({
    marks,
    grooves,
    pitchMm,
  }: {
    marks: string;
    grooves: number;
    pitchMm: number;
  }): string =>
    `Grooves of the needle "${marks}" are not all told: ${grooves} grooves, ${pitchMm} mm apart, were taken where missing. Count and measure them.`,

  // A starting point.
  "displacement-unknown": "The displacement is not known, so the main jet goes by the bore alone.",
  "bore-unknown": ({ usualMm, cc }: { usualMm: number; cc: number }): string =>
    `The bore is not known; ${usualMm} mm stands in as usual for ${cc} cm³. Measure it first: every mm is worth two main jet sizes.`,
  "bore-unusual": ({
    mm,
    small,
    cc,
    usualMm,
  }: {
    mm: number;
    small: boolean;
    cc: number;
    usualMm: number;
  }): string =>
    `A ${mm} mm bore is ${small ? "small" : "large"} for ${cc} cm³; about ${usualMm} mm is usual. Check that it was measured, not guessed.`,
  "no-jet-answers": ({ part }: { part: "main" | "pilot" }): string =>
    `No ${part} jet answers for this air and fuel; check both.`,
  "shop-makers": ({ makers }: { makers: readonly string[] }): string =>
    `The shop's numbers are on jets by ${makers.join(", ")}; another maker's equal number can differ by 5 %.`,

  // A needle as measured.
  "needle-measurement-unusable": ({ why }: { why: Refusal }): string => why.detail,
  "needle-reading-left-out": ({
    mm,
    atMm,
    expectedMm,
    atEnd,
  }: {
    mm: number;
    atMm: number;
    expectedMm: number;
    atEnd: boolean;
  }): string =>
    `${mm.toFixed(3)} mm at ${atMm.toFixed(1)} mm was left out: the other readings say ${expectedMm.toFixed(3)} mm there. Measure it again${atEnd ? ", and twice more beside it: another taper may begin there" : ""}.`,
  "needle-scatter":
    "The readings scatter more than the micrometer should: the needle may be bent or worn. Turn it a quarter and measure again.",
  "needle-no-taper": ({ toMm }: { toMm: number }): string =>
    `No taper was found down to ${toMm.toFixed(1)} mm below the top groove. Measure on towards the tip.`,
  "needle-taper-start": ({
    taper,
    startMm,
    withinMm,
  }: {
    taper: number;
    startMm: number;
    withinMm: number;
  }): string =>
    `Where taper ${taper} starts (${startMm.toFixed(1)} mm) is only known within ${withinMm.toFixed(1)} mm. Measure two more on either side of it.`,
  "needle-taper-thin": ({ taper, startMm }: { taper: number; startMm: number }): string =>
    `Taper ${taper} (from ${startMm.toFixed(1)} mm) rests on three readings, so it may be further off than stated. Measure every 2 mm along it.`,

  // Two setups compared.
  "stand-in parts": ({ parts }: { parts: readonly ComparedPart[] }): string =>
    `Not known: ${parts.map((part) => COMPARED[part]).join(", ")}. A usual one stands in on both sides, so the band is wider.`,
  "needle not measured":
    "Nobody has measured this needle: what a clip move does is a guess from usual needles. Measure its diameters to firm it up.",
  "seat not measured":
    "The distance from the clip's seat to the needle jet is not known: where the taper takes over is a guess.",
  "maker not known":
    "One of the jets has no maker written down; two makers' equal numbers can differ by 5 %, so the band is wider.",
  "bled nozzle":
    "Air bled into the well takes an unknown part of the signal, so main jet and needle figures have a wider band.",
  "air jets": "The air jets differ. A bigger one is leaner; how much is not computed.",
  "same marks":
    "Both needles carry the same marks and yet differ in size: one may be worn, or measured badly.",
  "main system starting": ({ openings }: { openings: readonly string[] }): string =>
    `At ${openings.join(", ")} the depression hardly lifts the fuel to the nozzle: figures there are rough.`,
  "no-main-big-enough": ({ wanted, place }: { wanted: number; place: string }): string =>
    `No main jet of the list is as big as ${wanted.toFixed(1)}: at ${place} the biggest of them would run lean. Get a bigger one before the ride.`,

  // Rides compared.
  "nothing-to-compare":
    "The ride is compared with the setup before, but no earlier setup is in the log: that part is left out.",
  "unknown-comparison": ({ record }: { record: string }): string =>
    `The ride is compared with record "${record}", which is no setup, ride or test of this bike: that part is left out.`,
};
