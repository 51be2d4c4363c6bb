import type { ValueWords } from "../en/values.ts";

/** How a part as fitted is said without its name, in German. */
export const values: ValueWords = {
  clip: (groove, of, shim) =>
    `Kerbe ${groove}${of === null ? "" : ` von ${of}`}, von oben${shim ? " + Scheibe für eine halbe Stufe" : ""}`,
  needle: (marks, grooves, straightMm, tapers) =>
    `${marks === "" ? "ohne Kennung" : marks} (${grooves} Kerben, ${
      straightMm === null
        ? "nicht vermessen"
        : `gerade ${straightMm} mm, ${tapers === 0 ? "kein Kegel" : tapers === 1 ? "1 Kegel" : `${tapers} Kegel`}`
    })`,
  cutaway: (mm) => `Ausschnitt ${mm} mm`,
  level: (mm) => `${mm} mm unter der Oberkante der Nadeldüse`,
};
