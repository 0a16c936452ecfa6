import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { launchChromium } from "../_support/chromium";
import { openWorkbench, type WorkbenchPage } from "./workbench-page";

let browser: Browser;
let bench: WorkbenchPage;

beforeAll(async () => {
  browser = await launchChromium();
  bench = await openWorkbench(browser, inject("pages"));
});
afterAll(() => browser.close());

const pane = () => bench.page.locator("barwright-pane");
const rows = () => pane().locator(".finding");

describe("the list of findings", () => {
  test("should follow an edit of a cell, keeping the place in the list, and its undo", async () => {
    const unsafe = pane().locator('.group[data-severity="unsafe"] .finding[data-cell="N16"]');
    await bench.finding("N16").locator("fluent-button.place").first().click();
    const before = await rows().count();
    await pane()
      .locator(".middle")
      .evaluate((list) => list.scrollTo(0, 300));
    await bench.typeAt("N16", "64");
    await expect.poll(() => unsafe.count()).toBe(0);
    expect(await rows().count()).toBe(before - 1);
    expect(
      await pane()
        .locator(".middle")
        .evaluate((list) => list.scrollTop),
    ).toBeGreaterThan(100);
    await bench.page.keyboard.press("Control+z");
    await expect.poll(() => unsafe.count()).toBe(1);
    expect(await rows().count()).toBe(before);
  });
});
