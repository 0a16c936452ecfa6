import { resolveStandard, STANDARD_IDS } from "../../standards/index";
import type { SizeReading } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { EIGHTHS_OF_INCH, ROUND_STEEL } from "../evidence/evidence.data";

const EIGHTHS = /^#\s?(\d(?:\.\d)?)$/;
/** 5/8" is a bar of five eighths, which the American table calls #5. */
const FRACTION = /^(?:(\d)(?:\s+|$))?(?:(\d)\/([248]))?\s*(?:"|in\.?|inch)$/;
const SIGN = /^[\u00f8\u00d8\u2300\u03a6\u03c6]\s*(?=\d)/;
const MM_PER_METRE = 1000;

function asEighths(typed: string): string {
  const [, whole, over, under] =
    FRACTION.exec(
      typed
        .trim()
        .replace(SIGN, "")
        .replace(/^(\d)"$/, '$1 "'),
    ) ?? [];
  if (whole === undefined && over === undefined) return typed;
  const eighths = 8 * Number(whole ?? 0) + (8 * Number(over ?? 0)) / Number(under ?? 1);
  return Number.isInteger(eighths) && eighths > 1 ? `#${eighths}` : typed;
}

/**
 * A bar size that the standard in force does not read, as the first of the others has it; null where none has.
 * Its `bar` is null: only its diameter and its mass are taken over.
 */
export function sizeElsewhere(given: string): SizeReading | null {
  const typed = asEighths(given);
  for (const id of STANDARD_IDS) {
    const standard = resolveStandard(id);
    if (isRefusal(standard)) continue;
    const size = standard.readSize(typed);
    if (isRefusal(size) || size.bar === null) continue;
    const { diameter, massPerMetre } = size.bar;
    return { ...size, typed: given, diameter, bar: null, massPerMetre };
  }
  const number = Number(EIGHTHS.exec(typed)?.[1] ?? Number.NaN);
  if (!EIGHTHS_OF_INCH.value.numbers.includes(number)) return null;
  const diameter = number * EIGHTHS_OF_INCH.value.mmOfOne;
  return { typed, diameter, bar: null, prefix: "", massPerMetre: massOfRoundSteel(diameter) };
}

/** kg/m of a size: the standard's own, that of another standard, or round steel's where the diameter is rolled somewhere. */
export function massPerMetreOf(size: SizeReading | null): number | null {
  if (size === null) return null;
  if (size.bar !== null) return size.bar.massPerMetre;
  if (size.massPerMetre !== undefined) return size.massPerMetre;
  return ROUND_STEEL.value.diameters.includes(size.diameter) ? massOfRoundSteel(size.diameter) : null;
}

/** kg/m of a plain round of this diameter, mm. */
export function massOfRoundSteel(diameter: number): number {
  return (Math.PI / 4) * (diameter / MM_PER_METRE) ** 2 * ROUND_STEEL.value.density;
}
