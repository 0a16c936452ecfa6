import type { ScheduleReading, Sheet } from "../../core/schedule";
import { columnReasonText, explainReading, explainRows, rowReasonText } from "../../core/schedule";
import { columnLetters } from "../../core/schedule/cell-address";
import { counted } from "../../core/units/counted";
import type { Streams } from "./streams";

/** `--explain`: for each column and each row what it was taken for, and why. */
export function printExplained(sheet: Sheet, reading: ScheduleReading, streams: Streams): void {
  const { columns, held, unread } = explainReading(sheet, reading);
  streams.result(`how sheet "${sheet.name}" was read`);
  if (held !== null) streams.result(`  totals are held back: ${held}`);
  // where bars stand in columns each field has a row of the sheet, and each bar a column
  const isTurned = sheet.isTurned === true;
  for (const column of columns)
    streams.result(
      `  ${isTurned ? "row" : "column"} ${column.column} "${column.header}": ${columnReasonText(column)}`,
    );
  for (const { column, header, filled } of unread)
    streams.result(
      `  ${isTurned ? "row" : "column"} ${column} "${header}": nothing was read of it: no known word fits its heading (filled beside ${counted(filled, "bar")})`,
    );
  for (const { row, class: rowClass, because } of explainRows(sheet, reading)) {
    const place = isTurned ? `column ${columnLetters(row - 1)}` : `row ${row}`;
    streams.result(`  ${place}: ${rowClass}: ${rowReasonText(because)}`);
  }
}
