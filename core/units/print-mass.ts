import type { LengthUnit } from "./length-unit";
import { kilogramsIn } from "./mass-unit";
import { isRefusal } from "./refusal";

/**
 * A mass of `kg` kilograms as text: "84.77 kg", or in pounds where lengths are in inches. Keeps `places`
 * decimals at most.
 *
 * @example printMass(45.359237, "in") // "100 lb"
 */
export function printMass(kg: number, unit: LengthUnit, places = 2): string {
  const word = unit === "in" ? "lb" : "kg";
  const kilograms = kilogramsIn(word);
  return `${Number((kg / (isRefusal(kilograms) ? 1 : kilograms)).toFixed(places))} ${word}`;
}
