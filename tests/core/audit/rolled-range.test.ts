import { describe, expect, it } from "vitest";
import rule from "../../../core/audit/rules/size-stray";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

/** What is told of a list that nobody chose a standard for: rows of size, number and length, under a title. */
function told(title: string, ...sizes: readonly string[]): string[] {
  const rows: Cell[][] = [[title], ["Mark", "Size", "Number of bars", "Length mm"]];
  sizes.forEach((size, at) => {
    rows.push([String(at + 1), size, 4 + at, 2000 + 150 * at]);
  });
  const { findings } = runAudit({
    sheets: [sheetFromRows("List", rows)],
    standard: heldStandard("BS8666:2005"),
    isStandardAssumed: true,
    rules: [rule],
  });
  return findings.map(({ outcome, message }) => `${outcome}: ${message}`);
}

describe("sizes that the document named does not hold", () => {
  // nominal diameters of each document, from memory, as core/audit/rolled-ranges.data.ts says
  it.each([
    ["GOST 34028-2016", "Ø", ["8", "10", "12", "12", "16", "16", "25"], "24"],
    ["GB/T 1499.2-2018", "C", ["8", "8", "10", "12", "16", "16", "20"], "24"],
    ["NBR 7480", "", ["5", "6.3", "8", "10", "10", "12.5", "16"], "12"],
    ["JIS G 3112", "D", ["10", "10", "13", "13", "16", "19", "22"], "14"],
    ["UNE 36065 B 500 SD", "Ø", ["8", "8", "10", "12", "16", "16", "20"], "22"],
    ["DSTU 3760:2019", "Ø", ["8", "8", "10", "12", "16", "16", "20"], null],
    ["SIA 262, B500B", "Ø", ["8", "10", "12", "12", "16", "16", "26"], "25"],
    ["SNI 2052:2017", "D", ["10", "10", "13", "16", "16", "19", "22"], "12"],
    ["TCVN 1651-2:2018", "D", ["8", "8", "10", "12", "16", "16", "20"], "24"],
  ])("%s", (document, letters, sizes, stray) => {
    const named = sizes.map((size) => `${letters}${size}`);
    expect(told(`Bars to ${document}`, ...named)).toEqual([]);
    if (stray === null) return;
    const [found, another] = told(`Bars to ${document}`, ...named, `${letters}${stray}`);
    expect(found).toMatch(
      /^unsure: size .* is none that .* holds, which the list names, and no other row has it/,
    );
    expect(another).toBeUndefined();
    // two rows that have it are no slip of one
    expect(told(`Bars to ${document}`, ...named, `${letters}${stray}`, `${letters}${stray}`)).toEqual([]);
  });

  it("should leave alone what is drawn of wire, and other letters", () => {
    const sizes = ["D10", "D10", "D13", "D16", "D16", "D19", "D22"];
    expect(told("JIS G 3112", ...sizes, "D5")).toEqual([]);
    expect(told("SNI 2052", ...sizes, "P12")).toEqual([]);
  });
});

describe("sizes of no country of the list", () => {
  it("should be told where no document is named", () => {
    // 15 to 20 mm of TIS 20 are plain bars; Japan, Korea and Taiwan roll 10, 13, 16, 19, 22 and 25
    const sizes = ["D10", "D10", "D13", "D13", "D16", "D16", "D19", "D19", "D22"];
    expect(told("Bar list", ...sizes)).toEqual([]);
    expect(told("Bar list", ...sizes, "D14")).toEqual([
      "unsure: size D14 is rolled in no country that is known to roll the other sizes of the list, and no other row has it",
    ]);
    expect(told("Bar list", "8", "10", "10", "12", "16", "16", "20", "25", "14")).toEqual([]);
  });

  it("should be told behind the sign of a diameter", () => {
    // Canada's 15M is 16 mm, and no bar of 15
    expect(told("Elenco ferri", "Ø8", "Ø8", "Ø10", "Ø12", "Ø14", "Ø16", "Ø15")).toEqual([
      "unsure: size Ø15 is rolled nowhere that is known, and no other row has it",
    ]);
  });
});

it("the mass of one bar and that of a metre tell of the size as the row's own does", () => {
  const says = (head: string, mass: (perMetre: number) => number) => {
    const kg = { Ø10: 0.617, Ø12: 0.888, Ø16: 1.578, Ø20: 2.466 };
    const rows: Cell[][] = [["Mark", "Size", "Number of bars", "Length mm", head]];
    for (const [size, perMetre] of [...Object.entries(kg), ...Object.entries(kg)])
      rows.push([String(rows.length), size, 4, 2000, mass(perMetre)]);
    // a bar of 25 mm, 3.853 kg/m by EN 10080, written 24
    rows.push(["9", "Ø24", 4, 2000, mass(3.853)]);
    const { findings } = runAudit({
      sheets: [sheetFromRows("List", rows)],
      standard: heldStandard("BS8666:2005"),
      isStandardAssumed: true,
      rules: [rule],
    });
    return findings.map(({ message }) => message);
  };
  const told = ["size Ø24 stands in no other row, and the mass of this one is that of 25"];
  expect(says("Mass of one bar kg", (perMetre) => 2 * perMetre)).toEqual(told);
  expect(says("kg/m", (perMetre) => perMetre)).toEqual(told);
});
