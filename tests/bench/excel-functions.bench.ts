import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { launchChromium } from "../_support/chromium";
import type { Bench } from "./bench";
import { TIMED_CALLS } from "./excel-functions.data";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const LIBRARY = dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/dist/office.js"));
const HOST = join(HERE, "../_support/office-host/in-page.ts");
const PAGE = `<!doctype html>${["host", "library/office", "functions"]
  .map((name) => `<script src="/${name}.js"></script>`)
  .join("")}`;
const WHOLE_COLUMN = 1_048_576;
/** the parts of one function's call, by rows of its columns */
const STAGED = [
  ["whole columns, first call", WHOLE_COLUMN],
  ["whole columns", WHOLE_COLUMN],
  ["10,000 rows", 10_000],
] as const;
const OWN = "the add-in's own, ms";
/** Office.js lets half a second pass between two answers */
const PAUSE = 1_500;

/** Columns of which 10,000 rows are filled, in the engine that Excel's panes run in: whose the time is. */
const bench: Bench = {
  name: "Excel: columns through the real Office.js in Chromium",
  async run() {
    const served = createServer(async ({ url = "/" }, answer) => {
      answer.setHeader("content-type", url === "/" ? "text/html" : "text/javascript");
      answer.end(await answered(url));
    });
    await new Promise<void>((resolve) => served.listen(0, "127.0.0.1", resolve));
    const browser = await launchChromium();
    try {
      const page = await browser.newPage();
      await page.goto(`http://127.0.0.1:${(served.address() as AddressInfo).port}/`);
      await page.evaluate(() => Office.onReady().then(() => undefined));
      const stages = async (place: number, rows: number, call: number) => {
        const parts = await page.evaluate<Record<string, number>>(`callInStages(${place}, ${rows}, ${call})`);
        await page.waitForTimeout(PAUSE);
        return parts;
      };
      const figures: Record<string, number> = {};
      for (const [call, [what, rows]] of STAGED.entries()) {
        for (const [part, ms] of Object.entries(await stages(0, rows, call)))
          figures[`${what}: ${part}`] = Math.round(ms);
      }
      for (const [place, { what }] of TIMED_CALLS.entries()) {
        for (const [call, which] of ["first call", "next call"].entries()) {
          const { [OWN]: ms = Number.NaN } = await stages(place, WHOLE_COLUMN, 50 + call);
          figures[`${what}, whole columns, ${which}: ${OWN}`] = Math.round(ms);
          console.error(what, which, Math.round(ms));
        }
      }
      return { figures };
    } finally {
      await browser.close();
      served.close();
    }
  },
};

export default bench;

async function answered(url: string): Promise<string | Buffer> {
  if (url === "/") return PAGE;
  if (url === "/host.js") return bundled(HOST);
  if (url === "/functions.js") return bundled(join(HERE, "excel-functions-page.ts"));
  return url.startsWith("/library/") ? readFile(join(LIBRARY, url.slice("/library/".length))) : "";
}

async function bundled(entry: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
    keepNames: true,
    minifySyntax: true,
  });
  return outputFiles[0]?.text ?? "";
}
