import { readCsv } from "../read/read-csv";
import { type NewCell, writeNewWorkbook } from "./new-workbook";

/** A workbook of one sheet with the cells of a text file, read as the command line reads them. */
export function workbookOfCsv(bytes: Uint8Array, name: string): Uint8Array {
  const sheet = readCsv(bytes, sheetName(name));
  const rows = Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_, column): NewCell => {
      const value = sheet.cell(row, column);
      // "007" stays a text when its cell is entered again
      const isNumberAsText = typeof value === "string" && value !== "" && !Number.isNaN(Number(value));
      const numberFormat = isNumberAsText ? "@" : isGrouped(sheet.shown?.(row, column)) ? GROUPED : null;
      return { value, ...(numberFormat !== null && { look: { numberFormat } }) };
    }),
  );
  return writeNewWorkbook({ sheets: [{ name: sheet.name, rows }] });
}

/** 1.101 as it stands in the file, whichever language the workbook is seen in */
const GROUPED = '#"."##0';
const isGrouped = (shown: string | undefined): boolean => /^[1-9]\d{0,2}\.\d{3}$/.test(shown ?? "");

const LONGEST = 31;

/** The file's name without its ending, as far as a sheet may be called so. */
function sheetName(file: string): string {
  const bare = file.replace(/\.[^.]*$/, "").replace(/[[\]:*?/\\]/g, " ");
  return bare.slice(0, LONGEST).replace(/^['\s]+|['\s]+$/g, "") || "Schedule";
}
