import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { serveFolder } from "../../addin/workbench/serve-folder.mjs";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { launchChromium } from "../_support/chromium";
import type { Bench } from "./bench";
import { seededSchedule } from "./seeded-schedule";

const BUILT = fileURLToPath(new URL("../../addin/dist/workbench", import.meta.url));
const ROWS = 50_000;
/** one row in so many is mistaken: about 7,000 findings */
const ONE_IN = 7;
const STEPS = 12;
const OPENINGS = 3;
/** of what a chosen file is waited for */
const MILESTONES = ["sheet in sight", "flagged"] as const;

type Milestone = (typeof MILESTONES)[number];

/** A schedule of 50,000 rows in the built workbench, one row in seven mistaken: what its user waits for. */
const bench: Bench = {
  name: "workbench: 50,000 rows",
  async run() {
    const folder = mkdtempSync(join(tmpdir(), "big-sheet-"));
    const file = join(folder, "big.xlsx");
    const rows = seededSchedule(ROWS, undefined, ONE_IN).matrix;
    writeFileSync(file, writeNewWorkbook({ sheets: [{ name: "Schedule", rows }] }));
    const served = await serveFolder(BUILT, 0);
    const browser = await launchChromium();
    try {
      const opened: Record<Milestone, number[]> = { "sheet in sight": [], flagged: [] };
      let page = await browser.newPage();
      for (let time = 0; time < OPENINGS; time += 1) {
        await page.close();
        page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
        page.setDefaultTimeout(30_000);
        await page.goto(served.url);
        await page.locator("body[data-tools]").waitFor();
        const took = await openFile(page, file);
        for (const what of MILESTONES) opened[what].push(Math.round(took[what]));
      }
      const pane = page.locator("barwright-pane");
      const found = await pane.locator('[data-pick="Show"] option').first().textContent();
      const severity = pane.locator(".count").first();
      await severity.click();
      const drawn = await longest(page, () => severity.click(), null);
      const scrolled = await longest(page, () => page.mouse.wheel(0, 2_000), ".findings");
      const sheet = await longest(page, () => page.mouse.wheel(0, 2_000), "#grid");
      await page.mouse.click(...(await middleOf(page, "#grid")));
      const chosen: number[] = [];
      for (let step = 0; step < STEPS; step += 1)
        chosen.push(await longest(page, () => page.keyboard.press("ArrowDown"), null));
      await pane.locator(".finding .head").first().click();
      const listed: number[] = [];
      for (let step = 0; step < STEPS; step += 1)
        listed.push(await longest(page, () => page.keyboard.press("ArrowDown"), null));
      const session = await page.context().newCDPSession(page);
      await session.send("HeapProfiler.collectGarbage");
      const { usedSize } = await session.send("Runtime.getHeapUsage");
      return {
        figures: {
          findings: found ?? "",
          ...Object.fromEntries(
            MILESTONES.map((what) => [`file to ${what}, ms, each`, opened[what].join(", ")]),
          ),
          "list drawn anew, longest frame, ms": drawn,
          "list scrolled, longest frame, ms": scrolled,
          "sheet scrolled, longest frame, ms": sheet,
          "row selected, longest frame, ms, each": chosen.join(", "),
          "next finding, longest frame, ms, each": listed.join(", "),
          "page's memory, MB": Math.round(usedSize / 1e6),
        },
      };
    } finally {
      await browser.close();
      await served.close();
      rmSync(folder, { recursive: true });
    }
  },
};

export default bench;

/** Times by the page's own clock, so that handing the file to the browser is no part of them. */
async function openFile(page: Page, file: string): Promise<Record<Milestone, number>> {
  const taken = page.evaluate(
    () =>
      new Promise<{ "sheet in sight": number; flagged: number }>((resolve) => {
        const once = { once: true, capture: true };
        document.addEventListener("change", () => watch(performance.now()), once);
        function watch(began: number): void {
          let inSight = 0;
          const frame = (): void => {
            const isOpen = document.querySelector("#file-name")?.textContent === "big.xlsx";
            if (isOpen) inSight = performance.now() - began;
            else requestAnimationFrame(frame);
          };
          requestAnimationFrame(frame);
          const done = () => resolve({ "sheet in sight": inSight, flagged: performance.now() - began });
          addEventListener("barwright-opened", done, once);
        }
      }),
  );
  await page.locator("#file-input").setInputFiles(file);
  return taken;
}

async function middleOf(page: Page, part: string): Promise<[number, number]> {
  const box = await page.locator(part).first().boundingBox();
  if (box === null) throw new Error(`the page has no ${part}`);
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** The longest time between two frames while something is done over a part of the page. */
async function longest(page: Page, act: () => Promise<void>, over: string | null): Promise<number> {
  if (over !== null) await page.mouse.move(...(await middleOf(page, over)));
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
