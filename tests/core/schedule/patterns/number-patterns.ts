import type { Cell } from "../../../../core/schedule/sheet";
import { each, firstBar, form, guesses, type Pattern, plainRow, sheetOf } from "./pattern";

const lengths = (cells: readonly Cell[], header = "Length", unit = "mm") =>
  sheetOf(
    ["Mark", "Size", "Total no.", `${header} (${unit})`, "Shape"],
    ...cells.map((cell, index) => [String(index + 1), "H16", 4, cell, "00"]),
  );
const openLengths = (cells: readonly Cell[], size: Cell = "H16") =>
  sheetOf(
    ["Mark", "Size", "Qty", "Length", "Shape"],
    ...cells.map((cell, index) => [String(index + 1), size, 4, cell, size === "H16" ? "00" : null]),
  );
const round = (numbers: readonly (number | null)[]) =>
  numbers.map((one) => (one === null ? null : Math.round(one * 100) / 100));

/** Numbers, units, feet and inches, and what a spreadsheet makes of them. */
export const NUMBER_PATTERNS: readonly Pattern[] = [
  {
    number: 9,
    name: "numbers typed as text",
    seen: '\'1250 · "1250 " · a no-break space before it',
    reads: "trimmed and read",
    trust: "read",
    cases: [
      {
        sheet: lengths(["'1250", "1250  ", "\u00a01250", "\u200b1250"]),
        pick: each("length"),
        right: [1250, 1250, 1250, 1250],
      },
    ],
  },
  {
    number: 10,
    name: "a comma in the number",
    seen: "1,250 · 1,25",
    reads: "1250 mm where three digits follow; 1.25 m where the column writes decimals with a comma",
    trust: "read",
    cases: [
      { sheet: lengths(["1,250", "12,000"]), pick: each("length"), right: [1250, 12_000] },
      {
        sheet: lengths(["1,25", "3,4", "1,250"], "Einzellänge", "m"),
        pick: each("length"),
        right: [1250, 3400, 1250],
      },
      { sheet: openLengths(["1,25", "3,450", "11,5"]), pick: each("length"), right: [1250, 3450, 11_500] },
      { sheet: lengths(["1.250,00", "2.500,00", "900,00"]), pick: each("length"), right: [1250, 2500, 900] },
    ],
  },
  {
    number: 11,
    name: "a blank or thin space between thousands",
    seen: "1 250 · 1\u2009250 · 1'250",
    reads: "1250",
    trust: "read",
    cases: [
      {
        sheet: lengths(["1 250", "1\u2009250", "1\u202f250", "1'250"]),
        pick: each("length"),
        right: [1250, 1250, 1250, 1250],
      },
    ],
  },
  {
    number: 12,
    name: "metres in a length column without a unit",
    seen: "3.450 among others from 2 to 12",
    reads: "metres for the whole column by its middle value, and said so",
    trust: "guess shown",
    cases: [
      {
        sheet: openLengths([3.45, 2.1, 11.9, "6.000"]),
        pick: ({ bars, tables, guesses: shown }) => [
          bars.map(({ length }) => length),
          tables[0]?.columns.get("length")?.unit,
          shown?.map(({ guess, asks }) => [guess, asks]),
        ],
        right: [[3450, 2100, 11_900, 6000], "m", [["unit-of-column", false]]],
      },
      {
        sheet: lengths([3.45, 2.1, 11.9]),
        pick: ({ bars, guesses: shown }) => [
          bars.map(({ length }) => length),
          shown?.map(({ guess, asks }) => [guess, asks]),
        ],
        right: [[null, null, null], [["unit-of-column", true]]],
      },
      {
        sheet: lengths([3.45, 2.1, 11.9]),
        options: { confirmed: ["unit-of-column"] },
        pick: each("length"),
        right: [3450, 2100, 11_900],
      },
    ],
  },
  {
    number: 13,
    name: "metres and millimetres mixed in one column",
    seen: "1900 · 1.9 · 2400",
    reads: "by the row where its dimensions fit only one of them; else asked",
    trust: "asks first",
    cases: [
      {
        sheet: form([plainRow(), plainRow({ mark: "2", length: 1.9 }), plainRow({ mark: "3" })]),
        pick: (reading) => [each("length")(reading), guesses(reading)],
        right: [[1900, 1900, 1900], [["length", "unit-of-cell", false]]],
      },
      {
        sheet: form([
          plainRow(),
          plainRow({ mark: "2", length: 1.9, shape: "00", A: null, B: null, C: null }),
          plainRow({ mark: "3" }),
        ]),
        pick: (reading) => [each("length")(reading), guesses(reading)],
        right: [[1900, null, 1900], [["length", "unit-of-cell", true]]],
      },
    ],
  },
  {
    number: 14,
    name: "feet, inches and a fraction",
    seen: "3'-4 1/2\"",
    reads: "40.5 in, which is 1028.7 mm",
    trust: "read",
    cases: [
      {
        sheet: openLengths(["3'-4 1/2\"", "20'-0\""], "#5"),
        standard: "ACI318:2019",
        pick: (r) => round(each("length")(r)),
        right: [1028.7, 6096],
      },
    ],
  },
  {
    number: 15,
    name: "feet and inches in other spellings",
    seen: "3-4½ · 3'4.5\" · 3' 4 1/2 · 3′ 4½″ · 3ft 4in · 3 ft 4.5 in",
    reads: "the same length, with typographic primes and fractions",
    trust: "read",
    cases: [
      {
        sheet: openLengths(
          ["3-4½", "3'4.5\"", "3' 4 1/2", "3′ 4½″", "3’-4½”", "3 ft 4.5 in", "3ft 4in", "3'", '40 1/2"'],
          "#5",
        ),
        standard: "ACI318:2019",
        pick: (r) => round(each("length")(r)),
        right: [1028.7, 1028.7, 1028.7, 1028.7, 1028.7, 1028.7, 1016, 914.4, 1028.7],
      },
    ],
  },
  {
    number: 16,
    name: "a bare number among feet and inches",
    seen: '0\'-8" · 8" · 8',
    reads: "8 in for the first two; the bare 8 is inches or feet, so it is asked",
    trust: "asks first",
    cases: [
      {
        sheet: openLengths(["0'-8\"", '8"', 8], "#5"),
        standard: "ACI318:2019",
        pick: (r) => [round(each("length")(r)), guesses(r)],
        right: [[203.2, 203.2, null], [["length", "feet-or-inches", true]]],
      },
    ],
  },
  {
    number: 17,
    name: "feet and inches with a dash",
    seen: "12-06",
    reads: "12 ft 6 in in a list of feet and inches; no length in a list of millimetres",
    trust: "read",
    cases: [
      {
        sheet: openLengths(["12-06", "9-11"], "#5"),
        standard: "ACI318:2019",
        pick: (r) => round(each("length")(r)),
        right: [3810, 3022.6],
      },
      {
        sheet: lengths(["12-06", 1900]),
        pick: (r) => [each("length")(r), guesses(r)],
        right: [[null, 1900], [["length", "unread", false]]],
      },
    ],
  },
  {
    number: 18,
    name: "feet and inches that a spreadsheet turned into a date",
    seen: "3-4 that became 4 March",
    reads: "3 ft 4 in is proposed and asked; in a list of millimetres it is unread",
    trust: "asks first",
    cases: [
      // serial 45720 is 4 March 2025 in the 1900 date system of ISO/IEC 29500
      {
        sheet: dated(openLengths(["3-5", 45_720], "#5"), 45_720),
        standard: "ACI318:2019",
        pick: (r) => [round(each("length")(r)), proposals(r)],
        right: [[1041.4, null], [["date-was-fraction", 1016, true]]],
      },
      {
        sheet: dated(openLengths(["3-5", 45_720], "#5"), 45_720),
        standard: "ACI318:2019",
        options: { confirmed: ["D3"] },
        pick: (r) => round(each("length")(r)),
        right: [1041.4, 1016],
      },
      {
        sheet: dated(lengths([45_720, 1900]), 45_720),
        pick: (r) => [each("length")(r), guesses(r)],
        right: [[null, 1900], [["length", "unread", false]]],
      },
    ],
  },
  {
    number: 19,
    name: "a fraction that a spreadsheet turned into a date",
    seen: "1/2 that became 2 January",
    reads: "1/2 in is proposed and asked",
    trust: "asks first",
    cases: [
      // serial 45659 is 2 January 2025
      {
        sheet: dated(openLengths([40.5, 45_659, 20], "#5"), 45_659),
        standard: "ACI318:2019",
        pick: (r) => [round(each("length")(r)), proposals(r)],
        right: [[1028.7, null, 508], [["date-was-fraction", 12.7, true]]],
      },
    ],
  },
  {
    number: 37,
    name: "a dimension with its own unit",
    seen: '300mm · 0.3m · 30cm · 12"',
    reads: "converted, whatever the column's unit",
    trust: "read",
    cases: [
      {
        sheet: form([plainRow({ A: "300mm", B: "0.3m", C: "30 cm", D: '12"' })]),
        pick: each("dims"),
        right: [[300, 300, 300, 304.8]],
      },
    ],
  },
  {
    number: 38,
    name: "a dimension in brackets",
    seen: "(450), typed or as a number format over -450",
    reads: "the free dimension of the form, 450, never minus 450",
    trust: "read",
    cases: [
      {
        sheet: form([plainRow({ B: "(450)" })]),
        pick: (r) => [firstBar(r)?.dims, firstBar(r)?.freeDims, guesses(r)],
        right: [[1000, 450, 500], "B", []],
      },
      {
        sheet: {
          ...form([plainRow({ B: -450 })]),
          shown: (row, column) => (row === 1 && column === 9 ? "(450)" : undefined),
        },
        pick: (r) => [firstBar(r)?.dims, firstBar(r)?.freeDims, guesses(r)],
        right: [[1000, 450, 500], "B", [["B", "free-by-format", false]]],
      },
    ],
  },
  {
    number: 39,
    name: "a negative dimension",
    seen: "-450",
    reads: "nothing until it is confirmed; 450 is asked about",
    trust: "asks first",
    cases: [
      {
        sheet: form([plainRow({ B: -450, C: "-500" })]),
        pick: (r) => [firstBar(r)?.dims, firstBar(r)?.freeDims, guesses(r)],
        right: [
          [1000],
          "",
          [
            ["B", "negative-dimension", true],
            ["C", "negative-dimension", true],
          ],
        ],
      },
    ],
  },
  {
    number: 42,
    name: "a radius with its letter",
    seen: "R=1500 · R1500 under E/R",
    reads: "the radius, not dimension E",
    trust: "read",
    cases: ["R=1500", "R1500", "R 1500", 1500].map((cell) => ({
      sheet: form([plainRow({ shape: "12", C: null, E: cell })]),
      pick: (r) => [firstBar(r)?.dims, firstBar(r)?.radius],
      right: [[1000, 400], 1500],
    })),
  },
  {
    number: 43,
    name: "a length typed over the formula",
    seen: "2000 where the dimensions make 1900",
    reads: "both are kept: the typed length and the dimensions",
    trust: "read",
    cases: [
      {
        sheet: form([plainRow({ length: 2000 })]),
        pick: (r) => [firstBar(r)?.length, firstBar(r)?.dims],
        right: [2000, [1000, 400, 500]],
      },
    ],
  },
  {
    number: 44,
    name: "a length that includes its lap",
    seen: "12000+2350 (lap) · 14350 (incl. lap 2350)",
    reads: "14350 in all, of which 2350 is lap",
    trust: "read",
    cases: [
      {
        sheet: lengths(["12000+2350 (lap)", "14350 (incl. lap 2350)", "12000 + lap 2350"]),
        pick: ({ bars }) => bars.map(({ length, lap }) => [length, lap]),
        right: [
          [14_350, 2350],
          [14_350, 2350],
          [14_350, 2350],
        ],
      },
    ],
  },
  {
    number: 45,
    name: "a length over the stock length",
    seen: "14000",
    reads: "as typed; the audit asks for a lap",
    trust: "read",
    cases: [
      {
        sheet: lengths([14_000, 18_500]),
        pick: (r) => [each("length")(r), guesses(r)],
        right: [[14_000, 18_500], []],
      },
    ],
  },
  {
    number: 46,
    name: "lengths rounded up to a step",
    seen: "1900 · 2125 · 3050 · 1175 · 900",
    reads: "as typed; the step of the file is 25 mm",
    trust: "read",
    cases: [
      { sheet: lengths([1900, 2125, 3050, 1175, 900]), pick: ({ lengthStep }) => lengthStep, right: 25 },
      { sheet: lengths([1910, 2120, 3050, 1170, 900]), pick: ({ lengthStep }) => lengthStep, right: 10 },
      { sheet: lengths([1901, 2123, 3057, 1172, 908]), pick: ({ lengthStep }) => lengthStep, right: null },
    ],
  },
  {
    number: 47,
    name: "an error in a cell",
    seen: "#REF! · #VALUE! · Err:508",
    reads: "unknown, never 0",
    trust: "read",
    cases: [
      {
        sheet: lengths([{ error: "#REF!" }, "#VALUE!", "Err:508"]),
        pick: (r) => [each("length")(r), guesses(r).length],
        right: [[null, null, null], 3],
      },
    ],
  },
  {
    number: 58,
    name: "masses in kilograms, tonnes or pounds",
    seen: "Weight (kg) · Weight (MT) · a column of 0.012 without a unit",
    reads: "kilograms; tonnes where the word or the masses themselves say so",
    trust: "guess shown",
    cases: [
      ["Weight (kg)", 12, "kg"],
      ["Weight (MT)", 0.012, "t"],
      ["Weight", 0.012, "t"],
      ["Weight", 12, "kg"],
    ].map(([header, mass, unit]) => ({
      sheet: sheetOf(
        ["Mark", "Size", "Total", "Length (mm)", "Shape", header as string],
        ["1", "H16", 4, 1900, "00", mass as number],
        ["2", "H16", 4, 1900, "00", mass as number],
        ["3", "H16", 4, 1900, "00", mass as number],
      ),
      pick: ({ bars, tables }) => [bars[0]?.mass, tables[0]?.columns.get("mass")?.unit],
      right: [12, unit],
    })),
  },
  {
    number: 63,
    name: "letters that look like digits",
    seen: "1O50 · l250 · T1O",
    reads: "1050, 1250 and T10 are proposed and asked, in number cells only",
    trust: "asks first",
    cases: [
      {
        sheet: lengths(["1O50", "l250", 1900]),
        pick: (r) => [each("length")(r), proposals(r)],
        right: [
          [null, null, 1900],
          [
            ["lookalike-digit", 1050, true],
            ["lookalike-digit", 1250, true],
          ],
        ],
      },
      {
        sheet: form([plainRow({ size: "H1O" })]),
        pick: (r) => [firstBar(r)?.size, proposals(r)],
        right: [null, [["lookalike-digit", "10", true]]],
      },
      {
        sheet: form([plainRow({ size: "H1O" })]),
        options: { confirmed: ["C2"] },
        pick: (r) => firstBar(r)?.size?.diameter,
        right: 10,
      },
      {
        sheet: form([plainRow({ mark: "B1O" })]),
        pick: (r) => [firstBar(r)?.mark, guesses(r)],
        right: ["B1O", []],
      },
    ],
  },
  {
    number: 64,
    name: "digits of other scripts",
    seen: "١٢٥٠ · १२५० · １２５０",
    reads: "1250",
    trust: "read",
    cases: [
      {
        sheet: lengths(["١٢٥٠", "۱۲۵۰", "१२५०", "１２５０", "١٬٢٥٠"]),
        pick: each("length"),
        right: [1250, 1250, 1250, 1250, 1250],
      },
    ],
  },
];

function dated(sheet: ReturnType<typeof sheetOf>, serial: number) {
  return { ...sheet, isDate: (row: number, column: number) => sheet.cell(row, column) === serial };
}

function proposals(reading: Parameters<Pattern["cases"][number]["pick"]>[0]): unknown[] {
  return reading.bars.flatMap((bar) =>
    (bar.problems ?? []).map(({ guess, proposal, asks }) => [
      guess,
      typeof proposal === "number" ? Math.round(proposal * 100) / 100 : proposal,
      asks ?? false,
    ]),
  );
}
