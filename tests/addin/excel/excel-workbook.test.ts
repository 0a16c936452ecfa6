import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { excelWorkbook } from "../../../addin/excel/excel-workbook";
import { type RowFlag, type WorkbookPort, WorkbookRefusal } from "../../../addin/workbook/workbook-port";
import { auditSettings } from "../../../core/audit/audit-settings";
import { settingsFromText, settingsToText } from "../../../core/audit/settings-text";
import { type OpenExcel, openInJsdom } from "../../_support/office-host/open-in-jsdom";
import type { Workbook } from "../../_support/office-host/workbook";

let open: OpenExcel;
let book: Workbook;
let port: WorkbookPort;

async function start(saved?: Parameters<typeof openInJsdom>[0], sets: Record<string, string> = {}) {
  open?.close();
  open = await openInJsdom(saved, sets);
  book = open.excel.workbook;
  port = excelWorkbook();
}

beforeEach(() => start());
afterEach(() => open.close());

const sheet = () => book.active;
const put = (address: string, values: unknown[][]) => {
  sheet().GetRange(address).Values = values;
};
const flag = (row: number, colour: RowFlag["colour"] = "unsafe"): RowFlag => ({
  row,
  firstColumn: 0,
  lastColumn: 10,
  colour,
  note: "",
});
const settled = () => new Promise((resolve) => setTimeout(resolve, 20));

describe("reading a sheet", () => {
  test("gives its cells, errors, dates, hidden rows, strike-through and merges; dates cost a second request", async () => {
    put("B2:D4", [
      ["Mark", "Size", "Length"],
      ["'01", "H16", 1250],
      ["1-2", "#N/A", ""],
    ]);
    sheet().GetRange("B3:D3").Format.Font.Strikethrough = true;
    sheet().GetRange("4:4").RowHidden = true;
    sheet().hiddenColumns.add(2);
    sheet().GetRange("B2:C2").Merge();
    const before = open.excel.requests.length;
    const read = await port.read("Sheet1");
    expect(open.excel.requests.length - before).toBe(2);
    expect([read.top, read.left, read.rowCount, read.columnCount]).toEqual([1, 1, 3, 3]);
    expect(read.cell(1, 0)).toBe("01");
    expect(read.cell(1, 2)).toBe(1250);
    expect(read.cell(2, 1)).toEqual({ error: "#N/A" });
    expect(read.cell(2, 2)).toBeNull();
    expect(read.isDate?.(2, 0)).toBe(true);
    expect(read.shown?.(2, 0)).toBe("2-Jan");
    expect(read.isDate?.(1, 2)).toBe(false);
    expect([0, 1, 2].map((row) => read.isHiddenRow?.(row))).toEqual([false, false, true]);
    expect([0, 1, 2].map((column) => read.isHiddenColumn?.(column))).toEqual([false, true, false]);
    expect(read.isStruckThrough?.(1, 2)).toBe(true);
    expect(read.datesFrom1904).toBe(false);
    book.from1904 = true;
    expect((await port.read("Sheet1")).datesFrom1904).toBe(true);
    expect(read.isStruckThrough?.(2, 2)).toBe(false);
    expect(read.merges).toEqual([{ top: 0, left: 0, bottom: 0, right: 1 }]);
  });

  test("tells which cell of a row is struck through, at one more request", async () => {
    put("A1:B1", [["a", "b"]]);
    sheet().GetRange("B1").Format.Font.Strikethrough = true;
    const read = await port.read("Sheet1");
    expect([0, 1].map((column) => read.isStruckThrough?.(0, column))).toEqual([false, true]);
  });

  test("gives an empty sheet no rows", async () => {
    expect(await port.read("Sheet1")).toMatchObject({ rowCount: 0, columnCount: 0 });
  });

  test("reads by rows where one answer would pass 5 MB", async () => {
    const wide = Array.from({ length: 9_000 }, (_, row) =>
      Array.from({ length: 20 }, (_, column) => `a remark of a usual length, row ${row} column ${column}`),
    );
    put("A1:T9000", wide);
    const read = await port.read("Sheet1");
    expect(open.excel.requests[0]?.failed).toBe("ResponsePayloadSizeLimitExceeded");
    expect(read.rowCount).toBe(9_000);
    expect(read.cell(8_999, 19)).toBe("a remark of a usual length, row 8999 column 19");
    expect(read.cell(4_321, 7)).toBe("a remark of a usual length, row 4321 column 7");
  });

  test("refuses a sheet filled to the end of the grid, with the remedy", async () => {
    put("A1", [["Mark"]]);
    put("H1048576", [["x"]]);
    await expect(port.read("Sheet1")).rejects.toThrow(/8388608 cells.*delete what stands below/);
  });

  test("refuses a sheet that is gone, with the remedy", async () => {
    const reading = port.read("Old");
    await expect(reading).rejects.toBeInstanceOf(WorkbookRefusal);
    await expect(reading).rejects.toThrow(/sheet Old is no longer in the workbook: choose another sheet/);
  });
});

