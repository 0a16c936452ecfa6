import { beforeAll, describe, expect, test } from "vitest";
import { demoWorkbook } from "../../../../addin/demo/demo-workbook";
import type { TrialEntry } from "../../../../addin/pane/engine/bench-view";
import { createLocalEngine } from "../../../../addin/pane/engine/local-engine";
import { NO_OTHER_SHEETS } from "../../../../addin/pane/engine/other-sheets";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { sheetFromRows } from "../../../../core/schedule";

const book = openWorkbook(demoWorkbook());
const engine = createLocalEngine();
const check = (shop = book.read("Shop") as Parameters<typeof engine.check>[0]["shop"]) =>
  engine.check({
    sheet: book.read("Schedule"),
    shop,
    otherSheets: NO_OTHER_SHEETS,
    standard: "BS8666:2005",
    settings: null,
  });
const TRIAL: TrialEntry = {
  machine: "Old Maud",
  size: "H16",
  former: "64",
  grade: "B500B",
  heat: "K641",
  bentTo: 94,
  released: 90.1,
  date: "2026-04-01",
};

beforeAll(async () => void (await check()));

describe("the bench's ticket", () => {
  test("should be of one mark, with a place for the stop and an angle for each bend", async () => {
    const mark = (await engine.marks("Schedule")).find((each) => each.mark === "0202");
    const ticket = await engine.ticket("Schedule", mark!.row);
    // BS 8666:2005 shape 21: 700 + 1450 + 700 - 32 - 32 = 2786, up to 2800
    expect(ticket).toMatchObject({ mark: "0202", cut: "2800" });
    expect(ticket?.bends).toHaveLength(2);
    expect(ticket?.svg).toMatch(/^<svg/);
    expect(ticket?.holds.join()).toMatch(/former 40 mm/);
  });

  test("should say the heats of its bars, as the cut list takes them from stock", async () => {
    const none = (await engine.ticket("Schedule", 5))?.facts.map(({ name }) => name);
    expect(none).not.toContain("Heat");
    const stock = [
      ["Limit", "Value"],
      ["Hoist or crane kg", 1000],
      ["Lorry load kg", 20000],
      [],
      ["Stock length", "Size", "Bars on hand", "Heat"],
      [12000, "H25", 500, "K4711"],
    ];
    const sheet = book.read("Schedule");
    const own = createLocalEngine();
    const asked = { sheet, otherSheets: NO_OTHER_SHEETS, standard: "BS8666:2005", settings: null };
    await own.check({ ...asked, shop: sheetFromRows("Shop", stock) });
    // mark 0101 stands in row 5: 84 bars of H25
    const facts = (await own.ticket("Schedule", 5))?.facts;
    expect(facts?.find(({ name }) => name === "Heat")?.value).toMatch(/K4711/);
    for (const kind of ["cut list", "tickets", "labels", "loads"] as const)
      expect((await own.page(kind, "Schedule", null)).html).toContain("K4711");
    const [pour] = (await own.totals("Schedule")).pours;
    const part = await own.page("cut list", "Schedule", [pour!.pour]);
    expect(part.notes.join()).toContain(
      "tickets, labels and loads say the heats of the whole sheet's cut list",
    );
  });

  test("should say the row's remark as typed, on the bench, the printed ticket and the label", async () => {
    const remark = "ring <the> foreman before cutting";
    const rows = [
      ["Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A mm", "Remarks"],
      ["01", "H16", 10, 2800, "00", 2800, remark],
      ["02", "H16", 10, 2800, "00", 2800, null],
      ["03", "H16", 10, 2800, "00", 2800, `no. ${"7 ".repeat(200)}`],
    ];
    const shop = sheetFromRows("Shop", [
      ["Limit", "Value"],
      ["Hoist or crane kg", 1000],
    ]);
    const own = createLocalEngine();
    const asked = { otherSheets: NO_OTHER_SHEETS, standard: "BS8666:2005", settings: null };
    await own.check({ ...asked, sheet: sheetFromRows("Bars", rows), shop });
    expect((await own.ticket("Bars", 2))?.remark).toBe(remark);
    expect((await own.ticket("Bars", 3))?.remark).toBeNull();
    const printed = "ring &lt;the&gt; foreman before cutting";
    for (const kind of ["tickets", "labels"] as const)
      expect((await own.page(kind, "Bars", null)).html).toContain(printed);
    expect((await own.page("labels", "Bars", null)).html).toContain("Remark: see the ticket");
  });

  test("should be none of a row that is no bar", async () => {
    expect(await engine.ticket("Schedule", 1)).toBeNull();
  });
});

