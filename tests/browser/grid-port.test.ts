import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { demoWorkbook } from "../../addin/demo/demo-workbook";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { launchChromium } from "../_support/chromium";
import { describeWorkbookPort, PORT_BOOK, type PortUnderTest } from "../addin/workbook-port-suite";
import type { RemotePort } from "./port-page";
import { remotePort, stopListening } from "./remote-port";

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

describeWorkbookPort("the workbench's grid", async (): Promise<PortUnderTest> => {
  await open(startingBytes());
  const port = remotePort(page);
  return {
    port,
    async reopen() {
      const bytes = await page.evaluate(() => remote.save());
      await open(Uint8Array.from(bytes));
      return port;
    },
    shownFill: (sheet, cell) => page.evaluate(([s, c]) => remote.shownFill(s, c), [sheet, cell] as const),
    setFill: (sheet, cell, colour) =>
      page.evaluate(([s, c, rgb]) => remote.setFill(s, c, rgb), [sheet, cell, colour] as const),
    type: (sheet, cell, value) =>
      page.evaluate(([s, c, v]) => remote.type(s, c, v), [sheet, cell, value] as const),
    select: (sheet, cell) => page.evaluate(([s, c]) => remote.select(s, c), [sheet, cell] as const),
    sheetTabs: {
      add: (name) => page.evaluate((n) => remote.tabs.add(n), name),
      rename: (sheet, name) => page.evaluate(([s, n]) => remote.tabs.rename(s, n), [sheet, name] as const),
      move: (sheet, place) => page.evaluate(([s, p]) => remote.tabs.move(s, p), [sheet, place] as const),
      hide: (sheet) => page.evaluate((s) => remote.tabs.hide(s), sheet),
      remove: (sheet) => page.evaluate((s) => remote.tabs.remove(s), sheet),
    },
    selected: () => page.evaluate(() => remote.selected()),
    close: async () => stopListening(),
  };
});

test("should keep the last of two workbooks that are opened at the same time", async () => {
  const later = writeNewWorkbook({ sheets: [{ name: "Later", rows: [[{ value: 7 }]] }] });
  const both = [[...startingBytes()], [...later]] as [number[], number[]];
  expect(await page.evaluate(([first, second]) => remote.openBoth(first, second), both)).toBe("second.xlsx");
  const saved = openWorkbook(Uint8Array.from(await page.evaluate(() => remote.save())));
  expect(saved.sheets.map(({ name }) => name)).toEqual(["Later"]);
});

test("should come to the results that the first example holds, and say where a file's are others", async () => {
  expect(await open(demoWorkbook())).toBe(false);
  const wrong = { value: 5, formula: "2*3" };
  expect(await open(writeNewWorkbook({ sheets: [{ name: "Wrong", rows: [[wrong]] }] }))).toBe(true);
});

function startingBytes(): Uint8Array {
  const { sheet: filledSheet, cell, colour } = PORT_BOOK.ownFill;
  return writeNewWorkbook({
    sheets: PORT_BOOK.sheets.map(({ name, rows }) => ({
      name,
      rows: rows.map((values, row) =>
        values.map((value, column) => {
          const isFilled = name === filledSheet && `${"ABCD"[column]}${row + 1}` === cell;
          const look = isFilled ? { look: { fill: colour } } : {};
          return typeof value === "string" && value.startsWith("=")
            ? { value: null, formula: value.slice(1), ...look }
            : { value, ...look };
        }),
      ),
    })),
  });
}

const open = (bytes: Uint8Array): Promise<boolean> =>
  page.evaluate((file) => remote.open(file, "port.xlsx"), [...bytes]);
