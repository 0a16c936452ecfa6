import type { Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";
import type { ColumnKind, ColumnUnit } from "./bar-row";
import { cleanText } from "./clean-text";
import { type HeaderMeaning, recogniseHeader, unitInHeader } from "./recognise-header";
import { isWord, plainWords } from "./row-words";
import type { Cell } from "./sheet";

/** A column of a header as far as its words tell. */
export interface HeaderColumn {
  readonly kind: ColumnKind;
  readonly column: number;
  readonly header: string;
  readonly unit: ColumnUnit | null;
  readonly corrected: boolean;
  /** the column beside it that holds the inches of a length in feet */
  readonly inches?: number;
}

/** One schedule's part of a header; several stand side by side. */
export interface HeaderBlock {
  readonly left: number;
  readonly right: number;
  readonly columns: readonly HeaderColumn[];
  /** columns of serial numbers, dates and the like */
  readonly ignored: readonly number[];
  readonly bySize: readonly { readonly size: string; readonly column: number }[];
  readonly unknown: readonly { readonly column: number; readonly header: string }[];
}

export interface Header {
  readonly top: number;
  readonly bottom: number;
  readonly blocks: readonly HeaderBlock[];
}

/** What header finding asks of a sheet. */
export interface HeaderSource {
  readonly rowCount: number;
  cells(row: number): readonly Cell[];
  /** the text of a cell merged over several columns, at each of them */
  mergedText(row: number, column: number): string | null;
  /** a user's correction for this header text or column */
  correction(
    text: string,
    column: number,
  ): { kind?: ColumnKind | "ignored" | undefined; unit?: ColumnUnit | undefined } | null;
}

const LEAST_WORDS = 4;
/** rows of the tallest header */
export const MOST_ROWS = 4;
const LEAST_SIZES = 3;
const WIDEST = 16_384;
const CORE: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  "mark",
  "size",
  "shape",
  "length",
  "members",
  "each",
  "total",
  "mass",
  "totalLength",
  "A",
  "B",
  "C",
]);

/**
 * The header that begins in this row: one to four rows with at least four known column words, stacked
 * cells joined top-down. Null where none begins here.
 */
export function findHeader(
  source: HeaderSource,
  row: number,
  standard: Standard,
  least: number = LEAST_WORDS,
): Header | null {
  if (!mayBeHeader(source, row, standard)) return null;
  let best: Candidate | null = null;
  const rows: HeaderRow[] = [];
  for (let bottom = row; bottom < Math.min(row + MOST_ROWS, source.rowCount); bottom += 1) {
    if (bottom > row && !mayBeHeader(source, bottom, standard)) break;
    rows.push(headerRow(source, bottom));
    const candidate = joined(source, rows, bottom, standard);
    if (best === null || gains(candidate, best, rows[rows.length - 1], standard)) best = candidate;
    else if (bottom > row) break;
  }
  if (best === null || best.known < least || best.core < 2) return null;
  // the top row has to give something, else it is a title
  if (best.bottom > row) {
    const below = joined(source, rows.slice(1, best.bottom - row + 1), best.bottom, standard);
    if (below.known >= best.known && stackedUnder(rows[0], best) < 2) return null;
  }
  typesByContent(best.columns as FoundColumn[], source, best.bottom, standard);
  return { top: row, bottom: best.bottom, blocks: blocksOf(best, rows, standard) };
}

const SAMPLED_TYPES = 12;
const STRAIGHT = /^(?:str|straight|bent|st|s)$/i;

