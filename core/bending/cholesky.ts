/** A symmetric matrix, row after row. */
export type Matrix = readonly Float64Array[];

/** A positive definite matrix taken apart, ready to solve with. */
export interface Cholesky {
  solve(right: Float64Array): Float64Array;
  inverse(): Float64Array[];
  readonly logDeterminant: number;
}

/** Lower factor of a symmetric positive definite matrix; only its lower half is read. */
export function cholesky(matrix: Matrix): Cholesky {
  const size = matrix.length;
  const lower = matrix.map((row) => Float64Array.from(row));
  let logDeterminant = 0;
  for (let j = 0; j < size; j += 1) {
    const own = lower[j] as Float64Array;
    let pivot = own[j] as number;
    for (let k = 0; k < j; k += 1) pivot -= (own[k] as number) ** 2;
    const root = Math.sqrt(pivot);
    own[j] = root;
    logDeterminant += 2 * Math.log(root);
    for (let i = j + 1; i < size; i += 1) {
      const row = lower[i] as Float64Array;
      let sum = row[j] as number;
      for (let k = 0; k < j; k += 1) sum -= (row[k] as number) * (own[k] as number);
      row[j] = sum / root;
    }
  }
  const solve = (right: Float64Array) => backSubstitute(lower, forwardSubstitute(lower, right));
  return {
    solve,
    inverse: () =>
      lower.map((_, column) => {
        const unit = new Float64Array(size);
        unit[column] = 1;
        return solve(unit);
      }),
    logDeterminant,
  };
}

function forwardSubstitute(lower: Matrix, right: Float64Array): Float64Array {
  const found = Float64Array.from(right);
  for (let i = 0; i < found.length; i += 1) {
    const row = lower[i] as Float64Array;
    let sum = found[i] as number;
    for (let k = 0; k < i; k += 1) sum -= (row[k] as number) * (found[k] as number);
    found[i] = sum / (row[i] as number);
  }
  return found;
}

function backSubstitute(lower: Matrix, right: Float64Array): Float64Array {
  const found = Float64Array.from(right);
  for (let i = found.length - 1; i >= 0; i -= 1) {
    let sum = found[i] as number;
    for (let k = i + 1; k < found.length; k += 1)
      sum -= ((lower[k] as Float64Array)[i] as number) * (found[k] as number);
    found[i] = sum / ((lower[i] as Float64Array)[i] as number);
  }
  return found;
}
