import type { ColumnKind, TableReading } from "../bar-row";
import { holdsWord, isWord, plainWords, wordsOf } from "../cells/row-words";
import { saysVoid } from "../cells/says-void";
import { sizeBand } from "../cells/size-band";
import type { TableLayout } from "../columns/decide-columns";
import { unitInHeader } from "../header/recognise-header";
import type { Cell } from "../sheet";
import { barBeside } from "./bar-beside";
import { isFilledIn } from "./is-filled-in";
import { memberHeading } from "./member-heading";
import { type Heading, isHeadingText, readHeading } from "./read-heading";
import { areLabelled, isLabelled, isTitleOrFoot, labelOf, shownText } from "./row-cells";
import type { RowSigns } from "./row-signs";
import { isFootRow, isUnderSizes, totalKind } from "./sum-rows";

/** "1,234", "= 1,234", "1,234 kg" */
const SUM_WRITTEN = /^[\d.,\s]+$|[=:]\s*[\d.,]+|\s(?:kgs?|mt|t)\s+\d|\d\s*(?:kgs?|mt|t|tonnes?|nos?|lbs?)\b/i;
const MOST_LABELS = 4;
/** cells and numbers that a bar has at least: mark, size, count and length */
const LEAST_OF_BAR = 4;
const LEAST_NUMBERS = 2;

/** "T12", "ds 16", "Ø8", "12 mm", "12mm ø", "#5", "15M", "B500 Ø8", "Ø8 A240": a size, not a count or a length */
const SIZE_NAMED =
  /^(?:\p{L}+\s?\d*\p{L}*\s+)?(?:(?:\p{L}{1,3}|[øØ⌀Φφ#])\s?\d{1,2}(?:[.,]\d)?(?:\s?mm)?|\d{1,2}(?:[.,]\d)?(?:(?:\s?mm)?\s?(?:[øØ⌀Φφ]|dia\.?)|\s?mm|m)|\d[\d/]*\s?")(?:\s\p{L}{1,3}[ -]?\d{2,3}\p{L}{0,3})?$/iu;
/** the same in one cell with what there is of it: "Ø8   kg 271" */
const SIZE_AND_AMOUNT = /^[øØ⌀Φφ]\s?\d{1,2}\s*[:=]?\s*(?:kg|t|m)?\.?\s*\d[\d.,\s]*(?:kg|t|m)?$/iu;
const TITLE = /^[^\d]{4,}$/;
const UNIT_OF_SUM = /^(?:kgs?|t|to|tons?|tonnes?|lbs?|m|mt|кг|т|กก|ton)\.?$/i;
/** size, and length, mass and bars of it, or a unit */
const MOST_AMOUNTS = 6;
const LONGEST_SIZE = 40;
const LONGEST_HEADING = 60;

const AMOUNTS = ["mass", "totalLength"] as const satisfies readonly ColumnKind[];
const LONGEST_LABEL = 60;

/** Two words, or signs that need no blank between them: no mark of a bar. */
function isLongLabel(words: string): boolean {
  if (words.length > LONGEST_LABEL) return false;
  return (words.trim().split(/\s+/).length > 1 && /\p{L}{2}/u.test(words)) || UNPARTED_WORD.test(words);
}

/** A word of four letters, or signs that need no blank between them. */
function isWordy(cell: Cell | undefined): boolean {
  if (typeof cell !== "string" || cell.length > LONGEST_WORDS) return false;
  return /\p{L}{4}/u.test(cell) || UNPARTED_WORD.test(cell);
}

const LONGEST_WORDS = 200;
const UNPARTED_WORD = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Hangul}\p{Script=Thai}]{2}/u;

/** A word for sums anywhere among others; where words stand without blanks, at their end. */
function holdsSum(plain: string): boolean {
  return (
    holdsWord("total", plain) ||
    [...wordsOf("total")].some((word) => UNPARTED.test(word) && plain.includes(word))
  );
}

const UNPARTED = /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Hangul}\p{Script=Thai}]{2,}$/u;

type SumKind = "total" | "subtotal" | "carried" | "wastage";

