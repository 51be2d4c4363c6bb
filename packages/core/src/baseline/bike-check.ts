import { toCubicCentimetre, toMillimetre } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { CubicMetre, Metre } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import type { BikeToStart } from "./bike.ts";
import { believableBores, believableDisplacement, usualBore, usualDisplacement } from "./usual-bore.ts";

export type BikeRefusal = "nothing to go by" | "displacement" | "bore" | "bore does not fit";

/** A bike with both sizes: its own where known, the usual one for the other where not. */
export interface SizedBike extends BikeToStart {
  readonly displacement: CubicMetre;
  readonly bore: Metre;
  /** One standard deviation of the log of the bore: 0 where it is known. */
  readonly boreSd: number;
  readonly warnings: readonly Warning[];
}

/** Bores on engines of one size and use differ by this much, as a log. Estimate. */
const USUAL_BORE_SD = 0.12;

/** Outside these, as a part of the usual one, a believable bore is still asked about. */
const COMMON = [0.72, 1.35] as const;

const inMillimetres = (x: Metre): number => Math.round(toMillimetre(x) * 10) / 10;
const inCentimetres = (x: CubicMetre): number => Math.round(toCubicCentimetre(x));
const millimetres = (x: Metre): string => `${inMillimetres(x)} mm`;
const centimetres = (x: CubicMetre): string => `${inCentimetres(x)} cm³`;

/** Fills in a size that nobody knows, and refuses sizes that cannot be or do not go together. */
export function sizedBike(bike: BikeToStart): Outcome<SizedBike, BikeRefusal> {
  const { displacement, bore, use } = bike;
  if (displacement !== null && !believableDisplacement(displacement)) {
    return refuse(
      "displacement",
      `${centimetres(displacement)} is outside 20 to 1000 cm³ for one carburetor. Check the unit; give what one carburetor feeds.`,
      { cc: inCentimetres(displacement) },
    );
  }
  if (bore !== null && !(bore >= 0.008 && bore <= 0.06)) {
    return refuse("bore", `The bore must be 8 to 60 mm, got ${millimetres(bore)}. Check the unit.`, {
      mm: inMillimetres(bore),
    });
  }
  if (displacement === null && bore === null) {
    return refuse(
      "nothing to go by",
      "Neither displacement nor carburetor bore is known. Measure the bore at the engine side with a caliper; it is often cast on the body too.",
    );
  }
  if (displacement === null) {
    return accept({
      ...bike,
      bore: bore!,
      displacement: usualDisplacement(bore!, use),
      boreSd: 0,
      warnings: [{ code: "displacement-unknown" }],
    });
  }
  const usual = usualBore(displacement, use);
  if (bore === null) {
    return accept({
      ...bike,
      displacement,
      bore: usual,
      boreSd: USUAL_BORE_SD,
      warnings: [
        { code: "bore-unknown", given: { usualMm: inMillimetres(usual), cc: inCentimetres(displacement) } },
      ],
    });
  }
  const [least, most] = believableBores(displacement);
  if (bore < least || bore > most) {
    return refuse(
      "bore does not fit",
      `A ${millimetres(bore)} bore looks wrong for ${centimetres(displacement)}: about ${millimetres(usual)} is usual, ${millimetres(least)} to ${millimetres(most)} believable. Measure the bore at the engine side, or check the displacement.`,
      {
        cc: inCentimetres(displacement),
        usual: inMillimetres(usual),
        least: inMillimetres(least),
        most: inMillimetres(most),
      },
    );
  }
  const ratio = bore / usual;
  const common = ratio >= COMMON[0] && ratio <= COMMON[1];
  return accept({
    ...bike,
    displacement,
    bore,
    boreSd: 0,
    warnings: common
      ? []
      : [
          {
            code: "bore-unusual",
            given: {
              mm: inMillimetres(bore),
              small: ratio < 1,
              cc: inCentimetres(displacement),
              usualMm: inMillimetres(usual),
            },
          },
        ],
  });
}
