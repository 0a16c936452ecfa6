import type { Standard } from "../standards/port";
import type {
  BarRow,
  RowClass,
  ScheduleReading,
  SheetGuess,
  SummaryBlock,
  TableReading,
  TotalRow,
} from "./bar-row";
import { type Carried, isSameCarried } from "./cells/read-count-cells";
import { readRemark } from "./cells/read-remark";
import { holdsWord, isWord, plainWords } from "./cells/row-words";
import { decideColumns } from "./columns/decide-columns";
import { findHeader, type Header, type HeaderSource, knownWords } from "./header/find-header";
import { listsOtherThings } from "./header/lists-other-things";
import { KNOWN_HEADER_WORDS } from "./header/recognise-header";
import { numbersColumns, repeatsHeader } from "./header/repeated-header";
import { assertSheet, parseReadOptions, type ReadOptions } from "./read-options";
import { type ColumnDecision, keepForRereading, type Resumable } from "./reread-rows";
import { finishReading } from "./rows/finish-reading";
import { isFilledIn } from "./rows/is-filled-in";
import { memberHeading } from "./rows/member-heading";
import { type BarRowReader, barRowReader } from "./rows/read-bar-row";
import { type Heading, isHeadingText, readHeading } from "./rows/read-heading";
import { filledColumns, isTitleOrFoot, labelOf, shownText } from "./rows/row-cells";
import { isFootRow, sizesInRow, sumsOnly, totalKind, totalRow } from "./rows/sum-rows";
import { addTitleFacts } from "./rows/title-facts";
import type { Cell, Sheet } from "./sheet";
import { sheetAccess } from "./sheet-access";
import { inOneColumn, splitPasted } from "./split-pasted";

const BLANKS_THAT_END = 20;
/** "1,234", "= 1,234", "1,234 kg" */
const SUM_WRITTEN = /^[\d.,\s]+$|[=:]\s*[\d.,]+|\d\s*(?:kgs?|mt|t|tonnes?|nos?|lbs?)\b/i;
const NOT_OF_BAR = /^(?:notes?|all|nb|general|remarks?)\b/;

/**
 * Everything that can be read of a sheet: its schedules, each row's class and reason, every bar row
 * with what could not be read or was guessed. Lengths mm, masses kg. Bad cells are problems of their
 * row; `options` come out of the workbook and are ignored, and said so, where they are malformed.
 *
 * @example readSchedule(sheetFromRows("B1", rows), standard).bars[0]?.size?.diameter // 16
 */
export function readSchedule(sheet: Sheet, standard: Standard, options?: ReadOptions): ScheduleReading {
  assertSheet(sheet);
  const { options: read, wrong } = parseReadOptions(options);
  const guesses: SheetGuess[] =
    wrong === null
      ? []
      : [{ guess: "stored-corrections", reason: wrong, asks: false, row: null, column: null }];
  const pasted = splitPasted(sheet, sheetAccess(sheet, read).cells);
  const reader = new SheetReader(pasted ?? sheet, standard, read);
  const reading = reader.read();
  const whole = { ...reading, guesses: [...guesses, ...(reading.guesses ?? [])] };
  if (pasted !== null) return inOneColumn(whole);
  const resumable = reader.resumable();
  if (resumable !== null) keepForRereading(whole, resumable);
  return whole;
}

interface Block {
  readonly reader: BarRowReader;
  readonly carried: Carried;
  blanks: number;
  ended: boolean;
  /** a block of sums, not of bars */
  readonly summary: {
    headerRow: number;
    rows: TotalRow[];
    sizes: readonly { size: string; column: number }[];
  } | null;
}

class SheetReader {
  private readonly access;
  private readonly classes: RowClass[];
  private readonly reasons = new Map<number, string>();
  private readonly bars: BarRow[] = [];
  private readonly totals: TotalRow[] = [];
  private readonly tables: TableReading[] = [];
  private readonly guesses: SheetGuess[] = [];
  private readonly notes: { row: number; text: string }[] = [];
  private readonly facts = new Map<string, string>();
  private readonly summaries: SummaryBlock[] = [];
  private blocks: Block[] = [];
  private headerUntil = -1;
  /** by place in `bars` */
  private readonly carriedTo: Carried[] = [];
  private readonly decisions: ColumnDecision[] = [];
  private isMarkAsked = false;

