import { mkdir } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import axe from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { launchChromium } from "../_support/chromium";
import { openWorkbench } from "./workbench-page";

const SHOTS = fileURLToPath(new URL("../../.cache/screens", import.meta.url));
const WAIT = { timeout: 90_000 };

/** Screens that people stand before, and what their systems ask of a page. */
const SCREENS = [
  ["wide", { viewport: { width: 1366, height: 768 } }],
  ["narrow", { viewport: { width: 320, height: 900 } }],
  ["dark", { viewport: { width: 1366, height: 768 }, colorScheme: "dark" }],
  ["forced-colours", { viewport: { width: 1366, height: 768 }, forcedColors: "active" }],
  // 1366 x 768 at 200 %
  ["double", { viewport: { width: 683, height: 384 }, deviceScaleFactor: 2 }],
  ["tablet", { viewport: { width: 820, height: 1180 }, hasTouch: true }],
  ["phone", { viewport: { width: 390, height: 844 }, hasTouch: true }],
] as const;

let browser: Browser;

beforeAll(async () => {
  await mkdir(SHOTS, { recursive: true });
  browser = await launchChromium();
});
afterAll(() => browser.close());

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const found = await page.evaluate(async () => {
    const inPage = (globalThis as unknown as { axe: typeof axe }).axe;
    return (await inPage.run({ include: ["barwright-pane"] })).violations;
  });
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

describe("each place of the pane", () => {
  test.each(SCREENS)("should be without a fault of access: %s", async (name, options) => {
    const { page } = await openWorkbench(browser, inject("pages"), options);
    const pane = page.locator("barwright-pane");
    const look = async (place: string): Promise<void> => {
      await page.screenshot({ path: `${SHOTS}/look-${name}-${place}.png` });
      expect(await violations(page), `${name}, ${place}`).toEqual([]);
    };
    await pane.locator(".finding .head").first().click();
    await pane.locator("button.bar-title").waitFor(WAIT);
    await look("1-check");
    await pane.locator('[data-pick="Show"]').selectOption("reading");
    await pane.locator("details.explained summary").click();
    await pane.locator(".why-rows li").first().waitFor(WAIT);
    await look("2-reading");
    await pane.locator('[data-pick="Show"]').selectOption("findings");
    await pane.locator("#tab-pours").click();
    await page.locator("barwright-pours .tonnage table").waitFor(WAIT);
    await page.locator("barwright-pours .make-loads").click();
    await page.locator("barwright-pours .ready").waitFor(WAIT);
    await look("3-pours");
    await pane.locator("#tab-bench").click();
    await page.locator("barwright-bench .ticket").waitFor(WAIT);
    await look("4-bench");
    await page.close();
  });
});
