import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { excelWorkbook } from "../../../addin/excel/excel-workbook";
import type { Engine } from "../../../addin/pane/engine/engine";
import { createLocalEngine } from "../../../addin/pane/engine/local-engine";
import { PaneModel } from "../../../addin/pane/model/pane-model";
import { PoursModel } from "../../../addin/pane/model/pours-model";
import { FLAG_FILLS } from "../../../addin/workbook/flag-fills";
import { findingsSheetState } from "../../../addin/workbook/own-findings-sheet";
import { SERIES_COLOURS } from "../../../addin/workbook/series-colours";
import type { WorkbookPort } from "../../../addin/workbook/workbook-port";
import { bar, HEADER, TWO_POURS } from "../../_support/checked-book";
import { type OpenExcel, openInJsdom } from "../../_support/office-host/open-in-jsdom";
import type { Worksheet } from "../../_support/office-host/worksheet";

let open: OpenExcel;
let port: WorkbookPort;
let engine: Engine;
let pane: PaneModel;
let yard: PoursModel;

/** The real library over the fake host, a schedule on its first sheet. */
async function start(rows: readonly (readonly unknown[])[]): Promise<void> {
  open = await openInJsdom();
  // a link's text stands in its cell, as Excel calculates it
  open.excel.workbook.calculator = (formula) =>
    /^=HYPERLINK\(".*","((?:[^"]|"")*)"\)$/.exec(formula)?.[1]?.replaceAll('""', '"') ?? 0;
  const sheet = open.excel.workbook.active;
  sheet.Name = "It's bars";
  rows.forEach((cells, row) => {
    cells.forEach((cell, column) => {
      const typed = typeof cell === "string" && /^\d/.test(cell) ? `'${cell}` : cell;
      if (cell !== null) sheet.write(row, column, typed);
    });
  });
  port = excelWorkbook();
  engine = createLocalEngine();
  pane = new PaneModel(port, engine);
  await pane.start();
  yard = new PoursModel(port, pane, engine, { print: null, save: () => {} });
}

const sheetNamed = (name: string): Worksheet => open.excel.workbook.Worksheets.GetItem(name) as Worksheet;

/** B1 straight with a leg of 1000 in a row that says 2000 long: a finding with a cell to jump to. */
const WITH_SLIP = [...TWO_POURS, ["B1", "04", "H16", 1, 2, 2, 2000, "00", 1000, "P1"]];

beforeEach(() => start(WITH_SLIP));
afterEach(() => open.close());

