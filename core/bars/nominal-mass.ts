import { nominalArea } from "./nominal-area";

/** kg/m3: the density that every reinforcing-bar standard here takes for steel. */
const STEEL_DENSITY = 7850;
const MM2_PER_M2 = 1_000_000;

/**
 * Mass of a round bar, kg/m, from its diameter in mm, at 7850 kg/m3.
 * A standard's printed table goes before it: tables differ from it in the third decimal.
 */
export function nominalMass(diameter: number): number {
  return (nominalArea(diameter) * STEEL_DENSITY) / MM2_PER_M2;
}
