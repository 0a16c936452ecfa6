import { columnReasonText, explainReading, explainRows, rowReasonText } from "../../../core/schedule";
import type { ExplainedView } from "./explained-view";
import type { KeptCheck } from "./kept-check";

/** The reading of a checked sheet, as `check --explain` tells it; neighbouring rows of one reason stand once. */
export function explainedView({ sheet, audit: { report } }: KeptCheck): ExplainedView {
  const reading = report.sheets[0]?.reading;
  if (reading === undefined) return { held: null, columns: [], rows: [] };
  const { columns, held } = explainReading(sheet, reading);
  const rows: {
    -readonly [Key in keyof ExplainedView["rows"][number]]: ExplainedView["rows"][number][Key];
  }[] = [];
  for (const { row, class: rowClass, because } of explainRows(sheet, reading)) {
    const why = rowReasonText(because);
    const last = rows.at(-1);
    if (last !== undefined && last.last === row - 1 && last.class === rowClass && last.why === why)
      last.last = row;
    else rows.push({ first: row, last: row, class: rowClass, why });
  }
  return {
    held,
    columns: columns.map((column) => {
      const { column: letter, header, kept, tested } = column;
      return { letter, header, why: columnReasonText(column), kept, tested };
    }),
    rows,
  };
}
