import type { ColumnKind, ColumnUnit } from "../bar-row";
import type { Cell } from "../sheet";

/** What header finding asks of a sheet. */
export interface HeaderSource {
  readonly rowCount: number;
  cells(row: number): readonly Cell[];
  /** the text of a cell merged over several columns, at each of them */
  mergedText(row: number, column: number): string | null;
  /** a user's correction for this header text or column */
  correction(
    text: string,
    column: number,
  ): { kind?: ColumnKind | "ignored" | undefined; unit?: ColumnUnit | undefined } | null;
}
