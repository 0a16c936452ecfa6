import type { TableReading } from "../schedule/bar-row";
import type { Cell } from "../schedule/sheet";
import type { BarFacts } from "./bar-facts";
import { RUN_HABIT } from "./identities.data";
import {
  gapsOf,
  type Measure,
  measureAlone,
  type RunInWords,
  runInWords,
  runNamed,
  spacingInWords,
} from "./run-in-words";
import { slipAlone } from "./run-slip-alone";
import { isCount, isTurned, type TestedRun, WAYS } from "./run-ways";
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

/** Rows that break the habit by which a table makes counts out of runs and spacings, in columns or in words. */
export function offRuns(sheet: SheetFacts): OffRun[] {
  return sheet.reading.tables.flatMap((table) => {
    const cells = cellsWithWords(sheet, table);
    const bars = remembered(() => sheet.bars.filter(({ row }) => row.table === table));
    return (
      offInWords(cells, table, bars) ??
      offInColumns(sheet, cells, table, bars) ??
      offByColumns(sheet, table, bars) ??
      offAcross(table, bars) ??
      []
    );
  });
}

/** A run and a spacing in two columns that nobody knows. */
function offByColumns({ sheet }: SheetFacts, table: TableReading, bars: Bars) {
  const { mostColumns } = RUN_HABIT.value;
  const unknown = (table.unknownHeaders ?? []).slice(0, mostColumns);
  if (table.columns.has("spacing") || unknown.length < 2) return null;
  const numbers = unknown.map(
    ({ column }) =>
      (facts: BarFacts) =>
        numberOf(sheet.cell(facts.row.row, column)),
  );
  const filled = numbers.filter((of) => isSaidOften(bars(), of));
  for (const spacingOf of filled)
    for (const runOf of filled) {
      const tested = runOf === spacingOf ? [] : testedOf(bars(), table, runOf, spacingOf);
      const found = tested.length === 0 ? null : offAmong(tested, table, RUN_HABIT.value);
      if (found !== null) return found;
    }
  return null;
}

function numberOf(cell: Cell): Measure | null {
  return typeof cell === "number" && cell > 0 ? { value: cell, unit: null } : null;
}

/** Bars of two ways of one member, each spread over the straight of the other. */
function offAcross(table: TableReading, bars: Bars) {
  if (!table.columns.has("spacing")) return null;
  const all = bars();
  const other = new Map<BarFacts, BarFacts>();
  for (let at = 0; at + 1 < all.length; at += 1) {
    const [one, next] = [all[at], all[at + 1]];
    if (one === undefined || next === undefined || other.has(one) || !isPair(one, next)) continue;
    other.set(one, next).set(next, one);
  }
  const runOf = (facts: BarFacts): Measure | null => {
    const across = other.get(facts);
    return across === undefined ? null : { value: straightOf(across), unit: "mm" };
  };
  const spacingOf = ({ row }: BarFacts): Measure | null =>
    row.spacing ? { value: row.spacing, unit: "mm" } : null;
  const tested = testedOf(all, table, runOf, spacingOf);
  const off = offAmong(tested, table, RUN_HABIT.value);
  const broken = new Set(off?.map(({ facts }) => facts));
  // links of one place go across nothing: then neither of the two keeps the way
  const isKept = (facts: BarFacts | undefined): boolean =>
    facts !== undefined && !broken.has(facts) && tested.some((one) => one.facts === facts && isWide(one));
  return off?.filter(({ facts }) => isKept(other.get(facts))) ?? null;
}

function isWide({ run, spacing }: TestedRun): boolean {
  return run >= RUN_HABIT.value.leastGaps * spacing;
}

function isPair(one: BarFacts, next: BarFacts): boolean {
  return (
    one.row.member !== null &&
    one.row.member === next.row.member &&
    Boolean(one.row.spacing && next.row.spacing) &&
    one.row.length !== null &&
    next.row.length !== null
  );
}

/** mm: the longest straight of a bar. */
function straightOf({ row }: BarFacts): number {
  const legs = row.dims.filter((dim) => dim !== null);
  return legs.length === 0 ? (row.length ?? 0) : Math.max(...legs);
}

function testedOf(
  bars: readonly BarFacts[],
  table: TableReading,
  runOf: (facts: BarFacts) => Measure | null,
  spacingOf: (facts: BarFacts) => Measure | null,
): readonly TestedRun[] {
  return bars.flatMap((facts): TestedRun[] => {
    const [run, spacing, count] = [runOf(facts), spacingOf(facts), countOf(facts, table)];
    if (run === null || spacing === null || count === null) return [];
    return [{ facts, count, run: run.value, spacing: spacing.value, gaps: gapsOf(run, spacing) }];
  });
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
    const found = offAmong(testedOf(bars(), table, runOf, spacingOf), table, RUN_HABIT.value);
    if (found !== null) return found;
  }
  return null;
}

/** A run and its spacing in one text. */
function offInWords(cells: CellsOf, table: TableReading, bars: Bars) {
  const saidOf = (facts: BarFacts) => {
    const texts = cells(facts);
    // two legs of a sketch look like a run and its spacing
    return firstOf(texts, runNamedInWords) ?? firstOf(texts, runInWords);
  };
  if (!isSaidOften(bars(), saidOf, 1)) return null;
  const tested = bars().flatMap((facts): (TestedRun & RunInWords)[] => {
    const [said, count] = [saidOf(facts), countOf(facts, table)];
    return said === null || count === null ? [] : [{ facts, count, ...said }];
  });
  const off = offAmong(tested, table, RUN_HABIT.value.inWords);
  if (off !== null) return off;
  const alone = slipAlone(tested.filter(({ isNamed }) => isNamed));
  return alone === null ? null : [{ ...alone, at: countColumn(table) }];
}

/** Few lists have such words, and most need not be looked through. */
function isSaidOften<Said>(
  bars: readonly BarFacts[],
  said: (facts: BarFacts) => Said | null,
  least = RUN_HABIT.value.inWords.least,
): boolean {
  const { looked } = RUN_HABIT.value.inWords;
  return bars.slice(0, looked).filter((facts) => said(facts) !== null).length >= least;
}

function runNamedInWords(text: string): RunInWords | null {
  const said = runInWords(text);
  return said?.isNamed === true ? said : null;
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
  all: readonly TestedRun[],
  table: TableReading,
  { rows, share }: { readonly rows: number; readonly share: number },
): OffRun[] | null {
  const { leastGaps, mostGaps } = RUN_HABIT.value;
  let best: { expected: (one: TestedRun) => number; kept: number; tested: readonly TestedRun[] } | null =
    null;
  for (const factor of FACTORS) {
    const gapsOf = ({ run, spacing, gaps }: TestedRun): number => gaps ?? (run / spacing) * factor;
    const tested = all.filter((one) => gapsOf(one) >= leastGaps && gapsOf(one) <= mostGaps);
    for (const way of WAYS) {
      const expected = (one: TestedRun): number => way(gapsOf(one));
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
  tested: readonly TestedRun[],
  off: readonly TestedRun[],
  expected: (one: TestedRun) => number,
): boolean {
  const exact = tested.filter((one) => one.count === expected(one)).length;
  const turned = off.filter((one) => isTurned(one.count, expected(one))).length;
  return off.length > 0 && turned === off.length && exact + turned === tested.length;
}
