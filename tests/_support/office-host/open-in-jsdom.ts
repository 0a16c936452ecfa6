import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import * as jsdom from "jsdom";
import { FakeExcel } from "./fake-excel";
import { installFakeExcel } from "./install";
import type { SavedWorkbook } from "./workbook";

const LIBRARY = dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/dist/office.js"));
/** Stands for the library's own address; nothing is fetched from anywhere. */
const ORIGIN = "https://library.test/";
const GLOBALS = ["Excel", "Office", "OfficeExtension", "CustomFunctions"] as const;

export interface OpenExcel {
  readonly excel: FakeExcel;
  readonly window: jsdom.DOMWindow;
  close(): void;
}

/**
 * The real Office.js, unmodified, in jsdom with the fake host behind it. Its globals become this
 * process's own, as they are in a page.
 */
export async function openInJsdom(
  saved?: SavedWorkbook,
  sets: Record<string, string> = {},
): Promise<OpenExcel> {
  const excel = new FakeExcel(saved);
  Object.assign(excel.sets, sets);
  const dom = new jsdom.JSDOM("<!doctype html>", {
    runScripts: "dangerously",
    resources: new LibraryFiles() as unknown as "usable",
    url: `${ORIGIN}page.html`,
    pretendToBeVisual: true,
  });
  installFakeExcel(dom.window, excel);
  await loadScript(dom.window, `${ORIGIN}office.js`);
  const loaded = dom.window as unknown as Record<(typeof GLOBALS)[number], unknown> & typeof globalThis;
  await (loaded.Office as typeof Office).onReady();
  for (const name of GLOBALS) Object.assign(globalThis, { [name]: loaded[name] });
  return { excel, window: dom.window, close: () => dom.window.close() };
}

// The types are of a later jsdom, which has another way to serve files.
const { ResourceLoader } = jsdom as unknown as { ResourceLoader: new () => object };

class LibraryFiles extends ResourceLoader {
  fetch(address: string) {
    const found = readFile(join(LIBRARY, new URL(address).pathname));
    return Object.assign(found, { abort: () => undefined });
  }
}

function loadScript(window: jsdom.DOMWindow, address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = window.document.createElement("script");
    script.src = address;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`could not load ${address}`));
    window.document.head.append(script);
  });
}