/** "Bar type" may hold grades, sizes or shapes: where no other column is for them, its first cells tell. */
function typesByContent(
  columns: FoundColumn[],
  source: HeaderSource,
  bottom: number,
  standard: Standard,
): void {
  const kinds = columns.map(({ meaning }) => meaning?.kind);
  const index = columns.findIndex(
    ({ meaning, header, corrected }) => meaning?.kind === "grade" && !corrected && /typ/i.test(header),
  );
  const one = columns[index];
  if (one === undefined || one.meaning === null) return;
  const texts: string[] = [];
  for (let row = bottom + 1; row < Math.min(source.rowCount, bottom + 1 + SAMPLED_TYPES); row += 1) {
    const cell = source.cells(row)[one.column];
    if (typeof cell === "string" && cell.trim() !== "") texts.push(cleanText(cell));
  }
  const most = (is: (text: string) => boolean) => texts.filter(is).length * 2 > texts.length;
  if (!kinds.includes("size") && most((text) => /\d/.test(text) && isBarSize(text, standard))) {
    columns[index] = { ...one, meaning: { ...one.meaning, kind: "size" } };
  } else if (!kinds.includes("shape") && most((text) => STRAIGHT.test(text))) {
    columns[index] = { ...one, meaning: { ...one.meaning, kind: "shape" } };
  }
}

/** Columns whose whole stack, this top row's text first, is a known word. */
function stackedUnder(top: HeaderRow | undefined, { columns }: Candidate): number {
  return columns.filter(({ column, header }) => {
    const own = top?.texts.get(column);
    return own !== undefined && own.replace(/\s+/g, " ") !== header && recogniseHeader(header) !== null;
  }).length;
}

/** The most known words in one row, to name the nearest row where no header is found. */
export function knownWords(cells: readonly Cell[]): number {
  const kinds = new Set<string>();
  for (let column = 0; column < Math.min(cells.length, WIDEST); column += 1) {
    const cell = cells[column];
    if (typeof cell !== "string") continue;
    const meaning = recogniseHeader(cell);
    if (meaning !== null) kinds.add(meaning.kind);
  }
  return kinds.size;
}

interface HeaderRow {
  readonly texts: ReadonlyMap<number, string>;
  readonly merged: ReadonlySet<number>;
}

interface FoundColumn {
  readonly column: number;
  readonly header: string;
  readonly meaning: HeaderMeaning | null;
  readonly corrected: boolean;
  readonly inches?: number;
}

interface Candidate {
  readonly bottom: number;
  readonly columns: readonly FoundColumn[];
  readonly known: number;
  readonly core: number;
}

/** Texts that are mostly words; numbers only where they are a run of bar sizes. */
function mayBeHeader(source: HeaderSource, row: number, standard: Standard): boolean {
  const cells = source.cells(row);
  let texts = 0;
  let sizes = 0;
  let before = 0;
  for (let column = 0; column < Math.min(cells.length, WIDEST); column += 1) {
    const cell = cells[column];
    if (typeof cell === "string") {
      if (cell.trim() !== "") texts += 1;
    } else if (typeof cell === "number") {
      if (!(cell > before) || !isBarSize(cell, standard)) return false;
      before = cell;
      sizes += 1;
    }
  }
  return sizes >= LEAST_SIZES || (texts > 0 && sizes === 0);
}

function isBarSize(typed: string | number, standard: Standard): boolean {
  const reading = standard.readSize(typed);
  return !isRefusal(reading) && reading.bar !== null;
}

function headerRow(source: HeaderSource, row: number): HeaderRow {
  const texts = new Map<number, string>();
  const merged = new Set<number>();
  const cells = source.cells(row);
  for (let column = 0; column < Math.min(cells.length, WIDEST); column += 1) {
    const cell = cells[column];
    const spread = cell === null || cell === undefined ? source.mergedText(row, column) : null;
    const text = spread ?? (typeof cell === "string" || typeof cell === "number" ? String(cell) : "");
    if (text.trim() === "") continue;
    // lines of one cell may be two languages: recogniseHeader tells them apart
    texts.set(column, text.replace(/[^\S\n]+/g, " ").trim());
    if (spread !== null) merged.add(column);
  }
  return { texts, merged };
}

function joined(
  source: HeaderSource,
  rows: readonly HeaderRow[],
  bottom: number,
  standard: Standard,
): Candidate {
  const columns: FoundColumn[] = [];
  const all = new Set<number>();
  for (const row of rows) for (const column of row.texts.keys()) all.add(column);
  const kinds = new Set<string>();
  for (const column of [...all].sort((one, other) => one - other)) {
    const parts = rows
      .map((row) => row.texts.get(column))
      .filter((text): text is string => text !== undefined)
      // a cell merged over rows says its text once
      .filter((text, index, stack) => index === 0 || text !== stack[index - 1]);
    columns.push(columnOf(source, parts, column));
  }
  pairFeetWithInches(columns);
  if (rows.length > 1) sumsBySize(columns, rows[rows.length - 1] as HeaderRow, standard);
  for (const { meaning } of columns) if (meaning !== null) kinds.add(meaning.kind);
  const core = [...kinds].filter((kind) => CORE.has(kind as ColumnKind)).length;
  return { bottom, columns, known: kinds.size, core };
}

