import { expect, test } from "vitest";
import { type Book, type CheckedBook, checkBooks, ticketsOf } from "../../../core/jobs";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { isRefusal } from "../../../core/units/refusal";

const BARS: Cell[][] = [
  ["Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A mm", "B mm", "C mm"],
  ["01", "H16", 10, 2800, "21", 700, 1450, 700],
  ["02", "H16", 10, 2800, "21", 700, 1450, 700],
  ["02", "H16", 12, 975, "11", 600, 400, null],
  // 600 + 400 - 0.5 x 32 - 16 = 968, up to 975 (BS 8666:2005, shape 11): 9000 too long
  ["04", "H16", 10, 9975, "11", 600, 400, null],
  ["05", "H16", 10, 975, "11", 600, 400, null],
];

test("should put each finding on its own bar's ticket where bars stand in columns", () => {
  const columns = BARS[0]!.map((_, at) => BARS.map((row) => row[at] ?? null));
  const sheet = sheetFromRows("Bars", columns);
  const book: Book = {
    name: "turned.xlsx",
    sheets: [{ name: "Bars", visibility: "visible" }],
    read: () => sheet,
    setting: () => null,
  };
  const [checked] = checkBooks([book], { sheet: null, standard: "BS8666:2005" } as never);
  if (checked === undefined || isRefusal(checked)) throw new Error("the book was refused");
  const { tickets } = ticketsOf([checked as CheckedBook]);
  const said = tickets.map(({ mark, warnings }) => [mark, warnings.map(({ text }) => text).join("; ")]);
  expect(said).toEqual([
    ["01", ""],
    ["02", "mark 02 stands in column D too, with another shape"],
    ["02", "mark 02 stands in column C too, with another shape"],
    ["04", expect.stringContaining("length 9975 mm is 9000 mm over")],
    ["05", ""],
  ]);
});
