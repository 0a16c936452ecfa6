import type { ScheduleReading, Sheet } from "../../core/schedule";
import { columnWords, explainReading, explainRows, rowReasonText } from "../../core/schedule";
import type { Streams } from "./streams";

const UNIT_WORDS = {
  written: "as its header says",
  standard: "the unit of the standard",
  magnitude: "by the size of its numbers",
  dimensions: "so that the dimensions make up the lengths",
  "against-header": "against its header, by the size of its numbers",
  arithmetic: "by the arithmetic of the rows",
  user: "as its user said",
} as const;

/** `--explain`: for each column and each row what it was taken for, and why. */
export function printExplained(sheet: Sheet, reading: ScheduleReading, streams: Streams): void {
  const { columns, held } = explainReading(sheet, reading);
  streams.result(`how sheet "${sheet.name}" was read`);
  if (held !== null) streams.result(`  totals are held back: ${held}`);
  for (const { column, header, kind, unit, by, unitBy, kept, tested } of columns) {
    const inUnit = unit === null ? "" : ` in ${unit}${unitBy === null ? "" : ` (${UNIT_WORDS[unitBy]})`}`;
    const agree =
      kept === null || tested === null ? "" : `; ${Math.round(kept)} of ${Math.round(tested)} rows agree`;
    streams.result(`  column ${column} "${header}": ${columnWords(kind)}${inUnit}, by ${by}${agree}`);
  }
  for (const { row, class: rowClass, because } of explainRows(sheet, reading)) {
    streams.result(`  row ${row}: ${rowClass}: ${rowReasonText(because)}`);
  }
}