describe("flags", () => {
  const looks = () =>
    sheet().conditional.map(({ formula, fill, areas }) => ({
      formula,
      fill,
      rows: areas.map((area) => area.row),
    }));

  test("are conditional formats by runs of rows, and leave cells and the user's formats alone", async () => {
    put("A1:B2", [
      ["Mark", "Size"],
      ["01", "H16"],
    ]);
    sheet().GetRange("A2").Format.Fill.Color = "#00FF00";
    const users = {
      id: "user",
      type: "CellValue",
      areas: [sheet().GetRange("A1:Z99").area],
      formula: "=1",
      fill: "#123456",
      font: "",
      stopIfTrue: true,
    };
    sheet().conditional.push(users);
    const cells = structuredClone(sheet().cells.entries());
    await port.showFlags("Sheet1", [flag(4), flag(5), flag(6), flag(9), flag(7, "note")]);
    expect(sheet().conditional.at(-1)).toEqual(users);
    expect(
      looks()
        .slice(0, -1)
        .map((look) => look.rows),
    ).toEqual([[7], [4, 9]]);
    expect(sheet().conditional[1]?.areas[0]).toEqual({ row: 4, column: 0, rows: 3, columns: 11 });
    await port.clearFlags("Sheet1");
    expect(sheet().conditional).toEqual([users]);
    expect(sheet().cells.entries()).toEqual(cells);
  });

  test("replace the earlier ones", async () => {
    await port.showFlags("Sheet1", [flag(1), flag(2, "note")]);
    await port.showFlags("Sheet1", [flag(3)]);
    expect(looks().map((look) => look.rows)).toEqual([[3]]);
  });

  test("are found and cleared after save, close and reopen", async () => {
    await port.showFlags("Sheet1", [flag(1), flag(8, "doubtful")]);
    await start(book.save());
    expect(await port.hasFlags("Sheet1")).toBe(true);
    await port.clearFlags("Sheet1");
    expect(await port.hasFlags("Sheet1")).toBe(false);
    expect(sheet().conditional).toEqual([]);
  });

  test("are one undo step", async () => {
    await port.showFlags("Sheet1", [flag(1), flag(8, "doubtful")]);
    book.undo();
    expect(sheet().conditional).toEqual([]);
  });

  test("of a protected sheet are refused with the remedy; with formatting allowed they are not", async () => {
    sheet().isProtected = true;
    await expect(port.showFlags("Sheet1", [flag(1)])).rejects.toThrow(/Sheet1 is protected.*Unprotect Sheet/);
    await expect(port.clearFlags("Sheet1")).resolves.toBeUndefined();
    sheet().allowFormatCells = true;
    await port.showFlags("Sheet1", [flag(1)]);
    expect(await port.hasFlags("Sheet1")).toBe(true);
  });

  test("half written by a host that stopped are still found and cleared by the next session", async () => {
    const many = Array.from({ length: 5_000 }, (_, index) => flag(index * 2));
    open.excel.failures.push(null, null, "GeneralException");
    await expect(port.showFlags("Sheet1", many)).rejects.toThrow(/stopped in the middle.*try again/);
    expect(sheet().conditional.length).toBeGreaterThan(0);
    await start(book.save());
    expect(await port.hasFlags("Sheet1")).toBe(true);
    await port.clearFlags("Sheet1");
    expect(sheet().conditional).toEqual([]);
  });
});

