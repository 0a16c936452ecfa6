import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { serveFolder } from "../../addin/workbench/serve-folder.mjs";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { launchChromium } from "../_support/chromium";
import type { Bench } from "./bench";
import { seededSchedule } from "./seeded-schedule";

const BUILT = fileURLToPath(new URL("../../addin/dist/workbench", import.meta.url));
const ROWS = 50_000;
const STEPS = 12;

/** A schedule of 50,000 rows in the built workbench, one row in twenty mistaken: what its user waits for. */
const bench: Bench = {
  name: "workbench: 50,000 rows",
  async run() {
    const buffer = Buffer.from(
      writeNewWorkbook({ sheets: [{ name: "Schedule", rows: seededSchedule(ROWS).matrix }] }),
    );
    const served = await serveFolder(BUILT, 0);
    const browser = await launchChromium();
    try {
      const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
      page.setDefaultTimeout(110_000);
      await page.goto(served.url);
      await page.locator("body[data-tools]").waitFor();
      const opened = page.evaluate(
        () => new Promise((done) => addEventListener("barwright-opened", done, { once: true })),
      );
      const began = performance.now();
      await page.locator("#file-input").setInputFiles({ name: "big.xlsx", mimeType: "", buffer });
      await page.locator("#file-name", { hasText: "big.xlsx" }).waitFor();
      const shown = performance.now() - began;
      await opened;
      const checked = performance.now() - began;
      const pane = page.locator("barwright-pane");
      const found = await pane.locator('[data-pick="Show"] option').first().textContent();
      const first = pane.locator(".finding .head").first();
      const scrolled = await longest(page, () => page.mouse.wheel(0, 2_000), ".findings");
      const sheet = await longest(page, () => page.mouse.wheel(0, 2_000), "#grid");
      const chosen: number[] = [];
      for (let step = 0; step < STEPS; step += 1)
        chosen.push(await longest(page, () => page.keyboard.press("ArrowDown"), null));
      await first.waitFor();
      const session = await page.context().newCDPSession(page);
      const { usedSize } = await session.send("Runtime.getHeapUsage");
      return {
        figures: {
          findings: found ?? "",
          "file to sheet in sight, ms": Math.round(shown),
          "file to checked and flagged, ms": Math.round(checked),
          "list scrolled, longest frame, ms": scrolled,
          "sheet scrolled, longest frame, ms": sheet,
          "row selected, longest frame, ms, each": chosen.join(", "),
          "page's memory, MB": Math.round(usedSize / 1e6),
        },
      };
    } finally {
      await browser.close();
      await served.close();
    }
  },
};

export default bench;

/** The longest time between two frames while something is done over a part of the page. */
async function longest(page: Page, act: () => Promise<void>, over: string | null): Promise<number> {
  if (over !== null) {
    const box = await page.locator(over).first().boundingBox();
    if (box === null) throw new Error(`the page has no ${over}`);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  }
  await page.evaluate(() => {
    const state = { last: performance.now(), most: 0, isOn: true };
    Object.assign(globalThis, { frames: state });
    const frame = (now: number): void => {
      state.most = Math.max(state.most, now - state.last);
      state.last = now;
      if (state.isOn) requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  });
  await act();
  await page.waitForTimeout(400);
  return page.evaluate(() => {
    const { frames } = globalThis as unknown as { frames: { most: number; isOn: boolean } };
    frames.isOn = false;
    return Math.round(frames.most);
  });
}
