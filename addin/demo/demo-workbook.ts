import { writeNewWorkbook } from "../xlsx/write/new-workbook";
import { looseDeflater } from "../xlsx/zip/write-zip";
import { CULVERT_SHEETS } from "./culvert-sheets";
import { DEMO_RESULTS } from "./demo-results.data";
import { type DemoResults, newSheet } from "./demo-sheet";
import { ESTIMATE_SHEET } from "./estimate-sheet";
import { EXTRAS_SHEET } from "./extras-sheet";
import { SCHEDULE_SHEET } from "./schedule-sheet";
import { DEMO_SHOP_SHEET } from "./shop-sheet";

export const DEMO_NAME = "Marrow Fen MF-014.xlsx";

export const DEMO_SHEETS = [SCHEDULE_SHEET, EXTRAS_SHEET, ESTIMATE_SHEET, DEMO_SHOP_SHEET, ...CULVERT_SHEETS];

/** Bytes of the workbook that the page opens with. Yard, job and bars are invented. */
export function demoWorkbook(): Uint8Array {
  return demoBook(DEMO_RESULTS);
}

/** The same with these results of its formulas. */
export function demoBook(results: DemoResults): Uint8Array {
  const sheets = DEMO_SHEETS.map((sheet) => newSheet(sheet, results[sheet.name]));
  const names = new Map([["Barwright.Standard", '"BS8666:2005"']]);
  // it is made at each start of the page
  return writeNewWorkbook({ sheets, names }, { newDeflater: looseDeflater });
}
