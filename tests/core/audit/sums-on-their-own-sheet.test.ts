import { describe, expect, it } from "vitest";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { checkSheets } from "../../_support/check-sheets";

type Rows = readonly (readonly Cell[])[];

interface Said {
  readonly told: readonly string[];
  readonly notes: readonly string[];
  readonly ofList: readonly string[];
}

/** What is told of the sheet of sums above a note, and the book's notes on it. */
function said(list: Rows, sums: Rows, isFirst = false): Said {
  const sheets = [sheetFromRows("List", list), sheetFromRows("Sums", sums)];
  if (isFirst) sheets.reverse();
  const checked = checkSheets(sheets);
  const { report, notes } = checked;
  const toldOf = (name: string): readonly string[] =>
    report.findings
      .filter(({ sheet, severity }) => sheet === name && severity !== "note")
      .map(({ cell, message }) => `${cell}: ${message}`);
  return {
    told: toldOf("Sums"),
    ofList: toldOf("List"),
    notes: notes.filter((note) => note.includes('"Sums"')),
  };
}

/** metres a bar, count and kg a metre by hand: Ø8 0.395, Ø12 0.888, Ø16 1.58 */
const TURKISH: Rows = [
  ["Eleman", "Poz", "Çap", "Adet", "Boy (m)", "Toplam boy (m)", "Ağırlık (kg)"],
  ["K1", 1, "Ø12", 40, 2.5, 100, 88.8],
  ["K1", 2, "Ø8", 50, 1.6, 80, 31.6],
  ["T1", 3, "Ø16", 20, 5, 100, 158],
  ["T1", 4, "Ø8", 100, 1.2, 120, 47.4],
  ["D1", 5, "Ø12", 60, 4, 240, 213.12],
];

describe("sums on a sheet of their own", () => {
  // 31.6 + 47.4 = 79, 88.8 + 213.12 = 301.92, 158; K1 120.4, T1 205.4, D1 213.12; all 538.92
  const turkish = (t1: number, all = 538.92): Rows => [
    ["Demir metrajı (kg)"],
    ["Eleman", "Ø8", "Ø12", "Ø16", "Toplam"],
    ["K1", 31.6, 88.8, null, 120.4],
    ["T1", t1, null, 158, 205.4],
    ["D1", null, 213.12, null, 213.12],
    ["Toplam", 79, 301.92, 158, all],
  ];

  it("should be silent where rows, columns and the bars agree, wherever the sheet stands", () => {
    for (const isFirst of [false, true])
      expect(said(TURKISH, turkish(47.4), isFirst)).toMatchObject({
        told: [],
        notes: ['sheet "Sums" lists no bars: it is read for its sums by size alone'],
      });
  });

  it("should name the one number that neither its row nor its column bears out", () => {
    expect(said(TURKISH, turkish(74.4)).told).toEqual([
      "B4: 74.4 fits neither the total of its row nor that of its column; both come out with 47.4",
    ]);
    expect(said(TURKISH, turkish(47.4, 358.92)).told).toEqual([
      "E6: 358.92 fits neither the total of its row nor that of its column; both come out with 538.92",
    ]);
  });

  it("should hold sizes one below another against the bars, by grade where a size has two", () => {
    const heads = ["Pos.", "Stahlsorte", "Ø", "Anzahl", "Länge (m)", "Masse (kg)"];
    // 30 x 4 x 0.888 = 106.56, 10 x 2 x 0.888 = 17.76, 12 x 3 x 1.58 = 56.88, 16 x 2.5 x 0.617 = 24.68
    const list: Rows = [
      heads,
      [1, "B500B", 12, 30, 4, 106.56],
      [2, "B500A", 12, 10, 2, 17.76],
      [3, "B500B", 16, 12, 3, 56.88],
      [4, "B500B", 10, 16, 2.5, 24.68],
    ];
    const sums = (twelve: number): Rows => [
      ["Stahlsorte", "Ø", "Masse (kg)"],
      ["B500A", 12, 17.76],
      ["B500B", 10, 24.68],
      ["B500B", 12, twelve],
      ["B500B", 16, 56.88],
      ["Gesamt", null, 205.88],
    ];
    expect(said(list, sums(106.56)).told).toEqual([]);
    expect(said(list, sums(160.56)).told).toEqual([
      "C4: the mass of 12 is given as 160.56, but the bars of the list make 106.56",
    ]);
  });

  it("should go by sub-totals of each steel beside each other", () => {
    const list: Rows = [
      ["Posição", "Aço", "Ø", "Quantidade", "Comprimento (m)", "Massa (kg)"],
      ["N1", "CA-60", 5, 100, 1.2, 18.48],
      ["N2", "CA-60", 5, 40, 1, 6.16],
      ["N3", "CA-50", 10, 20, 3, 37.02],
      ["N4", "CA-50", 16, 10, 4, 63.2],
      ["N5", "CA-50", 10, 12, 5, 37.02],
    ];
    // V1: N1, N3, N4; V2: N2, N5
    const sums = (subtotal: number): Rows => [
      [null, "CA-60", null, "CA-50"],
      ["Elemento", "Ø5", "Subtotal", "Ø10", "Ø16", "Subtotal", "Total"],
      ["V1", 18.48, 18.48, 37.02, 63.2, 100.22, 118.7],
      ["V2", 6.16, 6.16, 37.02, null, subtotal, 43.18],
      ["V3", 3.08, 3.08, 12.34, 15.8, 28.14, 31.22],
      ["Total", 27.72, 27.72, 86.38, 79, 165.38, 193.1],
    ];
    expect(said(list, sums(37.02)).told.filter((one) => /^[FG]/.test(one))).toEqual([]);
    expect(said(list, sums(73.02)).told.filter((one) => /^[FG]/.test(one))).toEqual([
      "F4: 73.02 fits neither the total of its row nor that of its column; both come out with 37.02",
    ]);
  });

  it("should say nothing of amounts that sum nothing of the list", () => {
    const prices: Rows = [
      ["Size", "Price per t"],
      ["Ø8", 900],
      ["Ø12", 850],
      ["Ø16", 840],
    ];
    expect(said(TURKISH, prices).told).toEqual([]);
  });
});

