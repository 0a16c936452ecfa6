import type { BarFacts } from "../bar/bar-facts";
import type { SheetFacts } from "../bar/sheet-facts";
import { lapColumn } from "../schedule/columns/lap-column";

const LEAST_ROWS = 2;

/** Headings of columns that hold words beside most bars of the sheet and that no known word heads. */
export function wordsUnread(sheet: SheetFacts): readonly string[] {
  const filled = new Map<string, number>();
  for (const { answer } of sheet.answers.those(headingsOverWords))
    for (const header of answer) filled.set(header, (filled.get(header) ?? 0) + 1);
  const least = Math.max(LEAST_ROWS, Math.floor(sheet.answers.length / 2) + 1);
  return [...filled].filter(([, rows]) => rows >= least).map(([header]) => header);
}

function headingsOverWords({ row, sheet: { sheet } }: BarFacts): readonly string[] | null {
  const { table } = row;
  if ((table.unknownHeaders ?? []).length === 0) return null;
  const lap = lapColumn(table);
  const over = (table.unknownHeaders ?? []).filter(({ column, header }) => {
    const cell = sheet.cell(row.row, column);
    return column !== lap && /\p{L}/u.test(header) && typeof cell === "string" && /\p{L}/u.test(cell);
  });
  return over.length === 0 ? null : over.map(({ header }) => header.replace(/\s+/g, " ").trim());
}
