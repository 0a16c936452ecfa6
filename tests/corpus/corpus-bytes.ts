import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { readCsv } from "../../addin/xlsx/read/read-csv";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { type Cell, isCellError, type Sheet } from "../../core/schedule/sheet";
import { type CorpusSchedule, cellsOf } from "./corpus-schedule";

/** The bytes of the schedule's file, as an office would hand it over. */
export function bytesOf(schedule: CorpusSchedule): Uint8Array {
  const rows = cellsOf(schedule);
  if (schedule.format === "xlsx") return writeNewWorkbook({ sheets: [{ name: "Schedule", rows }] });
  const lines = rows.map((row) =>
    row.map((cell) => csvCell(cell, schedule.delimiter)).join(schedule.delimiter),
  );
  return new TextEncoder().encode(`${lines.join("\r\n")}\r\n`);
}

/** The sheet that the product's own readers make of those bytes. */
export function sheetOfBytes(schedule: CorpusSchedule): Sheet {
  const bytes = bytesOf(schedule);
  if (schedule.format === "csv") return readCsv(bytes, "Schedule");
  return openWorkbook(bytes).read("Schedule");
}

function csvCell(cell: Cell, delimiter: string): string {
  if (cell === null) return "";
  const text = isCellError(cell) ? cell.error : String(cell);
  return text.includes(delimiter) || /["\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
