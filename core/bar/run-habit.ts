import type { TableReading } from "../schedule/bar-row";
import type { BarFacts } from "./bar-facts";
import { RUN_HABIT } from "./identities.data";
import { gapsOf, type Measure, measureAlone, runInWords, runNamed, spacingInWords } from "./run-in-words";
import type { SheetFacts } from "./sheet-facts";

/** A row whose count is not what its run and spacing give, as the other rows of its table have it. */
export interface OffRun {
  readonly facts: BarFacts;
  readonly at: "each" | "total";
  readonly count: number;
  /** in the column's own unit, as is the spacing beside it */
  readonly run: number;
  readonly spacing: number;
  readonly expected: number;
  /** rows that keep the habit, of those with a run and a spacing */
  readonly kept: number;
  readonly tested: number;
}

type Rounding = (gaps: number) => number;

const { exact } = RUN_HABIT.value;
/** An office counts the gaps or the bars, and rounds either way: most rows of a list keep one way. */
const WAYS: readonly Rounding[] = [
  (gaps) => Math.floor(gaps + exact) + 1,
  (gaps) => Math.ceil(gaps - exact) + 1,
  (gaps) => Math.round(gaps) + 1,
  (gaps) => Math.floor(gaps + exact),
  (gaps) => Math.ceil(gaps - exact),
  (gaps) => Math.round(gaps),
];

/** Rows that break the habit by which a table makes counts out of runs and spacings, in columns or in words. */
export function offRuns(sheet: SheetFacts): OffRun[] {
  return sheet.reading.tables.flatMap((table) => {
    const cells = cellsWithWords(sheet, table);
    const bars = remembered(() => sheet.bars.filter(({ row }) => row.table === table));
    return offInWords(cells, table, bars) ?? offInColumns(sheet, cells, table, bars) ?? [];
  });
}

interface Tested {
  readonly facts: BarFacts;
  readonly count: number;
  readonly run: number;
  readonly spacing: number;
  /** run over spacing; null where the unit of one is not written */
  readonly gaps: number | null;
}

type Bars = () => readonly BarFacts[];
type CellsOf = (facts: BarFacts) => readonly string[];

/** A run in a column that nobody knows, or named in words, over the spacing of its row. */
function offInColumns(sheet: SheetFacts, cells: CellsOf, table: TableReading, bars: Bars) {
  const unknown = table.unknownHeaders ?? [];
  const spacingOf = spacingReader(cells, table);
  if (!isSaidOften(bars(), spacingOf)) return null;
  const runs = unknown.map(({ column }) => (facts: BarFacts): Measure | null => {
    const run = sheet.sheet.cell(facts.row.row, column);
    if (typeof run === "string") return measureAlone(run);
    return typeof run === "number" && run > 0 ? { value: run, unit: null } : null;
  });
  for (const runOf of [...runs, (facts: BarFacts) => firstOf(cells(facts), runNamed)]) {
    if (!isSaidOften(bars(), runOf)) continue;
    const tested = bars().flatMap((facts): Tested[] => {
      const [run, spacing, count] = [runOf(facts), spacingOf(facts), countOf(facts, table)];
      if (run === null || spacing === null || count === null) return [];
      return [{ facts, count, run: run.value, spacing: spacing.value, gaps: gapsOf(run, spacing) }];
    });
    const found = offAmong(tested, table, RUN_HABIT.value);
    if (found !== null) return found;
  }
  return null;
}

/** A run and its spacing in one text. */
function offInWords(cells: CellsOf, table: TableReading, bars: Bars) {
  const saidOf = (facts: BarFacts) => firstOf(cells(facts), runInWords);
  if (!isSaidOften(bars(), saidOf)) return null;
  const tested = bars().flatMap((facts): Tested[] => {
    const [said, count] = [saidOf(facts), countOf(facts, table)];
    return said === null || count === null ? [] : [{ facts, count, ...said }];
  });
  return offAmong(tested, table, RUN_HABIT.value.inWords);
}

/** Few lists have such words, and most need not be looked through. */
function isSaidOften<Said>(bars: readonly BarFacts[], said: (facts: BarFacts) => Said | null): boolean {
  const { looked, least } = RUN_HABIT.value.inWords;
  return bars.slice(0, looked).filter((facts) => said(facts) !== null).length >= least;
}

function firstOf<Said>(texts: readonly string[], read: (text: string) => Said | null): Said | null {
  for (const text of texts) {
    const said = read(text);
    if (said !== null) return said;
  }
  return null;
}

