import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type RowFlag, type WorkbookPort, WorkbookRefusal } from "../../addin/workbook/workbook-port";

/** The workbook that every implementation starts with, as rows of values and formulas. */
export const PORT_BOOK = {
  sheets: [
    {
      name: "Bars",
      rows: [
        ["Mark", "Size", "Length", "kg/m"],
        ["01", "H16", 1250, "=BAR.MASS(B2)"],
        ["02", "H20", 2400, "=BAR.MASS(B3)"],
        ["03", "H25", 3600, "=C4*2"],
        ["04", "H10", 900, null],
      ],
    },
    { name: "Notes", rows: [["nothing to bend here"]] },
  ],
  /** how many of the formulas call BAR */
  barFormulas: 2,
  /** a fill that the user gave a cell */
  ownFill: { sheet: "Bars", cell: "B3", colour: "#dcefdc" },
} as const;

/** One implementation of the port with what a user would do to its workbook. */
export interface PortUnderTest {
  readonly port: WorkbookPort;
  /** Saves, closes and opens the workbook again; the port from then on. */
  reopen(): Promise<WorkbookPort>;
  /** fill that a cell is shown with, "#rrggbb" in lower case; null where it has none */
  shownFill(sheet: string, cell: string): Promise<string | null>;
  setFill(sheet: string, cell: string, colour: string): Promise<void>;
  /** what the user would do at the keyboard */
  type(sheet: string, cell: string, value: string | number): Promise<void>;
  select(sheet: string, cell: string): Promise<void>;
  /** what the user would do to the sheets */
  sheetTabs: {
    add(name: string): Promise<void>;
    rename(sheet: string, name: string): Promise<void>;
    move(sheet: string, place: number): Promise<void>;
    hide(sheet: string): Promise<void>;
    remove(sheet: string): Promise<void>;
  };
  selected(): Promise<{ sheet: string; cell: string }>;
  close(): Promise<void>;
}

const FLAGS: readonly RowFlag[] = [
  { row: 1, firstColumn: 0, lastColumn: 3, colour: "unsafe", note: "former below the least" },
  { row: 2, firstColumn: 0, lastColumn: 3, colour: "doubtful", note: "probably metres" },
];

