import { LAST_COLUMN, parseRange } from "../../workbook/cell-address";
import type { ScannedCell } from "./scan-cells";
import type { SheetFormula } from "./sheet-formula";

/** Cells that formulas fill whose results are not to be relied on. */
export class DoubtedCells {
  private readonly own = new Set<number>();
  private readonly ranges: { top: number; left: number; bottom: number; right: number }[] = [];

  add({ row, column }: ScannedCell, { kind, range }: SheetFormula): void {
    this.own.add(row * (LAST_COLUMN + 1) + column);
    const filled = kind === "array" || kind === "dataTable" ? parseRange(range ?? "") : null;
    if (filled !== null) this.ranges.push(filled);
  }

  has(row: number, column: number): boolean {
    return (
      this.own.has(row * (LAST_COLUMN + 1) + column) ||
      this.ranges.some(
        ({ top, left, bottom, right }) => row >= top && row <= bottom && column >= left && column <= right,
      )
    );
  }

  get isEmpty(): boolean {
    return this.own.size === 0;
  }
}
