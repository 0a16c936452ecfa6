import type { BarRow, CellProblem, TableReading } from "../bar-row";
import type { Header } from "../header/find-header";
import type { HeaderColumn } from "../header/header-blocks";
import type { Sheet } from "../sheet";
import { type Carried, nothingCarried } from "./carried";

/** The list on the sheet before, which a sheet without a header may go on with. */
export interface ListBefore {
  readonly sheet: string;
  /** null where its columns do not stand in the same places */
  readonly table: TableReading | null;
  readonly last: BarRow;
  /** whose bars its bare count counts under headings that give several members */
  readonly count: CountBefore | null;
}

interface CountBefore {
  /** the words over the count */
  readonly header: string;
  readonly kind: "each" | "total";
}

/** What its own sums or words settled of the count of a table; null where that stayed open, or no heading gives members. */
export function countSettled(table: TableReading, bars: readonly BarRow[]): CountBefore | null {
  if (table.columns.has("members")) return null;
  const found = (["each", "total"] as const).filter((kind) => table.columns.has(kind));
  const [kind] = found;
  if (kind === undefined || found.length > 1) return null;
  const several = bars.filter((bar) => bar.table === table && (bar.members ?? 1) > 1);
  const isSettled = several.length > 0 && several.some((bar) => bar[kind] !== null);
  const isAsked = several.some(({ problems }) => problems?.some(isOfCount) === true);
  return isSettled && !isAsked ? { header: table.columns.get(kind)?.header ?? "", kind } : null;
}

const isOfCount = (problem: CellProblem): boolean => problem.guess === "count-of-member";

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

/** share of the bars that must be whole before a list is taken to go on from the sheet before */
const MOSTLY = 0.75;

/** Most rows of bars hold a size, a count and a length or dimensions. */
/** Rows under few known words that hold no size and no count, on a sheet among others, explain a list and are none. */
export function explainList({ elsewhere }: Sheet, bars: readonly BarRow[]): boolean {
  if (bars.some(({ sizeTyped, total, each }) => sizeTyped !== null || (total ?? each) !== null)) return false;
  return bars.length > 0 && (elsewhere?.().length ?? 0) > 0;
}

export function areMostlyWhole(bars: readonly BarRow[]): boolean {
  const whole = bars.filter(
    ({ size, total, each, length, dims }) =>
      size !== null && (total ?? each) !== null && (length !== null || dims.length > 0),
  );
  return bars.length > 0 && whole.length >= MOSTLY * bars.length;
}
