import { writeNewWorkbook } from "../xlsx/write/new-workbook";
import { CULVERT_SHEETS } from "./culvert-sheets";
import { newSheet } from "./demo-sheet";
import { ESTIMATE_SHEET } from "./estimate-sheet";
import { EXTRAS_SHEET } from "./extras-sheet";
import { SCHEDULE_SHEET } from "./schedule-sheet";
import { DEMO_SHOP_SHEET } from "./shop-sheet";

export const DEMO_NAME = "Marrow Fen MF-014.xlsx";

/** Bytes of the workbook that the page opens with. Yard, job and bars are invented. */
export function demoWorkbook(): Uint8Array {
  return writeNewWorkbook({
    sheets: [SCHEDULE_SHEET, EXTRAS_SHEET, ESTIMATE_SHEET, DEMO_SHOP_SHEET, ...CULVERT_SHEETS].map(newSheet),
    names: new Map([["Barwright.Standard", '"BS8666:2005"']]),
  });
}
