import { FakeExcel } from "./fake-excel";
import { installFakeExcel } from "./install";
import type { SavedWorkbook } from "./workbook";

/** What a test leaves for the page before its scripts run. */
interface PreparedWindow {
  savedWorkbook?: SavedWorkbook;
  excelSets?: Record<string, string>;
}

const prepared = window as unknown as PreparedWindow;
const excel = new FakeExcel(prepared.savedWorkbook);
Object.assign(excel.sets, prepared.excelSets ?? {});
installFakeExcel(window, excel);
