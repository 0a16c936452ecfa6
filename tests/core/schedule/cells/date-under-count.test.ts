import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { standardNamed } from "../../shapes/resolved";

/** Serial number of 16 March 2026: 44927 is 1 January 2023, and 365 + 365 + 366 + 31 + 28 + 15 = 1170 days on (by hand). */
const MARCH_16 = 46_097;
const HEAD = ["Bar mark", "Size", "No. of members", "No. in each", "Total no.", "Length mm", "Mass kg"];

/** Two members of 6 bars 1175 mm of 16 mm: 12 x 1.175 x 1.579 = 22.26 kg. The cell at `column` of row 3 is another. */
function read(column: number, value: Cell, dates: readonly number[]) {
  const rows: Cell[][] = [1, 2, 3, 4, 5, 6, 7].map((mark) => [`0${mark}`, "H16", 2, 6, 12, 1175, 22.26]);
  rows[2]![column] = value;
  const sheet = sheetFromRows("Beams", [HEAD, ...rows]);
  const isDate = (row: number, at: number): boolean => row === 3 && dates.includes(at);
  return readSchedule({ ...sheet, isDate }, standardNamed("BS8666:2005"));
}

describe("a date in a column of counts", () => {
  const COLUMNS = [
    ["members", 2],
    ["each", 3],
    ["total", 4],
  ] as const;
  for (const [field, column] of COLUMNS) {
    it(`should be no number under ${HEAD[column]}`, () => {
      const { bars } = read(column, MARCH_16, [column]);
      expect(bars[2]?.[field]).toBeNull();
      expect(bars[2]?.problems).toMatchObject([
        {
          field,
          column,
          typed: MARCH_16,
          outcome: "unread",
          reason: "a date stands here (2026-03-16), and no count of bars: type the number",
        },
      ]);
    });
  }

  it("should leave a large number and a small one in a cell with the format of dates what they are", () => {
    expect(read(4, MARCH_16, []).bars[2]).toMatchObject({ total: MARCH_16, problems: null });
    // 12 typed into a cell that was formatted as a date before
    expect(read(4, 12, [4]).bars[2]).toMatchObject({ total: 12, problems: null });
  });
});
