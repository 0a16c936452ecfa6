import { recalculateBook } from "../../addin/command-line/recalculate-book";
import type { DemoResult, DemoResults } from "../../addin/demo/demo-sheet";
import { DEMO_SHEETS, demoBook } from "../../addin/demo/demo-workbook";
import { parseRange } from "../../addin/workbook/cell-address";
import { functionEnvironment } from "../../addin/workbook/function-environment";
import { openWorkbook, type Workbook } from "../../addin/xlsx/read/open-workbook";
import { addressAt } from "../../core/schedule/cell-address";
import { type Cell, isCellError } from "../../core/schedule/sheet";

/** What the formulas of the demonstration come to, so that its first check waits for no calculation. */
export async function generate(): Promise<Map<string, string>> {
  const book = openWorkbook(demoBook({}));
  const results: Record<string, Record<string, DemoResult>> = {};
  const { writes } = recalculateBook(book, functionEnvironment(book, "BS8666:2005"));
  for (const [sheet, list] of writes) {
    const cells = Object.fromEntries(
      list.filter(({ formula }) => formula !== undefined).map((write) => [addressOf(write), write]),
    );
    results[sheet] = Object.fromEntries(
      Object.entries(cells).map(([address, { row, column, value, fills }]) => {
        const lines = list
          .filter((one) => one.column === column && one.row >= row)
          .map((one) => String(one.value));
        return [address, (fills?.rows ?? 1) > 1 ? lines.slice(0, fills?.rows) : stored(value)];
      }),
    );
  }
  const computed = openWorkbook(demoBook(results));
  for (const { name, rows } of DEMO_SHEETS) {
    for (const [row, values] of rows.entries()) {
      for (const [column, value] of values.entries()) {
        const sum = typeof value === "string" ? SUM.exec(value)?.groups : undefined;
        if (sum === undefined) continue;
        results[name] = { ...results[name], [addressAt(row, column)]: sumOf(computed, name, sum) };
      }
    }
  }
  const text = [
    "// Generated from the sheets beside it: npm run generate.",
    'import type { DemoResults } from "./demo-sheet";',
    "",
    "/** What the formulas of the demonstration come to, by sheet and cell. */",
    "export const DEMO_RESULTS: DemoResults = {",
    ...Object.entries(results).flatMap(([sheet, cells]) => [`  ${sheet}: {`, ...linesOf(cells), "  },"]),
    "};",
    "",
  ].join("\n");
  return new Map([["../addin/demo/demo-results.data.ts", text]]);
}

const addressOf = ({ row, column }: { row: number; column: number }): string => addressAt(row, column);

/** the three functions of spreadsheets that the demonstration asks for */
const SUM =
  /^=(?<name>SUMIF|SUM|MAXIFS)\((?:(?<sheet>\w+)!)?(?<range>\w+:\w+)(?:,"(?<above>>0)"|,\w+!(?<where>\w+:\w+),(?<is>\w+))?\)$/;

function sumOf(
  book: Workbook,
  own: string,
  { name, sheet, range, where, is }: Record<string, string | undefined>,
): number {
  const from = sheet ?? own;
  const numbers = cellsOf(book, from, range).map((cell) => (typeof cell === "number" ? cell : 0));
  if (name !== "MAXIFS") return numbers.filter((one) => one > 0).reduce((sum, one) => sum + one, 0);
  const wanted = cellsOf(book, own, `${is}:${is}`)[0];
  const which = cellsOf(book, from, where);
  return numbers.reduce((most, one, at) => (which[at] === wanted ? Math.max(most, one) : most), 0);
}

function cellsOf(book: Workbook, name: string, range = ""): Cell[] {
  const { top, left, bottom } = parseRange(range) ?? { top: 0, left: 0, bottom: -1 };
  const sheet = book.read(name);
  return Array.from({ length: bottom - top + 1 }, (_, at) =>
    sheet.cell(top + at - sheet.top, left - sheet.left),
  );
}

function stored(value: Cell): string | number {
  if (value !== null && isCellError(value)) return value.error;
  return typeof value === "number" ? value : String(value);
}

/** A line a cell, in order. */
function linesOf(cells: DemoResults[string]): string[] {
  const inOrder = Object.entries(cells).sort(([a], [b]) => a.localeCompare(b, "en", { numeric: true }));
  return inOrder.flatMap(([cell, result]) =>
    typeof result === "object"
      ? [`    ${cell}: [`, ...result.map((line) => `      ${JSON.stringify(line)},`), "    ],"]
      : [`    ${cell}: ${JSON.stringify(result)},`],
  );
}
