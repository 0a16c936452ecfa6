import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import type { ColumnKind, ColumnReading, ColumnUnit, HeldTotals, SheetGuess, TableReading } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import {
  type ColumnDecision,
  type EvidenceRole,
  type EvidenceUnit,
  QUANTITIES,
  type WeighedTable,
  type WordReading,
  weighTable,
} from "../evidence/index";
import type { Header } from "../header/find-header";
import type { HeaderBlock, HeaderColumn } from "../header/header-blocks";
import { knownWords } from "../header/known-words";
import { recogniseHeader } from "../header/recognise-header";
import { withoutLinesOfSizes } from "../rows/lines-of-sizes";
import { readHeading } from "../rows/read-heading";
import { sumsOnly } from "../rows/sum-rows";
import type { Cell } from "../sheet";
import { sampleRows } from "./column-sample";
import { columnsWithoutHead } from "./columns-without-head";
import { type ColumnSource, decideColumns, type TableLayout } from "./decide-columns";
import { decisionText, heldText, nothingConfirms } from "./proof-text";
import { withSizeByLooks } from "./size-by-looks";
import type { TableProof } from "./table-proof";

/** What the columns of a table are, and whether its totals wait for the user. */
export interface SettledColumns {
  readonly layout: TableLayout;
  readonly held: HeldTotals | null;
  /** null where too few rows hold values */
  readonly proof: TableProof | null;
}

