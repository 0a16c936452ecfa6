import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../../addin/xlsx/read/open-workbook";
import { readCsv } from "../../../../addin/xlsx/read/read-csv";
import { workbookOfCsv } from "../../../../addin/xlsx/write/workbook-of-csv";
import { checkBooks } from "../../../../core/jobs";
import type { Cell, Sheet } from "../../../../core/schedule/sheet";
import { isRefusal } from "../../../../core/units/refusal";

const HEAD = "Member;Bar mark;Size;Total no.;Length (mm);Shape code;A";
const bytes = (...lines: string[]) => new TextEncoder().encode(lines.join("\n"));
const read = (...lines: string[]) => readCsv(bytes(...lines), "S");
const row = (sheet: Sheet, at: number): Cell[] =>
  Array.from({ length: sheet.columnCount }, (_, column) => sheet.cell(at, column));

/** Tonnes of a book of this sheet, and what is in no total. */
function weighed(sheet: Sheet) {
  const book = {
    name: "S",
    sheets: [{ name: sheet.name, visibility: "visible" as const }],
    read: () => sheet,
    setting: () => null,
  };
  const [checked] = checkBooks([book], { sheet: null, standard: "BS8666:2005" } as never);
  if (checked === undefined || isRefusal(checked)) throw new Error("no book");
  return checked.tonnage;
}

describe("points and commas of a text file", () => {
  it("have one meaning: points part thousands beside a number that has both, or decimal commas", () => {
    const both = read(`${HEAD};Mass`, "B1;1;H16;1.000;1.200;00;1.200;1.896,0", "B1;2;H16;10;800;00;800;12,6");
    expect(row(both, 1)).toEqual(
      ["B1", 1, "H16", 1000, 1200, 0, 1200, 1896].map((cell) => (cell === 0 ? "00" : cell)),
    );
    // 1,000 x 1.2 m and 10 x 0.8 m at 1.579 kg/m (UK three-decimal table)
    expect(weighed(both).tonnage.total).toBeCloseTo((1000 * 1.2 + 10 * 0.8) * 0.001579, 9);
  });

  it("are told by a column that holds both 1.000 and 250", () => {
    const sheet = read(HEAD, "B1;1;H16;250;1.200;00;1.200", "B1;2;H16;1.000;1.125;00;1.125");
    expect(row(sheet, 2).slice(3)).toEqual([1000, 1125, "00", 1125]);
    expect(weighed(sheet).tonnage.total).toBeCloseTo((250 * 1.2 + 1000 * 1.125) * 0.001579, 9);
  });

  it("are decimals where a number of them is no group of three", () => {
    const sheet = read(
      HEAD.replace("(mm)", "(m)"),
      "B1;1;H16;10;1.250;00;0.85",
      "B1;2;H16;10;12.000;00;0.85",
    );
    expect([sheet.cell(1, 4), sheet.cell(2, 4)]).toEqual([1.25, 12]);
  });

  it("that nothing tells are asked about, and the row is in no total until then", () => {
    const sheet = read(HEAD, "B1;1;H16;1.000;1200;00;1200", "B1;2;H16;2.000;1100;00;1100");
    const { notInTotal } = weighed(sheet);
    expect(notInTotal.map(({ row: at }) => at)).toEqual([2, 3]);
  });

  it("leave a mark as it is written, in the workbench's workbook too", () => {
    const lines = [`${HEAD};Mass`, "B1;1.101;H16;10;1.200;00;1.200;18,9", "B1;1.102;H16;10;800;00;800;12,6"];
    const sheets = [read(...lines), openWorkbook(workbookOfCsv(bytes(...lines), "s.csv")).read("s")];
    for (const sheet of sheets) expect(sheet.shown?.(1, 1)).toBe("1.101");
  });
});
