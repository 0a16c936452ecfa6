import { freeSheetName } from "../workbook/free-sheet-name";
import type { IfSheetIsThere, SheetCell, SheetContent } from "../workbook/workbook-port";
import { CHART_NAME, drawChart } from "./draw-chart";
import { setUpPrint } from "./print-set-up";
import { runBatch } from "./run-batch";
import { applyLooks } from "./sheet-looks";
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
  const added = await runBatch(
    async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      const held = worksheets.items.map(({ name }) => name);
      const known = held.find((name) => name.toLowerCase() === wanted.toLowerCase());
      const name = known !== undefined && ifThere === "replace" ? known : freeSheetName(wanted, held);
      const sheet = name === known ? worksheets.getItem(name) : worksheets.add(name);
      if (name === known) {
        sheet.getRange().clear();
        sheet.charts.getItemOrNullObject(CHART_NAME).delete();
      }
      write(sheet, name, content);
      if (content.frozenRows !== undefined) sheet.freezePanes.freezeRows(content.frozenRows);
      if (content.chart !== undefined) drawChart(sheet, content.chart);
      sheet.activate();
      await context.sync();
      return name;
    },
    { oneUndoStep: true, sheet: wanted },
  );
  if (content.print !== undefined) await setUpPrint(added, content.print);
  return added;
}

function write(sheet: Excel.Worksheet, name: string, { rows, widths = [] }: SheetContent): void {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  if (columns === 0) return;
  const cells = rows.map((row) => Array.from({ length: columns }, (_, column) => row[column] ?? BLANK));
  const range = sheet.getRangeByIndexes(0, 0, rows.length, columns).untrack();
  // null leaves a format as it is
  const formats = cells.map((row) => row.map(formatOf));
  if (formats.flat().some((format) => format !== null)) range.numberFormat = formats;
  range.formulas = cells.map((row) => row.map((cell) => entry(cell, name)));
  for (const [column, width] of widths.entries()) {
    sheet.getRangeByIndexes(0, column, 1, 1).untrack().format.columnWidth = width * POINTS_PER_CHARACTER;
  }
  applyLooks(sheet, cells);
}

const BLANK: SheetCell = { value: null };

/** What is typed into a cell. A link is a formula, so that thousands of them still go in one write. */
function entry({ value, formula, link }: SheetCell, own: string): string | number {
  if (formula !== undefined) return `=${formula}`;
  if (link === undefined || value === null) return value ?? "";
  const place = `#'${(link.sheet ?? own).replaceAll("'", "''")}'!${link.cell}`;
  return `=HYPERLINK(${quoted(place)},${typeof value === "number" ? value : quoted(value)})`;
}

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

function formatOf({ value, formula, link, format }: SheetCell): string | null {
  if (format !== undefined) return format;
  const isText = typeof value === "string" && formula === undefined && link === undefined;
  return isText && changesWhenTyped(value) ? TEXT_FORMAT : null;
}
