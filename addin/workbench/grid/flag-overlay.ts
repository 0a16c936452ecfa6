import type { ICellDataForSheetInterceptor, ICommandInfo } from "@univerjs/core";
import { ICommandService, InterceptorEffectEnum } from "@univerjs/core";
import {
  INTERCEPTOR_POINT,
  InsertRowMutation,
  RemoveRowMutation,
  SheetInterceptorService,
} from "@univerjs/preset-sheets-core";
import { FLAG_FILLS } from "../../workbook/flag-fills";
import type { RowFlag } from "../../workbook/workbook-port";
import type { Grid } from "./create-grid";

/**
 * Colours rows as the grid draws them. The cells' own formats are never touched, so taking the colours
 * away shows what the user had, whatever was edited in between.
 */
export interface FlagOverlay {
  /** To be called once a first workbook is open: the grid has no drawing services before. */
  attach(): void;
  /** Replaces a sheet's flags; none clears it. */
  set(sheetId: string, flags: readonly RowFlag[]): void;
  /** A sheet's flags, moved with rows that were inserted or removed above them. */
  flags(sheetId: string): readonly RowFlag[];
  clearAll(): void;
  /** Tells whenever flags came or went. */
  onChange(listener: () => void): void;
  /** The grid turns every colour round in the dark: a fill that is nearly white would be the ground itself. */
  setDark(dark: boolean): void;
}

/** What turns into a fill that stands out from the dark ground. */
const TURNED_ROUND: Partial<Record<RowFlag["colour"], string>> = { note: "#b4b8c4" };

/** Which corners of a row's first cell are dark, for eyes that do not tell the fills apart. */
const DARK = { color: "#3a3a3a", size: 7 };
const CORNERS_EACH = 6;
const CORNERS: Readonly<Record<RowFlag["colour"], ICellDataForSheetInterceptor["markers"]>> = {
  unsafe: { tl: DARK, bl: DARK },
  unbendable: { tl: DARK },
  "off-standard": { bl: DARK },
  doubtful: { tr: DARK },
  note: undefined,
};

/** One flag a row; where bars stand in columns, one a bar. */
type FlagsByRow = ReadonlyMap<number, readonly RowFlag[]>;

interface StructuralChange {
  readonly subUnitId: string;
  readonly range: { readonly startRow: number; readonly endRow: number };
}

export function createFlagOverlay(grid: Grid): FlagOverlay {
  const bySheet = new Map<string, FlagsByRow>();
  const injector = grid.univer.__getInjector();
  const listeners: (() => void)[] = [];
  const tell = (): void => {
    for (const listener of listeners) listener();
  };
  let isAttached = false;
  let isDark = false;
  injector.get(ICommandService).onCommandExecuted((command) => follow(bySheet, command));
  return {
    attach() {
      if (isAttached) return;
      isAttached = true;
      injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
        id: "barwright-flags",
        priority: 5,
        effect: InterceptorEffectEnum.Style,
        handler(cell, { subUnitId, row, col }, next) {
          const flag = bySheet
            .get(subUnitId)
            ?.get(row)
            ?.find(({ firstColumn, lastColumn }) => col >= firstColumn && col <= lastColumn);
          if (flag === undefined) return next(cell);
          const fill = {
            ...cell?.interceptorStyle,
            bg: { rgb: (isDark ? TURNED_ROUND[flag.colour] : undefined) ?? FLAG_FILLS[flag.colour] },
            cl: { rgb: "#000000" },
          };
          // in the first cell, and again as far on as a window shows
          const isMarked = (col - flag.firstColumn) % CORNERS_EACH === 0;
          const markers = isMarked ? CORNERS[flag.colour] : undefined;
          return next({ ...cell, interceptorStyle: fill, ...(markers && { markers }) });
        },
      });
    },
    set(sheetId, flags) {
      bySheet.set(sheetId, byRow(flags));
      tell();
    },
    flags: (sheetId) => [...(bySheet.get(sheetId)?.values() ?? [])].flat(),
    clearAll() {
      bySheet.clear();
      tell();
    },
    onChange: (listener) => void listeners.push(listener),
    setDark: (dark) => {
      isDark = dark;
    },
  };
}

function byRow(flags: readonly RowFlag[]): FlagsByRow {
  const rows = new Map<number, RowFlag[]>();
  for (const flag of flags) {
    const known = rows.get(flag.row);
    if (known === undefined) rows.set(flag.row, [flag]);
    else known.push(flag);
  }
  return rows;
}

function follow(bySheet: Map<string, FlagsByRow>, command: Readonly<ICommandInfo>): void {
  const inserted = command.id === InsertRowMutation.id;
  if (!inserted && command.id !== RemoveRowMutation.id) return;
  const { subUnitId, range } = command.params as StructuralChange;
  const flags = bySheet.get(subUnitId);
  if (flags === undefined) return;
  const count = range.endRow - range.startRow + 1;
  const moved = [...flags.values()].flat().flatMap((flag) => {
    if (flag.row < range.startRow) return [flag];
    if (inserted) return [{ ...flag, row: flag.row + count }];
    return flag.row <= range.endRow ? [] : [{ ...flag, row: flag.row - count }];
  });
  bySheet.set(subUnitId, byRow(moved));
}
