import type { Costs } from "../../../core/jobs";
import type { ColumnKind, ScheduleReading, Sheet } from "../../../core/schedule";
import { addressAt, columnLetters } from "../../../core/schedule/cell-address";
import type { Standard } from "../../../core/standards";
import { namedGroups, notInTotalWords, type ReckonedTonnage, weighedAsMadeWords } from "../../../core/totals";
import type { SheetCell, SheetContent } from "../../workbook/workbook-port";
import { isSameMass } from "./live-mass";
import { addressOf, saidIn } from "./row-cells";
import { type RowBehind, rowsBehindTotals } from "./rows-behind-totals";
import { TOTALS_MARK } from "./totals-mark";

/** Least column of the rows behind the totals, where they are needed: clear of any spilled result. */
const HELPER_LEFT = 25;
/** columns between the result and those rows, and from it to what it costs, so that it may grow */
const HELPER_GAP = 3;
const COST_COLUMNS = 5;
const HELPER_TOP = 1;
/** row of the one formula that gives the table */
const TABLE_TOP = 6;
const FORMAT = "0.000";

/**
 * The Totals sheet of a schedule: one live BAR.TONNAGE over the schedule's own columns. Where those do not
 * serve as they stand (no mass column, another mass in it, pours that stand in headings), rows behind the
 * totals refer to the schedule cell by cell, far to the right on the same sheet. Each gives what the totals
 * count, or stands as a figure, and the sheet says how many do. Waste stands apart. Beside the tonnes stands a
 * live BAR.COST where the Shop sheet holds rates.
 */
export function totalsContent(
  sheet: Sheet,
  reading: ScheduleReading,
  reckoned: ReckonedTonnage,
  {
    standard,
    costs,
    severe,
  }: {
    readonly standard: Standard;
    readonly costs: Costs | null;
    /** what is to be cleared or asked first of bars that are in the sums */
    readonly severe: readonly string[];
  },
): SheetContent {
  const { groupedBy } = reckoned;
  const { pours, bySize } = namedGroups(reckoned);
  const direct = directColumns(sheet, reading, reckoned);
  const behind = direct === null ? rowsBehindTotals(sheet, reading, reckoned, standard) : [];
  const costLeft = bySize.size + 2 + HELPER_GAP;
  const taken = costs === null ? bySize.size : costLeft + COST_COLUMNS;
  const left = Math.max(HELPER_LEFT, taken + HELPER_GAP);
  const columns = direct ?? helperColumns(left, behind.length);
  const { mass } = columns;
  const fixed = behind.filter(({ mass: { formula } }) => formula === undefined).length;
  const without = behind.length - (reckoned.masses[0]?.counted ?? 0);
  const withoutMass = `SUMPRODUCT(--(${mass}=""))`;
  const grouped = groupedBy === "pour" ? "" : ` The schedule names no pours: each line is a ${groupedBy}.`;
  const asMade = [
    ...weighedAsMadeWords(reckoned.asTyped, reckoned.tonnage.total),
    ...notInTotalWords(reckoned.notInTotal),
    ...severe,
  ].map((words) => ` As this sheet was written, ${words}.`);
  const rows: SheetCell[][] = [
    [text(TOTALS_MARK, true), text(`of ${sheet.name}, in tonnes`)],
    [text(`The table follows the schedule. Waste is not in it.${grouped}${asMade.join("")}`)],
    [
      text("Rows without a mass, in no total"),
      direct === null ? { ...formula(withoutMass), value: without } : { value: 0 },
    ],
    [text("Waste, % (yours to fill in)"), { value: null }],
    [
      text("To buy with waste, t"),
      { ...formula(`IF(ISNUMBER(B4),SUMIF(${mass},">0")/1000*(1+B4/100),"")`), format: FORMAT },
    ],
    fixed === 0
      ? []
      : [text("Rows that stand as figures: write this sheet anew when they change"), { value: fixed }],
    [formula(`BAR.TONNAGE(${columns.pours},${columns.sizes},${mass})`)],
    ...[...pours, null].map(() => [
      { value: null },
      ...[...bySize, null].map(() => ({ value: null, format: FORMAT })),
    ]),
  ];
  if (costs !== null) addCosts(rows, costLeft, columns, costs);
  if (direct === null) addHelper(rows, left, behind, groupedBy);
  return { rows, widths: [32, 18] };
}

