/** Lower triangle L of a small symmetric positive matrix, A = L Lᵀ. */
export function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const lower = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const read = (i: number, j: number) => lower[i]?.[j] ?? 0;
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]?.[j] ?? 0;
      for (let k = 0; k < j; k++) sum -= read(i, k) * read(j, k);
      const row = lower[i];
      if (row !== undefined) row[j] = i === j ? Math.sqrt(sum) : sum / read(j, j);
    }
  }
  return lower;
}

/** Solves Lᵀ x = b. */
export function solveUpper(lower: readonly (readonly number[])[], right: readonly number[]): number[] {
  const x = [...right];
  for (let i = x.length - 1; i >= 0; i--) {
    let sum = x[i] ?? 0;
    for (let k = i + 1; k < x.length; k++) sum -= (lower[k]?.[i] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (lower[i]?.[i] ?? Number.NaN);
  }
  return x;
}

/** Solves A x = b with A = L Lᵀ. */
export function solveSymmetric(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const lower = cholesky(matrix);
  const y = [...right];
  for (let i = 0; i < y.length; i++) {
    let sum = y[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (lower[i]?.[k] ?? 0) * (y[k] ?? 0);
    y[i] = sum / (lower[i]?.[i] ?? Number.NaN);
  }
  return solveUpper(lower, y);
}