  constructor(
    private readonly sheet: Sheet,
    private readonly standard: Standard,
    private readonly options: ReadOptions,
  ) {
    this.access = sheetAccess(sheet, options);
    this.classes = new Array<RowClass>(sheet.rowCount).fill("blank");
  }

  read(): ScheduleReading {
    this.readRows(undefined);
    if (this.tables.length === 0) this.readRows(2);
    const isConfirmed = this.access.isConfirmed;
    const finished = finishReading(this.sheet, this.standard, this.bars, this.notes, isConfirmed);
    return {
      sheet: this.sheet.name,
      tables: this.tables,
      rowClasses: this.classes,
      unreadReasons: this.reasons,
      bars: this.bars,
      totals: this.totals,
      noHeader: this.tables.length > 0 || this.summaries.length > 0 ? null : this.nearest(),
      guesses: [...this.guesses, ...finished.guesses],
      summaries: this.summaries,
      titleFacts: this.facts,
      lengthStep: finished.lengthStep,
    };
  }

  /** `least`: known words that make a header; a second pass is content with a header of nothing else. */
  private readRows(least: number | undefined): void {
    this.reasons.clear();
    this.notes.length = 0;
    this.headerUntil = -1;
    const { cells } = this.access;
    for (let row = 0; row < this.sheet.rowCount; row += 1) {
      const here = cells(row);
      if (row <= this.headerUntil) {
        this.classes[row] = "heading";
        continue;
      }
      const only = this.blocks.length === 1 ? this.blocks[0] : undefined;
      // the row right under a header may number its columns
      const isUnderHeader = row === this.headerUntil + 1;
      if (only !== undefined && only.summary === null && !isUnderHeader && only.reader.isPlainBar(here)) {
        only.blanks = 0;
        only.ended = false;
        this.take(only, here, row);
        this.classes[row] = "bar";
        continue;
      }
      this.classes[row] = this.classify(here, row, least);
    }
  }

  private classify(cells: readonly Cell[], row: number, least: number | undefined): RowClass {
    const filled = filledColumns(cells);
    if (filled.length === 0) {
      for (const block of this.blocks) {
        block.blanks += 1;
        if (block.blanks >= BLANKS_THAT_END) block.ended = true;
      }
      return "blank";
    }
    const layouts = this.blocks.map(({ reader: { layout } }) => layout);
    if (repeatsHeader(layouts, cells, filled)) return "heading";
    if (row === this.headerUntil + 1 && numbersColumns(cells, filled)) return "heading";
    if (filled.length > 1 && this.beginsTable(cells, row, least)) return "heading";
    if (this.beginsSummary(cells, row, filled)) return "heading";
    if (this.blocks.length === 0) return this.outside(cells, row, filled);
    let best: RowClass = "blank";
    const rest = new Set(filled);
    for (let index = 0; index < this.blocks.length; index += 1) {
      const block = this.blocks[index] as Block;
      const mine = this.columnsOf(index, filled);
      for (const column of mine) rest.delete(column);
      const one = mine.length === 0 ? "blank" : this.inBlock(block, cells, row, mine);
      if (RANK[one] > RANK[best]) best = one;
    }
    if (best === "blank" && rest.size > 0) return this.outside(cells, row, filled);
    return best;
  }

  /** A block takes its own columns; the last one everything to the right, the first to the left. */
  private columnsOf(index: number, filled: readonly number[]): number[] {
    const from = index === 0 ? 0 : (this.blocks[index]?.reader.layout.left ?? 0);
    const to = this.blocks[index + 1]?.reader.layout.left ?? Number.POSITIVE_INFINITY;
    return filled.filter((column) => column >= from && column < to);
  }

