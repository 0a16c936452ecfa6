import { settingsFromText } from "../../../core/audit";
import { SETTING_NAMES } from "../../workbook/setting-names";
import { openWorkbook } from "../../xlsx/read/open-workbook";
import { workbookSetting } from "../../xlsx/read/workbook-setting";
import type { ComparisonView } from "./comparison-view";
import type { OlderRevision } from "./engine";
import type { KeptCheck } from "./kept-check";
import { comparisonView } from "./make-comparison-view";

/** What a checked sheet changes against an older revision, a sheet or a file. */
export function compareWith(kept: KeptCheck, older: OlderRevision): ComparisonView {
  const { sheet, settings } = kept;
  if (!(older instanceof Uint8Array)) {
    return comparisonView(kept, { name: `sheet ${older.name}`, sheets: [older], settings });
  }
  const book = openWorkbook(older);
  const same = book.sheet(sheet.name);
  const listings = same === undefined ? book.sheets.filter(({ visible }) => visible) : [same];
  return comparisonView(kept, {
    name: "the file",
    sheets: listings.map(({ name }) => book.read(name)),
    settings: settingsFromText(workbookSetting(book, SETTING_NAMES.audit)),
  });
}