/** What is seen of the part of a row under one table; each sign is looked for when it is first asked. */
export class RowEvidence {
  readonly table: TableReading;
  /** columns in which something stands, those left out as well */
  readonly all: readonly number[];
  readonly filled: readonly number[];
  private readonly seen = new Map<string, unknown>();

  constructor(
    readonly cells: readonly Cell[],
    all: readonly number[],
    layout: TableLayout,
    private readonly signs: RowSigns,
    /** the member of the bar above */
    private readonly memberAbove: string | null | undefined,
    /** the table is a block of sums, by sizes one beside another or one below another */
    readonly summary: "across" | "down" | null,
    /** many blank rows lie between the last bar and this row */
    readonly afterGap: boolean,
    /** a line of those sums for sure */
    readonly isLineOfSums = false,
    /** a number under a column is what the bars above add up to */
    private readonly isSumAbove: (column: number, value: number) => boolean = () => false,
    /** a number is what the lines of sums right above add up to in its column */
    private readonly isSumOfLine: (column: number, value: number) => boolean = () => false,
    /** undefined where no bar is above */
    private readonly markAbove?: string | null,
  ) {
    const { table, ignored, left, right } = layout;
    this.table = table;
    this.left = left;
    this.right = right;
    this.all = all;
    const own = ignored.size === 0 ? all : all.filter((column) => !ignored.has(column));
    const filled = withoutBeside(cells, own, layout.right);
    this.filled = filled.length === 0 && isMemberAlone(cells, all) ? all : filled;
  }

  readonly left: number;
  readonly right: number;

  /** As much as a bar has, and nothing of it under a column of the table: a row that was moved away. */
  get isBesideTable(): boolean {
    const { all, cells } = this;
    if (all.length < LEAST_OF_BAR || !all.every((at) => at < this.left || at > this.right)) return false;
    const numbers = all.filter((column) => typeof cells[column] === "number").length;
    if (numbers < LEAST_NUMBERS) return false;
    if (all.some((at) => SIZE_NAMED.test(shownText(cells[at]).slice(0, LONGEST_SIZE + 1)))) return true;
    return all[0]! > this.right && barBeside(cells, this, this.signs) >= 0;
  }

  get inSummary(): boolean {
    return this.summary !== null;
  }

