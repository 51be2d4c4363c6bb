/**
 * Inverse of a symmetric positive definite matrix, row by row, by Cholesky's factor of the matrix scaled to a unit
 * diagonal. Null where it is not positive definite or so near to it that 12 digits are lost. Meant for up to 10 rows.
 */
export function invertSymmetric(matrix: readonly (readonly number[])[]): number[][] | null {
  const n = matrix.length;
  const scale = matrix.map((row, i) => 1 / Math.sqrt(row[i]!));
  const factor: number[][] = [];
  for (let i = 0; i < n; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]![j]! * scale[i]! * scale[j]!;
      const other = j === i ? row : factor[j]!;
      for (let k = 0; k < j; k++) sum -= row[k]! * other[k]!;
      if (j < i) row.push(sum / other[j]!);
      else if (sum > 1e-12) row.push(Math.sqrt(sum));
      else return null;
    }
    factor.push(row);
  }
  const inverse: number[][] = matrix.map(() => new Array<number>(n).fill(0));
  for (let column = 0; column < n; column++) {
    const x = new Array<number>(n).fill(0);
    for (let i = 0; i < n; i++) {
      let sum = i === column ? 1 : 0;
      for (let k = 0; k < i; k++) sum -= factor[i]![k]! * x[k]!;
      x[i] = sum / factor[i]![i]!;
    }
    for (let i = n - 1; i >= 0; i--) {
      let sum = x[i]!;
      for (let k = i + 1; k < n; k++) sum -= factor[k]![i]! * x[k]!;
      x[i] = sum / factor[i]![i]!;
    }
    for (let i = 0; i < n; i++) inverse[i]![column] = x[i]! * scale[i]! * scale[column]!;
  }
  return inverse;
}
