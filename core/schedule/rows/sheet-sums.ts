import type { TotalRow } from "../bar-row";
import { LONGEST_VALUE } from "../cells/longest-text";
import type { Cell } from "../sheet";
import type { Block } from "./block";
import type { OpenSummary } from "./open-summary";
import { labelOf } from "./row-cells";
import { totalRow } from "./sum-rows";
import type { SumsHead } from "./sums-head";

/** True where the row is a line of the sums and no bar whatever columns it stands in: numbers under the sizes, or sizes one below another. */
export function isLineOfSums(
  summary: OpenSummary | null,
  cells: readonly Cell[],
  filled: readonly number[],
  row: number,
): boolean {
  if (summary === null) return false;
  if (summary.until !== null) return row <= summary.until;
  const under = new Set(summary.sizes.map(({ column }) => column));
  if (under.size < LEAST_ACROSS || filled.length === 0) return false;
  // words stand before the numbers, or behind them
  const isWords = (column: number | undefined): boolean => /\p{L}/u.test(String(cells[column ?? -1] ?? ""));
  const numbers = filled.slice(isWords(filled[0]) ? 1 : 0, isWords(filled.at(-1)) ? -1 : undefined);
  const right = Math.max(...under) + 1;
  return numbers.every((column) => isAmountOrNone(cells[column]) && (under.has(column) || column === right));
}

/** How the sizes of a block of sums stand; null outside one. */
export function wayOf(summary: OpenSummary | null): "across" | "down" | null {
  if (summary === null) return null;
  return summary.sizes.length >= LEAST_ACROSS ? "across" : "down";
}

/** A number, also one written as text, or the dash in place of one. */
function isAmountOrNone(cell: Cell | undefined): boolean {
  if (typeof cell !== "string") return typeof cell === "number";
  return (
    cell.length <= LONGEST_VALUE && /^\s*(?:[-\u2013\u2014]|\d[\d\s'\u2019]*[.,][\d\s.,]*)\s*$/.test(cell)
  );
}

const LEAST_SIZES = 3;
const LEAST_ACROSS = 2;
/** share of a sum of rounded figures */
const ROUNDED = 0.0005;

/** The sums of a sheet, row by row, and the blocks of sums among them. */
export class SheetSums {
  readonly totals: TotalRow[] = [];
  readonly summaries: OpenSummary[] = [];

  begin(headerRow: number, { sizes, until, line }: SumsHead): OpenSummary {
    const lines = line === undefined ? [] : [line];
    const summary = { headerRow, rows: lines, sizes, until };
    this.totals.push(...lines);
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
    else this.summaries.push({ headerRow: row - 1, rows: [line], sizes: [], until: null });
    this.totals.push(line);
  }

  /** Lines that were taken for bars or for a sum, and are a block of sums. */
  takeLines(lines: readonly TotalRow[]): void {
    const rows = new Set(lines.map(({ row }) => row));
    const others = this.totals.filter(({ row }) => !rows.has(row));
    this.totals.splice(0, this.totals.length, ...others, ...lines);
    this.totals.sort((one, other) => one.row - other.row);
    const headerRow = (lines[0]?.row ?? 0) - 1;
    // what follows right below, or stands right above, is the same block
    const ofSizesDown = this.summaries.filter(({ sizes }) => sizes.length === 0);
    const next = ofSizesDown.find((one) => one.rows[0]?.row === (lines.at(-1)?.row ?? -1) + 1);
    const last = ofSizesDown.find((one) => one.rows.at(-1)?.row === headerRow);
    if (last !== undefined) {
      last.rows.push(...lines, ...(next?.rows ?? []));
      if (next !== undefined) this.summaries.splice(this.summaries.indexOf(next), 1);
    } else if (next !== undefined) next.rows.unshift(...lines);
    else this.summaries.push({ headerRow, rows: [...lines], sizes: [], until: null });
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

  /** The number in the row right below a block of sums is what its lines add up to in the column. */
  isSumOfLines(row: number, column: number, value: number): boolean {
    const lines = this.summaries.at(-1)?.rows ?? [];
    if (lines.length < LEAST_SIZES || lines.at(-1)?.row !== row - 1) return false;
    const parts = lines.flatMap(({ cells }) => cells.filter((one) => one.column === column));
    const sum = parts.reduce((so, part) => so + part.value, 0);
    return parts.length === lines.length && Math.abs(sum - value) <= ROUNDED * sum;
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