  get isPlainBar(): boolean {
    return this.signs.isPlainBar(this.cells, this.memberAbove);
  }
  get fields(): number {
    return this.once("fields", () => this.signs.fieldsFilled(this.cells));
  }
  get hasSize(): boolean {
    return isFilledIn(this.table, "size", this.filled);
  }
  get hasMark(): boolean {
    return isFilledIn(this.table, "mark", this.filled);
  }
  get hasShape(): boolean {
    return isFilledIn(this.table, "shape", this.filled);
  }
  get hasCount(): boolean {
    return (["total", "each", "members"] as const).some((kind) => isFilledIn(this.table, kind, this.filled));
  }
  get hasLength(): boolean {
    return isFilledIn(this.table, "length", this.filled);
  }
  get hasNoNameColumn(): boolean {
    return !this.table.columns.has("size") && !this.table.columns.has("mark");
  }
  get namesBar(): boolean {
    return this.once("namesBar", () => this.signs.namesBar(this.cells));
  }
  get readsSize(): boolean {
    return this.once("readsSize", () => this.signs.readsSize(this.cells));
  }
  /** 86.7 under the size is a mass or a length in all and no bar of any table. */
  get sizeIsFraction(): boolean {
    const cell = this.cells[this.table.columns.get("size")?.column ?? -1];
    return typeof cell === "number" && !Number.isInteger(cell);
  }
  get isTitleOrFoot(): boolean {
    return this.once("isTitleOrFoot", () => isTitleOrFoot(this.cells, this.filled));
  }
  get areLabelled(): boolean {
    return areLabelled(this.cells, this.filled);
  }
  get isFootOfColumns(): boolean {
    return isFootRow(this.cells, this.filled, this.table);
  }
  get isUnderSizes(): boolean {
    return isUnderSizes(this.cells, this.filled, this.table);
  }
  get isOneText(): boolean {
    return this.filled.length === 1 && typeof this.cells[this.filled[0] as number] === "string";
  }
  get isGroupWord(): boolean {
    return isWord("group", plainWords(this.words));
  }
  get holdsAccessory(): boolean {
    return this.filled.some((column) => holdsWord("accessory", plainWords(shownText(this.cells[column]))));
  }
  get saysCancelled(): boolean {
    return this.filled.some((column) => {
      const cell = this.cells[column];
      return typeof cell === "string" && holdsWord("superseded", plainWords(cell));
    });
  }
  /** A cell that says nothing else. */
  get isVoid(): boolean {
    return this.filled.some((column) => saysVoid(this.cells[column]));
  }
  get holdsConcrete(): boolean {
    return this.filled.some((column) => holdsWord("concrete", plainWords(shownText(this.cells[column]))));
  }
  /** Words that are more than "total" stand before a size and what there is of it: the title of an abstract, on its first line. */
  get isTitledAmount(): boolean {
    const second = this.cells[this.all[1] ?? -1];
    const isSecond =
      typeof second === "string" && second.length <= LONGEST_SIZE && SIZE_NAMED.test(second.trim());
    return isSecond && !isWord("total", plainWords(this.words)) && this.isAmountOfSize;
  }
  /** A size is named first, behind the title of a summary perhaps, and only numbers and units follow. */
  get isAmountOfSize(): boolean {
    const cells = this.all.map((column) => this.cells[column] ?? null);
    const [title, second] = cells;
    const isTitled =
      typeof title === "string" &&
      typeof second === "string" &&
      second.length <= LONGEST_SIZE &&
      TITLE.test(title);
    const [first, ...rest] = isTitled && SIZE_NAMED.test(second.trim()) ? cells.slice(1) : cells;
    if (typeof first !== "string" || first.length > LONGEST_SIZE) return false;
    const text = first.trim();
    if (rest.length === 0) return SIZE_AND_AMOUNT.test(text);
    if (rest.length > MOST_AMOUNTS || !(SIZE_NAMED.test(text) || sizeBand(text) !== null)) return false;
    return (
      rest.some((cell) => typeof cell === "number") &&
      rest.every((cell) => typeof cell === "number" || isUnit(cell))
    );
  }
  /** "10 < Ø <= 18" is a class of sizes, which no bar is of. */
  get boundsSizes(): boolean {
    const first = this.cells[this.all[0] ?? -1];
    return typeof first === "string" && first.length <= LONGEST_SIZE && sizeBand(first.trim()) !== null;
  }
  get namesUnit(): boolean {
    return this.all.some((column) => isUnit(this.cells[column] ?? null));
  }
  /**
   * Cells of words alone, several of them, from where names stand on: a page's title, a member and its drawing. Words that
   * begin under the size are in place of a size.
   */
  get areWords(): boolean {
    const first = this.all[0] ?? -1;
    const isName =
      first <= this.left || (["mark", "member"] as const).some((kind) => this.isUnder(kind, first));
    if (!isName || this.isUnder("size", first)) return false;
    return this.all.length > 1 && this.all.every((column) => isWordy(this.cells[column]));
  }
  /** The text under the mark may be a mark as that of the bar above is: both are words, or it is none. */
  get isMarkLikeOthers(): boolean {
    const cell = this.cells[this.table.columns.get("mark")?.column ?? -1];
    return !isWordy(cell) || this.markAbove === null || isWordy(this.markAbove);
  }
  /** "Project: Yard hall" under the shape is none. */
  get labelsShape(): boolean {
    return isLabelled(this.cells[this.table.columns.get("shape")?.column ?? -1]);
  }
  get hasNumber(): boolean {
    return this.all.some((column) => typeof this.cells[column] === "number");
  }
  get areNumbers(): boolean {
    return this.filled.every((column) => typeof this.cells[column] === "number");
  }
  /** A line of sums whose first word makes it none is a bar. */
  get labelIsSum(): boolean {
    return totalKind([plainWords(this.words)], true) !== null;
  }

  /** Words, a word for sums among them, and amounts of rows: "Sivu 2 yhteensä kg". */
  get sumsInWords(): boolean {
    return this.amountsAlone.length > 0 && isLongLabel(this.words) && holdsSum(plainWords(this.words));
  }

