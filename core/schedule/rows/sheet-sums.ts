import type { SummaryBlock, TotalRow } from "../bar-row";
import type { Cell } from "../sheet";
import type { Block } from "./block";
import { labelOf } from "./row-cells";
import { totalRow } from "./sum-rows";

type OpenSummary = SummaryBlock & { readonly rows: TotalRow[] };

/** The sums of a sheet, row by row, and the blocks of sums among them. */
export class SheetSums {
  readonly totals: TotalRow[] = [];
  readonly summaries: OpenSummary[] = [];

  begin(headerRow: number, sizes: OpenSummary["sizes"]): OpenSummary {
    const summary = { headerRow, rows: [], sizes };
    this.summaries.push(summary);
    return summary;
  }

  line(block: Block, cells: readonly Cell[], row: number, filled: readonly number[]): void {
    const line = summaryLine(block, cells, row, filled);
    block.summary?.rows.push(line);
    this.totals.push(line);
  }

  /** Lines of an abstract without a head: one below another they are a block of sums. */
  abstractLine(block: Block, cells: readonly Cell[], row: number, filled: readonly number[]): void {
    const line = summaryLine(block, cells, row, filled);
    const last = this.summaries[this.summaries.length - 1];
    const isNext = last !== undefined && last.sizes.length === 0 && last.rows.at(-1)?.row === row - 1;
    if (isNext) last.rows.push(line);
    else this.summaries.push({ headerRow: row - 1, rows: [line], sizes: [] });
    this.totals.push(line);
  }

  total(
    block: Block,
    cells: readonly Cell[],
    row: number,
    filled: readonly number[],
    kind: "total" | "subtotal" | "carried",
  ): void {
    const { comma, table } = block.reader.layout;
    const texts = filled.filter((column) => typeof cells[column] === "string");
    this.totals.push({ ...totalRow(cells, row, filled, labelOf(cells, texts), kind, comma), table });
  }

  forget(): void {
    this.totals.length = 0;
    this.summaries.length = 0;
  }
}

function summaryLine(block: Block, cells: readonly Cell[], row: number, filled: readonly number[]): TotalRow {
  const { comma } = block.reader.layout;
  return totalRow(cells, row, filled, labelOf(cells, filled), "summary", comma);
}
