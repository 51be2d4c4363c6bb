/** Area under a flat edge lifted into a round bore, m²: strips added up, half the bore at most 200 of them. */
export function slideArea(bore: number, lift: number): number {
  const h = Math.min(bore, Math.max(0, lift));
  const radius = bore / 2;
  const strips = 40;
  // Strips in the angle, where the chord is smooth: y = r(1 − cos t), chord 2r sin t.
  const end = Math.acos(Math.max(-1, 1 - h / radius));
  const step = end / strips;
  let area = 0;
  for (let i = 0; i < strips; i++) {
    const t = (i + 0.5) * step;
    area += 2 * radius * Math.sin(t) * radius * Math.sin(t) * step;
  }
  return area;
}
