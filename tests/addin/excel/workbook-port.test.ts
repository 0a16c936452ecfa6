import { excelWorkbook } from "../../../addin/excel/excel-workbook";
import { contains, parseArea } from "../../_support/office-host/area";
import type { FakeExcel } from "../../_support/office-host/fake-excel";
import { type OpenExcel, openInJsdom } from "../../_support/office-host/open-in-jsdom";
import type { Workbook } from "../../_support/office-host/workbook";
import { describeWorkbookPort, PORT_BOOK, type PortUnderTest } from "../workbook-port-suite";

describeWorkbookPort("the real Office.js and the fake host", async (): Promise<PortUnderTest> => {
  let open: OpenExcel = await openInJsdom();
  const book = () => open.excel.workbook;
  fill(book());
  const range = (sheet: string, cell: string) => book().Worksheets.GetItem(sheet).GetRange(cell);
  return {
    port: excelWorkbook(),
    async reopen() {
      const saved = book().save();
      open.close();
      open = await openInJsdom(saved);
      calculate(book());
      return excelWorkbook();
    },
    async shownFill(sheet, cell) {
      const { row, column } = parseArea(cell);
      const home = book().Worksheets.GetItem(sheet);
      const over = home.conditional.find(({ areas }) => areas.some((area) => contains(area, row, column)));
      return (over?.fill ?? home.cells.at(row, column).fill).toLowerCase() || null;
    },
    async setFill(sheet, cell, colour) {
      byUser(open.excel, () => {
        range(sheet, cell).Format.Fill.Color = colour;
      });
    },
    async type(sheet, cell, value) {
      byUser(open.excel, () => {
        range(sheet, cell).Values = value;
      });
      calculate(book());
    },
    async select(sheet, cell) {
      await listening();
      byUser(open.excel, () => range(sheet, cell).Select());
    },
    sheetTabs: {
      async add(name) {
        await listening();
        byUser(open.excel, () => book().addSheet(name));
      },
      async rename(sheet, name) {
        await listening();
        byUser(open.excel, () => {
          book().Worksheets.GetItem(sheet).Name = name;
        });
      },
      async move(sheet, place) {
        byUser(open.excel, () => book().move(book().Worksheets.GetItem(sheet), place));
      },
      async hide(sheet) {
        byUser(open.excel, () => {
          book().Worksheets.GetItem(sheet).Visibility = "Hidden";
        });
      },
      async remove(sheet) {
        byUser(open.excel, () => book().remove(book().Worksheets.GetItem(sheet)));
      },
    },
    async selected() {
      const [sheet = "", cell = ""] = book().GetSelectedRange().Address.split("!");
      return { sheet, cell };
    },
    close: async () => open.close(),
  };
});

function fill(book: Workbook): void {
  book.calculator = () => 0;
  for (const [index, { name, rows }] of PORT_BOOK.sheets.entries()) {
    const sheet = index === 0 ? book.active : book.addSheet(name);
    sheet.Name = name;
    for (const [row, values] of rows.entries()) {
      for (const [column, value] of values.entries()) {
        if (value === null) continue;
        const typed = typeof value === "string" && /^\d/.test(value) ? `'${value}` : value;
        sheet.write(row, column, typed);
      }
    }
  }
  const { sheet, cell, colour } = PORT_BOOK.ownFill;
  book.Worksheets.GetItem(sheet).GetRange(cell).Format.Fill.Color = colour;
  calculate(book);
  book.closeUndoStep();
}

/** As far as the suite's workbook goes: twice a cell, and any mass. */
function calculate(book: Workbook): void {
  book.calculator = (formula, name) => {
    const twice = /^=(?:(\w+)!)?([A-Z]+\d+)\*2$/.exec(formula);
    if (twice === null) return 1;
    const { row, column } = parseArea(twice[2] as string);
    return Number(book.Worksheets.GetItem(twice[1] ?? name).cells.at(row, column).value) * 2;
  };
  for (const sheet of book.sheets) {
    for (const [key, cell] of sheet.cells.entries()) {
      if (cell.formula !== "") sheet.write(Math.floor(key / 16_384), key % 16_384, cell.formula);
    }
  }
}

function byUser(excel: FakeExcel, change: () => void): void {
  excel.byUser(change);
}

/** A listener is on once the host has answered. */
const listening = () => new Promise((resolve) => setTimeout(resolve, 20));
