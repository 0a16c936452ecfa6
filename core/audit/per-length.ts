import type { LengthUnit } from "../units/length-unit";
import { poundsPerFoot } from "../units/mass-unit";

/** A mass per length in the words of the unit in force. */
export function perLength(kilogramsPerMetre: number, unit: LengthUnit): string {
  const rounded = (value: number): number => Math.round(value * 1000) / 1000;
  return unit === "in"
    ? `${rounded(poundsPerFoot(kilogramsPerMetre))} lb/ft`
    : `${rounded(kilogramsPerMetre)} kg/m`;
}
