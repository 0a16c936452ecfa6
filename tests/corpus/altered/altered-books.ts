import { type Finding, rowsBehind } from "../../../core/audit/finding";
import { checkBooks } from "../../../core/jobs";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import type { Cell } from "../../../core/schedule/sheet";
import { isRefusal } from "../../../core/units/refusal";
import { type Seeded, seeded } from "../seeded";
import { FIRST_RUNS } from "../unseen/first-runs.data";
import { bookOf, booksOf, isNearTo, type UnseenBook } from "../unseen/unseen-books";

/** A sheet that may be altered. */
export interface AlteredSheet {
  name: string;
  rows: Cell[][];
  merges?: string[];
  /** rows of the sheet, from 1, whose cells are struck through */
  struck?: number[];
}

/** A book that may be altered. */
export interface AlteredBook extends Omit<UnseenBook, "sheets"> {
  sheets: AlteredSheet[];
  /** tonnes of the altered book, where they are others than before */
  wantTotal?: number;
}

/** What an alteration goes by. */
export interface Alteration {
  /** a copy, to be altered */
  readonly book: AlteredBook;
  /** how each sheet with a list was read before */
  readonly readings: readonly ScheduleReading[];
  /** tonnes before */
  readonly total: number;
  /** by the seed */
  readonly draw: Seeded;
}

/** Alters a book in a way that leaves its meaning; null where it does not apply. */
export type Alter = (given: Alteration) => AlteredBook | null;

/** How altered books were read, beside how they were before. */
export interface AlteredFigures {
  readonly tried: number;
  /** the same tonnes, nothing held back, no finding above a note more or fewer */
  readonly same: number;
  /** books with another tonnage */
  readonly total: number;
  readonly held: number;
  readonly loud: number;
}

interface Answer {
  readonly total: number;
  readonly isHeld: boolean;
  readonly loud: readonly Finding[];
  readonly readings: readonly ScheduleReading[];
}

const WITHIN = 0.002;
const LEAST = 1e-6;

/**
 * The figures of each alteration over `books` books spread over the batches, of those that are read
 * right and quietly. Each book is altered in `each` ways, in turn, so that all ways meet all kinds
 * of books in the time of a few.
 */
export function alteredFigures(
  alterations: Readonly<Record<string, Alter>>,
  { books, each, seed }: { readonly books: number; readonly each: number; readonly seed: number },
): Record<string, AlteredFigures> {
  const names = Object.keys(alterations);
  const figures = Object.fromEntries(
    names.map((name) => [name, { tried: 0, same: 0, total: 0, held: 0, loud: 0 }]),
  );
  for (const [at, unseen] of spread(books).entries()) {
    const before = answerOf(unseen);
    if (before === null || !isReadQuietly(unseen, before)) continue;
    // a way that does not apply to the book gives its turn to the next
    for (let left = each, asked = 0; left > 0 && asked < names.length; asked += 1) {
      const turn = at * STRIDE + asked;
      const name = names[turn % names.length] as string;
      const altered = (alterations[name] as Alter)({
        book: JSON.parse(JSON.stringify(unseen)),
        readings: before.readings,
        total: before.total,
        draw: seeded(seed * 7919 + turn),
      });
      if (altered === null) continue;
      left -= 1;
      const of = figures[name] as { -readonly [K in keyof AlteredFigures]: number };
      const faults = faultsOf(before, answerOf(altered), altered.wantTotal);
      of.tried += 1;
      of.same += Number(!faults.total && !faults.held && !faults.loud);
      of.total += Number(faults.total);
      of.held += Number(faults.held);
      of.loud += Number(faults.loud);
    }
  }
  return figures;
}

/** ways from book to book, so that all are met whichever of them do not apply */
const STRIDE = 7;
/** of these, so that which books are altered does not hang on books that come later */
const BATCHES = 46;

/** Every so many books of each batch, so that all of them are met. */
function spread(books: number): UnseenBook[] {
  const all = FIRST_RUNS.slice(0, BATCHES).flatMap(({ batch }) => booksOf(batch));
  const step = Math.max(1, all.length / books);
  const chosen = [];
  for (let at = 0; at < all.length; at += step) chosen.push(all[Math.floor(at)] as UnseenBook);
  return chosen;
}

function answerOf(book: UnseenBook): Answer | null {
  const [checked] = checkBooks([bookOf(book)], { sheet: null, standard: book.standard });
  if (checked === undefined || isRefusal(checked)) return null;
  return {
    total: checked.tonnage.tonnage.total,
    isHeld: checked.tonnage.held !== null,
    loud: checked.report.findings.filter(({ severity }) => severity !== "note"),
    readings: checked.schedules.map(({ reading }) => reading),
  };
}

/** Right to one per cent, and nothing told but of what its writer planted. */
function isReadQuietly(book: UnseenBook, { total, isHeld, loud }: Answer): boolean {
  if (isHeld || !isNearTo(book, total)) return false;
  return loud.every((finding) =>
    book.mistakes.some(
      ({ sheet, cell, row }) =>
        finding.sheet === sheet && (finding.cell === cell || rowsBehind(finding).includes(row)),
    ),
  );
}

function faultsOf(before: Answer, after: Answer | null, wantTotal = before.total) {
  if (after === null) return { total: true, held: false, loud: false };
  return {
    total: Math.abs(after.total - wantTotal) > WITHIN * wantTotal + LEAST,
    held: after.isHeld,
    loud: rulesOf(before.loud) !== rulesOf(after.loud),
  };
}

/** What is told, by rule: a finding more or fewer shows, another row of it does not. */
function rulesOf(findings: readonly Finding[]): string {
  return findings
    .map(({ code, severity }) => `${code} ${severity}`)
    .sort()
    .join("\n");
}
