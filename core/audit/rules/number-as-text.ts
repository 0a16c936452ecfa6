import type { BarFacts } from "../../bar/bar-facts";
import type { ColumnKind, TableReading } from "../../schedule/bar-row";
import { defineRule } from "../rule";

const NUMBER_COLUMNS: readonly ColumnKind[] = [
  "members",
  "each",
  "total",
  "length",
  "A",
  "B",
  "C",
  "D",
  "E",
  "R",
  "mass",
];
/** A larger number is no length, count or mass, and a cell would not keep all of its digits. */
const MOST = 1e9;
const PLAIN_NUMBER = /^\s*\d+(?:\.\d+)?\s*$/;

export default defineRule({
  code: "READ105",
  name: "number-as-text",
  severity: "note",
  docs: {
    summary: "Numbers are stored as texts in some rows, so the sheet's own sums pass over them.",
    why: "A SUM over the column leaves the text out without a word, and the tonnage is short.",
    failing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 1000, length: 1000 },
          { size: "H16", shape: "00", A: 1500, length: "1500" },
          { size: "H16", shape: "00", A: 2000, length: 2000 },
        ],
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: { text: "{fields} stand as text: the sheet's own sums pass over them" },
  fixes: { number: { label: "store {fields} as numbers", safety: "safe" } },
  checkSheet(sheet, _context, report) {
    const found = sheet.answers.those(textNumbers);
    // a sheet that came as text throughout is its form, not a slip
    if (found.length * 2 > sheet.answers.length) return;
    for (const { facts, answer: edits } of found) {
      report({
        messageId: "text",
        row: facts,
        at: edits[0]?.at ?? "length",
        values: { fields: edits.map(({ at }) => at).join(", ") },
        fix: { id: "number", edits },
      });
    }
  },
});

const columnsOf = new WeakMap<TableReading, readonly number[]>();

function numberColumns(table: TableReading): readonly number[] {
  let columns = columnsOf.get(table);
  if (columns === undefined) {
    columns = NUMBER_COLUMNS.flatMap((kind) => table.columns.get(kind)?.column ?? []);
    columnsOf.set(table, columns);
  }
  return columns;
}

function holdsText({ row, sheet: { sheet } }: BarFacts): boolean {
  const columns = numberColumns(row.table);
  for (let at = 0; at < columns.length; at += 1)
    if (typeof sheet.cell(row.row, columns[at] as number) === "string") return true;
  return false;
}

function textNumbers(facts: BarFacts): readonly { at: ColumnKind; to: number }[] | null {
  if (!holdsText(facts)) return null;
  const edits: { at: ColumnKind; to: number }[] = [];
  for (const at of NUMBER_COLUMNS) {
    const typed = facts.typed(at);
    if (typeof typed !== "string" || !PLAIN_NUMBER.test(typed)) continue;
    const to = facts.inMillimetres(at, Number(typed));
    if (to <= MOST) edits.push({ at, to });
  }
  return edits.length === 0 ? null : edits;
}
