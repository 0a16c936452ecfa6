import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import type { ColumnKind, ColumnReading, ColumnUnit, SheetGuess, TableReading } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE } from "../cells/longest-text";
import { type LengthColumn, MM_PER_UNIT } from "../cells/read-length-text";
import { type CommaUse, readNumberText } from "../cells/read-number-text";
import { isSoftMetric } from "../cells/read-size-cell";
import type { Header } from "../header/find-header";
import type { HeaderBlock, HeaderColumn } from "../header/header-blocks";
import type { Cell } from "../sheet";

/** Everything about a table's columns that is settled once, before its rows are read. */
export interface TableLayout {
  readonly table: TableReading;
  readonly left: number;
  readonly right: number;
  readonly lengths: ReadonlyMap<ColumnKind, LengthColumn>;
  /** kg in one of the mass column's unit */
  readonly massFactor: number;
  readonly comma: CommaUse;
  readonly softMetric: boolean;
  /** the sheet's own total lengths tell whether a bare "No. of bars" counts one member's bars or all */
  readonly countIsSettled: boolean;
  /** columns whose unit is a guess that the user has to confirm */
  readonly asks: ReadonlyMap<ColumnKind, string>;
  readonly guesses: readonly SheetGuess[];
  /** columns of serial numbers and the like, which say nothing of a bar */
  readonly ignored: ReadonlySet<number>;
  readonly headerTexts: readonly ReadonlyMap<number, string>[];
}

/** What deciding asks of the sheet. */
export interface ColumnSource {
  readonly rowCount: number;
  readonly standard: Standard;
  cells(row: number): readonly Cell[];
  isHiddenColumn(column: number): boolean;
  isConfirmed(code: string, row: number, column: number): boolean;
}

