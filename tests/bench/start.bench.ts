import { spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import type { CDPSession, Page } from "playwright-core";
import { FLAG_FILLS } from "../../addin/workbook/flag-fills";
import { launchChromium } from "../_support/chromium";
import type { Bench } from "./bench";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const RELOADS = 3;

/** From the command to the demonstration with its flags, and again after a reload, on a clone that is built. */
const bench: Bench = {
  name: "start: npm start, then a reload",
  async run() {
    const browser = await launchChromium();
    const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
    const began = performance.now();
    const server = spawn("npm", ["start"], {
      cwd: ROOT,
      env: { ...process.env, PORT: "0" },
      stdio: ["ignore", "pipe", "inherit"],
      detached: true,
    });
    try {
      const url = await address(server.stdout);
      const served = performance.now();
      const received = await countBytes(await page.context().newCDPSession(page));
      await page.goto(url);
      await flagged(page);
      const first = performance.now();
      const { scripts, workers } = received();
      // the worker that keeps the files has them all by then
      await page.evaluate(() => navigator.serviceWorker?.ready);
      const reloads: number[] = [];
      for (let at = 0; at < RELOADS; at += 1) {
        const again = performance.now();
        await page.reload();
        await flagged(page);
        reloads.push(Math.round(performance.now() - again));
      }
      return {
        figures: {
          "command to address, ms": Math.round(served - began),
          "command to flagged, ms": Math.round(first - began),
          "address to flagged, ms": Math.round(first - served),
          "reload to flagged, ms, each": reloads.join(", "),
          "the page's scripts as sent, KB": Math.round(scripts / 1000),
          "all that was sent until then, KB": Math.round((scripts + workers) / 1000),
        },
      };
    } finally {
      if (server.pid !== undefined) process.kill(-server.pid);
      await browser.close();
    }
  },
};

export default bench;

async function address(output: NodeJS.ReadableStream): Promise<string> {
  let said = "";
  for (;;) {
    const [chunk] = (await once(output, "data")) as [Buffer];
    said += String(chunk);
    const url = /http:\/\/\S+/.exec(said)?.[0];
    if (url !== undefined) return url;
  }
}

/** The list of findings stands, and so does the colour of unsafe rows in the grid. */
async function flagged(page: Page): Promise<void> {
  await page.waitForFunction(
    (colour) => {
      const pane = document.querySelector("barwright-pane");
      const inside = pane?.shadowRoot ?? pane;
      if (inside?.querySelector(".finding, .alike") == null || inside.querySelector(".under-way") !== null)
        return false;
      const canvas = document.querySelector<HTMLCanvasElement>('#grid canvas[id*="sheet-main-canvas"]');
      const image = canvas?.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height).data;
      const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
      for (let at = 0; image !== undefined && at < image.length; at += 4)
        if (image[at] === red && image[at + 1] === green && image[at + 2] === blue) return true;
      return false;
    },
    FLAG_FILLS.unsafe,
    { polling: 20, timeout: 100_000 },
  );
}

/** Packed bytes as they came over the line: of the page's own scripts, and of all else. */
async function countBytes(session: CDPSession): Promise<() => { scripts: number; workers: number }> {
  const kinds = new Map<string, string>();
  const counts = { scripts: 0, workers: 0 };
  await session.send("Network.enable");
  session.on("Network.requestWillBeSent", ({ requestId, type }) => kinds.set(requestId, type ?? ""));
  session.on("Network.loadingFinished", ({ requestId, encodedDataLength }) => {
    counts[kinds.get(requestId) === "Script" ? "scripts" : "workers"] += encodedDataLength;
  });
  return () => ({ ...counts });
}
