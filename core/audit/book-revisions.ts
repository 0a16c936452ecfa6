import type { BarFacts } from "../bar/bar-facts";
import { MarkIndex } from "../bar/mark-index";
import type { BookFacts, SheetFacts } from "../bar/sheet-facts";
import { isLaterRevision } from "../schedule/revision-order";
import { type SheetRevision, sheetRevision } from "./sheet-revision";

/** Of the bars of one sheet, how many must stand on the other for one to be a copy of the other. */
const MOST = 0.5;

/** The sheets that a later revision of the same schedule stands on. */
export interface LaterSheets {
  readonly revision: string;
  readonly later: string;
  /** the latest of them */
  readonly first: SheetFacts;
  /** They hold most of this sheet's marks, so a mark that they lack was taken out. */
  readonly isReissue: boolean;
  /** The bar of the same member and mark on one of them. */
  barOf(facts: BarFacts): BarFacts | undefined;
}

/** What a bar gives way to. */
export interface Replacement {
  /** of the bar, and of what replaces it */
  readonly revision: string;
  readonly later: string;
  /** the sheet that the later revision stands on */
  readonly sheet: SheetFacts;
  /** the bar there; undefined where the later revision has no such mark */
  readonly bar: BarFacts | undefined;
  /** The two lists are known to be one by their reference or name, and not by their bars alone. */
  readonly isNamed: boolean;
}

/** Which sheets and rows of a workbook are revisions of one another, worked out once. */
export class BookRevisions {
  /** by member and mark as they are read */
  readonly #marks = new Map<SheetFacts, MarkIndex<BarFacts>>();
  /** by mark and by the member where one is written */
  readonly #writtenMarks = new Map<SheetFacts, MarkIndex<BarFacts>>();
  readonly #known: ReadonlyMap<SheetFacts, SheetRevision>;
  readonly #later: ReadonlyMap<SheetFacts, LaterSheets>;
  readonly #rows: ReadonlyMap<SheetFacts, MarkIndex<BarFacts>>;

  private constructor({ sheets }: BookFacts) {
    this.#known = new Map(sheets.map((sheet) => [sheet, sheetRevision(sheet)]));
    const later = new Map<SheetFacts, LaterSheets>();
    for (const sheet of sheets) {
      const found = this.#laterThan(sheet, sheets);
      if (found !== null) later.set(sheet, found);
    }
    this.#later = later;
    this.#rows = this.#latestRows(sheets.filter((sheet) => !later.has(sheet)));
  }

  static of(book: BookFacts): BookRevisions {
    let revisions = remembered.get(book);
    if (revisions === undefined) {
      revisions = new BookRevisions(book);
      remembered.set(book, revisions);
    }
    return revisions;
  }

