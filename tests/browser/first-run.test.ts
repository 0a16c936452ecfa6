import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { FLAG_FILLS } from "../../addin/workbook/flag-fills";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { launchChromium } from "../_support/chromium";
import { openWorkbench, pixelsOf, type WorkbenchPage } from "./workbench-page";

let browser: Browser;
let bench: WorkbenchPage;

beforeAll(async () => {
  browser = await launchChromium();
  bench = await openWorkbench(browser, inject("pages"));
});
afterAll(() => browser.close());

const pane = () => bench.page.locator("barwright-pane");
const status = () => pane().locator('.said[role="status"]');

async function openExample(key: string, name: string): Promise<void> {
  await bench.page.locator("#open-example").click();
  await bench.page.locator(`[data-answer="${key}"]`).click();
  await bench.page.locator("#file-name", { hasText: name }).waitFor();
}

describe("the first check", () => {
  test("should stand with its colours before anything is calculated", async () => {
    const page = await browser.newPage();
    // the second worker is the one that calculates: it never hears of a workbook
    await page.addInitScript(() => {
      let made = 0;
      globalThis.Worker = class extends Worker {
        constructor(...given: ConstructorParameters<typeof Worker>) {
          super(...given);
          made += 1;
          if (made === 2) this.postMessage = () => undefined;
        }
      };
    });
    await page.goto(`${inject("pages")}workbench/index.html`);
    await page
      .locator("barwright-pane .finding, barwright-pane .alike")
      .first()
      .waitFor({ timeout: 120_000 });
    await page.locator("barwright-pane .under-way").waitFor({ state: "detached" });
    await expect.poll(() => pixelsOf(page, FLAG_FILLS.unsafe)).toBeGreaterThan(1_000);
    await page.close();
  });
});

describe("what is opened", () => {
  test("should give the keyboard back where it was, once a question is left by Escape", async () => {
    await bench.page.locator("#open-example").focus();
    await bench.page.keyboard.press("Enter");
    await bench.page.locator("dialog.ask").waitFor();
    await bench.page.keyboard.press("Escape");
    await bench.page.locator("dialog.ask").waitFor({ state: "detached" });
    expect(await bench.page.evaluate(() => document.activeElement?.id)).toBe("open-example");
  });

  test("should be checked by itself, with what to look at in an example", async () => {
    await openExample("inches", "Osier Bend");
    await expect.poll(() => status().textContent()).toMatch(/W4, whose leg of 3 in is too short/);
    await bench.list("F11");
    expect(await pane().locator('.finding[data-severity="unbendable"][data-cell="F11"]').count()).toBe(1);
  });

  test("should be shown by its findings, whatever was shown of the workbook before", async () => {
    await pane().locator('[data-pick="Show"]').selectOption("passOn");
    await openExample("messy", "Marrow Fen extras");
    await expect.poll(() => pane().locator(".findings .finding").count()).toBeGreaterThan(0);
    expect(await pane().locator('[data-pick="Show"]').inputValue()).toBe("findings");
  });

  test("should be a text as the command line reads it, saved as a workbook", async () => {
    const text = "Bar mark;Type and size;No.;Length mm;Shape code;A mm\n007;H16;4;1500,5;00;1500,5\n";
    await bench.open(Buffer.from(text), "site list.csv");
    expect(await bench.page.locator("#file-name").textContent()).toBe("site list.xlsx");
    await expect.poll(() => status().textContent()).toBe("Checked 1 bars");
  });
});

describe("the sheet on paper", () => {
  test("should be printed by Ctrl+P with what was found under each coloured row", async () => {
    await bench.openDemo();
    await bench.page.evaluate(() => {
      window.print = () => {};
    });
    await bench.page.keyboard.press("Control+p");
    const frame = bench.page.locator("iframe.printed-page");
    await frame.waitFor({ state: "attached" });
    const html = (await frame.getAttribute("srcdoc")) ?? "";
    expect(html).toMatch(/>0202<.*>185\.7<[\s\S]*?unsafe \(BEND101\): former 40 mm is below the least 64 mm/);
    expect(html).toContain("counter(pages)");
  });
});

describe("a finger", () => {
  test("should move the sheet that it is drawn over, and reach every sheet by its tab", async () => {
    const context = await browser.newContext({
      viewport: { width: 820, height: 1180 },
      hasTouch: true,
      isMobile: true,
    });
    const tablet = await openWorkbench(context, inject("pages"));
    const { page } = tablet;
    const before = await page.locator("#grid").screenshot();
    const box = await page.locator('#grid canvas[id*="sheet-main-canvas"]').first().boundingBox();
    if (box === null) throw new Error("the grid has no canvas");
    const session = await context.newCDPSession(page);
    const at = (y: number) => [{ x: box.x + box.width / 2, y: box.y + y }];
    await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: at(500) });
    for (let y = 480; y >= 200; y -= 20)
      await session.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: at(y) });
    await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
    await expect.poll(async () => (await page.locator("#grid").screenshot()).equals(before)).toBe(false);
    const range = () => page.locator("#grid input:not([readonly])").last().inputValue();
    expect(await range(), "one cell, and no block of them").toMatch(/^[A-Z]+\d+$/);
    const tab = page.locator('[data-u-comp="slide-tab-item"]', { hasText: "Extras" });
    await tab.tap();
    await expect.poll(() => tab.getAttribute("aria-selected")).toBe("true");
    await context.close();
  });
});

describe("where the comma is the decimal sign", () => {
  test("should take and show numbers by it, and check the same cells as anywhere", async () => {
    const german = await openWorkbench(browser, inject("pages"), { locale: "de-DE" });
    const { page } = german;
    const count = async (of: WorkbenchPage) =>
      of.page.locator('barwright-pane [data-pick="Show"] option').first().textContent();
    await bench.openDemo();
    expect(await count(german)).toBe(await count(bench));
    await german.typeAt("AC3", "1,5");
    await german.typeAt("AC4", "1.234,25");
    await german.typeAt("AC5", "=AC3*2");
    const saved = openWorkbook(await german.save()).read("Schedule");
    expect([2, 3, 4].map((row) => saved.valueAt(row, 28))).toEqual([1.5, 1234.25, 3]);
    // what is opened to be edited, and left, is what it was
    await german.goTo("AC4");
    await page.keyboard.press("F2");
    await page.keyboard.press("Enter");
    expect(
      openWorkbook(await german.save())
        .read("Schedule")
        .valueAt(3, 28),
    ).toBe(1234.25);
    await page.close();
  });
});