function columnOf(source: HeaderSource, parts: readonly string[], column: number): FoundColumn {
  const header = parts.join(" ").replace(/\s+/g, " ");
  const correction = source.correction(header, column);
  const meaning = meaningOf(parts);
  if (correction === null) return { column, header, meaning, corrected: false };
  const kind = correction.kind ?? meaning?.kind;
  if (kind === undefined) return { column, header, meaning, corrected: false };
  return {
    column,
    header,
    meaning: {
      kind,
      unit: correction.unit ?? meaning?.unit ?? null,
      weak: false,
      otherwise: null,
      serial: false,
    },
    corrected: true,
  };
}

/** "Length: Ft | In" is one length in two columns. */
function pairFeetWithInches(columns: FoundColumn[]): void {
  for (let index = 1; index < columns.length; index += 1) {
    const feet = columns[index - 1] as FoundColumn;
    const inches = columns[index] as FoundColumn;
    if (inches.column !== feet.column + 1 || feet.corrected || inches.corrected) continue;
    if (!isLengthIn(feet, "ft") || !isLengthIn(inches, "in")) continue;
    columns[index - 1] = { ...feet, meaning: { ...A_LENGTH, unit: "ft" }, inches: inches.column };
    columns[index] = { ...inches, meaning: { ...A_LENGTH, kind: "ignored" } };
  }
}

/** The first of the columns by size stands under the head of them all: it is one size's, not the sum. */
function sumsBySize(columns: FoundColumn[], last: HeaderRow, standard: Standard): void {
  const sized = columns.filter(({ column }) => {
    const own = last.texts.get(column);
    return own !== undefined && sizeNamed(own, standard) !== null;
  });
  if (sized.length < LEAST_SIZES) return;
  for (const one of sized) {
    if (!SUMS.has(one.meaning?.kind ?? "") || one.corrected) continue;
    columns[columns.indexOf(one)] = { ...one, meaning: null };
  }
}

const SUMS: ReadonlySet<string> = new Set(["totalLength", "mass", "length"]);
const A_LENGTH: HeaderMeaning = { kind: "length", unit: null, weak: false, otherwise: null, serial: false };

function isLengthIn({ header, meaning }: FoundColumn, unit: ColumnUnit): boolean {
  const isLength = meaning === null || meaning.kind === "length";
  return isLength && !/ft[\s-]*in/i.test(header) && (meaning?.unit ?? unitInHeader(header)) === unit;
}

/** The whole stack first, then its lower ends, then its upper ends. */
function meaningOf(parts: readonly string[]): HeaderMeaning | null {
  const orders: string[][] = [];
  for (let from = 0; from < parts.length; from += 1) orders.push(parts.slice(from));
  for (let to = parts.length - 1; to > 0; to -= 1) orders.push(parts.slice(0, to));
  for (const order of orders) {
    const meaning = recogniseHeader(order.join(" ")) ?? recogniseHeader(order.join(""));
    if (meaning === null) continue;
    const unit = meaning.unit ?? parts.map(unitInHeader).find((one) => one !== null) ?? null;
    return meaning.kind === "unitMass" ? meaning : { ...meaning, unit: unitFor(meaning.kind, unit) };
  }
  return null;
}

const MASS_UNITS: ReadonlySet<string> = new Set(["kg", "t", "lb"]);
const UNITLESS: ReadonlySet<string> = new Set([
  "member",
  "mark",
  "grade",
  "members",
  "each",
  "total",
  "shape",
  "remark",
  "ignored",
]);

function unitFor(kind: string, unit: ColumnUnit | null): ColumnUnit | null {
  if (unit === null || UNITLESS.has(kind)) return null;
  return (kind === "mass") === MASS_UNITS.has(unit) ? unit : null;
}

