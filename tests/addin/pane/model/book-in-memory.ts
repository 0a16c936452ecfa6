import type { SheetContent, WorkbookPort } from "../../../../addin/workbook/workbook-port";
import { type Cell, sheetFromRows } from "../../../../core/schedule";

/** Sheets in memory; those added are kept as they were written. */
export function bookInMemory(sheets: Map<string, Cell[][]>) {
  const written: { name: string; ifThere: string }[] = [];
  const went: string[] = [];
  const settings = new Map<string, string>();
  const port: WorkbookPort = {
    sheets: async () =>
      [...sheets.keys()].map((name) => ({ id: name, name, visible: true, isProtected: false })),
    activeSheet: async () => [...sheets.keys()][0] ?? "",
    read: async (name) => sheetFromRows(name, sheets.get(name) ?? []),
    showFlags: async () => {},
    clearFlags: async () => {},
    hasFlags: async () => false,
    async writeCells(name, edits) {
      const rows = sheets.get(name) ?? [];
      const before = rows.map((row) => [...row]);
      const after = rows.map((row) => [...row]);
      for (const { cell, to } of edits) {
        const row = Number(cell.slice(1)) - 1;
        while (after.length <= row) after.push([]);
        after[row]![cell.charCodeAt(0) - 65] = to;
      }
      const full = after.map((row) => Array.from(row, (cell) => cell ?? null));
      sheets.set(name, full);
      return async () => {
        if (sheets.get(name) !== full) return false;
        sheets.set(name, before);
        return true;
      };
    },
    async addSheet(name: string, content: SheetContent, ifThere = "number") {
      const free = ifThere === "replace" || !sheets.has(name) ? name : `${name} (2)`;
      sheets.set(
        free,
        content.rows.map((row) =>
          row.map(({ value, formula }) => (formula === undefined ? value : `=${formula}`)),
        ),
      );
      written.push({ name: free, ifThere });
      return free;
    },
    goTo: async (sheet, cell) => {
      went.push(`${sheet}!${cell}`);
    },
    setting: async (name) => settings.get(name) ?? null,
    async saveSetting(name, value) {
      if (value === null) settings.delete(name);
      else settings.set(name, value);
    },
    onSelection: () => () => {},
    onChange: () => () => {},
    onSheets: () => () => {},
    formulaCells: async () => new Set(),
    recalculate: async () => 0,
  };
  return { port, written, went, settings };
}
