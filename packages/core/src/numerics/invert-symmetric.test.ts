import { expect, test } from "vitest";
import { invertSymmetric } from "./invert-symmetric.ts";
import { seededRandom } from "./random.ts";

test("times the matrix it is one, badly scaled matrices too", () => {
  const random = seededRandom(31);
  for (let n = 1; n <= 7; n++) {
    const rows = Array.from({ length: 12 }, () =>
      Array.from({ length: n }, (_, i) => random.normal() * 10 ** (i - 3)),
    );
    const gram = Array.from({ length: n }, (_, i) =>
      Array.from({ length: n }, (_, j) => rows.reduce((sum, row) => sum + row[i]! * row[j]!, 0)),
    );
    const inverse = invertSymmetric(gram)!;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        const size = Math.sqrt(gram[i]![i]! / gram[j]![j]!);
        const product = gram[i]!.reduce((sum, value, k) => sum + value * inverse[k]![j]!, 0);
        expect(product / size).toBeCloseTo(i === j ? 1 : 0, 9);
      }
    }
  }
});

test("a matrix without an inverse gives null", () => {
  expect(
    invertSymmetric([
      [1, 1],
      [1, 1],
    ]),
  ).toBeNull();
  expect(
    invertSymmetric([
      [1, 2],
      [2, 1],
    ]),
  ).toBeNull();
  expect(
    invertSymmetric([
      [0, 0],
      [0, 1],
    ]),
  ).toBeNull();
});