const LEAST_BARS = 5;
const CONFIRMS = 0.75;
/** Amounts that have a column of their own, and what stands beside them. */
const WEIGHED_KINDS: ReadonlySet<string> = new Set<string>([
  ...[...QUANTITIES].filter((role) => role !== "bySize"),
  ...(["pieceMass", "spacing", "shape", "mark"] satisfies (ColumnKind & EvidenceRole)[]),
]);
/** "d" heads a diameter as often as a dimension */
const ONE_LETTER = /^\p{L}\s*(?:[([].*)?$/u;
const AMOUNTS: ReadonlySet<string> = new Set(["mass", "totalLength", "bySize"]);

/** Words make the table first; the arithmetic of its rows confirms them, fills what they leave open, or wins. */
export function settleColumns(source: ColumnSource, header: Header, found: HeaderBlock): SettledColumns {
  const sample = sampleRows(source, header, found);
  const bare = columnsWithoutHead(found, sample);
  const block = withSizeByLooks(found, bare, sample, source.standard);
  const worded = decideColumns(source, header, block);
  // an abstract has no products to be weighed by
  if (sumsOnly(worded.table)) return { layout: worded, held: null, proof: null };
  const { left, right } = worded;
  const to = nextHeader(source, header, block);
  const from = header.bottom + 1;
  const rows = {
    cells: withoutLinesOfSizes(withoutDates(source), from, to, source.standard),
    from,
    to,
    left,
    right,
  };
  const weighed = weighTable(rows, source.standard, wordsOf(worded.table, worded.ignored, bare));
  if (weighed === null) return { layout: worded, held: null, proof: null };
  const settled = withDecisions(block, weighed);
  const layout = settled === block ? worded : decideColumns(source, header, settled);
  const unsaid = membersUnsaid(weighed, layout, source, header, to);
  const held = heldTotals(unsaid === null ? weighed : { ...weighed, held: unsaid }, header, layout, source);
  const guesses = [...layout.guesses, ...guessesOf(weighed, header, layout, held)];
  const { agreement, decisions, isConfirmed } = weighed;
  const proof = { agreement, decisions, held: weighed.held, isConfirmed };
  return { layout: { ...layout, guesses }, held, proof };
}

/** A date is no amount: no product is kept or broken by it. */
function withoutDates(source: ColumnSource): ColumnSource["cells"] {
  const isDate = (cell: Cell, row: number, column: number): boolean =>
    typeof cell === "number" && source.isDateAt(row, column, cell);
  return (row) => {
    const cells = source.cells(row);
    return cells.some((cell, column) => isDate(cell, row, column))
      ? cells.map((cell, column) => (isDate(cell, row, column) ? null : cell))
      : cells;
  };
}

/** Amounts of all members of stretches of rows, where no column, heading or cell says how many there are. */
function membersUnsaid(
  { agreement, held }: WeighedTable,
  { table, left, right }: TableLayout,
  source: ColumnSource,
  { bottom }: Header,
  to: number,
): WeighedTable["held"] {
  const { columns } = table;
  if (held !== null || columns.has("members") || columns.get("total")?.corrected === true) return held;
  const ofMembers = agreement.find(
    ({ identity, byHeading, bars, share }) =>
      AMOUNTS.has(identity) && byHeading && bars >= LEAST_BARS && share >= CONFIRMS,
  );
  if (ofMembers === undefined) return held;
  for (let row = bottom; row < Math.min(to, bottom + ROWS_LOOKED_AT); row += 1) {
    for (const cell of source.cells(row).slice(left, right + 1)) {
      if (typeof cell === "string" && (readHeading(cleanText(cell)).members ?? 1) > 1) return held;
    }
  }
  return { why: "members-unsaid", columns: ofMembers.columns };
}

const ROWS_LOOKED_AT = 1_500;
const WORDS_OF_HEADER = 3;

/** Where another header ends the rows of this one; the rows of the sheet where none does. */
function nextHeader(source: ColumnSource, { bottom }: Header, block: HeaderBlock): number {
  const last = Math.min(source.rowCount, bottom + ROWS_LOOKED_AT);
  for (let row = bottom + 1; row < last; row += 1) {
    const cells = source.cells(row).slice(block.left, block.right + 1);
    if (cells.some((cell) => typeof cell === "number") || knownWords(cells) < WORDS_OF_HEADER) continue;
    const isOther = block.columns.some(({ column, header: words }) => {
      const cell = source.cells(row)[column];
      return typeof cell === "string" && cell.trim() !== "" && !words.includes(cleanText(cell));
    });
    if (isOther) return row;
  }
  return source.rowCount;
}

/** What the words of a header say of each column, for arithmetic to weigh. */
function wordsOf(
  { columns, bySize = [], left = 0, right = 0, unknownHeaders = [] }: TableReading,
  ignored: ReadonlySet<number>,
  bare: readonly number[],
): ReadonlyMap<number, WordReading> {
  const words = new Map<number, WordReading>();
  const unknown = new Set([...bare, ...unknownHeaders.map(({ column }) => column)]);
  for (let column = left; column <= right; column += 1) {
    if (!unknown.has(column) || ignored.has(column))
      words.set(column, { column, role: "other", unit: null, by: "written" });
  }
  for (const column of columns.values()) words.set(column.column, wordOf(column));
  for (const { column, size } of bySize) {
    const number = Number(/\d+(?:\.\d+)?/.exec(size)?.[0] ?? Number.NaN);
    words.set(column, { column, role: "bySize", unit: null, by: "written", size: number });
  }
  return words;
}

function wordOf({ column, kind, unit, guess, by, unitBy, inches }: ColumnReading): WordReading {
  const isLeg = /^[A-K]$/.test(kind);
  const role = isLeg ? "leg" : WEIGHED_KINDS.has(kind) ? (kind as EvidenceRole) : "other";
  // a unit that only the standard in force gives is none that words say
  const isWritten = guess === null && unitBy?.code !== "standard";
  const said = by === "user" ? "user" : isWritten ? "written" : "guessed";
  const beside = inches === undefined ? {} : { inches };
  return { column, role, unit: unit as EvidenceUnit | null, by: said, ...beside };
}

/** The columns as arithmetic settled them; the same block where words stand throughout. */
function withDecisions(block: HeaderBlock, weighed: WeighedTable): HeaderBlock {
  const countIsSettled = countsAreTested(block, weighed);
  let columns = block.columns;
  let unknown = block.unknown;
  for (const { column, verdict, byArithmetic } of weighed.decisions) {
    if (verdict !== "arithmetic") continue;
    const own = block.columns.find((one) => one.column === column);
    const kind = byArithmetic.role === "leg" ? letterOf(own, columns) : byArithmetic.role;
    const header =
      own?.header ?? [...unknown, ...(block.again ?? [])].find((one) => one.column === column)?.header ?? "";
    columns = columns.filter((one) => one.column !== column);
    if (kind === "bySize") continue;
    if (!WEIGHED_KINDS.has(kind) && byArithmetic.role !== "leg") {
      unknown = [...unknown, { column, header }];
      continue;
    }
    columns = columns.filter((one) => one.kind !== kind);
    unknown = unknown.filter((one) => one.column !== column);
    columns = [...columns, settledColumn(column, kind as ColumnKind, byArithmetic.unit, header, own)];
  }
  if (columns === block.columns) return countIsSettled ? { ...block, countIsSettled } : block;
  const inOrder = [...columns].sort((one, other) => one.column - other.column);
  return { ...block, columns: inOrder, unknown, countIsSettled };
}

/** A leg keeps its letter: only its unit is weighed. One that words take for something else has the first that is free. */
function letterOf(own: HeaderColumn | undefined, columns: readonly HeaderColumn[]): ColumnKind | "leg" {
  if (own === undefined) return "leg";
  if (IS_LETTER.test(own.kind)) return own.kind;
  return DIMENSION_LETTERS.find((letter) => columns.every(({ kind }) => kind !== letter)) ?? "leg";
}

const IS_LETTER = /^[A-K]$/;

function settledColumn(
  column: number,
  kind: ColumnKind,
  unit: string | null,
  header: string,
  own: HeaderColumn | undefined,
): HeaderColumn {
  const isUnit = unit !== null && unit !== "kg/m" && unit !== "lb/ft";
  const inches = own?.inches === undefined ? {} : { inches: own.inches };
  return {
    kind,
    column,
    header,
    unit: isUnit ? (unit as ColumnUnit) : null,
    corrected: false,
    by: "arithmetic",
    ...inches,
  };
}

/** A product of the bare count, length and mass or total length is kept: no other count would do. */
function countsAreTested(block: HeaderBlock, { agreement, decisions }: WeighedTable): boolean {
  const total = block.columns.find(({ kind }) => kind === "total");
  if (total === undefined) return false;
  if (decisions.some(({ column }) => column === total.column)) return true;
  return agreement.some(
    ({ identity, columns, share, bars, byHeading }) =>
      AMOUNTS.has(identity) &&
      columns.includes(total.column) &&
      !byHeading &&
      bars >= LEAST_BARS &&
      share >= CONFIRMS,
  );
}

function heldTotals(
  { held, agreement, decisions }: WeighedTable,
  header: Header,
  { table }: TableLayout,
  source: ColumnSource,
): HeldTotals | null {
  if (held === null || source.isConfirmed("totals-held", header.bottom, -1)) return null;
  const reason = heldText(held, agreement, decisions, table);
  return { ...held, row: header.bottom, reason };
}

/** One guess for each column that arithmetic settled, one where totals are held, one where nothing confirms. */
function guessesOf(
  { decisions, isConfirmed, rows }: WeighedTable,
  header: Header,
  { table }: TableLayout,
  held: HeldTotals | null,
): readonly SheetGuess[] {
  const guesses = decisions
    .filter(({ verdict, how }) => verdict === "arithmetic" && how !== "refines")
    .map((decision) => guessOf(decision, decisions, header, table));
  const place = { row: rowOf(header), column: null };
  if (held !== null) return [...guesses, { guess: "totals-held", reason: held.reason, asks: true, ...place }];
  if (isConfirmed || rows.length < LEAST_BARS) return guesses;
  return [...guesses, { guess: "nothing-confirms", reason: nothingConfirms(table), asks: false, ...place }];
}

function guessOf(
  decision: ColumnDecision,
  all: readonly ColumnDecision[],
  header: Header,
  table: TableReading,
): SheetGuess {
  const { about, how, column, byWords, byArithmetic } = decision;
  if (byArithmetic.role === "ofMember") {
    const each = table.columns.get("each")?.column;
    return {
      guess: "amounts-of-member",
      reason: decisionText(decision, table),
      asks: false,
      row: rowOf(header),
      column,
      ...(each === undefined ? {} : { otherwise: { column: each, kind: "total", unit: null } }),
    };
  }
  const filled = about === "unit" ? "unit-by-arithmetic" : "column-by-arithmetic";
  const otherwise = byWords === null ? {} : { otherwise: otherWay(byWords) };
  // a word that may mean several things is not contradicted by the rows that tell which
  const word = headerAt(table, column);
  const isWeak = recogniseHeader(word)?.weak === true || ONE_LETTER.test(word);
  const isOpen =
    (isWeak && about === "role") ||
    fitsEitherWay(decision) ||
    isShared(decision) ||
    isNamedTwice(decision, all, table);
  const isContradicted = how === "contradicts" && !isOpen;
  return {
    guess: isContradicted ? "words-contradicted" : filled,
    reason: decisionText(decision, table),
    asks: isContradicted,
    row: rowOf(header),
    column,
    ...otherwise,
  };
}

/**
 * "Cutting size" and "Length", "n. pezzi" and "n. ferri": the words give one thing to two columns, and the rows tell
 * which of them holds it.
 */
function isNamedTwice(
  { column, byWords, byArithmetic }: ColumnDecision,
  all: readonly ColumnDecision[],
  table: TableReading,
): boolean {
  if (byWords === null) return false;
  const isSame = (other: number): boolean =>
    other !== column && recogniseHeader(headerAt(table, other))?.kind === byWords.role;
  if (byArithmetic.role !== "other") return [...table.columns.values()].some((one) => isSame(one.column));
  return all.some((one) => one.byArithmetic.role === byWords.role && isSame(one.column));
}

/** "Mass (kg)" over a column for each steel or size: it is a mass either way. */
function isShared({ byWords, byArithmetic }: ColumnDecision): boolean {
  if (byWords === null || byArithmetic.role !== "bySize") return false;
  return AMOUNTS.has(byWords.role) && byWords.unit !== null && byWords.unit === byArithmetic.unit;
}

/** As many rows agree as the words have it: another column decided, and no row speaks against the words. */
function fitsEitherWay({ words, arithmetic }: ColumnDecision): boolean {
  if (words === null || arithmetic === null) return false;
  return words.kept === arithmetic.kept && words.tested === arithmetic.tested;
}

/** Null where a table begins with the sheet. */
function rowOf({ bottom }: Header): number | null {
  return bottom < 0 ? null : bottom;
}

function headerAt({ columns, unknownHeaders = [] }: TableReading, column: number): string {
  const all = [...columns.values(), ...unknownHeaders];
  return all.find((one) => one.column === column)?.header ?? "";
}

function otherWay({ column, role, unit }: NonNullable<ColumnDecision["byWords"]>) {
  const own = unit === "kg/m" || unit === "lb/ft" ? null : unit;
  return { column, kind: role, unit: own };
}