/** True where the new row belongs to the header: more words, units, or bar sizes over columns of their own. */
function gains(
  candidate: Candidate,
  best: Candidate,
  last: HeaderRow | undefined,
  standard: Standard,
): boolean {
  if (last === undefined || last.texts.size === 0 || candidate.known < best.known - 1) return false;
  const chosen = chosenColumns(best.columns);
  let units = 0;
  let sizes = 0;
  let words = 0;
  let stacked = 0;
  for (const { column, header, meaning } of candidate.columns) {
    const own = last.texts.get(column);
    if (own === undefined) continue;
    const isWord = recogniseHeader(own) !== null;
    if (isUnitText(own)) units += 1;
    else if ((!chosen.has(column) || meaning === null) && sizeNamed(own, standard) !== null) sizes += 1;
    else if (meaning !== null && own.replace(/\s+/g, " ") !== header && recogniseHeader(header) !== null)
      stacked += 1;
    else if (meaning !== null && isWord) words += 1;
  }
  const all = last.texts.size;
  // the head of the sums by size gives way to its sizes
  if (candidate.known < best.known && sizes < LEAST_SIZES) return false;
  if (units === all) return true;
  if (sizes >= LEAST_SIZES) return (sizes + units + words + stacked) * 2 >= all;
  if (candidate.known > best.known) return (words + stacked + units) * 2 >= all;
  return (stacked + units) * 2 > all && stacked > 0;
}

/** "mm", "(kg)", "kg/m", "Nos": all that a row of units under the words holds. */
function isUnitText(text: string): boolean {
  if (unitInHeader(text) !== null && recogniseHeader(text) === null) return true;
  const bare = plainWords(text.replace(/[()[\]]/g, ""));
  return isWord("count-unit", bare) || isWord("column-unit", bare);
}

/** The first column of each kind. */
function chosenColumns(columns: readonly FoundColumn[]): ReadonlySet<number> {
  const kinds = new Set<string>();
  const chosen = new Set<number>();
  for (const { column, meaning } of columns) {
    if (meaning === null || kinds.has(meaning.kind)) continue;
    kinds.add(meaning.kind);
    chosen.add(column);
  }
  return chosen;
}

function blocksOf(candidate: Candidate, rows: readonly HeaderRow[], standard: Standard): HeaderBlock[] {
  const starts = blockStarts(candidate.columns);
  return starts.map((start, index) => {
    const end = starts[index + 1] ?? Number.POSITIVE_INFINITY;
    return blockOf(
      candidate.columns.filter(({ column }) => column >= start && column < end),
      rows,
      standard,
    );
  });
}

/** Where the header words begin anew, another schedule stands beside the first. */
function blockStarts(columns: readonly FoundColumn[]): number[] {
  const starts = [columns[0]?.column ?? 0];
  let seen = new Set<string>();
  for (let index = 0; index < columns.length; index += 1) {
    const kind = columns[index]?.meaning?.kind;
    if (kind === undefined || kind === "ignored") continue;
    if (!seen.has(kind)) {
      seen.add(kind);
      continue;
    }
    const rest = new Set(columns.slice(index).map(({ meaning }) => meaning?.kind ?? "ignored"));
    rest.delete("ignored");
    const again = [...rest].filter((one) => seen.has(one));
    const core = again.filter((one) => CORE.has(one as ColumnKind));
    if (rest.size < LEAST_WORDS || again.length < 3 || core.length < 2) continue;
    let first = index;
    // a serial-number column before the block's first word belongs to it
    while (first > 0 && columns[first - 1]?.meaning?.kind === "ignored") first -= 1;
    starts.push(columns[first]?.column ?? 0);
    seen = new Set([kind]);
  }
  return starts;
}

