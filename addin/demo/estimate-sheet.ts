import type { DemoSheet, DemoValue } from "./demo-sheet";
import { SCHEDULE_ROWS } from "./schedule-rows.data";

const FIRST_BAR = 5;
const LAST_BAR = FIRST_BAR + SCHEDULE_ROWS.length - 1;
const SIZES = ["H10", "H12", "H16", "H20", "H25", "H32"];
const FIRST_SIZE = 14;
const LONGEST = 11;
const DERIVATION = FIRST_SIZE + SIZES.length;
const CENTRE_LINE = 8;
const column = (letter: string): string => `Schedule!${letter}${FIRST_BAR}:${letter}${LAST_BAR}`;

const bar = (row: number, what: string, shape: string, size: string, dims: DemoValue[]): DemoValue[] => [
  what,
  shape,
  size,
  ...dims,
  `=BAR.CUTLENGTH(B${row},C${row},D${row}:G${row})`,
  `=BAR.DEVELOPED(B${row},C${row},D${row}:G${row})`,
  `=BAR.FORMER(C${row})`,
  `=BAR.MINLEG(C${row})`,
  `=BAR.MASS(C${row})`,
];

const ROWS: DemoSheet["rows"] = [
  ["Estimate: what one bar takes"],
  ["Change a size or a dimension and the row follows"],
  [],
  [
    "Bar",
    "Shape",
    "Size",
    "A",
    "B",
    "C",
    "D",
    "Cut length",
    "On the centre line",
    "Former",
    "Least leg",
    "kg/m",
  ],
  bar(5, "Starter", "11", "H20", [1350, 500, null, null]),
  bar(6, "U bar", "21", "H16", [600, 3450, 600, null]),
  bar(7, "Crank", "26", "H20", [3300, 430, 1200, 90]),
  bar(8, "Column link", "51", "H10", [420, 420, 130, null]),
  bar(9, "As a path", "600 +90 3450 +90 600", "H16", [null, null, null, null]),
  bar(10, "Leg left out", "21", "H16", [600, 450, null, null]),
  [],
  ["Longest bars of the schedule, each size"],
  ["Size", "Longest, mm", "kg/m"],
  ...SIZES.map((size, index) => {
    const row = FIRST_SIZE + index;
    return [size, `=MAXIFS(${column("G")},${column("C")},A${row})`, `=BAR.MASS(A${row})`];
  }),
  [],
  ["How the U bar's length is made up"],
  // last, since its lines run on downwards
  ["=BAR.EXPLAIN(B6,C6,D6:F6)"],
];

/** What an estimator writes: functions over single bars, a path, a derivation. */
export const ESTIMATE_SHEET: DemoSheet = {
  name: "Estimate",
  rows: ROWS,
  widths: [22, 22, 8, 8, 8, 8, 8, 11, 17, 8, 10, 8],
  frozenRows: 0,
  style(row, column) {
    if (row === 0 || row === LONGEST || row === DERIVATION) return "title";
    if (row === 1) return "small";
    if (row === 3 || (row === LONGEST + 1 && column < 3)) return "head";
    return row < LONGEST && column === CENTRE_LINE ? "oneDecimal" : null;
  },
};
