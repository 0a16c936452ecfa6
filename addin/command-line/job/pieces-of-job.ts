import { IN_NO_PLAN } from "../../../core/audit/holds";
import type { CutRow, RefusedRow, SizePlan } from "../../../core/cutting";
import {
  asksOf,
  countedBars,
  heatsByRow,
  holdsOf,
  type NotToMake,
  type OpenedBook,
  piecesNotToMake,
  piecesOf,
  piecesToAsk,
  plansOfPieces,
  readForCutting,
  wholeSheetWords,
} from "../../../core/jobs";
import type { Workshop } from "../../../core/shop";
import type { HeatsOfRow } from "../../../core/tickets";
import { InputRefused } from "../input-refused";
import type { JobAsked } from "./job-asked";
import { openBooks, tried } from "./open-books";
import type { JobRead } from "./read-job";

/** What all schedules of a job that count ask to be cut; rows stand under their book and sheet. */
export interface JobPieces {
  readonly rows: readonly CutRow[];
  readonly refused: readonly RefusedRow[];
  readonly notToMake: readonly NotToMake[];
  /** perhaps unsafe or unbendable, and planned as any other */
  readonly toAsk: readonly NotToMake[];
  readonly books: readonly {
    readonly book: string;
    readonly pieces: number;
    readonly error: string | null;
  }[];
  /** the first that could be read: its standard is that of the plan */
  readonly first: OpenedBook | null;
  /** the first that is written down among the books, else one that knows of nothing */
  readonly workshop: Workshop | null;
  readonly notes: readonly string[];
  /** book and sheet of each that rows stand under */
  readonly places: ReadonlyMap<string, { readonly book: string; readonly sheet: string }>;
}

/** Heats of a job's pieces by its one cut list. */
export interface JobHeats {
  readonly pieces: JobPieces;
  /** empty where no stock says a heat */
  readonly groups: readonly SizePlan[];
  of(book: string): HeatsOfRow;
}

const ALL_BARS = { pours: null, sizes: null };

/** Under which a sheet of a book stands among those of a job. */
export const sheetInJob = (path: string, sheet: string | null): string => `${path} ${sheet ?? ""}`.trim();

/** Collects the pieces of a job, one book held at a time. */
export function piecesOfJob(
  asked: JobAsked,
  job: Pick<JobRead, "judged" | "answers" | "digest">,
  filter: JobAsked["filter"] = asked.filter,
): JobPieces {
  const rows: CutRow[] = [];
  const refused: RefusedRow[] = [];
  const notToMake: NotToMake[] = [];
  const toAsk: NotToMake[] = [];
  const answers = new Map(job.answers.map((answer) => [answer.path, answer]));
  const notes: string[] = [];
  const places = new Map<string, { book: string; sheet: string }>();
  const books: { book: string; pieces: number; error: string | null }[] = [];
  let first: OpenedBook | null = null;
  let shop: OpenedBook | null = null;
  for (const { path, opened, error } of openBooks(asked, job)) {
    const read = opened === null ? new InputRefused(error) : tried(() => readForCutting(opened));
    if (read instanceof Error || opened === null) {
      books.push({ book: path, pieces: 0, error: read instanceof Error ? read.message : error });
      continue;
    }
    first ??= opened;
    if (opened.workshop.sheet !== null) {
      if (shop === null) shop = opened;
      else notes.push(`${path}: its Shop sheet is not used, that of ${shop.book.name} is`);
    }
    const schedules = countedBars(path, read.schedules, job.judged, filter);
    const pieces = piecesOf({ ...read, schedules });
    for (const note of pieces.notes) notes.push(`${path}: ${note}`);
    for (const { sheet } of [...pieces.rows, ...pieces.refused])
      places.set(sheetInJob(path, sheet), { book: path, sheet: sheet ?? "" });
    const onBook = <Row extends { sheet: string | null }>(row: Row): Row => ({
      ...row,
      sheet: sheetInJob(path, row.sheet),
    });
    for (const row of pieces.rows) rows.push(onBook(row));
    for (const row of pieces.refused) refused.push(onBook(row));
    const answer = answers.get(path);
    const all = answer === undefined || answer.error !== null ? [] : job.digest(answer).holding;
    // what no stock gives the plan refuses itself
    const holding = all.filter(({ name }) => name !== IN_NO_PLAN);
    const held = piecesNotToMake(pieces.rows, holdsOf(holding));
    for (const row of held) notToMake.push(onBook(row));
    for (const row of piecesToAsk(pieces.rows, asksOf(holding), held)) toAsk.push(onBook(row));
    for (const words of wholeSheetWords(holding)) notes.push(`${path}: ${words}`);
    books.push({ book: path, pieces: pieces.rows.reduce((sum, { count }) => sum + count, 0), error: null });
  }
  return {
    rows,
    refused,
    notToMake,
    toAsk,
    books,
    first,
    workshop: (shop ?? first)?.workshop ?? null,
    notes,
    places,
  };
}

/** The plan of a whole job whose stock is written down with its heats, whichever of its bars are asked for. */
export function heatsOfJob(asked: JobAsked, job: Pick<JobRead, "judged" | "answers" | "digest">): JobHeats {
  const pieces = piecesOfJob(asked, job, ALL_BARS);
  const { rows, refused, first, workshop } = pieces;
  const groups =
    first === null || workshop === null
      ? []
      : plansOfPieces({ rows, refused, notes: [] }, workshop, first.standard);
  const byRow = heatsByRow(groups);
  return {
    pieces,
    groups,
    of: (path) => (sheet, row) => byRow(sheetInJob(path, sheet), row),
  };
}
