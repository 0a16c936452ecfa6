import type { Standard } from "../../standards/port";
import type { ColumnKind, ColumnUnit } from "../bar-row";
import { isWord, plainWords } from "../cells/row-words";
import { ROUND_STEEL } from "../evidence/evidence.data";
import type { Cell } from "../sheet";
import { headText } from "./head-text";
import {
  CORE,
  type FoundColumn,
  type HeaderBlock,
  type HeaderRow,
  headerBlocks,
  LEAST_SIZES,
  LEAST_WORDS,
  sizeNamed,
} from "./header-blocks";
import type { HeaderSource } from "./header-source";
import {
  diametersByContent,
  gradesByContent,
  isBarSize,
  letteredSizesByContent,
  lotsByContent,
  membersByContent,
  rowNumbersByContent,
  serialsByContent,
  shapesByContent,
  sizesByContent,
  typesByContent,
} from "./kind-by-content";
import { WIDEST } from "./known-words";
import { numbersColumns } from "./numbers-columns";
import { type HeaderMeaning, recogniseHeader, unitInHeader } from "./recognise-header";
import { isRowOfRates } from "./row-of-rates";
import { reachesDown, saysAgain } from "./rows-again";
import { withoutStrays } from "./without-strays";

export interface Header {
  readonly top: number;
  readonly bottom: number;
  readonly blocks: readonly HeaderBlock[];
}

/** cells of a row of units under the words */
const LEAST_UNITS = 3;
/** rows of the tallest header */
export const MOST_ROWS = 4;
/**
 * The header that begins in this row: one to four rows with at least four known column words, stacked
 * cells joined top-down. Null where none begins here.
 */
export function findHeader(
  given: HeaderSource,
  row: number,
  standard: Standard,
  least: number = LEAST_WORDS,
): Header | null {
  const isHeader = (cells: readonly Cell[]): boolean => mayBeHeader(cells, standard);
  const source = withoutStrays(given, row, MOST_ROWS, isHeader);
  if (!isHeader(source.cells(row))) return null;
  let best: Candidate | null = null;
  const rows: HeaderRow[] = [];
  for (let bottom = row; bottom < Math.min(row + MOST_ROWS, source.rowCount); bottom += 1) {
    if (bottom > row && (!isHeader(source.cells(bottom)) || numbersItsColumns(source, bottom, best))) break;
    if (bottom > row && isRowOfRates(given.cells(bottom))) break;
    const next = headerRow(source, bottom);
    if (saysAgain(rows[0], next)) break;
    rows.push(next);
    const candidate = joined(source, rows, bottom, standard);
    const last = rows[rows.length - 1];
    const isNext = best === null || best.bottom === bottom - 1;
    const mayGain = isNext || namesSizes(last, standard) || isOfUnits(last);
    if (best === null || (mayGain && gains(candidate, best, last, standard))) best = candidate;
    // steel grades may stand between the head of the sums and their sizes
    else if (best.bottom < bottom - 1) break;
  }
  if (best === null || best.known < least || best.core < 2) return null;
  // the top row has to give something, else it is a title
  if (best.bottom > row) {
    const below = joined(source, rows.slice(1, best.bottom - row + 1), best.bottom, standard);
    const isTitle =
      below.known >= best.known && stackedUnder(rows[0], best) < 2 && !reachesDown(rows[0], rows[1]);
    if (isTitle && !headsSizes(rows[0], best, standard)) return null;
  }
  typesByContent(best.columns as FoundColumn[], source, best.bottom, standard);
  diametersByContent(best.columns as FoundColumn[], source, best.bottom, standard);
  letteredSizesByContent(best.columns as FoundColumn[], source, best.bottom);
  sizesByContent(best.columns as FoundColumn[], source, best.bottom, standard);
  rowNumbersByContent(best.columns as FoundColumn[], source, best.bottom);
  serialsByContent(best.columns as FoundColumn[], source, best.bottom);
  membersByContent(best.columns as FoundColumn[], source, best.bottom);
  gradesByContent(best.columns as FoundColumn[], source, best.bottom);
  shapesByContent(best.columns as FoundColumn[], source, best.bottom);
  lotsByContent(best.columns as FoundColumn[], source, best.bottom);
  return { top: row, bottom: best.bottom, blocks: headerBlocks(best.columns, rows, standard) };
}

