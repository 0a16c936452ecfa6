import type { Standard } from "../../standards/port";
import type { HeldTotals, RowClass, ScheduleReading, SheetGuess, TableReading } from "../bar-row";
import { columnSources } from "../columns/column-sources";
import type { HeaderByArithmetic } from "../columns/headers-by-arithmetic";
import { membersOfNext } from "../columns/members-below";
import { headerGuess } from "../columns/proof-text";
import { provenHeaders } from "../columns/proven-headers";
import { settleColumns } from "../columns/settle-columns";
import type { TableProof } from "../columns/table-proof";
import { barsHeader } from "../header/bars-header";
import type { Header } from "../header/find-header";
import type { HeaderBlock } from "../header/header-blocks";
import type { HeaderSource } from "../header/header-source";
import { headerSought, holdsOnlyWords, knownWords } from "../header/known-words";
import { marksOf } from "../header/lists-details";
import { repeatsHeader } from "../header/repeated-header";
import { sameHeader } from "../header/same-header";
import type { ReadOptions } from "../read-options";
import type { Cell, Sheet } from "../sheet";
import { sheetAccess } from "../sheet-access";
import { type Block, carryHeading, columnsOf, membersOf, nameSize, passBlank } from "./block";
import { type Carried, nothingCarried } from "./carried";
import { classifyRow } from "./classify-row";
import { explainsColumns } from "./explains-columns";
import { finishReading } from "./finish-reading";
import { areMostlyWhole, carriedBefore, explainList, headerBefore, type ListBefore } from "./list-before";
import { membersInTitle } from "./members-in-title";
import { BarRowReader } from "./read-bar-row";
import type { ColumnDecision, Resumable } from "./resumable";
import { filledColumns } from "./row-cells";
import { type DraftRow, lastOfMark } from "./row-draft";
import { RowEvidence } from "./row-evidence";
import type { RowReason } from "./row-reason";
import {
  BLANK,
  COLUMN_NUMBERS,
  FIRST_OF_SUMS,
  HEADER,
  HEADER_AGAIN,
  OUTSIDE,
  PLAIN_BAR,
  RANK,
  type RowVerdict,
  SIZES_OF_SUMS,
  SUM_OF_MEMBERS,
} from "./row-verdict";
import { settleRows } from "./settle-rows";
import { SheetNotes } from "./sheet-notes";
import { isLineOfSums, SheetSums, wayOf } from "./sheet-sums";
import { isSumAbove } from "./sum-above";
import { sumsOnly } from "./sum-rows";
import { NO_SIZES, type SumsHead, sumsHead } from "./sums-head";
import { barsOfTitle, takeTitle } from "./title-facts";

/** Reads one sheet from its first row to its last, once. */
export class SheetReader {
  private readonly access;
  private readonly classes: RowClass[];
  private readonly reasons: RowReason[];
  private readonly bars: DraftRow[] = [];
  private readonly tables: TableReading[] = [];
  private readonly guesses: SheetGuess[] = [];
  private readonly sums = new SheetSums();
  private readonly notes = new SheetNotes();
  private blocks: Block[] = [];
  private held: HeldTotals | null = null;
  private readonly proofs: (TableProof | null)[] = [];
  private headerUntil = -1;
  /** by place in `bars` */
  private readonly carriedTo: Carried[] = [];
  private readonly decisions: ColumnDecision[] = [];
  private isMarkAsked = false;
  private isSumAsked = false;
  /** known words that made the last header */
  private leastWords: number | undefined;
  private readonly proven = new Map<number, HeaderByArithmetic>();
  private isTransposed = false;
  private hasGoneOn = false;
  /** the last row of one text */
  private lone: { readonly row: number; readonly text: string } | null = null;
  private isGradeNoted = false;

  constructor(
    private readonly sheet: Sheet,
    private readonly standard: Standard,
    private readonly options: ReadOptions,
    /** read once, and not again after an edit */
    private readonly isOnce: boolean,
    private readonly before: () => ListBefore | null = () => null,
    private readonly marksBefore: () => readonly string[] = () => [],
  ) {
    this.access = sheetAccess(sheet, options);
    this.classes = new Array<RowClass>(sheet.rowCount).fill("blank");
    this.reasons = new Array<RowReason>(sheet.rowCount).fill(BLANK.because);
  }

