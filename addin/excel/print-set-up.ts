import type { PrintSetUp } from "../workbook/added-sheet";
import { excelErrorCode, runBatch } from "./run-batch";

/**
 * Sets a sheet on its side, as wide as the paper, in a request of its own: Excel refuses it where the
 * machine has no printer, and the sheet stands all the same.
 */
export async function setUpPrint(name: string, { titleRows, areas, isLetter }: PrintSetUp): Promise<void> {
  try {
    await runBatch(
      async (context) => {
        const sheet = context.workbook.worksheets.getItem(name);
        const { pageLayout } = sheet;
        pageLayout.setPrintArea(sheet.getRanges(areas.join(",")).untrack());
        pageLayout.setPrintTitleRows(`$1:$${titleRows}`);
        pageLayout.orientation = "Landscape";
        pageLayout.zoom = { horizontalFitToPages: 1 };
        pageLayout.paperSize = isLetter ? "Letter" : "A4";
        await context.sync();
      },
      { sheet: name },
    );
  } catch (error) {
    if (excelErrorCode(error) === null) throw error;
  }
}
