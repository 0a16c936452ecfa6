import { findGrade } from "../bars/find-grade";
import type { BarRow, ColumnKind } from "../schedule/bar-row";
import { withoutNoise } from "../schedule/cells/without-noise";
import { amountColumn } from "../schedule/columns/amount-column";
import { IN_COLUMN_UNIT } from "../schedule/columns/in-column-unit";
import { markKey } from "../schedule/mark-key";
import type { Cell } from "../schedule/sheet";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { Bar, DimLetter, Grade, Standard } from "../standards/port";
import type { BarKind } from "./bar-kind";
import type { FactsInHand } from "./facts-in-hand";
import type { SaidWords } from "./said-words";
import type { SheetOfRow } from "./sheet-habits";
import { sizeName } from "./size-name";

/** The place of a bar of which nothing is kept once it is out of hand. */
export const APART = -1;

/** What a bar's row says, as it is compared and named: its cells, mark, words, size, grade, coating and count. */
export class RowFacts {
  #markKey: string | null | undefined;
  #kind: BarKind | undefined;

  constructor(
    public row: BarRow,
    public sheet: SheetOfRow,
    readonly standard: Standard,
    /** its place among the bars of its sheet */
    public place = APART,
  ) {}

  /** What is quickly worked out again is kept for the one row of the sheet that is in hand. */
  protected get inHand(): FactsInHand {
    const { inHand } = this.sheet;
    if (inHand.owner !== this) inHand.take(this);
    return inHand;
  }

  /** The same facts under a new reading of the sheet, where the row itself reads as before. */
  movedTo(row: BarRow, sheet: SheetOfRow, place: number): this {
    this.row = row;
    this.sheet = sheet;
    this.place = place;
    this.#kind = undefined;
    return this;
  }

  /** The cell as typed, without the last bits that a formula left; null where the table has no such column. */
  typed(field: ColumnKind): Cell {
    const column = amountColumn(this.row, field);
    return column === null ? null : withoutNoise(this.sheet.sheet.cell(this.row.row, column));
  }

  /** What the user sees in the cell, where the host says it. */
  shown(field: ColumnKind): string | undefined {
    const column = this.row.table.columns.get(field);
    return column === undefined ? undefined : this.sheet.sheet.shown?.(this.row.row, column.column);
  }

  /** A number of the column as mm or kg; a count stays itself. */
  inMillimetres(field: ColumnKind, value: number): number {
    const { columns, bySizeUnit } = this.row.table;
    const isSized = !columns.has(field) && amountColumn(this.row, field) !== null;
    const unit = (isSized ? bySizeUnit : columns.get(field)?.unit) ?? null;
    return unit === null ? value : value * IN_COLUMN_UNIT[unit];
  }

  /** True where this bar's own table has the column. */
  has(field: ColumnKind): boolean {
    return this.row.table.columns.has(field);
  }

  /** Mark as it is compared: upper case, without blanks or leading noughts. */
  get markKey(): string | null {
    if (this.#markKey === undefined) {
      this.#markKey = this.row.mark === null ? null : markKey(this.row.mark, this.row.member);
    }
    return this.#markKey;
  }

  /** Member and remark in lower case, for what the sheet says only in words. */
  get words(): string {
    return this.wordsSaid().text;
  }

  /** What `read` makes of `words`: it is asked once for all bars of the same words. */
  inWords<Answer>(read: (words: string) => Answer): Answer {
    return this.wordsSaid().ask(read);
  }

  // no name with #: each bar of a full sheet would hold a word more
  private wordsSaid(): SaidWords {
    const { inHand } = this;
    inHand.said ??= this.sheet.words.of(this.row.member, this.row.remark);
    return inHand.said;
  }

  /** Bars of the same size, grade, shape and coating. */
  get kind(): BarKind {
    if (this.#kind !== undefined) return this.#kind;
    const { inHand } = this;
    if (inHand.kind === undefined) {
      const { size, shape } = this.row;
      inHand.kind = this.sheet.kinds.of(size, shape, this.gradeName, this.coating);
      if (inHand.kind.isKept) this.#kind = inHand.kind;
    }
    return inHand.kind;
  }

  /** The size as it is named in messages. */
  get sizeName(): string {
    return sizeName(this.row);
  }

  get bar(): Bar | null {
    return this.row.size?.bar ?? null;
  }

  get diameter(): number | null {
    return this.row.size?.diameter ?? null;
  }

  /** The grade's name as the row says it: its own column, else the letters of the size. */
  get gradeName(): string | null {
    const { grade, size } = this.row;
    if (grade !== null) return grade;
    return size !== null && size.prefix !== "" ? size.prefix : null;
  }

  /** Null where none is said or the standard does not know it. */
  get grade(): Grade | null {
    const { kind } = this;
    if (kind.grade === undefined) {
      const { gradeName } = kind;
      kind.grade = gradeName === null ? null : findGrade(this.standard.grades, gradeName);
    }
    return kind.grade;
  }

  /** A round bar without ribs. */
  get isPlain(): boolean {
    return this.grade?.plain === true;
  }

  /** A coating said in its own column, else in the remark. */
  get coating(): string | null {
    const { inHand } = this;
    if (inHand.coating === undefined) inHand.coating = this.row.coating ?? this.inWords(coatingIn);
    return inHand.coating;
  }

  /** Bars in all. */
  get count(): number | null {
    const { total, members, each } = this.row;
    if (total !== null) return total;
    return members !== null && each !== null ? members * each : null;
  }

  /** mm of a dimension by its letter; null where it is blank. */
  dim(letter: DimLetter): number | null {
    if (letter === "R") return this.row.radius;
    return this.row.dims[DIMENSION_LETTERS.indexOf(letter)] ?? null;
  }
}

function coatingIn(words: string): string | null {
  const said = /galvani[sz]ed|epoxy/.exec(words);
  return said === null ? null : said[0].startsWith("galvani") ? "galvanised" : "epoxy";
}

/** What a waiver is kept under: it holds when rows move. */
export function rowKey(facts: RowFacts): string {
  const { member, mark } = facts.row;
  return mark === null ? `row ${facts.sheet.sheet.top + facts.row.row + 1}` : `${member ?? ""} | ${mark}`;
}
