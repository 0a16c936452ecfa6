import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

type Rows = readonly (readonly Cell[])[];

function told(rows: Rows, standard: string, codes: RegExp): readonly string[] {
  const { findings } = runAudit({ sheets: [sheetFromRows("List", rows)], standard: heldStandard(standard) });
  return findings
    .filter(({ code, severity }) => codes.test(code) && severity !== "note")
    .map(({ cell, message }) => `${cell}: ${message}`);
}

describe("a column that names the size once more", () => {
  // #3 is 3/8", #4 is 1/2", #5 is 5/8" (ASTM A615: eighths of an inch); kg/m 0.557, 0.996, 1.56
  const list = (last: string): Rows => [
    ["Clave", "Varilla", "Ø", "Desarrollo (m)", "Pzas", "kg/m", "Peso kg"],
    ["A", "#3", '3/8"', 2, 10, 0.557, 11.1],
    ["B", "#3", '3/8"', 3, 10, 0.557, 16.7],
    ["C", "#4", '1/2"', 2, 10, 0.996, 19.9],
    ["D", "#4", '1/2"', 3, 10, 0.996, 29.9],
    ["E", "#5", '5/8"', 2, 10, 1.56, 31.2],
    ["F", "#5", '5/8"', 3, 10, 1.56, 46.8],
    ["G", "#5", last, 4, 10, 1.56, 62.4],
  ];

  it("should be told where a row has that of another size", () => {
    expect(told(list('5/8"'), "ACI318:2019", /SIZE106/)).toEqual([]);
    expect(told(list('1/2"'), "ACI318:2019", /SIZE106/)).toEqual([
      'C8: 1/2" stands beside #5, as beside #4; the other rows of #5 have 5/8"',
    ]);
  });

  it("should be silent of grades, which several sizes share", () => {
    const graded: Rows = list("").map((row, at) => [
      ...row.slice(0, 2),
      at === 0 ? "Clase" : at < 5 ? "G40" : at === 7 ? "G40" : "G60",
      ...row.slice(3),
    ]);
    expect(told(graded, "ACI318:2019", /SIZE106/)).toEqual([]);
  });
});

describe("sums by size beside and below a list", () => {
  it("should be those of bars of 22 mm under D22, whose bar of that name is 22.2 mm elsewhere", () => {
    // 10 x 2 x 0.888, 10 x 2 x 1.58, 10 x 6.3 x 2.98
    const list = (mass: number): Rows => [
      ["Mark", "Size", "Total no.", "Length m", "Mass kg"],
      ["1", 12, 10, 2, 17.76],
      ["2", 16, 10, 2, 31.6],
      ["3", 22, 10, 6.3, 187.74],
      [],
      ["Summary"],
      ["D12", 17.76, "kg"],
      ["D16", 31.6, "kg"],
      ["D22", mass, "kg"],
    ];
    expect(told(list(187.74), "BS8666:2005", /SUM111|SIZE107/)).toEqual([]);
    expect(told(list(178.74), "BS8666:2005", /SUM111/)).toEqual([
      "B9: the mass of D22 is given as 178.74, but the bars of the list make 187.74",
    ]);
  });
});