  /** The later revision that a bar gives way to; null for one that holds or is struck through. */
  replacementOf(facts: BarFacts): Replacement | null {
    if (facts.row.struckThrough) return null;
    const own = facts.sheet as SheetFacts;
    const sheets = this.laterSheets(own);
    const bar = sheets?.barOf(facts);
    if (sheets !== null && (bar !== undefined || sheets.isReissue)) {
      const { revision, later, first } = sheets;
      return { revision, later, sheet: (bar?.sheet as SheetFacts) ?? first, bar, isNamed: true };
    }
    const later = this.latestRow(facts);
    if (later === undefined || later === facts) return null;
    if (!isLaterRevision(later.row.revision, facts.row.revision)) return null;
    const sheet = later.sheet as SheetFacts;
    const schedule = this.#known.get(own)?.schedule ?? null;
    const isNamed = sheet === own || (schedule !== null && schedule === this.#known.get(sheet)?.schedule);
    return {
      revision: facts.row.revision ?? "-",
      later: later.row.revision ?? "",
      sheet,
      bar: later,
      isNamed,
    };
  }

  /** Null where no sheet of the book is a later revision of this one. */
  laterSheets(sheet: SheetFacts): LaterSheets | null {
    return this.#later.get(sheet) ?? null;
  }

  /** The bar of the same member and mark with the latest revision of its own row, where rows say any. */
  latestRow(facts: BarFacts): BarFacts | undefined {
    const { sheet, markKey } = facts;
    const rows = this.#rows.get(sheet as SheetFacts);
    if (markKey === null || rows === undefined) return undefined;
    return rows.get(this.#memberIn(sheet as SheetFacts)(facts), markKey);
  }

  /** True where rows of the sheet are of several revisions. */
  knowsRowsOf(sheet: SheetFacts): boolean {
    return this.#rows.has(sheet);
  }

  #laterThan(sheet: SheetFacts, sheets: readonly SheetFacts[]): LaterSheets | null {
    const { schedule, revision } = this.#known.get(sheet) as SheetRevision;
    if (schedule === null || revision === null || sheet.bars.length === 0) return null;
    const later = sheets.filter((other) => {
      const known = this.#known.get(other) as SheetRevision;
      return (
        known.schedule === schedule && known.revision !== null && isLaterRevision(known.revision, revision)
      );
    });
    const latest = later.sort((a, b) => this.#order(b, a));
    const barOf = (facts: BarFacts): BarFacts | undefined => {
      if (facts.markKey === null) return undefined;
      for (const other of latest) {
        const bar = marksOf(other, this.#writtenMarks, writtenMember).get(
          writtenMember(facts),
          facts.markKey,
        );
        if (bar !== undefined) return bar;
      }
      return undefined;
    };
    const shared = sheet.bars.filter((facts) => barOf(facts) !== undefined).length;
    const [first] = latest;
    if (first === undefined || shared === 0) return null;
    return {
      revision,
      later: (this.#known.get(first) as SheetRevision).revision ?? "",
      first,
      isReissue: shared >= sheet.bars.length * MOST,
      barOf,
    };
  }

  #order(a: SheetFacts, b: SheetFacts): number {
    const [one, other] = [this.#known.get(a)?.revision ?? null, this.#known.get(b)?.revision ?? null];
    return isLaterRevision(one, other) ? 1 : isLaterRevision(other, one) ? -1 : 0;
  }

  /** By sheet, the latest row of each mark over all sheets that are one list; none where all rows are of one revision. */
  #latestRows(sheets: readonly SheetFacts[]): ReadonlyMap<SheetFacts, MarkIndex<BarFacts>> {
    const first = sheets.find(({ bars }) => bars.length > 0)?.bars[0]?.row.revision ?? null;
    const alike = sheets.every(({ answers }) =>
      answers.whole(oneRevision, revisionOf).every((revision) => revision === first),
    );
    const rows = new Map<SheetFacts, MarkIndex<BarFacts>>();
    if (alike) return rows;
    for (const sheet of sheets) {
      const latest = new MarkIndex<BarFacts>();
      const member = this.#memberIn(sheet);
      for (const facts of sheet.bars) keepLatest(latest, facts, member(facts));
      for (const other of sheets) {
        if (other !== sheet && this.#isSameList(sheet, other))
          for (const facts of other.bars) keepLatest(latest, facts, member(facts));
      }
      rows.set(sheet, latest);
    }
    return rows;
  }

  /** One schedule by its reference or name; where a sheet says neither, by the bars that both hold. */
  #isSameList(sheet: SheetFacts, other: SheetFacts): boolean {
    const [one, two] = [this.#known.get(sheet)?.schedule, this.#known.get(other)?.schedule];
    if (one != null && two != null) return one === two;
    const [few, many] = sheet.bars.length <= other.bars.length ? [sheet, other] : [other, sheet];
    const marks = marksOf(many, this.#marks, readMember);
    const shared = few.bars.filter(({ row, markKey }) => {
      const same = markKey === null ? undefined : marks.get(row.member, markKey);
      return same?.row.size?.diameter === row.size?.diameter && same?.row.shape === row.shape;
    }).length;
    return shared > 0 && shared >= few.bars.length * MOST;
  }

  /** Where a sheet's name says its schedule, a member taken from that name is none. */
  #memberIn(sheet: SheetFacts): (facts: BarFacts) => string | null {
    return this.#known.get(sheet)?.schedule == null ? readMember : writtenMember;
  }
}

const revisionOf = ({ row }: BarFacts): string => JSON.stringify(row.revision);

/** The one revision of all rows, several where they differ; none without rows. */
function oneRevision(bars: readonly BarFacts[]): readonly (string | null)[] {
  return [...new Set(bars.map(({ row }) => row.revision))];
}

const remembered = new WeakMap<BookFacts, BookRevisions>();

const readMember = ({ row }: BarFacts): string | null => row.member;

/** Null where no member is written, so that the sheet's name was taken for one. */
function writtenMember({ row, sheet }: BarFacts): string | null {
  return row.member === sheet.sheet.name.trim() ? null : row.member;
}

function marksOf(
  sheet: SheetFacts,
  known: Map<SheetFacts, MarkIndex<BarFacts>>,
  member: (facts: BarFacts) => string | null,
): MarkIndex<BarFacts> {
  let marks = known.get(sheet);
  if (marks === undefined) {
    marks = new MarkIndex();
    for (const facts of sheet.bars) {
      const { markKey, row } = facts;
      if (markKey !== null && !row.struckThrough) marks.keep(member(facts), markKey, facts);
    }
    known.set(sheet, marks);
  }
  return marks;
}

function keepLatest(latest: MarkIndex<BarFacts>, facts: BarFacts, member: string | null): void {
  const { markKey, row } = facts;
  if (markKey === null || row.struckThrough) return;
  const known = latest.keep(member, markKey, facts);
  if (known !== facts && isLaterRevision(row.revision, known.row.revision))
    latest.replace(member, markKey, facts);
}
