import { type Cell, type Sheet, sheetFromRows } from "../../core/schedule/sheet";
import type { CorpusBar } from "./corpus-bar";

/** A column of a recipe: what stands over it and what it holds of a bar. */
export interface RecipeColumn {
  readonly key: keyof CorpusBar | `dims.${number}` | "serial" | "other";
  readonly head: Cell | readonly Cell[];
  value(bar: CorpusBar, index: number): Cell;
}

/** A schedule of the corpus, the same in every run. */
export interface CorpusSchedule {
  readonly name: string;
  readonly practice: string;
  readonly standard: string;
  readonly format: "xlsx" | "csv";
  /** no mistake was put in: no finding above a note may come out */
  readonly isClean: boolean;
  readonly bars: readonly CorpusBar[];
  readonly columns: readonly RecipeColumn[];
  /** rows over the header */
  readonly title: readonly (readonly Cell[])[];
  /** rows under the last bar */
  readonly foot: readonly (readonly Cell[])[];
  /** what an untidy office did to the rows, header included; none on most clean ones */
  readonly untidy: ((rows: Cell[][], headerRows: number) => Cell[][]) | null;
  /** between the values of a .csv */
  readonly delimiter: "," | ";" | "\t";
}

type Given = Pick<
  CorpusSchedule,
  "name" | "practice" | "standard" | "format" | "isClean" | "bars" | "columns"
> &
  Partial<CorpusSchedule>;

export function corpusSchedule(given: Given): CorpusSchedule {
  return { title: [], foot: [], untidy: null, delimiter: ",", ...given };
}

/** The cells of a schedule, title and header first. */
export function cellsOf(schedule: CorpusSchedule): Cell[][] {
  const { columns, title, foot, bars, untidy } = schedule;
  const depth = headerDepth(schedule);
  const heads = Array.from({ length: depth }, (_, line) =>
    columns.map(({ head }) =>
      Array.isArray(head) ? (head[line] ?? null) : line === 0 ? (head as Cell) : null,
    ),
  );
  const rows = bars.map((bar, index) => columns.map((column) => column.value(bar, index)));
  const cells = [...title.map((row) => [...row]), ...heads, ...rows, ...foot.map((row) => [...row])];
  return untidy === null ? cells : untidy(cells, title.length + depth);
}

/** The row of the sheet, from 1, in which a bar of a tidy schedule stands. */
export function rowOf(schedule: CorpusSchedule, bar: number): number {
  return schedule.title.length + headerDepth(schedule) + bar + 1;
}

export function sheetOf(schedule: CorpusSchedule): Sheet {
  return sheetFromRows("Schedule", cellsOf(schedule));
}

function headerDepth({ columns }: CorpusSchedule): number {
  return Math.max(...columns.map(({ head }) => (Array.isArray(head) ? head.length : 1)));
}
