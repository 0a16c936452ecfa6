import { beforeAll, describe, expect, test } from "vitest";
import { demoWorkbook } from "../../../../addin/demo/demo-workbook";
import type { CheckQuestion, OlderRevision, PageKind } from "../../../../addin/pane/engine/engine";
import { createLocalEngine } from "../../../../addin/pane/engine/local-engine";
import { NO_OTHER_SHEETS } from "../../../../addin/pane/engine/other-sheets";
import { textConstant } from "../../../../addin/workbook/defined-name";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../../addin/xlsx/write/new-workbook";
import { type Cell, sheetFromRows } from "../../../../core/schedule";
import { readShop } from "../../../../core/shop";
import { resolveStandard, type Standard } from "../../../../core/standards";

const engine = createLocalEngine();

/** What is made of a schedule once it is checked. */
const made = {
  async totals(asked: CheckQuestion) {
    await engine.check(asked);
    return engine.totals(asked.sheet.name);
  },
  async page(kind: PageKind, asked: CheckQuestion, pours: readonly string[] | null = null) {
    await engine.check(asked);
    return engine.page(kind, asked.sheet.name, pours);
  },
  async compare(asked: CheckQuestion, older: OlderRevision) {
    await engine.check(asked);
    return engine.compare(asked.sheet.name, older);
  },
};
const STANDARD = "BS8666:2005";
const HEADER = [
  "Member",
  "Bar mark",
  "Type and size",
  "Total no.",
  "Length mm",
  "Shape code",
  "A mm",
  "B mm",
  "C mm",
];

function question(rows: readonly (readonly Cell[])[], shop: CheckQuestion["shop"] = null): CheckQuestion {
  return {
    sheet: sheetFromRows("Bars", rows),
    shop,
    otherSheets: NO_OTHER_SHEETS,
    standard: STANDARD,
    settings: null,
  };
}

/** 10 bars of 2.8 m at 1.579 kg/m and 4 of 3 m at 2.466: masses of the UK three-decimal table. */
const PLAIN: Cell[][] = [
  [...HEADER, "Mass kg", "Pour"],
  ["Slab", "01", "H16", 10, 2800, "21", 700, 1450, 700, 44.212, "P1"],
  ["Slab", "02", "H20", 4, 3000, "00", 3000, null, null, 29.592, "P2"],
];

