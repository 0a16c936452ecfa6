import type { ColumnKind, ScheduleReading, Sheet } from "../../../core/schedule";
import { addressAt, columnLetters } from "../../../core/schedule/cell-address";
import type { Standard } from "../../../core/standards";
import { namedGroups, type ReckonedTonnage, weighedAsMadeWords } from "../../../core/totals";
import type { SheetCell, SheetContent } from "../../workbook/workbook-port";
import { isSameMass } from "./live-mass";
import { addressOf, saidIn } from "./row-cells";
import { type RowBehind, rowsBehindTotals } from "./rows-behind-totals";
import { TOTALS_MARK } from "./totals-mark";

/** Least column of the rows behind the totals, where they are needed: clear of any spilled result. */
const HELPER_LEFT = 25;
/** columns between the result and those rows */
const HELPER_GAP = 3;
const HELPER_TOP = 1;
const FORMAT = "0.000";

/**
 * The Totals sheet of a schedule: one live BAR.TONNAGE over the schedule's own columns. Where those do not
 * serve as they stand (no mass column, another mass in it, pours that stand in headings), rows behind the
 * totals refer to the schedule cell by cell, far to the right on the same sheet. Each gives what the totals
 * count, or stands as a figure, and the sheet says how many do. Waste stands apart.
 */
export function totalsContent(
  sheet: Sheet,
  reading: ScheduleReading,
  reckoned: ReckonedTonnage,
  standard: Standard,
): SheetContent {
  const { groupedBy } = reckoned;
  const { pours, bySize } = namedGroups(reckoned);
  const direct = directColumns(sheet, reading, reckoned);
  const behind = direct === null ? rowsBehindTotals(sheet, reading, reckoned, standard) : [];
  const left = Math.max(HELPER_LEFT, bySize.size + HELPER_GAP);
  const columns = direct ?? helperColumns(left, behind.length);
  const { mass } = columns;
  const fixed = behind.filter(({ mass: { formula } }) => formula === undefined).length;
  const without = behind.length - (reckoned.masses[0]?.counted ?? 0);
  const withoutMass = `SUMPRODUCT(--(${mass}=""))`;
  const grouped = groupedBy === "pour" ? "" : ` The schedule names no pours: each line is a ${groupedBy}.`;
  const asMade = weighedAsMadeWords(reckoned.asTyped, reckoned.tonnage.total).map(
    (words) => ` As this sheet was written, ${words}.`,
  );
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

function addHelper(rows: SheetCell[][], left: number, behind: readonly RowBehind[], groupedBy: string): void {
  const put = (row: number, cells: readonly SheetCell[]): void => {
    while (rows.length <= row) rows.push([]);
    const line = rows[row] as SheetCell[];
    while (line.length < left) line.push({ value: null });
    line.push(...cells);
  };
  const head = groupedBy.charAt(0).toUpperCase() + groupedBy.slice(1);
  put(0, [text("Rows behind the totals", true)]);
  put(HELPER_TOP, [text(head, true), text("Size", true), text("Mass kg", true)]);
  for (const [index, { group, size, mass }] of behind.entries())
    put(HELPER_TOP + 1 + index, [group, size, mass]);
}
