/** Small dense symmetric matrices, row by row in one array of n·n numbers. */

/**
 * Lower triangle L with L·Lᵀ = matrix.
 * @throws RangeError when the matrix is not positive definite, with the row and the pivot
 */
export function cholesky(matrix: Float64Array, n: number): Float64Array {
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= lower[i * n + k]! * lower[j * n + k]!;
      if (i === j) {
        if (!(sum > 0)) throw new RangeError(`Matrix is not positive definite: pivot ${sum} in row ${i}`);
        lower[i * n + i] = Math.sqrt(sum);
      } else {
        lower[i * n + j] = sum / lower[j * n + j]!;
      }
    }
  }
  return lower;
}

/** Solves L·Lᵀ·x = right for x, given the lower triangle L. */
export function solveWithCholesky(lower: Float64Array, n: number, right: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(right);
  for (let i = 0; i < n; i++) {
    let sum = x[i]!;
    for (let k = 0; k < i; k++) sum -= lower[i * n + k]! * x[k]!;
    x[i] = sum / lower[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < n; k++) sum -= lower[k * n + i]! * x[k]!;
    x[i] = sum / lower[i * n + i]!;
  }
  return x;
}

/** Inverse of L·Lᵀ, symmetric to the last bit. */
export function inverseFromCholesky(lower: Float64Array, n: number): Float64Array {
  const inverse = new Float64Array(n * n);
  const unit = new Float64Array(n);
  for (let column = 0; column < n; column++) {
    unit.fill(0);
    unit[column] = 1;
    const x = solveWithCholesky(lower, n, unit);
    for (let row = column; row < n; row++) {
      inverse[row * n + column] = x[row]!;
      inverse[column * n + row] = x[row]!;
    }
  }
  return inverse;
}

/** matrix · vector, into `into`. */
export function multiplyInto(
  into: Float64Array,
  matrix: Float64Array,
  n: number,
  vector: ArrayLike<number>,
): void {
  for (let i = 0; i < n; i++) {
    let sum = 0;
    const row = i * n;
    for (let j = 0; j < n; j++) sum += matrix[row + j]! * vector[j]!;
    into[i] = sum;
  }
}

export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  if (a.length !== b.length) throw new RangeError(`dot needs equal lengths, got ${a.length} and ${b.length}`);
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/** vectorᵀ · matrix · vector. */
export function quadraticForm(matrix: Float64Array, n: number, vector: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < n; i++) {
    let inner = 0;
    const row = i * n;
    for (let j = 0; j < n; j++) inner += matrix[row + j]! * vector[j]!;
    sum += vector[i]! * inner;
  }
  return sum;
}
