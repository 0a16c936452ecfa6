import { readFile } from "node:fs/promises";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { launchChromium } from "../_support/chromium";
import { drawn, openWorkbench, type WorkbenchPage } from "./workbench-page";

/** Four bars of an invented job: number by length in E, their sum below. */
const BOOK = Buffer.from(
  writeNewWorkbook({
    sheets: [
      {
        name: "Bars",
        rows: [
          ["Bar mark", "Type and size", "No.", "Length of each bar mm", "All mm"],
          ["K1", "H16", 3, 2000, { value: 6000, formula: "C2*D2" }],
          ["K2", "H16", 9, 2000, { value: 18000, formula: "C3*D3" }],
          ["K3", "H20", 5, 3000, { value: 15000, formula: "C4*D4" }],
          ["K4", "H20", 1, 3000, { value: 3000, formula: "C5*D5" }],
          [null, null, null, null, { value: 42000, formula: "SUM(E2:E5)" }],
        ],
      },
    ],
  }),
);

let browser: Browser;
let context: BrowserContext;
let bench: WorkbenchPage;
let page: Page;

beforeAll(async () => {
  browser = await launchChromium();
  context = await browser.newContext({ viewport: { width: 1400, height: 900 } });
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  bench = await openWorkbench(context, inject("pages"));
  page = bench.page;
  await bench.open(BOOK, "may.xlsx");
});
afterAll(() => browser.close());

const nameBox = () => page.locator("#grid input:not([readonly])").last();

/** The middle of a cell; columns of a new book are 88 px wide, rows 22 px high. */
async function pixel(row: number, column: number): Promise<[number, number]> {
  const box = await page.locator('#grid canvas[id*="sheet-main-canvas"]').first().boundingBox();
  if (box === null) throw new Error("the grid has no canvas");
  return [box.x + 46 + 88 * column + 44, box.y + 20 + 22 * row + 11];
}

async function click(row: number, column: number, options: { button?: "right"; shift?: boolean } = {}) {
  if (options.shift) await page.keyboard.down("Shift");
  await page.mouse.click(...(await pixel(row, column)), options.button ? { button: options.button } : {});
  if (options.shift) await page.keyboard.up("Shift");
}

/** An item of the menu of a cell, by the words of the menu and of the item. */
async function choose(row: number, column: number, menu: string, item: string): Promise<void> {
  await click(row, column, { button: "right" });
  await page.getByText(menu, { exact: true }).last().hover();
  // a count may stand in the middle of an item
  await page
    .getByText(item)
    .last()
    .click({ position: { x: 8, y: 8 } });
}

async function savedByKey() {
  const download = page.waitForEvent("download");
  await page.keyboard.press("Control+s");
  const saved = await bench.held(await readFile(await (await download).path()));
  return openWorkbook(new Uint8Array(saved));
}

