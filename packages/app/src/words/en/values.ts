import type { Told } from "../told.ts";

/** How a part as fitted is said without its name, where figures do not say it alone. The worker fills them. */
export const values = {
  clip: (groove: number, of: number | null, shim: boolean): string =>
    `${groove}${of === null ? "" : ` of ${of}`} from the top${shim ? " + half-step shim" : ""}`,
  needle: (marks: string, grooves: number, straightMm: string | null, tapers: number): string =>
    `${marks === "" ? "without marks" : marks} (${grooves} grooves, ${
      straightMm === null
        ? "not measured"
        : `${straightMm} mm straight, ${tapers === 0 ? "no taper" : tapers === 1 ? "1 taper" : `${tapers} tapers`}`
    })`,
  cutaway: (mm: string): string => `${mm} mm cutaway`,
  level: (mm: string): string => `${mm} mm below the needle jet's top`,
};

export type ValueWords = Told<typeof values>;
