import JSZip from "jszip";
import { beforeAll, describe, expect, it } from "vitest";
import {
  Chart,
  ChartDataLabel,
  ChartFont,
  ChartFormat,
  ChartLegendPosition,
  ChartRange,
  ChartSeries,
  ChartSolidFill,
  ChartType,
  Color,
  Workbook as OtherWorkbook,
} from "wasm-xlsxwriter/nodejs";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { bookOf, checked, findingsCells, TWO_POURS } from "../../_support/checked-book";
import { partText } from "../../_support/compare-packages";
import { elementsOf, everyNode, valOf, type XmlNode, xmlTree } from "../../_support/xml-tree";

/** Children in the order of the sequences in ECMA-376-1:2016, Annex A (dml-chart.xsd), from memory. */
const SEQUENCES: Readonly<Record<string, string>> = {
  "c:chartSpace":
    "date1904 lang roundedCorners style clrMapOvr pivotSource protection chart spPr txPr externalData printSettings userShapes",
  "c:chart":
    "title autoTitleDeleted pivotFmts view3D floor sideWall backWall plotArea legend plotVisOnly dispBlanksAs",
  "c:title": "tx layout overlay spPr txPr",
  "c:plotArea": "layout barChart catAx valAx dTable spPr",
  "c:barChart": "barDir grouping varyColors ser dLbls gapWidth overlap serLines axId",
  "c:ser": "idx order tx spPr invertIfNegative pictureOptions dPt dLbls trendline errBars cat val shape",
  "c:dLbls":
    "dLbl delete numFmt spPr txPr dLblPos showLegendKey showVal showCatName showSerName showPercent showBubbleSize separator",
  "c:dLbl": "idx delete layout tx numFmt spPr txPr dLblPos showLegendKey showVal",
  "c:catAx":
    "axId scaling delete axPos majorGridlines minorGridlines title numFmt majorTickMark minorTickMark tickLblPos spPr txPr crossAx crosses crossesAt auto lblAlgn lblOffset noMultiLvlLbl",
  "c:valAx":
    "axId scaling delete axPos majorGridlines minorGridlines title numFmt majorTickMark minorTickMark tickLblPos spPr txPr crossAx crosses crossesAt crossBetween majorUnit minorUnit",
  "c:scaling": "logBase orientation max min",
  "c:legend": "legendPos legendEntry layout overlay spPr txPr",
  "c:strRef": "f strCache",
  "c:numRef": "f numCache",
  "c:strCache": "ptCount pt",
  "c:numCache": "formatCode ptCount pt",
};

/** A stacked bar chart as a general-purpose library writes one, with all that ours has. */
async function othersChart(): Promise<Uint8Array> {
  const workbook = new OtherWorkbook();
  const sheet = workbook.addWorksheet();
  sheet.setName("Findings");
  sheet.writeString(0, 0, "Pour");
  for (const [column, size] of ["H16", "H20"].entries()) {
    sheet.writeString(0, column + 1, size);
    sheet.writeNumber(1, column + 1, column + 1);
    sheet.writeNumber(2, column + 1, column + 2);
  }
  for (const row of [1, 2]) sheet.writeString(row, 0, `P${row}`);
  const chart = new Chart(ChartType.BarStacked);
  for (const column of [1, 2]) {
    chart.pushSeries(
      new ChartSeries()
        .setName("H16")
        .setCategories(ChartRange.newFromRange("Findings", 1, 0, 2, 0))
        .setValues(ChartRange.newFromRange("Findings", 1, column, 2, column))
        .setFormat(new ChartFormat().setSolidFill(new ChartSolidFill().setColor(Color.rgb(0x1f5f99))))
        .setDataLabel(new ChartDataLabel().showSeriesName()),
    );
  }
  chart.title().setName("Tonnes");
  chart.xAxis().setFont(new ChartFont().setSize(10));
  chart.yAxis().setName("t").setMin(0);
  chart.legend().setPosition(ChartLegendPosition.Top);
  sheet.insertChart(4, 0, chart);
  return workbook.saveToBufferSync();
}

