import type { LengthUnit } from "../../core/standards";
import { printLength } from "../../core/units/print-length";

/** A length as a person at a machine sets it: whole millimetres without the unit, or feet and sixteenths. */
export function setLength(mm: number, unit: LengthUnit): string {
  return unit === "mm" ? String(Math.round(mm)) : printLength(sixteenth(mm), unit);
}

const SIXTEENTH = 25.4 / 16;

function sixteenth(mm: number): number {
  return Math.round(mm / SIXTEENTH) * SIXTEENTH;
}
