import { fromFoot, fromMillimetreOfMercury, toHectopascal } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Metre, Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { hectopascalSaid, metresSaid, percentSaid, sayHectopascal, sayMetre } from "./figures.ts";
import { altimeterSetting, stationPressure } from "./pressure-reduction.ts";
import { pressureAltitude } from "./standard-atmosphere.ts";

/** Altimeter settings, Pa: beyond the outer pair no weather goes, beyond the inner pair it seldom does. */
const IMPOSSIBLE_LOW = 92_000;
const UNUSUAL_LOW = 95_000;
const UNUSUAL_HIGH = 104_000;
const IMPOSSIBLE_HIGH = 106_000;
/** What a weather report or forecast gives as sea-level pressure on nearly every day, Pa. */
const LOOKS_REDUCED = [95_000, 105_000] as const;
/** Pa. A barometer that reads this or more with no height given may be a sea-level pressure. */
const REDUCED_WITHOUT_HEIGHT = 98_000;

export interface PlacedPressure {
  /** Station pressure. */
  readonly pressure: Pascal;
  /** True when the figure typed as station pressure was read as sea-level pressure instead. */
  readonly takenAsSeaLevel: boolean;
  readonly warnings: readonly Warning[];
}

/** By how much the air comes out too dense when a sea-level pressure is taken as what a barometer reads. */
const cost = (typed: Pascal, height: Metre): number => typed / stationPressure(typed, height) - 1;

/**
 * A pressure said to be read on the spot, held against the height of the spot. A figure no weather gives up
 * there, but every forecast gives for sea level, is read as sea-level pressure and said so; a doubtful one is
 * kept with a warning; one that fits neither is refused.
 */
export function placeStationPressure(
  pressure: Pascal,
  height: Metre | null,
): Outcome<PlacedPressure, "pressure-height-mismatch"> {
  if (height === null) return accept({ pressure, takenAsSeaLevel: false, warnings: withoutHeight(pressure) });
  const setting = altimeterSetting(pressure, height);
  const looksReduced = pressure >= LOOKS_REDUCED[0] && pressure <= LOOKS_REDUCED[1];
  if (setting > IMPOSSIBLE_HIGH && looksReduced && height > 0) {
    return accept({
      pressure: stationPressure(pressure, height),
      takenAsSeaLevel: true,
      warnings: [
        {
          code: "sea-level-pressure-as-station",
          given: {
            hPa: hectopascalSaid(pressure),
            m: metresSaid(height),
            percent: percentSaid(cost(pressure, height)),
          },
        },
      ],
    });
  }
  if (setting > IMPOSSIBLE_HIGH || setting < IMPOSSIBLE_LOW) {
    return refuse("pressure-height-mismatch", mismatch(pressure, height), {
      hPa: hectopascalSaid(pressure),
      fitsMetres: fittingMetres(pressure),
      metres: metresSaid(height),
    });
  }
  const warnings: Warning[] = [];
  if (setting > UNUSUAL_HIGH) {
    const percent = height > 0 ? percentSaid(cost(pressure, height)) : null;
    warnings.push({
      code: "station-pressure-high",
      given: { hPa: hectopascalSaid(pressure), m: metresSaid(height), percent },
    });
  }
  if (setting < UNUSUAL_LOW) {
    warnings.push({
      code: "station-pressure-low",
      given: { hPa: hectopascalSaid(pressure), m: metresSaid(height) },
    });
  }
  return accept({ pressure, takenAsSeaLevel: false, warnings });
}

function withoutHeight(pressure: Pascal): readonly Warning[] {
  if (pressure < REDUCED_WITHOUT_HEIGHT) return [];
  return [
    {
      code: "station-pressure-unchecked",
      given: { hPa: hectopascalSaid(pressure), percent: percentSaid(cost(pressure, 1000 as Metre)) },
    },
  ];
}

/** The height at which the pressure is usual, m, to the next ten. */
const fittingMetres = (pressure: Pascal): number => Math.round(pressureAltitude(pressure) / 10) * 10;

function mismatch(pressure: Pascal, height: Metre): string {
  const fits = (p: Pascal, h: Metre): boolean => {
    const setting = altimeterSetting(p, h);
    return setting >= UNUSUAL_LOW && setting <= UNUSUAL_HIGH;
  };
  const start = `${sayHectopascal(pressure)} belongs to about ${fittingMetres(pressure)} m, not to ${sayMetre(height)}`;
  const feet = fromFoot(height);
  if (height > 0 && fits(pressure, feet)) {
    return `${start}; if the height is in feet (${sayMetre(feet)}) they fit: give its unit.`;
  }
  const mercury = fromMillimetreOfMercury(toHectopascal(pressure));
  if (fits(mercury, height)) {
    return `${start}; if the pressure is in mmHg (${sayHectopascal(mercury)}) they fit: give its unit.`;
  }
  return `${start}: check both.`;
}
