import { beforeEach, describe, expect, test } from "vitest";
import { createLocalDesk } from "../../../../addin/pane/desk/local-desk";
import { PaneModel } from "../../../../addin/pane/pane-model";
import type { SheetContent, WorkbookPort } from "../../../../addin/pane/workbook-port";
import { createLocalYardDesk } from "../../../../addin/pane/yard/local-yard-desk";
import { YardModel } from "../../../../addin/pane/yard/yard-model";
import { type Cell, sheetFromRows } from "../../../../core/schedule";

const BARS: Cell[][] = [
  ["Member", "Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A mm", "B mm", "C mm"],
  ["Slab", "01", "H16", 10, 2800, "21", 700, 1450, 700],
  ["Slab", "02", "H20", 4, 3000, "00", 3000, null, null],
];

/** Sheets in memory; those added are kept as they were written. */
function bookInMemory(sheets: Map<string, Cell[][]>) {
  const written: { name: string; ifThere: string }[] = [];
  const went: string[] = [];
  const port: WorkbookPort = {
    sheets: async () => [...sheets.keys()].map((name) => ({ name, visible: true, isProtected: false })),
    activeSheet: async () => [...sheets.keys()][0] ?? "",
    read: async (name) => sheetFromRows(name, sheets.get(name) ?? []),
    showFlags: async () => {},
    clearFlags: async () => {},
    hasFlags: async () => false,
    writeCells: async () => async () => true,
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
    setting: async () => null,
    saveSetting: async () => {},
    onSelection: () => () => {},
    onChange: () => () => {},
    recalculate: async () => 0,
  };
  return { port, written, went };
}

let sheets: Map<string, Cell[][]>;
let book: ReturnType<typeof bookInMemory>;
let pane: PaneModel;
let yard: YardModel;

beforeEach(async () => {
  sheets = new Map([
    ["Bars", BARS],
    ["Older", BARS.map((row) => row.map((cell) => (cell === 10 ? 8 : cell)))],
  ]);
  book = bookInMemory(sheets);
  pane = new PaneModel(book.port, createLocalDesk());
  await pane.start();
  yard = new YardModel(book.port, pane, createLocalYardDesk(), { print: null, save: () => {} });
});

describe("YardModel", () => {
  test("should offer the other sheets as older revisions", () => {
    expect(yard.state).toMatchObject({ sheet: "Bars", others: ["Older"], older: "Older", shopSheet: null });
  });

  test("should write a Totals sheet once, and ask before it is written anew", async () => {
    await yard.writeTotals();
    expect(book.written).toEqual([{ name: "Totals", ifThere: "number" }]);
    expect(pane.state.sheets.map(({ name }) => name)).toContain("Totals");
    await yard.writeTotals();
    expect(yard.state.asksAboutTotals).toBe("Totals");
    expect(book.written).toHaveLength(1);
    await yard.writeTotals("replace");
    expect(book.written.at(-1)).toEqual({ name: "Totals", ifThere: "replace" });
    expect(yard.state.asksAboutTotals).toBeNull();
  });

  test("should never write over a Totals sheet of the user's own", async () => {
    sheets.set("Totals", [["my own sums"]]);
    await pane.sheetsChanged();
    await yard.writeTotals();
    await yard.writeTotals("replace");
    expect(book.written.map(({ ifThere }) => ifThere)).toEqual(["number", "number"]);
    expect(sheets.get("Totals")).toEqual([["my own sums"]]);
  });

  test("should add a Shop sheet with room to write, then go to it", async () => {
    await yard.openShop();
    expect(book.written).toEqual([{ name: "Shop", ifThere: "number" }]);
    expect(sheets.get("Shop")?.flat()).toContain("largest angle");
    await yard.openShop();
    expect(book.written).toHaveLength(1);
    expect(book.went).toEqual(["Shop!A1"]);
  });

  test("should compare with the sheet chosen and jump to a changed cell", async () => {
    await yard.compareWithSheet();
    expect(yard.state.comparison?.changes.map(({ name }) => name)).toEqual(["Slab, mark 01"]);
    await yard.goTo(yard.state.comparison?.changes[0]?.cell ?? "");
    expect(book.went).toEqual(["Bars!D2"]);
  });

  test("should say in words why a page cannot be made", async () => {
    await yard.makePage("labels");
    expect(yard.state).toMatchObject({ page: null, doing: null });
    expect(pane.state.notice).toMatchObject({ kind: "problem" });
    expect(pane.state.notice?.text).toContain("Hoist or crane kg");
  });

  test("should stay with the schedule that was checked while the user looks elsewhere", async () => {
    await pane.check();
    await yard.writeTotals();
    await pane.chooseSheet("Totals");
    await yard.reckonTonnage();
    // 10 x 2.8 x 1.579 + 4 x 3 x 2.466 kg
    expect(yard.state.totals).toMatchObject({ sheet: "Bars", total: "0.074" });
  });
});
