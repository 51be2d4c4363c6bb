/**
 * Discharge coefficient of a short round tube against Reynolds number. Lichtarowicz, Duggins and Markland, J. Mech.
 * Eng. Sci. 7(2), 1965 [formula from memory].
 * @param slenderness length over diameter, 1 to 10
 */
export function shortTube(reynolds: number, slenderness: number): number {
  const re = Math.max(30, reynolds);
  const ultimate = 0.827 - 0.0085 * slenderness;
  const settling = Math.log10(0.00015 * re);
  const inverse =
    1 / ultimate +
    (20 / re) * (1 + 2.25 * slenderness) -
    (0.005 * slenderness) / (1 + 7.5 * settling * settling);
  return 1 / inverse;
}

/** The ring between needle and needle jet: a sharp land with a thin layer that slows. Estimate. */
export const ringCoefficient = (reynolds: number): number =>
  0.7 / (1 + 1.2 / Math.sqrt(Math.max(20, reynolds)));

/**
 * The slide's opening: a slit under a sharp edge at first, near a nozzle when fully open; the wall's layer takes its
 * share at small flow. Slit 0.61 (free streamline theory), open throat 0.8 to 0.9 (textbook problems) [from memory].
 */
export function slideCoefficient(lift: number, reynolds: number): number {
  const open = 0.63 + 0.24 * (1 - Math.exp(-3 * lift));
  return open * (1 - 3 / Math.sqrt(Math.max(100, reynolds)));
}
