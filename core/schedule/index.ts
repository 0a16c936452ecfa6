export type {
  BarRow,
  CellProblem,
  ColumnKind,
  ColumnReading,
  ColumnUnit,
  GuessCode,
  RemarkReading,
  RowClass,
  ScheduleReading,
  SheetGuess,
  SummaryBlock,
  TableReading,
  TotalRow,
  VaryingSet,
} from "./bar-row";
export { columnReasonText } from "./column-reason-text";
export { type ColumnsSaid, columnsSaid } from "./columns-said";
export {
  type ColumnExplained,
  explainReading,
  explainRows,
  type ReadingExplained,
  type RowExplained,
} from "./explain-reading";
export type { ColumnCorrection, ReadOptions } from "./read-options";
export type { RowReason, RowReasonCode } from "./rows/row-reason";
export { rowReasonText } from "./rows/row-reason-text";
export { type Cell, type CellError, isCellError, type Sheet, sheetFromRows } from "./sheet";
