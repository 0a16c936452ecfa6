import { findTables, type WordReading, weighTable } from "../../core/schedule/evidence/index";
import { readSchedule } from "../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../core/schedule/sheet";
import { resolveStandard } from "../../core/standards/index";
import type { Standard } from "../../core/standards/port";
import type { Bench } from "./bench";
import { seededSchedule } from "./seeded-schedule";

const ROWS = 100_000;
const RUNS = 7;

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
        "no header word at all, ms": median(() => findTables(matrix, standard)),
      },
    };
  },
};

/** Processor time: other work on the machine does not count. */
function median(run: () => unknown): number {
  const times: number[] = [];
  for (let index = 0; index < RUNS; index += 1) {
    const before = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(before);
    times.push((user + system) / 1000);
  }
  times.sort((one, other) => one - other);
  return Math.round((times[RUNS >> 1] ?? Number.NaN) * 10) / 10;
}

export default bench;
