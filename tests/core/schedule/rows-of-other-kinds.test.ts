import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards/index";
import type { Standard } from "../../../core/standards/port";
import { BARS, HEADS } from "./plain-list";

const standard = resolveStandard("BS8666:2005") as Standard;
const check = (rows: readonly (readonly Cell[])[]) =>
  runAudit({ sheets: [sheetFromRows("List", rows)], standard });
const codes = (rows: readonly (readonly Cell[])[], ...asked: string[]) =>
  check(rows)
    .findings.filter(({ code }) => asked.includes(code))
    .map(({ code, cell }) => `${code} ${cell}`);

describe("a word in place of a size that says a bar is cancelled", () => {
  it("should leave its mark taken and ask for nothing else of it", () => {
    const rows = [HEADS, ...BARS.slice(0, 2), ["03", "CANCELLED"], ...BARS.slice(3)];
    expect(codes(rows, "READ101", "SUM110", "MARK103", "SIZE101")).toEqual([]);
  });
});

describe("the head of a page that stands again", () => {
  it("should be no row of the list", () => {
    const head = (page: string) => ["BENDING SCHEDULE", null, "SCHED. No. 12", null, page];
    const rows = [
      head("PAGE 1/2"),
      HEADS,
      ...BARS,
      [],
      head("PAGE 2/2"),
      HEADS,
      ["06", "H12", 4, 1000, 3.55],
    ];
    expect(codes(rows, "READ103")).toEqual([]);
    expect(check(rows).rows.bars).toBe(6);
  });
});

describe("a line of masses under the number of bars", () => {
  it("should not be held against the number of bars", () => {
    const rows = [HEADS, ...BARS, ["MASS THIS PAGE kg", "H", 242]];
    expect(codes(rows, "SUM103")).toEqual([]);
  });
});

describe("a table with other columns below", () => {
  it("should prove nothing of the columns above it", () => {
    const bent = ["Bar mark", "Qty", "Size", "Length mm", "A", "B", "C", "Mass kg"];
    const straight = [
      ["Bar mark", "Qty", "Size", "Length mm", "Mass kg"],
      ...BARS.map(([a, b, c, ...d]) => [a ?? null, c ?? null, b ?? null, ...d]),
    ];
    const below = [1, 2, 3, 4, 5, 6, 7].map((at) => [`1${at}`, 10, "H12", 1500, 300, 900, 300, 13.32]);
    const { sheets } = check([...straight, [], bent, ...below]);
    expect(sheets.map(({ reading }) => reading.held)).toEqual([null]);
  });
});

describe("marks that stand for members", () => {
  it("should be said once, and not told row by row", () => {
    const marks = ["F1", "F1", "F2", "F2", "F3", "F3", "F4", "F4", "F5", "F5", "F6", "F6"];
    const rows = [HEADS, ...marks.map((mark, at) => [mark, "H12", 10 + at, 1000 + 100 * at, null])];
    expect(codes(rows, "MARK101")).toEqual(["MARK101 A2"]);
  });
});

describe("a total length that asks for a bar that no mill rolls", () => {
  it("should be the one that is told", () => {
    const heads = ["Bar mark", "Size", "Total no.", "Length mm", "Total length m", "Mass kg"];
    // 1406 m of 19 bars would be 74 m each; the mass was worked out from it
    const rows = BARS.map(([mark, size, count, length, mass]) => [
      ...[mark, size, count, length, (Number(count) * Number(length)) / 1000, mass],
    ]);
    const found = check([heads, ...rows, ["06", "H12", 19, 7400, 1406, 1248.5]] as Cell[][]).findings;
    expect(
      found.filter(({ code }) => code === "SUM109").map(({ cell, message }) => `${cell}: ${message}`),
    ).toEqual(["E7: total length 1406000 mm does not fit number x length and the mass; 140600 mm would"]);
  });
});
