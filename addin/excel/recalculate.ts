import { excelErrorCode, runBatch } from "./run-batch";

const CELLS_PER_READ = 50_000;
/** `=BAR.MASS(...)`, or as Excel writes it while the add-in is away. */
const OUR_FUNCTION = /(?:^|[^A-Z0-9_.])(?:_xldudf_)?BAR[._][A-Z]/i;

/** Recalculates the sheets that hold a BAR formula; gives how many such formulas there are. */
export async function recalculate(): Promise<number> {
  return runBatch(async (context) => {
    const sheets = context.workbook.worksheets.load("items/name");
    await context.sync();
    let total = 0;
    const holding: Excel.Worksheet[] = [];
    for (const formulas of await formulasOf(context, sheets.items)) {
      const count = formulas.rows.flat().filter(isOurFormula).length;
      total += count;
      if (count > 0) holding.push(formulas.sheet);
    }
    for (const sheet of holding) sheet.calculate(true);
    if (holding.length > 0) await context.sync();
    return total;
  });
}

interface SheetFormulas {
  readonly sheet: Excel.Worksheet;
  readonly rows: readonly (readonly unknown[])[];
}

async function formulasOf(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
): Promise<readonly SheetFormulas[]> {
  const asked = sheets.map((sheet) => ({
    sheet,
    used: sheet.getUsedRangeOrNullObject(true).untrack().load("formulas"),
  }));
  try {
    await context.sync();
    if (asked.every(({ used }) => used.isNullObject || used.formulas !== null)) {
      return asked.map(({ sheet, used }) => ({ sheet, rows: used.isNullObject ? [] : used.formulas }));
    }
  } catch (error) {
    if (excelErrorCode(error) !== "ResponsePayloadSizeLimitExceeded") throw error;
  }
  const found: SheetFormulas[] = [];
  for (const sheet of sheets) found.push({ sheet, rows: await formulasByRows(context, sheet) });
  return found;
}

async function formulasByRows(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
): Promise<readonly (readonly unknown[])[]> {
  const used = sheet
    .getUsedRangeOrNullObject(true)
    .untrack()
    .load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (used.isNullObject) return [];
  const rows: (readonly unknown[])[] = [];
  const rowsAtOnce = Math.max(1, Math.floor(CELLS_PER_READ / used.columnCount));
  for (let row = 0; row < used.rowCount; row += rowsAtOnce) {
    const count = Math.min(rowsAtOnce, used.rowCount - row);
    const part = sheet.getRangeByIndexes(used.rowIndex + row, used.columnIndex, count, used.columnCount);
    part.untrack().load("formulas");
    await context.sync();
    for (const line of part.formulas) rows.push(line.filter(isOurFormula));
  }
  return rows;
}

function isOurFormula(content: unknown): boolean {
  if (typeof content !== "string" || !content.startsWith("=")) return false;
  return OUR_FUNCTION.test(content.replace(/"(?:[^"]|"")*"/g, '""'));
}
