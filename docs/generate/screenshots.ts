import { mkdir, stat } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import type { Locator, Page } from "playwright-core";
import webpack, { type Configuration } from "webpack";
import configs from "../../addin/webpack.config.mjs";
import { DEFAULT_STANDARD_ID } from "../../core/standards";
import { launchChromium } from "../../tests/_support/chromium";
import { serve } from "../../tests/_support/serve";
import { CORPUS } from "../../tests/corpus/corpus";
import { bytesOf } from "../../tests/corpus/corpus-bytes";

const SITE = fileURLToPath(new URL("../../.cache/screenshots", import.meta.url));
const IMAGES = fileURLToPath(new URL("../images", import.meta.url));
const LARGEST = 300_000;

/** Schedules of the corpus that are pictured as they came and as checked. */
const PICTURED = ["uk-tank-untidy", "de-unterzug-untidy"];

/** Builds the workbench, opens it as a reader would, and pictures it for the README and the page on reading. */
async function main(): Promise<void> {
  for (const config of configs({ workbench: true }, { mode: "development" })) await build(config);
  await mkdir(IMAGES, { recursive: true });
  const served = await serve(SITE);
  const browser = await launchChromium();
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 860 } });
    await page.goto(served.url);
    await checked(page);
    await choose(page);
    await picture(page, "workbench");
    for (const name of PICTURED) await pictureBoth(page, name);
  } finally {
    await browser.close();
    await served.close();
  }
}

/** As it came, and with its flags, its findings and the first bar of them. */
async function pictureBoth(page: Page, name: string): Promise<void> {
  const schedule = CORPUS.find((one) => one.name === name);
  if (schedule === undefined) throw new Error(`no schedule ${name} in the corpus`);
  const file = `${name}.${schedule.format}`;
  const buffer = Buffer.from(bytesOf(schedule));
  await page.locator("#file-input").setInputFiles({ name: file, mimeType: "", buffer });
  await page.locator("#file-name", { hasText: name }).waitFor();
  await checked(page);
  // what is opened is checked at once: the sheet as it came is the one without our colours
  const line = page.locator("barwright-pane .set-up-line");
  if ((await line.getAttribute("aria-expanded")) !== "true") await line.click();
  const uncolour = page.locator("barwright-pane .uncolour");
  if ((await uncolour.count()) > 0) await uncolour.click();
  await page.waitForTimeout(1_500);
  await picture(page.locator(".grid-side"), `${name}-before`);
  if (schedule.standard !== DEFAULT_STANDARD_ID) {
    await page.locator('barwright-pane [data-pick="Standard"]').selectOption(schedule.standard);
  }
  await page.locator("barwright-pane fluent-button.check").click();
  await checked(page);
  await choose(page);
  await picture(page, `${name}-after`);
}

async function checked(page: Page): Promise<void> {
  const pane = page.locator("barwright-pane");
  await pane.locator(".finding, .alike").first().waitFor({ timeout: 120_000 });
  await pane.locator(".under-way").waitFor({ state: "detached", timeout: 120_000 });
}

/** The first finding, and the bar that it is about. */
async function choose(page: Page): Promise<void> {
  const pane = page.locator("barwright-pane");
  await pane.locator(".finding .head").first().click();
  await pane.locator(".bar svg").waitFor();
  await page.waitForTimeout(1_500);
}

async function picture(what: Page | Locator, name: string): Promise<void> {
  const path = `${IMAGES}/${name}.png`;
  await what.screenshot({ path });
  const { size } = await stat(path);
  if (size > LARGEST) throw new Error(`${name}.png has ${size} bytes, more than ${LARGEST}`);
  console.log(`docs/images/${name}.png, ${size} bytes`);
}

function build(config: Configuration): Promise<void> {
  const compiler = webpack({ ...config, output: { ...config.output, path: SITE } });
  return new Promise((resolve, reject) => {
    compiler?.run((error, stats) => {
      compiler.close(() => {
        if (error) reject(error);
        else if (stats?.hasErrors()) reject(new Error(stats.toString({ all: false, errors: true })));
        else resolve();
      });
    });
  });
}

main().catch((problem: unknown) => {
  console.error(problem);
  process.exitCode = 1;
});
