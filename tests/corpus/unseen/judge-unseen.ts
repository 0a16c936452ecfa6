import { rowsBehind } from "../../../core/audit/finding";
import { checkBooks } from "../../../core/jobs";
import { isRefusal } from "../../../core/units/refusal";
import { bookOf, booksOf, isNearTo, KG_PER_TONNE, type UnseenBook } from "./unseen-books";

/** What came out of one batch. */
export interface BatchFigures {
  readonly books: number;
  /** tonnage within one per cent of the truth, or of what is written, mistake by mistake where each one's share is known */
  readonly right: number;
  /** no tonnage, totals held back, two tonnes stated, or rows named that are in no total */
  readonly told: number;
  /** another tonnage without a word */
  readonly silent: number;
  readonly mistakes: number;
  /** a finding above a note stands at the row or the cell */
  readonly found: number;
  readonly contradictions: number;
}

/** The figures of a batch of books that nobody looked at before the first run. */
export function judgeBatch(batch: string): BatchFigures {
  const books = booksOf(batch);
  const judged = books.map(judge);
  const sum = (of: (one: (typeof judged)[number]) => number): number =>
    judged.reduce((so, one) => so + of(one), 0);
  return {
    books: books.length,
    right: sum(({ outcome }) => Number(outcome === "right")),
    told: sum(({ outcome }) => Number(outcome === "told")),
    silent: sum(({ outcome }) => Number(outcome === "silent")),
    mistakes: books.reduce((so, { mistakes }) => so + mistakes.length, 0),
    found: sum(({ found }) => found),
    contradictions: sum(({ contradictions }) => contradictions),
  };
}

function judge(unseen: UnseenBook) {
  const [checked] = checkBooks([bookOf(unseen)], { sheet: null, standard: unseen.standard });
  if (checked === undefined || isRefusal(checked))
    return { outcome: "told", found: 0, contradictions: 0 } as const;
  const { tonnage, report, schedules } = checked;
  const { total } = tonnage.tonnage;
  const isNear = isNearTo(unseen, total);
  const isDoubted = tonnage.notInTotal.length > 0 || tonnage.doubted.length > 0;
  // weighed as the dimensions make them: the total by the lengths as typed is named beside
  const typed = tonnage.asTyped.reduce((so, row) => so + row.asTyped - row.mass, 0) / KG_PER_TONNE;
  const isNamed = typed !== 0 && isNearTo(unseen, total + typed);
  const isTold =
    isNamed || tonnage.beyond !== null || tonnage.held !== null || isDoubted || report.rows.unread > 0;
  const loud = report.findings.filter(({ severity }) => severity !== "note");
  const found = unseen.mistakes.filter(({ sheet, row, cell }) =>
    loud.some(
      (finding) => finding.sheet === sheet && (finding.cell === cell || rowsBehind(finding).includes(row)),
    ),
  ).length;
  const contradictions = schedules
    .flatMap(({ reading }) => reading.guesses ?? [])
    .filter(({ guess }) => guess === "words-contradicted").length;
  const outcome = tonnage.held === null && isNear ? "right" : isTold ? "told" : "silent";
  return { outcome, found, contradictions } as const;
}
