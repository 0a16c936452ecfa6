import { mkdir } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, inject, test } from "vitest";
import { FLAG_FILLS } from "../../addin/workbook/flag-fills";
import { launchChromium } from "../_support/chromium";
import { FakeExcel } from "../_support/office-host/fake-excel";
import { type ExcelPage, type ExcelWindow, openInChromium } from "../_support/office-host/open-in-chromium";
import type { SavedWorkbook } from "../_support/office-host/workbook";

/** The built page as it is deployed, with the real library, in Chromium. */
declare const fakeExcel: ExcelWindow["fakeExcel"];

const SHOTS = fileURLToPath(new URL("../../.cache/screens", import.meta.url));
const HEADER = [
  "Member",
  "Bar mark",
  "Type and size",
  "No. of members",
  "No. in each",
  "Total no.",
  "Length mm",
  "Shape code",
  "A mm",
  "B mm",
  "C mm",
  "Former mm",
];
const GOOD = ["Slab", "'0101", "H25", 1, 84, 84, 9850, "'00", 9850, "", "", ""];
/** Excel has made a number of the code. */
const NUMBER_CODE = ["Slab", "'0102", "H25", 1, 62, 62, 11600, 0, 11600, "", "", ""];
/** BS 8666:2005 Table 2: the least former for H16 is 64. */
const TIGHT = ["Plinth", "'0202", "H16", 3, 14, 42, 2500, "21", 700, 1150, 700, 40];

/** Nothing is found in it: 2500 is 700 + 1150 + 700 less r + 2d = 64/2 + 32, up to the next 25. */
const PLAIN = [...TIGHT.slice(0, -1), ""];

let browser: Browser;
let context: BrowserContext;
let open: ExcelPage;
let page: Page;

beforeAll(async () => {
  await mkdir(SHOTS, { recursive: true });
  browser = await launchChromium();
});
afterAll(() => browser.close());

function saved(rows: readonly (readonly unknown[])[]): SavedWorkbook {
  const { workbook } = new FakeExcel();
  const sheet = workbook.active;
  const block = [HEADER, ...rows];
  sheet.GetRange(`A1:L${block.length}`).Values = block;
  sheet.GetRange("C2").Format.Fill.Color = "#dcefdc";
  return workbook.save();
}

async function start(book: SavedWorkbook, size = { width: 380, height: 760 }): Promise<void> {
  await context?.close();
  context = await browser.newContext({ viewport: size });
  open = await openInChromium(context, `${inject("pages")}taskpane/taskpane.html`, book);
  page = open.page;
  await page.locator("fluent-button.check:not([disabled-focusable])").waitFor();
}

const shot = (name: string) => page.screenshot({ path: `${SHOTS}/excel-${name}.png` });
const finding = (cell: string) => page.locator(`.finding[data-cell="${cell}"]`).first();
/** Opens or shuts the line in which sheet, standard and colours are chosen. */
const setUp = async (isOpen: boolean): Promise<void> => {
  const line = page.locator(".set-up-line");
  if ((await line.getAttribute("aria-expanded")) !== String(isOpen)) await line.click();
};
const fills = () => page.evaluate(() => fakeExcel.workbook.active.conditional.map((format) => format.fill));
const cell = (row: number, column: number) =>
  page.evaluate(([r, c]) => fakeExcel.workbook.active.cells.at(r, c), [row, column] as const);
const requests = () => page.evaluate(() => fakeExcel.requests.length);
const check = async () => {
  await page.locator("fluent-button.check").click();
  await page.locator(".finding, .alike, p.empty:has-text('Nothing was found')").first().waitFor();
  await page.locator(".under-way").waitFor({ state: "detached" });
};