/** What every workbook behind the pane must do alike. */
export function describeWorkbookPort(name: string, makePort: () => Promise<PortUnderTest>): void {
  describe(`the workbook port over ${name}`, () => {
    let under: PortUnderTest;
    let port: WorkbookPort;

    beforeEach(async () => {
      under = await makePort();
      port = under.port;
    });
    afterEach(() => under.close());

    const valueAt = async (row: number, column: number, from = port) =>
      (await from.read("Bars")).cell(row, column);

    test("should name its sheets and the active one", async () => {
      expect((await port.sheets()).map((sheet) => sheet.name)).toEqual(["Bars", "Notes"]);
      expect((await port.sheets()).every((sheet) => sheet.visible && !sheet.isProtected)).toBe(true);
      expect(await port.activeSheet()).toBe("Bars");
    });

    test("should read texts as texts and numbers as numbers", async () => {
      const sheet = await port.read("Bars");
      expect([sheet.name, sheet.top, sheet.left, sheet.rowCount, sheet.columnCount]).toEqual([
        "Bars",
        0,
        0,
        5,
        4,
      ]);
      expect(sheet.cell(1, 0)).toBe("01");
      expect(sheet.cell(1, 2)).toBe(1250);
      expect(sheet.cell(4, 3)).toBeNull();
    });

    test("should give a copy that later edits do not reach", async () => {
      const before = await port.read("Bars");
      await under.type("Bars", "C2", 1300);
      expect(before.cell(1, 2)).toBe(1250);
      expect(await valueAt(1, 2)).toBe(1300);
    });

    test("should refuse a sheet that is not there, by name", async () => {
      await expect(port.read("Beams")).rejects.toThrow(/Beams/);
    });

    test("should colour rows and say how far it is", async () => {
      const steps: number[] = [];
      await port.showFlags("Bars", FLAGS, (done) => steps.push(done));
      expect(await port.hasFlags("Bars")).toBe(true);
      expect(await port.hasFlags("Notes")).toBe(false);
      expect(await under.shownFill("Bars", "A2")).not.toBeNull();
      expect(await under.shownFill("Bars", "D3")).not.toBe(await under.shownFill("Bars", "D2"));
      expect(await under.shownFill("Bars", "A4")).toBeNull();
      expect(steps.at(-1)).toBeGreaterThan(0);
    });

    test("should restore the user's own colours, also one given under a flag", async () => {
      const { sheet, cell, colour } = PORT_BOOK.ownFill;
      expect(await under.shownFill(sheet, cell)).toBe(colour);
      await port.showFlags("Bars", FLAGS);
      expect(await under.shownFill(sheet, cell)).not.toBe(colour);
      await under.setFill("Bars", "A2", "#ffeeaa");
      await port.clearFlags("Bars");
      expect(await port.hasFlags("Bars")).toBe(false);
      expect(await under.shownFill(sheet, cell)).toBe(colour);
      expect(await under.shownFill("Bars", "A2")).toBe("#ffeeaa");
      expect(await under.shownFill("Bars", "D3")).toBeNull();
    });

    test("should restore the user's own colours after save, close and reopen", async () => {
      const { sheet, cell, colour } = PORT_BOOK.ownFill;
      await port.showFlags("Bars", FLAGS);
      const shown = await under.shownFill(sheet, cell);
      const again = await under.reopen();
      expect(await again.hasFlags("Bars")).toBe(true);
      expect(await under.shownFill(sheet, cell)).toBe(shown);
      await again.clearFlags("Bars");
      expect(await again.hasFlags("Bars")).toBe(false);
      expect(await under.shownFill(sheet, cell)).toBe(colour);
      expect(await under.shownFill("Bars", "A2")).toBeNull();
      const last = await under.reopen();
      expect(await last.hasFlags("Bars")).toBe(false);
      expect(await under.shownFill(sheet, cell)).toBe(colour);
    });

    test("should replace flags, never add to them", async () => {
      await port.showFlags("Bars", FLAGS);
      await port.showFlags("Bars", [FLAGS[0] as RowFlag]);
      expect(await under.shownFill("Bars", "D3")).toBeNull();
    });

    test("should write texts without taking them for numbers or dates", async () => {
      await port.writeCells("Bars", [
        { cell: "A2", to: "00" },
        { cell: "A3", to: "1-2" },
        { cell: "C4", to: 3650 },
        { cell: "A5", to: null },
      ]);
      expect([await valueAt(1, 0), await valueAt(2, 0), await valueAt(3, 2)]).toEqual(["00", "1-2", 3650]);
      expect(await valueAt(4, 0)).toBeNull();
    });

    test("should know which cells hold a formula", async () => {
      expect([...(await port.formulaCells("Bars", ["A2", "D2", "D5", "D4"]))].sort()).toEqual(["D2", "D4"]);
    });

    test("should take a write back, formulas among it", async () => {
      const undo = await port.writeCells("Bars", [
        { cell: "A2", to: "99" },
        { cell: "D4", to: 1 },
      ]);
      expect(await undo()).toBe(true);
      expect(await valueAt(1, 0)).toBe("01");
      await under.type("Bars", "C4", 100);
      await expect.poll(() => valueAt(3, 3), { timeout: 10_000 }).toBe(200);
    });

    test("should write rows under everything else in one step and take them back", async () => {
      const { rowCount } = await port.read("Bars");
      const last = rowCount + 200;
      const undo = await port.writeCells("Bars", [
        { cell: `A${last}`, to: "H16" },
        { cell: `B${last}`, to: 2140 },
        { cell: "C4", to: 3650 },
      ]);
      expect([await valueAt(last - 1, 0), await valueAt(last - 1, 1)]).toEqual(["H16", 2140]);
      expect(await undo()).toBe(true);
      expect(await valueAt(last - 1, 1)).toBeNull();
      expect((await port.read("Bars")).rowCount).toBe(rowCount);
    });

    test("should take nothing back where the user wrote since", async () => {
      const undo = await port.writeCells("Bars", [
        { cell: "A2", to: "99" },
        { cell: "A3", to: "98" },
      ]);
      await under.type("Bars", "A3", "mine");
      expect(await undo()).toBe(false);
      expect([await valueAt(1, 0), await valueAt(2, 0)]).toEqual(["99", "mine"]);
    });

    test("should add a sheet with texts, numbers and live formulas, and turn to it", async () => {
      const name = await port.addSheet("Totals", {
        rows: [
          [{ value: "Totals", bold: true }],
          [{ value: "00" }, { value: 12.5 }, { value: null }, { value: "=not a formula" }],
          [{ value: null, formula: "Bars!C4*2" }],
        ],
        widths: [20, 10],
      });
      expect(name).toBe("Totals");
      expect((await port.sheets()).map((sheet) => sheet.name)).toEqual(["Bars", "Notes", "Totals"]);
      expect(await port.activeSheet()).toBe("Totals");
      const added = await port.read("Totals");
      expect([added.cell(0, 0), added.cell(1, 0), added.cell(1, 1), added.cell(1, 2)]).toEqual([
        "Totals",
        "00",
        12.5,
        null,
      ]);
      expect(added.cell(1, 3)).toBe("=not a formula");
      expect(await valueAt(1, 0)).toBe("01");
      await under.type("Bars", "C4", 4000);
      await expect.poll(async () => (await port.read("Totals")).cell(2, 0), { timeout: 10_000 }).toBe(8000);
    });

    test("should never write over a sheet unless told to, whatever its case", async () => {
      const content = (text: string) => ({ rows: [[{ value: text }], [{ value: text }]] });
      expect(await port.addSheet("notes", content("new"))).toBe("notes (2)");
      expect(await port.addSheet("notes", content("newer"))).toBe("notes (3)");
      expect((await port.read("Notes")).cell(0, 0)).toBe("nothing to bend here");
      expect(await port.addSheet("notes (2)", { rows: [[{ value: "again" }]] }, "replace")).toBe("notes (2)");
      const replaced = await port.read("notes (2)");
      expect([replaced.cell(0, 0), replaced.rowCount]).toEqual(["again", 1]);
      expect((await port.sheets()).length).toBe(4);
    });

    test("should keep an added sheet with its formulas through save and reopen", async () => {
      await port.addSheet("Totals", {
        rows: [[{ value: "00" }, { value: 7 }], [{ value: null, formula: "Bars!C4*2" }]],
      });
      const again = await under.reopen();
      expect((await again.sheets()).map((sheet) => sheet.name)).toEqual(["Bars", "Notes", "Totals"]);
      const kept = await again.read("Totals");
      expect([kept.cell(0, 0), kept.cell(0, 1)]).toEqual(["00", 7]);
      await under.type("Bars", "C4", 500);
      await expect.poll(async () => (await again.read("Totals")).cell(1, 0), { timeout: 10_000 }).toBe(1000);
    });

    test("should go to a cell of another sheet", async () => {
      await port.goTo("Notes", "A1");
      expect(await port.activeSheet()).toBe("Notes");
      await port.goTo("Bars", "C4");
      expect(await under.selected()).toEqual({ sheet: "Bars", cell: "C4" });
    });

    test("should keep settings in the workbook", async () => {
      expect(await port.setting("Barwright.Standard")).toBeNull();
      await port.saveSetting("Barwright.Standard", "BS8666:2020");
      await port.saveSetting("Barwright.Standard", "EC2:2004");
      await port.saveSetting("Barwright.Audit", '{"rulesOff":["BEND101"]}');
      expect(await port.setting("Barwright.Standard")).toBe("EC2:2004");
      const again = await under.reopen();
      expect(await again.setting("Barwright.Standard")).toBe("EC2:2004");
      expect(await again.setting("Barwright.Audit")).toBe('{"rulesOff":["BEND101"]}');
      await again.saveSetting("Barwright.Standard", null);
      expect(await again.setting("Barwright.Standard")).toBeNull();
    });

    test("should keep a setting longer than a formula, and no more names than it needs", async () => {
      const long = `{"rulesOff":["${'"\u{1f6a7}'.repeat(6_000)}"]}`;
      await port.saveSetting("Barwright.Audit", long);
      expect(await port.setting("Barwright.Audit")).toBe(long);
      const again = await under.reopen();
      expect(await again.setting("Barwright.Audit")).toBe(long);
      await again.saveSetting("Barwright.Audit", "{}");
      expect(await again.setting("Barwright.Audit")).toBe("{}");
      expect(await again.setting("Barwright.Audit.2")).toBeNull();
    });

    test("should say how many BAR formulas it recalculated", async () => {
      expect(await port.recalculate()).toBe(PORT_BOOK.barFormulas);
    });

    test("should tell what the user selects and edits, until told to stop", async () => {
      const selections: unknown[] = [];
      const changes: { sheet: string; firstRow: number; lastRow: number }[] = [];
      const stopSelection = port.onSelection((place) => selections.push(place));
      const stopChange = port.onChange((place) => changes.push(place));
      await under.select("Bars", "B4");
      await under.type("Bars", "C3", 2450);
      await expect.poll(() => selections).toContainEqual({ sheet: "Bars", row: 3, column: 1 });
      await expect.poll(() => changes).toContainEqual({ sheet: "Bars", firstRow: 2, lastRow: 2 });
      stopSelection();
      stopChange();
      const count = changes.length;
      await under.type("Bars", "C3", 2475);
      await new Promise((resolve) => setTimeout(resolve, 200));
      expect(changes).toHaveLength(count);
    });

    test("should tell of each sheet that comes, goes, moves, is renamed or hidden, and know it again", async () => {
      let told = 0;
      const stop = port.onSheets(() => {
        told += 1;
      });
      const { add, rename, move, hide, remove } = under.sheetTabs;
      const [bars, notes] = await port.sheets();
      const names = async () => (await port.sheets()).map(({ name }) => name);
      const hears = async (act: Promise<void>): Promise<void> => {
        const before = told;
        await act;
        await expect.poll(() => told, { timeout: 5_000 }).toBeGreaterThan(before);
      };
      await under.select("Bars", "A1");
      await hears(add("Beams"));
      expect(await names()).toEqual(["Bars", "Notes", "Beams"]);
      await hears(rename("Bars", "Slab"));
      expect((await port.sheets())[0]).toMatchObject({ id: bars?.id, name: "Slab" });
      await hears(move("Slab", 1));
      expect(await names()).toEqual(["Notes", "Slab", "Beams"]);
      expect((await port.sheets()).map(({ id }) => id).slice(0, 2)).toEqual([notes?.id, bars?.id]);
      await hears(hide("Beams"));
      expect((await port.sheets()).map(({ visible }) => visible)).toEqual([true, true, false]);
      await hears(remove("Notes"));
      expect(await names()).toEqual(["Slab", "Beams"]);
      stop();
    });

    test("should take a write back on a sheet that was renamed since", async () => {
      const undo = await port.writeCells("Bars", [{ cell: "A2", to: "99" }]);
      await under.sheetTabs.rename("Bars", "Slab");
      expect(await undo()).toBe(true);
      expect((await port.read("Slab")).cell(1, 0)).toBe("01");
    });

    test("should refuse a cell that is no cell", async () => {
      await expect(port.goTo("Bars", "twelve")).rejects.toBeInstanceOf(Error);
      expect(new WorkbookRefusal("x")).toBeInstanceOf(Error);
    });
  });
}
