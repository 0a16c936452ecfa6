import type { Standard } from "../../standards/port";
import { SOFT_METRIC_SIZES } from "./row-words.data";

/** rows, and their share, with sizes that no list of eighths has */
const LEAST_SIGNED = 2;
const MANY = 0.2;
const SIGNED = /^#\s*(\d+)$/;

/** True where "#" stands for the diameter, as in Polish lists: all are mm of the standard, and many no number of eighths. */
export function isSignOfDiameter(standard: Standard, typed: readonly string[]): boolean {
  if (standard.bars.some(({ size }) => size.startsWith("#"))) return false;
  const numbers = typed.flatMap((text) => SIGNED.exec(text.trim())?.[1] ?? []).map(Number);
  const isBar = (number: number) => standard.bars.some(({ diameter }) => diameter === number);
  const eighths = new Set(SOFT_METRIC_SIZES.rows.map(({ inch }) => inch));
  const others = numbers.filter((number) => !eighths.has(number)).length;
  return others >= LEAST_SIGNED && others >= MANY * numbers.length && numbers.every(isBar);
}

/** bare numbers that no list in mm has as sizes, and how many rows must write such a one */
const NO_SIZE_IN_MM: ReadonlySet<number> = new Set([3, 4, 5, 7, 9, 11]);
const LEAST_EIGHTHS = 2;

/**
 * True where bare numbers are bar numbers, eighths of an inch, though the standard in force has its sizes in mm: lengths
 * in feet stand beside, all are such numbers, and some are no size in mm (common practice).
 */
export function areEighths(standard: Standard, typed: readonly string[], inFeet: boolean): boolean {
  if (!inFeet || standard.bars.some(({ size }) => size.startsWith("#"))) return false;
  const numbers = typed.filter((text) => /^\s*\d{1,2}\s*$/.test(text)).map(Number);
  const inch = new Set(SOFT_METRIC_SIZES.rows.map((row) => row.inch));
  if (numbers.length < typed.length || numbers.some((number) => !inch.has(number))) return false;
  return numbers.filter((number) => NO_SIZE_IN_MM.has(number)).length >= LEAST_EIGHTHS;
}

/** True where a list of sizes uses names that only the soft metric series has, such as #13 or #19. */
export function isSoftMetric(standard: Standard, typed: readonly string[]): boolean {
  if (!standard.bars.some(({ size }) => size.startsWith("#"))) return false;
  const numbers = typed.map((text) => Number(/^#?\s*(\d+)$/.exec(text.trim())?.[1] ?? Number.NaN));
  const inch = new Set(SOFT_METRIC_SIZES.rows.map((row) => row.inch));
  return numbers.some(
    (number) => SOFT_METRIC_SIZES.rows.some((row) => row.metric === number) && !inch.has(number),
  );
}
