import type { LengthUnit } from "./length-unit";
import { kilogramsIn } from "./mass-unit";
import { isRefusal } from "./refusal";
import { KG_PER_UNIT } from "./unit-table";

/**
 * Tonnes of a mass in kilograms, to the kilogram.
 *
 * @example tonnesOf(84.77) // "0.085"
 */
export function tonnesOf(kg: number): string {
  return (kg / KG_PER_UNIT.t).toFixed(3);
}

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
