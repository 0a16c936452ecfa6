import { jobPlaceWords, ofAnotherJobWords } from "../../../core/jobs";
import { weighedAsMadeWords } from "../../../core/totals";
import { counted } from "../../../core/units/counted";
import { printTonnage } from "../print-tonnage";
import type { Streams } from "../streams";
import type { JobReport } from "./job-report";

/** What a job comes to, for a person: its findings, what does not count, and its tonnes. */
export function printJob(
  report: JobReport,
  named: Parameters<typeof printTonnage>[0],
  streams: Streams,
  isSummary: boolean,
): void {
  printJobFindings(report, streams);
  if (report.unreadable.length === report.books)
    streams.result(`no total: ${counted(report.books, "file")} not read`);
  else printTonnage(named, report.groupedBy, streams, isSummary);
  if (report.ofAnotherJob !== undefined) streams.result(ofAnotherJobWords(report.ofAnotherJob));
  const left = report.schedules.filter(({ counted }) => counted === false).length;
  const counts = report.schedules.length - left;
  const out = left === 0 ? "" : `, ${left} older or doubled not counted`;
  const unread = report.unreadable.length === 0 ? "" : `, ${report.unreadable.length} not read`;
  streams.result(
    `${counted(report.books, "book")}${unread}; ${counted(counts, "schedule")}${out}; ${counted(report.findings.length, "finding")} of the job`,
  );
  if (report.held !== null)
    streams.result(
      "no total of the job: the sums above are without what is held back, which is named in the notes",
    );
}

function printJobFindings({ findings }: JobReport, streams: Streams): void {
  if (findings.length === 0) return;
  streams.result(`THE JOB (${findings.length})`);
  for (const { severity, outcome, message, places, code } of findings) {
    const perhaps = outcome === "unsure" && severity !== "note" ? "perhaps " : "";
    streams.result(`  ${perhaps}${severity}: ${message}  [${code}]`);
    for (const place of places.slice(0, MOST_PLACES)) streams.result(`      ${jobPlaceWords(place)}`);
    if (places.length > MOST_PLACES) streams.result(`      and ${places.length - MOST_PLACES} more`);
  }
  streams.result("");
}

const MOST_PLACES = 6;

/** Says in notes what could not be read, what is held back and what is in no total. */
export function noteJob(
  { unreadable, held, superseded, notInTotal, asTyped, total }: JobReport,
  streams: Streams,
): void {
  for (const { book, why } of unreadable) streams.note(`not read: ${book}: ${why}`);
  for (const { book, sheet, why } of held ?? []) streams.note(`held back: ${book}, sheet "${sheet}": ${why}`);
  if (superseded > 0)
    streams.note(
      `${counted(superseded, "bar row")} of older or doubled schedules ${superseded === 1 ? "is" : "are"} in no total: the findings name them`,
    );
  const byWhy = new Map<string, string[]>();
  for (const { book, sheet, cell, why } of notInTotal) {
    const known = byWhy.get(why) ?? [];
    byWhy.set(why, known);
    known.push(`${book}, ${sheet}!${cell}`);
  }
  for (const [why, cells] of [...byWhy].slice(0, MOST_REASONS)) {
    const more = cells.length > MOST_PLACES ? ` and ${cells.length - MOST_PLACES} more` : "";
    streams.note(`not in the total: ${cells.slice(0, MOST_PLACES).join("; ")}${more}: ${why}`);
  }
  const rest = [...byWhy].slice(MOST_REASONS).reduce((sum, [, cells]) => sum + cells.length, 0);
  for (const words of weighedAsMadeWords(asTyped?.rows ?? [], total ?? 0, true)) streams.note(words);
  if (rest > 0) streams.note(`not in the total for other reasons: ${rest} rows`);
}

const MOST_REASONS = 10;
