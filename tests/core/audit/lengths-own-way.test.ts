import { describe, expect, it } from "vitest";
import { checkBooks } from "../../../core/jobs";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { isRefusal } from "../../../core/units/refusal";

const HEADS = ["Mark", "Size", "Number", "Shape code", "A", "B", "C", "D", "Length mm"];
// BS 8666:2005 Table 3, 51 of 10 mm: 2(A + B + C) - 2.5 x 20 - 5 x 10; the list itself takes 2(A + B) + 130.
// 540 x 360, C 100: 2000 - 100 = 1900 against 1930; 470 x 320: 1680 against 1710; 310 x 240: 1200 against 1230
const LINKS: Cell[][] = [
  ["1", "10", 8, "51", 540, 360, 100, 100, 1930],
  ["2", "10", 8, "51", 470, 320, 100, 100, 1710],
  ["3", "10", 8, "51", 310, 240, 100, 100, 1230],
  ["4", "10", 8, "51", 650, 430, 100, 100, 2290],
];
// 00 and 11 by the document, so that most of the list keeps to it: 11 of 16 mm is A + B - 0.5 x 32 - 16
const OTHERS: Cell[][] = Array.from({ length: 12 }, (_, at) => [
  String(at + 5),
  "16",
  4,
  "11",
  500 + 50 * at,
  400,
  null,
  null,
  875 + 50 * at,
]);

function said(bars: readonly (readonly Cell[])[], title = "Bending list", standard: string | null = null) {
  const sheet = sheetFromRows("List", [[title], [], HEADS, ...bars]);
  const book = {
    name: "yard.xlsx",
    sheets: [{ name: "List", visibility: "visible" as const }],
    ...{ read: () => sheet, setting: () => null },
  };
  const [one] = checkBooks([book], { sheet: null, standard });
  if (one === undefined || isRefusal(one)) throw new Error("not checked");
  return one.report.byRow
    .filter(({ code }) => code === "LEN102")
    .map(({ cell, severity, outcome }) => `${cell} ${severity} ${outcome}`);
}

describe("lengths that a list makes its own way", () => {
  it("should be told as notes where half of a code's bars deviate alike and nobody chose the document", () => {
    expect(said([...LINKS, ...OTHERS])).toEqual([
      "I4 note unsure",
      "I5 note unsure",
      "I6 note unsure",
      "I7 note unsure",
    ]);
  });

  it("should be told in full where the document was chosen or is named", () => {
    expect(said([...LINKS, ...OTHERS], "Bending list", "BS8666:2005")).toHaveLength(4);
    expect(said([...LINKS, ...OTHERS], "Bending list", "BS8666:2005")[0]).toBe("I4 off-standard broken");
    expect(said([...LINKS, ...OTHERS], "To BS 8666:2005")[0]).toBe("I4 off-standard broken");
  });

  it("should leave a bar that deviates otherwise as it was", () => {
    const slip = LINKS.map((cells, at) => (at === 1 ? [...cells.slice(0, 8), 2740] : cells));
    expect(said([...slip, ...OTHERS])).toContain("I5 off-standard broken");
  });

  it("should not make a habit of one bar", () => {
    expect(said([LINKS[0] as Cell[], ...OTHERS])).toEqual(["I4 off-standard broken"]);
  });
});
