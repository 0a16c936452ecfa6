import type { IAutoFilter } from "@univerjs/sheets-filter";
import type { SheetReading } from "../../xlsx/read/read-sheet";
import { readSheetFilter } from "../../xlsx/read/sheet-filter";

/** A sheet's filter as the grid takes it, with the rows that it leaves out; null where the sheet has none. */
export function gridFilter(reading: SheetReading): IAutoFilter | null {
  const filter = readSheetFilter(reading.layout.tail);
  if (filter === null) return null;
  const { range } = filter;
  const isActive = filter.columns.length > 0;
  const cachedFilteredOut: number[] = [];
  for (let row = range.top + 1; row <= range.bottom && isActive; row += 1) {
    if (reading.isHiddenRow?.(row - reading.top)) cachedFilteredOut.push(row);
  }
  return {
    ref: {
      startRow: range.top,
      startColumn: range.left,
      endRow: range.bottom,
      endColumn: range.right,
    },
    filterColumns: filter.columns.map(({ column, values, blank, custom }) => ({
      colId: range.left + column,
      ...(custom === undefined
        ? { filters: { filters: [...(values ?? [])], ...(blank && { blank }) } }
        : { customFilters: customFilters(custom) }),
    })),
    cachedFilteredOut,
  } as IAutoFilter;
}

function customFilters({ and, tests }: NonNullable<SheetFilterCustom>) {
  return {
    ...(and && { and: 1 }),
    customFilters: tests.map(({ value, operator }) => ({
      val: value,
      ...(operator !== undefined && { operator }),
    })),
  };
}

type SheetFilterCustom = NonNullable<ReturnType<typeof readSheetFilter>>["columns"][number]["custom"];