  read(): ScheduleReading {
    this.readRows(undefined);
    if (this.tables.length === 0) this.readRows(2);
    if (this.tables.length === 0 && !this.goesOn() && this.sums.summaries.length === 0)
      this.readByArithmetic();
    const { sheet, bars, notes, access, classes, reasons, standard } = this;
    const read = { classes, reasons, standard, cells: access.cells };
    if (settleRows(bars, this.tables, this.sums, read)) this.isSumAsked = true;
    takeTitle(bars, barsOfTitle(notes.facts, this.tables));
    const finished = finishReading(sheet, standard, bars, notes.texts, access.isConfirmed);
    this.isGradeNoted = finished.isGradeNoted;
    return {
      sheet: this.sheet.name,
      tables: this.tables,
      rowClasses: this.classes,
      rowReasons: this.reasons,
      bars: this.bars,
      totals: this.sums.totals,
      noHeader:
        this.tables.length > 0 || this.sums.summaries.length > 0
          ? null
          : headerSought(this.sheet.rowCount, this.access.cells, this.isTransposed),
      guesses: [...this.guesses, ...finished.guesses],
      summaries: this.sums.summaries,
      titleFacts: this.notes.facts,
      lengthStep: finished.lengthStep,
      held: this.held,
      proofs: this.proofs,
    };
  }

  /** Null where a row can say something of another one that is not simply carried down. */
  resumable(): Resumable | null {
    const { sheet, standard, carriedTo, isGradeNoted } = this;
    const [decision, another] = this.decisions;
    if (this.isOnce || decision === undefined || another !== undefined) return null;
    if (this.isMarkAsked || this.isSumAsked || decision.settled.layout.closings.length > 0) return null;
    // which rows make up a table without header words, any row may alter
    if (this.proven.size > 0 || this.hasGoneOn) return null;
    if (this.sums.summaries.length > 0 || (sheet.merges ?? []).length > 0) return null;
    return { sheet, standard, carriedTo, decision, isGradeNoted, isConfirmed: this.access.isConfirmed };
  }

  /** `least`: known words that make a header; a second pass is content with a header of nothing else. */
  private readRows(least: number | undefined): void {
    this.forget();
    this.headerUntil = -1;
    this.readRowsOn(least);
    if (least !== undefined && explainList(this.sheet, this.bars)) this.readRows(undefined);
  }

  private readRowsOn(least?: number): void {
    this.notes.forgetTitles();
    for (let row = 0; row < this.sheet.rowCount; row += 1) {
      const verdict = this.readRow(this.access.cells(row), row, least);
      this.classes[row] = verdict.class;
      this.reasons[row] = verdict.because;
    }
  }

  /** Without a header of its own the sheet may go on with the list of the one before, column by column. */
  private goesOn(): boolean {
    const list = this.before();
    if (list === null || list.table === null) return false;
    this.forget();
    this.begin(headerBefore(list.table));
    for (const block of this.blocks) block.carried = carriedBefore(list, this.options.grade ?? null);
    this.readRowsOn();
    if (!areMostlyWhole(this.bars) || this.held !== null) {
      for (const least of [undefined, 2]) this.readRows(least);
      return false;
    }
    const reason = `the sheet has no header: its columns are those of sheet "${list.sheet}", whose list goes on here`;
    this.guesses.push({ guess: "list-goes-on", reason, asks: false, row: null, column: null });
    this.hasGoneOn = true;
    return true;
  }

  /** As if no row had been read. */
  private forget(): void {
    for (const list of [this.bars, this.tables, this.guesses]) list.length = 0;
    for (const list of [this.proofs, this.carriedTo, this.decisions]) list.length = 0;
    for (const kept of [this.notes, this.sums]) kept.forget();
    this.blocks = [];
    this.held = null;
    this.headerUntil = -1;
  }

  /** No known word heads a column: the rows' own products may tell what they are. */
  private readByArithmetic(): void {
    const { headers, isTransposed, isPointed } = provenHeaders(this.sheet, this.access, this.standard);
    this.isTransposed = isTransposed;
    if (headers.length === 0) return;
    for (const found of headers) this.proven.set(found.begins, found);
    this.readRows(undefined);
    if (isPointed) return;
    for (const found of headers) this.guesses.push(headerGuess(found, this.sheet.left));
  }

  /** A table without known words begins here: its unknown words, or its first bar at once. */
  private beginsProven(row: number): boolean {
    const found = this.proven.get(row);
    if (found === undefined) return false;
    this.begin(found.header);
    const list = this.tables.length === 1 ? this.before() : null;
    // a list without a header that goes on from a list without one
    if (list !== null && list.last.table.headerBottom < list.last.table.headerTop)
      for (const block of this.blocks) block.carried = carriedBefore(list, this.options.grade ?? null);
    return found.begins < found.firstBar;
  }