describe("totals", () => {
  test("should add up by pour and size, and follow the schedule's own columns", async () => {
    const totals = await made.totals(question(PLAIN));
    expect(totals.sizes).toEqual(["H16", "H20"]);
    expect(totals.pours).toEqual([
      { pour: "P1", dates: [], bySize: ["0.044", ""], total: "0.044" },
      { pour: "P2", dates: [], bySize: ["", "0.030"], total: "0.030" },
    ]);
    expect(totals.table).toEqual([
      ["pour", "H16", "H20", "total, t"],
      ["P1", 0.044212, "", 0.044212],
      ["P2", "", 0.029592, 0.029592],
      ["total", 0.044212, 0.029592, 0.073804],
    ]);
    const formulas = totals.content.rows.flat().flatMap(({ formula }) => formula ?? []);
    expect(formulas).toContain("BAR.TONNAGE('Bars'!K2:K3,'Bars'!C2:C3,'Bars'!J2:J3)");
    expect(totals.chart).toMatch(/^<svg .*H16/);
  });

  test("should reckon masses by BAR.ROWMASS behind the totals where the schedule has none", async () => {
    const { content } = await made.totals(
      question(PLAIN.map((row) => row.filter((_, column) => column !== 9))),
    );
    const formulas = content.rows.flat().flatMap(({ formula }) => formula ?? []);
    expect(formulas).toContain("BAR.TONNAGE(Z3:Z4,AA3:AA4,AB3:AB4)");
    expect(formulas).toContain(`IFERROR(BAR.ROWMASS('Bars'!F2,'Bars'!C2,'Bars'!G2:I2,'Bars'!D2),"")`);
    expect(formulas).toContain("'Bars'!J3");
  });

  test("should say when the schedule's own masses come to something else", async () => {
    const rows = PLAIN.map((row) => row.map((cell) => (cell === 44.212 ? 442.12 : cell)));
    expect((await made.totals(question(rows))).notes.join()).toMatch(/0\.472 t.*0\.074 t/);
  });

  test("should say when each pour is wanted, where the schedule does", async () => {
    const when = ["Date of pour", "12 March 2031", "14 March 2031"];
    const totals = await made.totals(question(PLAIN.map((row, at) => [...row, when[at]!])));
    expect(totals.pours.map(({ pour, dates }) => [pour, dates])).toEqual([
      ["P1", ["12 March 2031"]],
      ["P2", ["14 March 2031"]],
    ]);
  });

  test("should take the day of a pour from the Shop sheet, by which loads go", async () => {
    const totals = await made.totals(question(PLAIN, LORRIES));
    expect(totals.pours.map(({ pour, dates }) => [pour, dates])).toEqual([
      ["P1", ["2031-03-14"]],
      ["P2", ["2031-03-12"]],
    ]);
  });

  test("should say what each pour costs by the rates of the Shop sheet, here and on the Totals sheet", async () => {
    const { costs, content, total, notes } = await made.totals(question(PLAIN, RATES));
    // P1: 0.044212 t x (1.05 x 800 + 100) = 41.56, x 10 h = 0.4 h; no rate fits 20 mm
    expect(costs).toEqual([
      { pour: "P1", waste: "0.002", hours: "0.4", cost: "41.56" },
      { pour: "P2", waste: "0.000", hours: "", cost: "" },
      { pour: "Total", waste: "0.002", hours: "0.4", cost: "41.56" },
    ]);
    expect(notes.join()).toContain("29.6 kg have no rate for their size");
    expect(total).toBe("0.074");
    const formulas = content.rows.flat().flatMap(({ formula }) => formula ?? []);
    expect(formulas).toContain("BAR.COST('Bars'!C2:C3,'Bars'!J2:J3,'Bars'!K2:K3)");
    expect((await made.totals(question(PLAIN, LORRIES))).costs).toBe(null);
  });

  test("should refuse a sheet without bars, with the remedy", async () => {
    await expect(made.totals(question([["nothing"]]))).rejects.toThrow(/sheet Bars holds no bars.*choose/);
  });
});

describe("what was measured", () => {
  const INSPECTION = sheetFromRows("Inspection", [
    ["on sheet", "its row", "bar", "what is measured", "wanted", "least", "most", "measured", "by", "on"],
    // BS 8666:2005, table 5: 700 mm is within 5 mm
    ["Bars", 2, "01", "A", 700, 695, 705, 712],
    ["Bars", 2, "01", "A", 700, 695, 705, 704],
    ["Other", 2, "01", "A", 700, 695, 705, 900],
  ]);
  const asked = { ...question(PLAIN), otherSheets: { before: [], behind: [INSPECTION] } };

  test("should stand among the findings of its own schedule, and after an edit too", async () => {
    const measured = ({ findings }: Awaited<ReturnType<typeof engine.check>>) =>
      findings.filter(({ code }) => code.startsWith("MEASURED")).map(({ cell, message }) => [cell, message]);
    const told = [["H2", "01, A: measured 712 mm, allowed 695 mm to 705 mm (700 mm wanted): 7 mm over"]];
    expect(measured(await engine.check(asked))).toEqual(told);
    expect(measured(await engine.recheck({ sheet: asked.sheet, firstRow: 1, lastRow: 1 }))).toEqual(told);
    expect(measured(await engine.check(question(PLAIN)))).toEqual([]);
  });
});

const RATES = sheetFromRows("Shop", [
  ["size", "supply per tonne", "bend per tonne", "hours per tonne", "waste %"],
  ["up to 16", 800, 100, 10, 5],
]);

