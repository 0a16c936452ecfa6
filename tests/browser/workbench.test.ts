import axe from "axe-core";
import JSZip from "jszip";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { demoWorkbook } from "../../addin/demo/demo-workbook";
import { FLAG_FILLS } from "../../addin/workbook/flag-fills";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { launchChromium } from "../_support/chromium";
import { drawn, openWorkbench, type WorkbenchPage } from "./workbench-page";

/** The yard's own fill of delivered rows, see the demonstration's schedule. */
const DELIVERED = "#ece5d8";

let browser: Browser;
let bench: WorkbenchPage;

beforeAll(async () => {
  browser = await launchChromium();
  bench = await openWorkbench(browser, inject("pages"));
});
afterAll(() => browser.close());

const pane = () => bench.page.locator("barwright-pane");
const status = () => pane().locator('.said[role="status"]');

interface AxeResult {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

async function violations(page = bench.page, include = "barwright-pane"): Promise<string[]> {
  // evaluated from outside the page, so that its own policy stands as it is
  await page.evaluate(axe.source);
  const found = await page.evaluate(async (part) => {
    const inPage = (globalThis as unknown as { axe: { run(context: unknown): Promise<AxeResult> } }).axe;
    return (await inPage.run({ include: [part] })).violations;
  }, include);
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

describe("the workbench", () => {
  test("should have no control without a name, role or place, also where the grid brings none", async () => {
    await expect.poll(() => violations(bench.page, "body")).toEqual([]);
    const away = await bench.page.evaluate(() =>
      [...document.querySelectorAll("button")].filter(
        (button) =>
          button.getBoundingClientRect().right < 0 && getComputedStyle(button).visibility !== "hidden",
      ),
    );
    expect(away).toHaveLength(0);
  });

  test("should open with the demonstration checked, each slip at its cell", async () => {
    expect(await status().textContent()).toBe("Checked 117 bars");
    // slips that were put into the invented schedule, each with the severity its kind of mistake has
    const slips = [
      ["N16", "unsafe"],
      ["J14", "unbendable"],
      ["K20", "off-standard"],
      ["F23", "off-standard"],
      ["H96", "off-standard"],
      ["O55", "doubtful"],
    ];
    for (const [cell = "", severity] of slips) {
      await bench.list(cell);
      const listed = pane().locator(`.finding[data-severity="${severity}"][data-cell="${cell}"]`);
      expect(await listed.count(), `${cell} ${severity}`).toBeGreaterThan(0);
    }
  });

  test("should count each severity as it lists it, and hide what is turned off", async () => {
    await bench.list("");
    const listed = async (): Promise<number> =>
      Number(/^\d+/.exec((await pane().locator(".list").getAttribute("aria-label")) ?? "")?.[0] ?? 0);
    const all = await listed();
    for (const severity of ["unsafe", "unbendable", "off-standard", "doubtful", "note"]) {
      const count = pane().locator(`.count[data-severity="${severity}"]`);
      const own = Number(await count.locator(".number").textContent());
      await count.click();
      await expect.poll(listed).toBe(all - own);
      expect(await pane().locator(`.finding[data-severity="${severity}"]`).count()).toBe(0);
      await count.click();
      await expect.poll(listed).toBe(all);
    }
  });

  test("should jump to a finding's cell by click and by Enter", async () => {
    const nameBox = bench.page.locator("#grid input:not([readonly])").last();
    await (await bench.finding("N16")).locator(".head").click();
    await expect.poll(() => nameBox.inputValue()).toBe("N16");
    const item = await bench.finding("J14");
    await item.locator(".head").press("Enter");
    await expect.poll(() => nameBox.inputValue()).toBe("J14");
    await expect.poll(() => item.locator(".head").getAttribute("aria-current")).toBe("true");
  });

  test("should draw the selected row's bar with its cut length", async () => {
    await (await bench.finding("N16")).locator(".head").click();
    const bar = pane().locator(".bar");
    await expect.poll(() => bar.locator(".bar-title").textContent()).toContain("mark 0202");
    // BS 8666:2005 shape 21: A + B + (C) - r - 2d = 700 + 1450 + 700 - 32 - 32 = 2786, up to 2800
    expect(await bar.locator("dl").textContent()).toMatch(/Length by dimensions\s*2800 mm/);
    const drawing = bar.locator("svg.bar-drawing");
    expect(await drawing.getAttribute("aria-label")).toContain("0202");
    expect(await drawing.textContent()).toMatch(/700.*1450|1450.*700/);
    // it is drawn anew while the check of its row comes in
    await expect
      .poll(async () => (await drawing.boundingBox())?.width ?? 0, { timeout: 30_000 })
      .toBeGreaterThan(120);
  });

  test("should say in words why a formula refuses", async () => {
    await bench.goTo("O20");
    const message = bench.page.locator("#cell-message");
    await expect.poll(() => message.textContent()).toMatch(/^O20: .*\bC\b/);
  });

  test("should say it of a cell that is selected as soon as the first check stands", async () => {
    const fresh = await openWorkbench(browser, inject("pages"));
    await fresh.goTo("O20");
    await expect
      .poll(() => fresh.page.locator("#cell-message").textContent(), { timeout: 10_000 })
      .toMatch(/^O20: .*\bC\b/);
    await fresh.page.close();
  });

  test("should colour rows, and give back the yard's own colours", async () => {
    await (await bench.finding("N16")).locator(".head").click();
    await expect.poll(() => bench.pixels(FLAG_FILLS.unsafe)).toBeGreaterThan(1_000);
    await bench.page.waitForTimeout(500);
    const flagged = await bench.pixels(FLAG_FILLS.unsafe);
    const own = await bench.pixels(DELIVERED);
    await bench.setUp(true);
    const said = bench.page.locator("#cell-message");
    await expect.poll(() => said.textContent()).toContain("Found here: unsafe");
    await pane().locator(".uncolour").click();
    await expect.poll(() => bench.pixels(FLAG_FILLS.unsafe)).toBe(0);
    // with the colour goes what was said of it
    await expect.poll(() => said.textContent()).toBe("");
    expect(await bench.pixels(DELIVERED)).toBeGreaterThan(own + 1_000);
    await pane().locator(".colour").click();
    await expect.poll(() => bench.pixels(FLAG_FILLS.unsafe)).toBe(flagged);
    expect(await bench.pixels(DELIVERED)).toBe(own);
  });

  test("should apply a safe fix and take it back", async () => {
    await bench.setUp(false);
    const item = await bench.finding("H70");
    await item.locator(".head").click();
    await item.locator(".apply").click();
    await expect.poll(() => item.count(), { timeout: 60_000 }).toBe(0);
    await expect.poll(() => status().textContent()).toContain("Done in");
    await pane().locator(".undo").click();
    await expect.poll(() => item.count(), { timeout: 60_000 }).toBe(1);
    await expect.poll(() => status().textContent()).toContain("Taken back");
  });

  test("should save the colours, and take them off again after close and reopen", async () => {
    const saved = await bench.save();
    await bench.page.reload();
    await bench.checked();
    await bench.open(saved, "again.xlsx");
    await expect.poll(() => bench.pixels(FLAG_FILLS.unsafe), { timeout: 60_000 }).toBeGreaterThan(1_000);
    const own = await bench.pixels(DELIVERED);
    await bench.setUp(true);
    await pane().locator(".uncolour").click();
    await expect.poll(() => bench.pixels(FLAG_FILLS.unsafe)).toBe(0);
    expect(await bench.pixels(DELIVERED)).toBeGreaterThan(own + 1_000);
    const cleaned = await bench.save();
    // read by a library other than our own layer: fills of the schedule's cells are the demonstration's
    expect(await fillsOfCells(cleaned)).toEqual(await fillsOfCells(Buffer.from(demoWorkbook())));
  });

  test("should store calculated results of BAR formulas in a saved file", async () => {
    await bench.openDemo();
    const xml = await sheetXml(await bench.save());
    // 84 bars of 9.85 m at 3.854 kg/m, the mass of a 25 mm bar in BS 4449:2005 Table 6
    const mass = Number(/<c r="O5"[^>]*>.*?<v>([^<]*)<\/v>/.exec(xml)?.[1]);
    expect(mass).toBeCloseTo(84 * 9.85 * 3.854, 2);
    expect(xml).toMatch(/<c r="O5"[^>]*><f[^>]*>_xldudf_BAR_ROWMASS\(/);
  });

  test("should leave a mark as it is whose editor was only opened", async () => {
    await bench.goTo("B13");
    await bench.page.keyboard.press("F2");
    await drawn(bench.page);
    await bench.page.keyboard.press("Enter");
    const saved = openWorkbook(new Uint8Array(await bench.save()));
    expect(saved.read("Schedule").valueAt(12, 1)).toBe("0109");
  });

  test("should refuse what is no workbook, and keep the open one", async () => {
    const mimeType = "text/plain";
    await bench.page
      .locator("#file-input")
      .setInputFiles({ name: "notes.xlsx", mimeType, buffer: Buffer.from("not a workbook") });
    await expect.poll(() => status().textContent()).toMatch(/not a workbook|zip/i);
    expect(await bench.page.locator("#file-name").textContent()).toContain("Marrow Fen");
  });

  test("should know the benders of the Shop sheet in formulas", async () => {
    await bench.page.locator("#grid").getByText("Estimate", { exact: true }).click();
    await bench.typeAt("L40", '=BAR.COMPENSATED(90,"H16",,64,,,,"Idle Jane")');
    await bench.typeAt("L39", "asked");
    await bench.page.keyboard.press("ArrowUp");
    await bench.page.keyboard.press("ArrowDown");
    await expect
      .poll(() => bench.page.locator("#cell-message").textContent(), { timeout: 30_000 })
      .toMatch(/^L40: machine "Idle Jane" is none of the Shop sheet.*Old Maud, The Ox/);
    await bench.openDemo();
  });

  test("should recalculate every BAR formula for another standard and say how many", async () => {
    await bench.setUp(true);
    const standards = pane().locator('[data-pick="Standard"]');
    // by its title, as wide as the pane has room for
    expect((await standards.locator('option[value="EC2:2004"]').textContent())?.length).toBeGreaterThan(20);
    expect((await standards.boundingBox())?.width).toBeGreaterThan(300);
    await standards.selectOption("EC2:2004");
    await expect
      .poll(() => status().textContent(), { timeout: 60_000 })
      .toMatch(/\d+ BAR formulas recalculated with EC2:2004$/);
    const said = Number((await status().textContent())?.match(/(\d+) BAR/)?.[1]);
    expect(said).toBe(await barFormulas(Buffer.from(demoWorkbook())));
  });

  test("should check the messy second sheet", async () => {
    await bench.page.locator("#grid").getByText("Extras", { exact: true }).click();
    await pane().locator("fluent-button.check").click();
    await bench.checked();
    expect(await status().textContent()).toMatch(/^Checked 10 bars$/);
  });

  test("should be free of accessibility violations in each place and part of it", async () => {
    await pane().locator(".finding .head").first().click();
    await pane().locator("button.source").first().click();
    expect(await violations()).toEqual([]);
    for (const show of ["alike", "questions", "passOn", "decisions", "reading", "cautions"]) {
      await pane().locator('[data-pick="Show"]').selectOption(show);
      expect(await violations(), show).toEqual([]);
    }
    await pane().locator('[data-pick="Show"]').selectOption("findings");
    for (const place of ["pours", "bench", "check"]) {
      await pane().locator(`#tab-${place}`).click();
      await bench.page.waitForTimeout(500);
      expect(await violations(), place).toEqual([]);
    }
  });

  test("should follow the system's dark theme and stay accessible", async () => {
    await bench.page.emulateMedia({ colorScheme: "dark" });
    const red = (): Promise<number> =>
      pane().evaluate((host) => Number(/\d+/.exec(getComputedStyle(host).backgroundColor)?.[0]));
    await expect.poll(red).toBeLessThan(80);
    expect(await violations()).toEqual([]);
    await bench.page.locator("#grid").getByText("Schedule", { exact: true }).click();
    // row 5 holds a note and row 3 nothing: the note is told from the ground
    const light = (top: number): Promise<number> =>
      bench.page.evaluate((y) => {
        const canvas = document.querySelector<HTMLCanvasElement>('#grid canvas[id*="sheet-main-canvas"]');
        const [r = 0, g = 0, b = 0] = canvas?.getContext("2d")?.getImageData(400, y, 1, 1).data ?? [];
        return r + g + b;
      }, top);
    await expect.poll(async () => (await light(150)) - (await light(76))).toBeGreaterThan(40);
    await bench.page.emulateMedia({ colorScheme: "light" });
    await expect.poll(red).toBeGreaterThan(200);
  });

  test("should fit 320 px without scrolling sideways and stay accessible", async () => {
    await bench.page.setViewportSize({ width: 320, height: 900 });
    for (const place of ["pours", "bench", "check"]) {
      await pane().locator(`#tab-${place}`).click();
      await drawn(bench.page);
      expect(await beyondEdge(), place).toEqual([]);
      expect(await violations(), place).toEqual([]);
    }
  });

  test("should ask nothing of any other machine, and break no policy", () => {
    expect(bench.strangers).toEqual([]);
    expect(bench.troubles).toEqual([]);
  });
});

/** What stands beyond the window's right edge, outside the grid, which scrolls. */
function beyondEdge(): Promise<string[]> {
  return bench.page.evaluate(() => {
    const edge = document.documentElement.clientWidth + 0.5;
    const all: ParentNode[] = [document];
    const found: string[] = [];
    for (const root of all) {
      for (const element of root.querySelectorAll("*")) {
        if (element.shadowRoot !== null) all.push(element.shadowRoot);
        if (element.closest("#grid, body > :not(#strip, main)") !== null) continue;
        // a table may be wider than its own scroller
        const around = element.closest("table")?.parentElement;
        if (around && getComputedStyle(around).overflowX === "auto") continue;
        if (element.getBoundingClientRect().right > edge && element.checkVisibility())
          found.push(element.outerHTML.slice(0, 100));
      }
    }
    return found;
  });
}

async function sheetXml(file: Buffer): Promise<string> {
  const zip = await JSZip.loadAsync(file);
  return (await zip.file("xl/worksheets/sheet1.xml")?.async("string")) ?? "";
}

/** Formulas of all sheets that call BAR. */
async function barFormulas(file: Buffer): Promise<number> {
  const zip = await JSZip.loadAsync(file);
  const sheets = await Promise.all(zip.file(/worksheets\/sheet\d+\.xml/).map((part) => part.async("string")));
  return sheets.join("").match(/<f[^>]*>[^<]*_xldudf_BAR_/g)?.length ?? 0;
}

/** Foreground colour of each cell's fill on the first sheet, by address. */
async function fillsOfCells(file: Buffer): Promise<Record<string, string>> {
  const zip = await JSZip.loadAsync(file);
  const styles = (await zip.file("xl/styles.xml")?.async("string")) ?? "";
  const fills = [...styles.matchAll(/<fill>(.*?)<\/fill>/gs)].map(
    ([, fill = ""]) => /<fgColor rgb="([0-9A-F]+)"/i.exec(fill)?.[1] ?? "",
  );
  const formats = /<cellXfs[^>]*>(.*?)<\/cellXfs>/s.exec(styles)?.[1] ?? "";
  const fillOf = [...formats.matchAll(/<xf [^>]*?fillId="(\d+)"/g)].map(([, id]) => fills[Number(id)] ?? "");
  const cells: Record<string, string> = {};
  for (const [, address = "", attributes = ""] of (await sheetXml(file)).matchAll(
    /<c r="([A-Z]+\d+)"([^>]*)>/g,
  )) {
    const fill = fillOf[Number(/ s="(\d+)"/.exec(attributes)?.[1] ?? 0)] ?? "";
    if (fill !== "") cells[address] = fill;
  }
  return cells;
}

describe("a workbench of its own", () => {
  let fresh: WorkbenchPage;

  beforeAll(async () => {
    fresh = await openWorkbench(browser, inject("pages"));
  });

  test("should take back a sheet that was added and renamed by its tab", async () => {
    const { page } = fresh;
    const tabs = () => page.locator('#grid [data-u-comp="slide-tab-item"]').allTextContents();
    const before = await tabs();
    await page.getByLabel("Add a sheet", { exact: true }).click();
    const tab = page.locator('#grid [data-u-comp="slide-tab-item"]', { hasText: /^Sheet\d$/ });
    await tab.dblclick();
    await page.keyboard.press("Control+a");
    await page.keyboard.type("Foreman");
    await page.keyboard.press("Enter");
    // longer than a press that would hold the tab
    await page.waitForTimeout(1_000);
    expect([...(await tabs())].sort()).toEqual([...before, "Foreman"].sort());
    await fresh.goTo("A1");
    await page.keyboard.press("Control+z");
    await expect.poll(async () => (await tabs()).some((name) => /^Sheet\d$/.test(name))).toBe(true);
    await page.keyboard.press("Control+z");
    await expect.poll(tabs).toEqual(before);
    await fresh.goTo("A1");
    await page.keyboard.press("Control+y");
    await expect.poll(async () => (await tabs()).length).toBe(before.length + 1);
    await fresh.openDemo();
  });

  test("should show nothing of the last workbook over one that is opened", async () => {
    const { page } = fresh;
    expect(await fresh.page.locator("barwright-pane").locator(".finding, .alike").count()).toBeGreaterThan(0);
    const seen = page.evaluate(
      () =>
        new Promise((resolve) => {
          let isChecked = false;
          addEventListener("barwright-opened", () => (isChecked = true), { once: true });
          new MutationObserver((_, watch) => {
            if (document.getElementById("file-name")?.textContent !== "other.xlsx") return;
            watch.disconnect();
            requestAnimationFrame(() => {
              const held = document.querySelector("barwright-pane")?.shadowRoot;
              resolve({ isChecked, listed: held?.querySelectorAll(".finding, .alike").length });
            });
          }).observe(document.body, { childList: true, subtree: true, characterData: true });
        }),
    );
    await fresh.open(Buffer.from(demoWorkbook()), "other.xlsx");
    expect(await seen).toEqual({ isChecked: false, listed: 0 });
  });
});
