import type { Area } from "./area";
import type { CellStore } from "./cell-store";
import type { CellValue } from "./typed-text";

/** What is kept of a conditional format in the file. Only formula rules can be made. */
export interface StoredConditionalFormat {
  readonly id: string;
  readonly type: string;
  readonly areas: readonly Area[];
  formula: string;
  fill: string;
  font: string;
  stopIfTrue: boolean;
}

/** What a sheet asks of its workbook. */
export interface BookHome {
  readonly changedBy: "ThisLocalAddin" | "Unknown";
  readonly calculated: { readonly sheet: string; readonly markAllDirty: boolean }[];
  nextId(): number;
  /** Keeps how to take a change back. */
  journal(takeBack: () => void): void;
  emit(type: number, target: string, payload: object): void;
  select(place: { readonly sheet: SheetHome; readonly area: Area }): void;
  calculate(formula: string, sheet: string): CellValue;
  place(sheet: SheetHome): number;
  activate(sheet: SheetHome): void;
  remove(sheet: SheetHome): void;
  emitSheet(kind: "named" | "shown", sheet: SheetHome): void;
}

/** What a range asks of its sheet. */
export interface SheetHome {
  readonly book: BookHome;
  readonly Id: string;
  readonly quotedName: string;
  readonly cells: CellStore;
  readonly conditional: StoredConditionalFormat[];
  readonly merges: Area[];
  readonly hiddenRows: Set<number>;
  readonly hiddenColumns: Set<number>;
  write(row: number, column: number, value: unknown): void;
  /** Refuses a change of format on a protected sheet, as Excel does. */
  guardFormats(): void;
  /** Refuses a change of locked cells on a protected sheet. */
  guardCells(area: Area): void;
  changed(area: Area): void;
}
