import type { Standard } from "../../standards/port";
import { KG_PER_UNIT, MM_PER_UNIT } from "../../units/unit-table";
import type { RowClass, TotalRow } from "../bar-row";
import { isFilled } from "../cells/is-filled";
import { massPerMetreOf } from "../cells/size-elsewhere";
import { sizeNamed } from "../header/header-blocks";
import type { Cell } from "../sheet";
import { filledColumns, labelOf } from "./row-cells";
import type { DraftRow } from "./row-draft";
import type { RowReason } from "./row-reason";
import type { SheetSums } from "./sheet-sums";
import { totalRow } from "./sum-rows";
import { commaIn } from "./sums-beside";

/** What was read of a sheet's rows, as far as its last ones may turn out to be sums. */
export interface RowsRead {
  readonly classes: RowClass[];
  readonly reasons: RowReason[];
  readonly cells: (row: number) => readonly Cell[];
  readonly standard: Standard;
}

/** sizes that come out before lines prove what they are, and lines that may not */
const FEWEST_RIGHT = 2;
const MOST_WRONG = 1;
/** lines of which one may be wrong though it has all that a bar has */
const MANY = 4;
/** masses by tables that differ */
const OTHER_TABLE = 0.015;
const EXACT = 0.0005;

/**
 * The last rows read as bars, where each names another size and a number beside it is what all bars of that size make in
 * metres, bars or mass: no bars but sums by size, whatever columns they stand under. True where there are such rows.
 */
export function takeSumsOfSizes(bars: DraftRow[], sums: SheetSums, read: RowsRead): boolean {
  const from = firstOfRun(bars);
  const lines = bars.slice(from).map((bar) => lineOf(bar, read));
  const title = lineOfTitle(bars[from], sums, read);
  const all = [...(title === null ? [] : [title]), ...lines];
  if (lines.length === 0 || from === 0) return false;
  const above = bars.slice(0, from);
  if (bars.slice(from).some(isWhole) ? !areSumsThroughout(all, above) : !areSums(all, above)) return false;
  bars.length = from;
  for (const { row } of lines) {
    read.classes[row] = "total";
    read.reasons[row] = { code: "sum-by-size" };
  }
  sums.takeLines(all.map(({ total }) => total));
  return true;
}

interface Line {
  readonly row: number;
  readonly diameter: number;
  readonly total: TotalRow;
}

/** The last bars, each of another size, without mark, shape and dimensions of their own. */
function firstOfRun(bars: readonly DraftRow[]): number {
  const seen = new Set<number>();
  let from = bars.length;
  for (let at = bars.length - 1; at >= 0; at -= 1) {
    const bar = bars[at] as DraftRow;
    const { mark, size, shape, row } = bar;
    const isNext = at === bars.length - 1 || (bars[at + 1] as DraftRow).row === row + 1;
    if (size === null || shape !== null || !isNext || seen.has(size.diameter)) break;
    // the title of the sums may stand where a mark does, before the first of them
    const isTitled = mark !== null && !/\d/.test(mark) && seen.size >= FEWEST_RIGHT - 1;
    if (mark !== null && !isTitled) break;
    // with a count and a length it is a bar, but for what stands under heads of its own
    if (isWhole(bar) && bar.table === bars[0]?.table) break;
    if (at < bars.length - 1 && bar.table !== bars[at + 1]?.table) break;
    seen.add(size.diameter);
    from = at;
    if (isTitled) break;
  }
  return from;
}

/** A bar by all that makes one. */
const isWhole = (bar: DraftRow): boolean => (bar.total ?? bar.each) !== null && bar.length !== null;

function lineOf({ row, size, table }: DraftRow, { cells }: RowsRead): Line {
  const own = cells(row);
  const filled = filledColumns(own).filter((column) => column !== table.columns.get("size")?.column);
  const total = totalRow(
    own,
    row,
    filled,
    labelOf(own, filledColumns(own)),
    "summary",
    commaIn([own], 0, own.length),
  );
  return { row, diameter: size?.diameter ?? Number.NaN, total };
}

