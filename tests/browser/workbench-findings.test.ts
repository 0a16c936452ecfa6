import axe from "axe-core";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { launchChromium } from "../_support/chromium";
import { openWorkbench, type WorkbenchPage } from "./workbench-page";

let browser: Browser;
let bench: WorkbenchPage;

beforeAll(async () => {
  browser = await launchChromium();
  bench = await openWorkbench(browser, inject("pages"));
});
afterAll(() => browser.close());

const pane = () => bench.page.locator("barwright-pane");
const rows = () => pane().locator(".finding");
const said = () => pane().locator(".said");
const show = (what: string) => pane().locator('[data-pick="Show"]').selectOption(what);
/** how many findings the list holds, drawn or not */
const listed = async (): Promise<number> =>
  Number(/^\d+/.exec((await pane().locator(".list").getAttribute("aria-label")) ?? "")?.[0] ?? 0);

describe("the list of findings", () => {
  test("should have rules that speak in many rows stand once, and unfold", async () => {
    const all = await listed();
    // what speaks in many rows stands last, in the notes
    await pane()
      .locator(".list")
      .evaluate((list) => list.scrollTo(0, list.scrollHeight));
    const alike = pane().locator(".alike button").last();
    await alike.click();
    await expect.poll(() => pane().locator('.alike button[aria-expanded="true"]').count()).toBe(1);
    expect(await listed()).toBe(all);
  });

  test("should go from finding to finding by keyboard, and to the cell of each", async () => {
    await bench.list("H16");
    await rows().first().locator(".head").click();
    const nameBox = bench.page.locator("#grid input:not([readonly])").last();
    await expect.poll(() => nameBox.inputValue()).toMatch(/^[A-Z]+\d+$/);
    const first = await nameBox.inputValue();
    const key = () => pane().locator(".finding.current").getAttribute("data-cell");
    const began = await key();
    for (let steps = 0; (await key()) === began && steps < 8; steps += 1)
      await pane().locator(".step.next").click();
    await expect.poll(() => nameBox.inputValue()).not.toBe(first);
    const current = pane().locator(".finding.current .head");
    await current.focus();
    await bench.page.keyboard.press("ArrowUp");
    await expect.poll(() => nameBox.inputValue()).toBe(first);
    await expect
      .poll(() => pane().evaluate((host) => host.shadowRoot?.activeElement?.getAttribute("aria-current")))
      .toBe("true");
  });

  test("should follow an edit of a cell, and its undo", async () => {
    const unsafe = pane().locator('.finding[data-severity="unsafe"][data-cell="N16"]');
    await (await bench.finding("N16")).locator(".head").click();
    await expect.poll(() => unsafe.count()).toBe(1);
    await bench.list("");
    const before = await listed();
    await bench.list("N16");
    await bench.typeAt("N16", "64");
    await expect.poll(() => unsafe.count()).toBe(0);
    await bench.page.keyboard.press("Control+z");
    await expect.poll(() => unsafe.count()).toBe(1);
    await bench.list("");
    expect(await listed()).toBe(before);
  });

  test("should look at a fix that changes steel before it is written, and prove it", async () => {
    const item = await bench.finding("G33");
    await item.locator(".head").click();
    await item.locator(".look").click();
    const looked = item.locator(".looked");
    expect(await looked.locator("tbody tr").count()).toBeGreaterThan(0);
    expect(await looked.textContent()).toContain("drawing");
    await expect.poll(() => looked.locator(".effect").textContent()).toMatch(/t, then|stay/);
    await looked.locator(".write-only").click();
    const same = pane().locator('.finding[data-cell="G33"][data-severity="off-standard"]');
    await expect.poll(() => same.count()).toBe(0);
    await expect.poll(() => said().textContent()).toContain("1 of 1 findings gone");
    await pane().locator(".undo").click();
    await expect.poll(() => same.count()).toBe(1);
  });

  test("should write all safe fixes of a kind in one step and take them back in one", async () => {
    await bench.list("");
    const all = await listed();
    await show("alike");
    const button = pane().locator(".apply-kind").first();
    const code = await button.getAttribute("data-code");
    const count = Number(/\d+/.exec((await button.textContent()) ?? "")?.[0]);
    await button.click();
    await expect.poll(() => said().textContent()).toContain(`${count} of ${count} findings gone`);
    await expect.poll(() => pane().locator(`.apply-kind[data-code="${code}"]`).count()).toBe(0);
    await pane().locator(".undo").click();
    await expect.poll(() => pane().locator(`.apply-kind[data-code="${code}"]`).count()).toBe(1);
    await show("findings");
    await expect.poll(listed).toBe(all);
  });

  test("should filter by rule, member, pour and words in one line, and copy the list", async () => {
    await bench.list("");
    const all = await listed();
    for (const [pick, value] of [
      ["Rule", "BEND101"],
      ["Pour", "P1"],
    ] as const) {
      await pane().locator(`[data-pick="${pick}"]`).selectOption(value);
      await expect.poll(listed).toBeLessThan(all);
      await pane().locator(`[data-pick="${pick}"]`).selectOption("");
    }
    const height = await pane()
      .locator(".filters")
      .evaluate((line) => line.getBoundingClientRect().height);
    expect(height).toBeLessThan(40);
    await bench.list("former");
    await expect.poll(listed).toBeLessThan(all);
    const few = await listed();
    await show("passOn");
    await bench.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await pane().locator(".copy-list").click();
    await expect.poll(() => said().textContent()).toContain("on the clipboard");
    const copied = await bench.page.evaluate(() => navigator.clipboard.readText());
    const lines = copied.split(/\r?\n/);
    expect(lines).toHaveLength(few + 1);
    expect(new Set(lines.map((line) => line.split("\t").length))).toEqual(new Set([9]));
    await show("findings");
  });

  test("should accept a finding with reason and name, having said what is not told, and take it back", async () => {
    const item = await bench.finding("J14");
    await item.locator(".head").click();
    await item.locator(".source").click();
    await expect
      .poll(() => item.locator(".waive .ahead").textContent())
      .toMatch(/1 row of \d+ bars? will no longer be told/);
    await item.locator('.waive [name="reason"]').fill("agreed with the yard");
    await item.locator('.waive [name="reason"]').press("Enter");
    await expect.poll(() => said().textContent()).toContain("give the name of whoever decides");
    await bench.page.keyboard.type("A. Detailer");
    await item.locator(".waive button").click();
    await expect.poll(() => said().textContent()).toContain("Accepted at J14");
    expect((await bench.save()).byteLength).toBeGreaterThan(0);
    await show("decisions");
    const decided = pane().locator(".decisions");
    expect(await decided.textContent()).toMatch(/by A. Detailer, \d{4}-\d\d-\d\d: agreed with the yard/);
    await decided.locator(".decided fluent-button").first().click();
    await expect.poll(() => said().textContent()).toContain("Told again");
    await show("findings");
    expect(await (await bench.finding("J14")).count()).toBe(1);
  });

  test("should not leave what is unsafe unasked for a sheet", async () => {
    const item = await bench.finding("N16");
    await item.locator(".head").click();
    await item.locator(".source").click();
    expect(await item.locator(".turn-off").count()).toBe(0);
    expect(await item.locator(".why").textContent()).toMatch(/\w{3}/);
  });

  test("should check by a limit that is changed with reason and name, and as before when it is taken back", async () => {
    const unsafe = pane().locator('.count[data-severity="unsafe"] .number');
    const before = Number(await unsafe.textContent());
    await show("decisions");
    const limit = pane().locator('[data-limit="hoist"]');
    await limit.locator(".change-limit").click();
    await limit.locator('[name="value"]').fill("10");
    await limit.locator('[name="reason"]').fill("the crane is away");
    await limit.locator('[name="by"]').fill("A. Detailer");
    await limit.locator("form button").click();
    await expect.poll(() => said().textContent()).toContain("Crane or hoist lifts 10 kg");
    await show("findings");
    expect(Number(await unsafe.textContent())).toBeGreaterThan(before);
    await show("decisions");
    await limit.locator(".limit-back").click();
    await show("findings");
    await expect.poll(async () => Number(await unsafe.textContent())).toBe(before);
  });

  test("should give the list most of the pane with a bar selected, wide and at 320 px", async () => {
    await bench.list("");
    const filter = pane().locator("button.filter");
    await filter.click();
    await rows().first().locator(".head").click();
    const share = () =>
      pane().evaluate((host) => {
        const height = (part: Element | null | undefined) => part?.getBoundingClientRect().height ?? 0;
        return height(host.shadowRoot?.querySelector(".list")) / height(host);
      });
    await bench.page.setViewportSize({ width: 1366, height: 768 });
    await expect.poll(share).toBeGreaterThan(0.58);
    // as 1366 x 768 is at 200 %: the bar folds by itself, and is back with the room
    await bench.page.setViewportSize({ width: 683, height: 384 });
    await expect.poll(share).toBeGreaterThan(0.58);
    await bench.page.setViewportSize({ width: 320, height: 900 });
    await bench.page.setViewportSize({ width: 1400, height: 900 });
    const body = pane().locator(".bar-body");
    const height = async () => (await body.boundingBox())?.height ?? 0;
    const was = await height();
    await pane().locator(".bar-divider").focus();
    await bench.page.keyboard.press("ArrowUp");
    await expect.poll(height).toBeGreaterThan(was);
    await pane().locator("button.bar-title").click();
    expect(await body.count()).toBe(0);
    await pane().locator("button.bar-title").click();
  });

  test("should stay accessible wide, dark and at 320 px, and fit it", async () => {
    await bench.list("");
    await (await bench.finding("G33")).locator(".head").click();
    await rows().locator(".look").first().click();
    await rows().locator(".source").first().click();
    expect(await violations()).toEqual([]);
    await picture("wide");
    await bench.page.emulateMedia({ colorScheme: "dark" });
    await bench.page.waitForTimeout(500);
    expect(await violations()).toEqual([]);
    await picture("dark");
    await bench.page.emulateMedia({ colorScheme: "light" });
    await bench.page.setViewportSize({ width: 320, height: 900 });
    await bench.page.waitForTimeout(500);
    const beyond = await pane().evaluate((host) => {
      const edge = host.getBoundingClientRect().right + 0.5;
      const inside = [...(host.shadowRoot?.querySelectorAll("*") ?? [])];
      const wide = inside.filter((element) => element.getBoundingClientRect().right > edge);
      return wide.map((element) => element.outerHTML.slice(0, 80));
    });
    expect(beyond).toEqual([]);
    expect(await violations()).toEqual([]);
    await picture("narrow");
    expect(bench.troubles).toEqual([]);
  });
});

