import { SETTING_NAMES } from "../../workbook/setting-names";
import type { Workbook } from "../../xlsx/read/open-workbook";
import { workbookSetting } from "../../xlsx/read/workbook-setting";
import { UnreadableWorkbook } from "../../xlsx/unreadable-workbook";

/** What the workbook's name says; a name that is no text is handed on, so that formulas refuse it in words. */
export function standardOf(workbook: Workbook): string {
  try {
    return workbookSetting(workbook, SETTING_NAMES.standard) ?? "";
  } catch (problem) {
    if (!(problem instanceof UnreadableWorkbook)) throw problem;
    const named = SETTING_NAMES.standard.toLowerCase();
    return workbook.names.find(({ name }) => name.toLowerCase() === named)?.refersTo ?? "";
  }
}
