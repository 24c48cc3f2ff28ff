/** Solves a small symmetric positive system by Cholesky; a pivot that vanishes leaves its unknown at zero. */
export function solveSymmetric(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const n = right.length;
  const low = matrix.map((row) => row.slice());
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]![j]!;
      for (let k = 0; k < j; k++) sum -= low[i]![k]! * low[j]![k]!;
      low[i]![j] = i === j ? Math.sqrt(Math.max(sum, 1e-18)) : sum / low[j]![j]!;
    }
  const x = right.slice();
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i] = x[i]! - low[i]![k]! * x[k]!;
    x[i] = x[i]! / low[i]![i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i] = x[i]! - low[k]![i]! * x[k]!;
    x[i] = x[i]! / low[i]![i]!;
  }
  return x;
}
