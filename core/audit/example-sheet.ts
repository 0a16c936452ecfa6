import { OWN_SHEET } from "../own/own-words.data";
import type { ColumnKind } from "../schedule/bar-row";
import { type Cell, type Sheet, sheetFromRows } from "../schedule/sheet";
import { SHOP_SHEET } from "../shop/shop";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { Example, ExampleRow } from "./rule";

/** The header cell of each column in an example. */
export const HEADERS: Readonly<Record<ColumnKind, string>> = {
  member: "Member",
  mark: "Bar mark",
  size: "Type and size",
  members: "No. of members",
  each: "No. of bars in each",
  total: "Total no.",
  length: "Length of each bar mm",
  shape: "Shape code",
  A: "A",
  B: "B",
  C: "C",
  D: "D",
  E: "E",
  F: "F",
  G: "G",
  H: "H",
  J: "J",
  K: "K",
  R: "R",
  grade: "Grade",
  mass: "Mass kg",
  unitMass: "Unit mass kg/m",
  pieceMass: "Mass of one bar kg",
  totalLength: "Total length m",
  spacing: "Spacing mm",
  former: "Former mm",
  coating: "Coating",
  pour: "Pour",
  drawing: "Drawing no.",
  revision: "Rev letter",
  released: "Released",
  remark: "Remarks",
};

const ALWAYS: readonly ColumnKind[] = [
  "member",
  "mark",
  "size",
  "members",
  "each",
  "total",
  "length",
  "shape",
  ...DIMENSION_LETTERS.slice(0, 5),
];

/** The sheets of a rule's example: header in row 1, bars from row 2, column A the member. */
export function exampleSheets(example: Example): readonly Sheet[] {
  const sheets = example.sheets ?? { Schedule: example.rows ?? [] };
  const schedules = Object.entries(sheets).map(([name, rows]) =>
    exampleSheet(name, rows, example.foot ?? []),
  );
  const shop = example.shop === undefined ? [] : [sheetFromRows(SHOP_SHEET, example.shop)];
  const own = example.own === undefined ? [] : [sheetFromRows(OWN_SHEET, example.own)];
  return [...schedules, ...shop, ...own];
}

function exampleSheet(name: string, rows: readonly ExampleRow[], foot: readonly ExampleRow[]): Sheet {
  const columns = exampleColumns([...rows, ...foot]);
  const cells: Cell[][] = [columns.map((column) => HEADERS[column])];
  rows.forEach((row, index) => {
    const filled = { ...defaultCells(index, row), ...row };
    cells.push(columns.map((column) => filled[column] ?? null));
  });
  for (const row of foot) cells.push(columns.map((column) => row[column] ?? null));
  return sheetFromRows(name, cells);
}

/** The columns of an example in sheet order. */
export function exampleColumns(rows: readonly ExampleRow[]): readonly ColumnKind[] {
  const used = new Set(rows.flatMap((row) => Object.keys(row) as ColumnKind[]));
  return (Object.keys(HEADERS) as ColumnKind[]).filter(
    (column) => ALWAYS.includes(column) || used.has(column),
  );
}

function defaultCells(index: number, row: ExampleRow): ExampleRow {
  const mark = String(index + 1).padStart(2, "0");
  const counts: ExampleRow =
    "total" in row || "each" in row || "members" in row ? {} : { members: 1, each: 2, total: 2 };
  return { member: "B1", mark, ...counts };
}
