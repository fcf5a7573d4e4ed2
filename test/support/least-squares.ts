/** A least-squares fit: its coefficients, and the root mean square of what it leaves. */
export interface Fit {
  readonly coefficients: readonly number[];
  readonly rmse: number;
}

/** Fits `values` by a constant and one term for each of `columns`, over the rows given. */
export function leastSquares(
  columns: readonly Float64Array[],
  values: Float64Array,
  rows: readonly number[],
): Fit {
  const size = columns.length + 1;
  const term = (k: number, row: number): number => (k === 0 ? 1 : columns[k - 1][row]);
  const matrix = Array.from({ length: size }, () => new Array<number>(size + 1).fill(0));
  for (const row of rows) {
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) matrix[i][j] += term(i, row) * term(j, row);
      matrix[i][size] += term(i, row) * values[row];
    }
  }
  const coefficients = solved(matrix);
  const predicted = (row: number) => coefficients.reduce((sum, value, k) => sum + value * term(k, row), 0);
  return { coefficients, rmse: errorOf(predicted, values, rows).rmse };
}

/** Mean error and root mean square error of a prediction over the rows given. */
export function errorOf(
  predicted: (row: number) => number,
  values: Float64Array,
  rows: readonly number[],
): { readonly mean: number; readonly rmse: number } {
  let sum = 0;
  let squares = 0;
  for (const row of rows) {
    const error = predicted(row) - values[row];
    sum += error;
    squares += error * error;
  }
  return { mean: sum / rows.length, rmse: Math.sqrt(squares / rows.length) };
}

/** Values behind an exponential lag of `hours`, an hour a step. */
export function lagged(values: Float64Array, hours: number): Float64Array {
  const result = values.slice();
  const share = 1 - Math.exp(-1 / hours);
  for (let i = 1; i < values.length; i++) result[i] = result[i - 1] + share * (values[i] - result[i - 1]);
  return result;
}

/** The line on the lagged values whose lag [h] leaves the least, of lags from half an hour to a day. */
export function bestLag(
  driver: Float64Array,
  values: Float64Array,
  rows: readonly number[],
): Fit & { readonly hours: number } {
  let best: (Fit & { hours: number }) | null = null;
  for (let hours = 0.5; hours <= 24; hours += 0.5) {
    const fit = leastSquares([lagged(driver, hours)], values, rows);
    if (best === null || fit.rmse < best.rmse) best = { ...fit, hours };
  }
  if (best === null) throw new RangeError('expected at least one lag');
  return best;
}

/** Solves a square system given with its right side as last column, by elimination with pivots. */
function solved(matrix: number[][]): number[] {
  const size = matrix.length;
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++) if (Math.abs(matrix[i][k]) > Math.abs(matrix[pivot][k])) pivot = i;
    [matrix[k], matrix[pivot]] = [matrix[pivot], matrix[k]];
    for (let i = 0; i < size; i++) {
      if (i === k) continue;
      const share = matrix[i][k] / matrix[k][k];
      for (let j = k; j <= size; j++) matrix[i][j] -= share * matrix[k][j];
    }
  }
  return matrix.map((row, k) => row[size] / row[k]);
}
