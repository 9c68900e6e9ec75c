/**
 * Solves a small square system by Gaussian elimination with row pivoting. Neither input is changed.
 *
 * @param matrix n rows of n
 * @param right n values
 * @throws RangeError where a pivot vanishes
 */
export function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? NaN]);
  const n = rows.length;
  for (let column = 0; column < n; column++) eliminate(rows, column);
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i] ?? [];
    let sum = row[n] ?? NaN;
    for (let j = i + 1; j < n; j++) sum -= (row[j] ?? NaN) * (x[j] ?? NaN);
    x[i] = sum / (row[i] ?? NaN);
  }
  return x;
}

function eliminate(rows: number[][], column: number): void {
  let best = column;
  const size = (i: number) => Math.abs(rows[i]?.[column] ?? NaN);
  for (let i = column + 1; i < rows.length; i++) if (size(i) > size(best)) best = i;
  if (!(size(best) > 0)) throw new RangeError(`matrix has no solution: column ${column} has no pivot`);
  const pivot = rows[best] ?? [];
  rows[best] = rows[column] ?? [];
  rows[column] = pivot;
  for (let i = column + 1; i < rows.length; i++) {
    const row = rows[i] ?? [];
    const factor = (row[column] ?? NaN) / (pivot[column] ?? NaN);
    for (let j = column; j < row.length; j++) row[j] = (row[j] ?? NaN) - factor * (pivot[j] ?? NaN);
  }
}
