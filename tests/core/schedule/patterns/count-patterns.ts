import { markKey } from "../../../../core/schedule/mark-key";
import type { Cell } from "../../../../core/schedule/sheet";
import { each, firstBar, form, formRow, guesses, type Pattern, plainRow, sheetOf } from "./pattern";

const totals = (cells: readonly Cell[]) =>
  sheetOf(
    ["Mark", "Size", "Total no.", "Length (mm)", "Shape"],
    ...cells.map((cell, index) => [String(index + 1), "H16", cell, 1900, "00"]),
  );
const three: Pattern["cases"][number]["pick"] = ({ bars }) =>
  bars.map(({ members, each: inEach, total }) => [members, inEach, total]);

/** Counts, ditto marks, references, marks. */
export const COUNT_PATTERNS: readonly Pattern[] = [
  {
    number: 26,
    name: "a count as a product or a sum",
    seen: "2x3T20 · 2*12 · 2+3 T20",
    reads: "6, 24 and 5: worked out, never written together as 23",
    trust: "read",
    cases: [
      { sheet: totals(["2x3", "2*12", "2+3", "2 × 3"]), pick: each("total"), right: [6, 24, 5, 6] },
      {
        sheet: sheetOf(
          ["Mark", "Size", "Total no.", "Length (mm)", "Shape"],
          ["1", null, "2x3H20", 1900, "00"],
          ["2", null, "2+3 H20", 1900, "00"],
        ),
        pick: ({ bars }) => bars.map(({ size, total }) => [size?.diameter, total]),
        right: [
          [20, 6],
          [20, 5],
        ],
      },
      {
        sheet: sheetOf(
          ["Mark", "Bar", "Length (mm)", "Shape"],
          ["1", "2x3H20", 1900, "00"],
          ["2", "2+3H20", 1900, "00"],
        ),
        pick: ({ bars }) => bars.map(({ size, total }) => [size?.diameter, total]),
        right: [
          [20, 6],
          [20, 5],
        ],
      },
    ],
  },
  {
    number: 27,
    name: "members times bars in the count",
    seen: "4 x 12",
    reads: "4 members, 12 in each, 48 in all",
    trust: "read",
    cases: [{ sheet: totals(["4 x 12"]), pick: three, right: [[4, 12, 48]] }],
  },
  {
    number: 28,
    name: "the number of members left blank",
    seen: "members blank, 6 in each",
    reads: "one member only where the total equals the number in each; else asked",
    trust: "asks first",
    cases: [
      { sheet: form([plainRow({ members: null, each: 6, total: 6 })]), pick: three, right: [[1, 6, 6]] },
      {
        sheet: form([plainRow({ members: null, each: 6, total: null })]),
        pick: (r) => [three(r), guesses(r)],
        right: [[[null, 6, null]], [["members", "members-of-one", true]]],
      },
      {
        sheet: form([plainRow({ members: null, each: 6, total: null })]),
        options: { confirmed: ["members-of-one"] },
        pick: three,
        right: [[1, 6, null]],
      },
    ],
  },
  {
    number: 29,
    name: "a typed total that is not members times each",
    seen: "2 · 6 · 14",
    reads:
      "all three are kept as typed; the total typed is counted, and what members times each make is told beside it",
    trust: "read",
    cases: [
      { sheet: form([plainRow({ members: 2, each: 6, total: 14 })]), pick: three, right: [[2, 6, 14]] },
    ],
  },
  {
    number: 30,
    name: "a count with its word",
    seen: "8 Nos · 8 no. · 8 EA · 8 pcs · 8 off · 8 set",
    reads: "8; a set or a pair is asked: how many bars it makes",
    trust: "asks first",
    cases: [
      {
        sheet: totals(["8 Nos", "8 no.", "8 EA", "8 pcs", "8 off", "8nos", "8 Stk.", "8根"]),
        pick: (r) => [each("total")(r), guesses(r)],
        right: [[8, 8, 8, 8, 8, 8, 8, 8], []],
      },
      {
        sheet: totals(["8 set", "4 pairs"]),
        pick: (r) => [each("total")(r), guesses(r), r.bars.map(({ problems }) => problems?.[0]?.proposal)],
        right: [
          [null, null],
          [
            ["total", "set-or-pair", true],
            ["total", "set-or-pair", true],
          ],
          [8, 8],
        ],
      },
    ],
  },
  {
    number: 31,
    name: "ditto marks",
    seen: "Do · -do- · ditto · ″",
    reads: "the cell above; a double quote without a digit is no inch sign",
    trust: "read",
    cases: [
      ...["Do", "-do-", "ditto", "″", '"', "〃"].map((mark) => ({
        sheet: form([
          plainRow(),
          plainRow({
            member: mark,
            mark: "2",
            size: mark,
            members: mark,
            each: mark,
            total: mark,
            length: mark,
            shape: mark,
            A: mark,
            B: mark,
          }),
        ]),
        pick: (({ bars }) => {
          const { member, size, members, each: inEach, total, length, shape, dims, problems } = bars[1] ?? {};
          return [member, size?.diameter, members, inEach, total, length, shape, dims, problems];
        }) satisfies Pattern["cases"][number]["pick"],
        right: ["Beam 1", 16, 1, 4, 4, 1900, "21", [1000, 400, 500], null],
      })),
    ],
  },
  {
    number: 32,
    name: "a reference to another row",
    seen: "as above · same as 1",
    reads: "as above is a ditto; a named mark is looked up, proposed and asked",
    trust: "asks first",
    cases: [
      {
        sheet: form([plainRow(), plainRow({ mark: "2", shape: "as above", length: "as above" })]),
        pick: ({ bars }) => [bars[1]?.shape, bars[1]?.length],
        right: ["21", 1900],
      },
      {
        sheet: form([
          plainRow({ mark: "B1" }),
          plainRow({ mark: "2", length: "same as B1" }),
          plainRow({ mark: "3", length: "same as B9" }),
        ]),
        pick: (r) => [each("length")(r), guesses(r), r.bars[1]?.problems?.[0]?.proposal],
        right: [
          [1900, null, null],
          [
            ["length", "same-as", true],
            ["length", "unread", false],
          ],
          1900,
        ],
      },
      {
        sheet: form([plainRow({ mark: "B1" }), plainRow({ mark: "2", length: "same as B1" })]),
        options: { confirmed: ["G3"] },
        pick: each("length"),
        right: [1900, 1900],
      },
    ],
  },
  {
    number: 41,
    name: "bars of a varying set with letters",
    seen: "12a · 12b · 12c",
    reads: "separate bars of the set 12",
    trust: "read",
    cases: [
      {
        sheet: form([
          plainRow({ mark: "12a" }),
          plainRow({ mark: "12b", A: 1050 }),
          plainRow({ mark: "12c", A: 1100 }),
          plainRow({ mark: "13a" }),
        ]),
        pick: ({ bars }) => bars.map(({ mark, setMark }) => [mark, setMark]),
        right: [
          ["12a", "12"],
          ["12b", "12"],
          ["12c", "12"],
          ["13a", null],
        ],
      },
    ],
  },
  {
    number: 52,
    name: "one mark twice",
    seen: "mark 7 with the same dimensions in two rows",
    reads: "both rows are bars; their counts add up",
    trust: "read",
    cases: [
      {
        sheet: form([plainRow({ mark: "7" }), plainRow({ mark: "7", members: 2, total: 8 })]),
        pick: ({ bars }) => [
          bars.map(({ mark }) => mark),
          bars.reduce((sum, { total }) => sum + (total ?? 0), 0),
        ],
        right: [["7", "7"], 12],
      },
    ],
  },
  {
    number: 53,
    name: "marks written differently",
    seen: '01 · 1 · "1 " · B1-01',
    reads: "one mark within a drawing; the typed text is kept for tags",
    trust: "read",
    cases: [
      {
        sheet: form([
          plainRow({ member: "B1", mark: "01" }),
          plainRow({ member: "B1", mark: 1 }),
          plainRow({ member: "B1", mark: "1 " }),
          plainRow({ member: "B1", mark: "B1-01" }),
        ]),
        pick: ({ bars }) => bars.map(({ mark, member }) => [mark, markKey(mark ?? "", member)]),
        right: [
          ["01", "1"],
          ["1", "1"],
          ["1", "1"],
          ["B1-01", "1"],
        ],
      },
    ],
  },
  {
    number: 54,
    name: "a mark that became a number or a date",
    seen: "1E2 that became 100 · 3-1 that became 1 March",
    reads: "1E2 where the cell shows 1.00E+02; 3-1 out of the date",
    trust: "guess shown",
    cases: [
      {
        sheet: {
          ...form([plainRow({ mark: 100 })]),
          shown: (_, column) => (column === 1 ? "1.00E+02" : undefined),
        },
        pick: (r) => [firstBar(r)?.mark, guesses(r)],
        right: ["1E2", [["mark", "number-was-mark", false]]],
      },
      // serial 45717 is 1 March 2025
      {
        sheet: { ...form([plainRow({ mark: 45_717 })]), isDate: (row, column) => row === 1 && column === 1 },
        pick: (r) => [firstBar(r)?.mark, guesses(r)],
        right: ["3-1", [["mark", "date-was-mark", false]]],
      },
    ],
  },
  {
    number: 69,
    name: "a rate where the count belongs",
    seen: "9/m2 · 9 per m2",
    reads: "no count: an area is needed",
    trust: "read",
    cases: [
      {
        sheet: totals(["9/m2", "9 per m2", 4]),
        pick: (r) => [each("total")(r), guesses(r)],
        right: [
          [null, null, 4],
          [
            ["total", "unread", false],
            ["total", "unread", false],
          ],
        ],
      },
    ],
  },
  {
    number: 67,
    name: "layer and face codes",
    seen: "EF · NF · FF · T1 · B2 · U-bar · ABR · alt",
    reads: "layers of the remark; a count on each face stands as typed and is asked",
    trust: "asks first",
    cases: [
      {
        sheet: form(
          ["T1", "B2", "NF", "FF", "ABR", "alt", "U-bar", "T1 & T2"].map((remark, index) =>
            plainRow({ mark: `${index + 1}`, remark }),
          ),
        ),
        pick: (r) => [
          r.bars.map(({ remarks }) =>
            [...(remarks?.layers ?? []), remarks?.alternate ? "alternate" : ""].join(" ").trim(),
          ),
          guesses(r),
        ],
        right: [["T1", "B2", "NF", "FF", "ABR alternate", "alternate", "U-BAR", "T1 T2"], []],
      },
      {
        sheet: form([plainRow({ remark: "EF" })]),
        pick: (r) => [firstBar(r)?.remarks?.layers, firstBar(r)?.total, guesses(r)],
        right: [["EF"], 4, [["remark", "each-face", true]]],
      },
    ],
  },
  {
    number: 68,
    name: "left and right hand",
    seen: "L.H. · R.H. · opp. hand · 2 L.H. + 2 R.H.",
    reads: "the hand of the shape; both are in the count",
    trust: "read",
    cases: [
      {
        sheet: form(
          ["L.H.", "RH", "opp. hand", "2 L.H. + 2 R.H.", "HS bars"].map((remark, index) =>
            plainRow({ mark: `${index + 1}`, remark }),
          ),
        ),
        pick: ({ bars }) => bars.map(({ remarks, total }) => [remarks?.hand ?? null, total]),
        right: [
          ["left", 4],
          ["right", 4],
          ["opposite", 4],
          ["opposite", 4],
          [null, 4],
        ],
      },
    ],
  },
  {
    number: 48,
    name: "hidden rows and columns",
    seen: "a filtered list",
    reads: "read and counted, which stands beside each total; the sheet asks whether they should",
    trust: "asks first",
    cases: [
      {
        sheet: {
          ...form([plainRow(), plainRow({ mark: "2" })]),
          isHiddenRow: (row) => row === 2,
          isHiddenColumn: (column) => column === 6,
        },
        pick: (r) => [
          each("hidden")(r),
          r.tables[0]?.columns.get("length")?.hidden,
          r.guesses?.map(({ guess, asks }) => [guess, asks]),
        ],
        right: [
          [false, true],
          true,
          [
            ["hidden-rows", true],
            ["hidden-columns", false],
          ],
        ],
      },
    ],
  },
  {
    number: 49,
    name: "rows struck through",
    seen: "a row in struck-through type",
    reads: "a deleted bar, marked so and not to be cut",
    trust: "guess shown",
    cases: [
      {
        sheet: { ...form([plainRow(), plainRow({ mark: "2" })]), isStruckThrough: (row) => row === 1 },
        pick: (r) => [each("struckThrough")(r), r.guesses?.map(({ guess, asks }) => [guess, asks])],
        right: [[true, false], [["struck-rows", false]]],
      },
    ],
  },
  {
    number: 50,
    name: "coloured rows",
    seen: "yellow rows without a legend",
    reads: "the colour is shown and the sheet asks what it means",
    trust: "asks first",
    cases: [
      {
        sheet: {
          ...form([plainRow(), plainRow({ mark: "2" }), formRow({})]),
          fill: (row) => (row === 2 ? "#FFFF00" : undefined),
        },
        pick: (r) => [each("fill")(r), r.guesses?.map(({ guess, asks }) => [guess, asks])],
        right: [[null, "#FFFF00"], [["coloured-rows", true]]],
      },
    ],
  },
];