  private beginsTable(cells: readonly Cell[], row: number, least: number | undefined): boolean {
    const source: HeaderSource = { rowCount: this.sheet.rowCount, ...this.access };
    if (least === undefined && this.access.corrections === 0 && knownWords(cells) < 2) return false;
    if (least !== undefined && !allKnown(cells)) return false;
    const header = findHeader(source, row, this.standard, least);
    if (header === null || header.blocks.some((block) => listsOtherThings(source, header, block)))
      return false;
    const kept = this.blocks.filter(({ reader: { layout } }) =>
      header.blocks.every(({ left, right }) => right < layout.left || left > layout.right),
    );
    this.blocks = [...kept, ...this.blocksOf(header)].sort(
      (one, other) => one.reader.layout.left - other.reader.layout.left,
    );
    this.headerUntil = header.bottom;
    return true;
  }

  private blocksOf(header: Header): Block[] {
    const source = {
      rowCount: this.sheet.rowCount,
      standard: this.standard,
      cells: this.access.cells,
      isHiddenColumn: (column: number) => this.sheet.isHiddenColumn?.(column) ?? false,
      isConfirmed: this.access.isConfirmed,
    };
    return header.blocks.map((found) => {
      const layout = decideColumns(source, header, found);
      const decide = (changed: Sheet) => {
        const cells = (row: number) => changed.rowCells?.(row) ?? [];
        const isHiddenColumn = (column: number) => changed.isHiddenColumn?.(column) ?? false;
        return decideColumns({ ...source, cells, isHiddenColumn }, header, found);
      };
      this.decisions.push({ layout, headerBottom: header.bottom, decide });
      const isSummary = sumsOnly(layout.table);
      if (!isSummary) {
        this.tables.push(layout.table);
        this.guesses.push(...layout.guesses);
      }
      const summary = isSummary ? { headerRow: header.bottom, rows: [], sizes: [] } : null;
      if (summary !== null) this.summaries.push(summary);
      const isConfirmed = this.access.isConfirmed;
      const barOfMark = (mark: string) => this.barOfMark(mark);
      const reader = barRowReader(this.sheet, this.standard, { isConfirmed, barOfMark }, layout);
      const grade = this.options.grade ?? null;
      return {
        reader,
        carried: { member: null, heading: null, members: null, membersTyped: null, grade },
        blanks: 0,
        ended: false,
        summary,
      };
    });
  }

  /** A row of bar sizes over sums: a block of masses by size. */
  private beginsSummary(cells: readonly Cell[], row: number, filled: readonly number[]): boolean {
    if (filled.length < 3 || this.tables.length === 0) return false;
    const sizes = sizesInRow(cells, filled, this.standard);
    if (sizes === null) return false;
    const block = this.blocks[this.blocks.length - 1];
    if (block === undefined) return false;
    const summary = { headerRow: row, rows: [], sizes };
    this.summaries.push(summary);
    this.blocks = [{ ...block, blanks: 0, ended: false, summary }];
    return true;
  }

