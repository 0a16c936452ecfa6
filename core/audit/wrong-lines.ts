import type { SheetFacts } from "../bar/sheet-facts";
import { wrongCarried } from "./carried-lines";
import { grandTotals } from "./grand-totals";
import { isOneOf, type SumLine, sumLines } from "./sum-lines";
import type { SumWay, WrongSum } from "./wrong-sum";

interface WrongLine extends WrongSum, Pick<SumLine, "field"> {
  /** It is that of the rows in sight, as a filter leaves them. */
  readonly inSight?: SumLine["shown"][number];
}

/** Total lines that are not the sum of the bars above them. */
export function wrongLines(sheet: SheetFacts): readonly WrongLine[] {
  const lines = sumLines(sheet);
  const ofParts = linesOfParts(lines);
  const wrong = lines.flatMap((one) => {
    const { line, column, field, typed, sums, sumsWithStruck, shown } = one;
    if (isOneOf(typed, sums) || isOneOf(typed, sumsWithStruck) || ofParts.has(one)) return [];
    const inSight = shown.find(({ sum }) => isOneOf(typed, [sum]));
    return [{ row: line.row, column, field, typed, sums, ways: waysOf(one), ...(inSight && { inSight }) }];
  });
  return [...wrong, ...wrongCarried(sheet)];
}

/** Lines of one number that are not what the sums by size above them add up to. */
export function wrongGrandTotals(sheet: SheetFacts): readonly WrongSum[] {
  return grandTotals(sheet).flatMap(({ line, column, typed, sums, parts }) =>
    isOneOf(typed, sums) ? [] : [{ row: line.row, column, typed, sums, parts, ways: [] }],
  );
}

const ALL_SIZES = { isOfSize: false, within: 0.0005, takes: () => true } as const;

function waysOf({ stretches, field, inUnit }: SumLine): readonly SumWay[] {
  const per = field === "total" ? 1 : inUnit;
  return stretches.map((bars) => ({ ...ALL_SIZES, bars, figure: field, per }));
}

/** Lines one below another, such as "coated" and "plain", that share out the sum of the bars between them. */
function linesOfParts(lines: readonly SumLine[]): ReadonlySet<SumLine> {
  const parts = new Set<SumLine>();
  lines.forEach((first, at) => {
    const run = [first];
    let sum = first.typed;
    for (const next of lines.slice(at + 1)) {
      if (next.column !== first.column) continue;
      if (next.line.row !== (run.at(-1)?.line.row ?? 0) + 1) break;
      // the line below may say their sum, whether or not that of the bars is another
      const isTotalOfRun = run.length > 1 && isOneOf(next.typed, [sum]);
      if (!isTotalOfRun) {
        run.push(next);
        sum = Math.round((sum + next.typed) * 1e6) / 1e6;
        if (!isOneOf(sum, first.sums)) continue;
      }
      for (const one of run) parts.add(one);
      break;
    }
  });
  return parts;
}
