import type { SheetFacts } from "../bar/sheet-facts";
import type { TotalRow } from "../schedule/bar-row";
import { allBefore, fieldOf, isOneOf, type SummedField, stretchesOf, sumOf } from "./sum-lines";
import type { WrongSum } from "./wrong-sum";

/** Sums that are carried to the next page, or brought from the one before, and are not what the bars before them make. */
export function wrongCarried(sheet: SheetFacts): readonly (WrongSum & { readonly field: SummedField })[] {
  return sheet.reading.totals.flatMap((line) => {
    if (line.kind !== "carried") return [];
    return line.cells.flatMap(({ column, value }) => {
      const field = fieldOf(sheet, line, column);
      if (field === null || (field.kind === "total" && !Number.isInteger(value))) return [];
      const { kind, inUnit, tableTop } = field;
      const lists = [allBefore(sheet, line), ...stretchesOf(sheet, line, tableTop)];
      const bars = lists.flatMap((list) => sumOf(list, kind, inUnit, false, false) ?? []);
      const carried = carriedBefore(sheet, line, kind);
      const right = [...carried, ...bars, ...carried.flatMap((one) => bars.map((sum) => one + sum))];
      if (right.length === 0 || bars.length === 0 || isOneOf(value, right)) return [];
      return [{ row: line.row, column, field: kind, typed: value, sums: right, ways: [] }];
    });
  });
}

/** What the lines before say that is carried: those of this sheet, and the last of the sheet before it. */
function carriedBefore(sheet: SheetFacts, line: TotalRow, kind: SummedField): readonly number[] {
  const at = sheet.book.sheets.indexOf(sheet);
  const before = at > 0 ? sheet.book.sheets[at - 1] : undefined;
  const own = sheet.reading.totals.filter(({ row }) => row < line.row);
  const amounts = (of: SheetFacts, lines: readonly TotalRow[]): number[] =>
    lines.flatMap((one) =>
      one.kind === "summary"
        ? []
        : one.cells.flatMap(({ column, value }) => (fieldOf(of, one, column)?.kind === kind ? [value] : [])),
    );
  const earlier = before === undefined ? [] : amounts(before, before.reading.totals).slice(-1);
  return [...amounts(sheet, own).slice(-MOST), ...earlier];
}

const MOST = 3;