describe("the pane in Excel", () => {
  beforeEach(() => start(saved([GOOD, NUMBER_CODE, TIGHT])));

  test("checks, jumps, fixes, takes back and clears, under its own strict policy", async () => {
    await shot("1-start");
    await check();
    expect(await fills()).toContain(FLAG_FILLS.unsafe);
    await shot("2-checked");

    await finding("L4").locator(".head").click();
    await expect
      .poll(() => page.evaluate(() => fakeExcel.workbook.GetSelectedRange().Address))
      .toBe("Sheet1!L4");
    await page.locator(".bar-body svg").waitFor();
    await shot("3-jumped");

    await finding("H3").locator(".head").click();
    await finding("H3").locator(".apply").click();
    await expect.poll(() => cell(2, 7)).toMatchObject({ value: "00", format: "@" });
    await shot("4-fixed");
    await page.locator(".undo").click();
    await expect.poll(() => cell(2, 7)).toMatchObject({ value: 0, format: "General" });

    await setUp(true);
    await page.locator("fluent-button.uncolour").click();
    await expect.poll(fills).toEqual([]);
    expect((await cell(1, 2)).fill).toBe("#dcefdc");
    await shot("5-cleared");
    expect(open.complaints).toEqual([]);
  });

  test("shows the bar that the user selects in the sheet", async () => {
    await check();
    await page.evaluate(() => fakeExcel.byUser((book) => book.active.GetRange("B4").Select()));
    await page.locator(".bar-title", { hasText: "0202" }).waitFor();
    await page.locator(".bar-body svg").waitFor();
    await shot("6-selected");
  });

  test("takes its listeners off the workbook when the page goes", async () => {
    const registered = () => page.evaluate(() => fakeExcel.workbook.registered);
    // the pane follows changes, and so do formulas that name a machine of the Shop sheet
    await expect.poll(registered).toEqual({ changed: 2, selection: 1 });
    await page.evaluate(() => dispatchEvent(new Event("pagehide")));
    await expect.poll(registered).toEqual({ changed: 0, selection: 0 });
  });

  test("finds and clears the flags of an earlier session after save, close and reopen", async () => {
    await check();
    const file = await page.evaluate(() => fakeExcel.workbook.save());
    await start(file);
    expect(await fills()).not.toEqual([]);
    await setUp(true);
    await page.locator("fluent-button.uncolour").click();
    await expect.poll(fills).toEqual([]);
  });

  test("keeps the standard in the workbook, and functions left without one follow it", async () => {
    const former = () =>
      page.evaluate(() => fakeExcel.functions.call("FORMER", [["#5"]], null, null, null, null));
    await page.evaluate(() =>
      Excel.run(async (context) => {
        context.workbook.names.add("Barwright.Standard", '="ACI318:2019"');
        await context.sync();
      }),
    );
    const answer = await former();
    expect(answer.ok).toBe(true);
    const stated = await page.evaluate(() =>
      fakeExcel.functions.call("FORMER", [["#5"]], [["ACI318:2019"]], null, null, null),
    );
    expect(answer.value).toEqual(stated.value);
  });

  test("refuses a protected sheet with the remedy", async () => {
    await page.evaluate(() => {
      fakeExcel.workbook.active.isProtected = true;
    });
    await page.locator("fluent-button.check").click();
    await page.locator("text=Unprotect Sheet").first().waitFor();
    await shot("7-protected");
    expect(await fills()).toEqual([]);
  });

  test("says so when Excel stops in mid-check, and the next check goes through", async () => {
    await page.evaluate(() => fakeExcel.failures.push(null, null, "GeneralException"));
    await page.locator("fluent-button.check").click();
    await page.locator("text=Excel stopped in the middle").first().waitFor();
    await check();
    expect(await fills()).not.toEqual([]);
  });
});

test("10,000 rows with findings on 5 % are checked in at most 4 requests and one for each further chunk", async () => {
  const rows = Array.from({ length: 10_000 }, (_, row) => {
    const [member, , ...rest] = row % 20 === 0 ? TIGHT : PLAIN;
    return [member, `M${row + 1}`, ...rest];
  });
  await start(saved(rows));
  const before = await requests();
  const began = Date.now();
  await check();
  console.info(`10,000 rows checked in ${Date.now() - began} ms`);
  const chunks = Math.ceil((500 * HEADER.length) / 20_000);
  expect((await requests()) - before).toBeLessThanOrEqual(4 + chunks - 1);
  expect(await fills()).toContain(FLAG_FILLS.unsafe);
  await shot("8-ten-thousand");
});

test("10,000 lengths spill from one call on the page", async () => {
  await start(saved([GOOD]));
  const began = Date.now();
  const answer = await page.evaluate(() => {
    const shapes = Array.from({ length: 10_000 }, (_, row) => [`${500 + row} +90 1200`]);
    return fakeExcel.functions.call("DEVELOPED", shapes, [["H16"]], null, [["BS8666:2005"]], [[64]], null);
  });
  console.info(`10,000 lengths spilled in ${Date.now() - began} ms`);
  const rows = answer.value as number[][];
  // legs less two set-backs of r + d = 48, and the arc on r + d/2 = 40
  expect(rows[0]?.[0]).toBeCloseTo(500 + 1200 - 96 + Math.PI * 20, 8);
  expect(rows[9_999]?.[0]).toBeCloseTo(10_499 + 1200 - 96 + Math.PI * 20, 8);
});

test("outside Excel the page says where it belongs", async () => {
  const plain = await browser.newPage();
  await plain.route("https://appsforoffice.microsoft.com/**", (route) =>
    route.fulfill({
      contentType: "text/javascript",
      body: "globalThis.CustomFunctions = { associate() {} }; globalThis.Office = { HostType: { Excel: 'Excel' }, onReady: async () => ({ host: null }) };",
    }),
  );
  await plain.goto(`${inject("pages")}taskpane/taskpane.html`);
  await plain.locator("text=open it from the Home tab").waitFor();
  await plain.close();
});
