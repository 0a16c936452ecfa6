import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { launchChromium } from "../_support/chromium";
import { FakeExcel } from "../_support/office-host/fake-excel";
import { type ExcelPage, type ExcelWindow, openInChromium } from "../_support/office-host/open-in-chromium";

/** The built page with the real library, and a host that does what a user, a fault or silence does. */
declare const fakeExcel: ExcelWindow["fakeExcel"];

const HEADER = [
  ..."Member|Bar mark|Type and size|No. of members|No. in each|Total no.|Length mm|Shape code|A mm|B mm|C mm|Former mm".split(
    "|",
  ),
];
/** BS 8666:2005 Table 2: the least former for H16 is 64. */
const TIGHT = ["Plinth", "'0202", "H16", 3, 14, 42, 2500, "'21", 700, 1150, 700, 40];
/** Excel has made a number of the code. */
const numberCode = (row: number) => ["Slab", `'${row}`, "H25", 1, 62, 62, 11600, 0, 11600, "", "", ""];

let browser: Browser;
let context: BrowserContext;
let open: ExcelPage;
let page: Page;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

async function start(rows: readonly (readonly unknown[])[]): Promise<void> {
  const { workbook } = new FakeExcel();
  workbook.active.GetRange(`A1:L${rows.length + 1}`).Values = [HEADER, ...rows] as never;
  await context?.close();
  context = await browser.newContext({ viewport: { width: 380, height: 760 } });
  open = await openInChromium(context, `${inject("pages")}taskpane/taskpane.html`, workbook.save());
  page = open.page;
  await page.locator("fluent-button.check:not([disabled-focusable])").waitFor();
}

const check = async (): Promise<void> => {
  await page.locator("fluent-button.check").click();
  await page.locator(".finding, .alike").first().waitFor();
  await page.locator(".under-way").waitFor({ state: "detached" });
};
const sheetNow = () => page.locator(".set-up-line .sheet-name").textContent();
const said = () => page.locator(".status .said").textContent();

test("sheets that the user adds, renames and deletes are followed", async () => {
  await start([TIGHT]);
  await check();
  await page.evaluate(() => fakeExcel.byUser((book) => void book.addSheet("New")));
  await page.evaluate(() =>
    fakeExcel.byUser((book) => {
      book.sheets[0]!.Name = "List 2";
    }),
  );
  await expect.poll(sheetNow).toBe("List 2");
  await page.locator('.finding[data-cell="L2"]').first().waitFor();
  await check();
  expect(await said()).not.toMatch(/choose another sheet/i);
  await page.locator(".set-up-line").click();
  await expect.poll(() => page.locator(".controls").textContent()).toContain("New");
  await page.evaluate(() => fakeExcel.byUser((book) => book.remove(book.sheets[0]!)));
  await expect.poll(said).toContain("List 2 was deleted");
  await expect.poll(sheetNow).toBe("New");
  expect(open.complaints).toEqual([]);
});

test("a check that Excel never answers can be stopped, and the next goes through", async () => {
  await start([TIGHT]);
  await page.evaluate(() => fakeExcel.failures.push(null, "silence"));
  await page.locator("fluent-button.check").click();
  await expect.poll(said).toContain("Reading");
  await page.locator("fluent-button.stop").click({ timeout: 60_000 });
  await expect.poll(said).toContain("stopped");
  await page.locator(".under-way").waitFor({ state: "detached" });
  await check();
  await page.locator('.finding[data-cell="L2"]').first().waitFor();
  expect(open.complaints).toEqual([]);
});

test("fixes of which Excel writes a part are taken back from the pane", async () => {
  const MANY = 25_000;
  await start(Array.from({ length: MANY }, (_, row) => numberCode(row + 1)));
  await check();
  const texts = () =>
    page.evaluate((most) => {
      let count = 0;
      for (let row = 1; row <= most; row += 1)
        if (fakeExcel.workbook.active.cells.at(row, 7).value === "00") count += 1;
      return count;
    }, MANY);
  await page.locator('[data-pick="Show"]').selectOption("alike");
  await page.evaluate(() => fakeExcel.failures.push(null, null, "GeneralException"));
  await page.locator('.apply-kind[data-code="SHAPE102"]').click();
  await expect.poll(said).toContain("Take back restores them");
  expect(await texts()).toBe(20_000);
  await page.locator("button.undo").click();
  await expect.poll(texts).toBe(0);
  expect(open.complaints).toEqual([]);
});
