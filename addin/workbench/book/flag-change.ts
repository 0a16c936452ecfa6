import type { SheetChanges } from "../../workbook/sheet-changes";
import type { RowFlag } from "../../workbook/workbook-port";

/** Colours that are as the file has them stay untouched, and so do the file's notes. */
export function flagChange(before: readonly RowFlag[], now: readonly RowFlag[]): SheetChanges {
  const shape = (flags: readonly RowFlag[]): string =>
    flags
      .map(({ row, firstColumn, lastColumn, colour }) => [row, firstColumn, lastColumn, colour].join(" "))
      .sort()
      .join("\n");
  if (shape(before) === shape(now)) return {};
  const notes = now
    .filter(({ note }) => note !== "")
    .map(({ row, firstColumn, note }) => ({ row, column: firstColumn, text: note }));
  return { clear: true, flags: now, notes };
}
