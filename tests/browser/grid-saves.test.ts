import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, inject, test } from "vitest";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { launchChromium } from "../_support/chromium";
import { copyFaults } from "../_support/copy-faults";
import { cells, columns, rows } from "./grid-selections";
import type { RemotePort } from "./port-page";

declare const remote: RemotePort;

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchChromium();
  page = await browser.newPage();
  await page.goto(`${inject("pages")}workbench/port.html`);
  await page.waitForFunction(() => "remote" in globalThis);
});
afterAll(() => browser.close());

/** Three bars of 2 m, their numbers in C, number by length in D, a sum in D5; another sheet leans on it. */
const BOOK = writeNewWorkbook({
  sheets: [
    {
      name: "Bars",
      rows: [
        ["Mark", "Length", "No", "Total"],
        ["01", 2000, 3, { value: 6000, formula: "B2*C2" }],
        ["02", 2000, 4, { value: 8000, formula: "B3*C3" }],
        ["03", 2000, 5, { value: 10000, formula: "B4*C4" }],
        [null, null, null, { value: 24000, formula: "SUM(D2:D4)" }],
      ],
    },
    { name: "Sums", rows: [[{ value: 24, formula: "Bars!D5/1000" }, "t"]] },
    { name: "Rest", rows: [["kept"]] },
  ],
});

beforeEach(async () => {
  await page.evaluate(([bytes, name]) => remote.open([...bytes], name), [[...BOOK], "book.xlsx"] as const);
});

const run = (sheet: string, id: string, params: object) =>
  page.evaluate(([s, i, p]) => remote.run(s, i, p), [sheet, id, params] as const);
const type = (sheet: string, cell: string, value: string | number) =>
  page.evaluate(([s, c, v]) => remote.type(s, c, v), [sheet, cell, value] as const);

/** The saved file, held against the one that was opened: cells may be others, nothing else may be lost. */
async function saved(opened = BOOK, faults: readonly string[] = []) {
  await page.evaluate(() => remote.calculated());
  const bytes = Uint8Array.from(await page.evaluate(() => remote.save()));
  expect(await copyFaults(opened, bytes, new Set(["Bars", "Sums", "Rest"]))).toEqual(faults);
  return openWorkbook(bytes);
}

