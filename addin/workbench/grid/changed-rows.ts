import type { ICommandInfo } from "@univerjs/core";
import {
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  ReorderRangeMutation,
  SetRangeValuesMutation,
  SetRowHiddenMutation,
  SetRowVisibleMutation,
} from "@univerjs/preset-sheets-core";

interface RangeChange {
  readonly subUnitId?: string;
  readonly from?: { readonly subUnitId: string };
  readonly to?: { readonly subUnitId: string };
  readonly range?: { readonly startRow: number; readonly endRow: number };
  readonly cellValue?: Readonly<Record<string, unknown>>;
}

interface ChangedRows {
  readonly firstRow: number;
  readonly lastRow: number;
}

const LAST_ROW = 1_048_575;

/**
 * The rows that a command changes, by the id of the sheet: a range that was moved concerns two sheets; none
 * where it changes no cell.
 */
export function changedRows({
  id: command,
  params,
}: Readonly<ICommandInfo>): readonly (readonly [string, ChangedRows])[] {
  const reach = REACH.get(command);
  if (reach === undefined) return [];
  const { subUnitId, range, cellValue, from, to } = params as RangeChange;
  if (reach === "all") {
    const sheets = new Set([subUnitId, from?.subUnitId, to?.subUnitId].filter((id) => id !== undefined));
    return [...sheets].map((id) => [id, { firstRow: 0, lastRow: LAST_ROW }] as const);
  }
  const rows = range ? [range.startRow, range.endRow] : Object.keys(cellValue ?? {}).map(Number);
  if (subUnitId === undefined || rows.length === 0) return [];
  const firstRow = rows.reduce((least, row) => Math.min(least, row));
  const lastRow = reach === "below" ? LAST_ROW : rows.reduce((most, row) => Math.max(most, row));
  return [[subUnitId, { firstRow, lastRow }]];
}

/** Changes of what stands in cells, or of which cells are seen, with how far down each reaches. */
const REACH: ReadonlyMap<string, "rows" | "below" | "all"> = new Map([
  [SetRangeValuesMutation.id, "rows"],
  [InsertRowMutation.id, "below"],
  [RemoveRowMutation.id, "below"],
  [InsertColMutation.id, "all"],
  [RemoveColMutation.id, "all"],
  [MoveRowsMutation.id, "all"],
  [MoveColsMutation.id, "all"],
  [MoveRangeMutation.id, "all"],
  [ReorderRangeMutation.id, "all"],
  [SetRowHiddenMutation.id, "all"],
  [SetRowVisibleMutation.id, "all"],
]);
