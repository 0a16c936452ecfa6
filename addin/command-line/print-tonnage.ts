import type { Tonnage } from "../../core/totals";
import { greatest } from "../../core/units/extremes";
import { shorten } from "../../core/units/shorten";
import type { Streams } from "./streams";

/** Characters of a name that fit before the figures. */
const LONGEST_NAME = 40;

/** Tonnes as a table: a line a group unless in short, a column a size. */
export function printTonnage(totals: Tonnage, groupedBy: string, streams: Streams, isSummary: boolean): void {
  const sizes = [...totals.bySize.keys()];
  const rows = [
    [isSummary ? "" : groupedBy, ...sizes, "total, t"],
    ...(isSummary ? [] : totals.pours).map(({ pour, bySize, total }) => [
      shorten(pour, LONGEST_NAME),
      ...sizes.map((size) => tonnes(bySize.get(size))),
      tonnes(total),
    ]),
    ["total", ...sizes.map((size) => tonnes(totals.bySize.get(size))), tonnes(totals.total)],
  ];
  printTable(rows, streams);
}

/** Rows of cells, the first of each at the left, the others at the right of their column. */
export function printTable(rows: readonly (readonly string[])[], streams: Streams): void {
  const widths = rows[0]!.map((_, column) => greatest(rows.map((row) => row[column]!.length)));
  for (const row of rows) {
    const cells = row.map((cell, column) =>
      column === 0 ? cell.padEnd(widths[column]!) : cell.padStart(widths[column]!),
    );
    streams.result(cells.join("  ").trimEnd());
  }
}

function tonnes(value: number | undefined): string {
  return value === undefined ? "" : value.toFixed(3);
}