/** A row under known heads that numbers or letters them: a letter over a dimension stands under no other known head. */
function numbersItsColumns(source: HeaderSource, row: number, best: Candidate | null): boolean {
  const cells = source.cells(row);
  const filled = cells.flatMap((cell, column) =>
    cell === null || cell === undefined || cell === "" ? [] : [column],
  );
  if (best === null || !numbersColumns(cells, filled)) return false;
  const under = best.columns.filter(({ column, meaning }) => meaning !== null && filled.includes(column));
  return under.filter(({ meaning }) => !DIMENSION.test(meaning?.kind ?? "")).length * 2 > under.length;
}

/** Columns whose whole stack, this top row's text first, is a known word. */
function stackedUnder(top: HeaderRow | undefined, { columns }: Candidate): number {
  return columns.filter(({ column, header }) => {
    const own = top?.texts.get(column);
    return own !== undefined && own.replace(/\s+/g, " ") !== header && recogniseHeader(header) !== null;
  }).length;
}

/** It says what stands under the sizes: "Total length in metre" over "8 mm", "10 mm" and so on. */
function headsSizes(top: HeaderRow | undefined, { columns }: Candidate, standard: Standard): boolean {
  const headed = columns.filter(({ column, header }) => {
    const own = top?.texts.get(column)?.replace(/\s+/g, " ");
    if (own === undefined || own === header || !SUMS.has(recogniseHeader(own)?.kind ?? "")) return false;
    return header.startsWith(own) && sizeNamed(header.slice(own.length).trim(), standard) !== null;
  });
  return headed.length >= LEAST_SIZES;
}

interface Candidate {
  readonly bottom: number;
  readonly columns: readonly FoundColumn[];
  readonly known: number;
  readonly core: number;
}

/** Texts that are mostly words; numbers only where they are a run of bar sizes, of which another standard may have some. */
function mayBeHeader(cells: readonly Cell[], standard: Standard): boolean {
  let texts = 0;
  let sizes = 0;
  let others = 0;
  let before = 0;
  for (let column = 0; column < Math.min(cells.length, WIDEST); column += 1) {
    const cell = cells[column];
    if (typeof cell === "string") {
      if (cell.trim() !== "") texts += 1;
    } else if (typeof cell === "number") {
      const isOwn = isBarSize(cell, standard);
      if (!(cell > before) || !(isOwn || ROUND_STEEL.value.diameters.includes(cell))) return false;
      before = cell;
      if (isOwn) sizes += 1;
      else others += 1;
    }
  }
  return sizes >= LEAST_SIZES || (texts > 0 && sizes === 0 && others === 0);
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
    texts.set(column, headText(text.replace(/[^\S\n]+/g, " ")));
    if (spread !== null) merged.add(column);
  }
  const signs = [...texts].filter(([, text]) => SIZE_SIGN.test(text));
  // "dia" once heads the sizes; under each of several it belongs to the size above
  if (signs.length >= LEAST_SIZES) for (const [column] of signs) texts.set(column, "mm");
  return { texts, merged };
}

const SIZE_SIGN = /^(?:mm )?(?:dia\.?|[øφ])(?: mm)?$/i;

/** a letter heads its own column, whatever stands over those before it */
const DIMENSION = /^[A-KR]$/;

/** A head that stands over the first of its columns alone holds for those beside it too: "Length", below it "ft", "in". */
function spread(rows: readonly HeaderRow[]): readonly HeaderRow[] {
  const last = rows[rows.length - 1];
  if (last === undefined || rows.length < 2) return rows;
  // a row of units under some columns takes nothing from those that it has none under
  const above = spread(rows.slice(0, -1));
  const under = above.map((row) => {
    const texts = new Map(row.texts);
    for (const column of [...last.texts.keys()].sort((one, other) => one - other)) {
      const left = texts.get(column - 1);
      const isUnder = last.texts.has(column - 1) && !above.some((one) => one.texts.has(column));
      const own = recogniseHeader(last.texts.get(column) ?? "")?.kind ?? "";
      if (left !== undefined && isUnder && !DIMENSION.test(own)) texts.set(column, left);
    }
    return { ...row, texts };
  });
  return [...under, last];
}

