/** mm, or the number of an inch size; a number above it is a grade, as in HRB400 */
const THICKEST = 60;

/** Order of two names of sizes, thin before thick, by the number in them; names without one are last. */
export function thinToThick(one: string, other: string): number {
  const [a, b] = [numberOf(one), numberOf(other)];
  return (a === b ? 0 : a - b) || one.localeCompare(other);
}

function numberOf(size: string): number {
  const numbers = size.match(/\d+(?:\.\d+)?/g)?.map(Number) ?? [];
  return numbers.find((number) => number <= THICKEST) ?? Number.MAX_VALUE;
}
