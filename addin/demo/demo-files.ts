import { type NewSheet, writeNewWorkbook } from "../xlsx/write/new-workbook";
import { CULVERT_SHEETS } from "./culvert-sheets";
import { newSheet } from "./demo-sheet";
import { ESTIMATE_SHEET } from "./estimate-sheet";
import { inchWorkbook, messyWorkbook } from "./examples";
import { SCHEDULE_SHEET } from "./schedule-sheet";
import { DEMO_SHOP_SHEET } from "./shop-sheet";

/** The example workbooks that the README names, by path; `bridge` is a job in which two revisions lie. */
export function demoFiles(): ReadonlyMap<string, Uint8Array> {
  const [older, newer] = CULVERT_SHEETS.map((sheet) => newSheet(sheet)) as [NewSheet, NewSheet];
  const schedule = bookOf(SCHEDULE_SHEET, DEMO_SHOP_SHEET);
  return new Map([
    ["schedule.xlsx", schedule],
    ["estimate.xlsx", bookOf(SCHEDULE_SHEET, ESTIMATE_SHEET)],
    ["old.xlsx", written([older])],
    ["new.xlsx", written([newer])],
    ["inches.xlsx", inchWorkbook()],
    ["messy.xlsx", messyWorkbook()],
    ["bridge/pump house.xlsx", schedule],
    ["bridge/culvert rev A.xlsx", written([older])],
    ["bridge/culvert rev B.xlsx", written([newer])],
  ]);
}

function bookOf(...sheets: Parameters<typeof newSheet>[0][]): Uint8Array {
  return written(sheets.map((sheet) => newSheet(sheet)));
}

function written(sheets: readonly NewSheet[]): Uint8Array {
  return writeNewWorkbook({ sheets, names: new Map([["Barwright.Standard", '"BS8666:2005"']]) });
}
