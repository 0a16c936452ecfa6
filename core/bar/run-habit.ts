import type { TableReading } from "../schedule/bar-row";
import type { BarFacts } from "./bar-facts";
import { RUN_HABIT } from "./identities.data";
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

/** Rows that break the habit by which a table makes counts out of a run and a spacing that stand in columns. */
export function offRuns(sheet: SheetFacts): OffRun[] {
  return sheet.reading.tables.flatMap((table) => {
    const spacing = table.columns.get("spacing");
    if (spacing === undefined) return [];
    const bars = sheet.bars.filter(({ row }) => row.table === table);
    for (const { column } of table.unknownHeaders ?? []) {
      const found = offIn(sheet, table, bars, column);
      if (found !== null) return found;
    }
    return [];
  });
}

interface Tested {
  readonly facts: BarFacts;
  readonly count: number;
  readonly run: number;
  readonly spacing: number;
}

function offIn(
  sheet: SheetFacts,
  table: TableReading,
  bars: readonly BarFacts[],
  column: number,
): OffRun[] | null {
  const { share, rows, leastGaps } = RUN_HABIT.value;
  const at = table.columns.has("each") ? "each" : "total";
  const tested: Tested[] = [];
  for (const facts of bars) {
    const run = sheet.sheet.cell(facts.row.row, column);
    const spacing = facts.typed("spacing");
    const count = facts.row[at];
    if (typeof run !== "number" || typeof spacing !== "number" || count === null) continue;
    if (run / spacing >= leastGaps) tested.push({ facts, count, run, spacing });
  }
  let best: { way: Rounding; kept: number } | null = null;
  for (const way of WAYS) {
    const kept = tested.filter(({ count, run, spacing }) => way(run / spacing) === count).length;
    if (best === null || kept > best.kept) best = { way, kept };
  }
  if (best === null || best.kept < rows || best.kept < share * tested.length) return null;
  const { way, kept } = best;
  return tested
    .map(
      (one) => ({ ...one, at, expected: way(one.run / one.spacing), kept, tested: tested.length }) as const,
    )
    .filter(({ count, expected }) => count !== expected);
}
