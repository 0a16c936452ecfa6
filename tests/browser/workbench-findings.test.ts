import axe from "axe-core";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
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

describe("the list of findings", () => {
  test("should follow an edit of a cell, keeping the place in the list, and its undo", async () => {
    const unsafe = pane().locator('.group[data-severity="unsafe"] .finding[data-cell="N16"]');
    await bench.finding("N16").locator("fluent-button.place").first().click();
    const before = await rows().count();
    await pane()
      .locator(".middle")
      .evaluate((list) => list.scrollTo(0, 300));
    await bench.typeAt("N16", "64");
    await expect.poll(() => unsafe.count()).toBe(0);
    expect(
      await pane()
        .locator(".middle")
        .evaluate((list) => list.scrollTop),
    ).toBeGreaterThan(100);
    await bench.page.keyboard.press("Control+z");
    await expect.poll(() => unsafe.count()).toBe(1);
    expect(await rows().count()).toBe(before);
  });

  test("should look at a fix that changes steel before it is written, and prove it", async () => {
    const item = rows()
      .filter({ has: bench.page.locator(".look") })
      .first();
    const [cell = "", code = ""] = [
      await item.getAttribute("data-cell"),
      await item.getAttribute("data-code"),
    ].map((text) => text ?? "");
    const all = await rows().count();
    await item.locator(".look").click();
    const looked = item.locator(".looked");
    expect(await looked.locator("tbody tr").count()).toBeGreaterThan(0);
    expect(await looked.textContent()).toContain("drawing");
    await looked.locator(".write").click();
    const same = pane().locator(`.finding[data-cell="${cell}"][data-code="${code}"]`);
    await expect.poll(() => same.count()).toBe(0);
    await expect.poll(() => pane().locator(".said").textContent()).toContain("1 of 1 findings gone");
    await pane().locator(".undo").click();
    await expect.poll(() => same.count()).toBe(1);
    await expect.poll(() => rows().count()).toBe(all);
  });

  test("should write all safe fixes of a kind in one step and take them back in one", async () => {
    const all = await rows().count();
    const section = pane().locator("fluent-accordion-item.safe-fixes");
    await section.evaluate((element) => element.toggleAttribute("expanded", true));
    const button = section.locator(".apply-kind").first();
    const code = (await button.getAttribute("data-code")) ?? "";
    const ofKind = pane().locator(`.finding[data-code="${code}"]`, {
      has: bench.page.locator(".apply"),
    });
    const count = await ofKind.count();
    expect(await button.textContent()).toBe(`Write all ${count}`);
    await button.click();
    await expect.poll(() => ofKind.count()).toBe(0);
    await expect
      .poll(() => pane().locator(".said").textContent())
      .toContain(`${count} of ${count} findings gone`);
    await pane().locator(".undo").click();
    await expect.poll(() => ofKind.count()).toBe(count);
    await expect.poll(() => rows().count()).toBe(all);
  });

  test("should group, filter and copy the list", async () => {
    const all = await rows().count();
    await pane()
      .locator(".arrange fluent-accordion-item")
      .evaluate((element) => element.toggleAttribute("expanded", true));
    await choose("Group by", "rule");
    await expect.poll(() => pane().locator(".group").count()).toBeGreaterThan(5);
    expect(await rows().count()).toBe(all);
    await pane().locator("input.words").fill("former");
    await expect.poll(() => rows().count()).toBeLessThan(all);
    const listed = await rows().count();
    expect(await pane().locator(".listed").textContent()).toContain(`${listed} of ${all} listed`);
    await bench.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await pane().locator(".copy-list").click();
    await expect.poll(() => pane().locator(".said").textContent()).toContain("on the clipboard");
    const copied = await bench.page.evaluate(() => navigator.clipboard.readText());
    const lines = copied.split(/\r?\n/);
    expect(lines).toHaveLength(listed + 1);
    expect(new Set(lines.map((line) => line.split("\t").length))).toEqual(new Set([9]));
  });

  test("should waive a finding with a reason, keep that in the file, and take it back", async () => {
    await pane().locator("input.words").fill("");
    const item = bench.finding("J14");
    await item.locator(".source").click();
    await item.locator(".waive input").fill("agreed with the yard");
    await item.locator(".waive button").click();
    await expect.poll(() => pane().locator(".said").textContent()).toContain("is waived at J14");
    const decided = pane().locator("fluent-accordion-item.decisions");
    expect(await decided.textContent()).toContain("agreed with the yard");
    expect((await bench.save()).byteLength).toBeGreaterThan(0);
    await decided.evaluate((element) => element.toggleAttribute("expanded", true));
    await decided.locator(".decided fluent-button").first().click();
    await expect.poll(() => pane().locator(".said").textContent()).toContain("is told again");
    expect(await bench.finding("J14").count()).toBeGreaterThan(0);
  });

  test("should check by a limit typed into the pane", async () => {
    const field = pane().locator('input[data-limit="hoist"]');
    const unsafe = pane().locator('.finding[data-severity="unsafe"]');
    const before = await unsafe.count();
    await field.fill("10");
    await field.press("Tab");
    await expect.poll(() => pane().locator(".said").textContent()).toContain("Crane or hoist lifts 10 kg");
    expect(await unsafe.count()).toBeGreaterThan(before);
    await field.fill("");
    await field.press("Tab");
    await expect.poll(() => unsafe.count()).toBe(before);
  });

  test("should stay accessible with everything open, wide, dark and at 320 px", async () => {
    await pane().locator("input.words").fill("");
    await rows().locator(".look").first().click();
    await rows().locator(".source").first().click();
    for (const item of await pane().locator("fluent-accordion-item").all()) {
      await item.evaluate((element) => element.toggleAttribute("expanded", true));
    }
    expect(await violations()).toEqual([]);
    await picture("wide");
    await pane()
      .locator(".decisions")
      .evaluate((section) => {
        const list = section.closest(".middle");
        const { top } = section.getBoundingClientRect();
        list?.scrollBy(0, top - list.getBoundingClientRect().top);
      });
    await picture("decisions-wide");
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
    await pane()
      .locator(".decisions")
      .evaluate((section) => {
        const list = section.closest(".middle");
        const { top } = section.getBoundingClientRect();
        list?.scrollBy(0, top - list.getBoundingClientRect().top);
      });
    await picture("decisions-narrow");
    expect(bench.troubles).toEqual([]);
  });
});

/** Chooses by keyboard alone. */
async function choose(label: string, text: string): Promise<void> {
  const box = pane().locator(`[role="combobox"][aria-label^="${label}:"]`);
  await box.focus();
  await bench.page.keyboard.press("Enter");
  for (let tries = 0; tries < 20; tries += 1) {
    const active = await pane()
      .locator("fluent-option[active], fluent-option:state(active)")
      .allTextContents();
    if (active.some((each) => each.trim() === text)) break;
    await bench.page.keyboard.press("ArrowDown");
  }
  await bench.page.keyboard.press("Enter");
}

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
