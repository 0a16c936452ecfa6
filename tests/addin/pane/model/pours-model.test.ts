import { beforeEach, describe, expect, test } from "vitest";
import { createLocalEngine } from "../../../../addin/pane/engine/local-engine";
import { PaneModel } from "../../../../addin/pane/model/pane-model";
import { PoursModel } from "../../../../addin/pane/model/pours-model";
import { writeNewWorkbook } from "../../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../../core/schedule";
import { bookInMemory } from "./book-in-memory";

const BARS: Cell[][] = [
  ["Member", "Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A mm", "B mm", "C mm"],
  ["Slab", "01", "H16", 10, 2800, "21", 700, 1450, 700],
  ["Slab", "02", "H20", 4, 3000, "00", 3000, null, null],
];

let sheets: Map<string, Cell[][]>;
let book: ReturnType<typeof bookInMemory>;
let pane: PaneModel;
let yard: PoursModel;

beforeEach(async () => {
  sheets = new Map([
    ["Bars", BARS],
    ["Older", BARS.map((row) => row.map((cell) => (cell === 10 ? 8 : cell)))],
  ]);
  book = bookInMemory(sheets);
  const engine = createLocalEngine();
  pane = new PaneModel(book.port, engine);
  await pane.start();
  yard = new PoursModel(book.port, pane, engine, { print: null, save: () => {} });
});