test("10,000 rows with findings on 5 % take three requests: two to look, one to colour", async () => {
  const rows = Array.from({ length: 10_000 }, (_, row) => [
    `M${row}`,
    "H16",
    "21",
    12,
    1,
    12,
    ...[1000, 400, 500, "", ""],
    1875,
  ]);
  put("A1:L10000", rows);
  const before = open.excel.requests.length;
  const read = await port.read("Sheet1");
  await port.setting("Barwright.Audit");
  const flags = Array.from({ length: 500 }, (_, index) =>
    flag(index * 20 + 1, index % 2 ? "unsafe" : "note"),
  );
  await port.showFlags("Sheet1", flags);
  const sent = open.excel.requests.slice(before);
  expect(read.rowCount).toBe(10_000);
  expect(sent.length).toBe(3);
  expect(Math.max(...sent.map((request) => request.bytesOut))).toBeLessThan(1_000_000);
  expect(book.suspended).toEqual({ calculation: 1, screen: 1 });
});

describe("writing cells", () => {
  test.each([
    ["01"],
    ["1E2"],
    ["1-2"],
    ["MAR1"],
    ["=1+1"],
    ["+44"],
    ["(250)"],
    ["TRUE"],
    ["1,250"],
    ["H16"],
    ["#5"],
  ])("keeps the text %s as it is", async (text) => {
    await port.writeCells("Sheet1", [{ cell: "B2", to: text }]);
    expect(sheet().cells.at(1, 1)).toMatchObject({ value: text, formula: "" });
  });

  test("formats as text only the cells that need it", async () => {
    sheet().GetRange("B2:B4").NumberFormat = [["0.0"], ["0.0"], ["0.0"]];
    await port.writeCells("Sheet1", [
      { cell: "B2", to: "H16" },
      { cell: "B3", to: "01" },
      { cell: "B4", to: 7 },
    ]);
    expect([1, 2, 3].map((row) => sheet().cells.at(row, 1).format)).toEqual(["0.0", "@", "0.0"]);
  });

  test("looks once and writes once; the way back restores texts, formulas and formats", async () => {
    book.calculator = () => 12;
    put("A1:A5", [["'01"], ["=6*2"], [5], ["H16"], [""]]);
    const cells = () => [0, 1, 2, 3, 4].map((row) => sheet().cells.at(row, 0));
    const before = cells();
    const sent = open.excel.requests.length;
    const undo = await port.writeCells("Sheet1", [
      { cell: "A5", to: 9 },
      { cell: "A1", to: "02" },
      { cell: "A2", to: 13 },
      { cell: "A3", to: null },
      { cell: "A4", to: "1E2" },
    ]);
    expect(open.excel.requests.length - sent).toBe(2);
    expect(cells().map((cell) => cell.value)).toEqual(["02", 13, "", "1E2", 9]);
    expect(await undo()).toBe(true);
    expect(cells().map(({ value, formula, format }) => [value, formula, format])).toEqual(
      before.map(({ value, formula, format }) => [value, formula, format]),
    );
  });

  test("is one step of Excel's own undo", async () => {
    put("A1:A2", [[1], [2]]);
    book.closeUndoStep();
    await port.writeCells("Sheet1", [
      { cell: "A1", to: 10 },
      { cell: "C9", to: "1-2" },
    ]);
    book.undo();
    expect(sheet().cells.at(0, 0).value).toBe(1);
    expect(sheet().cells.at(8, 2)).toMatchObject({ value: "", format: "General" });
  });

  test("is not taken back over what the user typed since", async () => {
    const undo = await port.writeCells("Sheet1", [{ cell: "A1", to: 10 }]);
    put("A1", [[11]]);
    expect(await undo()).toBe(false);
    expect(sheet().cells.at(0, 0).value).toBe(11);
  });

  test("goes in chunks of 20,000 cells", async () => {
    const edits = Array.from({ length: 45_000 }, (_, index) => ({ cell: `A${index + 1}`, to: index }));
    await port.writeCells("Sheet1", edits);
    expect(open.excel.requests.length).toBe(1 + 3);
    expect(sheet().cells.at(44_999, 0).value).toBe(44_999);
    expect(Math.max(...open.excel.requests.map((request) => request.bytesOut))).toBeLessThan(1_000_000);
  });

  test("on a protected sheet is refused with the remedy, but not in unlocked cells", async () => {
    sheet().GetRange("A1").Format.Protection.Locked = false;
    sheet().isProtected = true;
    await expect(port.writeCells("Sheet1", [{ cell: "B1", to: 1 }])).rejects.toThrow(
      /protected.*Unprotect Sheet/,
    );
    await port.writeCells("Sheet1", [{ cell: "A1", to: 1 }]);
    expect(sheet().cells.at(0, 0).value).toBe(1);
  });

  test("while a cell is being edited says what to do", async () => {
    open.excel.failures.push("InvalidOperationInCellEditMode");
    await expect(port.writeCells("Sheet1", [{ cell: "B1", to: 1 }])).rejects.toThrow(/Enter or Esc/);
  });

  test("works on a version of Excel that merges undo steps", async () => {
    await start(undefined, { ExcelApi: "1.20" });
    await port.writeCells("Sheet1", [{ cell: "B1", to: 1 }]);
    expect(sheet().cells.at(0, 1).value).toBe(1);
  });
});