describe("a saved workbook", () => {
  test("should be the same file where nothing was done", async () => {
    const bytes = await page.evaluate(() => remote.save());
    const before = openWorkbook(BOOK);
    const after = openWorkbook(Uint8Array.from(bytes));
    for (const { part } of before.sheets) expect(after.parts.text(part)).toBe(before.parts.text(part));
    expect(await page.evaluate(() => remote.isEdited())).toBe(false);
  });

  test("should have the rows that were inserted, with every formula moved along", async () => {
    await run("Bars", "sheet.command.insert-row", { ...rows(2, 3), direction: 0 });
    await type("Bars", "A3", "K9");
    const book = await saved();
    const bars = book.read("Bars", { formulas: true });
    expect(bars.valueAt(2, 0)).toBe("K9");
    expect([1, 4, 5].map((row) => bars.formulaAt(row, 3)?.text)).toEqual(["B2*C2", "B5*C5", "B6*C6"]);
    expect(bars.formulaAt(6, 3)?.text).toBe("SUM(D2:D6)");
    expect(book.read("Sums", { formulas: true }).formulaAt(0, 0)?.text).toBe("Bars!D7/1000");
    expect(await page.evaluate(() => remote.isEdited())).toBe(true);
  });

  test("should keep an insert that another row's removal follows", async () => {
    await run("Bars", "sheet.command.insert-row", { ...rows(1, 1), direction: 0 });
    await run("Bars", "sheet.command.remove-row", rows(3, 3));
    const bars = (await saved()).read("Bars", { formulas: true });
    expect([0, 1, 2, 3].map((row) => bars.valueAt(row, 0))).toEqual(["Mark", null, "01", "03"]);
    // 3 and 5 bars of 2000 mm are left
    expect(bars.valueAt(4, 3)).toBe(16000);
    expect(bars.formulaAt(4, 3)?.text).toBe("SUM(D3:D4)");
  });

  test("should be the same file after an insert and a removal that were undone", async () => {
    await run("Bars", "sheet.command.remove-row", rows(1, 2));
    await run("Bars", "univer.command.undo", {});
    await run("Bars", "sheet.command.insert-col", { ...columns(1, 1), direction: 3 });
    await run("Bars", "univer.command.undo", {});
    const before = openWorkbook(BOOK);
    const after = await saved();
    for (const { part } of before.sheets) expect(after.parts.text(part)).toBe(before.parts.text(part));
  });

  test("should have inserted and removed columns", async () => {
    await run("Bars", "sheet.command.insert-col", { ...columns(1, 1), direction: 3 });
    await run("Bars", "sheet.command.remove-col", columns(0, 0));
    const bars = (await saved()).read("Bars", { formulas: true });
    expect([0, 1, 2, 3].map((column) => bars.valueAt(0, column))).toEqual([null, "Length", "No", "Total"]);
    expect(bars.formulaAt(1, 3)?.text).toBe("B2*C2");
  });

  test("should have added, renamed, moved and deleted sheets", async () => {
    await run("Bars", "sheet.command.insert-sheet", { index: 1 });
    const [, added = ""] = (await page.evaluate(() => remote.sheets())).map(({ name }) => name);
    await type(added, "B2", "new");
    await run(added, "sheet.command.set-style", { ...cells(1, 1), style: { type: "bl", value: 1 } });
    await run("Rest", "sheet.command.remove-sheet", {});
    await run("Bars", "sheet.command.set-worksheet-name", { name: "Bars of May" });
    const book = await saved(BOOK, ["Bars: the sheet is gone", "Rest: the sheet is gone"]);
    expect(book.sheets.map(({ name }) => name)).toEqual(["Bars of May", added, "Sums"]);
    const sheet = book.read(added);
    expect(sheet.valueAt(1, 1)).toBe("new");
    expect(book.formats[sheet.styleAt(1, 1)]?.bold).toBe(true);
    expect(book.read("Sums", { formulas: true }).formulaAt(0, 0)?.text).toBe("'Bars of May'!D5/1000");
  });

  test("should have the looks that the toolbar gave, and no others", async () => {
    await run("Bars", "sheet.command.set-style", {
      ...cells(1, 1, 2, 1),
      style: { type: "bg", value: { rgb: "#ffc000" } },
    });
    await run("Bars", "sheet.command.set-style", { ...cells(1, 1), style: { type: "it", value: 1 } });
    await run("Bars", "sheet.command.set-style", {
      ...cells(1, 1),
      style: { type: "bd", value: { t: { s: 8, cl: { rgb: "rgb(0, 0, 255)" } } } },
    });
    await run("Bars", "sheet.command.numfmt.set.numfmt", {
      values: [{ row: 1, col: 3, pattern: "0.00" }],
    });
    const book = await saved();
    const bars = book.read("Bars");
    const look = (row: number, column: number) => book.formats[bars.styleAt(row, column)];
    expect(look(1, 1)).toMatchObject({ fill: "#ffc000", italic: true, bold: false });
    expect([...(look(1, 1)?.borders ?? [])]).toEqual([["top", { style: "medium", colour: "#0000ff" }]]);
    expect(look(2, 1)).toMatchObject({ fill: "#ffc000", italic: false });
    expect(look(3, 1)).toMatchObject({ fill: null });
    expect(look(1, 3)?.numberFormat).toBe("0.00");
  });

  test("should have widths, heights, hidden lines, merged cells and frozen rows", async () => {
    await run("Bars", "sheet.command.set-worksheet-col-width", {
      ranges: [columns(1, 1).range],
      value: 145,
    });
    await run("Bars", "sheet.command.set-row-height", { ranges: [rows(2, 2).range], value: 40 });
    await run("Bars", "sheet.command.set-row-height", { ranges: [rows(2, 2).range], value: 40 });
    await run("Bars", "sheet.command.set-rows-hidden", { ranges: [rows(3, 3).range] });
    await run("Bars", "sheet.command.add-worksheet-merge", { selections: [cells(5, 0, 5, 1).range] });
    await run("Bars", "sheet.command.set-frozen", { startRow: 1, startColumn: -1, ySplit: 1, xSplit: 0 });
    const bars = (await saved()).read("Bars");
    // 20 characters of 7 px and 5 px of room
    expect(bars.columns.find(({ first }) => first === 1)?.width).toBe(20);
    expect(bars.isHiddenRow?.(3 - bars.top)).toBe(true);
    expect(bars.merges).toContainEqual({ top: 5, left: 0, bottom: 5, right: 1 });
    expect(bars.frozen).toEqual({ rows: 1, columns: 0 });
    expect(bars.rowHeight(2)).toBe(30);
  });

  test("should hold the results that an edit leads to, near and far", async () => {
    await type("Bars", "C2", 10);
    const book = await saved();
    expect(book.read("Bars").valueAt(1, 3)).toBe(20000);
    expect(book.read("Bars").valueAt(4, 3)).toBe(38000);
    expect(book.read("Sums").valueAt(0, 0)).toBe(38);
  });

  test("should hold no result of a formula that the grid cannot answer for", async () => {
    const book = writeNewWorkbook({
      sheets: [
        {
          name: "Bars",
          rows: [
            [2, { value: 5, formula: "NOSUCHFUNCTION(A1)" }, { value: 7, formula: "NOSUCHFUNCTION(A2)" }],
            [3],
          ],
        },
      ],
    });
    await page.evaluate(([bytes, name]) => remote.open([...bytes], name), [[...book], "odd.xlsx"] as const);
    await type("Bars", "A1", 4);
    const bars = (await saved(book)).read("Bars");
    expect(bars.valueAt(0, 1)).toMatchObject({ error: "#N/A", uncalculated: true });
    // leans on no edited cell
    expect(bars.valueAt(0, 2)).toBe(7);
  });

  test("should hold functions newer than the file format as Excel reads them", async () => {
    await type("Bars", "F2", "=MAXIFS(B2:B4,A2:A4,A2)");
    expect((await saved()).read("Bars", { formulas: true }).formulaAt(1, 5)?.text).toBe(
      "_xlfn.MAXIFS(B2:B4,A2:A4,A2)",
    );
  });

  test("should hold the whole of a result that fills a column, made longer and shorter", async () => {
    await type("Bars", "F2", "=BAR.CUTLENGTH(0,16,B2:B4)");
    expect(await valuesOf(5)).toEqual([2000, 2000, 2000]);
    await page.evaluate(
      (bytes) => remote.open(bytes, "again.xlsx"),
      await page.evaluate(() => remote.save()),
    );
    await type("Bars", "B3", 3000);
    expect(await valuesOf(5)).toEqual([2000, 3000, 2000]);
  });

  test("should have the filter and the rows that it leaves out", async () => {
    await run("Bars", "sheet.command.set-filter-range", cells(0, 0, 3, 3));
    await run("Bars", "sheet.command.set-filter-criteria", {
      col: 0,
      criteria: { colId: 0, filters: { filters: ["02"] } },
    });
    const bytes = await page.evaluate(() => remote.save());
    const bars = openWorkbook(Uint8Array.from(bytes)).read("Bars");
    expect([1, 2, 3].map((row) => bars.isHiddenRow?.(row - bars.top))).toEqual([true, false, true]);
    expect(bars.layout.tail).toContain(
      '<autoFilter ref="A1:D4"><filterColumn colId="0"><filters><filter val="02"/></filters></filterColumn></autoFilter>',
    );
    await page.evaluate((b) => remote.open(b, "again.xlsx"), bytes);
    await run("Bars", "sheet.command.clear-filter-criteria", {});
    const cleared = openWorkbook(Uint8Array.from(await page.evaluate(() => remote.save()))).read("Bars");
    expect([1, 2, 3].map((row) => cleared.isHiddenRow?.(row - cleared.top))).toEqual([false, false, false]);
  });

  test("should leave the total out of a filter, whatever comes and goes", async () => {
    await run("Bars", "sheet.command.set-filter-range", cells(0, 0, 3, 3));
    const bytes = Uint8Array.from(await page.evaluate(() => remote.save()));
    // as other programs write it: the range stands once more in a hidden name
    const name = `<definedName name="_xlnm._FilterDatabase" localSheetId="0" hidden="1">Bars!$A$1:$D$4</definedName>`;
    const parts = unzipSync(bytes);
    const workbookXml = strFromU8(parts["xl/workbook.xml"]!);
    parts["xl/workbook.xml"] = strToU8(
      workbookXml.replace("</sheets>", `</sheets><definedNames>${name}</definedNames>`),
    );
    const named = [...zipSync(parts)];
    await page.evaluate((b) => remote.open(b, "named.xlsx"), named);
    const ranges = async () => {
      await page.evaluate(() => remote.calculated());
      const book = openWorkbook(Uint8Array.from(await page.evaluate(() => remote.save())));
      const held = book.names.find((one) => one.name === "_xlnm._FilterDatabase");
      const filter = /<autoFilter ref="([^"]*)"/.exec(book.read("Bars").layout.tail)?.[1] ?? null;
      return [filter, held?.refersTo.replace(/^'?Bars'?!|\$/g, "") ?? null];
    };
    await run("Bars", "sheet.command.insert-row", { ...rows(2, 2), direction: 0 });
    await type("Bars", "B3", 1000);
    expect(await ranges()).toEqual(["A1:D5", "A1:D5"]);
    await run("Bars", "sheet.command.remove-row", rows(1, 2));
    expect(await ranges()).toEqual(["A1:D3", "A1:D3"]);
    for (let step = 0; step < 3; step += 1) await run("Bars", "univer.command.undo", {});
    expect(await ranges()).toEqual(["A1:D4", "A1:D4"]);
    await run("Bars", "sheet.command.insert-col", { ...columns(1, 1), direction: 3 });
    await run("Bars", "univer.command.undo", {});
    expect(await ranges()).toEqual(["A1:D4", "A1:D4"]);
    await run("Bars", "sheet.command.remove-sheet-filter", {});
    expect(await ranges()).toEqual([null, null]);
  });

  test("should have rows in the order that they were sorted to, with their looks", async () => {
    await run("Bars", "sheet.command.set-style", { ...cells(1, 0), style: { type: "bl", value: 1 } });
    await run("Bars", "sheet.command.sort-range", {
      ...cells(1, 0, 3, 3),
      orderRules: [{ type: "desc", colIndex: 2 }],
      hasTitle: false,
    });
    const book = await saved();
    const bars = book.read("Bars", { formulas: true });
    expect([1, 2, 3].map((row) => bars.valueAt(row, 0))).toEqual(["03", "02", "01"]);
    expect([1, 2, 3].map((row) => bars.valueAt(row, 3))).toEqual([10000, 8000, 6000]);
    expect(book.formats[bars.styleAt(3, 0)]?.bold).toBe(true);
    expect(book.formats[bars.styleAt(1, 0)]?.bold).toBe(false);
  });
});

async function valuesOf(column: number) {
  const bars = (await saved()).read("Bars");
  return [1, 2, 3].map((row) => bars.valueAt(row, column));
}