/** Two pours on different days, and a lorry that carries both. */
const LORRIES = sheetFromRows("Shop", [
  ["limit", "value"],
  ["Hoist or crane kg", 100],
  ["Lorry load kg", 1000],
  [],
  ["pour", "date"],
  ["P1", "2031-03-14"],
  ["P2", "2031-03-12"],
]);

describe("pages", () => {
  test("should list the findings of the chosen pours alone, and say so on the page", async () => {
    // both lengths are a metre too long
    const rows = PLAIN.map((row, at) =>
      at === 0 ? row : row.map((cell, c) => (c === 4 ? Number(cell) + 1000 : cell)),
    );
    const all = (await made.page("findings", question(rows))).html;
    expect([all.includes("E2"), all.includes("E3")]).toEqual([true, true]);
    const { html } = await made.page("findings", question(rows), ["P2"]);
    expect([html.includes("E2"), html.includes("E3")]).toEqual([false, true]);
    expect(html).toContain("only of P2");
  });

  test("should load lorries by day, those of the chosen pours alone", async () => {
    const page = await made.page("loads", question(PLAIN, LORRIES));
    expect([...page.html.matchAll(/<h2>(Load \d: [\d-]+)/g)].map(([, words]) => words)).toEqual([
      "Load 1: 2031-03-12",
      "Load 2: 2031-03-14",
    ]);
    const one = await made.page("loads", question(PLAIN, LORRIES), ["P2"]);
    expect(one.html).not.toContain("2031-03-14");
    expect(one.notes).toContain("only of P2");
    await expect(made.page("loads", question(PLAIN))).rejects.toThrow(/no lifting limit is known/);
  });

  test("should name a bar longer than the stock and plan the rest", async () => {
    const rows = [...PLAIN, ["Slab", "03", "H16", 2, 13500, "00", 13500, null, null, null, "P1"]];
    const page = await made.page("cut list", question(rows));
    expect(page.refused.join()).toMatch(
      /^H16, mark 03, 2 bars, E4: a piece of 13500 mm is longer than the 12000 mm .*ask the designer for a lap$/,
    );
    expect(page.html).toMatch(/In no plan: 1 row<.*H16, mark 03/s);
    expect(page.html).toContain("Size H20");
    // 10 bars of 2800 from 12 m: four a bar, so three bars
    expect(page.html).toMatch(/3 bars to buy for 10 pieces, proven least/);
  });

  test("should show what a cut list does to the remnants on hand, and write nothing", async () => {
    const shop = sheetFromRows("Shop", [
      ["size", "stock length", "bars held", "kind"],
      [null, 12000, null, "stock"],
      ["H16", 3000, 2, "remnant"],
      ["limit", "value"],
      ["least remnant", 700],
    ]);
    const page = await made.page("cut list", question(PLAIN, shop));
    // ten bars of 2800: two from the remnants, eight from two bars with 800 left of each; four of 3000 of H20
    // fill a bar. No free row under the stock: heading in row 7, heads in row 8
    expect(page.remnants).toMatchObject({
      shopSheet: "Shop",
      problem: null,
      headingRow: 7,
      changes: [
        { row: 3, size: "H16", length: 3000, before: 2, after: 0 },
        { row: 9, size: "H16", length: 800, before: null, after: 2 },
      ],
      cut: { sheet: "Bars", pieces: 14 },
    });
    expect((await made.page("cut list", question(PLAIN))).remnants).toMatchObject({ shopSheet: null });
    expect((await made.page("tickets", question(PLAIN))).remnants).toBeNull();
  });

  test("should ask for the lifting limit before it makes up bundles", async () => {
    await expect(made.page("labels", question(PLAIN))).rejects.toThrow(/Hoist or crane kg on the Shop sheet/);
    const shop = sheetFromRows("Shop", [
      ["limit", "value"],
      ["Hoist or crane kg", 20],
    ]);
    const page = await made.page("labels", question(PLAIN, shop));
    // 44.2 kg in three bundles under 20 kg, 4 bars of 7.4 kg in two
    expect(page.html).toContain("bundle 3 of 3");
    expect(page.html).toContain("bundle 2 of 2");
  });

  test("should say that nothing of the yard is known without a Shop sheet", async () => {
    const page = await made.page("tickets", question(PLAIN));
    expect(page.notes.join()).toContain("no Shop sheet");
    expect(page.fileName).toBe("Bars Bending tickets.html");
    expect(page.html).toMatch(/2 tickets/);
  });
});

