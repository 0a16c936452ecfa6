import { seededSchedule } from "./seeded-schedule";

/** One argument of a timed call: a column by its row, whole columns of a table, one cell, a small table, or left out. */
export type Argument =
  | { readonly column: (row: number, call: number) => string | number }
  | { readonly columns: (row: number, call: number) => readonly (string | number)[] }
  | { readonly table: readonly (readonly (string | number)[])[] }
  | string
  | number
  | null;

export interface TimedCall {
  /** what the figure is called */
  readonly what: string;
  /** id of the function */
  readonly id: string;
  readonly given: readonly Argument[];
  /** rows that the answer must have; left out where a plan or a fit decides */
  readonly answers?: number;
}

export const FILLED = 10_000;
const BS = "BS8666:2005";
const SIZES = ["H8", "H10", "H12", "H16", "H20", "H25"] as const;

const sizes: Argument = { column: (row) => SIZES[row % SIZES.length] ?? "" };
const standards: Argument = { column: () => BS };
const paths: Argument = { column: (row, call) => `${400 + call + (row % 997)} +90 ${900 + (row % 89)}` };
const masses: Argument = { column: (row, call) => 1 + ((row * 7 + call) % 500) / 8 };
const pours: Argument = { column: (row) => `P${row % 40}` };
const dims: Argument = { columns: (row, call) => [400 + call + (row % 700), 500 + (row % 300), "", "", ""] };
const angles: Argument = { column: (row, call) => 30 + ((row + call) % 60) };
const TRIALS = [
  ["size", "former", "grade", "bent to", "released"],
  ...Array.from({ length: 40 }, (_, row) => [16, 64, 500, 40 + 2 * row, 36 + 2 * row * 0.98]),
];
const trials: Argument = { table: TRIALS };
const wholeLog: Argument = {
  columns: (row, call) =>
    row === 0 ? (TRIALS[0] ?? []) : [16, 64, 500, 40 + ((row + call) % 90), 36 + ((row + call) % 90) * 0.98],
};
const rates: Argument = {
  table: [
    ["size", "supply per tonne", "bend per tonne", "hours per tonne", "waste %"],
    ["up to 16", 100, 20, 8, 5],
    ["over 16", 90, 10, 5, 4],
  ],
};
const lengths: Argument = { column: (row, call) => 900 + 25 * ((row + call) % 80) };
const counts: Argument = { column: (row) => 1 + (row % 5) };
/** mark, size, total, length, shape and dims of a schedule with a mistake in one row of twenty */
const SCHEDULE_COLUMNS = [1, 2, 5, 6, 7, 8, 9, 10, 11, 12] as const;
const schedules = [50, 51].map((seed) => seededSchedule(FILLED, seed).matrix);
const schedule: Argument = {
  columns: (row, call) =>
    SCHEDULE_COLUMNS.map((column) => (schedules[call % 2]?.[row]?.[column] ?? "") as string | number),
};

/** Every function of namespace BAR that takes arrays, whole columns wherever it may have them. */
export const TIMED_CALLS: readonly TimedCall[] = [
  { what: "DEVELOPED", id: "DEVELOPED", given: [paths, sizes, null, BS, 64], answers: FILLED },
  { what: "CUTLENGTH", id: "CUTLENGTH", given: [paths, sizes, null, BS], answers: FILLED },
  {
    what: "CUTLENGTH, five columns of dims",
    id: "CUTLENGTH",
    given: ["11", sizes, dims, BS],
    answers: FILLED,
  },
  { what: "ROWMASS", id: "ROWMASS", given: [paths, sizes, null, 4, BS], answers: FILLED },
  { what: "MASS", id: "MASS", given: [sizes, standards], answers: FILLED },
  { what: "DIAMETER", id: "DIAMETER", given: [sizes, standards], answers: FILLED },
  { what: "AREA", id: "AREA", given: [sizes, standards], answers: FILLED },
  { what: "FORMER", id: "FORMER", given: [sizes, standards], answers: FILLED },
  { what: "MINLEG", id: "MINLEG", given: [sizes, standards], answers: FILLED },
  { what: "LAP", id: "LAP", given: [sizes, { column: () => "B500B" }], answers: FILLED },
  {
    what: "COMPENSATED",
    id: "COMPENSATED",
    given: [angles, "H16", standards, 64, 500, trials],
    answers: FILLED,
  },
  {
    what: "COMPENSATED, whole columns of trials",
    id: "COMPENSATED",
    given: [90, "H16", BS, 64, 500, wholeLog],
  },
  { what: "TRIALFIT, whole columns of trials", id: "TRIALFIT", given: [90, "H16", BS, 64, 500, wholeLog] },
  {
    what: "MARKS, whole columns of trials",
    id: "MARKS",
    given: ["500 +90 900", "H16", null, BS, 64, 500, wholeLog],
  },
  {
    what: "EXPLAIN, five cells of dims",
    id: "EXPLAIN",
    given: ["11", "H16", { table: [[500, 700, "", "", ""]] }, BS],
  },
  { what: "TONNAGE", id: "TONNAGE", given: [pours, sizes, masses] },
  { what: "COST", id: "COST", given: [sizes, masses, null, rates] },
  { what: "COST by pours", id: "COST", given: [sizes, masses, pours, rates] },
  { what: "CUTPLAN", id: "CUTPLAN", given: [lengths, counts, BS] },
  { what: "CUTPLAN by sizes", id: "CUTPLAN", given: [lengths, counts, BS, sizes] },
  { what: "CHECK, ten columns", id: "CHECK", given: [schedule, BS], answers: FILLED },
];
