import type { BarFacts } from "../../bar/bar-facts";
import type { SheetFacts } from "../../bar/sheet-facts";
import { columnLetters } from "../../schedule/cell-address";
import { shortened } from "../../schedule/cells/longest-text";
import { massPerMetreOf } from "../../schedule/cells/size-elsewhere";
import type { ColumnKind } from "../../schedule/column-kind";
import { columnWords } from "../../schedule/columns/column-words";
import { defineRule } from "../rule";

/** rows of a list from which it can be told, where most and where all stand in no total */
const FEWEST = 4;
const FEWEST_OF_ALL = 2;

export default defineRule({
  code: "READ107",
  name: "reading-failed",
  severity: "off-standard",
  docs: {
    summary: "Most rows of the sheet end in no total: the sheet was not read as it is meant.",
    why: "Next to no tonnes of a whole list is no result. A column of sizes, numbers or lengths was not found, or stands in another unit.",
    failing: [
      {
        rows: [1, 2, 3, 4, 5, 6].map((index) => ({
          ...{ mark: String(index), size: "H17", shape: "00", A: 1000, length: 1000, mass: null },
        })),
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: {
    failed:
      "{missing} of {bars} rows stand in no total, most for want of {what}: the sheet was not read as it is meant: {remedy}",
    figures:
      "{missing} of {bars} rows stand in no total, most for want of {what}: column {column} was read as {kind}, but {cells} of its cells hold none, such as {first} in {cell}: correct them",
  },
  checkSheet(sheet, _context, report) {
    const { bars } = sheet;
    if (bars.length < FEWEST_OF_ALL) return;
    const wants = new Map<string, BarFacts[]>();
    let missing = 0;
    for (const { facts, answer: what } of sheet.answers.those(lacks)) {
      missing += 1;
      const wanting = wants.get(what);
      if (wanting === undefined) wants.set(what, [facts]);
      else wanting.push(facts);
    }
    const isAll = missing === bars.length;
    if (!isAll && (missing * 2 <= bars.length || bars.length < FEWEST)) return;
    const [most] = [...wants].sort(([, one], [, other]) => other.length - one.length);
    const [what, wanting] = most ?? ["", []];
    const refused = wanting.flatMap((facts) => figureRefused(facts, what));
    const [first] = refused;
    if (first !== undefined && refused.length * 2 > wanting.length) {
      const { column, typed, row } = first;
      const at = columnLetters(sheet.sheet.left + column.column);
      report({
        messageId: "figures",
        values: {
          ...{ missing, bars: bars.length, what, cells: refused.length, first: `"${shortened(typed)}"` },
          ...{ column: `${at} "${column.header}"`, kind: columnWords(column.kind) },
          cell: `${at}${sheet.sheet.top + row + 1}`,
        },
      });
      return;
    }
    const values = { missing, bars: bars.length, what, remedy: remedyOf(what, sheet) };
    report({ messageId: "failed", values });
  },
});

/** A number in the headed column of what is wanting that can be none: the column is the right one, the number is not. */
function figureRefused({ row }: BarFacts, what: string) {
  const kinds = KINDS[what] ?? [];
  const problem = row.problems?.find(({ field }) => kinds.includes(field));
  const column = problem === undefined ? undefined : row.table.columns.get(problem.field);
  if (problem === undefined || column === undefined || column.by !== "words") return [];
  const typed = String(problem.typed).trim();
  return typed !== "" && Number.isFinite(Number(typed)) ? [{ column, typed, row: row.row }] : [];
}

/** What keeps a row out of every total; null where it is in one. */
function lacks(facts: BarFacts): string | null {
  const { row } = facts;
  if (row.mass !== null) return null;
  if (massPerMetreOf(row.size) === null) return SIZE;
  if (facts.count === null) return COUNT;
  return facts.lengthInForce === null ? LENGTH : null;
}

const SIZE = "a bar size of the standard";
const COUNT = "a number of bars";
const LENGTH = "a length";

const KINDS: Readonly<Record<string, readonly ColumnKind[]>> = {
  [SIZE]: ["size"],
  [COUNT]: ["total", "each", "members"],
  [LENGTH]: ["length"],
};
const OTHERWISE: Readonly<Record<string, string>> = {
  [SIZE]: "choose the standard that the sizes are of",
  [COUNT]: 'head the column that counts the bars "Total no.", or say what it holds',
  [LENGTH]: 'head the column of the lengths "Length mm", or say what it holds',
};

/** The column that was taken for what is wanting, and what to do about it. */
function remedyOf(what: string, { sheet, reading }: SheetFacts): string {
  const kinds = KINDS[what] ?? [];
  const columns = reading.tables.flatMap((table) => [...table.columns.values()]);
  const taken = columns.find(({ kind }) => kinds.includes(kind));
  const place =
    taken === undefined
      ? "no column of it was found"
      : `column ${columnLetters(sheet.left + taken.column)} "${taken.header}" was read as ${columnWords(taken.kind)}`;
  return `${place}; ${OTHERWISE[what] ?? ""}`;
}
