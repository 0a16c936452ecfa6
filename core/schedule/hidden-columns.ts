import { counted } from "../units/counted";
import type { ScheduleReading } from "./bar-row";
import { columnLetters } from "./cell-address";
import { shortened } from "./cells/longest-text";
import type { Sheet } from "./sheet";

/** The columns that nobody sees and every bar is read by, with their headings; null where there are none. */
export function hiddenColumnWords(sheet: Sheet, { tables }: Pick<ScheduleReading, "tables">): string | null {
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
  return `sheet "${sheet.name}": ${counted(hidden.size, "hidden column")} read all the same: ${named.join(", ")}`;
}
