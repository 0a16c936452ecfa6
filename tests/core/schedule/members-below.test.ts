import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";
import { checkSheets } from "../../_support/check-sheets";

const standard = resolveStandard("BS8666:2005") as Standard;

// kg by hand, number x length x kg/m (EN 10080 nominal: 0.888 and 1.578): 9 x 1.7 x 0.888 = 13.59, 8 x 1.25 x 1.578 = 15.78,
// 12 x 2.1 x 0.888 = 22.38; of one 29.37 and 22.38, of 4 and 6 117.48 and 134.28
const HEAD: Cell[] = ["Elemento", "Pos.", "Diám.", "Nº barras", "Long. (cm)", "Peso (kg)"];
const rows = (first: Cell[], second: Cell[], total = 251.76): Cell[][] => [
  HEAD,
  ["Zapata P1", 1, "Ø12", 9, 170, 13.59],
  [null, 2, "Ø16", 8, 125, 15.78],
  ["Total por elemento", null, null, null, null, 29.37],
  first,
  ["Zapata P2", 3, "Ø12", 12, 210, 22.38],
  ["Total por elemento", null, null, null, null, 22.38],
  second,
  ["TOTAL (kg)", null, null, null, null, total],
];
const OF_4: Cell[] = ["Zapata P1: 4 uds.", null, null, null, null, 117.48];
const OF_6: Cell[] = ["Zapata P2: 6 uds.", null, null, null, null, 134.28];
const counted = (cells: Cell[][]) =>
  readSchedule(sheetFromRows("List", cells), standard).bars.map(({ members, each, total }) => [
    members,
    each,
    total,
  ]);

describe("lines that give the members of the bars above them", () => {
  it("multiply the bars, and are sums that agree", () => {
    const cells = rows(OF_4, OF_6);
    expect(counted(cells)).toEqual([
      [4, 9, null],
      [4, 8, null],
      [6, 12, null],
    ]);
    const { report, tonnage } = checkSheets([sheetFromRows("List", cells)]);
    expect(tonnage.tonnage.total).toBeCloseTo(0.25176, 3);
    expect(report.findings.filter(({ severity }) => severity !== "note")).toEqual([]);
  });

  it.each([
    ["Footing P1: 4 nos", "Footing P2: 6 nos"],
    ["Stopa P1 (szt. 4)", "Stopa P2 (szt. 6)"],
    ["Fundament P1 - 4 Stück", "Fundament P2 - 6 Stück"],
  ])("say so in the words of their country: %s", (first, second) => {
    expect(counted(rows([first, ...OF_4.slice(1)], [second, ...OF_6.slice(1)]))[2]).toEqual([6, 12, null]);
  });

  it("hold for all where one of them is off, and that one is told", () => {
    const cells = rows(OF_4, ["Zapata P2: 6 uds.", null, null, null, null, 143.28]);
    expect(counted(cells)[2]).toEqual([6, 12, null]);
    const { report } = checkSheets([sheetFromRows("List", cells)]);
    expect(report.findings.find(({ code }) => code === "SUM103")?.cell).toBe("F8");
  });

  it("are none where the amount beside them is that of the rows as they stand", () => {
    const cells = rows(
      ["Zapata P1: 4 uds.", null, null, null, null, 29.37],
      ["Zapata P2: 6 uds.", null, null, null, null, 22.38],
      51.75,
    );
    expect(counted(cells)[0]).toEqual([null, null, 9]);
  });
});

describe("a bare count under headings, on the second sheet of a list", () => {
  const head: Cell[] = ["MARK", "QTY", "SIZE", "LENGTH (m)", "WT (KG)"];
  const first = sheetFromRows("S1", [
    head,
    ["FOOTING F-4 (8 EA)"],
    ["A1", 64, "H16", 2, 202],
    ["A2", 32, "H12", 3, 85.2],
    ["SHEET TOTAL", null, null, null, 287.2],
  ]);
  // its total is written 100 kg short, so that its own sums tell nothing
  const second = (words: Cell[]) => ({
    ...sheetFromRows("S2", [
      words,
      ["COLUMN C-1 (4 EA)"],
      ["B1", 16, "H16", 2, 50.5],
      ["B2", 72, "H10", 3, 133.3],
      ["SHEET TOTAL", null, null, null, 83.8],
    ]),
    follows: first,
  });
  const totals = (words: Cell[]) => readSchedule(second(words), standard).bars.map(({ total }) => total);

  it("counts as on the sheet before, whose sums tell, under the same word", () => {
    expect(totals(head)).toEqual([16, 72]);
  });
  it("stays open under another word", () => {
    expect(totals(["MARK", "PIECES", "SIZE", "LENGTH (m)", "WT (KG)"])).toEqual([null, null]);
  });
});