  private readRow(cells: readonly Cell[], row: number, least: number | undefined): RowVerdict {
    if (row <= this.headerUntil) return HEADER;
    if (this.proven.size > 0 && this.beginsProven(row)) return HEADER;
    const only = this.blocks.length === 1 ? this.blocks[0] : undefined;
    // the row right under a header may number its columns
    const isUnderHeader = row === this.headerUntil + 1;
    if (only !== undefined && only.summary === null && !isUnderHeader) {
      if (only.reader.signs.isPlainBar(cells, only.above?.member)) return this.takeBar(only, cells, row);
    }
    const filled = filledColumns(cells);
    return this.wholeRow(cells, row, filled, least) ?? this.partsOfRow(cells, row, filled);
  }

  /** The cases in which a row is one thing from end to end, in their order; null where its parts tell. */
  private wholeRow(
    cells: readonly Cell[],
    row: number,
    filled: readonly number[],
    least: number | undefined,
  ): RowVerdict | null {
    if (filled.length === 0) return passBlank(this.blocks);
    const layouts = this.blocks.map(({ reader: { layout } }) => layout);
    if (repeatsHeader(layouts, cells, filled)) return HEADER_AGAIN;
    const ofSize = this.sizeHeading(cells, row, filled);
    if (ofSize !== null) return ofSize;
    if (row === this.headerUntil + 1 && explainsColumns(cells, filled, layouts)) return COLUMN_NUMBERS;
    const under = this.tables.length === 0 ? undefined : this.blocks.at(-1);
    const sums = sumsHead(this.access.cells, row, filled, under, this.standard);
    const isTable = sums?.until == null && filled.length > 1 && this.beginsTable(cells, row, least);
    if (isTable) return HEADER;
    if (sums !== null) return this.beginSums(row, sums);
    if (this.blocks.length === 0) this.notes.title(cells, filled);
    if (this.blocks.length > 0 && !this.notes.isTitleAgain(cells, filled)) return null;
    return this.outside(cells, row, filled);
  }

  /** A lone text that names the size of the bars below, where no column does. */
  private sizeHeading(cells: readonly Cell[], row: number, filled: readonly number[]): RowVerdict | null {
    const text = filled.length === 1 ? cells[filled[0] as number] : null;
    if (typeof text !== "string") return null;
    this.lone = { row, text };
    return nameSize(this.blocks, text);
  }

  /** Tables that stand side by side each read their part; the row is the most that any makes of it. */
  private partsOfRow(cells: readonly Cell[], row: number, filled: readonly number[]): RowVerdict {
    let best: RowVerdict = BLANK;
    const rest = new Set(filled);
    this.blocks.forEach((block, index) => {
      const mine = columnsOf(this.blocks, index, filled);
      for (const column of mine) rest.delete(column);
      if (mine.length === 0) return;
      const verdict = this.partOfRow(block, cells, row, mine);
      if (RANK[verdict.class] > RANK[best.class]) best = verdict;
    });
    return best === BLANK && rest.size > 0 ? this.outside(cells, row, filled) : best;
  }

  private partOfRow(
    block: Block,
    cells: readonly Cell[],
    row: number,
    columns: readonly number[],
  ): RowVerdict {
    const { layout, signs } = block.reader;
    const { ended, above, summary } = block;
    block.blanks = 0;
    const isLine = isLineOfSums(summary, cells, columns, row);
    const since = this.sums.totals.at(-1)?.row ?? -1;
    const isSum = (column: number, value: number): boolean => {
      this.isSumAsked = true;
      return isSumAbove(this.bars, layout, since, column, value);
    };
    const isSumOfLine = (column: number, value: number): boolean =>
      this.sums.isSumOfLines(row, column, value);
    const seen = [above?.member, wayOf(summary), ended, isLine, isSum, isSumOfLine, above?.mark] as const;
    const evidence = new RowEvidence(cells, columns, layout, signs, ...seen);
    const isClosing = layout.closings.some((line) => line.row === row);
    const verdict = isClosing ? SUM_OF_MEMBERS : classifyRow(evidence);
    this.takeRow(block, evidence, row, verdict);
    return verdict;
  }

  /** What follows from a row's class for the bars, the sums, the notes and what is carried down. */
  private takeRow(block: Block, evidence: RowEvidence, row: number, verdict: RowVerdict): void {
    const { cells, filled, all } = evidence;
    const { code } = verdict.because;
    if (code === "bar-after-summary") {
      const bars = { ...block, summary: null };
      this.blocks = this.blocks.map((one) => (one === block ? bars : one));
      this.takeBar(bars, cells, row);
    } else if (code === "summary-line") this.sums.line(block, cells, row, all);
    else if (verdict.class === "bar") this.takeBar(block, cells, row);
    else if (verdict.class === "heading") carryHeading(block, code, evidence);
    else if (code === "sum-by-size") this.sums.abstractLine(block, cells, row, all);
    else if (verdict.class === "total") {
      const kind = code === "sum-word" && evidence.sumKind !== "wastage" ? evidence.sumKind : "total";
      this.sums.total(block, cells, row, code === "sum-word" ? all : filled, kind ?? "total");
      block.carried = { ...nothingCarried(block.carried.grade), size: block.carried.size };
    } else if (verdict.class === "note") {
      const isOfBar = code === "text-alone" || (code === "no-field" && !evidence.isTitleOrFoot);
      this.takeNote(cells, row, code === "left-out-columns" ? all : filled, isOfBar);
    }
  }

