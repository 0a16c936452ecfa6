import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { demoWorkbook } from "../../addin/demo/demo-workbook";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { copyFaults } from "../_support/copy-faults";

/** The workbench in a browser, with what the tests ask of it. */
export interface WorkbenchPage {
  readonly page: Page;
  /** addresses asked for outside the page's own origin */
  readonly strangers: string[];
  /** errors of the page, and breaches of its policy */
  readonly troubles: string[];
  /** resolves once a check stands in the pane */
  checked(): Promise<void>;
  /** the first finding at a cell of the chosen sheet, listed alone with others at the same cell */
  finding(cell: string): Promise<ReturnType<Page["locator"]>>;
  /** lists findings with these words, row by row; all of them where it is blank */
  list(words: string): Promise<void>;
  /** opens or shuts the line in which sheet, standard and colours are chosen */
  setUp(isOpen: boolean): Promise<void>;
  /** Selects a cell by the name box. */
  goTo(cell: string): Promise<void>;
  /** types into a cell of the sheet in view, by name box and keyboard */
  typeAt(cell: string, text: string): Promise<void>;
  /** pixels of exactly that colour in the grid */
  pixels(colour: string): Promise<number>;
  /** the file that the page's own save gives */
  save(): Promise<Buffer>;
  /** a file that the page saved, held against the one that it was opened from */
  held(saved: Buffer): Promise<Buffer>;
  /** opens the first example anew, and leaves what was not saved */
  openDemo(): Promise<void>;
  /** opens bytes as a user would choose a file */
  open(bytes: Buffer, name: string): Promise<void>;
}

/** Cells may be others than they were; nothing else may be lost or wrong. */
async function refuseFaults(original: Buffer, saved: Buffer): Promise<void> {
  const names = openWorkbook(new Uint8Array(original)).sheets.map(({ name }) => name);
  const faults = await copyFaults(original, saved, new Set(names));
  if (faults.length > 0) throw new Error(`the saved file is faulty:\n${faults.join("\n")}`);
}

/** The soak lets another program open all that was saved. */
function keep(saved: Buffer): void {
  const folder = process.env.BARWRIGHT_KEEP_SAVES;
  if (folder === undefined) return;
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${process.pid}-${readdirSync(folder).length}.xlsx`), saved);
}

export async function openWorkbench(
  browser: Browser | BrowserContext,
  pages: string,
  options: Parameters<Browser["newPage"]>[0] = {},
): Promise<WorkbenchPage> {
  const page =
    "newContext" in browser
      ? await browser.newPage({ viewport: { width: 1400, height: 900 }, ...options })
      : await browser.newPage();
  page.setDefaultTimeout(120_000);
  const strangers: string[] = [];
  const troubles: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(pages) && !/^(data|blob):/.test(url)) strangers.push(url);
  });
  page.on("pageerror", (error) => troubles.push(error.stack ?? ""));
  page.on("console", (message) => {
    if (message.type() === "error") troubles.push(message.text());
  });
  await slowDown(page);
  await page.goto(`${pages}workbench/index.html`);
  const pane = page.locator("barwright-pane");
  const checked = async (): Promise<void> => {
    await pane.locator(".finding, .alike").first().waitFor({ timeout: 120_000 });
    await pane.locator(".under-way").waitFor({ state: "detached", timeout: 120_000 });
  };
  await checked();
  await page.locator("body[data-tools]").waitFor();
  const list = async (words: string): Promise<void> => {
    const filter = pane.locator("button.filter");
    if ((await filter.getAttribute("aria-expanded")) === "false") await filter.click();
    await pane.locator('.filters [data-pick="Order"]').selectOption("row");
    await pane.locator("input.words").fill(words);
    await pane.locator('.findings[aria-busy="false"]').waitFor();
  };
  const goTo = async (cell: string): Promise<void> => {
    const nameBox = page.locator("#grid input:not([readonly])").last();
    await nameBox.fill(cell);
    await nameBox.press("Enter");
    await page.waitForFunction(() => document.activeElement?.closest("#grid input") === null);
    await drawn(page);
  };
  /** resolves once the workbook that is opened next is checked */
  const openedNext = (): Promise<unknown> =>
    page.evaluate(() => new Promise((done) => addEventListener("barwright-opened", done, { once: true })));
  let original: Buffer = Buffer.from(demoWorkbook());
  const held = async (saved: Buffer): Promise<Buffer> => {
    await refuseFaults(original, saved);
    keep(saved);
    return saved;
  };
  return {
    page,
    strangers,
    troubles,
    checked,
    list,
    async finding(cell) {
      await list(cell);
      return pane.locator(`.finding[data-cell="${cell}"]`).first();
    },
    async setUp(isOpen) {
      const line = pane.locator(".set-up-line");
      if ((await line.getAttribute("aria-expanded")) !== String(isOpen)) await line.click();
    },
    goTo,
    async typeAt(cell, text) {
      await goTo(cell);
      await page.keyboard.type(text);
      await page.keyboard.press("Enter");
    },
    pixels: (colour) => pixelsOf(page, colour),
    async save() {
      const download = page.waitForEvent("download");
      await page.locator("#save-file").click();
      return held(await readFile(await (await download).path()));
    },
    held,
    async openDemo() {
      original = Buffer.from(demoWorkbook());
      const opened = openedNext();
      await page.locator("#open-example").click();
      await page.locator('[data-answer="british"]').click();
      if (await page.locator("#file-state").isVisible()) await page.locator('[data-answer="leave"]').click();
      await opened;
    },
    async open(buffer, name) {
      const mimeType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
      original = buffer;
      const opened = openedNext();
      await page.locator("#file-input").setInputFiles({ name, mimeType, buffer });
      await opened;
    },
  };
}

/** Pixels of exactly that colour in the grid. */
export function pixelsOf(page: Page, colour: string): Promise<number> {
  return page.evaluate((wanted) => {
    const canvas = document.querySelector<HTMLCanvasElement>(
      '#grid canvas[class*="sheet-main-canvas"], #grid canvas[id*="sheet-main-canvas"]',
    );
    const context = canvas?.getContext("2d");
    if (!canvas || !context) throw new Error("the grid has no canvas");
    const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
    const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(wanted.slice(at, at + 2), 16));
    let count = 0;
    for (let at = 0; at < data.length; at += 4) {
      if (data[at] === red && data[at + 1] === green && data[at + 2] === blue) count += 1;
    }
    return count;
  }, colour);
}

/** Resolves once the page has drawn what it was told last. */
export function drawn(page: Page): Promise<void> {
  return page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))),
  );
}

/** `SLOWDOWN=6` runs the page's own thread six times slower, for machines that the tests are not run on. */
async function slowDown(page: Page): Promise<void> {
  const rate = Number(process.env["SLOWDOWN"] ?? 1);
  if (!(rate > 1)) return;
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
}
