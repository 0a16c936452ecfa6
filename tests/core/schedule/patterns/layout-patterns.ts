import { sheetFromRows } from "../../../../core/schedule/sheet";
import { each, FORM_HEADER, firstBar, form, formRow, type Pattern, plainRow, sheetOf } from "./pattern";

const blanks = (count: number) => Array.from({ length: count }, () => []);

/** Headers, sub-headers, totals and what else stands between bars. */
export const LAYOUT_PATTERNS: readonly Pattern[] = [
  {
    number: 1,
    name: "a header of merged cells over three rows",
    seen: "Bar bending schedule / Bar · Number · Dimensions / mark · size · of members · in each · total · A · B · C",
    reads:
      "the set of rows with at least four known column words is the header; stacked cells are joined from the top down",
    trust: "read",
    cases: [
      {
        sheet: {
          ...sheetOf(
            ["Bar bending schedule, pad footings"],
            ["Bar", null, "Number", null, null, "Length mm", "Shape code", "Dimensions mm"],
            ["mark", "size", "of members", "in each", "total", null, null, "A", "B", "C"],
            ["1", "H16", 2, 4, 8, 1900, 21, 1000, 400, 500],
          ),
          merges: [
            { top: 0, left: 0, bottom: 0, right: 9 },
            { top: 1, left: 0, bottom: 1, right: 1 },
            { top: 1, left: 2, bottom: 1, right: 4 },
            { top: 1, left: 5, bottom: 2, right: 5 },
            { top: 1, left: 6, bottom: 2, right: 6 },
            { top: 1, left: 7, bottom: 1, right: 9 },
          ],
        },
        pick: ({ tables, rowClasses, bars }) => [
          [...(tables[0]?.columns.keys() ?? [])].join(" "),
          rowClasses.join(" "),
          bars[0]?.dims,
        ],
        right: [
          "mark size members each total length shape A B C",
          "note heading heading bar",
          [1000, 400, 500],
        ],
      },
    ],
  },
  {
    number: 2,
    name: "a header split over two rows",
    seen: "No. of / mbrs · Length of / each bar / mm",
    reads: "the halves are joined: number of members, length of each bar in mm",
    trust: "read",
    cases: [
      {
        sheet: sheetOf(
          ["Bar", "Type &", "No. of", "No. in", "Total", "Length of", "Shape"],
          ["mark", "size", "mbrs", "each", "no.", "each bar", "code"],
          [null, null, null, null, null, "mm", null],
          ["1", "H16", 2, 4, 8, 1900, "00"],
        ),
        pick: ({ tables, rowClasses }) => [
          [...(tables[0]?.columns.values() ?? [])]
            .map(({ kind, unit }) => `${kind} ${unit ?? ""}`.trim())
            .join(", "),
          rowClasses.join(" "),
        ],
        right: ["mark, size, members, each, total, length mm, shape", "heading heading heading bar"],
      },
    ],
  },
  {
    number: 3,
    name: "the header repeated on every page",
    seen: "Member · Bar mark · Type and size … again in row 40",
    reads: "a row of which at least 80 % equals the header is a heading, not a bar",
    trust: "read",
    cases: [
      {
        sheet: form([plainRow(), [...FORM_HEADER.slice(0, 13), "Rev"], plainRow({ mark: "2" })]),
        pick: ({ rowClasses, bars, tables }) => [rowClasses.join(" "), bars.length, tables.length],
        right: ["heading bar heading bar", 2, 1],
      },
    ],
  },
  {
    number: 4,
    name: "a sub-header that sets the member and its number",
    seen: "BEAM B1 (6 Nos) · 3 off Pad P1 · COLUMN C2 x 4 · WALL W1 - 2 no.",
    reads: "the member of the rows below, made so many times",
    trust: "read",
    cases: [
      ["BEAM B1 (6 Nos)", "BEAM B1", 6],
      ["3 off Pad P1", "Pad P1", 3],
      ["COLUMN C2 x 4", "COLUMN C2", 4],
      ["WALL W1 - 2 no.", "WALL W1", 2],
    ].map(([title, member, members]) => ({
      sheet: form([
        formRow({ member: title as string }),
        plainRow({ member: null, members: null, total: null }),
      ]),
      pick: (reading) => [
        reading.rowClasses[1],
        firstBar(reading)?.member,
        firstBar(reading)?.members,
        firstBar(reading)?.problems,
      ],
      right: ["heading", member, members, null],
    })),
  },
  {
    number: 5,
    name: "a member written once",
    seen: "Beam 1 over three rows, merged or blank below",
    reads: "carried down to the next member or subtotal",
    trust: "read",
    cases: [
      {
        sheet: form([
          plainRow(),
          plainRow({ member: null, mark: "2" }),
          plainRow({ member: "Beam 2", mark: "3" }),
          formRow({ member: "Sub total", total: 12 }),
          plainRow({ member: null, mark: "4" }),
        ]),
        pick: each("member"),
        right: ["Beam 1", "Beam 1", "Beam 2", null],
      },
      {
        sheet: {
          ...form([
            plainRow({ members: 3, total: 12 }),
            plainRow({ member: null, members: null, total: 12, mark: "2" }),
          ]),
          merges: [
            { top: 1, left: 0, bottom: 2, right: 0 },
            { top: 1, left: 3, bottom: 2, right: 3 },
          ],
        },
        pick: ({ bars }) => bars.map(({ member, members }) => [member, members]),
        right: [
          ["Beam 1", 3],
          ["Beam 1", 3],
        ],
      },
    ],
  },
  {
    number: 6,
    name: "blank rows inside the table",
    seen: "one to nineteen blank rows; twenty or more, then a distribution list",
    reads:
      "blank rows are passed over; after twenty the table has ended, but a whole bar row below it is still read",
    trust: "read",
    cases: [
      {
        sheet: form([plainRow(), ...blanks(19), plainRow({ mark: "2" })]),
        pick: ({ bars, rowClasses }) => [bars.length, rowClasses.filter((one) => one === "blank").length],
        right: [2, 19],
      },
      {
        sheet: form([plainRow(), ...blanks(22), [null, "Copy to", "site"], plainRow({ mark: "2" })]),
        pick: ({ bars, rowClasses }) => [bars.length, rowClasses.slice(23).join(" ")],
        right: [2, "blank note bar"],
      },
    ],
  },
  {
    number: 7,
    name: "sums between the bars",
    seen: "TOTAL · Sub total · C/F · B/F · Summary",
    reads: "never bars; kept as totals to be checked against the bars",
    trust: "read",
    cases: [
      {
        sheet: form([
          plainRow(),
          formRow({ member: "Sub total", total: 4 }),
          formRow({ mark: "C/F", total: 4 }),
          formRow({ mark: "B/F", total: 4 }),
          plainRow({ mark: "2" }),
          formRow({ member: "TOTAL", total: 8 }),
          formRow({ size: "Total weight", length: "12.5 kg", total: "8" }),
          formRow({ member: "Summary", total: 8 }),
        ]),
        pick: ({ rowClasses, totals }) => [
          rowClasses.slice(1).join(" "),
          totals.map(({ kind, cells }) => `${kind} ${cells[0]?.value}`).join(", "),
        ],
        right: [
          "bar total total total bar total total total",
          "subtotal 4, carried 4, carried 4, total 8, total 8, total 8",
        ],
      },
    ],
  },
  {
    number: 8,
    name: "a weight summary under the list",
    seen: "Weight by size · 8 · 10 · 12 · 16 / kg · 12.1 · …, or Dia · Unit weight · Weight downwards",
    reads: "a block of sums of its own, not bars",
    trust: "read",
    cases: [
      {
        sheet: form([plainRow(), [], ["Weight by size", null, 8, 10, 12, 16], ["kg", null, 0, 0, 0, 12.0]]),
        pick: ({ bars, rowClasses, summaries }) => [
          bars.length,
          rowClasses.slice(3).join(" "),
          summaries?.[0]?.sizes.map(({ size }) => size),
          summaries?.[0]?.rows[0]?.cells.map(({ value }) => value),
        ],
        right: [1, "heading total", ["8", "10", "12", "16"], [0, 0, 0, 12]],
      },
      {
        sheet: form([
          plainRow(),
          [],
          ["Dia", "Total length (m)", "Unit weight (kg/m)", "Weight (kg)"],
          [16, 7.6, 1.579, 12.0],
          [20, 0, 2.466, 0],
        ]),
        pick: ({ bars, rowClasses, summaries }) => [
          bars.length,
          rowClasses.slice(3).join(" "),
          summaries?.[0]?.rows.length,
        ],
        right: [1, "heading total total", 2],
      },
    ],
  },
  {
    number: 55,
    name: "several schedules side by side, or one below another",
    seen: "Bar mark · Size · Total · Length · Shape | Bar mark · Size · Total · Length · Shape",
    reads: "one schedule for each run of header words",
    trust: "read",
    cases: [
      {
        sheet: sheetOf(
          ["Mark", "Size", "Total", "Length", "Shape", null, "Mark", "Size", "Total", "Length", "Shape"],
          ["1", "H16", 4, 1900, 21, null, "11", "H20", 6, 2500, "00"],
          ["2", "H12", 4, 1900, 21, null, null, null, null, null, null],
          [null, null, null, null, null, null, "12", "H25", 2, 3000, "00"],
        ),
        pick: ({ tables, bars, rowClasses }) => [
          tables.map(({ left, right }) => [left, right]),
          bars.map(({ mark, row }) => `${mark} in ${row}`),
          rowClasses.join(" "),
        ],
        right: [
          [
            [0, 4],
            [6, 10],
          ],
          ["1 in 1", "11 in 1", "2 in 2", "12 in 3"],
          "heading bar bar bar",
        ],
      },
      {
        sheet: sheetOf(
          ["Mark", "Size", "Total", "Length (mm)", "Shape"],
          ["1", "H16", 4, 1900, 21],
          [],
          ["Shape", "Length (m)", "Qty", "Dia", "Bar mark"],
          ["00", 2.5, 6, 20, "11"],
        ),
        pick: ({ tables, bars }) => [tables.length, bars.map(({ mark, length }) => [mark, length])],
        right: [
          2,
          [
            ["1", 1900],
            ["11", 2500],
          ],
        ],
      },
    ],
  },
  {
    number: 56,
    name: "one sheet for each member",
    seen: "a sheet called Pad P1 without a member column",
    reads: "the sheet's name is the member; a name like Sheet1 is not",
    trust: "guess shown",
    cases: [
      {
        sheet: form([plainRow({ member: null })], "Pad P1"),
        pick: ({ bars, guesses }) => [bars[0]?.member, guesses?.map(({ guess }) => guess)],
        right: ["Pad P1", ["member-from-sheet"]],
      },
      { sheet: form([plainRow({ member: null })], "Sheet1"), pick: each("member"), right: [null] },
    ],
  },
  {
    number: 57,
    name: "drawing and revision in a title block or the foot",
    seen: "Drawing No. · S-101 · Rev: C above the table or below it",
    reads: "kept as facts of the sheet",
    trust: "read",
    cases: [
      {
        sheet: sheetFromRows("Sheet1", [
          ["Drawing No.", "S-101", null, "Rev: C"],
          FORM_HEADER,
          plainRow(),
          ["Job no", 4711],
        ]),
        pick: ({ titleFacts, rowClasses }) => [[...(titleFacts ?? [])], rowClasses.join(" ")],
        right: [
          [
            ["drawing no", "S-101"],
            ["rev", "C"],
            ["job no", "4711"],
          ],
          "note heading bar note",
        ],
      },
    ],
  },
  {
    number: 60,
    name: "a wastage line",
    seen: "Wastage +3 % · Add for rolling margin 2.5 %",
    reads: "no bar and no sum of bars: a note",
    trust: "read",
    cases: [
      {
        sheet: form([
          plainRow(),
          formRow({ member: "Wastage +3 %", total: 0.4 }),
          formRow({ member: "Add for rolling margin 2.5 %", total: 0.3 }),
        ]),
        pick: ({ rowClasses, bars, totals }) => [rowClasses.slice(2).join(" "), bars.length, totals.length],
        right: ["note note", 1, 0],
      },
    ],
  },
  {
    number: 61,
    name: "dimension columns in another order",
    seen: "columns B, A, C",
    reads: "each dimension goes by the letter over it, not by its place",
    trust: "read",
    cases: [
      {
        sheet: sheetOf(
          ["Mark", "Size", "Total", "Length", "Shape", "B", "A", "C"],
          ["1", "H16", 4, 1900, 21, 400, 1000, 500],
        ),
        pick: each("dims"),
        right: [[1000, 400, 500]],
      },
    ],
  },
  {
    number: 62,
    name: "a list pasted out of a page, all in one cell",
    seen: "1   H16   4   1900   21   1000   400   500",
    reads: "split at gaps of two blanks and more; every field then belongs to that one cell",
    trust: "read",
    cases: [
      {
        sheet: sheetOf(
          ["Mark  Size  Total no  Length  Shape  A     B    C"],
          ["1     H16   4         1900    21     1000  400  500"],
          ["2     H12   6         1 150   11     500   700"],
          ["3     H12   2         1150    11     500   700"],
        ),
        pick: ({ bars, pasted, tables }) => [
          bars.map(({ mark, total, length, dims }) => [mark, total, length, ...dims].join(" ")),
          pasted,
          tables[0]?.columns.get("length")?.column,
        ],
        right: [["1 4 1900 1000 400 500", "2 6 1150 500 700", "3 2 1150 500 700"], true, 0],
      },
    ],
  },
  {
    number: 65,
    name: "a sheet from right to left",
    seen: "الشكل · الطول · العدد · القطر · رقم السيخ",
    reads: "columns by their words; the order on the screen does not matter",
    trust: "read",
    cases: [
      {
        sheet: sheetOf(
          ["رقم السيخ", "القطر", "العدد", "الطول", "الشكل", "A", "B", "ملاحظات"],
          ["١", "١٦", "٤", "١١٥٠", "١١", "٥٠٠", "٧٠٠", null],
        ),
        pick: ({ bars }) =>
          bars.map(({ mark, size, total, length, shape, dims }) => [
            mark,
            size?.diameter,
            total,
            length,
            shape,
            ...dims,
          ]),
        right: [["1", 16, 4, 1150, "11", 500, 700]],
      },
    ],
  },
  {
    number: 66,
    name: "a note between the bars",
    seen: "2 layers · stagger 50 %",
    reads: "a remark on the bar above it",
    trust: "read",
    cases: ["2 layers", "stagger 50 %"].map((note) => ({
      sheet: form([plainRow(), formRow({ mark: note }), plainRow({ mark: "2" })]),
      pick: ({ bars, rowClasses }) => [rowClasses[2], bars.map(({ remark, member }) => [remark, member])],
      right: [
        "note",
        [
          [note, "Beam 1"],
          [null, "Beam 1"],
        ],
      ],
    })),
  },
];
