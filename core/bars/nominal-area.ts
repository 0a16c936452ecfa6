/** Cross-section of a round bar, mm2, from its diameter in mm: pi d2 / 4. */
export function nominalArea(diameter: number): number {
  return (Math.PI * diameter * diameter) / 4;
}