describe("a day's work", () => {
  test("should be in the saved file: a row, a fill, a look, an order, a sheet", async () => {
    await choose(2, 0, "Insert", "rows above");
    await bench.typeAt("A3", "K9");
    await bench.typeAt("B3", "H16");
    await bench.typeAt("C3", "7");
    await bench.typeAt("D3", "2500");
    await click(1, 4);
    await click(2, 4, { shift: true });
    await page.keyboard.press("Control+d");
    await click(1, 0);
    await page.keyboard.press("Control+b");
    await click(1, 2);
    await click(5, 2, { shift: true });
    await choose(1, 2, "Sort", "Rows, largest first");
    // a column by itself would be torn from its rows
    expect(await page.getByText(/^(?:As|Des)cending$/).count()).toBe(0);
    await expect.poll(() => page.locator("#file-state").isVisible()).toBe(true);
    expect(await page.title()).toMatch(/^\* may\.xlsx/);
    await bench.typeAt("A9", "a note under it all");

    const book = await savedByKey();
    const bars = book.read("Bars", { formulas: true });
    expect([1, 2, 3, 4, 5].map((row) => bars.valueAt(row, 0))).toEqual(["K2", "K9", "K3", "K1", "K4"]);
    // 9, 7, 5, 3 and 1 of their lengths, and all of them: 18000 + 17500 + 15000 + 6000 + 3000
    expect([1, 2, 3, 4, 5, 6].map((row) => bars.valueAt(row, 4))).toEqual([
      18000, 17500, 15000, 6000, 3000, 59500,
    ]);
    expect(bars.formulaAt(6, 4)?.text).toBe("SUM(E2:E6)");
    expect(book.formats[bars.styleAt(4, 0)]?.bold).toBe(true);
    expect(book.formats[bars.styleAt(1, 0)]?.bold).toBe(false);
    expect(bars.valueAt(8, 0)).toBe("a note under it all");
    await expect.poll(() => page.locator("#file-state").isVisible()).toBe(false);
  });

  test("should begin a new run of entries where a cell is clicked", async () => {
    await click(10, 1);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await click(12, 5);
    await page.keyboard.type("111");
    await page.keyboard.press("Enter");
    await expect.poll(() => nameBox().inputValue()).toBe("F14");
  });

  test("should be gone through by the keys that sheets are gone through by", async () => {
    await click(3, 2);
    for (const [key, cell] of [
      ["Control+End", "F13"],
      ["Home", "A13"],
      ["Control+Home", "A1"],
    ]) {
      await page.keyboard.press(key ?? "");
      await expect.poll(() => nameBox().inputValue()).toBe(cell);
    }
    await page.keyboard.press("PageDown");
    await expect.poll(async () => Number((await nameBox().inputValue()).slice(1))).toBeGreaterThan(20);
    await page.keyboard.press("PageUp");
    await expect.poll(() => nameBox().inputValue()).toBe("A1");
  });

  test("should be left by keyboard, part by part and back", async () => {
    const focused = () => page.evaluate(() => document.activeElement?.closest("#strip, #grid, #pane")?.id);
    await click(3, 2);
    const order = ["pane", "strip", "grid"];
    for (const part of order) {
      await page.keyboard.press("F6");
      expect(await focused()).toBe(part);
    }
    await page.keyboard.press("Shift+F6");
    expect(await focused()).toBe("strip");
    // also where a cell's own editor has just been opened
    await page.keyboard.press("F6");
    await page.keyboard.press("F2");
    await page.keyboard.press("F6");
    await drawn(page);
    expect(await focused()).toBe("pane");
    await page.keyboard.press("Shift+F6");
    await page.keyboard.press("Escape");
  });

  test("should copy all values of a result that fills a column", async () => {
    // with a rest in the name, in which the grid offers functions, and none before Enter
    await bench.goTo("H2");
    await page.keyboard.type("=mass");
    await page.getByText("BAR.ROWMASS", { exact: false }).first().waitFor();
    await page.keyboard.press("Backspace");
    for (let at = 0; at < 3; at += 1) await page.keyboard.press("Backspace");
    await page.keyboard.type("BAR.MA");
    await page.getByText("BAR.MASS", { exact: false }).first().waitFor();
    await page.keyboard.type("SS(B2:B6)");
    await page.keyboard.press("Enter");
    await expect.poll(() => cellText("H6")).toBe("2.466");
    await click(1, 7);
    await click(5, 7, { shift: true });
    await page.keyboard.press("Control+c");
    await expect
      .poll(() => page.evaluate(() => navigator.clipboard.readText()))
      // kg/m of 16 and 20 mm bars, BS 4449:2005 Table 6
      .toBe(["1.579", "1.579", "2.466", "1.579", "2.466"].join("\n"));
  });

  test("should show masses as schedules write them, and hold them whole", async () => {
    // 1000 + 400 + 500 - 32 - 32 = 1836, up to 1850; 24 x 1.85 x 1.579 kg/m = 70.1076 kg
    await bench.typeAt("Y2", '=BAR.ROWMASS("21","H16",{1000,400,500},24,"BS8666:2005")');
    await bench.typeAt("Y3", '=BAR.ROWMASS("21","H16",{1000,400,500},24,"BS8666:2005","t")');
    await bench.typeAt("Y4", "=Y2*10");
    await expect.poll(() => cellText("Y4")).toBe("701.076");
    expect(await cellText("Y2")).toBe("70.11");
    expect(await cellText("Y3")).toBe("0.070");
  });

  test("should read numbers that are pasted with a decimal comma, and say so", async () => {
    await bench.goTo("Y8");
    await page.evaluate(() => navigator.clipboard.writeText("1,25\t2.500,5\n0107\t7,5"));
    await page.keyboard.press("Control+v");
    await expect
      .poll(() => page.locator('barwright-pane .said[role="status"]').textContent())
      .toBe('Pasted with a decimal comma: read "1,25" in Y8 as 1.25 and 2 more');
    await bench.typeAt("Y10", "=Y8+Z8+Z9");
    await expect.poll(() => cellText("Y10")).toBe("2509.25");
  });

  test("should grow with a result that needs more room than the sheet has", async () => {
    await bench.typeAt("X14", '=BAR.MARKS("21",16,{300,400,300})');
    await expect.poll(() => cellText("X14"), { timeout: 30_000 }).toBe("bend");
  });

  test("should grow to where the name box leads, and never to all rows of all columns", async () => {
    await bench.typeAt("AZ700", "far");
    await expect.poll(() => cellText("AZ700")).toBe("far");
    await bench.goTo("XFD1048576");
    await bench.goTo("A9");
    expect(await cellText("A9")).toBe("a note under it all");
    await bench.goTo("A1");
    expect(bench.troubles).toEqual([]);
  });

  test("should be found again after the page broke", async () => {
    await choose(1, 0, "Insert", "rows above");
    const typed = Date.now();
    await bench.typeAt("A11", "not saved yet");
    await expect.poll(keptAt).toBeGreaterThan(typed);
    const typedLast = Date.now();
    await bench.typeAt("A12", "nor this");
    await expect.poll(keptAt).toBeGreaterThan(typedLast);
    // what was typed first may be kept as late as this: until nothing more is
    let last = Number.NaN;
    const isKept = async (): Promise<boolean> => {
      const [before, now] = [last, await keptAt()];
      last = now;
      return before === now;
    };
    await expect.poll(isKept, { interval: 3000 }).toBe(true);
    const session = await context.newCDPSession(page);
    session.send("Page.crash").catch(() => {});
    await page.waitForEvent("crash");
    bench = await openWorkbench(context, inject("pages"));
    page = bench.page;
    await page.locator("dialog.ask", { hasText: "may.xlsx" }).waitFor();
    await page.locator('[data-answer="open"]').click();
    await page.locator("#file-name", { hasText: "may.xlsx" }).waitFor();
    await page.locator("#file-state").waitFor();
    await expect.poll(() => cellText("A11")).toBe("not saved yet");
    await expect.poll(() => cellText("A12")).toBe("nor this");
    // kept with what had been saved before, and calculated: the row that was inserted moved all others
    await expect.poll(() => cellText("E8")).toBe("59500");
  });

  test("should be asked about before another workbook takes its place", async () => {
    await page.locator("#open-example").click();
    await page.locator('[data-answer="inches"]').click();
    await page.locator('[data-answer="stay"]').click();
    expect(await page.locator("#file-name").textContent()).toBe("may.xlsx");
    let asked = 0;
    page.on("dialog", (dialog) => {
      asked += 1;
      void dialog.dismiss();
    });
    await page.close({ runBeforeUnload: true });
    await expect.poll(() => asked).toBe(1);
    expect(bench.troubles).toEqual([]);
  });

  test("should sort whole rows below their head, and findings with them, whichever cell is chosen", async () => {
    const rows = [
      ["Bar mark", "Type and size", "No.", "Length of each bar mm"],
      ["K1", "H16", 3, 2000],
      // 17 mm is no bar of BS 8666:2005, Table 1
      ["K2", "H17", 9, 2000],
      ["K3", "H20", 5, 3000],
      ["K4", "H20", 1, 3000],
    ];
    await bench.open(Buffer.from(writeNewWorkbook({ sheets: [{ name: "Bars", rows }] })), "june.xlsx");
    await (await bench.finding("B3")).waitFor();
    await choose(3, 2, "Sort", "Rows, smallest first");
    await (await bench.finding("B5")).waitFor();
    const bars = (await savedByKey()).read("Bars");
    expect([0, 1, 2, 3, 4].map((row) => bars.valueAt(row, 0))).toEqual(["Bar mark", "K4", "K1", "K3", "K2"]);
    expect([0, 1, 2, 3, 4].map((row) => bars.valueAt(row, 2))).toEqual(["No.", 1, 3, 5, 9]);
  });
});

/** When this browser last kept work that is not saved, in ms since 1970; 0 where it keeps none. */
function keptAt(): Promise<number> {
  return page.evaluate(async () => {
    const open = indexedDB.open("barwright-workbench");
    const database = await new Promise<IDBDatabase>((done) => {
      open.onsuccess = () => done(open.result);
    });
    const all = database.transaction("edits").objectStore("edits").getAll();
    const works = await new Promise<{ at: number }[]>((done) => {
      all.onsuccess = () => done(all.result);
    });
    database.close();
    return Math.max(0, ...works.map(({ at }) => at));
  });
}

/** What the formula bar shows of a cell, or its value where it is calculated. */
async function cellText(cell: string): Promise<string> {
  await bench.goTo(cell);
  await page.keyboard.press("Control+c");
  await drawn(page);
  return page.evaluate(() => navigator.clipboard.readText());
}
