import type { SheetFacts } from "../bar/sheet-facts";
import type { SummaryBlock, TotalRow } from "../schedule/bar-row";
import { beginsWithWord, holdsWord, plainWords } from "../schedule/cells/row-words";
import type { WrongSum } from "./wrong-sum";

/** lines before their total says anything */
const FEWEST = 2;
/** sums of rounded figures against figures rounded once */
const ROUNDED = 0.0005;
/** kg above, tonnes below; cm above, m below */
const OTHER_UNITS = [1, 100, 1000] as const;

/** Totals straight under sizes that stand one below another, and are not what those add up to: all of them, or those of the grade that they name. */
export function wrongTotalsBelow({ reading }: SheetFacts): readonly WrongSum[] {
  return (reading.summaries ?? []).flatMap((block) => {
    const columnsBySize = reading.tables.flatMap(({ bySize = [] }) => bySize.map(({ column }) => column));
    // the lines of a foot under columns by size are no sizes one below another
    const isFoot = block.rows.some(
      ({ cells }) => cells.filter(({ column }) => columnsBySize.includes(column)).length > 1,
    );
    if (block.sizes.length > 0 || isFoot) return [];
    const lines = block.rows.filter((line) => !isTotal(line));
    const totals = [...block.rows.filter(isTotal), ...below(block, reading.totals)];
    if (lines.length < FEWEST) return [];
    return totals.flatMap((total) => {
      const parts = partsOf(total, lines);
      return parts === null || parts.length < FEWEST ? [] : wrongIn(total, parts, totals);
    });
  });
}

const isTotal = ({ label }: TotalRow): boolean => {
  const plain = plainWords(label);
  return beginsWithWord("total", plain) || beginsWithWord("subtotal", plain) || holdsWord("total", plain);
};

/** The totals in the rows that follow the last line. */
function below({ rows }: SummaryBlock, all: readonly TotalRow[]): readonly TotalRow[] {
  const found: TotalRow[] = [];
  let next = (rows.at(-1)?.row ?? -1) + 1;
  for (const total of all) {
    if (total.row !== next || total.kind === "summary" || total.kind === "carried") continue;
    found.push(total);
    next += 1;
  }
  return found;
}

/** The lines that it sums; null where it says that something is added. */
function partsOf({ label, row }: TotalRow, lines: readonly TotalRow[]): readonly TotalRow[] | null {
  const before = lines.filter((line) => line.row < row);
  const words = new Set(wordsIn(label));
  const ofGrade = before.filter((line) => {
    const own = wordsIn(line.label);
    return own.length === 1 && words.has(own[0] as string);
  });
  if (ofGrade.length > 0) return ofGrade;
  return /[\d%+]/.test(label) ? null : before;
}

const wordsIn = (label: string): readonly string[] => plainWords(label).split(/[\s:]+/);

function wrongIn(
  total: TotalRow,
  parts: readonly TotalRow[],
  totals: readonly TotalRow[],
): readonly WrongSum[] {
  return total.cells.flatMap(({ column, value }) => {
    const numbers = parts.flatMap(({ cells }) => cells.filter((one) => one.column === column));
    const sum = numbers.reduce((all, part) => all + part.value, 0);
    if (numbers.length < parts.length) return [];
    const isSum = (typed: number): boolean =>
      OTHER_UNITS.some((per) => {
        const slack = numbers.length * rounding(value) * per + ROUNDED * sum;
        return Math.abs(sum - typed * per) <= slack;
      });
    // several totals may share the sum out
    const together = totals.flatMap(({ cells }) => cells.filter((one) => one.column === column));
    const shared = together.reduce((all, one) => all + one.value, 0);
    if (isSum(value) || (together.length > 1 && isSum(shared))) return [];
    if (parts.some((line) => isAcross(line, value)) || isOfAnother(column, value, parts)) return [];
    const places = parts.map(({ row }) => ({ row, column }));
    return [{ row: total.row, column, typed: value, sums: [sum], ways: [], parts: places }];
  });
}

/** The number stands out of line: it is what another column of the lines adds up to, such as that of the masses. */
function isOfAnother(column: number, total: number, parts: readonly TotalRow[]): boolean {
  const others = (parts[0]?.cells ?? []).filter((one) => one.column !== column);
  return others.some((one) => {
    const numbers = parts.flatMap(({ cells }) => cells.filter((cell) => cell.column === one.column));
    const sum = numbers.reduce((all, { value }) => all + value, 0);
    const slack = numbers.length * rounding(total) + ROUNDED * sum;
    return numbers.length === parts.length && Math.abs(sum - total) <= slack;
  });
}

/** The total is that of one line, whose sums stand side by side: the lines are one steel in several units. */
function isAcross({ cells }: TotalRow, total: number): boolean {
  const sum = cells.reduce((all, { value }) => all + value, 0);
  return cells.length >= FEWEST_BESIDE && Math.abs(sum - total) <= cells.length * rounding(total);
}

const FEWEST_BESIDE = 3;

/** half the last digit that is written */
export function rounding(typed: number): number {
  return 0.5000001 * 10 ** -(/\.(\d+)/.exec(String(typed))?.[1]?.length ?? 0);
}
