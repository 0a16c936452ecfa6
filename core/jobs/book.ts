import type { Sheet } from "../schedule/sheet";

/** Whether a user of the workbook sees the sheet; a very hidden one is not even offered to be shown. */
export type Visibility = "visible" | "hidden" | "very hidden";

/** A workbook as jobs see it, be it a file, the one that is open in Excel, or a grid. */
export interface Book {
  readonly name: string;
  /** in the order of the tabs */
  readonly sheets: readonly { readonly name: string; readonly visibility: Visibility }[];
  /** Reads a sheet of the book. */
  read(sheet: string): Sheet;
  /** A setting that the workbook keeps; null where it keeps none. */
  setting(name: string): string | null;
}
