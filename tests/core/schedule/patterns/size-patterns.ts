import type { Cell } from "../../../../core/schedule/sheet";
import { each, firstBar, form, guesses, type Pattern, plainRow, sheetOf, sizes } from "./pattern";

const sized = (cells: readonly Cell[]) =>
  sheetOf(
    ["Mark", "Size", "Total", "Length (mm)", "Shape"],
    ...cells.map((cell, index) => [String(index + 1), cell, 4, 1900, "00"]),
  );
const placing = (cells: readonly Cell[]) =>
  sheetOf(
    ["Qty", "Size", "Length", "Mark", "Type"],
    ...cells.map((cell, index) => [4, cell, "10'-6\"", `${index + 1}`, null]),
  );

/** Sizes in every national spelling, call-offs, grades. */
export const SIZE_PATTERNS: readonly Pattern[] = [
  {
    number: 20,
    name: "letters before the size",
    seen: "N16 · T16 · H16 · B16 · Y16 · D16 · HD16 · R10 · X16 · S12",
    reads:
      "digits are the diameter, letters the bar type of the standard in force; a letter it does not have is said",
    trust: "guess shown",
    cases: [
      {
        sheet: sized(["H16", "B16", "R10", "X16"]),
        pick: (r) => [sizes(r), each("sizeTyped")(r)],
        right: [
          ["H|16", "B|16", "R|10", "X|16"],
          ["H16", "B16", "R10", "X16"],
        ],
      },
      {
        sheet: sized(["N16", "N 16", "R10"]),
        standard: "AS3600:2018",
        pick: sizesByNumber,
        right: ["N 16", "N 16", "R 10"],
      },
      {
        sheet: sized(["D16", "HD16", "R10"]),
        standard: "NZS3109:1997",
        pick: sizesByNumber,
        right: ["D 16", "HD 16", "R 10"],
      },
      {
        sheet: sized(["Y16", "R10", "Y 25"]),
        standard: "SANS282:2011",
        pick: sizesByNumber,
        right: ["Y 16", "R 10", "Y 25"],
      },
      {
        sheet: sized(["N16", "H13"]),
        pick: (r) => [sizesByNumber(r), guesses(r)],
        right: [["N 16", "H 13"], [["size", "size-prefix", false]]],
      },
      {
        sheet: sheetOf(
          ["Mark", "Type", "Size", "Total", "Length (mm)", "Shape"],
          ["1", "H", 16, 4, 1900, "00"],
          ["2", "R", "10", 4, 1900, "00"],
        ),
        pick: sizes,
        right: ["H|16", "R|10"],
      },
    ],
  },
  {
    number: 21,
    name: "bar numbers, also in soft metric",
    seen: "#5 · No.5 · 5 · #16 beside #13",
    reads: "#5 is 15.9 mm; a list with #13, #16, #19 is soft metric, so #16 is #5 and #10 is #3",
    trust: "guess shown",
    cases: [
      {
        sheet: placing(["#5", "No.5", 5, "#10"]),
        standard: "ACI318:2019",
        pick: (r) => [sizes(r), guesses(r)],
        right: [["|#5", "|#5", "|#5", "|#10"], []],
      },
      {
        sheet: placing(["#13", "#16", "#19", "#10"]),
        standard: "ACI318:2019",
        pick: sizes,
        right: ["|#4", "|#5", "|#6", "|#3"],
      },
    ],
  },
  {
    number: 22,
    name: "metric bar designations",
    seen: "15M · 16M",
    reads: "15M is a bar of 16.0 mm; 16M is none, so 15M is proposed and asked",
    trust: "asks first",
    cases: [
      {
        sheet: sized(["15M", "16M"]),
        standard: "CSA-A23.1:2019",
        pick: (r) => [
          r.bars.map(({ size }) => size?.diameter ?? null),
          guesses(r),
          firstBar({ ...r, bars: r.bars.slice(1) })?.problems?.[0]?.proposal,
        ],
        right: [[16, null], [["size", "size-not-made", true]], "15M"],
      },
      {
        sheet: sized(["16M"]),
        standard: "CSA-A23.1:2019",
        options: { confirmed: ["size-not-made"] },
        pick: sizes,
        right: ["|15M"],
      },
    ],
  },
  {
    number: 23,
    name: "diameter signs, lost ones among them",
    seen: "phi16 · Ø16 · ∅16 · f16 · F16 · O16 · 16ø · dia 16 · 16 mm · 16#",
    reads: "16 mm; f and O come from a symbol font that was lost, and are said",
    trust: "guess shown",
    cases: [
      {
        sheet: sized(["phi16", "Ø16", "∅16", "16ø", "dia 16", "16 mm", "16#", "φ16", "Φ 16", "16mm dia"]),
        pick: (r) => [r.bars.map(({ size }) => size?.bar?.size), guesses(r)],
        right: [Array.from({ length: 10 }, () => "16"), []],
      },
      {
        sheet: sized(["f16", "F16", "O16"]),
        pick: (r) => [r.bars.map(({ size }) => size?.bar?.size), guesses(r)],
        right: [
          ["16", "16", "16"],
          [
            ["size", "size-from-symbol", false],
            ["size", "size-from-symbol", false],
            ["size", "size-from-symbol", false],
          ],
        ],
      },
    ],
  },
  {
    number: 24,
    name: "a size with its spacing",
    seen: "10mm dia c/c 150 · T10-150 · H10@150 c/c B1",
    reads: "size 10 at 150 mm; 150 is no count, and the count stays open",
    trust: "read",
    cases: ["10mm dia c/c 150", "T10-150", "H10-150", "H10@150 c/c B1", "H10 @ 150"].map((cell) => ({
      sheet: sheetOf(["Mark", "Size", "Total", "Length (mm)", "Shape"], ["1", cell, null, 1900, "00"]),
      pick: ({ bars }) =>
        bars.map(({ size, spacing, total, mark }) => [size?.diameter, spacing, total, mark]),
      right: [[10, 150, null, "1"]],
    })),
  },
  {
    number: 25,
    name: "a call-off in one cell",
    seen: "25T16-03-200 T1",
    reads: "25 bars, size T16, mark 03, 200 mm apart, outer top layer",
    trust: "read",
    cases: [
      {
        sheet: sheetOf(
          ["Reinforcement", "Length (mm)", "Shape", "Remarks"],
          ["25T16-03-200 T1", 1900, "00", null],
          ["12H20-04", 1900, "00", null],
        ),
        pick: ({ bars }) =>
          bars.map(({ size, mark, total, spacing, remarks }) => [
            size?.diameter,
            mark,
            total,
            spacing,
            remarks?.layers ?? [],
          ]),
        right: [
          [16, "03", 25, 200, ["T1"]],
          [20, "04", 12, null, []],
        ],
      },
    ],
  },
  {
    number: 59,
    name: "the mass of a metre where the size belongs",
    seen: "0.888 under Dia",
    reads: "12 mm is proposed and asked",
    trust: "asks first",
    cases: [
      {
        sheet: sized([0.888, "2.466"]),
        pick: (r) => [each("size")(r), guesses(r), r.bars.map(({ problems }) => problems?.[0]?.proposal)],
        right: [
          [null, null],
          [
            ["size", "size-from-mass", true],
            ["size", "size-from-mass", true],
          ],
          ["12", "20"],
        ],
      },
    ],
  },
  {
    number: 70,
    name: "a grade in a note only",
    seen: "All bars Fe500D · Steel grade B500C throughout",
    reads: "the grade of every bar that names none; a bar type in the size comes first",
    trust: "guess shown",
    cases: [
      {
        sheet: sheetOf(
          ["Steel grade B500C throughout"],
          ["Mark", "Size", "Total", "Length (mm)", "Shape"],
          ["1", 16, 4, 1900, "00"],
          ["2", "H16", 4, 1900, "00"],
        ),
        pick: (r) => [each("grade")(r), r.guesses?.map(({ guess }) => guess)],
        right: [["B500C", null], ["grade-from-note"]],
      },
      {
        sheet: sheetOf(
          ["Bar mark", "Dia", "Total", "Cutting length (m)", "Shape"],
          ["1", 16, 4, 1.9, null],
          [],
          ["Note: all bars Fe500D"],
        ),
        standard: "IS2502:1963",
        pick: each("grade"),
        right: ["Fe 500D"],
      },
      { sheet: sized([16, "H16"]), options: { grade: "B500B" }, pick: each("grade"), right: ["B500B", null] },
    ],
  },
  {
    number: 51,
    name: "revision letters",
    seen: "mark 3 at revision A and again at B · SUPERSEDED in the remarks",
    reads: "the latest letter of a mark wins; the earlier row is superseded",
    trust: "read",
    cases: [
      {
        sheet: form([
          plainRow({ mark: "3", rev: "A" }),
          plainRow({ mark: "4", rev: "-" }),
          plainRow({ mark: "3", rev: "B" }),
          plainRow({ mark: "5", rev: "A", remark: "SUPERSEDED" }),
        ]),
        pick: ({ bars }) => bars.map(({ mark, revision, superseded }) => [mark, revision, superseded]),
        right: [
          ["3", "A", true],
          ["4", null, false],
          ["3", "B", false],
          ["5", "A", true],
        ],
      },
    ],
  },
];

function sizesByNumber(reading: Parameters<Pattern["cases"][number]["pick"]>[0]): string[] {
  return reading.bars.map(({ size }) => `${size?.prefix} ${size?.diameter}`);
}
