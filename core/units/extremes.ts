type Numbers = readonly number[] | Float64Array;

/**
 * The greatest of as many numbers as a sheet has rows. `Math.max(...numbers)` hands each over as an argument, of which
 * an engine takes about a hundred thousand.
 *
 * @returns minus infinity where there are none
 */
export function greatest(numbers: Numbers): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const number of numbers) most = Math.max(most, number);
  return most;
}

/** The least of as many numbers as a sheet has rows; infinity where there are none. */
export function least(numbers: Numbers): number {
  let fewest = Number.POSITIVE_INFINITY;
  for (const number of numbers) fewest = Math.min(fewest, number);
  return fewest;
}