interface Columns {
  readonly pours: string;
  readonly sizes: string;
  readonly mass: string;
}

const text = (value: string, bold = false): SheetCell => ({ value, ...(bold && { bold }) });
const formula = (words: string): SheetCell => ({ value: null, formula: words });

/** The schedule's own columns, where they say of each row what the totals count; null where they do not. */
function directColumns(
  sheet: Sheet,
  { tables, bars, rowClasses }: ScheduleReading,
  { groupedBy, masses: [masses] }: ReckonedTonnage,
): Columns | null {
  const [table, more] = tables;
  const [first, last] = [bars[0], bars.at(-1)];
  if (sheet.isTurned === true) return null;
  if (table === undefined || more !== undefined || first === undefined || last === undefined) return null;
  const column = (kind: ColumnKind): number | null => table.columns.get(kind)?.column ?? null;
  const [pour, size, mass] = [column("pour"), column("size"), column("mass")];
  if (groupedBy !== "pour" || pour === null || size === null || mass === null) return null;
  for (let row = first.row; row <= last.row; row += 1) {
    if (rowClasses[row] !== "bar" && sheet.cell(row, mass) !== null) return null;
  }
  const isPlain = bars.every((bar, index) => {
    const known = masses?.at(index) ?? null;
    return (
      known !== null &&
      isSameMass(sheet.cell(bar.row, mass), known) &&
      saidIn(sheet, bar.row, size) === known.size &&
      saidIn(sheet, bar.row, pour) === (bar.pour ?? "").trim()
    );
  });
  if (!isPlain) return null;
  const range = (at: number): string =>
    `${addressOf(sheet, first.row, at)}:${addressAt(sheet.top + last.row, sheet.left + at)}`;
  return { pours: range(pour), sizes: range(size), mass: range(mass) };
}

function helperColumns(left: number, count: number): Columns {
  const range = (column: number): string => {
    const letters = columnLetters(left + column);
    return `${letters}${HELPER_TOP + 2}:${letters}${HELPER_TOP + 1 + count}`;
  };
  return { pours: range(0), sizes: range(1), mass: range(2) };
}

/** What a formula cannot count: bends. */
const WITHOUT_BENDS = "Hours for bends are counted by the pane and by tonnage; a formula over masses cannot.";

/** The costs as a live formula, by the rates that stand on the Shop sheet then. */
function addCosts(
  rows: SheetCell[][],
  left: number,
  { pours, sizes, mass }: Columns,
  { priced, isByBends }: Costs,
): void {
  const put = putAt(rows, left);
  put(TABLE_TOP - 2, [text("By the rates of the Shop sheet, beside the net tonnes", true)]);
  if (isByBends) put(TABLE_TOP - 1, [text(WITHOUT_BENDS)]);
  put(TABLE_TOP, [formula(`BAR.COST(${sizes},${mass},${pours})`)]);
  for (let at = 0; at <= priced.pours.length; at += 1)
    put(TABLE_TOP + 1 + at, [
      { value: null },
      ...[FORMAT, FORMAT, "0.0", "0.00"].map((format) => ({ value: null, format })),
    ]);
}

/** Puts cells into a row from a column on. */
function putAt(rows: SheetCell[][], left: number) {
  return (row: number, cells: readonly SheetCell[]): void => {
    while (rows.length <= row) rows.push([]);
    const line = rows[row] as SheetCell[];
    while (line.length < left) line.push({ value: null });
    line.push(...cells);
  };
}

function addHelper(rows: SheetCell[][], left: number, behind: readonly RowBehind[], groupedBy: string): void {
  const put = putAt(rows, left);
  const head = groupedBy.charAt(0).toUpperCase() + groupedBy.slice(1);
  put(0, [text("Rows behind the totals", true)]);
  put(HELPER_TOP, [text(head, true), text("Size", true), text("Mass kg", true)]);
  for (const [index, { group, size, mass }] of behind.entries())
    put(HELPER_TOP + 1 + index, [group, size, mass]);
}
