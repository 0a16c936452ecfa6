import { type DemoSheet, type DemoValue, FIRST_HEADINGS } from "./demo-sheet";
import { SCHEDULE_ROWS } from "./schedule-rows.data";

const HEAD = [
  ["Tallow Lane Yard"],
  ["Job: Marrow Fen pumping station, schedule MF-014, BS 8666:2005", null, null, null, null, null],
  [],
  [...FIRST_HEADINGS, "D mm", "E/r mm", "Former mm", "Mass kg", "Pour", "Remark"],
];

const FIRST = HEAD.length;
const TOTAL = 5;
const MASS = 14;
const POUR = 15;
/** Rows, counted from the first bar, that the yard has coloured for its own reasons. */
const QUERIED = new Set([23, 57]);

/** The demonstration schedule: 117 bars of an invented job, with the slips that schedules really have. */
export const SCHEDULE_SHEET: DemoSheet = {
  name: "Schedule",
  rows: [...HEAD, ...SCHEDULE_ROWS.map(withFormulas), totalRow()],
  widths: [19, 8, 8, 12, 7, 7, 10, 8, 7, 7, 7, 7, 7, 10, 10, 6, 22],
  frozenRows: FIRST,
  style(row, column) {
    if (row === 0) return "title";
    if (row === 1) return "subtitle";
    if (row === FIRST - 1) return "head";
    if (row < FIRST) return null;
    const bar = SCHEDULE_ROWS[row - FIRST];
    if (bar === undefined) return "sum";
    if (QUERIED.has(row - FIRST) && column >= 8 && column <= 12) return "queried";
    const isDelivered = bar[POUR] === "P1";
    if (column === MASS) return isDelivered ? "deliveredMass" : "oneDecimal";
    return isDelivered ? "delivered" : column === 0 ? "label" : null;
  },
};

function withFormulas(bar: readonly DemoValue[], index: number): DemoValue[] {
  const row = FIRST + index + 1;
  const cells = [...bar];
  cells[TOTAL] ??= `=D${row}*E${row}`;
  cells[MASS] ??= `=BAR.ROWMASS(H${row},C${row},I${row}:M${row},F${row})`;
  return cells;
}

function totalRow(): DemoValue[] {
  const last = FIRST + SCHEDULE_ROWS.length;
  // passes over rows whose mass is an error
  const massSum = `=SUMIF(O${FIRST + 1}:O${last},">0")`;
  const sum = (letter: string) => `=SUM(${letter}${FIRST + 1}:${letter}${last})`;
  return ["Total", null, null, null, null, sum("F"), ...Array<DemoValue>(8).fill(null), massSum, null, null];
}
