import { doubtedWords, hiddenWords } from "../../totals/tonnage-notes";
import type { BookDigest } from "./book-digest";
import { type BarFilter, isAsked, type PlacedBar } from "./job-totals";

/** What is to be said of a book of a job: of its rows only where they are in the job's total and asked for. */
export function notesInJob(
  { notes, hidden, doubted }: Pick<BookDigest, "notes" | "hidden" | "doubted">,
  bars: readonly PlacedBar[],
  filter: BarFilter,
): readonly string[] {
  if (hidden.length + doubted.length === 0) return notes;
  const counted = bars.filter(({ bar, leftOut }) => leftOut === null && isAsked(filter, bar));
  const rows = new Set(counted.map(({ bar }) => `${bar.row} ${bar.sheet}`));
  return [
    ...notes,
    ...doubtedWords(doubted.filter(({ sheet, at }) => rows.has(`${at} ${sheet}`))),
    ...hiddenWords(hidden.filter(({ sheet, row }) => rows.has(`${row} ${sheet}`))),
  ];
}
