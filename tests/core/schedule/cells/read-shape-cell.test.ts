import { describe, expect, it } from "vitest";
import { runAudit } from "../../../../core/audit/run-audit";
import { shapeCellReader } from "../../../../core/schedule/cells/read-shape-cell";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";

const standard = resolveStandard("BS8666:2005") as Standard;

describe("a number that begins a shape cell", () => {
  const read = shapeCellReader(standard);

  it.each(["0,25 / 1,90 / 0,25", `0'-8" + 4'-6" + 0'-8"`, "12 | 34 | 12", `1'-0" tie`])(
    "is no code where it is a leg: %s",
    (typed) => {
      expect(read(typed)).toMatchObject({ is: "unread", shape: null });
    },
  );

  it.each([
    ["21 (U bar)", "21"],
    ["51 link", "51"],
    ["0", "00"],
  ])("is the code before words: %s", (typed, shape) => {
    expect(read(typed)).toMatchObject({ shape });
  });
});

describe("legs in the place of the shape", () => {
  it("should show no standard: what one that nobody chose says of the list is a note", () => {
    const heads = ["Mark", "Size", "Shape", "Total no.", "Length m"];
    const rows: Cell[][] = [
      ["1", 14, "0,25 / 1,90 / 0,25", 66, 2.4],
      ["2", 16, "0,30 / 1,30", 48, 1.6],
      ["3", 16, "0,30 / 6,20 / 0,30", 8, 6.8],
      ["4", 10, "0,25 / 0,45 / 0,25 / 0,45 / 0,12 / 0,12", 84, 1.64],
    ];
    const sheets = [sheetFromRows("List", [heads, ...rows])];
    const { findings } = runAudit({ sheets, standard, isStandardAssumed: true });
    // BS 8666:2005 holds no 14 mm bar and schedules to 25 mm
    const loud = findings.filter(({ severity }) => severity !== "note");
    expect(loud.map(({ code, cell }) => `${code} ${cell}`)).toEqual([]);
  });
});
