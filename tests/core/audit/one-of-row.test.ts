import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const told = (rows: readonly (readonly Cell[])[], standard = "EC2:2004") =>
  runAudit({ sheets: [sheetFromRows("List", rows)], standard: heldStandard(standard) }).findings.filter(
    ({ severity }) => severity !== "note",
  );

// by hand: number x length in m x 0.888 kg/m of 12 mm (EN 10080 masses)
const HEADS = ["Pos", "Ø", "Stück", "Form", "Länge (m)", "Gesamtlänge (m)", "Masse (kg)"];
const LIST: Cell[][] = [
  HEADS,
  ["1", 12, 10, "20 + 210 + 20", 2.5, 25, 22.2],
  ["2", 12, 20, "20 + 260 + 20", 3, 60, 53.28],
  ["3", 12, 30, "20 + 110 + 20", 1.5, 45, 39.96],
  ["4", 12, 10, "20 + 160 + 20", 2, 20, 17.76],
  ["5", 12, 40, "20 + 380 + 20", 4.2, 168, 149.184],
  ["6", 12, 10, "20 + 95 + 20", 1.35, 13.5, 11.988],
];
const withRow = (at: number, cells: Record<number, Cell>): Cell[][] =>
  LIST.map((row, index) => (index === at ? row.map((cell, column) => cells[column] ?? cell) : row));

describe("one slip of a row is one finding", () => {
  it("of a length that the products and the legs contradict", () => {
    const findings = told(withRow(5, { 4: 2.4 }));
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ code: "LEN112", row: 6, cell: "E6" });
    expect(findings[0]?.message).toMatch(
      /^length 2400 mm is not the 4200 mm that .*; one of total, length is wrong/,
    );
  });

  it("but not of a length and a mass that no one slip explains", () => {
    // 4.2 m are as the legs, the mass is of 52.4 m
    const codes = told(withRow(5, { 4: 2.4, 6: 46.5 })).map(({ code }) => code);
    expect(codes.length).toBeGreaterThan(1);
  });

  it("of a leg that stands in its neighbour's column", () => {
    // BS 8666:2005, shape 21: A, B and C
    const heads = ["Bar mark", "Type and size", "Total no.", "Length", "Shape code", "A", "B", "C", "D"];
    const rows: Cell[][] = [
      heads,
      ["01", "H12", 10, 1350, "21", 200, 1000, 200, null],
      ["02", "H12", 10, 1550, "21", 200, 1200, null, 200],
    ];
    const findings = told(rows, "BS8666:2005").filter(({ row }) => row === 3);
    expect(findings.map(({ code }) => code)).toEqual(["SHAPE103"]);
    expect(findings[0]?.message).toMatch(/needs C, which is blank; shape 21 takes no D/);
  });

  it("of a size that its mass a metre and its mass are not of", () => {
    const heads = ["Pos", "Ø", "Stück", "Länge (m)", "kg/m", "Masse (kg)"];
    // 0.888, 1.58 and 0.617 kg/m: handbook tables
    const rows: Cell[][] = [
      heads,
      ["1", 12, 10, 2, 0.888, 17.76],
      ["2", 12, 20, 2, 0.888, 35.52],
      ["3", 16, 10, 2, 1.58, 31.6],
      ["4", 16, 20, 2, 1.58, 63.2],
      ["5", 12, 10, 4, 1.58, 63.2],
      ["6", 10, 10, 2, 0.617, 12.34],
    ];
    const findings = told(rows).filter(({ row }) => row === 6);
    expect(findings).toHaveLength(1);
    expect(findings[0]?.message).toMatch(/mass per metre 1.58 .*; .*63.2/);
  });
});
