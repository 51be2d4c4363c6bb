import type { ValueWords } from "../en/values.ts";

/** How a part as fitted is said without its name, in Spanish. */
export const values: ValueWords = {
  clip: (groove, of, shim) =>
    `muesca ${groove}${of === null ? "" : ` de ${of}`} desde arriba${shim ? " + arandela de medio paso" : ""}`,
  needle: (marks, grooves, straightMm, tapers) =>
    `${marks === "" ? "sin marca" : marks} (${grooves} muescas, ${
      straightMm === null
        ? "sin medir"
        : `recta de ${straightMm} mm, ${tapers === 0 ? "sin cono" : tapers === 1 ? "1 cono" : `${tapers} conos`}`
    })`,
  cutaway: (mm) => `rebaje ${mm} mm`,
  level: (mm) => `${mm} mm bajo el borde superior del pulverizador`,
};
