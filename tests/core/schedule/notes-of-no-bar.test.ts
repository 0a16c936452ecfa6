import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

const HEAD: Cell[] = ["Where", "Bar", "Total", "Length m", "Remarks"];
const remarksOf = (rows: readonly Cell[][]) =>
  readSchedule(sheetFromRows("List", [HEAD, ...rows]), heldStandard("BS8666:2005")).bars.map(
    ({ remark }) => remark,
  );

describe("a row of words below a bar", () => {
  const bars: Cell[][] = [
    ["Ties", "R8", 40, 1.2],
    ["Ring beam main", "H12", 8, 6],
  ];

  it("should be said of it", () => {
    expect(remarksOf([bars[0]!, ["laps are in, see detail 4"], bars[1]!])).toEqual([
      "laps are in, see detail 4",
      null,
    ]);
  });

  it("should not be said of it where it names what comes next", () => {
    expect(remarksOf([bars[0]!, ["ring beam, laps are in"], bars[1]!])).toEqual([null, null]);
  });

  it.each(["† Struck bars are cancelled", "* lengths to 5 mm", "¹ see the drawing", "(1) rounded up"])(
    "should be a footnote of all: %s",
    (note) => {
      expect(remarksOf([...bars, [note]])).toEqual([null, null]);
    },
  );
});
