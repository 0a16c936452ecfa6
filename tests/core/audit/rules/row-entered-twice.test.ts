import { describe, expect, it } from "vitest";
import { exampleSheets } from "../../../../core/audit/example-sheet";
import rule from "../../../../core/audit/rules/row-entered-twice";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";
import { ruleCases } from "../rule-cases";

const bar = (mark: string, length: number, total: number) => ({
  ...{ mark, size: "H16", shape: "00", A: length, length, members: 1, each: total, total },
});
const LIST = Array.from({ length: 12 }, (_, index) => bar(String(index + 1), 1000 + 50 * index, 10 + index));

ruleCases(rule, {
  silent: [
    { rows: LIST },
    // another number of the same bar is no copy of the row
    { rows: [...LIST, bar("4", 1150, 20)] },
    // in a list of five one mark of two bars of other lengths, or with another remark, is no copy
    { rows: [...LIST.slice(0, 4), { ...bar("4", 1150, 13), remark: "top" }] },
    // marks that come again throughout are meant to
    { rows: [...LIST, ...LIST.slice(0, 6).reverse()] },
    { rows: [...LIST, LIST[0]!, bar("13", 900, 3), LIST[3]!, bar("14", 800, 3), LIST[6]!] },
  ],
  speaks: [
    {
      // five rows, two of them word for word
      rows: [...LIST.slice(0, 4), bar("4", 1150, 13)],
      says: [
        {
          cell: "B6",
          message: "mark 4 stands in row 5 too, the same bar and as many: is it entered twice?",
          outcome: "unsure",
        },
      ],
    },
    {
      // in a short list one mark that comes again is no habit
      rows: [...LIST.slice(0, 8), bar("4", 1150, 13)],
      says: [
        {
          cell: "B10",
          message: "mark 4 stands in row 5 too, the same bar and as many: is it entered twice?",
          outcome: "unsure",
        },
      ],
    },
    {
      rows: [...LIST, bar("4", 1150, 13)],
      says: [
        {
          cell: "B14",
          message: "mark 4 stands in row 5 too, the same bar and as many: is it entered twice?",
          outcome: "unsure",
        },
      ],
    },
  ],
});

describe("a row entered twice", () => {
  it("should be told of each row of a block that was pasted below the bars, however long, but not under a heading", () => {
    const standard = resolveStandard("BS8666:2005") as Standard;
    const heads = ["Bar mark", "Size", "Total no.", "Length mm"];
    const rows: Cell[][] = Array.from({ length: 30 }, (_, at) => [
      `${at + 1}`,
      "H16",
      10 + at,
      2000 + 50 * at,
    ]);
    const told = (list: Cell[][]): (string | null)[] =>
      runAudit({
        sheets: [sheetFromRows("List", [heads, ...list])],
        standard,
        rules: [rule],
      }).findings.flatMap(({ code, cell, rows: all = [] }) =>
        code === "MARK105" ? [cell ?? `${all.length} rows`] : [],
      );
    for (const size of [3, 4, 8]) {
      const block = rows.slice(5, 5 + size);
      expect(told([...rows, ...block])).toHaveLength(size);
      expect(told([...rows, ["Level 2"], ...block])).toEqual([]);
    }
    expect(told([...rows, ...rows.slice(5, 8)])).toEqual(["A32", "A33", "A34"]);
  });

  it("should be told when every rule goes through the marks that come again", () => {
    const standard = resolveStandard("BS8666:2005") as Standard;
    const sheets = exampleSheets({ rows: [...LIST, bar("4", 1150, 13)] });
    const codes = runAudit({ sheets, standard }).findings.map(({ code }) => code);
    expect(codes).toContain("MARK105");
  });

  it("should be told where marks name members and come again, by all that the row says", () => {
    const standard = resolveStandard("BS8666:2005") as Standard;
    const heads = ["Ref", "Description", "Size", "Pcs", "Length mm"];
    const rows: Cell[][] = Array.from({ length: 14 }, (_, at) => [
      ...[`F-${at % 4}`, `bars of strip ${at}`, "H16", 10 + at, 2000 + 50 * at],
    ]);
    const told = (list: Cell[][]): (string | null)[] =>
      runAudit({ sheets: [sheetFromRows("List", [heads, ...list])], standard, rules: [rule] }).findings.map(
        ({ cell }) => cell,
      );
    expect(told(rows)).toEqual([]);
    expect(told([...rows, rows[5] ?? []])).toEqual(["A16"]);
    // the item of the row names it as well as words do, where its column numbers the rows
    const items = (list: Cell[][]): Cell[][] => list.map(([, , ...others], at) => [`F-${at + 1}`, ...others]);
    const listed = [["Item", "Size", "Pcs", "Length mm"], ...items(rows)];
    const copied = runAudit({
      sheets: [sheetFromRows("List", [...listed, listed[6] ?? []])],
      ...{ standard, rules: [rule] },
    });
    expect(copied.findings.map(({ cell, row }) => cell ?? row)).toHaveLength(1);
    // where bars of both ways stand alike, the number of the row tells which of them was copied
    const numbered: Cell[][] = rows.map(([, ...others], at) => [at + 1, ...others]);
    const ways = numbered.flatMap((row, at) => (at < 3 ? [row, [row[0] as number, ...row.slice(1)]] : [row]));
    const both: Cell[][] = ways.map(([, ...others], at) => [at + 1, ...others]);
    const list = [["S/N", "Description", "Size", "Pcs", "Length mm"], ...both];
    const saidOf = (cells: Cell[][]) =>
      runAudit({ sheets: [sheetFromRows("List", cells)], standard, rules: [rule] }).findings.map(
        ({ message }) => message,
      );
    expect(saidOf(list)).toEqual([]);
    expect(saidOf([...list, list[10] ?? []])).toEqual([
      "the row is word for word that of row 11: is it entered twice?",
    ]);
    // without words two rows alike may be the two ways of one mesh
    const bare = rows.map(([ref, , ...others]) => [ref ?? null, null, ...others]);
    expect(told([...bare, bare[5] ?? []])).toEqual([]);
  });
});
