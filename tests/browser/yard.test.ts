import { mkdtempSync } from "node:fs";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import axe from "axe-core";
import JSZip from "jszip";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { demoWorkbook } from "../../addin/demo/demo-workbook";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { launchChromium } from "../_support/chromium";
import { barwright } from "../_support/command-line";
import { openWorkbench, type WorkbenchPage } from "./workbench-page";

const SHOTS = fileURLToPath(new URL("../../.cache/screens", import.meta.url));
const WAIT = { timeout: 90_000 };

let browser: Browser;
let bench: WorkbenchPage;
let page: Page;

/** A4 between its margins, in the pixels of a page: 190 mm at 96 to the inch. */
const PAPER = { width: 718, height: 1000 };

/** Texts of the tables of bends that stick out of their ticket on paper. */
async function tablesBeyondTickets(html: string): Promise<string[]> {
  const printed = await browser.newPage({ viewport: PAPER });
  await printed.emulateMedia({ media: "print" });
  await printed.setContent(html);
  const beyond = await printed.evaluate(() =>
    [...document.querySelectorAll(".bends")]
      .filter((table) => {
        const ticket = table.closest(".ticket")?.getBoundingClientRect();
        return ticket !== undefined && table.getBoundingClientRect().right > ticket.right;
      })
      .map(({ textContent }) => textContent ?? ""),
  );
  await printed.close();
  return beyond;
}

beforeAll(async () => {
  await mkdir(SHOTS, { recursive: true });
  browser = await launchChromium();
  bench = await openWorkbench(browser, inject("pages"));
  ({ page } = bench);
  await page.locator("barwright-pane #tab-pours").click();
  await yard().locator(".tonnage table").waitFor(WAIT);
});
afterAll(() => browser.close());

const yard = () => page.locator("barwright-pours");
const status = () => page.locator("barwright-pane .said");
const shot = (name: string) => page.screenshot({ path: `${SHOTS}/yard-${name}.png` });
const part = (name: string) => yard().locator(`.${name}`).first();

/** Brings one part of the pours into sight, unfolded. */
async function show(name: string): Promise<void> {
  for (const item of await yard().locator("fluent-accordion-item").all()) {
    await item.evaluate(
      (element, wanted) => element.toggleAttribute("expanded", element.classList.contains(wanted)),
      name,
    );
  }
  await part(name).scrollIntoViewIfNeeded();
}

async function violations(): Promise<string[]> {
  await page.evaluate(axe.source);
  const found = await page.evaluate(async () => {
    const inPage = (globalThis as unknown as { axe: typeof axe }).axe;
    return (await inPage.run({ include: ["barwright-pane"] })).violations;
  });
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

async function downloaded(act: () => Promise<void>): Promise<Buffer> {
  const download = page.waitForEvent("download");
  await act();
  return readFile(await (await download).path());
}

/** Values of a sheet as stored, by address, read without our own layer. */
async function storedCells(file: Buffer, sheet: string): Promise<Map<string, number | string>> {
  const zip = await JSZip.loadAsync(file);
  const text = async (name: string) => (await zip.file(name)?.async("string")) ?? "";
  const id = new RegExp(`<sheet name="${sheet}"[^>]*?:id="([^"]+)"`).exec(await text("xl/workbook.xml"))?.[1];
  const rels = await text("xl/_rels/workbook.xml.rels");
  const line = rels.match(/<Relationship [^>]*>/g)?.find((each) => each.includes(`Id="${id}"`)) ?? "";
  const target = (/Target="([^"]+)"/.exec(line)?.[1] ?? "").replace(/^\/?(xl\/)?/, "xl/");
  const shared = [
    ...(await text("xl/sharedStrings.xml")).matchAll(/<si>.*?<t[^>]*>([^<]*)<\/t>.*?<\/si>/gs),
  ].map(([, value = ""]) => value);
  const cells = new Map<string, number | string>();
  for (const [, address = "", attributes = "", inner = ""] of (await text(target)).matchAll(
    /<c r="([A-Z]+\d+)"([^>]*?)(?:\/>|>(.*?)<\/c>)/gs,
  )) {
    const value = /<v>([^<]*)<\/v>/.exec(inner)?.[1] ?? /<t[^>]*>([^<]*)<\/t>/.exec(inner)?.[1];
    if (value === undefined) continue;
    if (/t="s"/.test(attributes)) cells.set(address, shared[Number(value)] ?? "");
    else cells.set(address, /t="(str|inlineStr|e)"/.test(attributes) ? value : Number(value));
  }
  return cells;
}

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

