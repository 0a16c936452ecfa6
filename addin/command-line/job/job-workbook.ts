import type { JobFinding, JobGroup, JobTonnage, PlacedBar } from "../../../core/jobs";
import { jobPlaceWords, severeWords } from "../../../core/jobs";
import { columnLetters } from "../../../core/schedule/cell-address";
import { groupName } from "../../../core/totals";
import { type NewCell, type NewSheet, writeNewWorkbook } from "../../xlsx/write/new-workbook";
import type { JobReport } from "./job-report";

/** A bar that counts, with the book it stands in. */
export interface BarOfJob extends PlacedBar {
  readonly book: string;
}

/** What a job workbook is made of. */
export interface JobOnPaper {
  readonly report: JobReport;
  /** what is to be said of single books, a sentence each */
  readonly notes: readonly string[];
  /** the same tonnes grouped by each */
  readonly groups: ReadonlyMap<JobGroup, JobTonnage>;
  /** taken once, so that they need not stand in memory */
  readonly bars: Iterable<BarOfJob>;
  readonly count: number;
}

type Row = readonly (string | number | null | NewCell)[];

const TONNES = { numberFormat: "0.000" };
const BOLD = { bold: true };
/** rows that a sheet of a workbook holds, with room for its heading */
const MOST_ROWS = 1_048_000;
const BARS = "Bars";
const head = (words: string): NewCell => ({ value: words, look: BOLD });
const bold = (value: number, formula: string): NewCell => ({ value, formula, look: { ...BOLD, ...TONNES } });

/**
 * The workbook of a job: what it comes to by pour, member, schedule and date, every bar that counts with the
 * book, sheet and row that it stands on, and what is not counted. Figures are values; sums are formulas over
 * them, with their results.
 */
export function jobWorkbook({ report, notes, groups, bars, count }: JobOnPaper): Uint8Array {
  const sheets = Math.max(1, Math.ceil(count / MOST_ROWS));
  const barSheets = [...barsInSheets(bars, sheets, Math.ceil(count / sheets))];
  return writeNewWorkbook({
    sheets: [
      { name: "Job", rows: jobRows(report, notes, sheets, count), widths: [34, 24, 22, 14, 60] },
      ...[...groups].map(([by, totals]) => groupSheet(by, totals)),
      ...barSheets,
      { name: "Not counted", rows: leftOutRows(report), widths: [40, 20, 10, 60], frozenRows: 1 },
      { name: "Findings", rows: findingRows(report.findings), widths: [14, 80, 60, 12], frozenRows: 1 },
    ],
  });
}

/** A total that may hold another job's steel stands there with both figures. */
function doubtRows({ schedules, tonnes, without }: NonNullable<JobReport["ofAnotherJob"]>): Row[] {
  const where = schedules.map(({ book, sheet }) => `${book}, ${sheet}`).join("; ");
  return [
    [
      "Of it perhaps another job's, t",
      { value: tonnes, look: TONNES },
      null,
      null,
      `schedules that say another job: ${where}`,
    ],
    ["Total without it, t", { value: without, look: TONNES }],
  ];
}

function* jobRows(
  report: JobReport,
  notes: readonly string[],
  sheets: number,
  count: number,
): Generator<Row> {
  const { books, unreadable, schedules, held, total, rows } = report;
  yield [head("Tonnes of a job")];
  yield ["Books", books];
  yield ["Books not read", unreadable.length];
  yield ["Schedules", schedules.length];
  yield ["Schedules not counted", schedules.filter(({ counted }) => counted === false).length];
  yield ["Bar rows in the total", rows];
  const names = Array.from({ length: sheets }, (_, at) => barsName(at));
  const sum = names.map((name) => `SUM('${name}'!${MASS}:${MASS})`).join("+");
  if (held === null && total !== null && count > 0)
    yield ["Total, t", { value: total, formula: `(${sum})/1000`, look: { ...BOLD, ...TONNES } }];
  else if (held !== null) yield ["Total", "held back: the sums are without what is named below"];
  else yield ["Total", unreadable.length === books ? "none: no file could be read" : total];
  if (report.ofAnotherJob !== undefined) yield* doubtRows(report.ofAnotherJob);
  yield ["By the lengths that the dimensions make and the standard's mass per metre; waste is not in it."];
  yield [];
  yield ["Schedule", "Revision", "Date", "Counted", "Because", "Book", "Sheet"].map(head);
  for (const { schedule, revision, date, counted, because, book, sheet } of schedules)
    yield [
      schedule,
      revision,
      date,
      counted === true ? "yes" : counted === false ? "no" : counted,
      because,
      book,
      sheet,
    ];
  for (const { book, why } of unreadable) yield [null, null, null, "not read", why, book];
  for (const { book, sheet, why } of held ?? []) yield [null, null, null, "held back", why, book, sheet];
  for (const words of [...severeWords(report, true), ...notes]) yield [words];
}

