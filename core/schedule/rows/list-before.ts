import type { BarRow, TableReading } from "../bar-row";
import type { Header } from "../header/find-header";
import type { HeaderColumn } from "../header/header-blocks";
import { type Carried, nothingCarried } from "./carried";

/** The list on the sheet before, which a sheet without a header may go on with. */
export interface ListBefore {
  readonly sheet: string;
  /** null where its columns do not stand in the same places */
  readonly table: TableReading | null;
  readonly last: BarRow;
}

/** Its header as it would stand right above the first row of the sheet that goes on with it. */
export function headerBefore(table: TableReading): Header {
  const { left = 0, right = 0, bySize = [], unknownHeaders = [] } = table;
  const columns = [...table.columns.values()].map(
    ({ kind, column, header, unit, inches }): HeaderColumn => ({
      kind,
      column,
      header,
      unit,
      corrected: false,
      ...(inches === undefined ? {} : { inches }),
    }),
  );
  const known = new Set([...columns, ...bySize, ...unknownHeaders].map(({ column }) => column));
  const all = Array.from({ length: right - left + 1 }, (_, place) => left + place);
  const ignored = all.filter((column) => !known.has(column));
  const block = { left, right, columns, ignored, bySize, unknown: unknownHeaders };
  return { top: 0, bottom: -1, blocks: [block] };
}

/** The member of its last bar: the first bars of this sheet may still be its. */
export function carriedBefore({ last, table }: ListBefore, grade: string | null): Carried {
  const isTyped = table?.columns.has("members") ?? last.table.columns.has("members");
  return {
    ...nothingCarried(grade),
    member: last.member,
    heading: isTyped ? null : last.member,
    members: isTyped ? null : last.members,
  };
}

/** Rows of bars that hold a size, a count and a length or dimensions, of all bar rows. */
export function wholeBars(bars: readonly BarRow[]): number {
  return bars.filter(
    ({ size, total, each, length, dims }) =>
      size !== null && (total ?? each) !== null && (length !== null || dims.length > 0),
  ).length;
}