describe("settings", () => {
  test("are defined names that stand for a text", async () => {
    expect(await port.setting("Barwright.Standard")).toBeNull();
    await port.saveSetting("Barwright.Standard", "BS8666:2020");
    expect(book.save().names).toEqual([
      { name: "Barwright.Standard", formula: '="BS8666:2020"', visible: true },
    ]);
    await port.saveSetting("Barwright.Standard", "EC2:2004");
    expect(await port.setting("Barwright.Standard")).toBe("EC2:2004");
    await port.saveSetting("Barwright.Standard", null);
    expect(book.save().names).toEqual([]);
  });

  test("of any length come back whole, and leave no name behind when they are short again", async () => {
    const names = () => book.save().names.map(({ name }) => name);
    const waivers = Array.from({ length: 600 }, (_, index) => ({
      code: "LEN102",
      sheet: "S",
      key: `B1 | ${index}`,
      reason: `agreed with the site, "as built" ${"and so on ".repeat(20)}`,
      by: "A. Detailer",
      date: "2031-03-02",
    }));
    const long = settingsToText(auditSettings.parse({ waivers })) as string;
    await port.saveSetting("Barwright.Audit", long);
    expect(names().length).toBeGreaterThan(10);
    for (const { formula } of book.save().names) expect(formula.length).toBeLessThanOrEqual(8_192);
    expect(await port.setting("Barwright.Audit")).toBe(long);
    await port.read("Sheet1");
    expect(await port.setting("Barwright.Audit")).toBe(long);
    await start(book.save());
    expect(settingsFromText(await port.setting("Barwright.Audit")).waivers).toEqual(waivers);
    await port.saveSetting("Barwright.Audit", "x".repeat(9_000));
    expect(names()).toEqual(["Barwright.Audit", "Barwright.Audit.2"]);
    await port.saveSetting("Barwright.Audit", "short");
    expect(names()).toEqual(["Barwright.Audit"]);
    await port.saveSetting("Barwright.Audit", "x".repeat(9_000));
    await port.saveSetting("Barwright.Audit", null);
    expect(names()).toEqual([]);
  });

  test("of which a part is missing say so", async () => {
    await port.saveSetting("Barwright.Audit", "x".repeat(20_000));
    const saved = book.save();
    await start({ ...saved, names: saved.names.filter(({ name }) => name !== "Barwright.Audit.2") });
    expect(settingsFromText(await port.setting("Barwright.Audit")).problem).toMatch(
      /Barwright.Audit.2 is missing/,
    );
  });

  test("are found whatever the case of their name", async () => {
    await start({
      ...book.save(),
      names: [{ name: "BARWRIGHT.STANDARD", formula: '="EC2:2004"', visible: true }],
    });
    expect(await port.setting("Barwright.Standard")).toBe("EC2:2004");
    await port.read("Sheet1");
    expect(await port.setting("Barwright.Standard")).toBe("EC2:2004");
  });

  test("changed by another hand are read anew", async () => {
    await port.read("Sheet1");
    expect(await port.setting("Barwright.Standard")).toBeNull();
    await port.saveSetting("Barwright.Standard", "EC2:2004");
    expect(await port.setting("Barwright.Standard")).toBe("EC2:2004");
  });

  test("pointed at something else are refused with what they hold", async () => {
    const saved = book.save();
    await start({
      ...saved,
      names: [{ name: "Barwright.Standard", formula: "=Sheet1!$A$1", visible: true }],
    });
    await expect(port.setting("Barwright.Standard")).rejects.toThrow(/=Sheet1!\$A\$1.*Name Manager/);
  });
});

