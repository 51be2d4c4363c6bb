/** Orders two lists of numbers by the first place where they differ; a list that ends first comes first. */
export function compareNumbers(a: ArrayLike<number>, b: ArrayLike<number>): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    if (a[i] !== b[i]) return a[i]! < b[i]! ? -1 : 1;
  }
  return a.length - b.length;
}