describe("a change in many rows", () => {
  test("should be undone by the sheet's own undo in one step, and have nothing left to take back", async () => {
    const head = ["Bar mark", "Type and size", "No.", "Length mm", "Shape code", "A mm", "B mm", "C mm"];
    // by the formula of shape 21, A + B + C - r - 2d: 1116, in steps of 25 mm 1125
    const bars = ["01", "02", "03"].map((mark) => [mark, "H16", 4, 1400, "21", 400, 700, 80]);
    const rows = [head, ...bars].map((row) => row.map((value) => ({ value })));
    const bytes = writeNewWorkbook({ sheets: [{ name: "Bars", rows }] });
    await bench.page.setViewportSize({ width: 1366, height: 768 });
    await bench.open(Buffer.from(bytes), "alike.xlsx");
    const item = await bench.finding("D3");
    await item.locator(".head").click();
    await item.locator(".look-all").click();
    await item.locator(".write").first().click();
    await expect.poll(() => said().textContent()).toContain("3 of 3 findings gone");
    const same = pane().locator('.finding[data-code="LEN102"]');
    await bench.list("length");
    expect(await same.count()).toBe(0);
    await bench.goTo("A1");
    await bench.page.keyboard.press("Control+z");
    await expect.poll(() => same.count()).toBe(3);
    expect(await pane().locator(".undo").count()).toBe(0);
  });
});

async function violations(): Promise<string[]> {
  // evaluated from outside the page, so that its own policy stands as it is
  await bench.page.evaluate(axe.source);
  const found = await bench.page.evaluate(async () => {
    const inPage = (globalThis as unknown as { axe: { run(context: unknown): Promise<AxeResult> } }).axe;
    return (await inPage.run({ include: ["barwright-pane"] })).violations;
  });
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

interface AxeResult {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

/** Kept where BARWRIGHT_PICTURES names a folder. */
async function picture(name: string): Promise<void> {
  const folder = process.env["BARWRIGHT_PICTURES"];
  if (folder) await bench.page.screenshot({ path: `${folder}/findings-${name}.png` });
}
