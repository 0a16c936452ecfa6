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

/** True where a list of sizes uses names that only the soft metric series has, such as #13 or #19. */
export function isSoftMetric(standard: Standard, typed: readonly string[]): boolean {
  if (!standard.bars.some(({ size }) => size.startsWith("#"))) return false;
  const numbers = typed.map((text) => Number(/^#?\s*(\d+)$/.exec(text.trim())?.[1] ?? Number.NaN));
  const inch = new Set(SOFT_METRIC_SIZES.rows.map((row) => row.inch));
  return numbers.some(
    (number) => SOFT_METRIC_SIZES.rows.some((row) => row.metric === number) && !inch.has(number),
  );
}
