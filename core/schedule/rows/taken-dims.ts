const NO_DIMS: readonly (number | null)[] = [];

/** The first so many dimensions of a row, as literals: an array that grows keeps room for sixteen more. */
export function takenDims(
  dims: readonly (number | null)[],
  count: number,
  mayEndBlank: boolean,
): readonly (number | null)[] {
  if (mayEndBlank || count > 5) return trimmed(dims.slice(0, count));
  const at = (place: number): number | null => dims[place] ?? null;
  if (count === 0) return NO_DIMS;
  if (count === 1) return [at(0)];
  if (count === 2) return [at(0), at(1)];
  if (count === 3) return [at(0), at(1), at(2)];
  return count === 4 ? [at(0), at(1), at(2), at(3)] : [at(0), at(1), at(2), at(3), at(4)];
}

function trimmed(dims: (number | null)[]): (number | null)[] {
  while (dims.length > 0 && dims[dims.length - 1] === null) dims.pop();
  return dims;
}
