/** Lower Cholesky factor of a symmetric positive matrix (row-major n×n); tiny pivots are lifted so that it never fails. */
export function cholesky(matrix: Float64Array, n: number): Float64Array {
  const l = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= l[i * n + k]! * l[j * n + k]!;
      l[i * n + j] = i === j ? Math.sqrt(Math.max(sum, 1e-9)) : sum / l[j * n + j]!;
    }
  return l;
}

/** Solves L Lᵀ x = b in place. */
export function solveCholesky(l: Float64Array, n: number, x: Float64Array): void {
  forwardSubstitute(l, n, x);
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= l[k * n + i]! * x[k]!;
    x[i]! /= l[i * n + i]!;
  }
}

/** Solves L x = b in place. */
export function forwardSubstitute(l: Float64Array, n: number, x: Float64Array): void {
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i]! -= l[i * n + k]! * x[k]!;
    x[i]! /= l[i * n + i]!;
  }
}
