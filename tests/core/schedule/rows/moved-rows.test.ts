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

  it("should be left alone where it is a remark, or numbers that somebody worked with", () => {
    expect(unread(away(["checked", "by", "the", "yard"]))).toEqual([]);
    expect(unread(away([12, 14.5, 26.5, 3]))).toEqual([]);
    expect(unread(["06", "H16", 10, 2500, 39.48])).toEqual([]);
  });
});