/** The row above the run that was taken for a sum by its words names the first of the sizes: "Mass (t) | Y10 | 0.104". */
function lineOfTitle(
  first: DraftRow | undefined,
  sums: SheetSums,
  { cells, standard }: RowsRead,
): Line | null {
  const total = sums.totals.find(({ row, kind }) => row === (first?.row ?? 0) - 1 && kind !== "summary");
  const column = first?.table.columns.get("size")?.column ?? -1;
  if (total === undefined || !isFilled(cells(total.row), column)) return null;
  const named = sizeNamed(String(cells(total.row)[column]), standard);
  const diameter = standard.bars.find(({ size }) => size === named)?.diameter;
  if (diameter === undefined) return null;
  const own = total.cells.filter((one) => one.column !== column);
  return {
    row: total.row,
    diameter,
    total: { ...total, label: String(cells(total.row)[column]), cells: own, kind: "summary" },
  };
}

/** A column in which all lines but one say what the bars of their size make. */
function areSums(lines: readonly Line[], bars: readonly DraftRow[]): boolean {
  const isEnough = (right: number): boolean => right >= FEWEST_RIGHT && lines.length - right <= MOST_WRONG;
  return FIGURES.some((figure) => mostRight(lines, bars, figure).some(isEnough));
}

/** Two columns in which all lines, of many all but one, say what the bars of their size make: bars and metres, or metres and mass. */
function areSumsThroughout(lines: readonly Line[], bars: readonly DraftRow[]): boolean {
  if (lines.length < FEWEST_RIGHT) return false;
  const wrong = lines.length < MANY ? 0 : MOST_WRONG;
  const proven = FIGURES.filter((figure) =>
    mostRight(lines, bars, figure).some((right) => right >= lines.length - wrong),
  );
  return new Set(proven.map(({ of }) => of)).size >= FEWEST_RIGHT;
}

/** By column how many lines say what the bars of their size make. */
function mostRight(
  lines: readonly Line[],
  bars: readonly DraftRow[],
  { within, per, of }: Figure,
): readonly number[] {
  const columns = new Set(lines.flatMap(({ total }) => total.cells.map(({ column }) => column)));
  const made = new Map<number, number>();
  for (const bar of bars) {
    if (bar.size === null || bar.superseded === true) continue;
    made.set(bar.size.diameter, (made.get(bar.size.diameter) ?? 0) + of(bar) / per);
  }
  return [...columns].map((column) => {
    const right = lines.filter(({ diameter, total }) => {
      const typed = total.cells.find((one) => one.column === column)?.value;
      return typed !== undefined && comesOut(typed, made.get(diameter) ?? 0, within);
    });
    return right.length;
  });
}

/** Within the rounding of what is typed, and the share by which tables differ. */
export function comesOut(typed: number, made: number, within: number): boolean {
  const half = 0.5000001 * 10 ** -(/\.(\d+)/.exec(String(typed))?.[1]?.length ?? 0);
  return made > 0 && Math.abs(typed - made) <= half + within * made;
}

export const countOf = ({ total, members, each }: DraftRow): number => total ?? (members ?? 1) * (each ?? 0);
export const lengthOf = (bar: DraftRow): number => bar.totalLength ?? countOf(bar) * (bar.length ?? 0);
export const massOf = (bar: DraftRow): number =>
  bar.mass ?? (lengthOf(bar) / MM_PER_UNIT.m) * (massPerMetreOf(bar.size) ?? 0);

interface Figure {
  readonly within: number;
  readonly per: number;
  of(bar: DraftRow): number;
}

const FIGURES: readonly Figure[] = [
  ...[1, KG_PER_UNIT.t, KG_PER_UNIT.lb].map((per) => ({ within: OTHER_TABLE, per, of: massOf })),
  ...[MM_PER_UNIT.m, MM_PER_UNIT.ft].map((per) => ({ within: EXACT, per, of: lengthOf })),
  { within: 0, per: 1, of: countOf },
];
