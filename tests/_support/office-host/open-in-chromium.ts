import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { BrowserContext, Page } from "playwright-core";
import type { FakeExcel } from "./fake-excel";
import type { SavedWorkbook } from "./workbook";

const LIBRARY = dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/dist/office.js"));
const HOSTED = "https://appsforoffice.microsoft.com/lib/1/hosted/";

/** The fake host as a test reaches it within a page. */
export type ExcelWindow = Window & { readonly fakeExcel: FakeExcel };

export interface ExcelPage {
  readonly page: Page;
  /** what the page asked for outside its own server and the library's files, and what it complained of */
  readonly complaints: string[];
}

/**
 * A page with the fake host in it and the library's address answered from node_modules. Nothing of the
 * page is changed; every other address is refused and told.
 */
export async function openInChromium(
  context: BrowserContext,
  address: string,
  saved?: SavedWorkbook,
): Promise<ExcelPage> {
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(`error: ${error.message}`));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(`console: ${message.text()}`);
  });
  const own = new URL(address).origin;
  await page.route("**/*", (route) => {
    const asked = route.request().url();
    if (asked.startsWith(own) || asked.startsWith("data:") || asked.startsWith("blob:"))
      return route.continue();
    const file = join(
      LIBRARY,
      asked.startsWith(HOSTED) ? new URL(asked).pathname.slice("/lib/1/hosted/".length) : "-",
    );
    if (existsSync(file)) return route.fulfill({ path: file, contentType: "text/javascript" });
    complaints.push(`outside: ${asked}`);
    return route.abort();
  });
  await page.addInitScript((book) => Object.assign(window, { savedWorkbook: book }), saved);
  await page.addInitScript({ content: await hostScript() });
  await page.goto(address);
  return { page, complaints };
}

let script: Promise<string> | null = null;

function hostScript(): Promise<string> {
  const entry = fileURLToPath(new URL("./in-page.ts", import.meta.url));
  script ??= build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    format: "iife",
    keepNames: true,
  }).then(({ outputFiles }) => outputFiles[0]?.text ?? "");
  return script;
}
