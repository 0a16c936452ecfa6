/**
 * Decimals by which a mass is printed: a tonne to the kilogram, a kilogram or a pound to the hundredth.
 *
 * @example massPlaces("t") // 3
 */
export function massPlaces(unit: string): number {
  return /^t(on)?$/i.test(unit.trim()) ? 3 : 2;
}
