import { parseAddress } from "../workbook/cell-address";
import type { Unsubscribe } from "../workbook/workbook-port";
import { runBatch } from "./run-batch";

const LAST_ROW = 1_048_575;

/** Tells where the user selects, by the sheet's name and the first cell, rows and columns from 0. */
export function onSelection(
  listener: (place: { sheet: string; row: number; column: number }) => void,
): Unsubscribe {
  return subscribe(listener, (sheets, tell) =>
    sheets.onSelectionChanged.add(async ({ address, worksheetId }) => {
      const { firstRow, firstColumn } = addressCorners(address);
      const sheet = await sheetName(worksheetId);
      if (sheet !== null) tell({ sheet, row: firstRow, column: firstColumn });
    }),
  );
}

/**
 * Tells which rows were changed, rows from 0. Rows put in or taken out move every row below. What the
 * add-in itself wrote is left out where Excel says so (ExcelApi 1.14).
 */
export function onChange(
  listener: (place: { sheet: string; firstRow: number; lastRow: number }) => void,
): Unsubscribe {
  return subscribe(listener, (sheets, tell) =>
    sheets.onChanged.add(async ({ address, worksheetId, changeType, triggerSource }) => {
      if (triggerSource === "ThisLocalAddin") return;
      const { firstRow, lastRow } = addressCorners(address);
      const sheet = await sheetName(worksheetId);
      if (sheet === null) return;
      tell({ sheet, firstRow, lastRow: changeType === "RangeEdited" ? lastRow : LAST_ROW });
    }),
  );
}

/**
 * Tells that the list of sheets may have changed. Excel tells of every sheet that comes, goes or is turned
 * to; of names, places and visibility only where it has the events (Excel on the web).
 */
export function onSheets(listener: () => void): Unsubscribe {
  const stops = [
    subscribe(listener, (sheets, tell) => sheets.onAdded.add(async () => tell())),
    subscribe(listener, (sheets, tell) => sheets.onDeleted.add(async () => tell())),
    subscribe(listener, (sheets, tell) => sheets.onActivated.add(async () => tell())),
  ];
  if (Office.context.requirements.isSetSupported("ExcelApiOnline", "1.1")) {
    stops.push(
      subscribe(listener, (sheets, tell) => sheets.onNameChanged.add(async () => tell())),
      subscribe(listener, (sheets, tell) => sheets.onMoved.add(async () => tell())),
      subscribe(listener, (sheets, tell) => sheets.onVisibilityChanged.add(async () => tell())),
    );
  }
  return () => {
    for (const stop of stops) stop();
  };
}

/** Rows and first column of `B2`, `A1:C9`, `3:5`, `A:C` or the first block of a list. */
function addressCorners(address: string): { firstRow: number; lastRow: number; firstColumn: number } {
  const block = (address.split(",")[0] ?? "").replace(/^.*!/, "");
  const [first = "", last = first] = block.replaceAll("$", "").split(":");
  const start = parseAddress(/\d/.test(first) ? first.replace(/^(?=\d)/, "A") : `${first}1`);
  const end = parseAddress(/\d/.test(last) ? last.replace(/^(?=\d)/, "A") : `${last}${LAST_ROW + 1}`);
  if (start === null || end === null) return { firstRow: 0, lastRow: LAST_ROW, firstColumn: 0 };
  return { firstRow: start.row, lastRow: end.row, firstColumn: start.column };
}

/** Excel takes a while to let a listener go; it hears nothing from the moment that it was told to stop. */
function subscribe<Place extends readonly unknown[], Event>(
  listener: (...place: Place) => void,
  add: (
    sheets: Excel.WorksheetCollection,
    tell: (...place: Place) => void,
  ) => OfficeExtension.EventHandlerResult<Event>,
): Unsubscribe {
  let isOn = true;
  const added = runBatch(async (context) => {
    const handler = add(context.workbook.worksheets, (...place) => {
      if (isOn) listener(...place);
    });
    await context.sync();
    return handler;
  });
  added.catch((error: unknown) => console.error("Excel took no listener", error));
  return () => {
    isOn = false;
    added
      .then((handler) =>
        Excel.run(handler.context, async (context) => {
          handler.remove();
          await context.sync();
        }),
      )
      .catch((error: unknown) => console.error("Excel kept a listener", error));
  };
}

/** The sheet may have been renamed or deleted since the event. */
async function sheetName(id: string): Promise<string | null> {
  return runBatch(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(id).load("name");
    await context.sync();
    return sheet.isNullObject ? null : sheet.name;
  });
}
