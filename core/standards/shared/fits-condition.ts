import type { Bar, Use } from "../port";
import { SAME_DIAMETER as SAME } from "./remembered.data";
import type { BarCondition } from "./standard-tables";

/** What a row is asked about. */
export interface RowQuestion {
  /** mm */
  readonly diameter: number;
  readonly use: Use;
  readonly grade: string | null;
}

/** True where a printed row speaks of the bar that is asked about. */
export function fitsCondition(
  row: BarCondition,
  { diameter, use, grade }: RowQuestion,
  bars: readonly Bar[],
): boolean {
  if (row.uses !== undefined && !row.uses.includes(use)) return false;
  if (row.grades !== undefined && (grade === null || !row.grades.includes(grade))) return false;
  if (row.diameter !== undefined && Math.abs(diameter - row.diameter) > SAME) return false;
  if (row.upTo !== undefined && diameter > row.upTo + SAME) return false;
  if (row.below !== undefined && diameter >= row.below - SAME) return false;
  if (row.upToSize !== undefined && diameter > diameterOf(row.upToSize, bars) + SAME) return false;
  return (
    row.sizes === undefined || row.sizes.some((size) => Math.abs(diameterOf(size, bars) - diameter) <= SAME)
  );
}

function diameterOf(size: string, bars: readonly Bar[]): number {
  return bars.find((bar) => bar.size === size)?.diameter ?? Number.NaN;
}
