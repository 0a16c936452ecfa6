import { findTables, sampledRows, type WordReading, weighTable } from "../../core/schedule/evidence/index";
import { openSchedule, readSchedule } from "../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../core/schedule/sheet";
import { resolveStandard } from "../../core/standards/index";
import type { Standard } from "../../core/standards/port";
import type { Bench } from "./bench";
import { seededSchedule } from "./seeded-schedule";

const ROWS = 100_000;
const RUNS = 7;
const EDITED_ROWS = 10_000;
const RANDOM_ROWS = 50;
const FIRST_ROWS = 6;
const TITLE: Cell[][] = [["Bar bending schedule"], ["Job", "Harbour wall", null, "Drawing", "D-104"], []];
/** what is typed into each column */
const EDITED_CELLS: readonly Cell[] = [
  ...["M99999", "77", "H16", 3, 7, 21, 1225, "21"],
  ...[455, 460, 465, 470, 475, "B", "B500C", 70, 12.5, "P3", "T2"],
];
const SHORT_ROWS = 40;
/** readings of a short list that are timed together */
const SHORT_READINGS = 50;

/** Columns of the seeded schedule by what its header says. */
const ROLES: readonly (readonly [number, WordReading["role"], WordReading["unit"]])[] = [
  [0, "other", null],
  [1, "mark", null],
  [2, "size", null],
  [3, "members", null],
  [4, "each", null],
  [5, "total", null],
  [6, "length", "mm"],
  [7, "shape", null],
  [8, "leg", "mm"],
  [9, "leg", "mm"],
  [10, "leg", "mm"],
  [11, "leg", "mm"],
  [12, "leg", "mm"],
  [13, "other", null],
  [14, "other", null],
  [15, "other", null],
  [16, "mass", "kg"],
  [17, "other", null],
  [18, "other", null],
];

const bench: Bench = {
  name: "columns weighed by arithmetic, 100,000 x 19",
  async run() {
    const standard = resolveStandard("BS8666:2005") as Standard;
    const { matrix } = seededSchedule(ROWS);
    const sheet = sheetFromRows("Schedule", matrix);
    const said = (unit: WordReading["unit"]): Map<number, WordReading> =>
      new Map(
        ROLES.map(([column, role, own]) => [
          column,
          { column, role, unit: role === "length" ? unit : own, by: "written" as const },
        ]),
      );
    const cells = (row: number): readonly Cell[] => matrix[row] ?? [];
    const source = { cells, from: 1, to: matrix.length, left: 0, right: 18 };
    const unnamed = new Map([...said("mm")].filter(([, { role }]) => role !== "size"));
    return {
      figures: {
        "reading, ms": median(() => readSchedule(sheet, standard)),
        "words that agree, ms": median(() => weighTable(source, standard, said("mm"))),
        "a unit that is wrong, ms": median(() => weighTable(source, standard, said("cm"))),
        "a column without a word, ms": median(() => weighTable(source, standard, unnamed)),
        ...shortFigures(standard, said("mm")),
        ...editFigures(standard),
        "no header word at all, ms": median(() => findTables(matrix, standard)),
      },
    };
  },
};

/** What the evidence takes of the reading of a short list. */
function shortFigures(standard: Standard, words: Map<number, WordReading>) {
  const { matrix } = seededSchedule(SHORT_ROWS);
  const sheet = sheetFromRows("Schedule", matrix);
  const source = { cells: (row: number): readonly Cell[] => matrix[row] ?? [], from: 1, to: matrix.length };
  const often = (run: () => unknown) => () => {
    for (let time = 0; time < SHORT_READINGS; time += 1) run();
  };
  const reading = median(often(() => readSchedule(sheet, standard)));
  const weighing = median(often(() => weighTable({ ...source, left: 0, right: 18 }, standard, words)));
  return {
    "reading a list of 40 rows 50 times, ms": reading,
    "evidence of it, per cent of the rest": Math.round((100 * weighing) / (reading - weighing)),
  };
}

/**
 * Reading again after an edit of one cell: of every column, in rows all down a sheet, in those that settle the
 * columns and in the first under its title and heads.
 */
function editFigures(standard: Standard) {
  const { matrix: list } = seededSchedule(EDITED_ROWS);
  const matrix = [...TITLE, ...list];
  const session = openSchedule(sheetFromRows("Schedule", matrix), standard);
  const head = TITLE.length;
  const edited = (row: number, column: number, to: Cell) => {
    const changed = matrix.slice();
    changed[row] = Array.from({ length: list[0]?.length ?? 0 }, (_, at) =>
      at === column ? to : (matrix[row]?.[at] ?? null),
    );
    const sheet = sheetFromRows("Schedule", changed);
    return processorTime(() => session.reread(sheet, row, row) ?? openSchedule(sheet, standard));
  };
  const random = Array.from({ length: RANDOM_ROWS }, (_, at) => head + 1 + (((at + 1) * 7919) % EDITED_ROWS));
  const first = Array.from({ length: FIRST_ROWS - 1 }, (_, at) => head + 2 + at);
  const settling = sampledRows(head + 1, matrix.length).filter((_, at) => at % 20 === 10);
  const columns = EDITED_CELLS.map((to, column) => ({ to, column }));
  const timesOf = (rows: readonly number[]): number[] =>
    rows.flatMap((row) => columns.map(({ to, column }) => edited(row, column, to)));
  timesOf(random);
  return {
    ...spread("50 rows all down 10,000, one edit in each column", timesOf(random)),
    ...spread("20 rows that settle the columns, the same", timesOf(settling)),
    ...spread("the second to sixth row under the heads, the same", timesOf(first)),
    ...spread("the first row under the heads, the same", timesOf([head + 1])),
    ...spread(
      "the heads",
      columns.map(({ column }) => edited(head, column, "another word")),
    ),
    ...spread(
      "the title",
      [0, 1, 2, 3, 4].map((column) => edited(1, column, `words ${column}`)),
    ),
  };
}

function spread(rows: string, times: number[]) {
  times.sort((one, other) => one - other);
  const at = (share: number): number =>
    rounded(times[Math.min(times.length - 1, Math.floor(times.length * share))]);
  return {
    [`re-reading, ${rows}: median, ms`]: at(0.5),
    [`re-reading, ${rows}: of 100 edits the slowest but one, ms`]: at(0.99),
    [`re-reading, ${rows}: worst, ms`]: at(1),
  };
}

/** Processor time: other work on the machine does not count. */
function median(run: () => unknown): number {
  const times: number[] = [];
  for (let index = 0; index < RUNS; index += 1) {
    times.push(processorTime(run));
  }
  times.sort((one, other) => one - other);
  return rounded(times[RUNS >> 1]);
}

function processorTime(run: () => unknown): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

function rounded(ms = Number.NaN): number {
  return Math.round(ms * 10) / 10;
}

export default bench;