/** The spacing of a row: in its own column, or the one that a text of the row names. */
function spacingReader(cells: CellsOf, table: TableReading): (facts: BarFacts) => Measure | null {
  const column = table.columns.get("spacing");
  return (facts) => {
    const typed = facts.typed("spacing");
    const alone = typeof typed === "string" ? measureAlone(typed) : null;
    if (alone !== null) return alone;
    if (typeof typed !== "number") return firstOf(cells(facts), spacingInWords);
    const unit = column?.unitBy?.code === "written" ? metricUnit(column.unit) : null;
    return typed > 0 ? { value: typed, unit } : null;
  };
}

function metricUnit(unit: string | null): Measure["unit"] {
  return unit === "mm" || unit === "cm" || unit === "m" || unit === "in" ? unit : null;
}

/** The texts of a row that may say a run; behind the last table of a sheet remarks may stand without a head. */
function cellsWithWords({ sheet, reading }: SheetFacts, table: TableReading): CellsOf {
  const { left = 0, right = sheet.columnCount - 1, columns } = table;
  const isAlone = reading.tables.every((one) => (one.left ?? 0) <= (table.right ?? right));
  const numbers = new Set(NUMBERED.map((kind) => columns.get(kind)?.column ?? -1));
  const last = isAlone ? sheet.columnCount - 1 : right;
  return ({ row }) => {
    const texts: string[] = [];
    for (let column = left; column <= last; column += 1) {
      const cell = numbers.has(column) ? null : sheet.cell(row.row, column);
      if (typeof cell === "string") texts.push(cell);
    }
    return texts;
  };
}

const NUMBERED = ["size", "members", "each", "total", "length", "totalLength", "mass"] as const;

function remembered<Value>(make: () => Value): () => Value {
  let value: Value | undefined;
  return () => {
    value ??= make();
    return value;
  };
}

function countOf(facts: BarFacts, table: TableReading): number | null {
  return facts.row[countColumn(table)];
}

function countColumn(table: TableReading): "each" | "total" {
  return table.columns.has("each") ? "each" : "total";
}

/** Runs in feet over spacings in inches, in metres over centimetres and the like. */
const FACTORS = [1, 10, 12, 100, 1000] as const;

function offAmong(
  all: readonly Tested[],
  table: TableReading,
  { rows, share }: { readonly rows: number; readonly share: number },
): OffRun[] | null {
  const { leastGaps, mostGaps } = RUN_HABIT.value;
  let best: { expected: (one: Tested) => number; kept: number; tested: readonly Tested[] } | null = null;
  for (const factor of FACTORS) {
    const gapsOf = ({ run, spacing, gaps }: Tested): number => gaps ?? (run / spacing) * factor;
    const tested = all.filter((one) => gapsOf(one) >= leastGaps && gapsOf(one) <= mostGaps);
    for (const way of WAYS) {
      const expected = (one: Tested): number => way(gapsOf(one));
      const kept = tested.filter((one) => isCount(one, expected(one))).length;
      if (best === null || kept > best.kept) best = { expected, kept, tested };
    }
  }
  if (best === null || best.kept === 0) return null;
  const { expected, kept, tested } = best;
  const at = countColumn(table);
  const off = tested.filter((one) => !isCount(one, expected(one)));
  const isHabit = kept >= rows && kept >= share * tested.length;
  // two figures exchanged tell a slip where one row alone shows the way
  if (!isHabit && !isSlipAlone(tested, off, expected)) return null;
  return off.map((one) => ({ ...one, at, expected: expected(one), kept, tested: tested.length }));
}

/** Some rows count just so, and all others have figures exchanged. */
function isSlipAlone(
  tested: readonly Tested[],
  off: readonly Tested[],
  expected: (one: Tested) => number,
): boolean {
  const exact = tested.filter((one) => one.count === expected(one)).length;
  const turned = off.filter((one) => isTurned(one.count, expected(one))).length;
  return off.length > 0 && turned === off.length && exact + turned === tested.length;
}

/** "13" for "31" */
function isTurned(count: number, expected: number): boolean {
  return count >= LEAST_TURNED && String(count) === [...String(expected)].reverse().join("");
}

const LEAST_TURNED = 12;

/** Of several members or faces a count of all is so many times that of one. */
function isCount({ facts, count }: Tested, expected: number): boolean {
  if (count === expected) return true;
  const { leastOfSeveral, mostTimes } = RUN_HABIT.value;
  const times = count / expected;
  const isOfAll = facts.row.each === null || facts.row.total === count;
  if (times === 2 && expected >= leastOfSeveral) return true;
  return isOfAll && Number.isInteger(times) && expected >= leastOfSeveral && times <= mostTimes;
}
