import { readFile } from "node:fs/promises";
import type { Browser, BrowserContext, Page } from "playwright-core";

/** The workbench in a browser, with what the tests ask of it. */
export interface WorkbenchPage {
  readonly page: Page;
  /** addresses asked for outside the page's own origin */
  readonly strangers: string[];
  /** errors of the page, and breaches of its policy */
  readonly troubles: string[];
  /** resolves once a check stands in the pane */
  checked(): Promise<void>;
  /** the first finding at a cell of the chosen sheet */
  finding(cell: string): ReturnType<Page["locator"]>;
  /** types into a cell of the sheet in view, by name box and keyboard */
  typeAt(cell: string, text: string): Promise<void>;
  /** pixels of exactly that colour in the grid */
  pixels(colour: string): Promise<number>;
  /** the file that the page's own save gives */
  save(): Promise<Buffer>;
  /** opens the demonstration anew, and leaves what was not saved */
  openDemo(): Promise<void>;
  /** opens bytes as a user would choose a file */
  open(bytes: Buffer, name: string): Promise<void>;
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
    await pane.locator(".group").first().waitFor({ timeout: 120_000 });
    await pane.locator("fluent-progress-bar").waitFor({ state: "detached", timeout: 120_000 });
  };
  await checked();
  return {
    page,
    strangers,
    troubles,
    checked,
    finding: (cell) => pane.locator(`.finding[data-cell="${cell}"]`).first(),
    async typeAt(cell, text) {
      const nameBox = page.locator("#grid input:not([readonly])").last();
      await nameBox.fill(cell);
      await nameBox.press("Enter");
      await page.waitForTimeout(300);
      await page.keyboard.type(text);
      await page.keyboard.press("Enter");
    },
    pixels: (colour) =>
      page.evaluate((wanted) => {
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
      }, colour),
    async save() {
      const download = page.waitForEvent("download");
      await page.locator("#save-file").click();
      return readFile(await (await download).path());
    },
    async openDemo() {
      const opened = page.evaluate(
        () => new Promise((done) => addEventListener("barwright-opened", done, { once: true })),
      );
      await page.locator("#open-demo").click();
      if (await page.locator("#file-state").isVisible()) await page.locator('[data-answer="leave"]').click();
      await opened;
    },
    async open(buffer, name) {
      const mimeType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
      await page.locator("#file-input").setInputFiles({ name, mimeType, buffer });
      await page.locator("#file-name", { hasText: name }).waitFor();
    },
  };
}

/** `SLOWDOWN=6` runs the page's own thread six times slower, for machines that the tests are not run on. */
async function slowDown(page: Page): Promise<void> {
  const rate = Number(process.env["SLOWDOWN"] ?? 1);
  if (!(rate > 1)) return;
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
}
