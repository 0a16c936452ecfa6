import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { FLAG_FILLS } from "../../addin/workbook/flag-fills";
import { launchChromium } from "../_support/chromium";
import { openWorkbench, type WorkbenchPage } from "./workbench-page";

const WAIT = { timeout: 60_000 };
/** most stops of Tab to what a place is for, and most taps to what its user came for */
const AIM = { stops: 8, taps: 4, share: 0.6 };

let browser: Browser;
let bench: WorkbenchPage;
let page: Page;
const measured: Record<string, number> = {};

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(async () => {
  console.info(JSON.stringify(measured));
  await browser.close();
});

const pane = () => page.locator("barwright-pane");

async function fresh(width: number, height: number): Promise<void> {
  await page?.close();
  bench = await openWorkbench(browser, inject("pages"), { viewport: { width, height } });
  ({ page } = bench);
}

/** Stops of Tab from the pane's first control until the focus stands in a part of it. */
async function stopsTo(element: string, selector: string): Promise<number> {
  await pane().locator("fluent-tab[aria-selected=true]").focus();
  for (let stops = 1; stops <= 30; stops += 1) {
    const isThere = await page.evaluate(
      ([host, part]) => {
        let focused: Element | null | undefined = document.activeElement;
        while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
        return focused?.closest(part) !== null && focused?.getRootNode() instanceof ShadowRoot
          ? (focused.getRootNode() as ShadowRoot).host.localName === host
          : false;
      },
      [element, selector] as const,
    );
    if (isThere) return stops;
    await page.keyboard.press("Tab");
  }
  return Infinity;
}

describe("the way to what each user came for", () => {
  beforeAll(() => fresh(1366, 768));

  test("should be few stops of Tab in each place", async () => {
    measured["stops to the list"] = await stopsTo("barwright-pane", ".list");
    await pane().locator("#tab-pours").click();
    await page.locator("barwright-pours .tonnage table").waitFor(WAIT);
    measured["stops to the tonnes"] = await stopsTo("barwright-pours", ".body");
    await pane().locator("#tab-bench").click();
    await page.locator("barwright-bench .ticket").waitFor(WAIT);
    measured["stops to the ticket"] = await stopsTo("barwright-bench", ".scroll");
    for (const stops of Object.values(measured)) expect(stops).toBeLessThanOrEqual(AIM.stops);
  });

  test("should be few taps from a cold start", async () => {
    await fresh(1366, 768);
    let taps = 0;
    const tap = async (selector: string): Promise<void> => {
      taps += 1;
      await page.locator(selector).first().click();
    };
    await tap("barwright-pane .finding .head");
    await pane().locator(".finding.current").waitFor(WAIT);
    measured["taps to a finding"] = taps;
    taps = 0;
    await tap("barwright-pane #tab-pours");
    await tap("barwright-pours .only-pour");
    await expect.poll(() => page.locator("barwright-pours p.total").textContent(), WAIT).toContain("chosen");
    measured["taps to the tonnes of a pour"] = taps;
    taps = 0;
    await tap("barwright-pane #tab-bench");
    await tap('barwright-bench [name="mark"]');
    await page.locator('barwright-bench [name="mark"]').fill("0201");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("barwright-bench .mark").textContent(), WAIT).toBe("0201");
    measured["taps to a mark's ticket"] = taps;
    await tap('barwright-bench [name="released"]');
    await page.keyboard.type("89.9");
    await tap('barwright-bench .trial button[type="submit"]');
    await page.locator("barwright-bench .learned").waitFor(WAIT);
    measured["taps to a trial entered"] = taps;
    for (const [what, count] of Object.entries(measured))
      if (what.startsWith("taps")) expect(count, what).toBeLessThanOrEqual(AIM.taps);
  });

  test.each([
    [1366, 768],
    [320, 900],
  ])("should leave the list most of the pane, a bar selected, at %i x %i", async (width, height) => {
    await fresh(width, height);
    await pane().locator(".finding .head").first().click();
    await pane().locator("button.bar-title").waitFor(WAIT);
    const { list, whole } = await pane().evaluate((host) => ({
      list: host.shadowRoot?.querySelector(".list")?.getBoundingClientRect().height ?? 0,
      whole: host.getBoundingClientRect().height,
    }));
    measured[`list at ${width} px, px`] = Math.round(list);
    measured[`pane at ${width} px, px`] = Math.round(whole);
    expect(list / whole).toBeGreaterThanOrEqual(AIM.share);
  });

  test("should show the row that a finding or the name box leads to, under a tall frozen head", async () => {
    // room for one row and a half under the head
    await fresh(320, 700);
    const unsafe = () => bench.pixels(FLAG_FILLS.unsafe);
    await pane().locator('.finding[data-cell="N16"] .head').first().click();
    await expect.poll(unsafe).toBeGreaterThan(500);
    await bench.goTo("H60");
    await expect.poll(unsafe).toBe(0);
    await page.setViewportSize({ width: 1366, height: 768 });
    // row 16 is the red one, and stands above it
    await bench.goTo("H17");
    await expect.poll(unsafe).toBeGreaterThan(500);
  });
});