describe("sums beside a list", () => {
  it("should hold sizes with decimals against the bars, as Brazil rolls them", () => {
    // metres by hand: 10 x 4 = 40, 20 x 1.5 = 30, 12 x 5 = 60, 8 x 2 = 16
    const list = (twelve: number): Rows => [
      ["N", "Ø (mm)", "Quant.", "Comprimento (m)", "Total (m)", null, "Ø (mm)", "Comprimento total (m)"],
      [1, 12.5, 10, 4, 40, null, 6.3, 30],
      [2, 6.3, 20, 1.5, 30, null, 10, 60],
      [3, 10, 12, 5, 60, null, 12.5, twelve],
      [4, 16, 8, 2, 16, null, 16, 16],
    ];
    const told = (twelve: number) => said(list(twelve), [["Notas"]]).ofList.filter((one) => /^H/.test(one));
    expect(told(40)).toEqual([]);
    expect(told(64)).toEqual(["H4: the length of 12.5 is given as 64, but the bars of the list make 40"]);
  });

  it("should hold sums in a column of their own against the bars where most are theirs", () => {
    // kg by hand: 44.4 + 31.6 = 76, 158 + 47.4 = 205.4, 213.12
    const list = (second: number): Rows => [
      ["Eleman", "Poz", "Çap", "Adet", "Boy (m)", "Ağırlık (kg)", "Açıklama"],
      ["K1", 1, "Ø12", 20, 2.5, 44.4],
      ["K1", 2, "Ø8", 50, 1.6, 31.6],
      ["K1 toplamı", null, null, null, null, null, 76],
      ["T1", 3, "Ø16", 20, 5, 158],
      ["T1", 4, "Ø8", 100, 1.2, 47.4],
      ["T1 toplamı", null, null, null, null, null, second],
      ["D1", 5, "Ø12", 60, 4, 213.12],
      ["D1 toplamı", null, null, null, null, null, 213.12],
    ];
    const told = (second: number) => said(list(second), [["Notlar"]]).ofList.filter((one) => /^G/.test(one));
    expect(told(205.4)).toEqual([]);
    expect(told(250.4)).toEqual(["G7: the line gives 250.4 for mass, but the bars above add up to 205.4"]);
  });

  it("should take no line of a summary under mark or shape for a bar", () => {
    // kg by hand: 20 x 1.6 x 0.888 = 28.416, 12 x 3 x 1.58 = 56.88
    const list: Rows = [
      ["Posizione", "Sagoma", "Ø", "Lunghezza (m)", "N. ferri", "Peso (kg)"],
      [1, "160", "Ø12", 1.6, 20, 28.4],
      [2, "15-270-15", "Ø16", 3, 12, 56.9],
      ["somma", null, null, null, null, 85.3],
      [],
      ["riepilogo", "Ø12", 28.4, "kg"],
      [null, "Ø16 B450C", 56.9, "kg"],
    ];
    expect(said(list, [["Note"]]).ofList).toEqual([]);
  });
});
