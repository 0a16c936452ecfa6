import type { ScheduleReading, Sheet } from "../../core/schedule";
import { columnReasonText, explainReading, explainRows, rowReasonText } from "../../core/schedule";
import type { Streams } from "./streams";

/** `--explain`: for each column and each row what it was taken for, and why. */
export function printExplained(sheet: Sheet, reading: ScheduleReading, streams: Streams): void {
  const { columns, held } = explainReading(sheet, reading);
  streams.result(`how sheet "${sheet.name}" was read`);
  if (held !== null) streams.result(`  totals are held back: ${held}`);
  for (const column of columns)
    streams.result(`  column ${column.column} "${column.header}": ${columnReasonText(column)}`);
  for (const { row, class: rowClass, because } of explainRows(sheet, reading)) {
    streams.result(`  row ${row}: ${rowClass}: ${rowReasonText(because)}`);
  }
}