describe("events", () => {
  test("tell the user's selection and changes, not the add-in's own, until removed", async () => {
    const heard: unknown[] = [];
    const offSelection = port.onSelection((place) => heard.push(place));
    const offChange = port.onChange((place) => heard.push(place));
    await settled();
    book.addSheet("Bars");
    open.excel.byUser(() => book.sheets[1]?.GetRange("C5:D9").Select());
    open.excel.byUser(() =>
      put("A3:B4", [
        [1, 2],
        [3, 4],
      ]),
    );
    await port.writeCells("Bars", [{ cell: "A1", to: 1 }]);
    await settled();
    expect(heard).toEqual([
      { sheet: "Bars", row: 4, column: 2 },
      { sheet: "Bars", firstRow: 2, lastRow: 3 },
    ]);
    expect(book.registered).toEqual({ changed: 1, selection: 1 });
    offSelection();
    offChange();
    await settled();
    expect(book.registered).toEqual({ changed: 0, selection: 0 });
    open.excel.byUser(() => book.active.GetRange("A9").Select());
    await settled();
    expect(heard.length).toBe(2);
  });

  test("of rows put in reach to the end of the sheet", async () => {
    const heard: unknown[] = [];
    port.onChange((place) => heard.push(place));
    await settled();
    book.emit(10, sheet().Id, { address: "5:6", worksheetId: sheet().Id, changeType: "RowInserted" });
    await settled();
    expect(heard).toEqual([{ sheet: "Sheet1", firstRow: 4, lastRow: 1_048_575 }]);
  });
});

describe("going to a cell", () => {
  test("opens its sheet and selects it", async () => {
    book.addSheet("Bars");
    await port.goTo("Bars", "F12");
    expect(book.active.Name).toBe("Bars");
    expect(book.GetSelectedRange().Address).toBe("Bars!F12");
  });

  test("of a hidden sheet is refused with the remedy", async () => {
    book.addSheet("Bars").Visibility = "Hidden";
    await expect(port.goTo("Bars", "F12")).rejects.toThrow(/hidden: unhide it/);
  });
});

test("recalculation counts the BAR formulas of all sheets and touches only theirs", async () => {
  book.calculator = () => 1;
  put("A1:A4", [
    ["=BAR.MASS(B1)"],
    ["=SUM(BAR.MASS(B1:B9))"],
    ['="BAR.MASS( is text"'],
    ["=TOOLBAR.MASS(1)"],
  ]);
  book.addSheet("Plain").GetRange("A1").Values = [[5]];
  book.addSheet("Away").GetRange("A1").Values = [["=_xldudf_BAR_MASS(B1)"]];
  expect(await port.recalculate()).toBe(3);
  expect(book.calculated).toEqual([
    { sheet: "Sheet1", markAllDirty: true },
    { sheet: "Away", markAllDirty: true },
  ]);
});

test("sheets are told with what may be done on them", async () => {
  book.addSheet("Hidden").Visibility = "VeryHidden";
  book.addSheet("Locked").isProtected = true;
  expect(await port.sheets()).toMatchObject([
    { name: "Sheet1", visible: true, isProtected: false },
    { name: "Hidden", visible: false, isProtected: false },
    { name: "Locked", visible: true, isProtected: true },
  ]);
  expect(await port.activeSheet()).toBe("Sheet1");
});
