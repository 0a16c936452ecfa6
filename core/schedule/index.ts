export type {
  BarRow,
  ColumnKind,
  ScheduleReading,
} from "./bar-row";
export { columnReasonText } from "./column-reason-text";
export { type ColumnsSaid, columnsSaid } from "./columns-said";
export {
  explainReading,
  explainRows,
  type ReadingExplained,
  type RowExplained,
} from "./explain-reading";
export { rowReasonText } from "./rows/row-reason-text";
export { type Cell, isCellError, type Sheet, sheetFromRows } from "./sheet";
