import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cholesky,
  dot,
  inverseFromCholesky,
  multiplyInto,
  quadraticForm,
  solveWithCholesky,
} from "./matrix.ts";

const entry = fc.double({ min: -3, max: 3, noNaN: true });
/** A random positive definite matrix: a square of another one with a little added on the diagonal. */
const matrices = fc.integer({ min: 1, max: 6 }).chain((n) =>
  fc.array(entry, { minLength: n * n, maxLength: n * n }).map((values) => {
    const matrix = new Float64Array(n * n);
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        for (let k = 0; k < n; k++) matrix[i * n + j]! += values[i * n + k]! * values[j * n + k]!;
        if (i === j) matrix[i * n + j]! += 0.5;
      }
    return { n, matrix };
  }),
);
const seed = 20261125;

describe("small matrices", () => {
  test("a triangle worked by hand", () => {
    // [[4, 2], [2, 5]] = L·Lᵀ with L = [[2, 0], [1, 2]].
    expect([...cholesky(Float64Array.of(4, 2, 2, 5), 2)]).toEqual([2, 0, 1, 2]);
  });

  test("the triangle times its mirror is the matrix, and it is zero above", () => {
    fc.assert(
      fc.property(matrices, ({ n, matrix }) => {
        const lower = cholesky(matrix, n);
        for (let i = 0; i < n; i++)
          for (let j = 0; j < n; j++) {
            let sum = 0;
            for (let k = 0; k < n; k++) sum += lower[i * n + k]! * lower[j * n + k]!;
            expect(sum).toBeCloseTo(matrix[i * n + j]!, 9);
            if (j > i) expect(lower[i * n + j]).toBe(0);
          }
      }),
      { seed },
    );
  });

  test("reads the lower triangle alone", () => {
    expect([...cholesky(Float64Array.of(4, 99, 2, 5), 2)]).toEqual([2, 0, 1, 2]);
  });

  test("solving undoes multiplying", () => {
    fc.assert(
      fc.property(matrices, fc.array(entry, { minLength: 6, maxLength: 6 }), ({ n, matrix }, values) => {
        const x = Float64Array.from(values.slice(0, n));
        const right = new Float64Array(n);
        multiplyInto(right, matrix, n, x);
        const solved = solveWithCholesky(cholesky(matrix, n), n, right);
        for (let i = 0; i < n; i++) expect(solved[i]).toBeCloseTo(x[i]!, 7);
      }),
      { seed },
    );
  });

  test("the inverse times the matrix is one, and it is symmetric to the last bit", () => {
    fc.assert(
      fc.property(matrices, ({ n, matrix }) => {
        const inverse = inverseFromCholesky(cholesky(matrix, n), n);
        for (let i = 0; i < n; i++)
          for (let j = 0; j < n; j++) {
            let sum = 0;
            for (let k = 0; k < n; k++) sum += matrix[i * n + k]! * inverse[k * n + j]!;
            expect(sum).toBeCloseTo(i === j ? 1 : 0, 7);
            expect(inverse[i * n + j]).toBe(inverse[j * n + i]);
          }
      }),
      { seed },
    );
  });

  test("a matrix that is not positive definite is refused with row and pivot", () => {
    expect(() => cholesky(Float64Array.of(1, 2, 2, 1), 2)).toThrow(/pivot -3 in row 1/);
    expect(() => cholesky(Float64Array.of(0), 1)).toThrow(/pivot 0 in row 0/);
    expect(() => cholesky(Float64Array.of(Number.NaN), 1)).toThrow(RangeError);
  });

  test("products worked by hand", () => {
    const matrix = Float64Array.of(1, 2, 3, 4);
    const into = new Float64Array(2);
    multiplyInto(into, matrix, 2, [5, 6]);
    expect([...into]).toEqual([17, 39]);
    expect(quadraticForm(matrix, 2, [5, 6])).toBe(5 * 17 + 6 * 39);
    expect(dot([1, 2, 3], [4, 5, 6])).toBe(32);
    expect(() => dot([1], [1, 2])).toThrow(/equal lengths, got 1 and 2/);
  });
});