describe("a schedule that another sheet supersedes", () => {
  test("should have no tickets, and say why", async () => {
    const older = { ...question(PLAIN), sheet: sheetFromRows("Slab rev A", PLAIN) };
    const newer = sheetFromRows("Slab rev B", PLAIN);
    const page = await made.page("tickets", { ...older, otherSheets: { before: [], behind: [newer] } });
    expect(page.html).toMatch(/0 tickets/);
    const words = "no ticket for 2 rows of Slab rev A (superseded: ";
    expect(page.notes).toContainEqual(expect.stringContaining(words));
    expect(page.html).toContain(words);
    expect((await made.page("tickets", older)).html).toMatch(/2 tickets/);
  });
});

describe("columns that the user corrected", () => {
  /** "Heap" is no word for a number of bars */
  const rows = PLAIN.map((row, at) =>
    row.map((cell, column) => (at === 0 && column === 3 ? "Heap" : cell)),
  ).map((row) => row.filter((_, column) => column !== 9));
  const corrected = (columns: readonly object[]): string =>
    JSON.stringify({ readings: [{ sheet: "Bars", columns }] });
  const settings = corrected([{ column: "Heap", kind: "total" }]);
  const said = 'sheet "Bars" is read as corrected by hand: column "Heap" taken as total number';
  const shop = sheetFromRows("Shop", [
    ["limit", "value"],
    ["Hoist or crane kg", 20],
  ]);

  test("should count in the totals, which say so", async () => {
    expect((await made.totals(question(rows))).total).toBe("0.000");
    const totals = await made.totals({ ...question(rows), settings });
    expect([totals.total, totals.notes[0]]).toEqual(["0.074", said]);
  });

  test("should leave no live formula over a dimension that is corrected to another unit", async () => {
    const columns = [
      { column: "Heap", kind: "total" },
      { column: "B mm", unit: "cm" },
    ];
    const inCentimetres = rows.map((row) => row.map((cell) => (cell === 1450 ? 145 : cell)));
    const { content, total } = await made.totals({
      ...question(inCentimetres),
      settings: corrected(columns),
    });
    expect(total).toBe("0.074");
    const formulas = content.rows.flat().flatMap(({ formula }) => formula ?? []);
    expect(formulas.filter((each) => each.includes("ROWMASS"))).toEqual([]);
  });

  test("should count on every page, which says so", async () => {
    await expect(made.page("cut list", question(rows))).rejects.toThrow(/nothing can be planned: .*no count/);
    const cuts = await made.page("cut list", { ...question(rows), settings });
    expect(cuts.html).toMatch(/3 bars to buy for 10 pieces/);
    const labels = await made.page("labels", { ...question(rows, shop), settings });
    expect(labels.html).toContain("bundle 3 of 3");
    const tickets = await made.page("tickets", { ...question(rows), settings });
    for (const { notes } of [cuts, labels, tickets]) expect(notes[0]).toBe(said);
  });

  test("should count on the side of a comparison whose workbook keeps them", async () => {
    const older = { ...sheetFromRows("Older", rows), name: "Older" };
    const comparison = await made.compare({ ...question(rows), settings }, older);
    expect(comparison.notes).toEqual([said]);
    expect(comparison.changes.map(({ amount }) => amount)).toContain("? to 10 bars, ? to 0.044 t");
    const bytes = writeNewWorkbook({
      sheets: [{ name: "Bars", rows }],
      names: new Map([["Barwright.Audit", textConstant(settings)]]),
    });
    const same = await made.compare({ ...question(rows), settings }, bytes);
    expect(same).toMatchObject({ changes: [], unchanged: 2, notes: [said, `the file: ${said}`] });
  });

  test("should be told of where they cannot be read", async () => {
    const totals = await made.totals({ ...question(PLAIN), settings: '{"readings":3}' });
    expect(totals.notes[0]).toMatch(/could not be read: readings/);
  });
});

