import type { BarFacts } from "../bar/bar-facts";
import type { SheetFacts } from "../bar/sheet-facts";
import type { TotalRow } from "../schedule/bar-row";
import type { Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";

/** One sum of a bar size: where it stands and what it says. */
export interface SizedSum {
  readonly diameter: number;
  readonly size: string;
  readonly row: number;
  readonly column: number;
  readonly typed: number;
}

/** Sums of one kind by size: a line of a summary, a column of one, or a line under columns by size. */
export interface SizedLine {
  readonly sums: readonly SizedSum[];
  /** the bars it stands for: since the summary before it, and all so far */
  readonly stretches: readonly (readonly BarFacts[])[];
}

/** Every line or column of a sheet that gives sums by size. */
export function sizedLines(sheet: SheetFacts, standard: Standard): readonly SizedLine[] {
  return [
    ...acrossSummaries(sheet, standard),
    ...downSummaries(sheet, standard),
    ...underColumns(sheet, standard),
  ];
}

function diameterOf(size: string, standard: Standard): number | null {
  const reading = standard.readSize(size);
  return isRefusal(reading) || reading.bar === null ? null : reading.diameter;
}

/** Sizes side by side, sums below them. */
function acrossSummaries(sheet: SheetFacts, standard: Standard): SizedLine[] {
  return (sheet.reading.summaries ?? []).flatMap(({ rows, sizes, headerRow }) => {
    if (sizes.length === 0) return [];
    return rows.map((line) => ({
      sums: sizes.flatMap(({ size, column }) => sumAt(line, column, size, standard)),
      stretches: stretchesBefore(sheet, headerRow),
    }));
  });
}

function sumAt(line: TotalRow, column: number, size: string, standard: Standard): SizedSum[] {
  const cell = line.cells.find((one) => one.column === column);
  const diameter = diameterOf(size, standard);
  if (cell === undefined || diameter === null) return [];
  return [{ diameter, size, row: line.row, column, typed: cell.value }];
}

/** Sizes one below another, sums beside them: each column of numbers is a kind of sum. */
function downSummaries(sheet: SheetFacts, standard: Standard): SizedLine[] {
  return (sheet.reading.summaries ?? []).flatMap(({ rows, sizes, headerRow }) => {
    if (sizes.length > 0) return [];
    const named = rows.flatMap((line) => {
      const size = sizeOfLine(sheet, line, standard);
      return size === null ? [] : [{ line, ...size }];
    });
    const columns = new Set(
      named.flatMap(({ line, at }) => line.cells.map(({ column }) => column).filter((one) => one !== at)),
    );
    return [...columns].map((column) => ({
      sums: named.flatMap(({ line, size }) => sumAt(line, column, size, standard)),
      stretches: stretchesBefore(sheet, headerRow),
    }));
  });
}

/** The first cell of a line that names a bar. */
function sizeOfLine(
  sheet: SheetFacts,
  { row }: TotalRow,
  standard: Standard,
): { size: string; at: number } | null {
  for (let column = 0; column < sheet.sheet.columnCount; column += 1) {
    const cell = sheet.sheet.cell(row, column);
    if (cell === null || cell === "") continue;
    if (typeof cell !== "string" && typeof cell !== "number") return null;
    const size = String(cell).trim();
    if (diameterOf(size, standard) !== null) return { size, at: column };
    if (typeof cell === "number") return null;
  }
  return null;
}

/** Lines under columns by size. */
function underColumns(sheet: SheetFacts, standard: Standard): SizedLine[] {
  return sheet.reading.totals.flatMap((line) => {
    const bySize = line.table?.bySize ?? [];
    if (bySize.length === 0 || line.kind === "summary") return [];
    const sums = bySize.flatMap(({ column, size }) => sumAt(line, column, size, standard));
    return sums.length < 2 ? [] : [{ sums, stretches: stretchesBefore(sheet, line.row) }];
  });
}

/** Since the last line that sums, and all bars above. */
function stretchesBefore(sheet: SheetFacts, before: number): readonly (readonly BarFacts[])[] {
  const above = sheet.bars.filter(({ row }) => row.row < before);
  let last = -1;
  const end = above[above.length - 1]?.row.row ?? 0;
  for (let row = 0; row < end; row += 1) if (sheet.reading.rowClasses[row] === "total") last = row;
  const since = above.filter(({ row }) => row.row > last);
  return since.length === above.length ? [above] : [above, since];
}
