import { type SheetSummary, type WorkbookPort, WorkbookRefusal } from "../workbook/workbook-port";
import { addSheet } from "./add-sheet";
import { clearFlags, hasFlags, showFlags } from "./flags";
import { readSheet } from "./read-sheet";
import { recalculate } from "./recalculate";
import { runBatch } from "./run-batch";
import { Settings } from "./settings";
import { onChange, onSelection, onSheets } from "./sheet-events";
import { formulaCells, writeCells } from "./write-cells";

/** The workbook that Excel has open, behind the pane's port. Office.js must be ready. */
export function excelWorkbook(): WorkbookPort {
  const settings = new Settings();
  return {
    sheets,
    activeSheet,
    read: (name) => readSheet(name, settings),
    showFlags,
    clearFlags,
    hasFlags,
    formulaCells,
    writeCells,
    addSheet,
    goTo,
    setting: (name) => settings.read(name),
    saveSetting: (name, value) => settings.save(name, value),
    onSelection,
    onChange,
    onSheets,
    recalculate,
  };
}

async function sheets(): Promise<readonly SheetSummary[]> {
  return runBatch(async (context) => {
    const list = context.workbook.worksheets.load(
      "items/id,items/name,items/visibility,items/protection/protected",
    );
    await context.sync();
    return list.items.map((sheet) => ({
      id: sheet.id,
      name: sheet.name,
      visible: sheet.visibility === "Visible",
      isProtected: sheet.protection.protected,
    }));
  });
}

async function activeSheet(): Promise<string> {
  return runBatch(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet().load("name");
    await context.sync();
    return sheet.name;
  });
}

async function goTo(name: string, cell: string): Promise<void> {
  await runBatch(
    async (context) => {
      const sheet = context.workbook.worksheets.getItem(name).load("visibility");
      await context.sync();
      if (sheet.visibility !== "Visible") {
        throw new WorkbookRefusal(
          `sheet ${name} is hidden: unhide it (right-click a sheet's tab, Unhide), then try again`,
        );
      }
      sheet.activate();
      sheet.getRange(cell).untrack().select();
      await context.sync();
    },
    { sheet: name },
  );
}
