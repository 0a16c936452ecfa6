import { mkdir, stat } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import webpack, { type Configuration } from "webpack";
import configs from "../../addin/webpack.config.mjs";
import { launchChromium } from "../../tests/_support/chromium";
import { serve } from "../../tests/_support/serve";

const SITE = fileURLToPath(new URL("../../.cache/screenshots", import.meta.url));
const IMAGES = fileURLToPath(new URL("../images", import.meta.url));
const LARGEST = 300_000;

/** Builds the workbench, opens it as a reader would, and pictures it for the README. */
async function main(): Promise<void> {
  for (const config of configs({ workbench: true }, { mode: "development" })) await build(config);
  await mkdir(IMAGES, { recursive: true });
  const served = await serve(SITE);
  const browser = await launchChromium();
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 860 } });
    await page.goto(served.url);
    const pane = page.locator("barwright-pane");
    await pane.locator(".group").first().waitFor({ timeout: 120_000 });
    await pane.locator(".group .place").first().click();
    await pane.locator(".bar svg").waitFor();
    await page.waitForTimeout(1_500);
    const path = `${IMAGES}/workbench.png`;
    await page.screenshot({ path });
    const { size } = await stat(path);
    if (size > LARGEST) throw new Error(`workbench.png has ${size} bytes, more than ${LARGEST}`);
    console.log(`docs/images/workbench.png, ${size} bytes`);
  } finally {
    await browser.close();
    await served.close();
  }
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
