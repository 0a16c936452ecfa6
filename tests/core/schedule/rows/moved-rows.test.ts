import { describe, expect, it } from "vitest";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { heldStandard } from "../../../_support/held-standard";
import { BARS, HEADS } from "../plain-list";

const standard = heldStandard("BS8666:2005");
const unread = (row: readonly Cell[]) =>
  runAudit({ standard, sheets: [sheetFromRows("S1", [HEADS, ...BARS, row])] })
    .findings.filter(({ code }) => code === "READ103")
    .map(({ row: at, severity, message }) => [at, severity, message.includes("beside the columns")]);

describe("a row moved away from its table", () => {
  const away = (cells: readonly Cell[]): Cell[] => [...Array<Cell>(12).fill(null), ...cells];

  it("should be named above a note where it holds what a bar does", () => {
    expect(unread(away(["06", "H16", 10, 2500, 39.48]))).toEqual([[7, "doubtful", true]]);
  });

  it("should be named too where its size is a bare number, and each cell fits its column", () => {
    expect(unread(away(["06", 16, 10, 2500, 39.48]))).toEqual([[7, "doubtful", true]]);
  });

  it("should be named beside another bar, unless a table of its own stands there", () => {
    const beside = (cells: readonly Cell[]) => {
      const [first = [], ...rest] = BARS;
      const rows = [HEADS, [...first, ...Array<Cell>(12 - first.length).fill(null), ...cells], ...rest];
      return runAudit({ standard, sheets: [sheetFromRows("S1", rows)] })
        .findings.filter(({ code, message }) => code === "READ101" && message.includes("beside the columns"))
        .map(({ cell }) => cell);
    };
    expect(beside(["06", "H16", 10, 2500, "00"])).toEqual(["A2"]);
    // figures that somebody worked with
    expect(beside([16, 1.579, 25, 39.5, 2])).toEqual([]);
    expect(beside(["H16", 25, 39.48])).toEqual([]);
    const tables = [[...HEADS, null, null, ...HEADS], ...BARS.map((bar) => [...bar, null, null, ...bar])];
    const found = runAudit({ standard, sheets: [sheetFromRows("S1", tables)] }).findings;
    expect(found.filter(({ message }) => message.includes("beside the columns"))).toEqual([]);
  });

  it("should be left alone where it is a remark, or numbers that somebody worked with", () => {
    expect(unread(away(["checked", "by", "the", "yard"]))).toEqual([]);
    expect(unread(away([12, 14.5, 26.5, 3]))).toEqual([]);
    expect(unread(["06", "H16", 10, 2500, 39.48])).toEqual([]);
  });
});