describe("the chart on the findings sheet", () => {
  let bytes: Uint8Array;
  let chart: XmlNode;
  let others: Uint8Array;

  beforeAll(async () => {
    bytes = checked(bookOf(TWO_POURS)).bytes;
    chart = xmlTree(await partText(bytes, "xl/charts/chart1.xml"));
    others = await othersChart();
  });

  it("shows tonnes by pour and size, the sizes stacked", () => {
    expect([valOf(chart, "c:barDir"), valOf(chart, "c:grouping"), valOf(chart, "c:overlap")]).toEqual([
      "bar",
      "stacked",
      "100",
    ]);
    const series = elementsOf(chart, "c:ser").map((node) => ({
      name: elementsOf(elementsOf(node, "c:tx")[0]!, "c:v").map(({ text }) => text),
      pours: elementsOf(elementsOf(node, "c:cat")[0]!, "c:v").map(({ text }) => text),
      tonnes: elementsOf(elementsOf(node, "c:val")[0]!, "c:pt").map((point) => [
        Number(point.attributes["idx"]),
        Number(point.children[0]?.text),
      ]),
    }));
    const pours = ["P1", "Slab & <kerb>, north"];
    // kg/m of the UK three-decimal table: 1.579 and 2.466; 12 x 2 m, 10 x 3 m, 4 x 3 m
    expect(series).toEqual([
      {
        name: ["H16"],
        pours,
        tonnes: [
          [0, 0.037896],
          [1, 0.018948],
        ],
      },
      { name: ["H20"], pours, tonnes: [[0, 0.07398]] },
    ]);
    // the first pour on top, as the table has it, and the tonnes at the foot
    const axes = ["c:catAx", "c:valAx"].map((name) => elementsOf(chart, name)[0]!);
    expect(axes.map((axis) => valOf(axis, "c:orientation"))).toEqual(["maxMin", "minMax"]);
    expect(valOf(axes[1]!, "c:crosses")).toBe("max");
    expect(elementsOf(axes[1]!, "a:t")[0]?.text).toBe("t");
    expect(elementsOf(elementsOf(chart, "c:title")[0]!, "a:t")[0]?.text).toBe(
      "Tonnes by pour and size: 0.131 t",
    );
  });

  it("keeps in the chart what stands in the cells that it names", () => {
    const cells = findingsCells(bytes);
    let compared = 0;
    for (const reference of [...elementsOf(chart, "c:strRef"), ...elementsOf(chart, "c:numRef")]) {
      const formula = elementsOf(reference, "c:f")[0]!.text;
      const [, sheet, first = "", last = first] =
        /^'(Findings)'!\$([A-Z]\$\d+)(?::\$([A-Z]\$\d+))?$/.exec(formula) ?? [];
      expect(sheet, formula).toBe("Findings");
      const [letter = "", from = ""] = first.split("$");
      const count = Number(last.split("$")[1]) - Number(from) + 1;
      expect(valOf(reference, "c:ptCount")).toBe(String(count));
      const held = new Map(
        elementsOf(reference, "c:pt").map((point) => [
          Number(point.attributes["idx"]),
          point.children[0]!.text,
        ]),
      );
      for (let index = 0; index < count; index += 1) {
        const cell = cells.at(`${letter}${Number(from) + index}`);
        const text = cell === null ? undefined : String(cell);
        expect(held.get(index), `${letter}${Number(from) + index}`).toBe(text);
        compared += 1;
      }
    }
    // two series: a name, two pours and two values each
    expect(compared).toBe(10);
  });

  it("has its numbers in a table with totals, and says in words what they are", () => {
    const { all } = findingsCells(bytes);
    for (const cell of ["Pour", "H16", "H20", "Total, t", 0.037896, 0.07398, 0.111876, 0.018948, 0.130824]) {
      expect(all).toContain(cell);
    }
    expect(all).toContain("Tonnes (t) of all 3 bar rows on sheet Bars.");
    expect(all).toContain("Bars found unsafe or unbendable are in it, as they are scheduled.");
    expect(
      all.some((cell) => /Tonnes by pour and size: 0\.131 t, table and chart at I\d+/.test(String(cell))),
    ).toBe(true);
  });

  it("can be told of to somebody who does not see it", async () => {
    const [frame] = elementsOf(xmlTree(await partText(bytes, "xl/drawings/drawing1.xml")), "xdr:cNvPr");
    expect(frame?.attributes["name"]).toBe("Tonnes by pour and size: 0.131 t");
    expect(frame?.attributes["descr"]).toMatch(/Bar chart, a bar each pour.*table I\d+:L\d+ of this sheet/);
  });

  it("tells sizes apart by more than colour: names on the bars, a line between, keys in stacking order", () => {
    const series = elementsOf(chart, "c:ser");
    expect(series.map((node) => valOf(node, "c:showSerName"))).toEqual(["1", "1"]);
    expect(series.every((node) => elementsOf(node, "a:ln").length > 0)).toBe(true);
    expect(series.map((node) => [valOf(node, "c:idx"), valOf(node, "c:order")])).toEqual([
      ["0", "0"],
      ["1", "1"],
    ]);
    expect(valOf(chart, "c:legendPos")).toBe("t");
  });

  it("has every element where the schema has it", () => {
    let compared = 0;
    for (const node of everyNode(chart)) {
      const sequence = SEQUENCES[node.name]?.split(" ").map((name) => `c:${name}`);
      if (sequence === undefined) continue;
      const places = node.children.map(({ name }) => sequence.indexOf(name));
      expect(places, `${node.name}: ${node.children.map(({ name }) => name).join(" ")}`).not.toContain(-1);
      expect(places, node.name).toEqual([...places].sort((a, b) => a - b));
      compared += 1;
    }
    expect(compared).toBeGreaterThan(15);
  });

  it("has its elements in the order in which a general-purpose library writes them", async () => {
    const theirs = xmlTree(await partText(others, "xl/charts/chart1.xml"));
    const orderOf = (root: XmlNode): Map<string, string[]> => {
      const orders = new Map<string, string[]>();
      for (const { name, children } of everyNode(root)) {
        const order = [...new Set(children.map((child) => child.name))];
        if (order.length > (orders.get(name)?.length ?? 0)) orders.set(name, order);
      }
      return orders;
    };
    const [own, known] = [orderOf(chart), orderOf(theirs)];
    let compared = 0;
    for (const [name, order] of own) {
      const reference = known.get(name) ?? [];
      const shared = order.filter((child) => reference.includes(child));
      expect(shared, name).toEqual(reference.filter((child) => order.includes(child)));
      compared += shared.length;
    }
    expect(compared).toBeGreaterThan(50);
    // what the library always writes, ours has as well
    for (const name of ["c:chartSpace", "c:chart", "c:barChart", "c:ser", "c:catAx", "c:valAx"]) {
      const missing = (known.get(name) ?? []).filter((child) => !(own.get(name) ?? []).includes(child));
      // layout is optional, page settings are the printer's; we give the pours no title: the table has it
      expect(
        missing.filter((each) => !["c:lang", "c:layout", "c:printSettings", "c:title"].includes(each)),
        name,
      ).toEqual([]);
    }
  });

  it("is registered as a general-purpose library registers one", async () => {
    const wiring = async (file: Uint8Array) => {
      const zip = await JSZip.loadAsync(file);
      const names = Object.keys(zip.files);
      const rels = (part: string) => names.find((name) => name === part)!;
      const types = xmlTree(await partText(file, "[Content_Types].xml"));
      const typeOf = (pattern: RegExp) =>
        elementsOf(types, "Override").find(({ attributes }) => pattern.test(attributes["PartName"] ?? ""))
          ?.attributes["ContentType"];
      const relation = async (part: string, word: string) =>
        elementsOf(xmlTree(await partText(file, rels(part))), "Relationship").find(({ attributes }) =>
          attributes["Target"]?.includes(word),
        )?.attributes["Type"];
      const sheet = names
        .filter((name) => /^xl\/worksheets\/_rels\//.test(name))
        .sort()
        .at(-1)!;
      return [
        typeOf(/\/drawings\/drawing1\.xml$/),
        typeOf(/\/charts\/chart1\.xml$/),
        await relation(sheet, "drawing1.xml"),
        await relation("xl/drawings/_rels/drawing1.xml.rels", "chart1.xml"),
        elementsOf(xmlTree(await partText(file, "xl/drawings/drawing1.xml")), "a:graphicData")[0]?.attributes[
          "uri"
        ],
      ];
    };
    expect(await wiring(bytes)).toEqual(await wiring(others));
    expect((await wiring(bytes)).every((each) => each !== undefined)).toBe(true);
  });

  it("is printed on its side, as wide as the paper, with its headings on every page", async () => {
    const sheet = await partText(bytes, "xl/worksheets/sheet2.xml");
    expect(sheet).toMatch(/<sheetPr><pageSetUpPr fitToPage="1"\/><\/sheetPr>/);
    expect(sheet).toMatch(/<pageSetup paperSize="9" orientation="landscape" fitToHeight="0"\/>/);
    const names = openWorkbook(bytes).names.filter(({ sheetIndex }) => sheetIndex === 1);
    expect(names.map(({ name, refersTo }) => [name, refersTo])).toEqual([
      [
        "_xlnm.Print_Area",
        expect.stringMatching(/^'Findings'!\$A\$1:\$G\$\d+,'Findings'!\$I\$\d+:\$[A-Z]\$\d+$/),
      ],
      ["_xlnm.Print_Titles", "'Findings'!$1:$2"],
    ]);
    // elements after the rows, in the order of ECMA-376-1:2016, 18.3.1.99, from memory
    const after = xmlTree(sheet).children.map(({ name }) => name);
    const order =
      "sheetPr dimension sheetViews sheetFormatPr cols sheetData hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks drawing legacyDrawing";
    expect(after).toEqual(order.split(" ").filter((name) => after.includes(name)));
  });
});
