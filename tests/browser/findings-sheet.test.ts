import { mkdir, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import axe from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { findingsSheetState } from "../../addin/workbook/own-findings-sheet";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { launchChromium } from "../_support/chromium";
import { partText } from "../_support/compare-packages";
import { elementsOf, xmlTree } from "../_support/xml-tree";
import { openWorkbench, type WorkbenchPage } from "./workbench-page";

const SHOTS = fileURLToPath(new URL("../../.cache/screens", import.meta.url));
const WAIT = { timeout: 90_000 };

let browser: Browser;
let bench: WorkbenchPage;
let page: Page;
let saved: Buffer;

beforeAll(async () => {
  await mkdir(SHOTS, { recursive: true });
  browser = await launchChromium();
  bench = await openWorkbench(browser, inject("pages"));
  ({ page } = bench);
  await bench.setUp(true);
  await page.locator("barwright-pours").waitFor({ state: "attached" });
});
afterAll(() => browser.close());

const part = () => page.locator("barwright-pane .pass-on");
const status = () => page.locator("barwright-pane .said");
const shot = (name: string) => page.screenshot({ path: `${SHOTS}/findings-${name}.png` });
const names = () => page.locator('barwright-pane [data-pick="Sheet"] option').allTextContents();

async function violations(): Promise<string[]> {
  await page.evaluate(axe.source);
  const found = await page.evaluate(async () => {
    const inPage = (globalThis as unknown as { axe: typeof axe }).axe;
    return (await inPage.run({ include: ["barwright-pane"] })).violations;
  });
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

async function write(): Promise<void> {
  await page.locator('barwright-pane [data-pick="Show"]').selectOption("passOn");
  await part().locator(".write-findings").click();
  await expect.poll(names, WAIT).toEqual(expect.arrayContaining([expect.stringContaining("Findings")]));
  await expect
    .poll(() => page.locator("barwright-pours section").getAttribute("aria-busy"), WAIT)
    .toBe("false");
}

describe("the findings sheet that the workbench writes", () => {
  test("stands in the workbook only once it was asked for", async () => {
    expect((await names()).some((name) => name.includes("Findings"))).toBe(false);
    await write();
    await expect.poll(() => status().textContent(), WAIT).toContain("Sheet Findings lists what was found");
    // the list of findings stays beside the sheet
    await page.locator('barwright-pane [data-pick="Show"]').selectOption("findings");
    expect(await page.locator("barwright-pane .finding").count()).toBeGreaterThan(3);
    await shot("1-sheet");
    expect(await violations()).toEqual([]);
    expect((await names()).filter((name) => name.includes("Findings"))).toHaveLength(1);
  });

  test("has its chart in the saved file, over the table, and no words in its place", async () => {
    saved = await bench.save();
    await writeFile(`${SHOTS}/findings-saved.xlsx`, saved);
    const chart = xmlTree(await partText(saved, "xl/charts/chart1.xml"));
    const sheet = openWorkbook(saved).read("Findings");
    const cells = Array.from({ length: sheet.rowCount }, (_, row) =>
      Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(row, column)),
    ).flat();
    for (const value of elementsOf(chart, "c:v")) {
      const isNumber = /^[\d.]+(e-?\d+)?$/.test(value.text);
      expect(cells).toContain(isNumber ? Number(value.text) : value.text);
    }
    expect(elementsOf(chart, "c:ser").length).toBeGreaterThan(4);
    expect(cells.some((cell) => /Here the saved file has a chart/.test(String(cell)))).toBe(false);
    expect(findingsSheetState(sheet)).toBe("untouched");
  });

  test("keeps its looks: colours, links to the cells, print set-up", async () => {
    const book = openWorkbook(saved);
    const xml = await partText(saved, book.sheet("Findings")!.part);
    expect(xml).toMatch(/<hyperlink ref="C3" location="'Schedule'![A-Z]+\d+"/);
    expect(xml).toContain('orientation="landscape"');
    expect(xml).toContain('ySplit="2"');
    expect(book.names.map(({ name }) => name)).toContain("_xlnm.Print_Titles");
    expect(book.formats.some(({ flag }) => flag === "unsafe")).toBe(true);
  });

  test("is written anew without a question while nobody has written on it", async () => {
    await write();
    expect((await names()).filter((name) => name.includes("Findings"))).toHaveLength(1);
    expect(await part().locator(".question").count()).toBe(0);
  });

  test("is written anew in a file that was saved with it, one chart and no part over", async () => {
    const opened = page.evaluate(
      () => new Promise<void>((done) => addEventListener("barwright-opened", () => done(), { once: true })),
    );
    await page.locator("#file-input").setInputFiles({
      name: "again.xlsx",
      mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      buffer: saved,
    });
    await expect.poll(() => page.locator("#file-name").textContent(), WAIT).toContain("again");
    await opened;
    await bench.checked();
    await bench.setUp(true);
    await expect.poll(names, WAIT).toEqual(expect.arrayContaining([expect.stringContaining("Findings")]));
    await write();
    const again = await bench.save();
    const parts = (bytes: Uint8Array) => [...openWorkbook(bytes).parts.archive.entries.keys()].sort();
    expect(parts(again)).toEqual(parts(saved));
    expect(openWorkbook(again).sheets.map(({ name }) => name)).toEqual(
      openWorkbook(saved).sheets.map(({ name }) => name),
    );
    expect(await partText(again, "xl/charts/chart1.xml")).toBe(await partText(saved, "xl/charts/chart1.xml"));
  });

  test("stays accessible in the dark theme and within 320 px", async () => {
    await page.emulateMedia({ colorScheme: "dark" });
    await page.waitForTimeout(300);
    await shot("2-dark");
    expect(await violations()).toEqual([]);
    await page.emulateMedia({ colorScheme: "light" });
    await page.setViewportSize({ width: 320, height: 900 });
    await part().evaluate((element) => element.toggleAttribute("expanded", true));
    await part().scrollIntoViewIfNeeded();
    const beyond = await part().evaluate((host) => {
      const edge = host.getBoundingClientRect().right + 0.5;
      return [...host.querySelectorAll("*")]
        .filter((element) => element.getBoundingClientRect().right > edge)
        .map((element) => element.outerHTML.slice(0, 80));
    });
    expect(beyond).toEqual([]);
    await shot("3-narrow");
    expect(await violations()).toEqual([]);
  });

  test("asks nothing of any other machine, and breaks no policy", () => {
    expect(bench.strangers).toEqual([]);
    expect(bench.troubles).toEqual([]);
  });
});
