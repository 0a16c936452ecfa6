import type { Page } from "playwright-core";
import { type PackedSheet, unpackSheet } from "../../addin/pane/engine/packed-sheet";
import type { WorkbookPort } from "../../addin/workbook/workbook-port";
import type { RemotePort } from "./port-page";

declare const remote: RemotePort;

let timer: NodeJS.Timeout | undefined;

export function stopListening(): void {
  clearInterval(timer);
  timer = undefined;
}

/** The port of the page's grid, each call carried into the page. */
export function remotePort(page: Page): WorkbookPort {
  const listeners = {
    selections: new Set<(place: never) => void>(),
    changes: new Set<(place: never) => void>(),
    sheets: new Set<(place: never) => void>(),
  };
  const told = { selections: 0, changes: 0, sheets: 0 };
  const listen = (kind: keyof typeof listeners, listener: (place: never) => void) => {
    listeners[kind].add(listener);
    if (timer === undefined) {
      void page.evaluate(() => remote.listen());
      timer = setInterval(async () => {
        const heard = await page.evaluate(() => remote.heard());
        for (const each of ["selections", "changes", "sheets"] as const) {
          for (const place of heard[each].slice(told[each])) {
            for (const tell of listeners[each]) tell(place as never);
          }
          told[each] = heard[each].length;
        }
      }, 50);
    }
    return () => {
      listeners[kind].delete(listener);
    };
  };
  return {
    sheets: () => page.evaluate(() => remote.sheets()),
    activeSheet: () => page.evaluate(() => remote.activeSheet()),
    async read(sheet) {
      const { shown, dates, struck, hiddenRows, hiddenColumns, ...plain } = await page.evaluate(
        (name) => remote.read(name),
        sheet,
      );
      const packed: PackedSheet = {
        ...plain,
        shown: new Map(shown),
        dates: new Set(dates),
        struck: new Set(struck),
        hiddenRows: new Set(hiddenRows),
        hiddenColumns: new Set(hiddenColumns),
      };
      return unpackSheet(packed);
    },
    async showFlags(sheet, flags, progress) {
      const steps = await page.evaluate(([s, f]) => remote.showFlags(s, f), [sheet, [...flags]] as const);
      for (const step of steps) progress?.(step);
    },
    clearFlags: (sheet) => page.evaluate((name) => remote.clearFlags(name), sheet),
    hasFlags: (sheet) => page.evaluate((name) => remote.hasFlags(name), sheet),
    formulaCells: async (sheet, cells) =>
      new Set(await page.evaluate(([s, c]) => remote.formulaCells(s, c), [sheet, [...cells]] as const)),
    async writeCells(sheet, edits) {
      const index = await page.evaluate(([s, e]) => remote.writeCells(s, e), [sheet, [...edits]] as const);
      return () => page.evaluate((which) => remote.undo(which), index);
    },
    addSheet: (name, content, ifThere = "number") =>
      page.evaluate(([n, c, i]) => remote.addSheet(n, c, i), [name, content, ifThere] as const),
    goTo: (sheet, cell) => page.evaluate(([s, c]) => remote.goTo(s, c), [sheet, cell] as const),
    setting: (name) => page.evaluate((which) => remote.setting(which), name),
    saveSetting: (name, value) => page.evaluate(([n, v]) => remote.saveSetting(n, v), [name, value] as const),
    onSelection: (listener) => listen("selections", listener as (place: never) => void),
    onChange: (listener) => listen("changes", listener as (place: never) => void),
    onSheets: (listener) => listen("sheets", listener),
    recalculate: () => page.evaluate(() => remote.recalculate()),
  };
}