  private beginsTable(cells: readonly Cell[], row: number, least: number | undefined): boolean {
    const source: HeaderSource = { rowCount: this.sheet.rowCount, ...this.access };
    if (least === undefined && this.access.corrections === 0 && knownWords(cells) < 2) return false;
    if (least !== undefined && !holdsOnlyWords(cells)) return false;
    this.leastWords = least;
    const header = barsHeader(source, row, this.standard, least, () =>
      marksOf(this.bars, this.marksBefore()),
    );
    if (header === "details") this.blocks = [];
    if (header === null || header === "details") return false;
    this.begin(header);
    return true;
  }

  /** The tables of a header take the place of those above it; those beside it stay. */
  private begin(header: Header): void {
    const kept = this.blocks.filter(({ reader: { layout } }) =>
      header.blocks.every(({ left, right }) => right < layout.left || left > layout.right),
    );
    const begun = header.blocks.map((found) => this.blockOf(header, found));
    this.blocks = [...kept, ...begun].sort((one, other) => one.reader.layout.left - other.reader.layout.left);
    this.headerUntil = header.bottom;
  }

  private blockOf(header: Header, found: HeaderBlock): Block {
    const { sheet, standard } = this;
    const { isConfirmed } = this.access;
    const sources = columnSources(sheet.rowCount, standard, isConfirmed, (words) => {
      const count = this.before()?.count ?? null;
      return count?.header === words ? count.kind : null;
    });
    const settled = settleColumns(sources.of(sheet, this.access.cells), header, found);
    const { layout, held, proof } = settled;
    const decide = (changed: Sheet) => settleColumns(sources.ofChanged(changed), header, found);
    const isSameHeader = sameHeader(header, standard, this.options, this.leastWords);
    this.decisions.push({ settled, headerBottom: header.bottom, decide, isSameHeader });
    const summary = sumsOnly(layout.table) ? this.sums.begin(header.bottom, NO_SIZES) : null;
    if (summary === null) {
      this.tables.push(layout.table);
      this.guesses.push(...layout.guesses);
      this.held ??= held;
      this.proofs.push(proof);
    }
    const barOfMark = (mark: string) => this.barOfMark(mark);
    const isRightmost = (of: object) => this.blocks.at(-1)?.reader.layout === of;
    const reader = new BarRowReader(sheet, standard, { isConfirmed, barOfMark, isRightmost }, layout);
    const above = this.lone !== null && this.lone.row >= header.top - 2 ? this.lone.text : "";
    const size = above === "" ? null : reader.sizeInHeading(above);
    const members = this.bars.length > 0 ? null : membersInTitle(this.access.cells, header.top);
    const carried = { ...nothingCarried(this.options.grade ?? null), members, ...membersOf(above), size };
    return { reader, carried, above: null, blanks: 0, ended: false, summary };
  }

  private beginSums(row: number, sums: SumsHead): RowVerdict {
    const block = this.blocks.at(-1) as Block;
    this.blocks = [{ ...block, blanks: 0, ended: false, summary: this.sums.begin(row, sums) }];
    return sums.line === undefined ? SIZES_OF_SUMS : FIRST_OF_SUMS;
  }

  private takeBar(block: Block, cells: readonly Cell[], row: number): RowVerdict {
    block.blanks = 0;
    block.ended = false;
    const { closings } = block.reader.layout;
    if (closings.length > 0) block.carried = { ...block.carried, members: membersOfNext(closings, row) };
    if (!this.isOnce) this.carriedTo.push(block.carried);
    const { bar, carried } = block.reader.read(cells, row, block.carried, block.above);
    block.carried = carried;
    block.above = bar;
    this.bars.push(bar);
    return PLAIN_BAR;
  }

  private takeNote(cells: readonly Cell[], row: number, filled: readonly number[], isOfBar: boolean): void {
    this.notes.take(this.sheet, { cells, row, filled, isOfBar }, this.bars.at(-1));
  }

  private outside(cells: readonly Cell[], row: number, filled: readonly number[]): RowVerdict {
    this.takeNote(cells, row, filled, false);
    return OUTSIDE;
  }

  private barOfMark(mark: string): DraftRow | null {
    this.isMarkAsked = true;
    return lastOfMark(this.bars, mark);
  }
}
