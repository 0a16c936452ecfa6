import type { TotalRow } from "../bar-row";
import type { Carried } from "./carried";
import type { BarRowReader } from "./read-bar-row";
import type { DraftRow } from "./row-draft";

/** A table that rows are being read under. */
export interface Block {
  readonly reader: BarRowReader;
  carried: Carried;
  above: DraftRow | null;
  blanks: number;
  ended: boolean;
  /** a block of sums, not of bars */
  readonly summary: {
    headerRow: number;
    rows: TotalRow[];
    sizes: readonly { size: string; column: number }[];
  } | null;
}

/** A block takes its own columns; the last one everything to the right, the first to the left. */
export function columnsOf(blocks: readonly Block[], index: number, filled: readonly number[]): number[] {
  const from = index === 0 ? 0 : (blocks[index]?.reader.layout.left ?? 0);
  const to = blocks[index + 1]?.reader.layout.left ?? Number.POSITIVE_INFINITY;
  return filled.filter((column) => column >= from && column < to);
}