function blockOf(found: readonly FoundColumn[], rows: readonly HeaderRow[], standard: Standard): HeaderBlock {
  const columns: HeaderColumn[] = [];
  const spare: { column: number; header: string; isKnown: boolean }[] = [];
  const ignored: number[] = [];
  const taken = new Set<string>();
  const typeIsShape = isShapeType(found);
  for (const { column, header, meaning, corrected, inches } of byPreference(withoutSerials(found))) {
    const isType = typeIsShape && meaning?.kind === "grade" && TYPE.test(header);
    const first = isType ? "shape" : meaning?.kind;
    const isTaken = first !== undefined && taken.has(first);
    const kind = isTaken && meaning !== null && meaning.otherwise !== null ? meaning.otherwise : first;
    if (kind === "ignored") ignored.push(column);
    else if (kind === undefined || taken.has(kind))
      spare.push({ column, header, isKnown: kind !== undefined });
    else {
      taken.add(kind);
      const beside = inches === undefined ? {} : { inches };
      columns.push({ kind, column, header, unit: meaning?.unit ?? null, corrected, ...beside });
    }
  }
  columns.sort((one, other) => one.column - other.column);
  const bySize = spare
    .map(({ column }) => ({ column, size: sizeOver(rows, column, standard) }))
    .filter((one): one is { column: number; size: string } => one.size !== null)
    .sort((one, other) => one.column - other.column);
  const sized = bySize.length >= LEAST_SIZES ? bySize : [];
  return {
    left: found[0]?.column ?? 0,
    right: found[found.length - 1]?.column ?? 0,
    columns,
    ignored,
    bySize: sized,
    unknown: spare
      .filter(({ column, isKnown }) => !isKnown && !sized.some((one) => one.column === column))
      .map(({ column, header }) => ({ column, header })),
  };
}

/** "No." first of all columns numbers the rows where another column counts the bars; behind them it is a mark. */
function withoutSerials(found: readonly FoundColumn[]): readonly FoundColumn[] {
  const first = found.find(({ meaning }) => meaning !== null);
  const hasMark = found.some(({ meaning }) => meaning?.kind === "mark");
  const counts = found.filter(({ meaning }) => meaning?.kind === "total" || meaning?.kind === "each");
  const hasCount = counts.some(({ meaning }) => meaning?.serial !== true);
  return found.map((one) => {
    const { meaning, corrected } = one;
    if (meaning?.serial !== true || corrected) return one;
    const isSpare = hasCount || counts.length > 1;
    if (one === first && isSpare) return { ...one, meaning: { ...meaning, kind: "ignored" as const } };
    return hasCount && !hasMark ? { ...one, meaning: { ...meaning, kind: "mark" as const } } : one;
  });
}

const TYPE = /^(?:bend(?:ing)?\s+)?type$/i;

/** "Type" is the bend's where dimensions stand and no shape does, or where the grade has a column of its own. */
function isShapeType(found: readonly FoundColumn[]): boolean {
  const kinds = found.map(({ meaning }) => meaning?.kind);
  if (kinds.includes("shape")) return false;
  return (kinds.includes("A") && kinds.includes("B")) || kinds.filter((kind) => kind === "grade").length > 1;
}

/** A user's correction comes first, then words of one meaning, then the words that give way. */
function byPreference(found: readonly FoundColumn[]): readonly FoundColumn[] {
  const rank = ({ corrected, meaning }: FoundColumn): number =>
    corrected ? 0 : meaning?.weak === true ? 2 : 1;
  return [...found].sort((one, other) => rank(one) - rank(other));
}

function sizeOver(rows: readonly HeaderRow[], column: number, standard: Standard): string | null {
  for (let index = rows.length - 1; index >= 0; index -= 1) {
    const text = rows[index]?.texts.get(column);
    const size = text === undefined ? null : sizeNamed(text, standard);
    if (size !== null) return size;
  }
  return null;
}

function sizeNamed(text: string, standard: Standard): string | null {
  const bare = cleanText(text)
    // a grade may stand before it: "A-IIIN Ø12"
    .replace(/^(?:[^\u00d8]{0,12}\s)?(?:\u00d8|dia)\s*/i, "")
    .replace(/\s*(?:mm|\u00d8)$/i, "");
  if (!/^(?:\p{L}{0,2}|#)\s?\d+$/u.test(bare)) return null;
  const reading = standard.readSize(bare);
  return isRefusal(reading) ? null : (reading.bar?.size ?? null);
}