  private inBlock(block: Block, cells: readonly Cell[], row: number, all: readonly number[]): RowClass {
    const { reader } = block;
    const { table, ignored } = reader.layout;
    block.blanks = 0;
    const filled = ignored.size === 0 ? all : all.filter((column) => !ignored.has(column));
    if (filled.length === 0) return this.note(cells, row, all, false);
    if (block.summary !== null) return this.inSummary(block, cells, row, filled);
    if (reader.isPlainBar(cells)) return this.bar(block, cells, row);
    const fields = reader.fieldsFilled(cells);
    const hasSize = isFilledIn(table, "size", filled);
    const hasMark = isFilledIn(table, "mark", filled);
    const hasShape = isFilledIn(table, "shape", filled);
    if (!(hasSize && hasShape && fields > 2)) {
      const sum = this.sum(block, cells, row, all);
      if (sum !== null) return sum;
    }
    if (!hasSize && !hasShape && isFootRow(cells, filled, table)) {
      return this.total(block, cells, row, filled, "total");
    }
    if (block.ended && fields < 3) return this.outside(cells, row, filled);
    if (filled.length === 1 && typeof cells[filled[0] as number] === "string") {
      return this.lone(block, cells, row, filled[0] as number);
    }
    if (!hasShape && isTitleOrFoot(cells, filled) && !reader.readsSize(cells))
      return this.note(cells, row, filled, false);
    const heading = hasSize || hasShape ? null : memberHeading(reader, cells, filled);
    if (heading !== null) {
      this.carryHeading(block.carried, heading);
      return "heading";
    }
    const needsNoName = !table.columns.has("size") && !table.columns.has("mark");
    if (hasSize && !hasShape && !reader.namesBar(cells)) {
      if (filled.some((column) => holdsWord("accessory", plainWords(shownText(cells[column])))))
        return this.note(cells, row, filled, false);
      if (!hasMark) {
        this.reasons.set(
          row,
          "neither its size nor its count nor its length could be read; a remark or order line belongs outside the columns of the bars",
        );
        return "unread";
      }
    }
    if (fields >= 2 && (hasSize || hasMark || needsNoName)) return this.bar(block, cells, row);
    if (hasSize && hasMark) return this.bar(block, cells, row);
    if (fields === 0 && !hasMark) return this.note(cells, row, filled, !isTitleOrFoot(cells, filled));
    if (!hasMark && !hasSize && !hasShape && filled.every((column) => typeof cells[column] === "number")) {
      return this.total(block, cells, row, filled, "total");
    }
    this.reasons.set(row, unreadReason(hasMark, hasSize, fields));
    return "unread";
  }

  /** The class of a row whose words make it a sum; null where they do not. Remarks are not looked at. */
  private sum(block: Block, cells: readonly Cell[], row: number, filled: readonly number[]): RowClass | null {
    const { table } = block.reader.layout;
    const remark = table.columns.get("remark")?.column;
    const labels: string[] = [];
    let hasNumbers = false;
    for (const column of filled) {
      const cell = cells[column];
      if (typeof cell === "number" || (typeof cell === "string" && SUM_WRITTEN.test(cell))) hasNumbers = true;
      if (typeof cell === "string" && column !== remark && labels.length < 4) labels.push(plainWords(cell));
    }
    const kind = totalKind(labels, hasNumbers);
    if (kind === null) return null;
    if (kind !== "wastage") return this.total(block, cells, row, filled, kind);
    return isFilledIn(table, "size", filled) ? null : this.note(cells, row, filled, false);
  }

  private inSummary(block: Block, cells: readonly Cell[], row: number, filled: readonly number[]): RowClass {
    const { summary, reader } = block;
    if (filled.length === 1 || summary === null) return this.note(cells, row, filled, false);
    const { table } = reader.layout;
    const isBar =
      isFilledIn(table, "mark", filled) &&
      isFilledIn(table, "size", filled) &&
      reader.fieldsFilled(cells) > 2;
    if (isBar && totalKind([plainWords(labelOf(cells, filled))], true) === null) {
      this.blocks = this.blocks.map((one) => (one === block ? { ...block, summary: null } : one));
      return this.bar(block, cells, row);
    }
    const line = totalRow(cells, row, filled, labelOf(cells, filled), "summary", reader.layout.comma);
    summary.rows.push(line);
    this.totals.push(line);
    return "total";
  }

  private bar(block: Block, cells: readonly Cell[], row: number): RowClass {
    block.ended = false;
    this.take(block, cells, row);
    return "bar";
  }

  private take({ reader, carried }: Block, cells: readonly Cell[], row: number): void {
    const last = this.carriedTo[this.carriedTo.length - 1];
    this.carriedTo.push(last !== undefined && isSameCarried(last, carried) ? last : { ...carried });
    this.bars.push(reader.read(cells, row, carried));
  }

  /** Null where a row can say something of another one that is not simply carried down. */
  resumable(): Resumable | null {
    const { sheet, standard, carriedTo } = this;
    const [decision, another] = this.decisions;
    if (decision === undefined || another !== undefined || this.isMarkAsked) return null;
    if (this.summaries.length > 0 || (sheet.merges ?? []).length > 0) return null;
    return { sheet, standard, carriedTo, decision, isConfirmed: this.access.isConfirmed };
  }

