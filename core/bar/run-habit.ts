import type { TableReading } from "../schedule/bar-row";
import type { Cell } from "../schedule/sheet";
import type { BarFacts } from "./bar-facts";
import { RUN_HABIT } from "./identities.data";
import { amountAlone, runInWords, spacingAlone } from "./run-in-words";
import type { SheetFacts } from "./sheet-facts";
import { textColumns } from "./text-columns";

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
    const bars = () => sheet.bars.filter(({ row }) => row.table === table);
    return offInColumns(sheet, table, bars) ?? offInWords(sheet, table, bars) ?? [];
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

function offInColumns(sheet: SheetFacts, table: TableReading, bars: () => readonly BarFacts[]) {
  const open = (table.unknownHeaders ?? []).map(({ column }) => column);
  if (open.length === 0) return null;
  const named = table.columns.get("spacing")?.column;
  const of = bars();
  const cell = ({ row }: BarFacts, column: number): Cell => sheet.sheet.cell(row.row, column);
  const { looked, least } = RUN_HABIT.value.inWords;
  const first = of.slice(0, looked);
  const spaced = (column: number): boolean =>
    first.filter((facts) => spacingAlone(cell(facts, column)) !== null).length >= least;
  for (const at of named === undefined ? textColumns(table).filter(spaced) : [named]) {
    const spacingOf = (facts: BarFacts): number | null =>
      at === named ? amountAlone(cell(facts, at)) : spacingAlone(cell(facts, at));
    for (const column of open) {
      const tested = of.flatMap((facts): Tested[] => {
        const [run, spacing] = [amountAlone(cell(facts, column)), spacingOf(facts)];
        const count = countOf(facts, table);
        return run === null || spacing === null || count === null || column === at
          ? []
          : [{ facts, count, run, spacing, gaps: null }];
      });
      const found = offAmong(tested, table, RUN_HABIT.value);
      if (found !== null) return found;
    }
  }
  return null;
}

function offInWords(sheet: SheetFacts, table: TableReading, bars: () => readonly BarFacts[]) {
  const { looked, least } = RUN_HABIT.value.inWords;
  for (const column of textColumns(table)) {
    const of = bars();
    const testedOf = (facts: BarFacts): Tested[] => {
      const text = sheet.sheet.cell(facts.row.row, column);
      const said = typeof text === "string" ? runInWords(text) : null;
      const count = countOf(facts, table);
      return said === null || count === null ? [] : [{ facts, count, ...said }];
    };
    // few lists have such words, and most need not be looked through
    if (of.slice(0, looked).flatMap(testedOf).length < least) continue;
    const found = offAmong(of.flatMap(testedOf), table, RUN_HABIT.value.inWords);
    if (found !== null) return found;
  }
  return null;
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
  if (best === null || best.kept < rows || best.kept < share * best.tested.length) return null;
  const { expected, kept, tested } = best;
  const at = countColumn(table);
  return tested
    .filter((one) => !isCount(one, expected(one)))
    .map((one) => ({ ...one, at, expected: expected(one), kept, tested: tested.length }));
}

/** Of several members or faces a count of all is so many times that of one. */
function isCount({ facts, count }: Tested, expected: number): boolean {
  if (count === expected) return true;
  const { leastOfSeveral, mostTimes } = RUN_HABIT.value;
  const times = count / expected;
  const isOfAll = facts.row.each === null || facts.row.total === count;
  if (times === 2 && expected >= leastOfSeveral) return true;
  return isOfAll && Number.isInteger(times) && expected >= leastOfSeveral && times <= mostTimes;
}
