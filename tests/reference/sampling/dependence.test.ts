import { describe, expect, it } from "vitest";
import { symmetricEigen } from "../../../packages/core/src/sampling/dependence/symmetricEigen.ts";
import {
  blockSize,
  factorCorrelation,
  fillUniforms,
  nearestCorrelation,
  normalCdf,
  normalScore,
} from "../../../packages/core/src/sampling/index.ts";

/** L L^T, row-major. */
function productWithTranspose(factor: Float64Array, n: number): Float64Array {
  const result = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0; k < n; k++) sum += (factor[i * n + k] ?? 0) * (factor[j * n + k] ?? 0);
      result[i * n + j] = sum;
    }
  }
  return result;
}

function largestDifference(a: Float64Array, b: Float64Array): number {
  let worst = 0;
  for (let i = 0; i < a.length; i++)
    worst = Math.max(worst, Math.abs((a[i] ?? Number.NaN) - (b[i] ?? Number.NaN)));
  return worst;
}

/** A symmetric matrix with unit diagonal and entries uniform in (-1, 1): far from possible when n is large. */
function randomMatrix(n: number, name: string): Float64Array {
  const u = new Float64Array(2 * blockSize);
  fillUniforms("plain", "matrix", name, "entry", 0, u);
  fillUniforms("plain", "matrix", name, "entry", 1, u, blockSize);
  let drawn = 0;
  const matrix = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    matrix[i * n + i] = 1;
    for (let j = 0; j < i; j++) {
      matrix[i * n + j] = 2 * (u[drawn++] ?? Number.NaN) - 1;
      matrix[j * n + i] = matrix[i * n + j] ?? 0;
    }
  }
  return matrix;
}

describe("symmetricEigen(matrix, n)", () => {
  // The second-difference matrix has eigenvalues 2 - 2 cos(k pi / (n + 1)): textbook result (recalled).
  it("finds the eigenvalues of the second-difference matrix", () => {
    for (const n of [1, 2, 3, 10, 40]) {
      const matrix = new Float64Array(n * n);
      for (let i = 0; i < n; i++) {
        matrix[i * n + i] = 2;
        if (i > 0) {
          matrix[i * n + i - 1] = -1;
          matrix[(i - 1) * n + i] = -1;
        }
      }
      const values = symmetricEigen(matrix, n).values.sort();
      values.forEach((value, k) => {
        expect(Math.abs(value - (2 - 2 * Math.cos(((k + 1) * Math.PI) / (n + 1))))).toBeLessThan(1e-13);
      });
    }
  });

  it("gives vectors that are orthogonal and rebuild the matrix, repeated and zero eigenvalues included", () => {
    const equal = new Float64Array(49).fill(0.5);
    for (let i = 0; i < 7; i++) equal[i * 7 + i] = 1;
    const cases: [Float64Array, number][] = [
      [randomMatrix(30, "eigen"), 30],
      [equal, 7],
      [new Float64Array(16).fill(1), 4],
      [new Float64Array(9), 3],
    ];
    for (const [matrix, n] of cases) {
      const { values, vectors } = symmetricEigen(matrix, n);
      const scaled = vectors.map((v, at) => v * (values[at % n] ?? 0));
      const rebuilt = new Float64Array(n * n);
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) {
          let sum = 0;
          for (let k = 0; k < n; k++) sum += (scaled[i * n + k] ?? 0) * (vectors[j * n + k] ?? 0);
          rebuilt[i * n + j] = sum;
        }
      }
      const identity = new Float64Array(n * n);
      for (let i = 0; i < n; i++) identity[i * n + i] = 1;
      expect(largestDifference(rebuilt, matrix)).toBeLessThan(1e-13);
      expect(largestDifference(productWithTranspose(vectors, n), identity)).toBeLessThan(1e-13);
    }
  });
});

