import { describe, expect, test } from "vitest";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { workbookOfCsv } from "../../../../addin/xlsx/write/workbook-of-csv";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("workbookOfCsv", () => {
  test("should hold the cells of the text, numbers with a decimal comma as numbers, marks as texts", () => {
    const text = "Bar mark;Length m;Remark\n007;1,5;\n008;12,25;by hand\n";
    const workbook = openWorkbook(workbookOfCsv(bytes(text), "site/list [2].csv"));
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["site list  2"]);
    const sheet = workbook.read("site list  2");
    expect([0, 1, 2].map((row) => [0, 1, 2].map((column) => sheet.cell(row, column)))).toEqual([
      ["Bar mark", "Length m", "Remark"],
      ["007", 1.5, null],
      ["008", 12.25, "by hand"],
    ]);
  });

  test("should name its one sheet Schedule where the file's name is of signs alone", () => {
    const workbook = openWorkbook(workbookOfCsv(bytes("a,b\n1,2\n"), "[].csv"));
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Schedule"]);
  });

  test("should refuse what is no text", () => {
    expect(() => workbookOfCsv(new Uint8Array([1, 0, 2]), "list.csv")).toThrow(/not a text file/);
  });
});