  /** Words, and beside them only what the bars above add up to. */
  get isSumOfRows(): boolean {
    const { amountsAlone } = this;
    if (amountsAlone.length === 0 || !isLongLabel(this.words)) return false;
    return amountsAlone.every((column) => this.isSumAbove(column, this.cells[column] as number));
  }

  /** One word, and below lines of sums what they add up to. */
  get isSumOfLines(): boolean {
    const [label, number, another] = this.all;
    const value = this.cells[number ?? -1];
    if (typeof this.cells[label ?? -1] !== "string" || typeof value !== "number" || another !== undefined)
      return false;
    return this.isSumOfLine(number as number, value);
  }

  /** The columns of numbers of a row that holds one text, and beside it amounts of rows alone. */
  private get amountsAlone(): readonly number[] {
    const [label, ...others] = this.filled;
    const isAlone =
      typeof this.cells[label ?? -1] === "string" &&
      others.every(
        (column) =>
          typeof this.cells[column] === "number" && AMOUNTS.some((kind) => this.isUnder(kind, column)),
      );
    return isAlone ? others : [];
  }

  private isUnder(kind: ColumnKind, column: number): boolean {
    return this.table.columns.get(kind)?.column === column;
  }

  /** The first words of the row stand where its mark does. */
  get labelIsMark(): boolean {
    const cell = this.cells[this.table.columns.get("mark")?.column ?? -1];
    return cell !== null && cell !== undefined && String(cell).trim() === this.words.trim();
  }

  /** The first cell as the user sees it. */
  get words(): string {
    return labelOf(this.cells, this.filled);
  }

  /** What sum the words of the row make it; remarks are not looked at. */
  get sumKind(): SumKind | null {
    return this.once("sumKind", () => {
      const remark = this.table.columns.get("remark")?.column;
      const labels: string[] = [];
      let hasNumbers = false;
      for (const column of this.all) {
        const cell = this.cells[column];
        if (typeof cell === "number" || (typeof cell === "string" && SUM_WRITTEN.test(cell)))
          hasNumbers = true;
        if (typeof cell === "string" && column !== remark && labels.length < MOST_LABELS)
          labels.push(plainWords(cell));
      }
      return totalKind(labels, hasNumbers);
    });
  }

  /** The member that a lone text, or a row of few cells, names for the bars below. */
  get heading(): Heading | null {
    return this.once("heading", () => {
      if (!this.isOneText) return memberHeading(this.table, this.signs, this.cells, this.filled);
      const column = this.filled[0] as number;
      const at = (kind: "member" | "mark") => this.table.columns.get(kind)?.column;
      const standsFirst = column <= this.left + 1 || column === at("member") || column === at("mark");
      const text = String(this.cells[column]);
      return isHeadingText(text, standsFirst) ? readHeading(text) : null;
    });
  }

  private once<T>(name: string, look: () => T): T {
    if (!this.seen.has(name)) this.seen.set(name, look());
    return this.seen.get(name) as T;
  }
}

/** Texts that stand apart to the right of a table are remarks about it, and no part of the row. */
function withoutBeside(cells: readonly Cell[], filled: readonly number[], right: number): readonly number[] {
  if ((filled.at(-1) ?? 0) <= right + 1) return filled;
  const own = filled.filter((column) => column <= right + 1 || typeof cells[column] !== "string");
  return own.length === 0 ? filled : own;
}

/** A member named in a column that is left out, such as that of the serial numbers. */
function isMemberAlone(cells: readonly Cell[], all: readonly number[]): boolean {
  const text = all.length === 1 ? cells[all[0] as number] : null;
  return typeof text === "string" && text.length <= LONGEST_HEADING && isHeadingText(text, false);
}

const LONGEST_UNIT = 12;

function isUnit(cell: Cell): boolean {
  if (typeof cell !== "string" || cell.length > LONGEST_UNIT) return false;
  const text = cell.trim();
  return UNIT_OF_SUM.test(text) || isWord("running-metres", plainWords(text)) || isUnitAlone(text);
}

/** "ק\"ג", "กก.": a unit in any writing, and no figure. */
function isUnitAlone(text: string): boolean {
  return !/[\d/]/.test(text) && (text.match(/\p{L}/gu) ?? []).length <= 4 && unitInHeader(text) !== null;
}