describe("nearestCorrelation(matrix, n)", () => {
  // Higham (2002), IMA Journal of Numerical Analysis 22(3), 329-343, the 3 x 3 example (recalled to four digits).
  it("repairs Higham's example", () => {
    const { matrix, changed, frobenius } = nearestCorrelation(Float64Array.of(1, 1, 0, 1, 1, 1, 0, 1, 1), 3);
    expect(changed).toBe(true);
    [1, 0.7607, 0.1573, 0.7607, 1, 0.7607, 0.1573, 0.7607, 1].forEach((value, k) => {
      expect(Math.abs((matrix[k] ?? Number.NaN) - value)).toBeLessThan(5e-5);
    });
    expect(Math.abs(frobenius - 0.5278)).toBeLessThan(5e-5);
  });

  // Derived: with all coefficients -r the matrix is possible down to -1/(n - 1), and by symmetry and the uniqueness of
  // the nearest matrix the repaired one has all coefficients equal: exactly -1/(n - 1).
  it("lifts equal negative coefficients to -1/(n - 1)", () => {
    for (const n of [3, 4, 9]) {
      const given = new Float64Array(n * n).fill(-0.8);
      for (let i = 0; i < n; i++) given[i * n + i] = 1;
      const { matrix, largest, row, column } = nearestCorrelation(given, n);
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) {
          expect(Math.abs((matrix[i * n + j] ?? Number.NaN) - (i === j ? 1 : -1 / (n - 1)))).toBeLessThan(
            1e-9,
          );
        }
      }
      expect(Math.abs(largest - (0.8 - 1 / (n - 1)))).toBeLessThan(1e-9);
      expect(row).toBeLessThan(column);
    }
  });

  // Optimality, from the theory alone (Higham 2002, theorem 2.4 and its dual; Qi & Sun 2006): X is nearest to A exactly
  // when X = the positive part of A + diag(y) for some y, that is, when for W = X - A - diag(y), y = diag(W0), both W is
  // positive semi-definite and W X = 0, the diagonal of W being free.
  it.each([4, 12, 40])("satisfies the conditions of the nearest matrix, n = %d", (n) => {
    const given = randomMatrix(n, `nearest-${n}`);
    const { matrix } = nearestCorrelation(given, n);
    for (let i = 0; i < n; i++) expect(matrix[i * n + i]).toBe(1);
    expect(Math.min(...symmetricEigen(matrix, n).values)).toBeGreaterThan(-1e-12);
    // Off the diagonal W = X - A. Its diagonal is what makes W X = 0: row i gives W_ii = -sum over j /= i of W_ij X_ji.
    const w = matrix.map((value, at) => value - (given[at] ?? 0));
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j < n; j++) if (j !== i) sum += (w[i * n + j] ?? 0) * (matrix[j * n + i] ?? 0);
      w[i * n + i] = -sum;
    }
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        let sum = 0;
        for (let k = 0; k < n; k++) sum += (w[i * n + k] ?? 0) * (matrix[k * n + j] ?? 0);
        expect(Math.abs(sum)).toBeLessThan(1e-9);
      }
    }
    expect(Math.min(...symmetricEigen(w, n).values)).toBeGreaterThan(-1e-9);
  });

  it("keeps a possible matrix to the bit, and a possible block beside one that is not", () => {
    const possible = Float64Array.of(1, 0.6, 0.3, 0.6, 1, 0.5, 0.3, 0.5, 1);
    const kept = nearestCorrelation(possible, 3);
    expect([kept.changed, kept.largest, kept.frobenius, ...kept.matrix]).toEqual([false, 0, 0, ...possible]);
    const both = new Float64Array(36);
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        // Alternating places: members 0, 2, 4 contradict, members 1, 3, 5 do not.
        both[2 * i * 6 + 2 * j] = i === j ? 1 : -0.9;
        both[(2 * i + 1) * 6 + 2 * j + 1] = possible[i * 3 + j] ?? 0;
      }
    }
    const mended = nearestCorrelation(both, 6);
    for (let i = 0; i < 6; i++) {
      for (let j = 0; j < 6; j++) {
        if (i % 2 === 1 || j % 2 === 1) expect(mended.matrix[i * 6 + j]).toBe(both[i * 6 + j]);
        else expect(Math.abs((mended.matrix[i * 6 + j] ?? 0) - (i === j ? 1 : -0.5))).toBeLessThan(1e-9);
      }
    }
  });
});

describe("factorCorrelation(matrix, n)", () => {
  it("factors possible matrices, singular ones and repaired ones", () => {
    const together = new Float64Array(16).fill(1);
    const opposed = Float64Array.of(1, -1, 0, -1, 1, 0, 0, 0, 1);
    const repaired = nearestCorrelation(randomMatrix(25, "factor"), 25).matrix;
    const cases: [Float64Array, number][] = [
      [Float64Array.of(1, 0.6, 0.3, 0.6, 1, 0.5, 0.3, 0.5, 1), 3],
      [together, 4],
      [opposed, 3],
      [repaired, 25],
      [Float64Array.of(1), 1],
    ];
    for (const [matrix, n] of cases) {
      const factor = factorCorrelation(matrix, n);
      expect(largestDifference(productWithTranspose(factor, n), matrix)).toBeLessThan(1e-9);
      for (let i = 0; i < n; i++) for (let j = i + 1; j < n; j++) expect(factor[i * n + j]).toBe(0);
    }
  });

  it("refuses what cannot be, and says what to do", () => {
    expect(() => factorCorrelation(Float64Array.of(1, 1, 0, 1, 1, 1, 0, 1, 1), 3)).toThrow(
      "nearest correlation",
    );
    expect(() => factorCorrelation(Float64Array.of(1, -0.9, -0.9, -0.9, 1, -0.9, -0.9, -0.9, 1), 3)).toThrow(
      "nearest",
    );
  });

  // Definition of the plan format: the coefficient is the correlation of the normal scores. 65,536 draws: the
  // standard error of a correlation of 0.7 is (1 - 0.49) / 256 = 0.002; 5 of them, by luck below 1e-6.
  it("gives scores with the wanted correlation, and uniforms that stay uniform", () => {
    const factor = factorCorrelation(Float64Array.of(1, 0.7, 0.7, 1), 2);
    let product = 0;
    let sum = 0;
    let square = 0;
    const n = 64 * blockSize;
    const a = new Float64Array(blockSize);
    const b = new Float64Array(blockSize);
    for (let block = 0; block < 64; block++) {
      fillUniforms("plain", "scores", "a", "duration", block, a);
      fillUniforms("plain", "scores", "b", "duration", block, b);
      for (let i = 0; i < blockSize; i++) {
        const x = normalScore(a[i] ?? Number.NaN);
        const y = (factor[2] ?? 0) * x + (factor[3] ?? 0) * normalScore(b[i] ?? Number.NaN);
        product += x * y;
        const u = normalCdf(y);
        sum += u;
        square += u * u;
      }
    }
    expect(Math.abs(product / n - 0.7)).toBeLessThan(5 * (Math.sqrt(1 + 0.49) / 256));
    expect(Math.abs(sum / n - 1 / 2)).toBeLessThan(5 * (Math.sqrt(1 / 12) / 256));
    expect(Math.abs(square / n - 1 / 3)).toBeLessThan(5 * (Math.sqrt(4 / 45) / 256));
  });
});