const LENGTH_KINDS: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  "length",
  "totalLength",
  "spacing",
  "former",
  "A",
  "B",
  "C",
  "D",
  "E",
  "F",
  "G",
  "H",
  "J",
  "K",
  "R",
]);
const DIMS: readonly ColumnKind[] = ["A", "B", "C", "D", "E", "F", "G", "H", "J", "K"];
/** rows under a header that are looked at to decide what its columns are */
export const SAMPLE_ROWS = 400;
const FEET_MARK = /\d\s*(?:'|"|ft\b|in\b|feet)|^\d+\s*-\s*\d+(?:\s+\d+\/\d+)?$|\d\s\d+\/\d+/i;
const KG: Readonly<Record<string, number>> = { kg: 1, t: 1000, lb: 0.45359237 };

interface Sample {
  readonly numbers: number[];
  readonly texts: string[];
}

/** Settles unit, comma and feet-and-inches of every column of one block from up to 400 rows. */
export function decideColumns(source: ColumnSource, header: Header, block: HeaderBlock): TableLayout {
  const { standard } = source;
  const rows = sampleRows(source, header, block);
  const samples = new Map(block.columns.map((column) => [column.kind, sampleOf(rows, column.column)]));
  const comma = commaOf(block, samples);
  const lengths = new Map<ColumnKind, LengthColumn>();
  const units = new Map<ColumnKind, Decided>();
  const asks = new Map<ColumnKind, string>();
  const guesses: SheetGuess[] = [];
  // the length first: dimensions are measured against it
  for (const column of [...block.columns].sort((one, other) => order(one) - order(other))) {
    if (!LENGTH_KINDS.has(column.kind)) continue;
    const sample = samples.get(column.kind) as Sample;
    const own = commaOfColumn(column, sample, comma);
    const decided = unitOf(column, sample, own, standard, dimensionUnit(column, block, rows, lengths, own));
    const feetInches = isFeetInches(sample, decided.unit, standard);
    lengths.set(column.kind, { factor: MM_PER_UNIT[decided.unit], comma: own, feetInches });
    units.set(column.kind, decided);
    note(column, decided);
  }
  function note(column: HeaderColumn, decided: Decided): void {
    if (!decided.isGuess) return;
    const isOpen = decided.asks && !source.isConfirmed("unit-of-column", header.bottom, column.column);
    if (isOpen) asks.set(column.kind, decided.guess ?? "");
    const { guess, asks: question } = decided;
    const reason = `column "${column.header}": ${guess ?? ""}`;
    guesses.push({
      guess: "unit-of-column",
      reason,
      asks: question,
      row: header.bottom,
      column: column.column,
    });
  }
  const mass = block.columns.find(({ kind }) => kind === "mass");
  const typedMass = mass === undefined ? null : massUnitOf(mass, standard);
  const isTonnes =
    mass !== undefined && mass.unit === null && massesAreTonnes(mass, block, rows, lengths, standard);
  const massUnit = isTonnes ? "t" : typedMass;
  if (mass !== undefined && isTonnes) {
    const reason = `column "${mass.header}": taken in t, so the masses make up count, length and size`;
    guesses.push({ guess: "unit-of-column", reason, asks: false, row: header.bottom, column: mass.column });
  }
  const columns = new Map<ColumnKind, ColumnReading>();
  const counts = countOfBlock(block, rows, lengths, comma);
  for (const { kind: named, column, header: words, corrected, inches } of block.columns) {
    const kind = named === "total" && counts === "each" ? "each" : named;
    const decided = units.get(kind);
    columns.set(kind, {
      kind,
      column,
      header: words,
      unit: kind === "mass" ? massUnit : (decided?.unit ?? null),
      guess: kind === "mass" && isTonnes ? "taken in t by count, length and size" : (decided?.guess ?? null),
      ...(corrected ? { corrected } : {}),
      ...(inches === undefined ? {} : { inches }),
      ...(source.isHiddenColumn(column) ? { hidden: true } : {}),
    });
  }
  const table: TableReading = {
    headerTop: header.top,
    headerBottom: header.bottom,
    columns,
    left: block.left,
    right: block.right,
    bySize: block.bySize,
    unknownHeaders: block.unknown,
  };
  return {
    table,
    left: block.left,
    right: block.right,
    lengths,
    massFactor: KG[massUnit ?? "kg"] ?? 1,
    comma,
    countIsSettled: counts !== null,
    softMetric: isSoftMetric(standard, sizesTyped(samples.get("size"))),
    asks,
    guesses,
    ignored: new Set(block.ignored),
    headerTexts: headerTexts(source, header, block),
  };
}

const LEAST_VOTES = 2;
const OF_VOTES = 0.8;

/**
 * "each" or "total" where members and a bare count stand beside each other and the total lengths, in a column or by
 * size, follow from one reading of the count only.
 */
function countOfBlock(
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
  comma: CommaUse,
): "each" | "total" | null {
  const at = new Map(block.columns.map((column) => [column.kind, column]));
  const [members, total, length] = [at.get("members"), at.get("total"), at.get("length")];
  if (members === undefined || total === undefined || length === undefined) return null;
  if (at.has("each") || total.corrected) return null;
  const factor = lengths.get("length")?.factor ?? 1;
  const sums = at.get("totalLength");
  const sumFactor = lengths.get("totalLength")?.factor ?? 1000;
  let votes = 0;
  let each = 0;
  for (const cells of rows) {
    const number = (column: number): number | null => numberIn(cells[column], comma);
    const sized = block.bySize.map(({ column }) => number(column)).find((one) => one !== null && one > 0);
    const whole = sums === undefined ? (sized ?? 0) * 1000 : (number(sums.column) ?? 0) * sumFactor;
    const one = (number(total.column) ?? 0) * (number(length.column) ?? 0) * factor;
    const many = number(members.column) ?? 0;
    if (!(whole > 0) || !(one > 0) || many < 2) continue;
    const ratio = whole / one;
    const isEach = Math.abs(ratio / many - 1) < 0.02;
    if (!isEach && Math.abs(ratio - 1) >= 0.02) continue;
    votes += 1;
    if (isEach) each += 1;
  }
  if (votes < LEAST_VOTES) return null;
  return each >= votes * OF_VOTES ? "each" : each <= votes * (1 - OF_VOTES) ? "total" : null;
}

function order(column: HeaderColumn): number {
  return column.kind === "length" ? 0 : 1;
}

function sampleRows(source: ColumnSource, header: Header, block: HeaderBlock): (readonly Cell[])[] {
  const rows: (readonly Cell[])[] = [];
  const key = block.columns.find(({ kind }) => kind === "size" || kind === "mark" || kind === "length");
  const headWord = key === undefined ? "" : key.header;
  const last = Math.min(source.rowCount, header.bottom + 1 + SAMPLE_ROWS);
  for (let row = header.bottom + 1; row < last; row += 1) {
    const cells = source.cells(row);
    // a second header ends the sample, a repeated one too
    if (key !== undefined && cells[key.column] === headWord) break;
    rows.push(cells.slice(0, block.right + 1));
  }
  return rows;
}

function sampleOf(rows: readonly (readonly Cell[])[], column: number): Sample {
  const numbers: number[] = [];
  const texts: string[] = [];
  for (const cells of rows) {
    const cell = cells[column];
    if (typeof cell === "number" && Number.isFinite(cell)) numbers.push(cell);
    else if (
      typeof cell === "string" &&
      cell.length <= LONGEST_VALUE &&
      /\d|[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f\uff10-\uff19]/.test(cell)
    ) {
      texts.push(cleanText(cell).replace(/^\((.+)\)$/, "$1"));
    }
  }
  return { numbers, texts };
}

function sizesTyped(sample: Sample | undefined): string[] {
  return sample === undefined ? [] : [...sample.texts, ...sample.numbers.map(String)];
}

const DECIMAL_FOR_SURE = /^\d+,(?:\d{1,2}|\d{4,})$|^\d{1,3}(?:\.\d{3})+,\d+$/;
const THOUSANDS_FOR_SURE = /^\d{1,3}(?:,\d{3})+\.\d+$|^\d{1,3}(?:,\d{3}){2,}$/;

/** One habit for the whole table where any of its cells tells; else null. */
function commaOf(block: HeaderBlock, samples: ReadonlyMap<ColumnKind, Sample>): CommaUse {
  for (const { kind } of block.columns) {
    if (kind !== "mass" && kind !== "unitMass" && !LENGTH_KINDS.has(kind)) continue;
    const texts = samples.get(kind)?.texts ?? [];
    if (texts.some((text) => THOUSANDS_FOR_SURE.test(text))) return "thousands";
    if (texts.some((text) => DECIMAL_FOR_SURE.test(text.replace(/\s*(?:mm|cm|m|kg|t)$/i, ""))))
      return "decimal";
  }
  return "thousands";
}

function commaOfColumn(column: HeaderColumn, sample: Sample, table: CommaUse): CommaUse {
  if (table === "decimal") {
    // 1,250 in a mm column is a thousand however the file writes its decimals
    return column.unit === "mm" && !sample.texts.some((text) => DECIMAL_FOR_SURE.test(text))
      ? "thousands"
      : "decimal";
  }
  return column.unit === "m" ? "decimal" : "thousands";
}

interface Decided {
  readonly unit: ColumnUnit;
  readonly guess: string | null;
  readonly isGuess: boolean;
  readonly asks: boolean;
}

function unitOf(
  column: HeaderColumn,
  sample: Sample,
  comma: CommaUse,
  standard: Standard,
  byLength: ColumnUnit | null,
): Decided {
  const middle = median([
    ...sample.numbers.filter((number) => number > 0 && number < 30_000),
    ...parsed(sample.texts, comma),
  ]);
  if (column.unit !== null) return againstHeader(column, column.unit, middle);
  if (standard.unit === "in") {
    if (middle !== null && middle > 1500)
      return guessed("mm", `taken in mm: the middle value is ${shown(middle)}`);
    return { unit: "in", guess: "taken in inches, the unit of the standard", isGuess: false, asks: false };
  }
  if (byLength !== null && byLength !== "mm") {
    return guessed(byLength, `taken in ${byLength}: so the dimensions make up the lengths`);
  }
  const isBarLength = column.kind === "length" || column.kind === "totalLength";
  if (middle !== null && byLength === null) {
    if (isBarLength && middle < 20) return guessed("m", `taken in m: the middle value is ${shown(middle)}`);
    if (DIMS.includes(column.kind) && middle < 5)
      return guessed("m", `taken in m: the middle value is ${shown(middle)}`);
  }
  return { unit: "mm", guess: "taken in mm, the unit of the standard", isGuess: false, asks: false };
}

/** The header's word stands unless its numbers make that impossible; then the user is asked. */
function againstHeader(column: HeaderColumn, unit: ColumnUnit, middle: number | null): Decided {
  const stands: Decided = { unit, guess: null, isGuess: false, asks: false };
  if (middle === null || column.corrected || column.kind !== "length") return stands;
  if (unit === "mm" && middle < 20) {
    return {
      ...guessed("m", `the header says mm, but the middle value is ${shown(middle)}: m is meant`),
      asks: true,
    };
  }
  if (unit === "m" && middle >= 100) {
    return {
      ...guessed("mm", `the header says m, but the middle value is ${shown(middle)}: mm is meant`),
      asks: true,
    };
  }
  return stands;
}

function guessed(unit: ColumnUnit, guess: string): Decided {
  return { unit, guess, isGuess: true, asks: false };
}

/** The unit in which the dimensions of the sampled rows come nearest to their typed lengths. */
function dimensionUnit(
  column: HeaderColumn,
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
  comma: CommaUse,
): ColumnUnit | null {
  if (!DIMS.includes(column.kind)) return null;
  const length = block.columns.find(({ kind }) => kind === "length");
  const factor = lengths.get("length")?.factor;
  if (length === undefined || factor === undefined) return null;
  const dims = block.columns.filter(({ kind }) => DIMS.includes(kind));
  const ratios: number[] = [];
  for (const cells of rows) {
    const whole = numberIn(cells[length.column], comma);
    const sum = dims.reduce((so, dim) => so + (numberIn(cells[dim.column], comma) ?? 0), 0);
    if (whole !== null && whole > 0 && sum > 0) ratios.push(Math.log10((whole * factor) / sum));
  }
  const middle = median(ratios);
  if (middle === null || ratios.length < 2) return null;
  const power = Math.round(middle);
  if (Math.abs(middle - power) > 0.42) return null;
  return power === 3 ? "m" : power === 1 ? "cm" : power === 0 ? "mm" : null;
}

function numberIn(cell: Cell | undefined, comma: CommaUse): number | null {
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : null;
  if (typeof cell !== "string") return null;
  return readNumberText(cleanText(cell).replace(/^\((.+)\)$/, "$1"), comma);
}

function isFeetInches(sample: Sample, unit: ColumnUnit, standard: Standard): boolean {
  if (unit !== "in" && unit !== "ft" && standard.unit !== "in") {
    return sample.texts.length > 0 && share(sample, /'|"|\d\s*ft\b/i) >= 0.5;
  }
  return sample.texts.length > 0 && share(sample, FEET_MARK) >= 0.5;
}

function share(sample: Sample, mark: RegExp): number {
  const marked = sample.texts.filter((text) => mark.test(text)).length;
  return marked / Math.max(1, sample.texts.length + sample.numbers.length);
}

/** True where the typed masses are nearest to a thousandth of count x length x mass per metre. */
function massesAreTonnes(
  mass: HeaderColumn,
  block: HeaderBlock,
  rows: readonly (readonly Cell[])[],
  lengths: ReadonlyMap<ColumnKind, LengthColumn>,
  standard: Standard,
): boolean {
  const at = (kind: ColumnKind): number => block.columns.find((column) => column.kind === kind)?.column ?? -1;
  const factor = lengths.get("length")?.factor;
  if (factor === undefined) return false;
  const ratios: number[] = [];
  for (const cells of rows) {
    const typed = numberIn(cells[mass.column], "thousands");
    const length = numberIn(cells[at("length")], "thousands");
    const count = numberIn(cells[at("total")], "thousands") ?? numberIn(cells[at("each")], "thousands");
    const size = cells[at("size")];
    const reading = typeof size === "string" || typeof size === "number" ? standard.readSize(size) : null;
    if (reading === null || isRefusal(reading) || reading.bar === null) continue;
    const expected = (count ?? 0) * (((length ?? 0) * factor) / 1000) * reading.bar.massPerMetre;
    if (typed !== null && typed > 0 && expected > 0) ratios.push(typed / expected);
  }
  const middle = median(ratios);
  return middle !== null && middle < 0.01;
}

function massUnitOf(column: HeaderColumn, standard: Standard): ColumnUnit {
  return column.unit ?? (standard.unit === "in" ? "lb" : "kg");
}

function headerTexts(
  source: ColumnSource,
  header: Header,
  block: HeaderBlock,
): ReadonlyMap<number, string>[] {
  const rows: Map<number, string>[] = [];
  for (let row = header.top; row <= header.bottom; row += 1) {
    const texts = new Map<number, string>();
    const cells = source.cells(row);
    for (let column = block.left; column <= Math.min(block.right, cells.length - 1); column += 1) {
      const cell = cells[column];
      if (typeof cell === "string" && cell.trim() !== "") texts.set(column, cell.trim().toLowerCase());
      else if (typeof cell === "number") texts.set(column, String(cell));
    }
    rows.push(texts);
  }
  return rows;
}

function parsed(texts: readonly string[], comma: CommaUse): number[] {
  return texts
    .map((text) => readNumberText(text, comma))
    .filter((one): one is number => one !== null && one > 0);
}

function median(numbers: readonly number[]): number | null {
  if (numbers.length === 0) return null;
  const sorted = [...numbers].sort((one, other) => one - other);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? null;
}

function shown(number: number): string {
  return String(Math.round(number * 1000) / 1000);
}
