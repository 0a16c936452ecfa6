import { describe, expect, it } from "vitest";
import { type Book, checkBooks } from "../../../core/jobs";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { isRefusal } from "../../../core/units/refusal";

function findingsOf(sheets: Readonly<Record<string, readonly (readonly Cell[])[]>>) {
  const book: Book = {
    name: "Plaza",
    sheets: Object.keys(sheets).map((name) => ({ name, visibility: "visible" })),
    read: (name) => sheetFromRows(name, sheets[name] as readonly (readonly Cell[])[]),
    setting: () => null,
  };
  const [checked] = checkBooks([book], { sheet: null, standard: "BS8666:2005" });
  if (checked === undefined || isRefusal(checked)) throw new Error("refused");
  return checked.report.findings.map(({ code, cell }) => `${code} ${cell}`);
}

describe("a total left blank", () => {
  it("should be told where headings give the members", () => {
    const bars = (from: number, members: number): Cell[][] =>
      [1, 2, 3].map((at) => [`${from + at}`, "H12", at * 3, at * 3 * members, 2000 + at * 100]);
    const rows: Cell[][] = [
      ["mk", "bar", "pcs each", "total pcs", "length"],
      ["COLUMN C1  8 NOS"],
      ...bars(0, 8),
      ["BASE B1  6 NOS"],
      ...bars(3, 6),
    ];
    (rows[7] as Cell[])[3] = null;
    expect(findingsOf({ S: rows })).toContain("SUM110 D8");
  });
});
