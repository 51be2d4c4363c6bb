/**
 * Where a continuous function crosses zero between two points, to the last digits; null when it has one sign at
 * both ends, or none at one.
 */
export function crossing(f: (x: number) => number, low: number, high: number): number | null {
  let [a, b] = [low, high];
  const atLow = f(a);
  if (atLow === 0) return a;
  const atHigh = f(b);
  if (atHigh === 0) return b;
  if (!(atLow * atHigh < 0)) return null;
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2;
    const value = f(middle);
    if (value === 0) return middle;
    if (value > 0 === atLow > 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