function groupSheet(by: JobGroup, { tonnage }: JobTonnage): NewSheet {
  const sizes = [...tonnage.bySize.keys()];
  const last = tonnage.pours.length + 1;
  const sumOf = (column: number, value: number): NewCell => {
    const letters = columnLetters(column);
    return bold(value, `SUM(${letters}2:${letters}${last})`);
  };
  const rows: Row[] = [
    [by.charAt(0).toUpperCase() + by.slice(1), ...sizes, "total, t"].map(head),
    ...tonnage.pours.map(
      ({ pour, bySize, total }, at): Row => [
        nameOfGroup(pour, by),
        ...sizes.map((size): NewCell => ({ value: bySize.get(size) ?? null, look: TONNES })),
        bold(total, `SUM(B${at + 2}:${columnLetters(sizes.length)}${at + 2})`),
      ],
    ),
    ...(tonnage.pours.length === 0
      ? []
      : [
          [
            head("total"),
            ...sizes.map((size, at) => sumOf(at + 1, tonnage.bySize.get(size) ?? 0)),
            sumOf(sizes.length + 1, tonnage.total),
          ],
        ]),
  ];
  return { name: `By ${by}`, rows, widths: [30], frozenRows: 1 };
}

/** What a group of a job is called where its bars name none. */
export function nameOfGroup(name: string, by: JobGroup): string {
  if (name !== "") return name;
  return by === "pour" || by === "member" ? groupName(name, by) : `no ${by}`;
}

const HEADS = [
  ...["Book", "Sheet", "Row", "Schedule", "Revision", "Member", "Mark", "Pour"],
  ...["Size", "Count", "Length mm", "Mass kg"],
];
const MASS = columnLetters(HEADS.indexOf("Mass kg"));
const barsName = (at: number): string => (at === 0 ? BARS : `${BARS} ${at + 1}`);

function* barsInSheets(bars: Iterable<BarOfJob>, sheets: number, most: number): Generator<NewSheet> {
  const all = bars[Symbol.iterator]();
  for (let at = 0; at < sheets; at += 1)
    yield { name: barsName(at), rows: barRows(all, most), widths: [40, 18], frozenRows: 1 };
}

function* barRows(all: Iterator<BarOfJob>, most: number): Generator<Row> {
  yield HEADS.map(head);
  for (let row = 0; row < most; row += 1) {
    const next = all.next();
    if (next.done === true) return;
    const { book, bar, schedule, scheduleRevision } = next.value;
    const { sheet, row: own, member, mark, pour, size, count, length, kg } = bar;
    yield [book, sheet, own, schedule, scheduleRevision, member, mark, pour, size, count, length, kg];
  }
}

function* leftOutRows({ notInTotal, schedules }: JobReport): Generator<Row> {
  yield ["Book", "Sheet", "Cell", "Why"].map(head);
  for (const { book, sheet, because, counted } of schedules)
    if (counted !== true) yield [book, sheet, counted === false ? "all" : "in part", because];
  for (const { book, sheet, cell, why } of notInTotal) yield [book, sheet, cell, why];
}

function* findingRows(findings: readonly JobFinding[]): Generator<Row> {
  yield ["Severity", "Finding", "Where", "Code"].map(head);
  for (const { severity, outcome, message, places, code } of findings) {
    const perhaps = outcome === "unsure" && severity !== "note" ? "perhaps " : "";
    yield [`${perhaps}${severity}`, message, places.map(jobPlaceWords).join("; "), code];
  }
}
