/** Renders the icons from their SVG: `tsx manifest/draw-icons.ts [path of Chromium]`. */
import { readFile } from "node:fs/promises";
import { chromium } from "playwright-core";
import { ICON_SIZES, iconFile, iconName, OUTLINE_NAME, OUTLINE_SIZE } from "./icons";

/** Below it the ribs would blur into a smear. */
const SMALL = 24;

const browser = await chromium.launch({
  executablePath: process.argv[2] ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
const page = await browser.newPage();
for (const size of ICON_SIZES) await draw(size < SMALL ? "bar-small.svg" : "bar.svg", size, iconName(size));
await draw("bar-outline.svg", OUTLINE_SIZE, OUTLINE_NAME);
await browser.close();

async function draw(source: string, size: number, name: string): Promise<void> {
  const svg = await readFile(iconFile(source), "utf8");
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(
    `<style>*{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`,
  );
  await page.screenshot({ path: iconFile(name), omitBackground: true });
}