describe("the yard's side of the workbench", () => {
  test("should add up tonnes in a chart and the same in a table", async () => {
    const table = part("tonnage").locator("table");
    const totals = await table.locator("tbody tr td:nth-child(2)").allTextContents();
    const all = Number(await table.locator("tfoot td:nth-child(2)").textContent());
    expect(totals.map(Number).reduce((sum, tonnes) => sum + tonnes, 0)).toBeCloseTo(all, 2);
    expect(await yard().locator("p.total").textContent()).toContain(`${all.toFixed(3)} t in Schedule`);
    const sizes = await table.locator("thead th").allTextContents();
    const figures = sizes.slice(2).map((size) => Number(/\d+/.exec(size)?.[0]));
    expect(figures).toEqual([...figures].sort((a, b) => a - b));
    await part("tonnage").locator("summary").click();
    const chart = part("tonnage").locator("svg.tonnage-chart");
    expect(await chart.getAttribute("aria-label")).toContain(`${all.toFixed(3)} t`);
    expect(
      await chart
        .locator("rect.series-0")
        .first()
        .evaluate((bar) => getComputedStyle(bar).fill),
    ).toBe("rgb(31, 95, 153)");
    await shot("1-tonnage");
    expect(await violations()).toEqual([]);
    const csv = await downloaded(() => part("tonnage").locator(".save-totals").click());
    expect(csv.toString()).toMatch(/^\ufeffpour,H\d+,.*\r\n(.*\r\n)+total,.*\.\d{3}\r\n$/);
  });

  test("should add the sheet up with other files, without a word of them leaving the page", async () => {
    const other = writeNewWorkbook({
      sheets: [
        {
          name: "Bars",
          rows: [
            ["Member", "Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A mm", "Pour"],
            ["Far slab", "X1", "H20", 100, 5000, "00", 5000, "P9"],
          ],
        },
      ],
      names: new Map(),
    });
    const files = yard().locator(".with-files");
    await show("with-files");
    await files.locator("input[multiple]:not([webkitdirectory])").setInputFiles([
      { name: "far.xlsx", mimeType: XLSX, buffer: Buffer.from(other) },
      { name: "torn.xlsx", mimeType: XLSX, buffer: Buffer.from([1, 2, 3]) },
    ]);
    // 100 x 5 m x 2.466 kg/m: BS 4449:2005, Table 6
    await expect
      .poll(() => files.locator("tbody tr", { hasText: "P9" }).textContent(), WAIT)
      .toContain("1.233");
    const alone = Number(await part("tonnage").locator("tfoot td:nth-child(2)").textContent());
    expect(await files.locator(".job-total strong").textContent()).toBe(`${(alone + 1.233).toFixed(3)} t`);
    expect(await files.locator(".notes").textContent()).toContain("not read: torn.xlsx");
    await shot("1b-with-files");
    expect(await violations()).toEqual([]);
  });

  test("should write a Totals sheet that follows the schedule to the gram", async () => {
    await part("tonnage").locator(".write-totals").click();
    await expect.poll(() => status().textContent(), WAIT).toContain("Sheet Totals follows Schedule");
    await shot("2-totals-sheet");
    const file = await bench.save();
    // the totals of the command line, which reads the saved file by itself
    const path = join(mkdtempSync(join(tmpdir(), "barwright-totals-")), "saved.xlsx");
    await writeFile(path, file);
    const told = await barwright(["tonnage", path, "--sheet", "Schedule", "--json"]);
    const { pours } = JSON.parse(told.out) as { pours: { pour: string; total: number }[] };
    expect(pours.length).toBe(7);
    const totals = await storedCells(file, "Totals");
    // rows behind the totals stand from column Z
    const sizes = [...totals].filter(([address]) => /^[A-X]7$/.test(address));
    const last = sizes.at(-1)?.[0][0] ?? "";
    expect(totals.get(`${last}7`)).toBe("total");
    pours.forEach(({ pour, total }, index) => {
      expect(totals.get(`A${8 + index}`)).toBe(pour);
      expect(totals.get(`${last}${8 + index}`), pour).toBeCloseTo(total, 6);
    });
  });

  test("should ask before it writes over its own Totals sheet", async () => {
    await part("tonnage").locator(".write-totals").click();
    await part("tonnage").locator(".question").waitFor(WAIT);
    expect(await violations()).toEqual([]);
    await shot("3-asks");
    await part("tonnage").locator(".replace-totals").click();
    await expect.poll(() => part("tonnage").locator(".question").count(), WAIT).toBe(0);
    await bench.setUp(true);
    const names = await page.locator('barwright-pane [data-pick="Sheet"] option').allTextContents();
    expect(names.filter((name) => name.includes("Totals"))).toEqual(["Totals"]);
  });

  test("should make pages of the pours that are ticked alone", async () => {
    const [first, second] = await part("tonnage").locator("tbody tr").all();
    const pour = await first!.locator("input").getAttribute("data-pour");
    await first!.locator(".only-pour").click();
    expect(await yard().locator("p.total").textContent()).toContain("in 1 of 7 chosen");
    const csv = await downloaded(() => part("tonnage").locator(".save-totals").click());
    const lines = csv.toString().trimEnd().split("\r\n");
    expect(lines.map((line) => line.split(",")[0])).toEqual(["\ufeffpour", pour, "total of 1 of 7 pours"]);
    await part("pages").locator(".make-tickets").click();
    await part("pages").locator(".ready").waitFor(WAIT);
    expect(await part("pages").locator(".notes").textContent()).toContain(`only of ${pour}`);
    await second!.locator("input").click();
    expect(await yard().locator("p.total").textContent()).toContain("in 2 of 7 chosen");
    expect(await part("pages").locator(".ready").count()).toBe(0);
    await second!.locator("input").click();
    await first!.locator(".only-pour").click();
    expect(await yard().locator("p.total").textContent()).not.toContain("chosen");
    expect(await violations()).toEqual([]);
  });

  test("should make tickets, print them from a frame and keep them as a page", async () => {
    await show("pages");
    await part("pages").locator(".make-tickets").click();
    await part("pages").locator(".ready").waitFor(WAIT);
    await shot("4-tickets");
    expect(await violations()).toEqual([]);
    await part("pages").locator(".print-page").click();
    const frame = page.frameLocator("iframe.printed-page");
    await expect.poll(() => frame.locator("article.ticket").count(), WAIT).toBe(117);
    expect(
      await frame
        .locator("article.ticket")
        .first()
        .evaluate((ticket) => getComputedStyle(ticket).borderTopStyle),
    ).toBe("solid");
    const html = await downloaded(() => part("pages").locator(".save-page").click());
    await writeFile(`${SHOTS}/yard-tickets.html`, html);
    expect(html.toString()).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
    expect(await tablesBeyondTickets(html.toString())).toEqual([]);
  });

  test("should make the cut list and the labels", async () => {
    await part("pages").locator(".make-cut-list").click();
    await expect
      .poll(() => part("pages").locator(".ready-title").textContent(), WAIT)
      .toBe("Cut list of Schedule");
    // mark 0106 is 13.5 m, the yard's longest stock 12 m
    expect(await part("pages").locator(".refused").textContent()).toMatch(
      /H16, mark 0106, 54 bars, \w+: a piece of 13500 mm is longer than the 11990 mm.*ask the designer for a lap/,
    );
    await shot("5a-cut-list");
    expect(await violations()).toEqual([]);
    await part("pages").locator(".make-labels").click();
    await expect
      .poll(() => part("pages").locator(".ready-title").textContent(), WAIT)
      .toBe("Bundle labels of Schedule");
  });

  test("should show what a cut list does to the Shop sheet, write it when told to, and take it back", async () => {
    const onHand = async (): Promise<Map<string, number>> => {
      const cells = await storedCells(await bench.save(), "Shop");
      const held = new Map<string, number>();
      for (const [address, kind] of cells) {
        const row = /^D(\d+)$/.exec(address)?.[1];
        if (kind !== "remnant" || row === undefined) continue;
        held.set(`${cells.get(`A${row}`)} ${cells.get(`B${row}`)}`, Number(cells.get(`C${row}`)));
      }
      return held;
    };
    const remnants = part("pages").locator(".remnants");
    await part("pages").locator(".make-cut-list").click();
    await remnants.locator(".look-at-remnants").click();
    await remnants.locator("table").waitFor(WAIT);
    const before = await onHand();
    expect([...before.keys()].sort()).toEqual(["H12 3100", "H16 4200"]);
    await remnants.scrollIntoViewIfNeeded();
    await shot("5b-remnants");
    expect(await violations()).toEqual([]);
    const shown = new Map<string, number>();
    for (const row of await remnants.locator("tbody tr").all()) {
      const [size, length, now, then] = await row.locator("td").allTextContents();
      expect(now).toBe(before.has(`${size} ${length}`) ? String(before.get(`${size} ${length}`)) : "new row");
      shown.set(`${size} ${length}`, Number(then));
    }
    expect(shown.size).toBeGreaterThan(10);
    await remnants.locator(".write-remnants").click();
    await expect.poll(() => status().textContent(), WAIT).toContain("of remnants on sheet Shop");
    const after = await onHand();
    expect(Object.fromEntries(after)).toEqual({
      ...Object.fromEntries(before),
      ...Object.fromEntries(shown),
    });
    // the same bars once more: the pane says so before it would take their steel twice
    await part("pages").locator(".make-cut-list").click();
    await remnants.locator(".look-at-remnants").click();
    await remnants.locator(".twice").waitFor(WAIT);
    expect(await violations()).toEqual([]);
    await remnants.locator(".leave-remnants").click();
    await page.locator("barwright-pane .undo").click();
    await expect.poll(() => status().textContent(), WAIT).toContain("Taken back");
    expect(Object.fromEntries(await onHand())).toEqual(Object.fromEntries(before));
  });

  test("should say what a revision changes, released bars first", async () => {
    await page.locator("#grid").getByText("Culvert rev B", { exact: true }).click();
    await page.locator("barwright-pane #tab-check").click();
    await page.locator("fluent-button.check").click();
    await bench.checked();
    await page.locator("barwright-pane #tab-pours").click();
    await expect.poll(() => yard().locator("p.total").textContent(), WAIT).toContain("Culvert rev B");
    await show("comparison");
    await part("comparison").locator('[data-pick="Older revision"]').selectOption("Culvert rev A");
    await part("comparison").locator(".compare-sheet").click();
    await part("comparison").locator(".released").waitFor(WAIT);
    expect(await part("comparison").locator(".alarm").textContent()).toMatch(/Unsafe: 2 released already/);
    const first = part("comparison").locator(".change").first();
    expect(await first.textContent()).toMatch(/mark 2002.*2200.*2400/s);
    await shot("5-comparison");
    expect(await violations()).toEqual([]);
    await first.locator(".change-place").click();
    const nameBox = page.locator("#grid input:not([readonly])").last();
    await expect.poll(() => nameBox.inputValue()).toBe("G6");
  });

  test("should compare with a file that the user opens", async () => {
    await part("comparison")
      .locator("input[type=file]")
      .setInputFiles({
        name: "older.xlsx",
        mimeType: "application/octet-stream",
        buffer: Buffer.from(demoWorkbook()),
      });
    await expect
      .poll(() => part("comparison").locator(".against").textContent(), WAIT)
      .toContain("older.xlsx: 0 bars differ, 7 do not");
  });

  test("should add a Shop sheet where there is none", async () => {
    await show("shop");
    await part("shop").locator(".open-shop").click();
    await expect.poll(() => page.locator("#grid input:not([readonly])").last().inputValue()).toBe("A1");
    expect(await part("shop").locator(".open-shop").textContent()).toContain("Go to Shop");
  });

  test("should stay accessible in the dark theme and within 320 px", async () => {
    await show("comparison");
    await page.emulateMedia({ colorScheme: "dark" });
    await page.waitForTimeout(300);
    await shot("6-dark");
    expect(await violations()).toEqual([]);
    await page.emulateMedia({ colorScheme: "light" });
    await page.setViewportSize({ width: 320, height: 900 });
    for (const name of ["tonnage", "pages", "comparison", "shop"]) {
      await show(name);
      const beyond = await yard().evaluate((host) => {
        const edge = host.getBoundingClientRect().right + 0.5;
        const inside = [...(host.shadowRoot?.querySelectorAll("*:not(.wide *)") ?? [])];
        const wide = inside.filter((element) => element.getBoundingClientRect().right > edge);
        return wide.map((element) => element.outerHTML.slice(0, 80));
      });
      expect(beyond, name).toEqual([]);
      await shot(`7-narrow-${name}`);
    }
    expect(await violations()).toEqual([]);
  });

  test("should ask nothing of any other machine, and break no policy", () => {
    expect(bench.strangers).toEqual([]);
    expect(bench.troubles).toEqual([]);
  });
});
