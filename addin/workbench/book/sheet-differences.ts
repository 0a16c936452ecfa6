import {
  BooleanNumber,
  type ICellData,
  type IStyleData,
  type IWorksheetData,
  type Nullable,
} from "@univerjs/core";
import type { LookChange } from "../../workbook/look-change";
import type { CellRange, LineChange, SheetChanges, SheetFilter } from "../../workbook/sheet-changes";
import type { CellFormat } from "../../xlsx/read/cell-styles";
import type { GridSheetNow } from "./book-changes";
import { lookChange } from "./grid-looks";
import { DIGIT, PADDING, PX_PER_POINT } from "./to-grid-data";

/** A look as a cell names it: by the id that its workbook keeps it under, or itself. */
export type NamedLook = Nullable<IStyleData | string>;

/** How a sheet of the grid stands now, beside its cells. */
export interface GridFrameNow {
  readonly rowData: Readonly<Record<number, Nullable<Line>>>;
  readonly columnData: Readonly<Record<number, Nullable<Line>>>;
  readonly merges: readonly CellRange[];
  readonly frozen: { readonly rows: number; readonly columns: number };
  /** rows that a filter leaves out */
  readonly filteredOut: ReadonlySet<number>;
  readonly filter: SheetFilter | null;
}

interface Line {
  readonly h?: number;
  readonly ia?: BooleanNumber;
  readonly w?: number;
  readonly hd?: BooleanNumber;
  readonly s?: NamedLook;
}

/** Both sides' way from a named look to the look. */
export interface Looks {
  before(look: NamedLook): Nullable<IStyleData>;
  now(look: NamedLook): Nullable<IStyleData>;
  readonly usual: Partial<CellFormat>;
}

/** What of a sheet's looks and lines is another than it opened with. */
export function sheetDifferences(
  opened: Partial<IWorksheetData>,
  filterBefore: SheetFilter | null,
  filteredBefore: ReadonlySet<number>,
  now: GridSheetNow,
  frame: GridFrameNow,
  looks: Looks,
): SheetChanges {
  const changeOf = lookChanges(looks);
  const cellsBefore = (opened.cellData ?? {}) as Record<number, Record<number, ICellData>>;
  const changed: { row: number; column: number; change: LookChange }[] = [];
  for (const [row, cells] of now.cells) {
    for (const [column, cell] of cells) {
      const change = changeOf(cellsBefore[row]?.[column]?.s, cell.s);
      if (change !== null) changed.push({ row, column, change });
    }
  }
  for (const [row, cells] of Object.entries(cellsBefore)) {
    for (const [column, cell] of Object.entries(cells)) {
      if (!cell.s || now.cells.get(Number(row))?.has(Number(column))) continue;
      const change = changeOf(cell.s, null);
      if (change !== null) changed.push({ row: Number(row), column: Number(column), change });
    }
  }
  const rows = lineChanges(opened.rowData ?? {}, frame.rowData, changeOf, rowSize, filteredBefore, frame);
  const columns = lineChanges(opened.columnData ?? {}, frame.columnData, changeOf, columnSize);
  const freeze = opened.freeze;
  const isFrozenAnew =
    (freeze?.ySplit ?? 0) !== frame.frozen.rows || (freeze?.xSplit ?? 0) !== frame.frozen.columns;
  const mergedBefore = (opened.mergeData ?? []).map(
    ({ startRow, startColumn, endRow, endColumn }): CellRange => ({
      top: startRow,
      left: startColumn,
      bottom: endRow,
      right: endColumn,
    }),
  );
  return {
    ...(changed.length > 0 && { looks: changed }),
    ...(rows.size > 0 && { rows }),
    ...(columns.size > 0 && { columns }),
    ...(isFrozenAnew && { frozen: frame.frozen }),
    ...(JSON.stringify(filterBefore) !== JSON.stringify(frame.filter) && { filter: frame.filter }),
    ...(rangeKeys(mergedBefore) !== rangeKeys(frame.merges) && { merges: frame.merges }),
  };
}

const rangeKeys = (ranges: readonly CellRange[]): string =>
  ranges
    .map(({ top, left, bottom, right }) => [top, left, bottom, right].join(" "))
    .sort()
    .join(",");

/** Each pair of looks is compared once. */
function lookChanges({ before, now, usual }: Looks) {
  const known = new Map<string, LookChange | null>();
  return (was: NamedLook, is: NamedLook): LookChange | null => {
    if (!was && !is) return null;
    const key = `${nameOf(was)} ${nameOf(is)}`;
    let change = known.get(key);
    if (change === undefined) {
      change = lookChange(before(was), now(is), usual);
      known.set(key, change);
    }
    return change;
  };
}

const nameOf = (look: NamedLook): string => (typeof look === "string" ? look : JSON.stringify(look ?? null));

/** points; a row that is as high as its words has none of its own */
function rowSize({ h, ia }: Line): number | null {
  return h === undefined || ia === BooleanNumber.TRUE ? null : round(h / PX_PER_POINT);
}

/** characters */
function columnSize({ w }: Line): number | null {
  return w === undefined ? null : round(Math.max(0, w - PADDING) / DIGIT);
}

const round = (size: number): number => Math.round(size * 100) / 100;

function lineChanges(
  before: Readonly<Record<number, Nullable<Line>>>,
  now: Readonly<Record<number, Nullable<Line>>>,
  changeOf: (was: NamedLook, is: NamedLook) => LookChange | null,
  sizeOf: (line: Line) => number | null,
  filteredBefore: ReadonlySet<number> = new Set(),
  { filteredOut }: Pick<GridFrameNow, "filteredOut"> = { filteredOut: new Set() },
): ReadonlyMap<number, LineChange> {
  const changes = new Map<number, LineChange>();
  const all = new Set([...Object.keys(before), ...Object.keys(now)].map(Number));
  for (const line of [...filteredBefore, ...filteredOut]) all.add(line);
  for (const line of all) {
    const was = before[line] ?? {};
    const is = now[line] ?? {};
    const size = sizeOf(is);
    const isHidden = is.hd === BooleanNumber.TRUE || filteredOut.has(line);
    const wasHidden = was.hd === BooleanNumber.TRUE || filteredBefore.has(line);
    const look = changeOf(was.s, is.s);
    const change: LineChange = {
      ...(size !== sizeOf(was) && { size }),
      ...(isHidden !== wasHidden && { hidden: isHidden }),
      ...(look !== null && { look }),
    };
    if (Object.keys(change).length > 0) changes.set(line, change);
  }
  return changes;
}
