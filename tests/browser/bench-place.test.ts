import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { launchChromium } from "../_support/chromium";
import { openWorkbench, type WorkbenchPage } from "./workbench-page";

const WAIT = { timeout: 60_000 };

let browser: Browser;
let bench: WorkbenchPage;

beforeAll(async () => {
  browser = await launchChromium();
  bench = await openWorkbench(browser, inject("pages"), { viewport: { width: 1366, height: 768 } });
  await bench.page.locator("barwright-pane #tab-bench").click();
  await place().locator(".ticket").waitFor(WAIT);
});
afterAll(() => browser.close());

const place = () => bench.page.locator("barwright-bench");
const said = () => bench.page.locator("barwright-pane .said");
const find = async (mark: string): Promise<void> => {
  await place().locator('[name="mark"]').fill(mark);
  await place().locator('[name="mark"]').press("Enter");
  await expect.poll(() => place().locator(".ticket .mark").textContent(), WAIT).toBe(mark);
};

describe("the bench", () => {
  test("should show the ticket of a mark, large, and the next and the one before", async () => {
    await find("0202");
    // to whoever hears the page as well
    expect(await place().locator('.progress[role="status"]').textContent()).toContain("Ticket of 0202");
    // BS 8666:2005 shape 21: A + B + (C) - r - 2d = 700 + 1450 + 700 - 32 - 32 = 2786, up to 2800
    expect(await place().locator(".cut").textContent()).toContain("2800");
    // nothing to tell takes no room
    const quiet = bench.page.locator("barwright-pane #place-bench .top");
    expect(await quiet.evaluate((top) => top.getBoundingClientRect().height)).toBe(0);
    const size = await place()
      .locator(".ticket .mark")
      .evaluate((mark) => Number.parseFloat(getComputedStyle(mark).fontSize));
    expect(size).toBeGreaterThan(28);
    await place().locator(".next").click();
    await expect.poll(() => place().locator(".ticket .mark").textContent(), WAIT).not.toBe("0202");
    await place().locator(".previous").click();
    await expect.poll(() => place().locator(".ticket .mark").textContent(), WAIT).toBe("0202");
  });

  test("should show no bar for a mark that no bar has, and the bar of the next mark", async () => {
    await find("0202");
    await place().locator('[name="mark"]').fill("99");
    await place().locator('[name="mark"]').press("Enter");
    await expect
      .poll(() => place().locator('[role="alert"]').allTextContents(), WAIT)
      .toEqual(["no bar of this sheet has the mark 99"]);
    expect(await place().locator(".ticket, .trial").count()).toBe(0);
    expect(await place().locator(".made").isDisabled()).toBe(true);
    await find("0201");
    expect(await place().locator('[role="alert"]').count()).toBe(0);
  });

  test("should write a trial from three fields, fit the log again and say what it changes", async () => {
    await find("0201");
    const trial = place().locator(".trial");
    await trial.locator('[name="bentTo"]').fill("94");
    await trial.locator('[name="released"]').fill("89,6");
    await trial.locator('[name="heat"]').fill("K641");
    await trial.locator('button[type="submit"]').click();
    await expect
      .poll(() => trial.locator(".learned").textContent(), WAIT)
      .toMatch(/Written on Shop; before: .*bending to \d.*now: .*bending to \d.*which gives \d.* to \d/);
    // what was done, and the way back, share the width of the pane without a column of words
    expect(await said().textContent()).toMatch(/trial of H16 on .*, written on Shop/);
    const line = await said().evaluate((words) => words.getBoundingClientRect().height);
    expect(line).toBeLessThan(40);
    await bench.page.locator("barwright-pane #tab-check").click();
    await bench.page.locator("barwright-pane .undo").click();
    await expect.poll(() => said().textContent(), WAIT).toContain("Taken back");
    await bench.page.locator("barwright-pane #tab-bench").click();
  });

  test("should refuse a bar that comes back further than it was bent", async () => {
    await find("0201");
    const trial = place().locator(".trial");
    await trial.locator('[name="bentTo"]').fill("89");
    await trial.locator('[name="released"]').fill("94");
    await trial.locator('button[type="submit"]').click();
    await bench.page.locator("barwright-pane #tab-check").click();
    await expect.poll(() => said().textContent(), WAIT).toMatch(/cannot come to 94 when it was bent to 89/);
    await bench.page.locator("barwright-pane #tab-bench").click();
  });

  test("should keep a tick on a sheet of the workbook, and show it again", async () => {
    await find("0202");
    await place().locator(".made").click();
    await expect.poll(() => place().locator(".progress").textContent(), WAIT).toContain("1 of 117 made");
    await find("0201");
    expect(await place().locator(".made").getAttribute("aria-pressed")).toBe("false");
    await find("0202");
    await expect.poll(() => place().locator(".made").getAttribute("aria-pressed")).toBe("true");
  });

  test("should fit a phone, and come back to the place last used", async () => {
    await bench.page.setViewportSize({ width: 360, height: 740 });
    const beyond = await place().evaluate((host) => {
      const edge = host.getBoundingClientRect().right + 0.5;
      const inside = [...(host.shadowRoot?.querySelectorAll("*:not(svg *)") ?? [])];
      return inside
        .filter((element) => element.getBoundingClientRect().right > edge)
        .map((element) => element.outerHTML.slice(0, 80));
    });
    expect(beyond).toEqual([]);
    await bench.page.reload();
    await expect.poll(() => place().locator(".ticket").count(), WAIT).toBe(1);
    expect(bench.troubles).toEqual([]);
  });
});
