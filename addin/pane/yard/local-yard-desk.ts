import { openWorkbook } from "../../ooxml/open-workbook";
import { standardAsked } from "../desk/standard-asked";
import { comparisonView } from "./make-comparison-view";
import { makePage } from "./make-page";
import { totalsView } from "./make-totals-view";
import type { YardDesk } from "./yard-desk";

/** A yard desk that works where it stands. */
export function createLocalYardDesk(): YardDesk {
  return {
    totals: async ({ sheet, standard }) => totalsView(sheet, standardAsked(standard)),
    page: async (kind, question) => makePage(kind, question, standardAsked(question.standard)),
    async compare({ sheet, standard }, older) {
      const asked = standardAsked(standard);
      if (!(older instanceof Uint8Array)) return comparisonView(sheet, [older], `sheet ${older.name}`, asked);
      const book = openWorkbook(older);
      const same = book.sheet(sheet.name);
      const listings = same === undefined ? book.sheets.filter(({ visible }) => visible) : [same];
      const sheets = listings.map(({ name }) => book.read(name));
      return comparisonView(sheet, sheets, "the file", asked);
    },
  };
}
