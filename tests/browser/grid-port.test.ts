import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, inject } from "vitest";
import { type PackedSheet, unpackSheet } from "../../addin/pane/engine/packed-sheet";
import type { WorkbookPort } from "../../addin/workbook/workbook-port";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { launchChromium } from "../_support/chromium";
import { describeWorkbookPort, PORT_BOOK, type PortUnderTest } from "../addin/workbook-port-suite";
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

describeWorkbookPort("the workbench's grid", async (): Promise<PortUnderTest> => {
  await open(startingBytes());
  const port = remotePort();
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

const open = (bytes: Uint8Array): Promise<void> =>
  page.evaluate((file) => remote.open(file, "port.xlsx"), [...bytes]);

let timer: NodeJS.Timeout | undefined;

function stopListening(): void {
  clearInterval(timer);
  timer = undefined;
}

/** The port, each call carried into the page. */
function remotePort(): WorkbookPort {
  const listeners = {
    selections: new Set<(place: never) => void>(),
    changes: new Set<(place: never) => void>(),
    sheets: new Set<(place: never) => void>(),
  };
  const told = { selections: 0, changes: 0, sheets: 0 };
  const listen = (kind: keyof typeof listeners, listener: (place: never) => void) => {
    listeners[kind].add(listener);
    if (timer === undefined) {
      void page.evaluate(() => remote.listen());
      timer = setInterval(async () => {
        const heard = await page.evaluate(() => remote.heard());
        for (const each of ["selections", "changes", "sheets"] as const) {
          for (const place of heard[each].slice(told[each])) {
            for (const tell of listeners[each]) tell(place as never);
          }
          told[each] = heard[each].length;
        }
      }, 50);
    }
    return () => {
      listeners[kind].delete(listener);
    };
  };
  return {
    sheets: () => page.evaluate(() => remote.sheets()),
    activeSheet: () => page.evaluate(() => remote.activeSheet()),
    async read(sheet) {
      const { shown, dates, struck, hiddenRows, hiddenColumns, ...plain } = await page.evaluate(
        (name) => remote.read(name),
        sheet,
      );
      const packed: PackedSheet = {
        ...plain,
        shown: new Map(shown),
        dates: new Set(dates),
        struck: new Set(struck),
        hiddenRows: new Set(hiddenRows),
        hiddenColumns: new Set(hiddenColumns),
      };
      return unpackSheet(packed);
    },
    async showFlags(sheet, flags, progress) {
      const steps = await page.evaluate(([s, f]) => remote.showFlags(s, f), [sheet, [...flags]] as const);
      for (const step of steps) progress?.(step);
    },
    clearFlags: (sheet) => page.evaluate((name) => remote.clearFlags(name), sheet),
    hasFlags: (sheet) => page.evaluate((name) => remote.hasFlags(name), sheet),
    formulaCells: async (sheet, cells) =>
      new Set(await page.evaluate(([s, c]) => remote.formulaCells(s, c), [sheet, [...cells]] as const)),
    async writeCells(sheet, edits) {
      const index = await page.evaluate(([s, e]) => remote.writeCells(s, e), [sheet, [...edits]] as const);
      return () => page.evaluate((which) => remote.undo(which), index);
    },
    addSheet: (name, content, ifThere = "number") =>
      page.evaluate(([n, c, i]) => remote.addSheet(n, c, i), [name, content, ifThere] as const),
    goTo: (sheet, cell) => page.evaluate(([s, c]) => remote.goTo(s, c), [sheet, cell] as const),
    setting: (name) => page.evaluate((which) => remote.setting(which), name),
    saveSetting: (name, value) => page.evaluate(([n, v]) => remote.saveSetting(n, v), [name, value] as const),
    onSelection: (listener) => listen("selections", listener as (place: never) => void),
    onChange: (listener) => listen("changes", listener as (place: never) => void),
    onSheets: (listener) => listen("sheets", listener),
    recalculate: () => page.evaluate(() => remote.recalculate()),
  };
}