describe("PoursModel", () => {
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

  test("should add a sheet Standard to look figures up on, then go to it", async () => {
    await pane.papers?.writeStandard(null);
    expect(book.written).toEqual([{ name: "Standard", ifThere: "number" }]);
    expect(sheets.get("Standard")?.flat()).toContain("your copy says");
    await pane.papers?.writeStandard(null);
    expect(book.written).toHaveLength(1);
    expect(book.went).toEqual(["Standard!A1"]);
  });

  test("should take the sheet Standard out of a file, have it in force, and never write over one", async () => {
    const heads = [
      "own code",
      "standard",
      "in words",
      "course",
      "length formula",
      "limits",
      "use",
      "who looked",
      "when",
    ];
    const who = ["R. Ashdown", "2026-11-02"];
    const own = ["Q1", "BS8666:2005", "an own bar", "A +90 B", "A + B", null, null, ...who];
    const file = writeNewWorkbook({ sheets: [{ name: "Standard", rows: [heads, own] }] });
    sheets.set("Bars", [...BARS, ["Slab", "03", "H16", 2, 1200, "Q1", 700, 500, null]]);
    await pane.check();
    const ofShape = () => (pane.state.view?.findings ?? []).filter(({ message }) => message.includes("Q1"));
    expect(ofShape()).not.toEqual([]);
    await pane.papers?.writeStandard(file);
    expect(sheets.get("Standard")).toEqual([heads, own]);
    await pane.check();
    expect(ofShape()).toEqual([]);
    await pane.papers?.writeStandard(file);
    expect(pane.state.notice).toMatchObject({
      kind: "problem",
      text: expect.stringContaining("is there already"),
    });
    await pane.papers?.writeStandard(writeNewWorkbook({ sheets: [{ name: "Other", rows: [["x"]] }] }));
    expect(book.written).toHaveLength(1);
  });

  test("should have the sheet Standard in force in a workbook of very many sheets too", async () => {
    for (let at = 1; at <= 20; at += 1) sheets.set(`Sheet ${at}`, [["x"]]);
    await pane.papers?.writeStandard(null);
    await pane.check();
    expect(pane.state.view?.otherSheets).toEqual(["Standard"]);
  });

  test("should compare with the sheet chosen and jump to a changed cell", async () => {
    await yard.compareWithSheet();
    expect(yard.state.comparison?.changes.map(({ name }) => name)).toEqual(["Slab, mark 01"]);
    await yard.goTo(yard.state.comparison?.changes[0]?.cell ?? "");
    expect(book.went).toEqual(["Bars!D2"]);
  });

  describe("remnants", () => {
    const SHOP: Cell[][] = [
      ["size", "stock length", "bars held", "kind"],
      [null, 12000, null, "stock"],
      ["H16", 3000, 2, "remnant"],
      [],
      [],
      ["limit", "value"],
      ["least remnant", 700],
    ];
    // ten of 2800: two from the remnants, eight from two bars that leave 800 each
    const BOOKED: Cell[][] = [
      SHOP[0]!,
      SHOP[1]!,
      ["H16", 3000, 0, "remnant"],
      ["H16", 800, 2, "remnant"],
      ...SHOP.slice(4),
    ];

    beforeEach(async () => {
      sheets.set("Shop", SHOP);
      await pane.sheetsChanged();
      await yard.makePage("cut list");
    });

    test("should be written only after they were looked at, and be taken back in one step", async () => {
      await yard.writeRemnants();
      expect(sheets.get("Shop")).toEqual(SHOP);
      await yard.lookAtRemnants();
      expect(yard.state.remnants).toEqual({ step: "open", twice: null });
      expect(sheets.get("Shop")).toEqual(SHOP);
      await yard.writeRemnants();
      expect(sheets.get("Shop")).toEqual(BOOKED);
      expect(yard.state.remnants.step).toBe("written");
      expect(pane.state.fixes.map(({ sheet, cells }) => [sheet, cells])).toEqual([
        ["Shop", "5 cells of Shop"],
      ]);
      await pane.fixes.undoFix();
      expect(sheets.get("Shop")).toEqual(SHOP);
      expect([yard.state.remnants.step, book.settings.size]).toEqual(["closed", 0]);
    });

    test("should be left alone where the user says so", async () => {
      await yard.lookAtRemnants();
      yard.leaveRemnants();
      await yard.writeRemnants();
      expect([sheets.get("Shop"), yard.state.remnants.step]).toEqual([SHOP, "closed"]);
    });

    test("should not be written twice unsaid: the next cut list of the same bars asks", async () => {
      await yard.lookAtRemnants();
      await yard.writeRemnants();
      await yard.makePage("cut list");
      await yard.lookAtRemnants();
      expect(yard.state.remnants.twice).toMatch(/these 14 pieces \(sheet Bars\) were written on .*twice/);
      expect(sheets.get("Shop")).toEqual(BOOKED);
    });

    test("should not be written from a cut list that the sheets have left behind", async () => {
      await yard.lookAtRemnants();
      const changed = SHOP.map((row) => row.map((cell) => (cell === 2 ? 1 : cell)));
      sheets.set("Shop", changed);
      await yard.writeRemnants();
      expect(sheets.get("Shop")).toEqual(changed);
      expect(pane.state.notice).toMatchObject({ kind: "problem" });
      expect(pane.state.notice?.text).toContain("make the cut list again");
    });

    test("should leave the sheet as it was where the cut cannot be remembered", async () => {
      await yard.lookAtRemnants();
      book.port.saveSetting = async () => {
        throw new Error("the workbook is read-only");
      };
      await yard.writeRemnants();
      expect([sheets.get("Shop"), pane.state.fixes]).toEqual([SHOP, []]);
      expect(pane.state.notice?.text).toContain("read-only");
    });

    test("should offer a Shop sheet where there is none, and add it only when asked", async () => {
      sheets.delete("Shop");
      await pane.sheetsChanged();
      await yard.makePage("cut list");
      await yard.lookAtRemnants();
      expect(yard.state.page?.remnants?.shopSheet).toBeNull();
      expect([...sheets.keys()]).not.toContain("Shop");
      await yard.addShopForRemnants();
      expect(book.written).toEqual([{ name: "Shop", ifThere: "number" }]);
      expect(yard.state.page?.remnants).toMatchObject({ shopSheet: "Shop", problem: null });
      expect(yard.state.remnants.step).toBe("open");
    });
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
    await yard.addUp();
    // 10 x 2.8 x 1.579 + 4 x 3 x 2.466 kg
    expect(yard.state.totals).toMatchObject({ sheet: "Bars", total: "0.074" });
  });
});
