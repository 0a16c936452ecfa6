import type { LengthUnit } from "../../core/standards";
import { printLength } from "../../core/units/print-length";
import { MM_PER_UNIT } from "../../core/units/unit-table";

/** A length as a person at a machine sets it: whole millimetres without the unit, or feet and sixteenths. */
export function setLength(mm: number, unit: LengthUnit): string {
  return unit === "mm" ? String(Math.round(mm)) : printLength(sixteenth(mm), unit);
}

const SIXTEENTH = MM_PER_UNIT.in / 16;

function sixteenth(mm: number): number {
  return Math.round(mm / SIXTEENTH) * SIXTEENTH;
}
