import { counted } from "../units/counted";
import type { ScheduleReading } from "./bar-row";
import { columnLetters } from "./cell-address";
import { shortened } from "./cells/longest-text";
import type { Sheet } from "./sheet";

type Tables = Pick<ScheduleReading, "tables">;

/** The columns that nobody sees and every bar is read by, with their headings and the sheet; null where there are none. */
export function hiddenColumnWords(sheet: Sheet, reading: Tables): string | null {
  const words = hiddenColumnsRead(sheet, reading);
  return words === null ? null : `sheet "${sheet.name}": ${words}`;
}

/** The same without the sheet's name. */
export function hiddenColumnsRead(sheet: Sheet, { tables }: Tables): string | null {
  const hidden = new Map<number, string>();
  for (const { columns } of tables)
    for (const { column, header, hidden: isHidden } of columns.values())
      if (isHidden === true) hidden.set(column, header.trim());
  if (hidden.size === 0) return null;
  const place = (column: number): string =>
    sheet.isTurned === true ? `row ${sheet.left + column + 1}` : columnLetters(sheet.left + column);
  const named = [...hidden]
    .sort(([one], [other]) => one - other)
    .map(([column, header]) => (header === "" ? place(column) : `"${shortened(header)}" (${place(column)})`));
  return `${counted(hidden.size, "hidden column")} read all the same: ${named.join(", ")}`;
}