describe("the findings sheet that the pane writes into Excel", () => {
  test("is written only when it is asked for, in one request to look, one to write, one for the printer", async () => {
    await pane.check();
    expect(open.excel.workbook.sheets.map(({ Name }) => Name)).toEqual(["It's bars"]);
    const content = await engine.findings("It's bars");
    const before = open.excel.requests.length;
    expect(await port.addSheet("Findings", content)).toBe("Findings");
    const sent = open.excel.requests.slice(before);
    expect(sent.map(({ failed }) => failed)).toEqual([null, null, null]);
  });

  test("lists the findings, coloured, with a way to each cell", async () => {
    await yard.writeFindings();
    expect(pane.state.notice).toMatchObject({
      kind: "done",
      text: expect.stringContaining("Sheet Findings"),
    });
    const sheet = await port.read("Findings");
    const row = Array.from({ length: sheet.rowCount }, (_, index) => index).find(
      (index) => sheet.cell(index, 2) === "G5",
    )!;
    const home = sheetNamed("Findings");
    expect(home.cells.at(row, 2).formula).toBe(`=HYPERLINK("#'It''s bars'!G5","G5")`);
    const severity = sheet.cell(row, 0) as keyof typeof FLAG_FILLS;
    expect(home.cells.at(row, 0).fill).toBe(FLAG_FILLS[severity]);
    expect(home.cells.at(1, 0).bold).toBe(true);
    expect(home.frozenRows).toBe(2);
  });

  test("has a native chart over its table: horizontal bars, sizes stacked, first pour on top, in t", async () => {
    await yard.writeFindings();
    const home = sheetNamed("Findings");
    const [chart, more] = home.charts;
    expect(more).toBeUndefined();
    expect([chart?.ChartType, chart?.seriesBy, chart?.Title.Text]).toEqual([
      "BarStacked",
      "Columns",
      // 24 m + 4 m + 12 m of 1.579 kg/m; 30 m of 2.466 (the UK three-decimal table): 2 x 1 m by cut length
      "Tonnes by pour and size: 0.134 t",
    ]);
    const { row, column, rows, columns } = chart!.source;
    const read = await port.read("Findings");
    const table = Array.from({ length: rows }, (_, at) =>
      Array.from({ length: columns }, (_, across) => read.cell(row + at, column + across)),
    );
    expect(table).toEqual([
      ["Pour", "H16", "H20"],
      ["P1", 0.041054, 0.07398],
      ["Slab & <kerb>, north", 0.018948, null],
    ]);
    expect(home.cells.at(row + 1, column + 1).format).toBe("0.000");
    expect(chart!.Axes.CategoryAxis).toEqual({ ReversePlotOrder: true, Position: "Maximum" });
    expect(chart!.Axes.ValueAxis).toEqual({ Minimum: 0, Title: { Text: "t" } });
    expect([chart!.Legend.Position, chart!.PlotVisibleOnly]).toEqual(["Top", false]);
    expect(chart!.series.map(({ fill }) => fill)).toEqual([`#${SERIES_COLOURS[0]}`, `#${SERIES_COLOURS[1]}`]);
    // names where a bar has room: the second pour has no H20
    expect(
      chart!.series.map(({ HasDataLabels, DataLabels }) => [HasDataLabels, DataLabels.ShowSeriesName]),
    ).toEqual([
      [true, true],
      [true, true],
    ]);
    expect(chart!.series[1]?.points.map(({ HasDataLabel }) => HasDataLabel)).toEqual([true, false]);
    // clear of the table
    expect(chart!.place!.row).toBeGreaterThan(row + rows + 1);
    expect(home.PageLayout.areas).toMatch(/^Findings!A1:G\d+,Findings!I\d+:[A-Z]+\d+$/);
    expect(home.PageLayout).toMatchObject({
      titleRows: "$1:$2",
      orientation: "Landscape",
      zoom: { horizontalFitToPages: 1 },
      paperSize: "A4",
    });
  });

  test("is written anew in its place, with one chart, as long as nobody has written on it", async () => {
    await yard.writeFindings();
    expect(findingsSheetState(await port.read("Findings"))).toBe("untouched");
    await yard.writeFindings();
    expect(open.excel.workbook.sheets.map(({ Name }) => Name)).toEqual(["It's bars", "Findings"]);
    expect(sheetNamed("Findings").charts).toHaveLength(1);
  });

  test("is not written over once somebody has written on it, unless they say so", async () => {
    await yard.writeFindings();
    open.excel.byUser(() => sheetNamed("Findings").write(2, 7, "done"));
    await yard.writeFindings();
    expect(pane.state.asksAboutFindings).toBe("Findings");
    expect(sheetNamed("Findings").cells.at(2, 7).value).toBe("done");
    pane.askAboutFindings(null);
    expect(pane.state.asksAboutFindings).toBeNull();
    await yard.writeFindings("number");
    expect(open.excel.workbook.sheets.map(({ Name }) => Name)).toEqual([
      "It's bars",
      "Findings",
      "Findings (2)",
    ]);
    expect(sheetNamed("Findings").cells.at(2, 7).value).toBe("done");
    await yard.writeFindings("replace");
    expect(sheetNamed("Findings").cells.at(2, 7).value).toBe("");
  });

  test("never takes the place of a sheet of the user's own", async () => {
    open.excel.byUser((book) => {
      const own = book.addSheet("Findings");
      own.write(0, 0, "Findings of the fixer");
    });
    await yard.writeFindings();
    await yard.writeFindings("replace");
    expect(sheetNamed("Findings").cells.at(0, 0).value).toBe("Findings of the fixer");
  });

  test("stands all the same on a machine without a printer", async () => {
    const content = { rows: [[{ value: "a" }]], print: { isLetter: false, titleRows: 1, areas: ["A1:A1"] } };
    open.excel.failures.push(null, null, "GeneralException");
    expect(await port.addSheet("Findings", content)).toBe("Findings");
  });

  test("has no chart where nothing has a mass", async () => {
    open.close();
    await start([HEADER, bar("01", "H17", 2, 2000, "P1")]);
    await yard.writeFindings();
    expect(sheetNamed("Findings").charts).toEqual([]);
  });

  test("of 10,000 rows with a finding in each goes in three requests under 5 MB", async () => {
    const finding = { value: "unsafe", flag: "unsafe", ruled: true } as const;
    const words = {
      value: "a finding of a usual length, which says value, limit and unit",
      wrap: true,
    } as const;
    const rows = Array.from({ length: 10_000 }, (_, row) => [
      finding,
      { value: "Bars", wrap: true },
      { value: `G${row + 2}`, link: { sheet: "Bars", cell: `G${row + 2}` } },
      words,
      words,
      words,
      { value: "LEN102 length-differs", wrap: true },
    ]);
    const before = open.excel.requests.length;
    await port.addSheet("Findings", { rows });
    const sent = open.excel.requests.slice(before);
    expect(sent.map(({ failed }) => failed)).toEqual([null, null]);
    expect(Math.max(...sent.map(({ bytesOut }) => bytesOut))).toBeLessThan(5 * 1024 * 1024);
  });
});