describe("a trial", () => {
  test("should go into the log's own columns, under its last row", async () => {
    const { shop, edits } = await engine.trialEdits("Schedule", TRIAL);
    expect(shop).toBe("Shop");
    const sheet = book.read("Shop");
    const values = Object.fromEntries(edits.map(({ cell, to }) => [cell.replace(/\d+/, ""), to]));
    expect(values).toEqual({
      A: "2026-04-01",
      B: "Old Maud",
      C: "H16",
      D: 64,
      E: "B500B",
      F: "bar",
      G: "K641",
      H: 94,
      I: 90.1,
    });
    const row = Number(/\d+/.exec(edits[0]!.cell)?.[0]);
    expect(row - 1 - sheet.top).toBe(sheet.rowCount);
  });

  test("should change the angle of the bar that it is of, and leave it with one", async () => {
    const mark = (await engine.marks("Schedule")).find((each) => each.mark === "0201")!;
    const before = await engine.ticket("Schedule", mark.row);
    const { size, grade } = before!.trial!;
    const { edits } = await engine.trialEdits("Schedule", { ...TRIAL, size, grade, released: 89.6 });
    const shop = book.read("Shop");
    const rows = Array.from({ length: shop.rowCount + 1 }, (_, row) =>
      Array.from({ length: shop.columnCount }, (_unused, column) => {
        const cell = `${"ABCDEFGHIJKL"[column]}${shop.top + row + 1}`;
        return edits.find((edit) => edit.cell === cell)?.to ?? shop.cell(row, column);
      }),
    );
    await check(sheetFromRows("Shop", rows));
    const after = await engine.ticket("Schedule", mark.row);
    expect(after?.bends[0]?.bendTo).toMatch(/^\d+/);
    // a bar that came back further than those before it is to be bent further
    expect(Number.parseFloat(after!.bends[0]!.bendTo!)).toBeGreaterThan(
      Number.parseFloat(before!.bends[0]!.bendTo!),
    );
    await check();
  });

  test("should begin a log where the sheet has none", async () => {
    await check(
      sheetFromRows("Shop", [
        ["Limit", "Value"],
        ["Hoist or crane kg", 1000],
      ]),
    );
    const { edits } = await engine.trialEdits("Schedule", TRIAL);
    expect(edits.map(({ to }) => to)).toEqual(expect.arrayContaining(["bent to", "released", 94, 90.1]));
    await check();
  });

  test("should be refused where the bar would come back further than it was bent, or there is no Shop sheet", async () => {
    await expect(engine.trialEdits("Schedule", { ...TRIAL, bentTo: 88 })).rejects.toThrow(
      /cannot come to 90\.1 when it was bent to 88/,
    );
    await check(null);
    await expect(engine.trialEdits("Schedule", TRIAL)).rejects.toThrow(/no Shop sheet.*add one/);
    await check();
  });
});

describe("a machine's row", () => {
  const HEADS = ["machine", "largest angle", "guard radius mm", "orbit radius mm", "pins mm", "formers mm"];

  test("should be asked for what it leaves open, one cell a question", async () => {
    await check(sheetFromRows("Shop", [HEADS, ["Idle Jane", 180, null, null, "30", null]]));
    const missing = await engine.missingFacts("Schedule", "idle jane");
    expect(missing.map(({ cell, isList }) => [cell, isList])).toEqual([
      ["F2", true],
      ["C2", false],
      ["D2", false],
    ]);
    expect(missing.map(({ hint }) => hint).join()).toMatch(/sliding pin or a roll/);
    await check();
    expect(await engine.missingFacts("Schedule", "Old Maud")).toEqual([]);
  });
});
