import type { BookDigest, JobTonnage, PlacedBar } from "../../../core/jobs";
import { type BarFilter, isAsked } from "../../../core/jobs";
import { nothingRead } from "./job-report";
import type { JobRead } from "./read-job";

/** The lines of one book: itself, its bars, its findings. */
export function* bookLines(
  digest: BookDigest,
  bars: readonly PlacedBar[],
  { judged }: JobRead,
  asked: { readonly filter: BarFilter; readonly findings: boolean },
): Generator<object> {
  const { book, report, notes } = digest;
  const schedules = judged.schedules.filter((entry) => entry.book === book);
  yield {
    kind: "book",
    book,
    error: null,
    standard: report.standard,
    rows: report.rows,
    counts: report.counts,
    notes,
    schedules: schedules.map(({ sheet, number, revision, date, job, office, standing, held }) => ({
      sheet,
      schedule: number,
      revision,
      date,
      job,
      office,
      counted: standing.because === null,
      because: standing.because,
      held,
    })),
  };
  for (const placed of bars) if (isAsked(asked.filter, placed.bar)) yield barLine(book, placed);
  if (!asked.findings) return;
  for (const { toldEach: _, ...finding } of report.findings) yield { kind: "finding", book, ...finding };
}

function barLine(book: string, { bar, schedule, scheduleRevision, group, leftOut }: PlacedBar): object {
  const { sheet, row, member, mark, size, grade, shape, dims, radius, length, count, kg } = bar;
  const { pour, revision, former, bends, scheduled: typed, cut } = bar;
  return {
    kind: "bar",
    book,
    sheet,
    row,
    schedule,
    revision: scheduleRevision,
    rowRevision: revision,
    member,
    mark,
    size,
    grade,
    shape,
    dims,
    radius,
    length,
    typed,
    cut,
    count,
    kg,
    pour,
    group,
    former,
    bends,
    inTotal: leftOut === null,
    why: leftOut,
  };
}

/** A book that could not be read. */
export function unreadLine(book: string, error: string): object {
  return { kind: "book", book, error, standard: null, rows: null, counts: null, schedules: [] };
}

/** The lines of the job as a whole: totals group by group, the sum of all, what only all together show. */
export function* jobLines({ answers, judged }: JobRead, totals: JobTonnage): Generator<object> {
  const { tonnage, groupedBy, held } = totals;
  for (const { pour, bySize, total } of tonnage.pours)
    yield { kind: "total", by: groupedBy, name: pour, bySize: Object.fromEntries(bySize), total, held: null };
  const why =
    held.length === 0
      ? nothingRead(answers)
      : held.map(({ book, sheet, why }) => `${book}, ${sheet}: ${why}`).join("; ");
  yield {
    kind: "total",
    by: "job",
    name: "",
    bySize: Object.fromEntries(tonnage.bySize),
    total: why === null ? tonnage.total : null,
    held: why,
    ...(totals.ofAnotherJob !== null && { ofAnotherJob: totals.ofAnotherJob }),
  };
  for (const finding of judged.findings) yield { kind: "jobFinding", ...finding };
}
