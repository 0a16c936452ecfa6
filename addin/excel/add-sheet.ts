import { freeSheetName } from "../pane/free-sheet-name";
import type { IfSheetIsThere, SheetCell, SheetContent } from "../pane/workbook-port";
import { runBatch } from "./run-batch";
import { changesWhenTyped } from "./text-as-typed";

const TEXT_FORMAT = "@";
/** px of a character of the usual face, in points */
const POINTS_PER_CHARACTER = 5.6;

/** Adds a sheet behind the others, or empties and writes again the one of that name; gives its name. */
export async function addSheet(
  wanted: string,
  content: SheetContent,
  ifThere: IfSheetIsThere = "number",
): Promise<string> {
  return runBatch(
    async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      const held = worksheets.items.map(({ name }) => name);
      const known = held.find((name) => name.toLowerCase() === wanted.toLowerCase());
      const name = known !== undefined && ifThere === "replace" ? known : freeSheetName(wanted, held);
      const sheet = name === known ? worksheets.getItem(name) : worksheets.add(name);
      if (name === known) sheet.getRange().clear();
      write(sheet, content);
      sheet.activate();
      await context.sync();
      return name;
    },
    { oneUndoStep: true, sheet: wanted },
  );
}

function write(sheet: Excel.Worksheet, { rows, widths = [] }: SheetContent): void {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  if (columns === 0) return;
  const cells = rows.map((row) => Array.from({ length: columns }, (_, column) => row[column] ?? BLANK));
  const range = sheet.getRangeByIndexes(0, 0, rows.length, columns).untrack();
  // null leaves a format as it is
  const formats = cells.map((row) => row.map(({ value, formula }) => textFormat(value, formula)));
  if (formats.flat().some((format) => format !== null)) range.numberFormat = formats;
  range.formulas = cells.map((row) =>
    row.map(({ value, formula }) => (formula === undefined ? (value ?? "") : `=${formula}`)),
  );
  for (const [row, line] of cells.entries()) {
    const end = line.reduce((last, { bold }, column) => (bold === true ? column + 1 : last), 0);
    if (end > 0) sheet.getRangeByIndexes(row, 0, 1, end).untrack().format.font.bold = true;
  }
  for (const [column, width] of widths.entries()) {
    sheet.getRangeByIndexes(0, column, 1, 1).untrack().format.columnWidth = width * POINTS_PER_CHARACTER;
  }
}

const BLANK: SheetCell = { value: null };

function textFormat(value: SheetCell["value"], formula: string | undefined): string | null {
  const isText = typeof value === "string" && formula === undefined;
  return isText && changesWhenTyped(value) ? TEXT_FORMAT : null;
}
