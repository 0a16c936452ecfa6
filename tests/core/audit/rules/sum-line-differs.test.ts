import { expect, it } from "vitest";
import { exampleSheets } from "../../../../core/audit/example-sheet";
import rule from "../../../../core/audit/rules/sum-line-differs";
import { runAudit } from "../../../../core/audit/run-audit";
import type { Sheet } from "../../../../core/schedule/sheet";
import { ruleCases, standardNamed } from "../rule-cases";

// 3.16 + 6.32 = 9.48
ruleCases(rule, {
  silent: [
    // a sum in a spreadsheet takes a blank for nought
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: null },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      foot: [{ member: "TOTAL", mass: 9.48 }],
    },
    // \u0625\u062c\u0645\u0627\u0644\u064a, a total in Arabic with its hamza, and what it is of
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      foot: [
        {
          member: "\u0625\u062c\u0645\u0627\u0644\u064a \u0627\u0644\u0642\u0648\u0627\u0639\u062f",
          mass: 9.48,
        },
      ],
    },
    // V5 is a beam, though a bar of 5 mm stands among those that are summed
    {
      rows: [
        { member: "V5", size: "16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { member: "V5", size: "5", shape: "00", A: 2000, length: 2000, mass: 0.31 },
      ],
      foot: [{ member: "Subtotal V5", mass: 3.47 }],
    },
    // the tonnes of the list stand under the number of bars
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, total: 20 },
        { size: "H16", shape: "00", A: 2000, length: 2000, total: 30 },
      ],
      foot: [{ member: "TOTAL", total: 0.126 }],
    },
    // coated and plain bars are summed apart, and together they are all
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      foot: [
        { member: "TOTAL COATED", mass: 4.16 },
        { member: "TOTAL PLAIN", mass: 5.32 },
        { member: "TOTAL", mass: 9.48 },
      ],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      foot: [{ member: "TOTAL", mass: 9.48 }],
    },
    {
      rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 }],
      foot: [{ member: "TOTAL", total: 2, mass: 3.2 }],
    },
    // one line a size, then one for all: 6.32 of 16 mm, 1.78 of 12 mm
    {
      rows: [
        { size: "H16", shape: "00", A: 4000, length: 4000, mass: 6.32 },
        { size: "H12", shape: "00", A: 2000, length: 2000, mass: 1.78 },
      ],
      foot: [
        { member: "Total", size: "16", mass: 6.32 },
        { member: "Total T12", mass: 1.78 },
        { member: "TOTAL", mass: 8.1 },
      ],
    },
    // 8.1 and 3 % of it
    {
      rows: [
        { size: "H16", shape: "00", A: 4000, length: 4000, mass: 6.32 },
        { size: "H12", shape: "00", A: 2000, length: 2000, mass: 1.78 },
      ],
      foot: [
        { member: "TOTAL", mass: 8.1 },
        { member: "Add 3% wastage", mass: 0.243 },
        { member: "GRAND TOTAL", mass: 8.343 },
      ],
    },
  ],
  speaks: [
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      foot: [
        {
          member: "\u0625\u062c\u0645\u0627\u0644\u064a \u0627\u0644\u0642\u0648\u0627\u0639\u062f",
          mass: 8.48,
        },
      ],
      says: [{ cell: "N4", message: "the line gives 8.48 for mass, but the bars above add up to 9.48" }],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 4000, length: 4000, mass: 6.32 },
        { size: "H12", shape: "00", A: 2000, length: 2000, mass: 1.78 },
      ],
      foot: [{ member: "Total T12", mass: 1.87 }],
      says: [{ cell: "N4", message: "the line gives 1.87 for mass, but the bars above add up to 1.78" }],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, mass: 3.16 },
        { size: "H16", shape: "00", A: 2000, length: 2000, mass: 6.32 },
      ],
      foot: [{ member: "TOTAL", mass: 9.58 }],
      says: [{ cell: "N4", message: "the line gives 9.58 for mass, but the bars above add up to 9.48" }],
    },
    {
      rows: [
        { size: "H16", shape: "00", A: 1000, length: 1000, members: 1, each: 4, total: 4 },
        { size: "H16", shape: "00", A: 2000, length: 2000, members: 1, each: 6, total: 6 },
      ],
      foot: [{ member: "TOTAL", total: 11 }],
      says: [{ cell: "F4", message: "the line gives 11 for bars, but the bars above add up to 10" }],
    },
  ],
});

// 1.579 kg/m: 3.16 + 6.32 + 9.47 = 18.95; without the row of 6.32, which a filter hides, 12.63
it.each([
  [12.63, "the line gives 12.63 for mass, which leaves out 1 hidden row: 18.95 with what is hidden"],
  [11.99, "the line gives 11.99 for mass, but the bars above add up to 18.95"],
  [18.95, undefined],
])("should say whether a line of %f leaves out what is hidden", (total, words) => {
  const rows = [3.16, 6.32, 9.47].map((mass, at) => ({
    ...{ size: "H16", shape: "00", A: 1000 * (at + 1), length: 1000 * (at + 1), mass },
  }));
  const [plain] = exampleSheets({ rows, foot: [{ member: "TOTAL", mass: total }] });
  const sheet: Sheet = { ...(plain as Sheet), isHiddenRow: (row) => row === 2 };
  const { findings } = runAudit({ sheets: [sheet], standard: standardNamed(undefined), rules: [rule] });
  expect(findings.map(({ message }) => message)).toEqual(words === undefined ? [] : [words]);
});
