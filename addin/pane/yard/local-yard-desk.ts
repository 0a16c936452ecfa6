import { settingsFromText } from "../../../core/audit";
import { SETTING_NAMES } from "../../workbook/setting-names";
import { openWorkbook } from "../../xlsx/read/open-workbook";
import { workbookSetting } from "../../xlsx/read/workbook-setting";
import { standardAsked } from "../desk/standard-asked";
import { comparisonView } from "./make-comparison-view";
import { findingsContent } from "./make-findings-content";
import { makePage } from "./make-page";
import { totalsView } from "./make-totals-view";
import type { YardDesk } from "./yard-desk";

/** A yard desk that works where it stands. */
export function createLocalYardDesk(): YardDesk {
  return {
    totals: async ({ sheet, standard, settings }) =>
      totalsView(sheet, standardAsked(standard), settingsFromText(settings)),
    findings: async (question) => findingsContent(question, standardAsked(question.standard)),
    page: async (kind, question) => makePage(kind, question, standardAsked(question.standard)),
    async compare({ sheet, standard, settings: kept }, older) {
      const asked = standardAsked(standard);
      const settings = settingsFromText(kept);
      if (!(older instanceof Uint8Array)) {
        const side = { name: `sheet ${older.name}`, sheets: [older], settings };
        return comparisonView(sheet, settings, side, asked);
      }
      const book = openWorkbook(older);
      const same = book.sheet(sheet.name);
      const listings = same === undefined ? book.sheets.filter(({ visible }) => visible) : [same];
      const side = {
        name: "the file",
        sheets: listings.map(({ name }) => book.read(name)),
        settings: settingsFromText(workbookSetting(book, SETTING_NAMES.audit)),
      };
      return comparisonView(sheet, settings, side, asked);
    },
  };
}