  private total(
    block: Block,
    cells: readonly Cell[],
    row: number,
    filled: readonly number[],
    kind: "total" | "subtotal" | "carried",
  ): RowClass {
    const label = labelOf(
      cells,
      filled.filter((column) => typeof cells[column] === "string"),
    );
    this.totals.push({
      ...totalRow(cells, row, filled, label, kind, block.reader.layout.comma),
      table: block.reader.layout.table,
    });
    block.carried.member = null;
    block.carried.heading = null;
    block.carried.members = null;
    block.carried.membersTyped = null;
    return "total";
  }

  /** One text alone: a member with its bars below, or a word about the bar above. */
  private lone(block: Block, cells: readonly Cell[], row: number, column: number): RowClass {
    const { table, left } = block.reader.layout;
    const text = String(cells[column]);
    const member = table.columns.get("member")?.column;
    const mark = table.columns.get("mark")?.column;
    const standsFirst = column <= left + 1 || column === member || column === mark;
    if (isTitleOrFoot(cells, [column])) return this.note(cells, row, [column], false);
    if (isWord("group", plainWords(text))) return "heading";
    if (isHeadingText(text, standsFirst)) {
      this.carryHeading(block.carried, readHeading(text));
      return "heading";
    }
    return this.note(cells, row, [column], true);
  }

  private carryHeading(carried: Carried, { member, members }: Heading): void {
    if (member !== null) {
      carried.member = member;
      carried.heading = member;
    }
    carried.members = members;
    carried.membersTyped = null;
  }

  private note(cells: readonly Cell[], row: number, filled: readonly number[], ofBar: boolean): RowClass {
    const text = filled.map((column) => shownText(cells[column])).join(" ");
    this.notes.push({ row, text });
    addTitleFacts(this.facts, cells, filled);
    const last = this.bars[this.bars.length - 1];
    if (ofBar && last !== undefined && last.row === row - 1 && !NOT_OF_BAR.test(plainWords(text))) {
      const open = last as { remark: string | null; remarks?: BarRow["remarks"] };
      open.remark = last.remark === null ? text : `${last.remark}; ${text}`;
      open.remarks = readRemark(open.remark);
    }
    return "note";
  }

  private outside(cells: readonly Cell[], row: number, filled: readonly number[]): RowClass {
    this.note(cells, row, filled, false);
    return "note";
  }

  private barOfMark(mark: string): BarRow | null {
    this.isMarkAsked = true;
    const sought = mark.toUpperCase();
    for (let index = this.bars.length - 1; index >= 0; index -= 1) {
      const bar = this.bars[index] as BarRow;
      if (bar.mark?.toUpperCase() === sought) return bar;
    }
    return null;
  }

  private nearest(): ScheduleReading["noHeader"] {
    let nearestRow: number | null = null;
    let most = 0;
    for (let row = 0; row < Math.min(this.sheet.rowCount, 2000); row += 1) {
      const words = knownWords(this.access.cells(row));
      if (words > most) {
        most = words;
        nearestRow = row;
      }
    }
    return { lookedFor: KNOWN_HEADER_WORDS, nearestRow };
  }
}

const RANK: Readonly<Record<RowClass, number>> = {
  blank: 0,
  note: 1,
  unread: 2,
  heading: 3,
  total: 4,
  bar: 5,
};

function allKnown(cells: readonly Cell[]): boolean {
  const filled = filledColumns(cells);
  return (
    filled.length >= 2 &&
    filled.every((column) => typeof cells[column] === "string") &&
    knownWords(cells) === filled.length
  );
}

function unreadReason(mark: boolean, size: boolean, fields: number): string {
  if (mark) return "a mark, but neither size, count, length nor shape beside it";
  if (size) return "a size, but neither mark, count, length nor shape beside it";
  return fields > 1 ? "neither mark nor size" : "no field of a bar could be made out";
}