describe("the demonstration's yard", () => {
  const book = openWorkbook(demoWorkbook());
  const asked = (sheet: string): CheckQuestion => ({
    sheet: book.read(sheet),
    shop: book.read("Shop"),
    otherSheets: NO_OTHER_SHEETS,
    standard: STANDARD,
    settings: null,
  });
  let standard: Standard;

  beforeAll(() => {
    standard = resolveStandard(STANDARD) as Standard;
  });

  test("should have a Shop sheet that is read whole", () => {
    const shop = readShop(book.read("Shop"), standard);
    expect(shop.problems).toEqual([]);
    expect(shop.benders.map(({ name, rated }) => [name, rated.length])).toEqual([
      ["Old Maud", 3],
      ["The Ox", 3],
    ]);
    expect(shop.cutters.map(({ name, rated, endCrop }) => [name, rated.length, endCrop])).toEqual([
      ["Snapper", 6, 10],
    ]);
    expect(shop.stock).toHaveLength(4);
    expect(shop.limits).toMatchObject({ hoist: 1000, handLift: 25, leastRemnant: 900, temperature: 12 });
    expect(shop.trials?.block).toHaveLength(12);
  });

  test("should give tickets with a machine, an order and compensated angles", async () => {
    const { html } = await made.page("tickets", asked("Schedule"));
    expect(html.match(/<article class="ticket">/g)?.length).toBe(117);
    const ordered = html.match(/working order on (Old Maud|The Ox)/gi)?.length ?? 0;
    expect(ordered).toBeGreaterThan(30);
  });

  test("should compare two revisions, released bars first and unsafe", async () => {
    const comparison = await made.compare(asked("Culvert rev B"), book.read("Culvert rev A"));
    expect(comparison.changes.map(({ name, kind, severity }) => [name, kind, severity])).toEqual([
      ["Culvert C1, mark 2002", "changed", "unsafe"],
      ["Culvert C1, mark 2003", "changed", "unsafe"],
      ["Culvert C1, mark 2004", "changed", "note"],
      ["Culvert C1, mark 2008", "added", "note"],
      ["Culvert C1, mark 2006", "removed", "note"],
    ]);
    expect(comparison.changes[0]?.cells).toContainEqual({
      field: "dimension B",
      before: "2200",
      after: "2400",
    });
    expect(comparison.unchanged).toBe(3);
    // P9: 24 bars of H20 grow by 0.4 m at 2.466 kg/m: 23.7 kg
    expect(comparison.pours.find(({ pour }) => pour === "P9")?.difference).toBe("+0.024");
    // P8: 40 x 0.2 x 1.579 + 8 x 1.6 x 0.888 + 64 x 0.2 x 0.888 = 35.4 kg
    expect(comparison.pours.find(({ pour }) => pour === "P8")?.difference).toBe("+0.035");
  });

  test("should compare with the same sheet of a file", async () => {
    const comparison = await made.compare(asked("Culvert rev B"), demoWorkbook());
    expect(comparison).toMatchObject({ changes: [], unchanged: 7 });
    await expect(made.compare(asked("Culvert rev B"), new Uint8Array([1, 2, 3]))).rejects.toThrow(
      /workbook|zip/,
    );
  });
});
