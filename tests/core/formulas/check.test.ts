import { describe, expect, it } from "vitest";
import { CHECK } from "../../../core/formulas/check";
import type { Block } from "../../../core/formulas/worksheet-function";
import type { Cell } from "../../../core/schedule/sheet";

const environment = { defaultStandard: "BS8666:2005" };
const HEADER = [
  "Member",
  "Bar mark",
  "Type and size",
  "Total no.",
  "Length",
  "Shape code",
  "A",
  "B",
  "Former",
];

function verdicts(rows: Block, standard?: string) {
  return CHECK.call([rows, standard === undefined ? undefined : [[standard]]], environment);
}

describe("BAR.CHECK", () => {
  it("should give as many rows as the range: verdict first, blanks for rows that are no bar", () => {
    // former 64 is the least for 16 mm: BS 8666:2005 Table 2 (tunleyrod.co.uk/barsizes.html)
    const rows: Block = [
      ["Schedule of the slab", null, null, null, null, null, null, null, null],
      HEADER,
      ["B1", "01", "H16", 2, 875, "11", 500, 400, 64],
      ["B1", "02", "H16", 2, 875, "11", 500, 400, 63],
      [null, null, null, null, null, null, null, null, null],
      ["TOTAL", null, null, 4, null, null, null, null, null],
      [null, null, null, null, null, null, null, null, null],
    ];
    const answer = verdicts(rows);
    expect(answer).toHaveLength(6);
    expect(answer.map(([cell]) => cell)).toEqual([
      "verdict",
      null,
      "ok",
      "unsafe: former 63 mm is below the least 64 mm for H16",
      null,
      null,
    ]);
  });

  it("should say the worst first", () => {
    const answer = verdicts([HEADER, ["B1", "01", "H16", 2, 900, "11", 500, 400, 50]]);
    expect(answer[1]?.[0]).toMatch(/^unsafe: former 50 mm .*; off-standard: length 900 mm /);
  });

  it("should call a bar whose bends overlap unbendable", () => {
    const answer = verdicts([
      [...HEADER, "C"],
      ["B1", "01", "H32", 2, 1100, "21", 500, 280, null, 500],
    ]);
    expect(answer[1]?.[0]).toMatch(/^unbendable: bends 1 and 2 overlap/);
  });

  it("should take the standard given", () => {
    const rows: Block = [HEADER, ["B1", "01", "H16", 2, 875, "11", 500, 400, 64]];
    expect(verdicts(rows, "BS 8666:2020")[1]?.[0]).toBe("ok");
    expect(verdicts(rows, "nothing")[0]?.[0]).toMatchObject({ error: "#N/A" });
  });

  it("should refuse a range without a header, and say what was looked for", () => {
    expect(
      verdicts([
        ["a", "b"],
        [1, 2],
      ]),
    ).toEqual([
      [{ error: "#VALUE!", message: expect.stringContaining("no header row was found (rows read: 2)") }],
    ]);
  });

  it("should not call a bar ok whose shape the standard has no list of", () => {
    const rows: Cell[][] = [
      ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A", "B"],
      ["01", "16", 2, 2000, "21", 1000, 400],
      ["02", "16", 2, 1000, "00", 1000, null],
    ];
    expect(verdicts(rows, "EC2:2004")).toEqual([
      ["verdict"],
      ["note: shape 21 was not checked: EC2:2004 holds no list of shapes, write it as a path"],
      ["ok"],
    ]);
  });

  it("should give no verdict yet where only the header is written", () => {
    const header = ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A"];
    expect(verdicts([header])).toEqual([["verdict"]]);
    expect(verdicts([header, [null, null], ["Total", null]])).toEqual([["verdict"], [null], [null]]);
  });

  it("should go by one standard for the whole schedule, and hand an error in its place on", () => {
    const rows: Cell[][] = [
      ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A"],
      ["01", "H16", 2, 1000, "00", 1000],
    ];
    const check = (...standard: Cell[]) =>
      CHECK.call([rows, standard.map((cell) => [cell])], { defaultStandard: "BS8666:2005" });
    expect(check("bs 8666", null, null)).toEqual([["verdict"], ["ok"]]);
    expect(check({ error: "#REF!" })).toEqual([[{ error: "#REF!" }]]);
    expect(check("ec2", "bs 8666")).toEqual([
      [{ error: "#VALUE!", message: expect.stringMatching(/standard holds 2 values.*give one/) }],
    ]);
    expect(check(true)).toEqual([
      [{ error: "#VALUE!", message: 'standard is "TRUE": give an id such as BS8666:2005' }],
    ]);
  });
});