function joined(
  source: HeaderSource,
  given: readonly HeaderRow[],
  bottom: number,
  standard: Standard,
): Candidate {
  const rows = spread(given);
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
  const sizes = rows.length > 1 ? [...rows].reverse().find((row) => namesSizes(row, standard)) : undefined;
  if (sizes !== undefined) sumsBySize(columns, sizes, standard);
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

const SUMS: ReadonlySet<string> = new Set(["totalLength", "mass", "pieceMass", "length", "ignored"]);
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
    // "Shape, outside dimensions" over letters heads legs
    if (order.length > 1 && /^(?:shape|size)$/.test(meaning.kind) && /^[a-h]$/i.test(order.at(-1) ?? ""))
      continue;
    if (headsSpacing(parts, order)) {
      // a length below "Spacing" is that over which the bars are spread, and a letter none of a leg
      if (meaning.kind === "length") return null;
      if (DIMENSION.test(meaning.kind)) continue;
    }
    const unit = meaning.unit ?? parts.map(unitInHeader).find((one) => one !== null) ?? null;
    return meaning.kind === "unitMass" ? meaning : { ...meaning, unit: unitFor(meaning.kind, unit) };
  }
  return null;
}

/** The words above the lower end `order` of a stack name the spacing. */
function headsSpacing(parts: readonly string[], order: readonly string[]): boolean {
  const above = parts.slice(0, parts.length - order.length);
  const isLower = order.at(-1) === parts.at(-1);
  return isLower && above.length > 0 && recogniseHeader(above.join(" "))?.kind === "spacing";
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
  return (kind === "mass" || kind === "pieceMass") === MASS_UNITS.has(unit) ? unit : null;
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
  const before = new Map(best.columns.map(({ column, header }) => [column, header]));
  let all = 0;
  for (const { column, header, meaning } of candidate.columns) {
    const own = last.texts.get(column);
    // a cell merged over both rows is none of this row's own
    if (own === undefined || before.get(column) === header) continue;
    all += 1;
    const isWord = recogniseHeader(own) !== null;
    // "8 mm" is a size and no unit
    if ((!chosen.has(column) || meaning === null) && sizeNamed(own, standard) !== null) sizes += 1;
    else if (isUnitText(own)) units += 1;
    else if (meaning !== null && own.replace(/\s+/g, " ") !== header && recogniseHeader(header) !== null)
      stacked += 1;
    else if (isWord && (meaning !== null || header !== own)) words += 1;
  }
  // the head of the sums by size gives way to its sizes
  if (candidate.known < best.known && sizes < LEAST_SIZES) return false;
  if (units === all && all > 0) return true;
  const isOfWords = [...last.texts.values()].every((text) => !/\d/.test(text));
  if (isOfWords && units > 0 && words > 0 && units + words + stacked === all) return true;
  if (isOfWords && units >= LEAST_UNITS && units * 2 >= all - sizesOver(best, last, standard)) return true;
  if (sizes >= LEAST_SIZES) return (sizes + units + words + stacked) * 2 >= all;
  if (candidate.known > best.known) return (words + stacked + units) * 2 >= all;
  return (stacked + units) * 2 > all && stacked > 0;
}

/** A row of units under the words, whatever stands between. */
function isOfUnits(row: HeaderRow | undefined): boolean {
  const texts = [...(row?.texts.values() ?? [])];
  return texts.length >= LEAST_UNITS && texts.every(isUnitText);
}

/** Columns of the row that a size heads already. */
function sizesOver({ columns }: Candidate, last: HeaderRow, standard: Standard): number {
  return columns.filter(
    ({ column, header }) => last.texts.has(column) && sizeNamed(header, standard) !== null,
  ).length;
}

function namesSizes(row: HeaderRow | undefined, standard: Standard): boolean {
  const texts = [...(row?.texts.values() ?? [])];
  return texts.filter((text) => sizeNamed(text, standard) !== null).length >= LEAST_SIZES;
}

/** "mm", "(kg)", "kg/m", "Nos": all that a row of units under the words holds. */
function isUnitText(text: string): boolean {
  if (unitInHeader(text) !== null && recogniseHeader(text) === null) return true;
  const bare = plainWords(text.replace(/[()[\]]/g, ""));
  return isWord("count-unit", bare) || isWord("column-unit", bare) || isWord("per-metre", bare);
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
